// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/family_row.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "core/analysis/depth_table.h"
#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/theme/tab_order.h"

namespace grainwise::ui {
namespace {

constexpr int kType = 14;
constexpr int kHeight = 44;
constexpr double kIntermediate = 3.0;  ///< in/s; slower ones belong to no fast family and back
constexpr double kSame = 0.05;         ///< ft and gr/ft: nearer is the same
constexpr auto kRanked = "ranked";

bool alike(double a, double b) { return std::abs(a - b) < kSame; }

InchesPerSecond rateOf(const Part& part) {
  const auto& rate = part.sections.back().sinkRate;
  return rate ? rate->flyEnd : InchesPerSecond(0);
}

bool slow(const Part& part) {
  return part.sections.back().sinkRate && rateOf(part).value() < kIntermediate;
}

}  // namespace

FamilyRow::FamilyRow(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("familyRow"));
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  m_row = new QHBoxLayout(this);
  m_row->setContentsMargins(0, 0, 0, 0);
  m_row->setSpacing(4);
  m_more = new QPushButton(tr("more"), this);
  m_more->setObjectName(QStringLiteral("familyMore"));
  m_more->setAccessibleName(tr("More tips of this length"));
  m_menu = new QMenu(m_more);
  m_menu->setToolTipsVisible(true);
  m_more->setMenu(m_menu);
  m_more->hide();
  connect(m_menu, &QMenu::hovered, this,
          [this](const QAction* action) { Q_EMIT previewed(action->data().toInt()); });
  connect(m_menu, &QMenu::triggered, this,
          [this](const QAction* action) { Q_EMIT taken(action->data().toInt()); });
  connect(m_menu, &QMenu::aboutToHide, this, [this] { Q_EMIT previewed(-1); });
}

QSize FamilyRow::minimumSizeHint() const { return {0, QWidget::minimumSizeHint().height()}; }

void FamilyRow::setAnswer(std::shared_ptr<const AnsweredChoice> answer) {
  m_answer = std::move(answer);
  fill();
}

/// How it differs, how deep it fishes; below it what that does to the stroke.
QString FamilyRow::label(const QString& what, const TipChoice& tip) const {
  const auto& depth = tip.figures.depth;
  QString words = what;
  if (depth) {
    const QString deep = !depth->band                 ? tr("on top")
                         : isOnBottom(depth->state) ? tr("bottom")
                                                    : roundLengthText(depth->band->middle, m_look->units());
    words = tr("%1 → %2", "how a tip differs → its depth").arg(what, deep);
  }
  if (tip.asItStands) return tr("%1\n%2", "a tip, its stroke").arg(words, tr("on now"));
  if (!tip.figures.stroke) return words;
  const Stroke& stroke = *tip.figures.stroke;
  // Of one length the stroke is as good as the same: what the lift does is then worth the room.
  const bool lift = stroke.verdict == StrokeVerdict::same && (stroke.slowerLift || stroke.quickerLift);
  const QString change = !lift               ? strokeWords(stroke)
                         : stroke.slowerLift ? tr("slower lift")
                                             : tr("quicker lift");
  return tr("%1\n%2", "a tip, its stroke").arg(words, change);
}

void FamilyRow::addCaption(const QString& words) {
  auto* caption = new QLabel(words, this);
  caption->setFont(m_look->font(kType));
  m_row->addWidget(caption);
}

void FamilyRow::addButton(std::size_t ranked, const QString& what) {
  const TipChoice& tip = m_answer->choice.ranked[ranked];
  auto* button = new QPushButton(label(what, tip), this);
  button->setObjectName(QStringLiteral("family%1").arg(m_buttons.size()));
  button->setFont(m_look->font(kType, tip.asItStands));
  button->setMinimumHeight(m_look->px(kHeight));
  button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  const DisplayUnits units = m_look->units();
  const QString all = tr("%1: %2", "tip: sentence")
                          .arg(choiceName(m_answer->question.shelf, tip.shelf, units),
                               choiceSentence(tip, m_answer->choice.wanted, units));
  button->setToolTip(all);
  button->setAccessibleName(all);
  button->setProperty(kRanked, int(ranked));
  button->installEventFilter(this);
  connect(button, &QPushButton::clicked, this, [this, ranked] { Q_EMIT taken(int(ranked)); });
  m_row->addWidget(button);
  m_buttons.append(button);
}

