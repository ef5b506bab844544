// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cut_drawing.h"

#include <QPainter>
#include <algorithm>

#include "core/report/cut_sheet.h"
#include "ui/text/bench_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr double kBarLines = 1.5;    // height of the bar in lines of text
constexpr double kLeftShown = 0.35;  // of what is used, at most, of what is left
constexpr double kGap = 12;

CutPicture::Label labelOf(const CutSheet& sheet, const TipLabel& label, DisplayUnits units) {
  CutPicture::Label result;
  result.name = labelWords(sheet, label, units);
  result.figures = CutDrawing::tr("%1, %2").arg(tapeText(label.finished, units),
                                                massText(label.mass, units));
  if (!label.rings) return result;
  result.code = *label.rings;
  result.hasRings = true;
  result.rings = QString::fromStdString(ringText(*label.rings));
  return result;
}

}  // namespace

CutPicture pictureOf(const CutSheet& sheet, const Spools& spools, DisplayUnits units) {
  CutPicture picture;
  for (const SpoolCuts& cuts : sheet.spools) {
    const Spool& spool = spools.spools[cuts.spool];
    const LineStuff stuff = stuffOf(spool);
    CutPicture::Spool drawn;
    drawn.title = CutDrawing::tr("%1, %2 on the spool")
                      .arg(QString::fromStdString(spool.name), tapeText(spool.left, units));
    drawn.length = spool.left.value();
    drawn.left = CutDrawing::tr("%1 left").arg(tapeText(cuts.left, units));
    for (const PlacedCut& placed : cuts.cuts) {
      const WantedCut& cut = sheet.cuts[placed.cut];
      drawn.cuts.append({placed.from.value(), placed.to.value(), tapeText(placed.to, units),
                         cutWords(sheet, cut, units), stuff.sinks && !stuff.material});
    }
    picture.spools.append(drawn);
  }
  for (const MaterialCuts& material : sheet.materials) {
    const QString lacks = shortageWords(sheet, material, units);
    if (!lacks.isEmpty()) picture.notes.append(CutDrawing::tr("Short: %1").arg(lacks));
    if (!material.exact && material.opened > material.leastOpened) {
      picture.notes.append(CutDrawing::tr("%1: %2 spools opened; by the lengths alone none opens "
                                          "fewer than %3")
                               .arg(lineWords(material.stuff, units))
                               .arg(material.opened)
                               .arg(material.leastOpened));
    }
  }
  for (const MadePart& part : sheet.bought) {
    picture.notes.append(
        CutDrawing::tr("%1: tapered, bought whole").arg(partWords(part.part, units)));
  }
  for (const TipLabel& label : sheet.labels) picture.labels.append(labelOf(sheet, label, units));
  return picture;
}

double spoolHeight(double lineHeight) { return lineHeight * (1.2 + kBarLines + 1.3); }

