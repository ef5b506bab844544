// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/slider_row.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kNameWidth = 84;
constexpr int kValueWidth = 76;
constexpr int kRowHeight = 26;
}  // namespace

SliderRow::SliderRow(Look* look, const QString& name, double low, double high, double step,
                     Words words, QWidget* parent)
    : QWidget(parent), m_look(look), m_low(low), m_step(step), m_value(low), m_words(std::move(words)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  m_name = new QLabel(name, this);
  m_name->setTextFormat(Qt::PlainText);
  m_slider = new QSlider(Qt::Horizontal, this);
  m_slider->setRange(0, int(std::lround((high - low) / step)));
  m_slider->setPageStep(std::max(1, m_slider->maximum() / 10));
  m_slider->setAccessibleName(name);
  m_name->setBuddy(m_slider);
  m_valueLabel = new QLabel(this);
  m_valueLabel->setTextFormat(Qt::PlainText);
  m_valueLabel->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(m_name);
  row->addWidget(m_slider, 1);
  row->addWidget(m_valueLabel);
  connect(m_slider, &QSlider::valueChanged, this, [this](int at) {
    m_value = m_low + at * m_step;
    showWords();
    Q_EMIT moved(m_value);
  });
  connect(m_slider, &QSlider::sliderReleased, this, &SliderRow::endGesture);
  m_slider->installEventFilter(this);
  connect(look, &Look::changed, this, &SliderRow::applyLook);
  applyLook();
}

bool SliderRow::held() const { return m_slider->isSliderDown(); }

void SliderRow::endGesture() {
  ++m_gesture;
  Q_EMIT gestureEnded();
}

/// A key ends when it is let go, the wheel when the pointer leaves, both when the keyboard goes elsewhere.
bool SliderRow::eventFilter(QObject* watched, QEvent* event) {
  const bool letGo = event->type() == QEvent::KeyRelease && !static_cast<QKeyEvent*>(event)->isAutoRepeat();
  const bool away = event->type() == QEvent::FocusOut || event->type() == QEvent::Leave;
  if (watched == m_slider && (letGo || (away && !held()))) endGesture();
  return QWidget::eventFilter(watched, event);
}

void SliderRow::setValue(double value) {
  m_value = value;
  if (!m_slider->isSliderDown()) {
    const QSignalBlocker quiet(m_slider);
    m_slider->setValue(int(std::lround((value - m_low) / m_step)));
  }
  showWords();
}

void SliderRow::showWords() {
  const QString words = m_words(m_value, m_look->units());
  m_valueLabel->setText(words);
  m_slider->setAccessibleDescription(words);
}

/// Sliders under each other begin at one edge, behind the longest of their names.
void SliderRow::alignNames() {
  const QList<SliderRow*> rows = parentWidget() != nullptr
                                     ? parentWidget()->findChildren<SliderRow*>(Qt::FindDirectChildrenOnly)
                                     : QList<SliderRow*>{this};
  int widest = m_look->px(kNameWidth);
  for (const SliderRow* row : rows) widest = std::max(widest, row->m_name->sizeHint().width());
  for (SliderRow* row : rows) row->m_name->setFixedWidth(widest);
}

void SliderRow::applyLook() {
  m_name->setFont(m_look->font(kType));
  m_valueLabel->setFont(m_look->font(kType, true));
  alignNames();
  m_valueLabel->setFixedWidth(m_look->px(kValueWidth));
  setFixedHeight(m_look->px(kRowHeight));
  showWords();
}

void giveRoom(QLabel* words, int width) {
  words->setFixedWidth(width);
  words->setMinimumHeight(std::max(0, words->heightForWidth(width)));
}

}  // namespace grainwise::ui
