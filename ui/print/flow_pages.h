// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "ui/print/page.h"

namespace grainwise::ui {

/// Pages that are filled from the top with one thing after another, each kept whole. They are laid out
/// for what both A4 and letter hold, so that the pages stay the same on either.
class FlowPages : public Pages {
 public:
  FlowPages(QString title, DisplayUnits units);

  [[nodiscard]] QString title() const override { return m_title; }
  [[nodiscard]] int count() const override { return int(m_pages.size()); }
  void paint(QPainter& p, int page, QSizeF sheet) const override;

 protected:
  using Draw = std::function<void(QPainter&, const QRectF&)>;
  /// Something of that height, in tenths of a point, drawn across the page.
  void add(double height, Draw draw);
  void addText(const QString& words, double points, bool bold = false, double indent = 0);
  void skip(double points);
  /// With type of that many points, on white.
  [[nodiscard]] PictureStyle style(double points) const;
  [[nodiscard]] double width() const;

 private:
  struct Item {
    double top = 0;
    double height = 0;
    Draw draw;
  };
  QString m_title;
  DisplayUnits m_units;
  std::vector<std::vector<Item>> m_pages{1};
  double m_y = 0;
};

}  // namespace grainwise::ui
