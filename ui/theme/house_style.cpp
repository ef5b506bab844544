// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/house_style.h"

#include <QPainter>
#include <QScrollBar>
#include <QStyleOption>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr int kBar = 16;           ///< a scroll bar is as wide as this
constexpr int kLeastHandle = 36;
constexpr int kBesideHandle = 4;
constexpr int kButtonRoom = 12;    ///< both sides together, beyond Fusion's
constexpr int kFieldRoom = 3;      ///< before what is typed or chosen

/// A part of the bar's length, from its start.
QRect along(const QStyleOptionSlider& bar, int from, int length) {
  const QRect& r = bar.rect;
  return bar.orientation == Qt::Vertical ? QRect(r.left(), r.top() + from, r.width(), length)
                                         : QRect(r.left() + from, r.top(), length, r.height());
}

QRect partOfBar(const QStyleOptionSlider& bar, QStyle::SubControl part) {
  const int all = bar.orientation == Qt::Vertical ? bar.rect.height() : bar.rect.width();
  const int range = bar.maximum - bar.minimum;
  const auto share = double(bar.pageStep) / std::max(1.0, double(range) + bar.pageStep);
  const int handle = range <= 0 ? all : std::clamp(int(all * share), std::min(kLeastHandle, all), all);
  const int at = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition, all - handle,
                                                 bar.upsideDown);
  switch (part) {
    case QStyle::SC_ScrollBarGroove:
      return bar.rect;
    case QStyle::SC_ScrollBarSlider:
      return along(bar, at, handle);
    case QStyle::SC_ScrollBarSubPage:
      return along(bar, 0, at);
    case QStyle::SC_ScrollBarAddPage:
      return along(bar, at + handle, all - at - handle);
    default:
      return {};  // there are no arrows at its ends
  }
}

}  // namespace

/// What stands behind a bar is painted by the page that it stands on.
void HouseStyle::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (qobject_cast<QScrollBar*>(widget) != nullptr) {
    widget->setAttribute(Qt::WA_OpaquePaintEvent, false);
    widget->setAttribute(Qt::WA_Hover);
  }
}

int HouseStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  if (metric == PM_ScrollBarExtent) return kBar;
  if (metric == PM_ScrollBarSliderMin) return kLeastHandle;
  return QProxyStyle::pixelMetric(metric, option, widget);
}

QSize HouseStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                   const QWidget* widget) const {
  const QSize wanted = QProxyStyle::sizeFromContents(type, option, size, widget);
  switch (type) {
    case CT_PushButton:
      return wanted + QSize(kButtonRoom, 0);
    case CT_LineEdit:
    case CT_ComboBox:
      return wanted + QSize(kFieldRoom, 0);
    default:
      return wanted;
  }
}

QRect HouseStyle::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const {
  const QRect rect = QProxyStyle::subElementRect(element, option, widget);
  if (element != SE_LineEditContents) return rect;
  return rect.adjusted(kFieldRoom, 0, 0, 0);
}

QRect HouseStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                 const QWidget* widget) const {
  if (control == CC_ScrollBar) {
    if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option)) return partOfBar(*bar, part);
  }
  const QRect rect = QProxyStyle::subControlRect(control, option, part, widget);
  if (control != CC_ComboBox || part != SC_ComboBoxEditField) return rect;
  const bool mirrored = option->direction == Qt::RightToLeft;
  return rect.adjusted(mirrored ? 0 : kFieldRoom, 0, mirrored ? -kFieldRoom : 0, 0);
}

void HouseStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const {
  const auto* bar = control == CC_ScrollBar ? qstyleoption_cast<const QStyleOptionSlider*>(option) : nullptr;
  if (bar == nullptr) return QProxyStyle::drawComplexControl(control, option, painter, widget);
  if (bar->maximum <= bar->minimum) return;
  const QRectF handle = QRectF(partOfBar(*bar, SC_ScrollBarSlider))
                            .adjusted(kBesideHandle, kBesideHandle, -kBesideHandle, -kBesideHandle);
  const bool held = bar->activeSubControls & SC_ScrollBarSlider && bar->state & (State_MouseOver | State_Sunken);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(Qt::NoPen);
  painter->setBrush(bar->palette.color(held ? QPalette::WindowText : QPalette::PlaceholderText));
  painter->drawRoundedRect(handle, kBesideHandle, kBesideHandle);
  painter->restore();
}

}  // namespace grainwise::ui