void paintSpool(QPainter& p, const QRectF& place, const CutPicture::Spool& spool,
                const Colours& colours) {
  const QFontMetricsF metrics(p.font());
  const double line = metrics.height();
  p.setPen(colours.ink);
  p.drawText(QRectF(place.left(), place.top(), place.width(), line),
             Qt::AlignLeft | Qt::AlignVCenter,
             metrics.elidedText(spool.title, Qt::ElideRight, place.width()));
  const double used = spool.used();
  const double left = std::max(0.0, spool.length - used);
  const bool broken = left > used * kLeftShown;
  const double shown = used + (broken ? used * kLeftShown : left);
  if (!(shown > 0)) return;
  const double scale = place.width() / shown;
  const QRectF bar(place.left(), place.top() + line * 1.2, place.width(), line * kBarLines);
  p.setPen(QPen(colours.edge, 1));
  p.setBrush(colours.card);
  p.drawRect(bar);
  double wordsFrom = -1e9;
  for (const CutPicture::Cut& cut : spool.cuts) {
    const QRectF box(bar.left() + cut.from * scale, bar.top(), (cut.to - cut.from) * scale,
                     bar.height());
    p.setPen(QPen(colours.ink, 1.2));
    p.setBrush(cut.sinks ? colours.sinkFill : colours.riverFill);
    p.drawRect(box);
    p.setPen(cut.sinks ? colours.onSink : colours.ink);
    p.drawText(box.adjusted(6, 0, -6, 0), Qt::AlignLeft | Qt::AlignVCenter,
               metrics.elidedText(cut.name, Qt::ElideMiddle, box.width() - 12));
    p.setPen(QPen(colours.brick, 2));
    p.drawLine(QPointF(box.right(), bar.top() - 2), QPointF(box.right(), bar.bottom() + 5));
    const double wide = metrics.horizontalAdvance(cut.mark);
    const double at = std::clamp(box.right() - wide / 2, place.left(), place.right() - wide);
    if (at < wordsFrom + 6) continue;  // its mark still stands on the bar and on the list
    p.setPen(colours.ink);
    p.drawText(QPointF(at, bar.bottom() + 4 + metrics.ascent()), cut.mark);
    wordsFrom = at + wide;
  }
  const QRectF rest(bar.left() + used * scale, bar.top(), bar.right() - bar.left() - used * scale,
                    bar.height());
  p.setPen(colours.slate);
  const QString words = metrics.elidedText(spool.left, Qt::ElideRight, rest.width() - 16);
  p.drawText(rest.adjusted(8, 0, -8, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
  if (!broken) return;
  p.setPen(QPen(colours.slate, 1.5));
  for (const double x : {rest.right() - 12, rest.right() - 7}) {
    p.drawLine(QPointF(x - 3, bar.bottom() + 3), QPointF(x + 3, bar.top() - 3));
  }
}

void paintRings(QPainter& p, const QRectF& place, const RingCode& code, const QColor& ink) {
  const double step = place.height() * 0.45;
  double x = place.left() + step;
  const auto ring = [&](double share) {
    p.drawLine(QPointF(x, place.center().y() - place.height() * share / 2),
               QPointF(x, place.center().y() + place.height() * share / 2));
    x += step;
  };
  p.setPen(QPen(ink, std::max(1.5, place.height() * 0.12)));
  for (int i = 0; i < code.longRings; ++i) ring(1.0);
  for (int i = 0; i < code.shortRings; ++i) ring(0.5);
  x += step * 1.5;
  for (int i = 0; i < code.quarters; ++i) ring(0.5);
}

CutDrawing::CutDrawing(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("cutDrawing"));
  connect(look, &Look::changed, this, [this] {
    updateGeometry();
    update();
  });
}

void CutDrawing::setPicture(const CutPicture& picture) {
  m_picture = picture;
  QStringList spoken;
  for (const auto& spool : picture.spools) {
    QStringList marks;
    for (const auto& cut : spool.cuts) marks.append(cut.mark + QStringLiteral(": ") + cut.name);
    spoken.append(spool.title + QStringLiteral(". ") + marks.join(QStringLiteral(", ")));
  }
  setAccessibleName(tr("Cut sheet"));
  setAccessibleDescription((spoken + picture.notes).join(QLatin1Char('\n')));
  updateGeometry();
  update();
}

double CutDrawing::heightNeeded() const {
  const double line = QFontMetricsF(m_look->font(14)).height();
  const auto spools = double(m_picture.spools.size());
  const double labels = m_picture.labels.isEmpty() ? 0 : double(m_picture.labels.size()) + 1.5;
  return spools * (spoolHeight(line) + kGap) + labels * line * 1.35 + kGap;
}

QSize CutDrawing::sizeHint() const { return {m_look->px(640), int(heightNeeded())}; }
QSize CutDrawing::minimumSizeHint() const { return {m_look->px(320), int(heightNeeded())}; }

void CutDrawing::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  p.setFont(m_look->font(14));
  const double line = QFontMetricsF(p.font()).height();
  double y = 0;
  for (const auto& spool : m_picture.spools) {
    paintSpool(p, QRectF(1, y, width() - 2, spoolHeight(line)), spool, c);
    y += spoolHeight(line) + kGap;
  }
  if (m_picture.labels.isEmpty()) return;
  const double row = line * 1.35;
  const double figures = width() * 0.42, rings = width() * 0.66;
  p.setPen(c.slate);
  p.drawText(QPointF(0, y + line),
             tr("Labels. Rings: a long one counts 5 grains a foot, a short one 1; behind the gap, "
                "quarters that sink."));
  y += row * 1.3;
  for (const auto& label : m_picture.labels) {
    const QFontMetricsF metrics(p.font());
    p.setPen(c.ink);
    p.drawText(QPointF(0, y + line * 0.8),
               metrics.elidedText(label.name, Qt::ElideMiddle, figures - 12));
    p.drawText(QPointF(figures, y + line * 0.8), label.figures);
    if (label.hasRings) paintRings(p, QRectF(rings, y, 200, line * 0.95), label.code, c.ink);
    y += row;
  }
}

}  // namespace grainwise::ui
