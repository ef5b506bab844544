// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/trial_bar.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

#include "ui/document/trial.h"
#include "ui/theme/pill_button.h"

namespace grainwise::ui {
namespace {

constexpr int kWords = 260;

bool within(const QWidget* place, const QWidget* widget) {
  return place != nullptr && (place == widget || place->isAncestorOf(widget));
}

bool passesBy(int key) {
  return key == Qt::Key_Tab || key == Qt::Key_Backtab || key == Qt::Key_Shift || key == Qt::Key_Control ||
         key == Qt::Key_Alt || key == Qt::Key_Meta;
}

}  // namespace

TrialBar::TrialBar(Look* look, Trial* trial, QWidget* parent)
    : QWidget(parent), m_look(look), m_trial(trial) {
  setObjectName(QStringLiteral("trialBar"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(2);
  m_words = new QLabel(this);
  m_words->setObjectName(QStringLiteral("trialWords"));
  m_words->setTextFormat(Qt::PlainText);
  m_words->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_words->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  row->addWidget(m_words, 1);
  const auto add = [&](const char* name, const QString& words, const QString& tip) {
    auto* button = new PillButton(look, PillButton::Form::sentence, words, this);
    button->setObjectName(QLatin1String(name));
    button->setToolTip(tip);
    row->addWidget(button);
    return button;
  };
  m_take = add("trialTake", tr("Take it"), tr("Puts it on the line (Enter)"));
  m_back = add("trialBack", tr("Put it back"), tr("The line as it was (Esc)"));
  connect(m_take, &PillButton::clicked, trial, &Trial::take);
  connect(m_back, &PillButton::clicked, trial, &Trial::callOff);
  connect(trial, &Trial::changed, this, &TrialBar::follow);
  connect(look, &Look::changed, this, &TrialBar::applyLook);
  hide();
  applyLook();
}

void TrialBar::setReach(QWidget* face, QWidget* line, QWidget* reach) {
  m_face = face;
  m_line = line;
  m_reach = reach;
}

void TrialBar::follow() {
  const bool on = m_trial->on();
  // Only while something is tried on is every key of the face looked at.
  qApp->removeEventFilter(this);
  if (on) qApp->installEventFilter(this);
  setVisible(on);
  elide();
}

void TrialBar::elide() {
  if (!m_trial->on()) return;
  const QString words = tr("Trying %1", "a tip that is shown, not yet taken").arg(m_trial->what());
  m_words->setText(m_words->fontMetrics().elidedText(words, Qt::ElideRight, m_words->width()));
  m_words->setToolTip(words);
  m_words->setAccessibleName(words);
}

void TrialBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  elide();
}

bool TrialBar::key(QWidget* at, int key) {
  if (key == Qt::Key_Escape || (within(m_line, at) && !passesBy(key))) {
    m_trial->callOff();
    return true;
  }
  if ((key != Qt::Key_Return && key != Qt::Key_Enter) || !within(m_reach, at)) return false;
  if (at == m_back) {
    m_trial->callOff();
  } else {
    m_trial->take();
  }
  return true;
}

bool TrialBar::eventFilter(QObject* watched, QEvent* event) {
  const bool pressed = event->type() == QEvent::MouseButtonPress;
  if ((pressed || event->type() == QEvent::KeyPress) && watched->isWidgetType() &&
      QApplication::activePopupWidget() == nullptr) {
    auto* at = static_cast<QWidget*>(watched);
    if (pressed && within(m_line, at)) m_trial->callOff();
    if (!pressed && within(m_face, at)) return key(at, static_cast<QKeyEvent*>(event)->key());
  }
  return QWidget::eventFilter(watched, event);
}

void TrialBar::applyLook() {
  m_words->setFont(m_look->font(15, true));
  m_words->setMinimumWidth(0);
  m_words->setMaximumWidth(m_look->px(kWords));
  elide();
}

}  // namespace grainwise::ui
