// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPainter>
#include <QSizeF>
#include <QString>
#include <functional>

#include "ui/text/out_table.h"
#include "ui/theme/look.h"

/// Single pictures as image, SVG or PDF: dark on white whatever the window wears, vectors where the file
/// can hold them, fonts by name.
namespace grainwise::ui {

/// A picture with its size in window pixels (96 to the inch).
struct OutPicture {
  QString title;
  QSizeF size;
  std::function<void(QPainter&)> paint;
};

/// A widget as it stands, painted with a light look.
OutPicture pictureOf(QWidget* widget, const QString& title);
/// A table in the type of `look`.
OutPicture pictureOf(const OutTable& table, const QString& title, const Look& look);

/// At twice the size of the window, so that it is sharp on paper and on fine screens.
QImage imageOf(const OutPicture& picture);
QByteArray pngOf(const OutPicture& picture);
QByteArray svgOf(const OutPicture& picture);
QByteArray pdfOf(const OutPicture& picture);

/// Whether a name ends in .png, .svg or .pdf.
bool isPictureName(const QString& path);
/// Writes by the ending of the name; why not, or nothing.
QString writePicture(const OutPicture& picture, const QString& path);
QString writeTable(const OutTable& table, const QString& path);

}  // namespace grainwise::ui
