// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace grainwise::ui {

/// Fusion with what this program does otherwise, on every page and in every dialog: scroll bars are a quiet
/// handle on the ground they stand on, and none where there is nothing to scroll; words in buttons, fields
/// and lists of choices stand off their border; in the dark a control has an outline that is seen, and a box to
/// tick grows with the type. Colours come from the palette, so that they follow the Look.
class HouseStyle : public QProxyStyle {
  Q_OBJECT
 public:
  HouseStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

  void polish(QWidget* widget) override;
  using QProxyStyle::polish;
  [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                const QWidget* widget) const override;
  [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                       const QWidget* widget) const override;
  [[nodiscard]] QRect subElementRect(SubElement element, const QStyleOption* option,
                                     const QWidget* widget) const override;
  [[nodiscard]] QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                                     const QWidget* widget) const override;
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override;
};

}  // namespace grainwise::ui
