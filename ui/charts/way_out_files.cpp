// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/way_out_files.h"

#include <QBuffer>
#include <QFileInfo>
#include <QPageLayout>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <QWidget>
#include <algorithm>
#include <cmath>

#include "ui/charts/diagram_access.h"
#include "ui/charts/way_out.h"
#include "ui/document/whole_file.h"

namespace grainwise::ui {
namespace {

constexpr double kMetresPerInch = 0.0254;
constexpr double kPointsPerInch = 72;
constexpr int kType = 15;
constexpr double kWidestColumn = 360;
constexpr double kGap = 18;
constexpr double kAbove = 5;

template <class Write>
QByteArray bytesOf(Write write) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  write(buffer);
  return bytes;
}

/// A table laid out: where its columns begin and its rows end.
struct LaidOut {
  QFont plain, bold;
  Colours colours;
  OutTable table;
  std::vector<double> left, wide, tall;
  [[nodiscard]] double width() const {
    return left.empty() ? 0 : left.back() + wide.back() + kGap / 2;
  }
  [[nodiscard]] double height() const {
    double sum = 0;
    for (const double row : tall) sum += row;
    return sum + kAbove;
  }
};

QStringList wordsOf(const std::vector<OutCell>& row) {
  QStringList words;
  for (const OutCell& cell : row) words << cell.shown();
  return words;
}

LaidOut layOut(const OutTable& table, const Look& look) {
  LaidOut out{
      look.font(kType), look.font(kType, true), coloursOf(Scheme::light), table, {}, {}, {}};
  const QFontMetricsF plain(out.plain), bold(out.bold);
  const std::size_t columns = std::size_t(table.header.size());
  double x = kGap / 2;
  for (std::size_t c = 0; c < columns; ++c) {
    double wide = bold.horizontalAdvance(table.header[qsizetype(c)]);
    for (const auto& row : table.rows) {
      if (c < row.size()) wide = std::max(wide, plain.horizontalAdvance(row[c].shown()));
    }
    out.left.push_back(x);
    out.wide.push_back(std::ceil(std::min(wide, look.px(kWidestColumn) * 1.0)) + 1);
    x += out.wide.back() + kGap;
  }
  const auto tallOf = [&](const QStringList& words, const QFontMetricsF& metrics) {
    double tall = metrics.height();
    for (std::size_t c = 0; c < std::min(columns, std::size_t(words.size())); ++c) {
      const QRectF room(0, 0, out.wide[c], 1e5);
      tall = std::max(tall,
                      metrics.boundingRect(room, Qt::TextWordWrap, words[qsizetype(c)]).height());
    }
    return std::ceil(tall) + 2 * kAbove;
  };
  out.tall.push_back(tallOf(table.header, bold));
  for (const auto& row : table.rows) out.tall.push_back(tallOf(wordsOf(row), plain));
  return out;
}

void paintTable(QPainter& p, const LaidOut& out) {
  double y = 0;
  for (std::size_t r = 0; r < out.tall.size(); ++r) {
    const bool head = r == 0;
    p.setFont(head ? out.bold : out.plain);
    p.setPen(out.colours.ink);
    const std::size_t cells =
        head ? out.left.size() : std::min(out.left.size(), out.table.rows[r - 1].size());
    for (std::size_t c = 0; c < cells; ++c) {
      const bool number = !head && out.table.rows[r - 1][c].number;
      const QString words =
          head ? out.table.header[qsizetype(c)] : out.table.rows[r - 1][c].shown();
      p.drawText(QRectF(out.left[c], y + kAbove, out.wide[c], out.tall[r] - kAbove),
                 int((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop | Qt::TextWordWrap),
                 words);
    }
    y += out.tall[r];
    p.setPen(QPen(head ? out.colours.slate : out.colours.edge, 1));
    p.drawLine(QPointF(0, y), QPointF(out.width(), y));
  }
}

}  // namespace

OutPicture pictureOf(QWidget* widget, const QString& title) {
  return {title, widget->size(), [widget](QPainter& p) {
            widget->setProperty(kLeaving, true);
            widget->render(&p, QPoint(), QRegion(), QWidget::DrawChildren);
            widget->setProperty(kLeaving, false);
          }};
}

OutPicture pictureOf(const OutTable& table, const QString& title, const Look& look) {
  const LaidOut out = layOut(table, look);
  return {title, QSizeF(out.width(), out.height()), [out](QPainter& p) { paintTable(p, out); }};
}

QImage imageOf(const OutPicture& picture, int dpi) {
  const double scale = double(dpi) / picture.dpi;
  const QSize size = (picture.size * scale).toSize().expandedTo({1, 1});
  QImage image(size, QImage::Format_RGB32);
  image.setDotsPerMeterX(int(std::lround(dpi / kMetresPerInch)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  image.fill(Qt::white);
  QPainter p(&image);
  p.setRenderHint(QPainter::Antialiasing);
  p.scale(scale, scale);
  picture.paint(p);
  return image;
}

QByteArray pngOf(const OutPicture& picture, int dpi) {
  return bytesOf([&](QBuffer& buffer) { imageOf(picture, dpi).save(&buffer, "PNG"); });
}

QByteArray svgOf(const OutPicture& picture) {
  return bytesOf([&](QBuffer& buffer) {
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(picture.dpi);
    generator.setSize(
        QSize(int(std::ceil(picture.size.width())), int(std::ceil(picture.size.height()))));
    generator.setViewBox(QRectF(QPointF(), picture.size));
    generator.setTitle(picture.title);
    QPainter p(&generator);
    p.fillRect(QRectF(QPointF(), picture.size), Qt::white);
    picture.paint(p);
  });
}

QByteArray pdfOf(const OutPicture& picture) {
  return bytesOf([&](QBuffer& buffer) {
    QPdfWriter writer(&buffer);
    writer.setResolution(picture.dpi);
    const QSizeF points = picture.size * (kPointsPerInch / picture.dpi);
    const QPageSize page(points, QPageSize::Point, picture.title, QPageSize::ExactMatch);
    // Upright or lying: the page is as it was asked for.
    writer.setPageLayout(QPageLayout(page, QPageLayout::Portrait, QMarginsF()));
    writer.setTitle(picture.title);
    writer.setCreator(QStringLiteral("Grainwise"));
    QPainter p(&writer);
    picture.paint(p);
  });
}

std::optional<PictureFile> pictureFileOf(const QString& path) {
  const QString suffix = QFileInfo(path).suffix().toLower();
  if (suffix == QLatin1String("png")) return PictureFile::png;
  if (suffix == QLatin1String("svg")) return PictureFile::svg;
  if (suffix == QLatin1String("pdf")) return PictureFile::pdf;
  return std::nullopt;
}

QString writePicture(const OutPicture& picture, const QString& path) {
  const auto kind = pictureFileOf(path);
  if (!kind) return WayOut::tr("%1: the name should end in .png, .svg or .pdf").arg(path);
  const QByteArray bytes = *kind == PictureFile::png   ? pngOf(picture)
                           : *kind == PictureFile::svg ? svgOf(picture)
                                                       : pdfOf(picture);
  const QString why = writeWhole(path, bytes);
  return why.isEmpty() ? why : WayOut::tr("%1: %2").arg(path, why);
}

QString writeTable(const OutTable& table, const QString& path) {
  const QString why = writeWhole(path, csvOf(table));
  return why.isEmpty() ? why : WayOut::tr("%1: %2").arg(path, why);
}

}  // namespace grainwise::ui
