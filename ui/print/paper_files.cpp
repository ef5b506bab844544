// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_files.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QLocale>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

#include "ui/document/whole_file.h"
#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {

constexpr int kImageDpi = 300;
constexpr double kMetresPerInch = 0.0254;

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

QByteArray png(const Pages& pages, int page, Paper paper) {
  const QSizeF sheet = sizeOf(paper);
  const double scale = double(kImageDpi) / kPageDpi;
  QImage image(int(std::lround(sheet.width() * scale)), int(std::lround(sheet.height() * scale)),
               QImage::Format_RGB32);
  image.setDotsPerMeterX(int(std::lround(kImageDpi / kMetresPerInch)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  image.fill(Qt::white);
  QPainter p(&image);
  p.scale(scale, scale);
  pages.paint(p, page, sheet);
  p.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

QByteArray svg(const Pages& pages, int page, Paper paper) {
  const QSizeF sheet = sizeOf(paper);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(kPageDpi);
  generator.setSize(sheet.toSize());
  generator.setViewBox(QRectF(QPointF(0, 0), sheet));
  generator.setTitle(pages.title());
  QPainter p(&generator);
  p.fillRect(QRectF(QPointF(0, 0), sheet), Qt::white);
  pages.paint(p, page, sheet);
  p.end();
  return bytes;
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

bool endsIn(const QString& path, const char* suffix) {
  return QFileInfo(path).suffix().compare(QLatin1String(suffix), Qt::CaseInsensitive) == 0;
}

}  // namespace

bool canWrite(const QString& path) {
  return endsIn(path, "pdf") || endsIn(path, "png") || endsIn(path, "svg");
}

Written writePages(const Pages& pages, const QString& path, Paper paper) {
  Written written;
  if (!canWrite(path)) {
    written.problem = PaperWords::tr("%1: the name should end in .pdf, .png or .svg").arg(path);
    return written;
  }
  const bool whole = endsIn(path, "pdf");
  for (int page = 0; page < (whole ? 1 : pages.count()); ++page) {
    const QByteArray bytes = whole                ? pdf(pages, paper)
                             : endsIn(path, "png") ? png(pages, page, paper)
                                                   : svg(pages, page, paper);
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
