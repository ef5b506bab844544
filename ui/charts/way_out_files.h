// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPainter>
#include <QSizeF>
#include <QString>
#include <functional>
#include <optional>

#include "ui/text/out_table.h"
#include "ui/theme/look.h"

/// Single pictures as image, SVG or PDF: dark on white whatever the window wears, vectors where the file
/// can hold them, fonts by name.
namespace grainwise::ui {

/// A picture with its size in units of which `dpi` make an inch: window pixels, unless it says otherwise.
struct OutPicture {
  QString title;
  QSizeF size;
  std::function<void(QPainter&)> paint;
  int dpi = 96;
};

/// A widget as it stands, painted with a light look.
OutPicture pictureOf(QWidget* widget, const QString& title);
/// A table in the type of `look`.
OutPicture pictureOf(const OutTable& table, const QString& title, const Look& look);

/// Of a window's picture twice its size, so that it is sharp on paper and on fine screens.
inline constexpr int kSharpDpi = 192;
QImage imageOf(const OutPicture& picture, int dpi = kSharpDpi);
QByteArray pngOf(const OutPicture& picture, int dpi = kSharpDpi);
QByteArray svgOf(const OutPicture& picture);
QByteArray pdfOf(const OutPicture& picture);

/// The kinds of files that pictures and pages are written as.
enum class PictureFile { png, svg, pdf };
/// By the ending of a name; none for another ending.
std::optional<PictureFile> pictureFileOf(const QString& path);
/// Writes by the ending of the name; why not, or nothing.
QString writePicture(const OutPicture& picture, const QString& path);
QString writeTable(const OutTable& table, const QString& path);

}  // namespace grainwise::ui
