// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cut_drawing.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/report/cut_sheet.h"
#include "ui/text/bench_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr double kBarLines = 1.5;    // height of the bar in lines of text
constexpr double kLeftShown = 0.35;  // of what is used, at most, of what is left
constexpr double kGap = 12;

/// What of a finished tip sinks; nothing of nylon, which has no say in it.
QString sinksWords(const Part& part, const TipLabel& label, DisplayUnits units) {
  if (part.kind != PartKind::tip && !part.isCoatedLeader()) return {};
  if (!(label.sinking > Feet(0))) return CutDrawing::tr("all of it floats");
  if (label.sinking == label.finished) return CutDrawing::tr("all of it sinks");
  return CutDrawing::tr("%1 of it sink").arg(tapeText(label.sinking, units));
}

CutPicture::Label labelOf(const CutSheet& sheet, const TipLabel& label, DisplayUnits units,
                          const QDate& day) {
  const Part& part = sheet.made[label.made].part;
  CutPicture::Label result;
  result.name = labelWords(sheet, label, units);
  QStringList figures{tapeText(label.finished, units)};
  if (label.perFoot) figures.append(lineMassText(*label.perFoot, units));
  figures.append(massText(label.mass, units));
  result.figures = figures.join(CutDrawing::tr(", "));
  result.sinks = sinksWords(part, label, units);
  result.made = QLocale().toString(day, QLocale::ShortFormat);
  result.symbol = silhouetteOf(part);
  if (!label.rings) return result;
  result.code = *label.rings;
  result.hasRings = true;
  result.rings = QString::fromStdString(ringText(*label.rings));
  return result;
}

PictureStyle screenStyle(const Look& look) {
  PictureStyle style;
  style.colours = look.colours();
  style.units = look.units();
  style.text = look.px(14);
  style.stroke = 1.2;
  return style;
}

}  // namespace

CutPicture pictureOf(const CutSheet& sheet, const Spools& spools, DisplayUnits units,
                     const QDate& day) {
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
  for (const TipLabel& label : sheet.labels) {
    picture.labels.append(labelOf(sheet, label, units, day));
  }
  return picture;
}

double spoolHeight(double lineHeight) { return lineHeight * (1.2 + kBarLines + 1.3); }

