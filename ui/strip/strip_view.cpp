// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_view.h"

#include <QDrag>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/junction_tag.h"
#include "ui/strip/lens.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_overlay.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kHeight = 204;
constexpr int kTagRow = 32;
constexpr int kRuleHeight = 34;
constexpr int kLeft = 64;
constexpr int kLeftOfRunningLine = 132;
constexpr int kRight = 34;
constexpr int kCaptionType = 14;
constexpr double kLeastHit = 28;
constexpr double kFlyHit = 48;
constexpr double kEmptyFeet = 40;
/// A line of less than this keeps the scale, so that a light rig does not look heavy.
constexpr double kLeastScale_gr_per_ft = 8;
constexpr int kMostSliding = 16;
constexpr double kLensZoom = 2.0;
constexpr double kLensFoot = 48;
}  // namespace

StripView::StripView(Look* look, RigDocument* document, AnalysisFeed* feed, Ruler* ruler,
                     QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_ruler(ruler) {
  setAcceptDrops(true);
  setFocusPolicy(Qt::ClickFocus);
  setAccessibleName(tr("The line, from the rod to the fly"));
  m_lens = new Lens(look, this);
  m_overlay = new StripOverlay(this);
  m_fromRod = new QPushButton(tr("Start from a rod"), this);
  m_fromRod->setMinimumHeight(44);
  m_fromRod->setCursor(Qt::PointingHandCursor);
  runDrag = [](QDrag* drag) { return drag->exec(Qt::CopyAction | Qt::MoveAction, Qt::CopyAction); };
  connect(m_fromRod, &QPushButton::clicked, this, &StripView::startFromRod);
  connect(m_lens, &Lens::pressed, this, [this](std::size_t part) { focusBlock(part); });
  connect(m_lens, &Lens::dragged, this, &StripView::startDrag);
  connect(m_lens, &Lens::activated, this, &StripView::partActivated);
  connect(feed, &AnalysisFeed::analysisChanged, this, [this] { layOut(true); });
  connect(look, &Look::changed, this, [this] {
    updateGeometry();
    layOut(false);
  });
  connect(ruler, &Ruler::cursorMoved, m_overlay, qOverload<>(&QWidget::update));
  layOut(false);
}

QSize StripView::minimumSizeHint() const { return {400, m_look->px(kHeight - 4)}; }

QSize StripView::sizeHint() const { return {1366, m_look->px(kHeight)}; }

double StripView::rulerTop() const { return height() - m_look->px(kRuleHeight); }

double StripView::lineBottom() const {
  return m_lens->isHidden() ? rulerTop() - 8 : rulerTop() - m_lens->wantedHeight() - 8;
}

double StripView::middle() const { return (m_look->px(kTagRow) + lineBottom()) / 2.0; }

double StripView::halfHeight() const { return middle() - m_look->px(kTagRow) - 2; }

void StripView::layOut(bool slide) {
  const Rig& rig = *m_feed->rig();
  const Analysis& a = m_feed->analysis();
  setRuler();
  m_lens->setVisible(Lens::useful(rig, a, *m_ruler, *m_look));
  double heaviest = kLeastScale_gr_per_ft;
  for (const ProfileSpan& span : a.profile.spans) {
    heaviest = std::max({heaviest, span.properties.mass.rodEnd.value(),
                         span.properties.mass.flyEnd.value()});
  }
  m_pixelsPerGrain = 2 * halfHeight() / heaviest;
  fitBlocks(slide);
  fitLens();
  fitCaptions();
  fitTags();
  m_fromRod->setVisible(rig.parts.empty());
  m_fromRod->setFont(m_look->font(16));
  m_fromRod->adjustSize();
  m_fromRod->move(int(m_ruler->left()), int(rulerTop()) - m_fromRod->height() - 8);
  m_overlay->setGeometry(rect());
  m_overlay->raise();
  for (JunctionTag* tag : m_tags) tag->raise();
  m_lens->raise();
  update();
  m_overlay->update();
}

void StripView::setRuler() {
  const Rig& rig = *m_feed->rig();
  const MassProfile& profile = m_feed->analysis().profile;
  const bool running = !rig.parts.empty() && rig.parts.front().kind == PartKind::runningLine;
  const double length = profile.end.feet() - profile.start.feet();
  m_ruler->setRange(profile.start, profile.start + Feet(length > 0 ? length : kEmptyFeet),
                    m_look->px(running ? kLeftOfRunningLine : kLeft), width() - m_look->px(kRight));
}

QRectF StripView::lineBox(std::size_t part) const {
  const PartPlace& place = m_feed->analysis().profile.places[part];
  const double tall = 2 * halfHeight();
  const double top = middle() - halfHeight();
  if (m_feed->rig()->parts[part].kind == PartKind::runningLine) {
    return {14, top, m_ruler->left() - 14, tall};
  }
  const double left = m_ruler->x(place.from);
  return {left, top, m_ruler->x(place.to) - left, tall};
}

QRect StripView::hitBox(std::size_t part) const {
  QRectF box = lineBox(part);
  if (m_feed->rig()->parts[part].kind == PartKind::fly) {
    box = QRectF(0, 0, m_look->px(kFlyHit), m_look->px(34));
    box.moveCenter(QPointF(lineBox(part).left() + m_look->px(8), middle()));
    return box.toAlignedRect();
  }
  const Silhouette shape =
      silhouetteOf(m_feed->rig()->parts[part], m_feed->analysis().profile, part);
  const double tall = std::max<double>(m_look->px(kLeastHit), shape.heaviest() * m_pixelsPerGrain + 6);
  box.setTop(middle() - tall / 2);
  box.setHeight(tall);
  return box.toAlignedRect();
}

Block* StripView::newBlock() {
  auto* block = new Block(m_look, this);
  connect(block, &Block::pressed, this, [this](std::size_t index) { focusBlock(index); });
  connect(block, &Block::dragged, this, &StripView::startDrag);
  connect(block, &Block::activated, this, &StripView::partActivated);
  connect(block, &Block::menuWanted, this, &StripView::showMenu);
  block->show();
  return block;
}

void StripView::fitBlocks(bool slide) {
  const Rig& rig = *m_feed->rig();
  const Analysis& a = m_feed->analysis();
  const std::size_t count = rig.parts.size();
  const bool regroup = m_blocks.size() != qsizetype(count);
  while (m_blocks.size() < qsizetype(count)) m_blocks.append(newBlock());
  while (m_blocks.size() > qsizetype(count)) {
    Block* gone = m_blocks.takeLast();
    gone->hide();
    gone->setParent(nullptr);
    gone->deleteLater();
  }
  const bool slides = slide && !m_look->reduceMotion() && count <= kMostSliding;
  const QFontMetrics bold(m_look->font(15, true));
  for (std::size_t i = 0; i < count; ++i) {
    Block::Picture picture;
    picture.shape = silhouetteOf(rig.parts[i], a.profile, i);
    picture.caption = partCaption(rig.parts[i], m_look->units());
    picture.line = lineBox(i);
    picture.pixelsPerGrain = m_pixelsPerGrain;
    const double tall = picture.shape.heaviest() * m_pixelsPerGrain;
    picture.captionInside = !picture.shape.isFly && tall >= bold.height() &&
                            rig.parts[i].kind != PartKind::runningLine &&
                            bold.horizontalAdvance(picture.caption) + 16 <= picture.line.width();
    Block* block = m_blocks[qsizetype(i)];
    block->setIndex(i);
    QString spoken = partSpoken(rig.parts[i], m_look->units());
    for (const Junction& j : a.junctions) {
      if (j.flySide == i) spoken += QStringLiteral(", ") + junctionSpoken(j, rig, m_look->units());
    }
    block->setAccessibleName(spoken);
    block->setToolTip(partWords(rig.parts[i], m_look->units()));
    block->setSelected(m_selected == i);
    block->setPicture(picture);
    block->moveTo(hitBox(i), slides);
  }
  if (regroup) fitTabOrder();
}

void StripView::fitTabOrder() {
  QWidget* before = this;
  for (Block* block : m_blocks) {
    setTabOrder(before, block);
    before = block;
  }
}

void StripView::fitLens() {
  if (m_lens->isHidden()) return;
  const double foot = std::max<double>(kLensZoom * m_ruler->pixelsPerFoot(), m_look->px(kLensFoot));
  const int wide = m_lens->wantedWidth(foot);
  const int tall = m_lens->wantedHeight();
  m_lens->setGeometry(width() - wide - 8, int(rulerTop()) - tall - 3, wide, tall);
  m_lens->magnify(*m_feed->rig(), m_feed->analysis(), m_pixelsPerGrain, foot);
  m_lens->setSelected(m_selected);
}

/// Captions that do not fit inside their block: above the line, else below it, where nothing else is;
/// else left to the tooltip and the drawer.
void StripView::fitCaptions() {
  m_captions.clear();
  const Rig& rig = *m_feed->rig();
  const QFontMetrics metrics(m_look->font(kCaptionType));
  std::vector<QRectF> taken;
  for (Block* block : m_blocks) taken.push_back(QRectF(block->picture().line.left(), middle() - std::max(6.0, block->picture().shape.heaviest() * m_pixelsPerGrain / 2),
                                                       block->picture().line.width(), std::max(12.0, block->picture().shape.heaviest() * m_pixelsPerGrain)));
  if (!m_lens->isHidden()) taken.push_back(QRectF(m_lens->geometry()));
  for (qsizetype i = 0; i < m_blocks.size(); ++i) {
    const Block::Picture& picture = m_blocks[i]->picture();
    if (picture.captionInside) continue;
    if (!m_lens->isHidden() && std::size_t(i) >= m_lens->firstPart()) continue;
    const bool running = rig.parts[std::size_t(i)].kind == PartKind::runningLine;
    QString words = picture.caption;
    if (running) words = metrics.elidedText(words, Qt::ElideRight, int(picture.line.width()) - 4);
    const double wide = metrics.horizontalAdvance(words);
    const double tall = metrics.height();
    const double away =
        std::max(6.0, picture.shape.heaviest() * m_pixelsPerGrain / 2) + (picture.shape.isFly ? 8 : 2);
    double left = running ? picture.line.left() : picture.line.center().x() - wide / 2;
    left = std::min(left, width() - wide - 8);
    for (const double top : {middle() - away - tall, middle() + away}) {
      const QRectF box(left, top, wide, tall);
      const bool free = std::none_of(taken.begin(), taken.end(),
                                     [&](const QRectF& t) { return t.intersects(box.adjusted(-4, 0, 4, 0)); });
      if (!free || box.top() < m_look->px(kTagRow) || box.bottom() > rulerTop()) continue;
      m_captions.append({box, words});
      taken.push_back(box);
      break;
    }
  }
}

/// Worst joints first; each tag as whole as there is room for, over its joint, never on another.
void StripView::fitTags() {
  const Rig& rig = *m_feed->rig();
  const auto& list = m_feed->analysis().junctions;
  while (m_tags.size() < qsizetype(list.size())) {
    auto* tag = new JunctionTag(m_look, this);
    connect(tag, &JunctionTag::clicked, this, &StripView::tagClicked);
    m_tags.append(tag);
  }
  while (m_tags.size() > qsizetype(list.size())) delete m_tags.takeLast();
  std::vector<std::size_t> order(list.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return grade(list[a].verdict) > grade(list[b].verdict);
  });
  std::vector<QRect> taken;
  for (const std::size_t i : order) {
    JunctionTag* tag = m_tags[qsizetype(i)];
    tag->setJunction(list[i], junctionSpoken(list[i], rig, m_look->units()));
    const int middleX = int(std::lround(m_ruler->x(list[i].at)));
    bool placed = false;
    for (const auto room : {JunctionTag::Room::whole, JunctionTag::Room::figures, JunctionTag::Room::glyph}) {
      const int wide = tag->widthFor(room);
      for (const int left : {middleX - wide / 2, middleX - wide + 16, middleX - 16}) {
        const int inside = std::clamp(left, 8, std::max(8, width() - wide - 8));
        const QRect box(inside, 4, wide, tag->tagHeight());
        const bool free = std::none_of(taken.begin(), taken.end(), [&](const QRect& t) {
          return t.intersects(box.adjusted(-4, 0, 4, 0));
        });
        if (!free) continue;
        tag->setRoom(room);
        tag->setGeometry(box);
        taken.push_back(box);
        placed = true;
        break;
      }
      if (placed) break;
    }
    tag->setVisible(placed);
  }
}

