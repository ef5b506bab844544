// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/tips_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/bench/cut_sheet.h"
#include "core/bench/own_shelf.h"
#include "core/bench/scale_log.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/document/own_store.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr Limit kTips{"number of tips", "", 1, 100};

/// The joint of `part` that changes with its cut end, as the strip's tags say it.
QString jointWords(const Rig& rig, std::size_t part, const Rules& rules, DisplayUnits units) {
  Conditions conditions;
  conditions.rules = rules;
  const Analysis analysis = analyse(rig, conditions);
  QStringList words;
  for (const Junction& joint : analysis.junctions) {
    if (joint.rodSide == part || joint.flySide == part) words.append(junctionTag(joint, units));
  }
  if (analysis.rod.headVerdict && rig.parts[part].kind == PartKind::head) {
    words.append(headWords(analysis.rod));
  }
  return words.join(QStringLiteral("; "));
}

}  // namespace

TipsPage::TipsPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent,
                   const Preferences* preferences)
    : MakePage(look, "makeTips", parent), m_document(document), m_store(store), m_preferences(preferences) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(24);
  row->addWidget(trimSide(), 1);
  row->addWidget(divideSide(), 1);
  row->addWidget(nameSide(), 1);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  connect(store, &OwnStore::spoolsChanged, this, &TipsPage::refresh);
  connect(store, &OwnStore::rulesChanged, this, &TipsPage::refresh);
  restyle();
}

NumberField* TipsPage::addNumber(const QString& name, const char* object,
                                 std::optional<double>& value, QWidget* side, int measure) {
  const auto kind = static_cast<Measure>(measure);
  const Limit limit = kind == Measure::mass       ? limits::kWeighed
                      : kind == Measure::diameter ? limits::kDiameter
                      : kind == Measure::rate     ? limits::kSinkRate
                      : kind == Measure::plain    ? kTips
                                                  : limits::kLength;
  auto* field = new NumberField(look(), name, kind, limit, side);
  field->edit()->setObjectName(QLatin1String(object));
  field->setOptional(true);
  if (value) field->setValue(*value);
  connect(field, &NumberField::typed, this, [this, &value](const Typed& t) {
    value = t.value;
    refresh();
  });
  connect(field, &NumberField::cleared, this, [this, &value] {
    value.reset();
    refresh();
  });
  return field;
}

QWidget* TipsPage::trimSide() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(addLabel(tr("Trim before the knife"), Size::reading));
  m_part = addChoice({}, tr("Part to trim"), "trimPart");
  m_end = addChoice({tr("off the front"), tr("off the rear")}, tr("End to trim"), "trimEnd");
  column->addWidget(m_part);
  auto* fields = new QHBoxLayout;
  m_offField = addNumber(tr("Take off"), "trimOff", m_off, side, int(Measure::length));
  fields->addWidget(m_offField);
  fields->addWidget(m_end, 0, Qt::AlignBottom);
  column->addLayout(fields);
  m_trimWords = addLabel({});
  m_trimWords->setObjectName(QStringLiteral("trimWords"));
  column->addWidget(m_trimWords);
  m_trimTake = addButton(tr("Trim it on the line"), "trimTake");
  column->addWidget(m_trimTake, 0, Qt::AlignLeft);
  column->addStretch(1);
  connect(m_part, &QComboBox::currentIndexChanged, this, &TipsPage::refreshTrim);
  connect(m_end, &QComboBox::currentIndexChanged, this, &TipsPage::refreshTrim);
  connect(m_trimTake, &QPushButton::clicked, this, &TipsPage::takeTrim);
  return side;
}

QWidget* TipsPage::divideSide() {
  m_count = 3;
  m_each = 10;
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(addLabel(tr("Divide a spool"), Size::reading));
  m_spool = addChoice({}, tr("Spool"), "divideSpool");
  m_way = addChoice({tr("into equal tips"), tr("as many of one length")}, tr("How to divide"),
                    "divideWay");
  column->addWidget(m_spool);
  auto* fields = new QHBoxLayout;
  m_countField = addNumber(tr("Tips"), "divideCount", m_count, side, int(Measure::plain));
  m_eachField = addNumber(tr("Each"), "divideEach", m_each, side, int(Measure::length));
  fields->addWidget(m_way, 0, Qt::AlignBottom);
  fields->addWidget(m_countField);
  fields->addWidget(m_eachField);
  column->addLayout(fields);
  m_divideWords = addLabel({});
  m_divideWords->setObjectName(QStringLiteral("divideWords"));
  column->addWidget(m_divideWords);
  column->addStretch(1);
  connect(m_spool, &QComboBox::currentIndexChanged, this, &TipsPage::refreshDivide);
  connect(m_way, &QComboBox::currentIndexChanged, this, &TipsPage::refreshDivide);
  return side;
}

