// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_files.h"

#include <QBuffer>
#include <QFileInfo>
#include <QLocale>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <algorithm>

#include "ui/charts/way_out_files.h"
#include "ui/document/whole_file.h"
#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {

constexpr int kImageDpi = 300;

QPageSize pageSizeOf(Paper paper) {
  return QPageSize(paper == Paper::letter ? QPageSize::Letter : QPageSize::A4);
}

QByteArray pdf(const Pages& pages, Paper paper) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kPageDpi);
  writer.setPageLayout(QPageLayout(pageSizeOf(paper), QPageLayout::Portrait, QMarginsF()));
  writer.setTitle(pages.title());
  writer.setCreator(QStringLiteral("Grainwise"));
  QPainter p(&writer);
  for (int page = 0; page < pages.count(); ++page) {
    if (page > 0) writer.newPage();
    p.save();
    pages.paint(p, page, QSizeF(writer.width(), writer.height()));
    p.restore();
  }
  p.end();
  return bytes;
}

/// One page as a picture.
OutPicture pictureOf(const Pages& pages, int page, Paper paper) {
  const QSizeF sheet = sizeOf(paper);
  return {pages.title(), sheet, [&pages, page, sheet](QPainter& p) { pages.paint(p, page, sheet); }, kPageDpi};
}

/// Why it could not be written, or nothing.
QString writeFile(const QString& path, const QByteArray& bytes) {
  const QString why = writeWhole(path, bytes);
  return why.isEmpty() ? why : PaperWords::tr("%1: %2").arg(path, why);
}

QString nameOf(const QString& path, int page) {
  if (page == 0) return path;
  const QString suffix = QFileInfo(path).suffix();
  return path.chopped(suffix.size() + 1) + QStringLiteral("-%1.%2").arg(page + 1).arg(suffix);
}

}  // namespace

Written writePages(const Pages& pages, const QString& path, Paper paper) {
  Written written;
  const auto kind = pictureFileOf(path);
  if (!kind) {
    written.problem = PaperWords::tr("%1: the name should end in .pdf, .png or .svg").arg(path);
    return written;
  }
  const bool whole = *kind == PictureFile::pdf;
  for (int page = 0; page < (whole ? 1 : pages.count()); ++page) {
    const QByteArray bytes = whole                      ? pdf(pages, paper)
                             : *kind == PictureFile::png ? pngOf(pictureOf(pages, page, paper), kImageDpi)
                                                         : svgOf(pictureOf(pages, page, paper));
    written.problem = writeFile(nameOf(path, page), bytes);
    if (!written.problem.isEmpty()) return written;
    written.files.append(nameOf(path, page));
  }
  return written;
}

Paper localPaper() {
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter : Paper::a4;
}

void printPages(const Pages& pages, QPrinter& printer) {
  printer.setFullPage(true);
  QPainter p(&printer);
  const double scale = printer.resolution() / double(kPageDpi);
  const QSizeF sheet = printer.paperRect(QPrinter::DevicePixel).size() / scale;
  const int first = std::max(1, printer.fromPage());
  const int last = printer.toPage() > 0 ? std::min(printer.toPage(), pages.count()) : pages.count();
  for (int page = first; page <= last; ++page) {
    if (page > first) printer.newPage();
    p.save();
    p.scale(scale, scale);
    pages.paint(p, page - 1, sheet);
    p.restore();
  }
}

}  // namespace grainwise::ui
