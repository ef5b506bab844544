// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/top_bar.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>

#include "ui/document/file_names.h"
#include "ui/document/rig_document.h"
#include "ui/text/words.h"
#include "ui/theme/ground.h"
#include "ui/theme/pill_button.h"
#include "ui/theme/tab_order.h"

namespace grainwise::ui {
namespace {

void popUpUnder(PillButton* button, QMenu* menu) {
  menu->popup(button->mapToGlobal(QPoint(0, button->height())));
}

QString unitsWords(DisplayUnits units) {
  return QStringLiteral("%1 · %2 · %3")
      .arg(units.metres ? QStringLiteral("m") : QStringLiteral("ft"),
           units.grams ? QStringLiteral("g") : QStringLiteral("gr"),
           units.celsius ? QStringLiteral("°C") : QStringLiteral("°F"));
}

}  // namespace

TopBar::TopBar(Look* look, RigDocument* document, QMenu* menu, QMenu* units, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(8, 0, 8, 0);
  row->setSpacing(4);
  m_menu = new PillButton(look, PillButton::Form::plain, tr("Menu"), this);
  m_menu->setObjectName(QStringLiteral("menuButton"));
  m_menu->setToolTip(tr("Every action, with its key (F10)"));
  row->addWidget(m_menu);
  m_name = addSentence(QStringLiteral("nameSentence"));
  m_rod = addSentence(QStringLiteral("rodSentence"));
  m_water = addSentence(QStringLiteral("waterSentence"));
  row->addStretch(1);
  m_units = new PillButton(look, PillButton::Form::plain, unitsWords(look->units()), this);
  m_units->setObjectName(QStringLiteral("unitsButton"));
  m_units->setToolTip(tr("Feet or metres, grains or grams, Fahrenheit or Celsius"));
  row->addWidget(m_units);

  connect(m_menu, &PillButton::clicked, this, [this, menu] { popUpUnder(m_menu, menu); });
  connect(m_units, &PillButton::clicked, this, [this, units] { popUpUnder(m_units, units); });
  connect(m_name, &PillButton::clicked, this, &TopBar::nameRequested);
  connect(m_rod, &PillButton::clicked, this, &TopBar::rodRequested);
  connect(m_water, &PillButton::clicked, this, &TopBar::waterRequested);
  connect(document, &RigDocument::rigChanged, this, &TopBar::refresh);
  connect(document, &RigDocument::fileChanged, this, &TopBar::refresh);
  connect(look, &Look::changed, this, [this] {
    refresh();
    update();
  });
  refresh();
}

PillButton* TopBar::addSentence(const QString& objectName) {
  auto* sentence = new PillButton(m_look, PillButton::Form::sentence, QString(), this);
  sentence->setObjectName(objectName);
  static_cast<QHBoxLayout*>(layout())->addWidget(sentence);
  return sentence;
}

void TopBar::addFace(QAction* action) {
  auto* pill = new PillButton(m_look, PillButton::Form::pill, action->text(), this);
  pill->setObjectName(action->objectName());
  pill->setToolTip(QStringLiteral("%1 (%2)").arg(
      action->text(), action->shortcut().toString(QKeySequence::NativeText)));
  const auto follow = [action, pill] { pill->setChecked(action->isChecked()); };
  follow();
  connect(action, &QAction::toggled, pill, follow);
  connect(pill, &PillButton::clicked, action, &QAction::trigger);
  connect(pill, &PillButton::clicked, pill, follow);  // a press on the shown face leaves it shown
  auto* row = static_cast<QHBoxLayout*>(layout());
  row->insertWidget(row->indexOf(m_menu) + 1 + int(m_faces.size()), pill);
  m_faces.append(pill);
  for (PillButton* each : m_faces) each->setVisible(m_faces.size() > 1);
  tabAsLaidOut(this);
}

void TopBar::setSentencesShown(bool shown) {
  m_sentencesShown = shown;
  m_name->setVisible(shown);
  fit();
}

/// Whatever has no room is left out, from the right, never cut: all of it is in the menu with its key.
void TopBar::fit() {
  const int gap = layout()->spacing();
  QList<PillButton*> always{m_menu};
  if (m_sentencesShown) always.append(m_name);
  if (m_faces.size() > 1) always += m_faces;
  const auto need = [gap](const PillButton* one) { return one->minimumSizeHint().width() + gap; };
  const QMargins margins = layout()->contentsMargins();
  int room = width() - margins.left() - margins.right();
  for (const PillButton* one : std::as_const(always)) room -= need(one);
  QList<PillButton*> rest;
  if (m_sentencesShown) rest << m_rod << m_water;
  rest += m_buttons;
  rest << m_units;
  for (PillButton* one : {m_rod, m_water}) {
    if (!m_sentencesShown) one->hide();
  }
  bool full = false;
  for (PillButton* one : std::as_const(rest)) {
    full = full || need(one) > room;
    room -= need(one);
    if (one->isHidden() != full) one->setVisible(!full);
  }
}

QSize TopBar::minimumSizeHint() const {
  const int gap = layout()->spacing();
  const QMargins margins = layout()->contentsMargins();
  int width = margins.left() + margins.right() + m_menu->minimumSizeHint().width() + gap;
  for (const PillButton* face : m_faces) width += face->minimumSizeHint().width() + gap;
  return {width + m_name->minimumSizeHint().width(), m_menu->minimumSizeHint().height()};
}

void TopBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

bool TopBar::event(QEvent* event) {
  if (event->type() == QEvent::LayoutRequest) fit();  // a button's words or the type size changed
  return QWidget::event(event);
}

void TopBar::setWords(QAction* action, const QString& words) {
  auto* button = findChild<PillButton*>(QStringLiteral("button_") + action->objectName());
  if (button == nullptr || button->text() == words) return;
  button->setText(words);
  button->updateGeometry();
  button->update();
}

void TopBar::addActionButton(QAction* action, const QString& words) {
  auto* button = new PillButton(m_look, PillButton::Form::plain, words, this);
  button->setObjectName(QStringLiteral("button_") + action->objectName());
  button->setAccessibleName(action->text());
  const auto follow = [action, button] {
    button->setEnabled(action->isEnabled());
    button->setToolTip(action->toolTip() + QStringLiteral(" (") +
                       action->shortcut().toString(QKeySequence::NativeText) + QStringLiteral(")"));
  };
  follow();
  connect(action, &QAction::changed, button, follow);
  connect(button, &PillButton::clicked, action, &QAction::trigger);
  auto* row = static_cast<QHBoxLayout*>(layout());
  row->insertWidget(row->indexOf(m_units), button);
  m_buttons.append(button);
  tabAsLaidOut(this);
}

void TopBar::refresh() {
  const Rig& rig = *m_document->shown();
  const QString name = shownName(rig.name, m_document->path(), tr("unnamed rig"));
  m_name->setText(m_document->isModified() ? tr("%1, not saved").arg(name) : name);
  m_rod->setText(rodSentence(rig, m_look->units()));
  m_water->setText(waterSentence(rig, m_look->units()));
  m_name->setToolTip(tr("%1. Click to rename.").arg(m_name->text()));
  m_rod->setToolTip(tr("Rod: %1. Click to change.").arg(m_rod->text()));
  m_water->setToolTip(tr("Water: %1. Click to change.").arg(m_water->text()));
  for (PillButton* b : {m_name, m_rod, m_water}) b->setAccessibleName(b->text());
  m_units->setText(unitsWords(m_look->units()));
  m_units->setAccessibleName(tr("Units: %1").arg(m_units->text()));
}

void TopBar::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().band);
}

}  // namespace grainwise::ui