QWidget* TipsPage::nameSide() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(addLabel(tr("What is this tip? Give any two"), Size::reading));
  auto* fields = new QHBoxLayout;
  fields->addWidget(addNumber(tr("Mass"), "nameMass", m_mass, side, int(Measure::mass)));
  fields->addWidget(addNumber(tr("Length"), "nameLength", m_length, side, int(Measure::length)));
  fields->addWidget(
      addNumber(tr("Diameter"), "nameDiameter", m_diameter, side, int(Measure::diameter)));
  fields->addWidget(addNumber(tr("Sinks"), "nameSink", m_sink, side, int(Measure::rate)));
  column->addLayout(fields);
  m_nameWords = addLabel({});
  m_nameWords->setObjectName(QStringLiteral("nameWords"));
  column->addWidget(m_nameWords);
  m_nameKeep = addButton(tr("Keep it among my parts"), "nameKeep");
  column->addWidget(m_nameKeep, 0, Qt::AlignLeft);
  column->addStretch(1);
  connect(m_nameKeep, &QPushButton::clicked, this, &TipsPage::keepTip);
  return side;
}

void TipsPage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

void TipsPage::refresh() {
  {
    const QSignalBlocker quiet(m_part);
    const int before = m_part->currentIndex();
    m_part->clear();
    m_parts.clear();
    const auto& parts = m_document->rig().parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (parts[i].kind == PartKind::fly || parts[i].kind == PartKind::runningLine) continue;
      m_parts.push_back(i);
      m_part->addItem(partWords(parts[i], units()));
    }
    m_part->setCurrentIndex(m_parts.empty() ? -1 : std::clamp(before, 0, int(m_parts.size()) - 1));
    const QSignalBlocker still(m_spool);
    const int spool = m_spool->currentIndex();
    m_spool->clear();
    for (const Spool& each : m_store->spools().spools) {
      m_spool->addItem(tr("%1: %2").arg(QString::fromStdString(each.name),
                                        tapeText(each.left, units())));
    }
    m_spool->setCurrentIndex(m_spool->count() == 0 ? -1
                                                   : std::clamp(spool, 0, m_spool->count() - 1));
  }
  refreshTrim();
  refreshDivide();
  refreshName();
}

std::optional<std::size_t> TipsPage::trimPart() const {
  const int index = m_part->currentIndex();
  if (index < 0 || index >= int(m_parts.size())) return std::nullopt;
  return m_parts[std::size_t(index)];
}

void TipsPage::refreshTrim() {
  m_trimTake->setEnabled(false);
  const auto index = trimPart();
  if (!index || !m_off) {
    m_trimWords->setText(index ? tr("Say how much comes off; nothing is cut yet.")
                               : tr("Nothing on the line to trim."));
    return;
  }
  const Rig& rig = m_document->rig();
  const PartEnd end = m_end->currentIndex() == 1 ? PartEnd::rod : PartEnd::fly;
  const auto cut = trimmed(rig.parts[*index], end, Feet(*m_off));
  if (!cut) return m_trimWords->setText(problemText(cut.error()));
  QString words = tr("%1 becomes %2, %3; it ends at %4.")
                      .arg(massText(cut->before, units()), massText(cut->after, units()),
                           lengthText(cut->part.length(), units()),
                           lineMassText(cut->newEnd, units()));
  const QString joints = jointWords(edits::replaced(rig, *index, cut->part), *index, rulesOf(m_preferences), units());
  if (!joints.isEmpty()) words += QLatin1Char(' ') + joints + QLatin1Char('.');
  if (cut->loopLost) words += tr(" The loop goes with it.");
  m_trimWords->setText(words);
  m_trimTake->setEnabled(true);
}

