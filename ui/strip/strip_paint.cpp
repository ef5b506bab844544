// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/strip/junction_tag.h"
#include "ui/strip/lens.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_metrics.h"
#include "ui/strip/strip_view.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/text_width.h"
#include "ui/theme/ground.h"
#include "ui/work/analysis_feed.h"

/// What the strip draws behind its blocks: rule, joints, captions, the outlines of an empty line.
namespace grainwise::ui {
using namespace strip_metrics;

namespace {

/// The outlines of an empty line, by share of its length: the fly comes first.
struct Outline {
  PartKind kind;
  double from;
  double to;
  double tall;
};
constexpr double kAboveOutlines = 10;  // the tallest of them stands free of the top bar
constexpr double kBeforeLine = 14;     // between the last of them and the line that is there

constexpr Outline kFlyOutline{PartKind::fly, kFlyPlace, 1.00, 0.62};
constexpr Outline kOutlines[] = {
    {PartKind::runningLine, 0.00, 0.115, 0.16}, {PartKind::head, 0.13, 0.56, 1.0},
    {PartKind::tip, 0.575, 0.765, 0.55},        {PartKind::leader, 0.78, 0.885, 0.16},
    kFlyOutline,
};

QStringList outlineWords(PartKind kind) {
  switch (kind) {
    case PartKind::fly:
      return {StripView::tr("1  the fly"), StripView::tr("1 fly")};
    case PartKind::leader:
      return {StripView::tr("2  a leader"), StripView::tr("2 leader")};
    case PartKind::tip:
      return {StripView::tr("3  a tip that carries the fly"), StripView::tr("3  a tip")};
    case PartKind::head:
      return {StripView::tr("4  a head that drives the tip"), StripView::tr("4  a head")};
    case PartKind::runningLine:
      return {StripView::tr("5  running line"), StripView::tr("5 running")};
    default:
      return {QString()};
  }
}

/// Inside the outline when they fit, else under it, as long as there is room for.
void paintOutlineWords(QPainter& p, const QRectF& box, const QStringList& choices) {
  const QFontMetricsF metrics(p.font());
  constexpr double kAside = 6;
  for (const QString& words : choices) {
    const double wide = metrics.horizontalAdvance(words);
    const bool inside = metrics.height() <= box.height() && wide + kAside < box.width();
    if (!inside && wide > box.width() + 2 * kAside) continue;
    const QRectF under(box.left() - kAside, box.bottom() + 3, box.width() + 2 * kAside, metrics.height());
    p.drawText(inside ? box : under, Qt::AlignCenter | Qt::TextDontClip, words);
    return;
  }
}

}  // namespace

void StripView::paintRule(QPainter& p) const {
  const Colours& c = m_look->colours();
  const DisplayUnits units = m_look->units();
  const double feetPerUnit = units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const double unitPixels = feetPerUnit * m_ruler->pixelsPerFoot();
  const double y = std::round(ruleTop()) + 0.5;
  p.setRenderHint(QPainter::Antialiasing, false);
  p.setPen(QPen(c.slate, 1));
  p.drawLine(QPointF(m_ruler->left(), y), QPointF(m_ruler->right(), y));
  double every = 1;
  int parts = 5;
  const std::pair<double, int> steps[] = {{0.5, 5}, {1, 2},  {2, 2},  {5, 5},
                                          {10, 10}, {20, 4}, {50, 5}, {100, 10}};
  for (const auto& [step, divided] : steps) {
    every = step;
    parts = divided;
    if (step * unitPixels >= m_look->px(78)) break;
  }
  while (parts > 1 && every / parts * unitPixels < 5) parts = parts % 2 == 0 && parts > 2 ? parts / 2 : 1;
  const QFont font = m_look->font(14);
  const QFontMetricsF metrics(font);
  p.setFont(font);
  const Station rear = m_feed->analysis().profile.start;
  const double last = (m_ruler->to() - rear).value() / feetPerUnit;
  for (int i = 0; i * every / parts <= last + 1e-9; ++i) {
    const double value = i * every / parts;
    const double x = std::round(m_ruler->x(rear + Feet(value * feetPerUnit))) + 0.5;
    const bool labelled = i % parts == 0;
    if (x < m_ruler->left() - 1) continue;
    p.drawLine(QPointF(x, y), QPointF(x, y + (labelled ? 8 : 4)));
    if (!labelled) continue;
    QString words = QLocale().toString(value, 'g', 5);
    if (i == 0) words += QLatin1Char(' ') + lengthUnit(units);
    const double wide = textWidth(words, font);
    if (x + wide / 2 > width() - 4) continue;
    p.drawText(QRectF(x - wide / 2 - 4, y + 9, wide + 8, metrics.height()), Qt::AlignCenter, words);
  }
  p.setRenderHint(QPainter::Antialiasing);
}

/// A dotted line from each tag down through its joint.
void StripView::paintJoints(QPainter& p) const {
  p.setRenderHint(QPainter::Antialiasing, false);
  p.setPen(QPen(m_look->colours().slate, 1, Qt::DotLine));
  const double from = kTagTop + JunctionTag::heightFor(*m_look);
  for (const JunctionTag* tag : m_tags) {
    if (!tag->isVisibleTo(this)) continue;
    const double x = std::round(m_ruler->x(tag->junction().at)) + 0.5;
    p.drawLine(QPointF(x, from), QPointF(x, m_middle + halfLine(x - 1, x + 1) + 10));
  }
  p.setRenderHint(QPainter::Antialiasing);
}

/// From the last six feet to the lens that shows them.
void StripView::paintLensGuides(QPainter& p) const {
  if (!m_lensShown) return;
  const Colours& c = m_look->colours();
  const Station end = m_feed->analysis().profile.end;
  const double from = m_ruler->x(end - Feet(Lens::kFeet));
  const double to = m_slideTo.empty() ? m_ruler->x(end) : std::max(m_ruler->x(end), m_slideTo.back().right());
  const double y = m_middle + halfLine(from, to) + 4;
  const QRectF lens(m_lens->geometry());
  p.setPen(QPen(c.slate, 1));
  p.drawLine(QPointF(from, y), QPointF(to, y));
  p.drawLine(QPointF(from, y), QPointF(from, y - 4));
  p.drawLine(QPointF(to, y), QPointF(to, y - 4));
  p.drawLine(QPointF(from, y), QPointF(lens.left() + 6, lens.top()));
  p.drawLine(QPointF(to, y), QPointF(std::max(to, lens.right() - 6), lens.top()));
}

void StripView::paintCaptions(QPainter& p) const {
  const Colours& c = m_look->colours();
  p.setFont(m_look->font(kOutsideType));
  for (const CaptionPlace& caption : m_captions) {
    p.fillRect(caption.box.adjusted(0, 2, 0, -2), c.paper);
    p.setPen(c.ink);
    p.drawText(caption.box, Qt::AlignCenter | Qt::TextDontClip, caption.words);
  }
}

/// An extension is no head yet.
bool StripView::holds(PartKind kind) const {
  const auto& parts = m_feed->rig()->parts;
  return std::any_of(parts.begin(), parts.end(),
                     [kind](const Part& part) { return part.kind == kind && part.style != Style::extension; });
}

/// Begun, and no head yet: the line keeps its place at the fly's end, with room for what is to come.
bool StripView::growing() const {
  return !m_guest && !holds(PartKind::head) && (holds(PartKind::fly) || profileLength() > Feet(0));
}

/// Where a head begins behind a running line.
double StripView::headEdge() const { return kLeftPlain + m_look->px(kRunningPerType); }

/// Where to drop what is still to come: on an empty line, and on one that is begun until it has a head.
std::vector<std::pair<PartKind, QRectF>> StripView::outlines() const {
  const bool begun = profileLength() > Feet(0);
  if (begun && !growing()) return {};
  const bool empty = m_feed->rig()->parts.empty();
  const double bottom = empty ? m_fromRod->y() - 6 : bodyBottom();
  const double top = begun ? bodyTop() : kTagTop + kAboveOutlines;
  const double middle = empty ? (top + bottom) / 2 : m_middle;
  const double half = std::min(middle - top, bottom - middle);
  std::vector<Outline> wanted;
  for (const Outline& outline : kOutlines) {
    const bool passed = begun && (outline.kind == PartKind::leader || outline.kind == PartKind::fly);
    if (!passed && !holds(outline.kind)) wanted.push_back(outline);
  }
  if (wanted.empty()) return {};
  // On a begun line they share what lies before it; else each has its place on the whole line.
  const double first = begun ? wanted.front().from : 0;
  const double last = begun ? wanted.back().to : 1;
  const bool running = holds(PartKind::runningLine);
  const double left = begun && running ? headEdge() + kBeforeLine : m_ruler->left();
  const double rear = m_ruler->x(m_feed->analysis().profile.start);
  double right = begun ? rear - kBeforeLine : m_ruler->right();
  for (const CaptionPlace& caption : m_captions) {  // words of a short part reach out over its end
    if (begun && caption.box.right() > rear) right = std::min(right, caption.box.left() - kBeforeLine / 2);
  }
  const auto x = [&](double share) { return left + (right - left) * (share - first) / (last - first); };
  std::vector<std::pair<PartKind, QRectF>> boxes;
  const auto add = [&](const Outline& outline, double from, double to) {
    boxes.emplace_back(outline.kind, QRectF(from, middle - half * outline.tall, to - from, 2 * half * outline.tall));
  };
  for (const Outline& outline : wanted) add(outline, x(outline.from), x(outline.to));
  if (begun && !holds(PartKind::fly)) {
    double from = m_ruler->left() + (m_ruler->right() - m_ruler->left()) * kFlyOutline.from;
    for (const CaptionPlace& caption : m_captions) from = std::max(from, caption.box.right() + kBeforeLine / 2);
    add(kFlyOutline, from, m_ruler->right());
  }
  return boxes;
}

/// Whether it is the turn of this kind: the fly comes first, then its leader, a tip, and the head.
bool StripView::isNext(PartKind kind) const {
  if (!holds(PartKind::fly)) return kind == PartKind::fly;
  if (profileLength() <= Feet(0)) return kind == PartKind::leader;
  return kind == (holds(PartKind::tip) ? PartKind::head : PartKind::tip);
}

void StripView::paintOutlines(QPainter& p) const {
  const Colours& c = m_look->colours();
  p.setFont(m_look->font(16));
  for (const auto& [kind, box] : outlines()) {
    const bool next = isNext(kind);
    const bool here = m_held && m_held->part.kind == kind;
    p.setBrush(here ? QBrush(c.riverFill) : QBrush(Qt::NoBrush));
    p.setPen(QPen(next || here ? c.river : c.slate, next || here ? 2 : 1, Qt::DashLine));
    p.drawRoundedRect(box, 6, 6);
    p.setPen(next ? c.ink : c.slate);
    paintOutlineWords(p, box, outlineWords(kind));
  }
}

void StripView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  paintGround(p, this, m_look->colours().paper);
  if (!m_guest) paintRule(p);
  paintOutlines(p);
  paintJoints(p);
  paintLensGuides(p);
  paintCaptions(p);
}

}  // namespace grainwise::ui
