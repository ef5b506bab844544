// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/depth_map.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/plain_words.h"

namespace grainwise::ui {
namespace {
constexpr double kMostDrive = 3.0;  ///< beyond it more says nothing
constexpr int kDot = 7;
constexpr int kGroundAlpha = 200;
constexpr int kBest = 2;
constexpr int kTried = 200;     ///< rows that a name is tried for: more would not find room
constexpr int kRings = 5;       ///< how many lines of type off its dot a name may stand
constexpr double kNear = 14.0;  ///< of a click to its dot
}  // namespace

DepthMap::DepthMap(Look* look, const ChoiceList* list, QWidget* parent)
    : QWidget(parent), m_look(look), m_list(list) {
  setObjectName(QStringLiteral("depthMap"));
  setAccessibleName(tr("Map of the tips: depth against how well they carry the fly"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  connect(list, &QAbstractItemModel::modelReset, this, [this] {
    m_marked = -1;
    m_hovered = -1;
    speak();
    update();
  });
  connect(look, &Look::changed, this, [this] {
    updateGeometry();
    update();
  });
}

void DepthMap::setMarked(int row) {
  if (row == m_marked) return;
  m_marked = row;
  speak();
  update();
}

/// What a screen reader says of the map: the dot that is gone to, then all of it.
void DepthMap::speak() {
  QString words = summary();
  if (m_marked >= 0 && m_marked < m_list->rowCount()) {
    const QString one = m_list->data(m_list->index(m_marked, 0), Qt::AccessibleTextRole).toString();
    words = tr("%1. %2", "one tip in words, all of them in words").arg(one, words);
  }
  setAccessibleDescription(words);
  QAccessibleEvent told(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
}

QString DepthMap::summary() const {
  if (!m_list->answer() || m_list->rowCount() == 0) return tr("Nothing to show yet.");
  int fits = 0, watch = 0, refused = 0;
  for (int row = 0; row < m_list->rowCount(); ++row) {
    const Standing standing = m_list->choice(row).standing;
    ++(standing == Standing::fits ? fits : standing == Standing::watch ? watch : refused);
  }
  QString words = tr("%1 fit, %2 to be watched, %3 refused.", "numbers of tips").arg(fits).arg(watch).arg(refused);
  const auto& wanted = m_list->answer()->choice.wanted;
  if (wanted) words += QLatin1Char(' ') + tr("Wanted %1.").arg(wantedWords(*wanted, m_look->units()));
  if (m_list->choice(0).standing != Standing::rejected) {
    words += QLatin1Char(' ') + tr("Best: %1, %2.", "a tip, why").arg(m_list->name(0), m_list->sentence(0));
  }
  return words;
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

QRectF DepthMap::dotBox(const QPointF& dot) const {
  const double side = m_look->px(kDot) + 2;
  return {dot.x() - side / 2, dot.y() - side / 2, side, side};
}

QString DepthMap::nameOf(int row) const {
  const TipChoice& tip = m_list->choice(row);
  return tip.shelf ? partCaption(m_list->answer()->question.shelf.parts[*tip.shelf], m_look->units())
                   : m_list->name(row);
}

/// Above, below, right or left of its dot, inside the plot: the first place where it covers no other name
/// and no other dot. The one that is hovered or marked stands in any case.
std::vector<DepthMap::Name> DepthMap::names() const {
  std::vector<Name> placed;
  if (!m_list->answer()) return placed;
  const QRectF box = plot();
  const QFontMetrics metrics(m_look->font(14));
  const int rows = std::min(m_list->rowCount(), kTried);
  std::vector<QRectF> dots;
  for (int row = 0; row < rows; ++row) {
    const auto dot = dotOf(row);
    dots.push_back(dot ? dotBox(*dot) : QRectF());
  }
  const auto refused = [&](int row) { return m_list->choice(row).standing == Standing::rejected; };
  const auto place = [&](int row, bool always) {
    const auto dot = dotOf(row);
    Name name{row, metrics.elidedText(nameOf(row), Qt::ElideRight, int(box.width()) - 4), {}};
    // One name for parts that are called alike, but for the one that is asked for.
    const bool there = std::any_of(placed.begin(), placed.end(), [&](const Name& n) {
      return n.row == row || (n.words == name.words && row != m_hovered && row != m_marked);
    });
    if (!dot || there) return;
    const QSizeF size(metrics.horizontalAdvance(name.words) + 4, metrics.height());
    const double gap = m_look->px(kDot) * 0.5 + 3;
    const double left = std::clamp(dot->x() - size.width() / 2, box.left(), box.right() - size.width());
    std::vector<QPointF> places = {{left, dot->y() - gap - size.height()},
                                   {left, dot->y() + gap},
                                   {dot->x() + gap, dot->y() - size.height() / 2},
                                   {dot->x() - gap - size.width(), dot->y() - size.height() / 2}};
    // Further off, with a line to its dot: a place of its own beats the first one near.
    const int rings = always ? kRings : refused(row) ? 0 : 1;
    for (int ring = 1; ring <= rings; ++ring) {
      const double off = gap + ring * size.height();
      for (const double x : {left, dot->x() + off, dot->x() - off - size.width()}) {
        for (const double y : {dot->y() - off - size.height(), dot->y() + off, dot->y() - size.height() / 2}) {
          places.emplace_back(x, y);
        }
      }
    }
    for (const bool overDots : {false, true}) {
      if (overDots && !always) return;
      for (const QPointF& corner : places) {
        name.box = QRectF(corner, size);
        if (!box.contains(name.box)) continue;
        const bool onName = std::any_of(placed.begin(), placed.end(),
                                        [&](const Name& other) { return other.box.intersects(name.box); });
        bool onDot = false;
        for (int other = 0; !overDots && other < rows; ++other) {
          const bool faint = !refused(row) && refused(other);
          onDot = onDot || (other != row && !faint && dots[std::size_t(other)].intersects(name.box));
        }
        if (onName || onDot) continue;
        placed.push_back(name);
        return;
      }
    }
  };
  if (m_hovered >= 0 && m_hovered < m_list->rowCount()) place(m_hovered, true);
  if (m_marked >= 0 && m_marked < m_list->rowCount()) place(m_marked, true);
  for (int row = 0; row < rows; ++row) {
    if (m_list->choice(row).asItStands) place(row, true);
  }
  // The list is in the order of merit; the first few are named in any case.
  for (int row = 0; row < rows; ++row) place(row, row < kBest && !refused(row));
  return placed;
}

void DepthMap::paintNames(QPainter& p) const {
  const Colours& c = m_look->colours();
  p.setFont(m_look->font(14));
  QColor ground = c.card;
  ground.setAlpha(kGroundAlpha);
  for (const Name& name : names()) {
    const bool chosen = name.row == m_marked || name.row == m_hovered;
    const bool refused = m_list->choice(name.row).standing == Standing::rejected;
    const QPointF dot = *dotOf(name.row);
    const QPointF end(std::clamp(dot.x(), name.box.left(), name.box.right()),
                      std::clamp(dot.y(), name.box.top(), name.box.bottom()));
    if (std::hypot(end.x() - dot.x(), end.y() - dot.y()) > m_look->px(kDot) + 4) {
      p.setPen(QPen(c.slate, 1));
      p.drawLine(dot, end);
    }
    p.fillRect(name.box, ground);
    p.setFont(m_look->font(14, chosen));
    p.setPen(refused && !chosen ? c.slate : c.ink);
    p.drawText(name.box, Qt::AlignCenter | Qt::TextDontClip, name.words);
  }
}

void DepthMap::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  paintAxes(p);
  if (!m_list->answer()) return;
  paintDots(p);
  paintNames(p);
  if (!hasFocus()) return;
  p.setPen(QPen(m_look->colours().river, 2));
  p.setBrush(Qt::NoBrush);
  p.drawRect(plot().adjusted(-1, -1, 1, 1));
}

/// The dot nearest to a place, where one is near; of dots on one another the best.
int DepthMap::rowAt(const QPointF& place) const {
  int best = -1;
  double nearest = m_look->px(kNear);
  for (int row = 0; row < m_list->rowCount(); ++row) {
    const auto at = dotOf(row);
    if (!at) continue;
    const double far = std::hypot(at->x() - place.x(), at->y() - place.y());
    if (far < nearest) {
      nearest = far;
      best = row;
    }
  }
  return best;
}

void DepthMap::hover(int row) {
  if (row == m_hovered) return;
  m_hovered = row;
  Q_EMIT previewed(row);
  update();
}

bool DepthMap::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int row = rowAt(help->pos());
  QToolTip::showText(help->globalPos(),
                     row < 0 ? QString()
                             : PlainWords::shown(tr("%1: %2", "tip: sentence").arg(m_list->name(row), m_list->sentence(row))),
                     this);
  return true;
}

void DepthMap::mousePressEvent(QMouseEvent* event) {
  const int row = rowAt(event->position());
  if (row >= 0) Q_EMIT chosen(row);
}

void DepthMap::mouseDoubleClickEvent(QMouseEvent* event) {
  const int row = rowAt(event->position());
  if (row >= 0) Q_EMIT taken(row);
}

void DepthMap::mouseMoveEvent(QMouseEvent* event) { hover(rowAt(event->position())); }

void DepthMap::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  hover(-1);
}

/// The row whose dot comes next, to the right or downwards.
int DepthMap::next(int step, bool byDepth) const {
  std::vector<std::tuple<double, double, int>> order;
  for (int row = 0; row < m_list->rowCount(); ++row) {
    const auto at = dotOf(row);
    if (!at) continue;
    order.emplace_back(byDepth ? at->y() : at->x(), byDepth ? at->x() : at->y(), row);
  }
  if (order.empty()) return -1;
  std::sort(order.begin(), order.end());
  const auto here = std::find_if(order.begin(), order.end(), [&](const auto& o) { return std::get<2>(o) == m_marked; });
  if (here == order.end()) {
    return std::get<2>(*std::min_element(order.begin(), order.end(), [](const auto& a, const auto& b) {
      return std::get<2>(a) < std::get<2>(b);  // the best that has a dot
    }));
  }
  const auto at = std::clamp<std::ptrdiff_t>(here - order.begin() + step, 0, std::ptrdiff_t(order.size()) - 1);
  return std::get<2>(order[std::size_t(at)]);
}

void DepthMap::keyPressEvent(QKeyEvent* event) {
  int row = -1;
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
      row = next(event->key() == Qt::Key_Right ? 1 : -1, false);
      break;
    case Qt::Key_Up:
    case Qt::Key_Down:
      row = next(event->key() == Qt::Key_Down ? 1 : -1, true);
      break;
    case Qt::Key_Home:
      row = next(-m_list->rowCount(), false);
      break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (m_marked >= 0) Q_EMIT taken(m_marked);
      return;
    case Qt::Key_Escape:
      Q_EMIT escaped();
      return;
    default:
      return QWidget::keyPressEvent(event);
  }
  if (row < 0) return;
  setMarked(row);
  Q_EMIT chosen(row);
}

}  // namespace grainwise::ui
