// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/cut_pages.h"

#include <QDate>
#include <QFontMetricsF>
#include <QLocale>

#include "ui/print/paper_files.h"
#include "ui/print/print_preview.h"
#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {
constexpr double kList_pt = 10;
constexpr double kLabel_pt = 8.5;  // 20 times that are 60 mm: three across
constexpr double kMark_pt = 92;
}  // namespace

CutPages::CutPages(const CutPicture& picture, const QString& of, DisplayUnits units)
    : FlowPages(PaperWords::tr("Cut sheet: %1").arg(of), units) {
  addText(title(), 18, true);
  addText(PaperWords::tr("%1. Marks run from one end of each spool; each spool to its own scale.")
              .arg(QLocale().toString(QDate::currentDate(), QLocale::ShortFormat)),
          kList_pt);
  addText(PaperWords::tr("Blades cut and heat burns: cut away from yourself, weld with the window open, "
                         "wear glasses when you test a knot or loop."),
          kList_pt);
  skip(10);
  for (const auto& spool : picture.spools) addSpool(spool);
  for (const QString& note : picture.notes) addText(note, kList_pt);
  if (picture.labels.isEmpty()) return;
  skip(10);
  addLabels(picture.labels);
}

void CutPages::addSpool(const CutPicture::Spool& spool) {
  const PictureStyle list = style(kList_pt);
  const QFont font = list.font();
  const double bar = spoolHeight(QFontMetricsF(font).height());
  add(bar, [=](QPainter& p, const QRectF& place) {
    p.setFont(font);
    paintSpool(p, place, spool, list.colours, 0.8 * kPoint);
  });
  for (const auto& cut : spool.cuts) {
    const double from = kMark_pt * kPoint;
    const QRectF room(0, 0, width() - from, 1e5);
    const double tall =
        QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, cut.name).height() + 1.5 * kPoint;
    add(tall, [=](QPainter& p, const QRectF& place) {
      p.setFont(font);
      p.setPen(list.colours.ink);
      p.drawText(QRectF(place.left(), place.top(), from - 10 * kPoint, tall), Qt::AlignRight, cut.mark);
      p.drawText(place.adjusted(from, 0, 0, 0), Qt::TextWordWrap, cut.name);
    });
  }
  skip(9);
}

void CutPages::addLabels(const QList<CutPicture::Label>& labels) {
  const PictureStyle type = style(kLabel_pt);
  const double each = kLabelWidth * type.text;
  const auto across = qsizetype(width() / each);
  addText(ringsTold(), kList_pt);
  skip(4);
  for (qsizetype i = 0; i < labels.size(); i += across) {
    const auto row = labels.mid(i, across);
    double tall = 0;
    for (const auto& label : row) {
      tall = std::max(tall, paintLabel(nullptr, QRectF(0, 0, each, 0), label, type));
    }
    add(tall, [=](QPainter& p, const QRectF& place) {
      for (qsizetype k = 0; k < row.size(); ++k) {
        paintLabel(&p, QRectF(place.left() + double(k) * each, place.top(), each, tall), row[k], type);
      }
    });
  }
}

CutPaper cutPaper(QWidget* parent) {
  CutPaper paper;
  paper.preview = [parent](const CutPicture& picture, const QString& of, DisplayUnits units) {
    previewPages(std::make_shared<CutPages>(picture, of, units), parent);
  };
  paper.write = [](const CutPicture& picture, const QString& of, DisplayUnits units, const QString& path) {
    return writePages(CutPages(picture, of, units), path, localPaper()).problem;
  };
  return paper;
}

}  // namespace grainwise::ui