void StripView::paintRule(QPainter& p) const {
  const Colours& c = m_look->colours();
  const DisplayUnits units = m_look->units();
  const double footPerUnit = units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const double unitPixels = footPerUnit * m_ruler->pixelsPerFoot();
  const double y = rulerTop() + 2;
  p.setPen(QPen(c.slate, 1));
  p.drawLine(QPointF(m_ruler->left() - 8, y), QPointF(width() - 14, y));
  double labelEvery = 1;
  for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0}) {
    labelEvery = step;
    if (step * unitPixels >= m_look->px(56)) break;
  }
  const double tickEvery = unitPixels >= 6 ? 1 : labelEvery / 5;
  p.setFont(m_look->font(14));
  const double last = (m_ruler->to() - m_ruler->from()).value() / footPerUnit;
  for (int i = 0; i * tickEvery <= last + 1e-9; ++i) {
    const double value = i * tickEvery;
    const double x = m_ruler->x(m_ruler->from() + Feet(value * footPerUnit));
    const bool label = std::abs(std::remainder(value, labelEvery)) < 1e-9;
    p.drawLine(QPointF(x, y), QPointF(x, y + (label ? 9 : 5)));
    if (!label) continue;
    const QString number = QLocale().toString(value, 'g', 5);
    const QString words = i == 0 ? number + QLatin1Char(' ') + lengthUnit(units) : number;
    p.drawText(QRectF(x - 40, y + 9, 80, m_look->px(18)), Qt::AlignHCenter | Qt::AlignTop, words);
  }
}