void TipsPage::takeTrim() {
  const auto index = trimPart();
  if (!index || !m_off || !m_offField->error().isEmpty()) return;
  const Rig& rig = m_document->rig();
  const PartEnd end = m_end->currentIndex() == 1 ? PartEnd::rod : PartEnd::fly;
  const auto cut = trimmed(rig.parts[*index], end, Feet(*m_off));
  if (!cut) return;
  const Part& before = rig.parts[*index];
  m_document->apply(tr("Trim %1").arg(partWords(before, units())),
                    edits::replaced(rig, *index, named(before, cut->part, units())));
}

void TipsPage::refreshDivide() {
  const bool equal = m_way->currentIndex() == 0;
  m_countField->setVisible(equal);
  m_eachField->setVisible(!equal);
  const auto& spools = m_store->spools().spools;
  const int index = m_spool->currentIndex();
  if (index < 0 || index >= int(spools.size())) {
    m_divideWords->setText(tr("No spools yet: read or write them down on the Spools page."));
    return;
  }
  const Spool& spool = spools[std::size_t(index)];
  const auto divided = equal ? divideEqually(spool, int(std::lround(m_count.value_or(0))), m_store->rules())
                             : divideBy(spool, Feet(m_each.value_or(0)), m_store->rules());
  if (!divided) return m_divideWords->setText(problemText(divided.error()));
  m_divideWords->setText(tr("%1 of %2 finished, cut at %3, %4 each with loops; %5 left.")
                             .arg(divided->count)
                             .arg(tapeText(divided->finished, units()), tapeText(divided->cut, units()),
                                  massText(divided->mass, units()), tapeText(divided->left, units())));
}

tl::expected<FoundTip, Problem> TipsPage::found() const {
  TipMeasures measures;
  if (m_mass) measures.mass = Grains(*m_mass);
  if (m_length) measures.length = Feet(*m_length);
  if (m_diameter) measures.diameter = Inches(*m_diameter);
  if (m_sink) measures.sink = InchesPerSecond(*m_sink);
  return findTip(measures, *m_store->all());
}

void TipsPage::refreshName() {
  m_nameKeep->setEnabled(false);
  const int given = int(m_mass.has_value()) + int(m_length.has_value()) +
                    int(m_diameter.has_value()) + int(m_sink.has_value());
  if (given < 2) {
    m_nameWords->setText(tr("Without its loops; a pinch of the caliper or a timed sink tell most."));
    return;
  }
  const auto tip = found();
  if (!tip) return m_nameWords->setText(problemText(tip.error()));
  QStringList words;
  if (tip->perFoot) words.append(lineMassText(*tip->perFoot, units()));
  if (tip->tradeClass) words.append(tr("the trade's %1").arg(lineMassText(*tip->tradeClass, units())));
  if (tip->rate) {
    words.append(tip->rateAssumed ? tr("sinks about %1 by its class").arg(rateText(*tip->rate, units()))
                                  : tr("sinks %1").arg(rateText(*tip->rate, units())));
  }
  if (!tip->perFoot) words.append(tr("mass and length together give its class"));
  QString text = words.join(tr(", ")) + QLatin1Char('.');
  if (!tip->nearest.empty()) {
    const Shelf& shelf = *m_store->all();
    QStringList near;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, tip->nearest.size()); ++i) {
      near.append(partWords(shelf.parts[tip->nearest[i].part], units()));
    }
    text += tr(" Nearest on the shelf: %1.").arg(near.join(tr("; ")));
  }
  m_nameWords->setText(text);
  m_nameKeep->setEnabled(tip->perFoot.has_value() && m_length.has_value());
}

void TipsPage::keepTip() {
  const auto tip = found();
  if (!tip || !tip->perFoot || !m_length) return;
  LogRow row;
  row.length = Feet(*m_length);
  row.perFoot = *tip->perFoot;
  row.sinkRate = tip->rate;
  row.name = tr("%1, %2")
                 .arg(lengthText(Feet(*m_length), units()), lineMassText(*tip->perFoot, units()))
                 .toStdString();
  const auto made = tipOf(row);
  if (!made) return m_nameWords->setText(problemText(made.error()));
  Part part = made->part;
  part.group = tr("My tips").toStdString();
  m_store->setOwn(ownShelf::with(m_store->own(), part, m_store->generic()));
  m_nameWords->setText(tr("Kept among my parts."));
}

void TipsPage::restyle() {
  MakePage::restyle();
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
