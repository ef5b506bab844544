// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cut_paper.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>

#include "ui/document/whole_file.h"

namespace grainwise::ui {
namespace {

class Paper {
  Q_DECLARE_TR_FUNCTIONS(Paper)
};

constexpr double kMillimetresPerInch = 25.4;
constexpr double kLabelWidth_mm = 60, kLabelHeight_mm = 20;

/// Goes down the page and on to the next.
class Pen {
 public:
  Pen(QPagedPaintDevice* device, QPainter& p) : m_device(device), m_p(p) {
    m_mm = device->logicalDpiX() / kMillimetresPerInch;
    m_page = QRectF(0, 0, device->width(), device->height());
    setFont(11, false);
  }
  void setFont(double points, bool bold) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points);
    font.setBold(bold);
    m_p.setFont(font);
    m_line = QFontMetricsF(font, m_device).height();
  }
  /// A place of that height across the page, on the next page where it does not fit here.
  QRectF take(double height) {
    if (m_y > 0 && m_y + height > m_page.height()) {
      m_device->newPage();
      m_y = 0;
    }
    const QRectF place(0, m_y, m_page.width(), height);
    m_y += height;
    return place;
  }
  void skip(double mm) { m_y += mm * m_mm; }
  void text(const QString& words, int flags = Qt::AlignLeft | Qt::TextWordWrap) {
    const QRectF room(0, 0, m_page.width(), m_page.height());
    const double height = m_p.boundingRect(room, flags, words).height();
    m_p.setPen(Qt::black);
    m_p.drawText(take(height), flags, words);
  }
  [[nodiscard]] double line() const { return m_line; }
  [[nodiscard]] double mm(double value) const { return value * m_mm; }
  [[nodiscard]] double width() const { return m_page.width(); }

 private:
  QPagedPaintDevice* m_device;
  QPainter& m_p;
  QRectF m_page;
  double m_mm = 1;
  double m_y = 0;
  double m_line = 1;
};

Colours paperColours() {
  Colours c = coloursOf(Scheme::sunlight);
  c.paper = c.card = c.riverFill = Qt::white;
  c.sinkFill = QColor(225, 225, 225);
  c.ink = c.onSink = c.brick = c.slate = c.edge = Qt::black;
  return c;
}

void printSpools(Pen& pen, QPainter& p, const CutPicture& picture, const Colours& colours) {
  for (const auto& spool : picture.spools) {
    const double marks = pen.line() * 1.15 * double(spool.cuts.size());
    const QRectF place = pen.take(spoolHeight(pen.line()) + marks + pen.mm(4));
    paintSpool(p, QRectF(place.left(), place.top(), place.width(), spoolHeight(pen.line())), spool,
               colours);
    double y = place.top() + spoolHeight(pen.line());
    for (const auto& cut : spool.cuts) {
      p.setPen(Qt::black);
      p.drawText(QRectF(0, y, pen.mm(38), pen.line()), Qt::AlignRight, cut.mark);
      p.drawText(QRectF(pen.mm(42), y, pen.width() - pen.mm(42), pen.line()), Qt::AlignLeft,
                 cut.name);
      y += pen.line() * 1.15;
    }
  }
}

void printLabels(Pen& pen, QPainter& p, const CutPicture& picture) {
  const double wide = pen.mm(kLabelWidth_mm), high = pen.mm(kLabelHeight_mm);
  const int across = std::max(1, int(pen.width() / wide));
  for (qsizetype i = 0; i < picture.labels.size(); i += across) {
    const QRectF row = pen.take(high);
    for (qsizetype k = i; k < std::min(i + across, picture.labels.size()); ++k) {
      const auto& label = picture.labels[k];
      const QRectF cell(row.left() + double(k - i) * wide, row.top(), wide, high);
      p.setPen(QPen(Qt::black, 0, Qt::DashLine));
      p.setBrush(Qt::NoBrush);
      p.drawRect(cell);
      const QRectF inside = cell.adjusted(pen.mm(2), pen.mm(1.5), -pen.mm(2), -pen.mm(1.5));
      pen.setFont(9, true);
      p.setPen(Qt::black);
      const QFontMetricsF metrics = p.fontMetrics();
      p.drawText(inside, Qt::AlignLeft | Qt::AlignTop,
                 metrics.elidedText(label.name, Qt::ElideMiddle, inside.width()));
      pen.setFont(9, false);
      p.drawText(inside.translated(0, pen.line() * 1.15), Qt::AlignLeft | Qt::AlignTop,
                 label.figures);
      if (label.hasRings) {
        paintRings(p, QRectF(inside.left(), inside.bottom() - pen.mm(5), inside.width(), pen.mm(4.5)),
                   label.code, Qt::black);
      }
    }
  }
}

}  // namespace

void printCutSheet(QPagedPaintDevice* device, const CutPicture& picture, const QString& title) {
  QPainter p(device);
  Pen pen(device, p);
  const Colours colours = paperColours();
  pen.setFont(16, true);
  pen.text(Paper::tr("Cut sheet: %1").arg(title));
  pen.setFont(10, false);
  pen.text(Paper::tr("%1. Marks run from one end of each spool; each spool to its own scale.")
               .arg(QLocale().toString(QDate::currentDate(), QLocale::ShortFormat)));
  pen.text(Paper::tr("Blades cut and heat burns: cut away from yourself, weld with the window open, "
                     "wear glasses when you test a knot or loop."));
  pen.skip(4);
  printSpools(pen, p, picture, colours);
  for (const QString& note : picture.notes) pen.text(note);
  if (picture.labels.isEmpty()) return;
  pen.skip(4);
  pen.setFont(10, false);
  pen.text(Paper::tr("Labels. Rings on the tip: a long one counts 5 grains a foot, a short one 1; "
                     "behind the gap, quarters that sink."));
  pen.skip(2);
  printLabels(pen, p, picture);
}

QString writeCutSheetPdf(const QString& path, const CutPicture& picture, const QString& title) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setTitle(Paper::tr("Cut sheet: %1").arg(title));
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
    writer.setResolution(300);
    printCutSheet(&writer, picture, title);
  }
  return writeWhole(path, bytes);
}

}  // namespace grainwise::ui
