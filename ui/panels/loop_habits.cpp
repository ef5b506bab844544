// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/loop_habits.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include "ui/document/own_store.h"
#include "ui/strip/number_field.h"
#include "ui/theme/flow_row.h"

namespace grainwise::ui {
namespace {

void setOn(OwnStore* store, Inches BenchRules::*member, double inches) {
  BenchRules rules = store->rules();
  rules.*member = Inches(inches);
  store->setRules(rules);
}

}  // namespace

LoopHabits::LoopHabits(Look* look, OwnStore* store, QWidget* parent)
    : MakePage(look, "loopHabits", parent), m_store(store) {
  auto* row = new FlowRow(look->px(12));
  setLayout(row);
  m_kind = addChoice({tr("no loops"), tr("welded loops"), tr("sleeved loops"), tr("tied loops")},
                     tr("Loops of tips"), "loopKind");
  row->addWidget(m_kind);
  m_loop = addLength(tr("A loop takes"), "loopLength");
  m_splice = addLength(tr("A splice, each side"), "spliceLength");
  m_knot = addLength(tr("A knot, each side"), "knotLength");
  m_flyKnot = addLength(tr("The knot at the fly"), "flyKnotLength");
  auto* put = addButton(tr("Put the loops on the line"), "cutLoops");
  row->addWidget(put);
  connect(put, &QPushButton::clicked, this, &LoopHabits::putOnLine);
  connect(m_kind, &QComboBox::activated, this, [this](int index) {
    BenchRules rules = m_store->rules();
    rules.lineLoop = static_cast<LoopKind>(index);
    m_store->setRules(rules);
  });
  connect(m_loop, &NumberField::typed, this, [this](const Typed& t) {
    BenchRules rules = m_store->rules();
    if (Inches* length = lengthOf(rules.lineLoop, rules)) *length = Inches(t.value);
    m_store->setRules(rules);
  });
  const auto follow = [this](NumberField* field, Inches BenchRules::*member) {
    connect(field, &NumberField::typed, this,
            [this, member](const Typed& t) { setOn(m_store, member, t.value); });
  };
  follow(m_splice, &BenchRules::splice);
  follow(m_knot, &BenchRules::joiningKnot);
  follow(m_flyKnot, &BenchRules::flyKnot);
  connect(store, &OwnStore::rulesChanged, this, &LoopHabits::showRules);
  restyle();
}

NumberField* LoopHabits::addLength(const QString& name, const char* object) {
  auto* field = new NumberField(look(), name, Measure::diameter, kAllowance, this);
  field->edit()->setObjectName(QLatin1String(object));
  layout()->addWidget(field);
  return field;
}

void LoopHabits::showRules() {
  BenchRules rules = m_store->rules();
  m_kind->setCurrentIndex(int(rules.lineLoop));
  const Inches* loop = lengthOf(rules.lineLoop, rules);
  m_loop->setEnabled(loop != nullptr);
  m_loop->setValue(loop ? loop->value() : 0.0);
  m_splice->setValue(rules.splice.value());
  m_knot->setValue(rules.joiningKnot.value());
  m_flyKnot->setValue(rules.flyKnot.value());
}

void LoopHabits::restyle() {
  MakePage::restyle();
  for (NumberField* field : {m_loop, m_splice, m_knot, m_flyKnot}) field->setMaximumWidth(look()->px(150));
  showRules();
}

}  // namespace grainwise::ui