void FamilyRow::fill() {
  // Who walks down the row with the keys stays in it.
  const bool within = std::any_of(m_buttons.begin(), m_buttons.end(), [](QPushButton* b) { return b->hasFocus(); });
  m_buttons.clear();
  m_row->removeWidget(m_more);
  while (QLayoutItem* item = m_row->takeAt(0)) {
    if (item->widget() != nullptr) item->widget()->deleteLater();
    delete item;
  }
  m_more->hide();
  if (!m_answer) return;
  const TipQuestion& question = m_answer->question;
  const Choice& choice = m_answer->choice;
  const auto family = familyOf(question, choice);
  if (family.size() < 2) return;
  const DisplayUnits units = m_look->units();
  const TipSize here = tipSize(*tipOf(question.rig));
  const bool slowHere = slow(*tipOf(question.rig));
  const auto partOf = [&](std::size_t i) -> const Part& {
    return question.shelf.parts[*choice.ranked[i].shelf];
  };
  const auto belongs = [&](std::size_t i) {
    return slow(partOf(i)) == slowHere || choice.ranked[i].size.sinking <= Feet(0);
  };
  const auto sameMass = [&](std::size_t i) {
    return alike(choice.ranked[i].size.mean.value(), here.mean.value());
  };
  const auto sameSink = [&](std::size_t i) {
    return alike(choice.ranked[i].size.sinking.value(), here.sinking.value());
  };
  const bool byRate = std::any_of(family.begin(), family.end(), [&](std::size_t i) {
    return !choice.ranked[i].asItStands && sameMass(i) && belongs(i) && sameSink(i);
  });
  addCaption(byRate ? tr("Same length:") : tr("Same length, sinking:"));
  for (const std::size_t i : family) {
    if (!sameMass(i) || !belongs(i)) continue;
    const Feet sinking = choice.ranked[i].size.sinking;
    addButton(i, sinking <= Feet(0) ? tr("none")
                 : byRate           ? rateText(rateOf(partOf(i)), units)
                                    : lengthText(sinking, units));
  }
  bool captioned = false;
  for (const std::size_t i : family) {
    if (sameMass(i) || !belongs(i) || !sameSink(i)) continue;
    if (!captioned) addCaption(tr("or:"));
    captioned = true;
    addButton(i, lineMassText(choice.ranked[i].size.mean, units));
  }
  m_more->setFont(m_look->font(kType));
  m_more->setMinimumHeight(m_look->px(kHeight));
  m_row->addWidget(m_more);
  m_row->addStretch(1);
  fit();
  tabAsLaidOut(this);
  for (QPushButton* button : std::as_const(m_buttons)) {
    if (within && choice.ranked[std::size_t(button->property(kRanked).toInt())].asItStands) button->setFocus();
  }
}

void FamilyRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

/// What would be cut off goes into the menu.
void FamilyRow::fit() {
  const auto widthOf = [this](const QWidget* widget) { return widget->sizeHint().width() + m_row->spacing(); };
  QList<QWidget*> widgets;
  int needed = 0;
  for (int i = 0; i < m_row->count(); ++i) {
    QWidget* widget = m_row->itemAt(i)->widget();
    if (widget == nullptr || widget == m_more) continue;
    widgets.append(widget);
    needed += widthOf(widget);
  }
  const bool tooMany = needed > width();
  int room = width() - (tooMany ? widthOf(m_more) : 0);
  bool full = false;
  QList<const QPushButton*> left;
  QList<bool> fits;
  for (qsizetype i = 0; i < widgets.size(); ++i) {
    // A caption without the first button behind it says nothing.
    const bool caption = qobject_cast<QLabel*>(widgets[i]) != nullptr;
    const int wanted = widthOf(widgets[i]) + (caption && i + 1 < widgets.size() ? widthOf(widgets[i + 1]) : 0);
    full = full || wanted > room;
    room -= widthOf(widgets[i]);
    fits.append(!full);
    const auto* button = qobject_cast<QPushButton*>(widgets[i]);
    if (full && button != nullptr) left.append(button);
  }
  m_menu->clear();
  for (const QPushButton* button : std::as_const(left)) {
    QAction* action = m_menu->addAction(button->text().replace(QLatin1Char('\n'), QStringLiteral("   ")));
    action->setData(button->property(kRanked));
    action->setToolTip(button->toolTip());
  }
  // Last: what is shown or hidden may bring another size, and this once more.
  m_more->setVisible(tooMany);
  for (qsizetype i = 0; i < widgets.size(); ++i) widgets[i]->setVisible(fits[i]);
}

bool FamilyRow::eventFilter(QObject* watched, QEvent* event) {
  const bool in = event->type() == QEvent::Enter || event->type() == QEvent::FocusIn;
  const bool out = event->type() == QEvent::Leave || event->type() == QEvent::FocusOut;
  if (in) Q_EMIT previewed(watched->property(kRanked).toInt());
  if (out) Q_EMIT previewed(-1);
  return QWidget::eventFilter(watched, event);
}

}  // namespace grainwise::ui
