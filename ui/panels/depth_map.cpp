// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/depth_map.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr double kMostDrive = 3.0;  ///< beyond it more says nothing
constexpr int kDot = 7;
constexpr int kGroundAlpha = 200;
constexpr int kNamed = 1;      ///< besides the one that is on and the marked one
constexpr double kNear = 14.0;  ///< of a click to its dot
}  // namespace

DepthMap::DepthMap(Look* look, const ChoiceList* list, QWidget* parent)
    : QWidget(parent), m_look(look), m_list(list) {
  setObjectName(QStringLiteral("depthMap"));
  setAccessibleName(tr("Map of the tips: depth against how well they carry the fly"));
  connect(list, &QAbstractItemModel::modelReset, this, [this] {
    m_marked = -1;
    update();
  });
  connect(look, &Look::changed, this, [this] {
    updateGeometry();
    update();
  });
}

void DepthMap::setMarked(int row) {
  m_marked = row;
  update();
}

QSize DepthMap::sizeHint() const { return {m_look->px(280), m_look->px(150)}; }
QSize DepthMap::minimumSizeHint() const { return {m_look->px(220), m_look->px(120)}; }

QRectF DepthMap::plot() const {
  const int words = QFontMetrics(m_look->font(14)).horizontalAdvance(tr("top")) + m_look->px(8);
  return QRectF(rect()).adjusted(std::max(m_look->px(40), words), m_look->px(6), -m_look->px(8), -m_look->px(22));
}

double DepthMap::deepest_ft() const {
  const auto& answer = m_list->answer();
  if (answer && answer->question.pool) return answer->question.pool->depth.value();
  if (answer && answer->question.rig.water && answer->question.rig.water->depth) {
    return answer->question.rig.water->depth->value();
  }
  return 5.0;
}

std::optional<QPointF> DepthMap::dotOf(int row) const {
  const TipFigures& f = m_list->choice(row).figures;
  if (!f.depth || !f.drive) return std::nullopt;
  const double depth_ft = f.depth->band ? f.depth->band->middle.value() : 0.0;
  const QRectF box = plot();
  return QPointF(box.left() + box.width() * std::clamp(*f.drive / kMostDrive, 0.0, 1.0),
                 box.top() + box.height() * std::clamp(depth_ft / deepest_ft(), 0.0, 1.0));
}

void DepthMap::paintAxes(QPainter& p) const {
  const Colours& c = m_look->colours();
  const QRectF box = plot();
  p.fillRect(box, c.card);
  const auto& answer = m_list->answer();
  if (answer && answer->choice.wanted) {
    const WantedWater& wanted = *answer->choice.wanted;
    const double top = box.top() + box.height() * wanted.low.value() / deepest_ft();
    const double bottom = box.top() + box.height() * wanted.high.value() / deepest_ft();
    p.fillRect(QRectF(box.left(), top, box.width(), bottom - top), c.riverFill);
  }
  p.setPen(QPen(c.edge, 1));
  p.setBrush(Qt::NoBrush);
  p.drawRect(box);
  // From here on the line carries the fly.
  const double carries = box.left() + box.width() / kMostDrive;
  p.setPen(QPen(c.slate, 1, Qt::DashLine));
  p.drawLine(QPointF(carries, box.top()), QPointF(carries, box.bottom()));
  p.setFont(m_look->font(14));
  p.setPen(c.slate);
  const QRectF left(0, box.top(), box.left() - m_look->px(4), box.height());
  p.drawText(left, Qt::AlignTop | Qt::AlignRight, tr("top"));
  p.drawText(left, Qt::AlignBottom | Qt::AlignRight,
             numberText(shownValue(deepest_ft(), Measure::length, m_look->units()), 1));
  const QRectF below(0, box.bottom() + 2, width(), m_look->px(20));
  const QString better = tr("carries the fly better →");
  p.drawText(below, Qt::AlignCenter, p.fontMetrics().elidedText(better, Qt::ElideRight, width()));
}

