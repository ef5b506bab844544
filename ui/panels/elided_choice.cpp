// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/elided_choice.h"

#include <QAbstractItemView>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr int kBesidesWords = 24;
constexpr int kInset = 4;
}  // namespace

void ElidedChoice::showPopup() {
  view()->setMinimumWidth(std::max(width(), view()->sizeHintForColumn(0) + kBesidesWords));
  QComboBox::showPopup();
}

void ElidedChoice::paintEvent(QPaintEvent*) {
  QStylePainter p(this);
  p.setPen(palette().color(QPalette::Text));
  QStyleOptionComboBox option;
  initStyleOption(&option);
  p.drawComplexControl(QStyle::CC_ComboBox, option);
  const QRect room = style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
  const QString whole = option.currentText;
  option.currentText = fontMetrics().elidedText(whole, Qt::ElideRight, room.width() - kInset);
  setToolTip(option.currentText == whole ? QString() : whole);
  p.drawControl(QStyle::CE_ComboBoxLabel, option);
}

}  // namespace grainwise::ui