void paintSpool(QPainter& p, const QRectF& place, const CutPicture::Spool& spool,
                const Colours& colours, double unit) {
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
  p.setPen(QPen(colours.edge, unit));
  p.setBrush(colours.card);
  p.drawRect(bar);
  double wordsFrom = -1e9;
  for (const CutPicture::Cut& cut : spool.cuts) {
    const QRectF box(bar.left() + cut.from * scale, bar.top(), (cut.to - cut.from) * scale,
                     bar.height());
    p.setPen(QPen(colours.ink, 1.2 * unit));
    p.setBrush(cut.sinks ? colours.sinkFill : colours.riverFill);
    p.drawRect(box);
    p.setPen(cut.sinks ? colours.onSink : colours.ink);
    p.drawText(box.adjusted(6 * unit, 0, -6 * unit, 0), Qt::AlignLeft | Qt::AlignVCenter,
               metrics.elidedText(cut.name, Qt::ElideMiddle, box.width() - 12 * unit));
    p.setPen(QPen(colours.brick, 2 * unit));
    p.drawLine(QPointF(box.right(), bar.top() - 2 * unit), QPointF(box.right(), bar.bottom() + 5 * unit));
    const double wide = metrics.horizontalAdvance(cut.mark);
    const double at = std::clamp(box.right() - wide / 2, place.left(), place.right() - wide);
    if (at < wordsFrom + 6 * unit) continue;  // its mark still stands on the bar and on the list
    p.setPen(colours.ink);
    p.drawText(QPointF(at, bar.bottom() + 4 * unit + metrics.ascent()), cut.mark);
    wordsFrom = at + wide;
  }
  const QRectF rest(bar.left() + used * scale, bar.top(), bar.right() - bar.left() - used * scale,
                    bar.height());
  p.setPen(colours.slate);
  const QString words = metrics.elidedText(spool.left, Qt::ElideRight, rest.width() - 16 * unit);
  p.drawText(rest.adjusted(8 * unit, 0, -8 * unit, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
  if (!broken) return;
  p.setPen(QPen(colours.slate, 1.5 * unit));
  for (const double x : {rest.right() - 12 * unit, rest.right() - 7 * unit}) {
    p.drawLine(QPointF(x - 3 * unit, bar.bottom() + 3 * unit), QPointF(x + 3 * unit, bar.top() - 3 * unit));
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

QString ringsTold() {
  return CutDrawing::tr("Labels. Rings: a long one counts 5 grains a foot, a short one 1; behind the gap, "
                        "quarters that sink.");
}

double paintLabel(QPainter* p, const QRectF& box, const CutPicture::Label& label, const PictureStyle& style) {
  const double pad = style.text * 0.7;
  double y = box.top() + pad;
  const auto write = [&](const QString& words, bool bold, const QColor& colour) {
    if (words.isEmpty()) return;
    const QFont font = style.font(1, bold);
    const QRectF room(box.left() + pad, y, box.width() - 2 * pad, 1e5);
    const double tall = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, words).height();
    if (p) {
      p->setFont(font);
      p->setPen(colour);
      p->drawText(QRectF(room.left(), y, room.width(), tall), Qt::TextWordWrap, words);
    }
    y += tall;
  };
  write(label.name, true, style.colours.ink);
  y += style.text * 0.3;
  const QRectF symbol(box.left() + pad, y, style.text * 9, style.text * 1.4);
  if (p) paintSymbol(*p, symbol, label.symbol, style);
  if (p && label.hasRings) {
    paintRings(*p, QRectF(symbol.right() + pad, y, style.text * 9, symbol.height()), label.code,
               style.colours.ink);
  }
  y += symbol.height() + style.text * 0.3;
  write(label.figures, false, style.colours.ink);
  write(label.sinks.isEmpty() ? label.made : CutDrawing::tr("%1; %2", "what sinks; date").arg(label.sinks, label.made),
        false, style.colours.ink);
  y += pad;
  if (p) {
    p->setBrush(Qt::NoBrush);
    p->setPen(QPen(style.colours.edge, style.stroke * 0.8, Qt::DashLine));
    p->drawRect(QRectF(box.left(), box.top(), box.width(), std::max(box.height(), y - box.top())));
  }
  return y - box.top();
}

CutDrawing::CutDrawing(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("cutDrawing"));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
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
  for (const auto& label : picture.labels) {
    spoken.append(QStringList{label.name, label.figures, label.sinks, label.made}.join(QStringLiteral("; ")));
  }
  setAccessibleName(tr("Cut sheet"));
  setAccessibleDescription((spoken + picture.notes).join(QLatin1Char('\n')));
  updateGeometry();
  update();
}

QSize CutDrawing::sizeHint() const { return {m_look->px(640), heightForWidth(m_look->px(640))}; }
QSize CutDrawing::minimumSizeHint() const { return {m_look->px(320), 0}; }
int CutDrawing::heightForWidth(int width) const { return int(std::ceil(draw(nullptr, width))); }

void CutDrawing::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  draw(&p, width());
}

double CutDrawing::draw(QPainter* p, double wide) const {
  const PictureStyle style = screenStyle(*m_look);
  const QFont font = m_look->font(14);
  const double line = QFontMetricsF(font).height();
  double y = 0;
  for (const auto& spool : m_picture.spools) {
    if (p) p->setFont(font);
    if (p) paintSpool(*p, QRectF(1, y, wide - 2, spoolHeight(line)), spool, style.colours);
    y += spoolHeight(line) + kGap;
  }
  if (m_picture.labels.isEmpty()) return y;
  const QRectF room(0, y, wide, 1e5);
  const QString told = ringsTold();
  if (p) {
    p->setFont(font);
    p->setPen(style.colours.slate);
    p->drawText(room, Qt::TextWordWrap, told);
  }
  y += QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, told).height() + kGap / 2;
  const double each = kLabelWidth * style.text + kGap;
  const qsizetype across = std::max(qsizetype(1), qsizetype((wide + kGap) / each));
  for (qsizetype i = 0; i < m_picture.labels.size(); i += across) {
    const auto row = m_picture.labels.mid(i, across);
    double tall = 0;
    const auto box = [&](qsizetype k, double height) {
      return QRectF(1 + double(k) * each, y + 1, kLabelWidth * style.text, height);
    };
    for (const auto& label : row) tall = std::max(tall, paintLabel(nullptr, box(0, 0), label, style));
    for (qsizetype k = 0; p && k < row.size(); ++k) paintLabel(p, box(k, tall), row[k], style);
    y += tall + kGap;
  }
  return y;
}

}  // namespace grainwise::ui