void DepthMap::paintDots(QPainter& p) const {
  const Colours& c = m_look->colours();
  const double size = m_look->px(kDot);
  for (int row = m_list->rowCount() - 1; row >= 0; --row) {
    const auto at = dotOf(row);
    if (!at) continue;
    const bool refused = m_list->choice(row).standing == Standing::rejected;
    p.setOpacity(refused ? 0.2 : 1.0);
    const double side = refused ? size * 0.7 : size;
    paintGlyph(p, QRectF(at->x() - side / 2, at->y() - side / 2, side, side),
               glyphOf(gradeOf(m_list->choice(row).standing)), c);
  }
  p.setOpacity(1.0);
  if (m_marked < 0 || m_marked >= m_list->rowCount()) return;
  if (const auto at = dotOf(m_marked)) {
    p.setPen(QPen(c.ink, 2));
    p.setBrush(Qt::NoBrush);
    p.drawEllipse(*at, size, size);
  }
}

/// The name of a row over its dot, or under it, wherever no other name stands.
void DepthMap::paintName(QPainter& p, int row, QList<QRectF>& taken) const {
  const auto at = dotOf(row);
  if (!at) return;
  const QRectF box = plot();
  const QFontMetrics metrics = p.fontMetrics();
  const auto& shelf = m_list->answer()->question.shelf;
  const TipChoice& tip = m_list->choice(row);
  const QString full =
      tip.shelf ? partCaption(shelf.parts[*tip.shelf], m_look->units()) : m_list->name(row);
  const QString words = metrics.elidedText(full, Qt::ElideRight, int(box.width()) - 4);
  QRectF text(0, 0, metrics.horizontalAdvance(words) + 4, metrics.height());
  text.moveCenter(*at);
  text.moveLeft(std::clamp(text.left(), box.left(), std::max(box.left(), box.right() - text.width())));
  for (const bool above : {true, false}) {
    const double gap = m_look->px(kDot);
    if (above) {
      text.moveBottom(at->y() - gap);
    } else {
      text.moveTop(at->y() + gap);
    }
    const auto meets = [&](const QRectF& other) { return other.intersects(text); };
    if (text.top() < box.top() || text.bottom() > box.bottom()) continue;
    if (std::any_of(taken.begin(), taken.end(), meets)) continue;
    taken.append(text);
    QColor ground = m_look->colours().card;
    ground.setAlpha(kGroundAlpha);
    p.fillRect(text, ground);
    p.setPen(m_look->colours().ink);
    p.drawText(text, Qt::AlignCenter, words);
    return;
  }
}

void DepthMap::paintNames(QPainter& p) const {
  p.setFont(m_look->font(14));
  QList<QRectF> taken;
  if (m_marked >= 0 && m_marked < m_list->rowCount()) paintName(p, m_marked, taken);
  const auto usable = [&](int row) {
    return row != m_marked && m_list->choice(row).standing != Standing::rejected;
  };
  for (int row = 0; row < m_list->rowCount(); ++row) {
    if (row != m_marked && m_list->choice(row).asItStands) paintName(p, row, taken);
  }
  const auto before = taken.size();
  for (int row = 0; row < m_list->rowCount() && taken.size() < before + kNamed; ++row) {
    if (usable(row) && !m_list->choice(row).asItStands) paintName(p, row, taken);
  }
}

void DepthMap::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  paintAxes(p);
  if (!m_list->answer()) return;
  paintDots(p);
  paintNames(p);
}

void DepthMap::mousePressEvent(QMouseEvent* event) {
  int best = -1;
  double nearest = m_look->px(kNear);
  for (int row = 0; row < m_list->rowCount(); ++row) {
    const auto at = dotOf(row);
    if (!at) continue;
    const QPointF off = *at - event->position();
    const double far = std::hypot(off.x(), off.y());
    if (far < nearest) {
      nearest = far;
      best = row;
    }
  }
  if (best >= 0) Q_EMIT chosen(best);
}

}  // namespace grainwise::ui
