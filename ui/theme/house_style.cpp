// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/house_style.h"

#include <QPainter>
#include <QScrollBar>
#include <QStyleOption>
#include <algorithm>

#include "ui/theme/system_scheme.h"

namespace grainwise::ui {
namespace {
constexpr int kBar = 16;           ///< a scroll bar is as wide as this
constexpr int kLeastHandle = 36;
constexpr int kBesideHandle = 4;
constexpr int kButtonRoom = 12;    ///< both sides together, beyond Fusion's
constexpr int kFieldRoom = 3;      ///< before what is typed or chosen
constexpr int kLeastBox = 14;      ///< of a box to tick
constexpr double kBoxOfType = 0.8;
constexpr double kRound = 2;

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

/// Between the page's hairlines and its second words.
QColor outlineOf(const QPalette& palette) {
  const QColor line = palette.color(QPalette::Mid);
  const QColor words = palette.color(QPalette::PlaceholderText);
  return QColor((line.red() + words.red()) / 2, (line.green() + words.green()) / 2, (line.blue() + words.blue()) / 2);
}

/// Fusion's own outline is darker than the ground: there is none to be seen in the dark. The one of the keyboard
/// is thicker, so that it is told from the others.
void outlineInTheDark(const QStyleOption& option, QPainter& p) {
  if (!isDark(option.palette)) return;
  const bool focused = option.state & QStyle::State_HasFocus;
  const double pen = focused ? 2 : 1;
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  p.setPen(QPen(focused ? option.palette.color(QPalette::Highlight) : outlineOf(option.palette), pen));
  p.setBrush(Qt::NoBrush);
  p.drawRoundedRect(QRectF(option.rect).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2), kRound, kRound);
  p.restore();
}

/// A box to tick: as large as the type beside it.
void drawTick(const QStyleOption& option, QPainter& p) {
  const QPalette& colours = option.palette;
  const QRectF box = QRectF(option.rect).adjusted(1, 1, -1, -1);
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  if (!(option.state & QStyle::State_Enabled)) p.setOpacity(0.5);
  const bool focused = option.state & QStyle::State_HasFocus;
  p.setPen(QPen(colours.color(focused ? QPalette::Highlight : QPalette::PlaceholderText), focused ? 2 : 1.2));
  p.setBrush(colours.color(QPalette::Base));
  p.drawRoundedRect(box, kRound, kRound);
  p.setPen(QPen(colours.color(QPalette::Text), box.width() / 7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const auto at = [&box](double x, double y) { return QPointF(box.left() + x * box.width(), box.top() + y * box.height()); };
  if (option.state & QStyle::State_On) p.drawPolyline(QPolygonF{at(0.24, 0.52), at(0.43, 0.72), at(0.77, 0.29)});
  if (option.state & QStyle::State_NoChange) p.drawLine(at(0.28, 0.5), at(0.72, 0.5));
  p.restore();
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

void HouseStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
  if (element == PE_IndicatorCheckBox) return drawTick(*option, *painter);
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  const bool framed = element == PE_FrameLineEdit || element == PE_PanelButtonCommand || element == PE_Frame;
  if (framed) outlineInTheDark(*option, *painter);
}

int HouseStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  if (metric == PM_ScrollBarExtent) return kBar;
  if (metric == PM_ScrollBarSliderMin) return kLeastHandle;
  if (metric == PM_IndicatorWidth || metric == PM_IndicatorHeight) {
    const int type = option != nullptr ? option->fontMetrics.height() : widget != nullptr ? widget->fontMetrics().height() : 0;
    return std::max(kLeastBox, int(type * kBoxOfType));
  }
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
  if (bar == nullptr) {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_ComboBox) outlineInTheDark(*option, *painter);
    return;
  }
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