void StripView::paintEmpty(QPainter& p) const {
  const Colours& c = m_look->colours();
  struct Place {
    double from, to, tall;
    QString words;
  };
  const QList<Place> places{{0.00, 0.52, 0.9, tr("then a head that drives the tip")},
                            {0.53, 0.78, 0.5, tr("a tip that carries the fly")},
                            {0.79, 0.87, 0.2, tr("leader")},
                            {0.88, 1.00, 0.4, tr("first the fly")}};
  const double left = m_ruler->left();
  const double wide = m_ruler->right() - left;
  p.setFont(m_look->font(16));
  for (const Place& place : places) {
    const double half = halfHeight() * place.tall;
    const QRectF box(left + wide * place.from, middle() - half, wide * (place.to - place.from), 2 * half);
    const bool first = &place == &places.back();
    p.setPen(QPen(first ? c.river : c.slate, first ? 2 : 1, Qt::DashLine));
    p.drawRoundedRect(box, 6, 6);
    p.setPen(first ? c.ink : c.slate);
    p.drawText(box.adjusted(4, -30, -4, 30), Qt::AlignCenter | Qt::TextWordWrap, place.words);
  }
}

void StripView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  p.fillRect(rect(), c.paper);
  paintRule(p);
  if (m_feed->rig()->parts.empty()) {
    paintEmpty(p);
    return;
  }
  p.setFont(m_look->font(kCaptionType));
  p.setPen(c.ink);
  for (const Caption& caption : m_captions) p.drawText(caption.box, Qt::AlignCenter, caption.words);
}

void StripView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOut(false);
}

}  // namespace grainwise::ui
