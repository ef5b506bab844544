// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QStringList>
#include <QVector>
#include <optional>

#include "ui/charts/picture.h"
#include "ui/theme/glyph.h"

/// Paper: pages that paint themselves, and what they are written with.
namespace grainwise::ui {

enum class Paper { a4, letter };

/// Pages are laid out in tenths of a point: fine enough for type, the same on every device.
inline constexpr double kPoint = 10.0;
inline constexpr int kPageDpi = 720;
/// Upright, in those units.
QSizeF sizeOf(Paper paper);

/// Something that can be printed.
class Pages {
 public:
  Pages() = default;
  virtual ~Pages() = default;
  Pages(const Pages&) = delete;
  Pages& operator=(const Pages&) = delete;

  [[nodiscard]] virtual QString title() const = 0;
  [[nodiscard]] virtual int count() const = 0;
  /// Paints one page on a sheet of that size, its corner at the painter's origin.
  virtual void paint(QPainter& p, int page, QSizeF sheet) const = 0;
};

/// Writes down a page from its top: headings, paragraphs, tables, ruled lines, in ink on white.
class PageWriter {
 public:
  PageWriter(QPainter& painter, QSizeF sheet, DisplayUnits units);

  [[nodiscard]] QPainter& painter() { return m_painter; }
  /// The margins left out.
  [[nodiscard]] QRectF area() const { return m_area; }
  [[nodiscard]] double y() const { return m_y; }
  [[nodiscard]] double room() const { return m_area.bottom() - m_y; }
  void skip(double points) { m_y += points * kPoint; }
  /// With type of that many points, pictures' lines to match.
  [[nodiscard]] PictureStyle style(double points) const;

  void title(const QString& words, const QString& atRight);
  void heading(const QString& words);
  void paragraph(const QString& words, double points = 12, bool bold = false);
  /// A line that begins with a verdict's glyph.
  void verdict(std::optional<Glyph> glyph, const QString& name, const QString& figures,
               const QString& words);
  /// Words with a rule behind each to write on, side by side.
  void blanks(const QStringList& words);
  /// Columns of the given shares; the first row in bold. Empty cells leave room to write.
  void table(const QVector<QStringList>& rows, const QVector<double>& shares, double rowPoints = 17);
  /// Rules to write on.
  void rules(int count, double apartPoints = 22);
  /// A small line at the foot of the page.
  void footer(const QString& words);

 private:
  double write(const QRectF& box, const QString& words, double points, bool bold, int flags);

  QPainter& m_painter;
  QRectF m_area;
  DisplayUnits m_units;
  Colours m_colours;
  double m_y = 0;
};

}  // namespace grainwise::ui
