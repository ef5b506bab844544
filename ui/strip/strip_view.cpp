// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_view.h"

#include <QDrag>
#include <QPushButton>
#include <QUuid>
#include <QVariantAnimation>
#include <algorithm>
#include <cmath>

#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/captions.h"
#include "ui/strip/junction_tag.h"
#include "ui/strip/lens.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_access.h"
#include "ui/strip/strip_metrics.h"
#include "ui/strip/strip_overlay.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/text_width.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
using namespace strip_metrics;

StripView::StripView(Look* look, RigDocument* document, AnalysisFeed* feed, Ruler* ruler,
                     QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_document(document),
      m_feed(feed),
      m_ruler(ruler),
      m_name(QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  installStripAccess();
  setAcceptDrops(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The line, from the rod to the fly"));
  m_lens = new Lens(look, this);
  m_lens->hide();
  m_overlay = new StripOverlay(look, ruler, this);
  m_fromRod = new QPushButton(tr("Start from a rod"), this);
  m_fromRod->setObjectName(QStringLiteral("emptyLineFromRod"));
  m_slide = new QVariantAnimation(this);
  m_slide->setDuration(kSlide_ms);
  m_slide->setEasingCurve(QEasingCurve::OutCubic);
  m_slide->setStartValue(0.0);
  m_slide->setEndValue(1.0);
  runDrag = [this](QDrag* drag) {
    m_realDrag = true;
    return drag->exec(Qt::CopyAction | Qt::MoveAction, Qt::MoveAction);
  };
  connect(m_slide, &QVariantAnimation::valueChanged, this,
          [this](const QVariant& share) { place(share.toDouble()); });
  connect(m_fromRod, &QPushButton::clicked, this, &StripView::startFromRod);
  connect(m_lens, &Lens::pressed, this,
          [this](std::size_t part) { focusBlock(part, Qt::MouseFocusReason); });
  connect(m_lens, &Lens::dragged, this, &StripView::startDrag);
  connect(m_lens, &Lens::activated, this, &StripView::partActivated);
  connect(m_lens, &Lens::menuWanted, this, &StripView::showMenu);
  connect(feed, &AnalysisFeed::analysisChanged, this, [this] { layOut(true); });
  connect(look, &Look::changed, this, [this] {
    m_words.clear();  // units
    updateGeometry();
    layOut(false);
  });
}

StripView::~StripView() = default;

void StripView::setGuest(bool guest) {
  m_guest = guest;
  disconnect(m_ruler, &Ruler::changed, this, nullptr);
  if (guest) connect(m_ruler, &Ruler::changed, this, [this] { layOut(false); });
  updateGeometry();
  layOut(false);
}

void StripView::setScaleFloor(double gr_per_ft) {
  if (gr_per_ft == m_scaleFloor) return;
  m_scaleFloor = gr_per_ft;
  layOut(false);
}

QSize StripView::minimumSizeHint() const {
  const int words = m_look->px(m_guest ? kTextHeights - kRuleHeight : kTextHeights);
  return {400, (m_guest ? kLeastGuestBody : kLeastBody) + words};
}

QSize StripView::sizeHint() const {
  return {1366, kBody + m_look->px(m_guest ? kTextHeights - kRuleHeight : kTextHeights)};
}

double StripView::ruleTop() const { return m_guest ? height() : height() - m_look->px(kRuleHeight); }

double StripView::bodyTop() const { return kTagTop + JunctionTag::heightFor(*m_look) + 3; }

double StripView::bodyBottom() const {
  const double bottom = ruleTop() - 5;
  return m_lensShown ? bottom - Lens::heightFor(*m_look) - 3 : bottom;
}

void StripView::layOut(bool slide) {
  const auto rig = m_feed->rig();
  m_shapes = silhouettesOf(*rig, m_feed->analysis().profile);
  m_slide->stop();
  adoptBlocks(*rig);
  m_shownRig = rig;
  setRuler();
  setScale();
  fitWords();
  fitBlocks();
  settleSelection();
  fitLens();
  fitTags();
  fitCaptions();
  fitTabOrder();
  markLanding();
  fitFromRod(rig->parts.empty());
  m_overlay->setGeometry(rect());
  m_overlay->setVisible(profileLength() > Feet(0));
  m_overlay->raise();
  const bool slides = slide && isVisible() && !m_look->reduceMotion() &&
                      m_blocks.size() <= kMostSliding && m_slideFrom != m_slideTo;
  place(slides ? 0 : 1);
  if (slides) m_slide->start();
  update();
  if (m_document->previewing()) return;
  m_middles.clear();
  for (const QRectF& line : m_slideTo) m_middles.push_back(line.center().x());
}

/// Only an empty line has the button.
void StripView::fitFromRod(bool empty) {
  m_fromRod->setVisible(empty);
  if (!empty) return;
  m_fromRod->setFont(m_look->font(16));
  m_fromRod->resize(m_fromRod->sizeHint().width() + 24, std::max(44, m_look->px(36)));
  m_fromRod->move((width() - m_fromRod->width()) / 2, int(ruleTop()) - m_fromRod->height() - 6);
}

/// Which of the old parts stands where a new one does: ends that are the same first, then equal parts
/// that have moved, then what is left over, kind by kind, so that a block keeps its part through an
/// edit and a move.
static std::vector<std::optional<std::size_t>> matched(const std::vector<Part>& before,
                                                       const std::vector<Part>& after) {
  std::vector<std::optional<std::size_t>> from(after.size());
  std::vector<bool> used(before.size(), false);
  std::size_t head = 0;
  while (head < before.size() && head < after.size() && before[head] == after[head]) ++head;
  std::size_t tail = 0;
  while (tail + head < before.size() && tail + head < after.size() &&
         before[before.size() - 1 - tail] == after[after.size() - 1 - tail]) {
    ++tail;
  }
  const auto take = [&](std::size_t i, std::size_t old) {
    from[i] = old;
    used[old] = true;
  };
  for (std::size_t i = 0; i < head; ++i) take(i, i);
  for (std::size_t i = 0; i < tail; ++i) take(after.size() - 1 - i, before.size() - 1 - i);
  const auto pair = [&](auto&& same) {
    for (std::size_t i = head; i + tail < after.size(); ++i) {
      for (std::size_t old = head; !from[i] && old + tail < before.size(); ++old) {
        if (!used[old] && same(before[old], after[i])) take(i, old);
      }
    }
  };
  pair([](const Part& a, const Part& b) { return a == b; });
  if (before.size() == after.size()) {
    pair([](const Part& a, const Part& b) { return a.kind == b.kind; });
  }
  return from;
}

void StripView::adoptBlocks(const Rig& rig) {
  const std::vector<Part> none;
  const auto from = matched(m_shownRig ? m_shownRig->parts : none, rig.parts);
  QList<Block*> old = m_blocks;
  std::vector<PartWords> oldWords = std::move(m_words);
  oldWords.resize(std::size_t(old.size()));
  m_words.assign(rig.parts.size(), {});
  m_blocks.clear();
  m_slideFrom.assign(rig.parts.size(), QRectF());
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    Block* block = from[i] ? old[qsizetype(*from[i])] : newBlock();
    if (from[i]) {
      m_slideFrom[i] = block->line();
      m_words[i] = std::move(oldWords[*from[i]]);
    }
    block->setIndex(i);
    m_blocks.append(block);
  }
  for (Block* block : std::as_const(old)) {
    if (m_blocks.contains(block)) continue;
    block->hide();
    if (m_dragging) {
      m_parked.append(block);  // its own mouse event may still be on the stack
      continue;
    }
    block->setParent(nullptr);
    block->deleteLater();
  }
}

/// After an edit of ours what it chose; else the selection follows its block.
void StripView::settleSelection() {
  if (m_document->previewing()) {
    for (Block* block : std::as_const(m_blocks)) block->setSelected(block == m_selectedBlock);
    return;
  }
  const auto before = m_selected;
  if (m_picked) {
    if (m_selected && *m_selected >= std::size_t(m_blocks.size())) m_selected.reset();
  } else if (m_selected) {
    const qsizetype at = m_blocks.indexOf(m_selectedBlock.data());
    // A preview that was called off brings the same rig back, with new blocks.
    const bool calledOff = at < 0 && m_feed->rig() == m_settledRig;
    if (!calledOff) m_selected = at < 0 ? std::nullopt : std::optional(std::size_t(at));
  }
  m_settledRig = m_feed->rig();
  m_selectedBlock = m_selected ? m_blocks[qsizetype(*m_selected)] : nullptr;
  for (Block* block : std::as_const(m_blocks)) block->setSelected(block == m_selectedBlock);
  if (m_focusPicked && m_selectedBlock) m_selectedBlock->setFocus(Qt::OtherFocusReason);
  m_picked = false;
  m_focusPicked = false;
  if (m_selected != before) Q_EMIT partSelected(m_selected);
}

Feet StripView::profileLength() const {
  const MassProfile& profile = m_feed->analysis().profile;
  return profile.end - profile.start;
}

double StripView::flyRoom() const {
  const auto& parts = m_feed->rig()->parts;
  if (parts.empty() || parts.back().kind != PartKind::fly) return 8;
  return std::max(double(m_look->px(kFlyHit)), m_look->px(100) / 100.0 * flyLength(m_shapes.back()) + 12);
}

void StripView::setRuler() {
  if (m_guest) return;
  const auto& parts = m_feed->rig()->parts;
  const MassProfile& profile = m_feed->analysis().profile;
  const bool running = !parts.empty() && parts.front().kind == PartKind::runningLine;
  const double left = kLeftPlain + m_look->px(kLeftPerType);
  const double right = std::max(left + 100, double(width() - kRight));
  const double from = running ? headEdge() : left + kRearRoom;
  const double fly = growing() && !holds(PartKind::fly) ? (1 - kFlyPlace) * (right - left) + kRearRoom : flyRoom();
  const double to = std::max(from + 50, right - fly);
  const double length = profileLength().value();
  const double feet = growing() ? std::max(kEmptyFeet, length / kMostGrown) : spreadFeet(length);
  const double perFoot = (to - from) / feet;
  const double rear = growing() ? to - length * perFoot : from;
  m_ruler->setRange(profile.start - Feet((rear - left) / perFoot),
                    profile.start + Feet((right - rear) / perFoot), left, right);
  // A short beginning takes the cursor along, which else would stand where the fly is to come.
  if (growing() && !m_document->previewing() && m_ruler->cursor() > profile.end) m_ruler->setCursor(profile.end);
}

/// Whether some part of the last six feet is too small to be hit on the true ruler.
bool StripView::lensUseful() const {
  const Rig& rig = *m_feed->rig();
  const MassProfile& profile = m_feed->analysis().profile;
  const double from = profile.end.feet() - Lens::kFeet;
  if (profileLength().value() < 2 * Lens::kFeet) return false;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const PartPlace& place = profile.places[i];
    const PartKind kind = rig.parts[i].kind;
    if (kind == PartKind::runningLine || kind == PartKind::fly || place.to.feet() <= from) continue;
    const double wide = (place.to - place.from).value() * m_ruler->pixelsPerFoot();
    if (wide < kLeastGrab) return true;
  }
  return false;
}

void StripView::setScale() {
  m_lensShown = !m_guest && lensUseful() && ruleTop() - bodyTop() > Lens::heightFor(*m_look) + kLeastHalf * 2;
  double heaviest = std::max(kLeastScale_gr_per_ft, m_scaleFloor);
  for (const ProfileSpan& span : m_feed->analysis().profile.spans) {
    heaviest = std::max({heaviest, span.properties.mass.rodEnd.value(),
                         span.properties.mass.flyEnd.value()});
  }
  m_middle = std::round((bodyTop() + bodyBottom()) / 2) + 0.5;
  m_half = std::max(8.0, (bodyBottom() - bodyTop()) / 2 - kBodyMargin);
  m_pixelsPerGrain = 2 * m_half / heaviest;
}

QRectF StripView::lineBox(std::size_t part) const {
  const PartPlace& place = m_feed->analysis().profile.places[part];
  const double top = m_middle - m_half;
  const PartKind kind = m_feed->rig()->parts[part].kind;
  if (kind == PartKind::runningLine) {
    const double end = growing() ? headEdge() : m_ruler->x(m_feed->analysis().profile.start);
    return {kRunningFrom, top, end - kRunningFrom, 2 * m_half};
  }
  const double left = m_ruler->x(place.from);
  const double wide = kind == PartKind::fly
                          ? m_look->px(100) / 100.0 * flyLength(m_shapes[part])
                          : m_ruler->x(place.to) - left;
  return {left, top, wide, 2 * m_half};
}

QRect StripView::hitBox(std::size_t part, const QRectF& line) const {
  QRectF box = line;
  double tall = std::max<double>(m_look->px(kLeastHit), m_shapes[part].heaviest() * m_pixelsPerGrain + 8);
  if (m_shapes[part].isFly) {
    tall = m_look->px(kFlyHit);
    box.setLeft(line.left() - 3);
    box.setWidth(std::max<double>(m_look->px(kFlyHit), line.width() + 9));
  } else if (m_shapes[part].runsOn) {
    tall = m_look->px(kFlyHit);
  }
  box.setTop(m_middle - tall / 2);
  box.setHeight(tall);
  return box.toAlignedRect();
}

Block* StripView::newBlock() {
  auto* block = new Block(m_look, this);
  connect(block, &Block::pressed, this,
          [this](std::size_t index) { focusBlock(index, Qt::MouseFocusReason); });
  connect(block, &Block::focused, this, [this](std::size_t index) { select(index); });
  connect(block, &Block::dragged, this, &StripView::startDrag);
  connect(block, &Block::activated, this, &StripView::partActivated);
  connect(block, &Block::menuWanted, this, &StripView::showMenu);
  connect(block, &Block::moveWanted, this, [this](std::size_t index, int by) {
    select(index);
    moveSelected(by);
  });
  block->show();
  return block;
}

void StripView::fitWords() {
  const auto& parts = m_feed->rig()->parts;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Grains mass = m_feed->analysis().profile.places[i].mass();
    PartWords& words = m_words[i];
    if (!words.captions.isEmpty() && words.part == parts[i] && words.mass == mass) continue;
    words = {parts[i], mass, captionChoices(parts[i], mass, m_look->units()), partSpoken(parts[i])};
  }
}

/// "tip, 10 feet, 11 grains a foot, steps down from the head by 0.62".
QString StripView::spokenOf(std::size_t part) const {
  const Rig& rig = *m_feed->rig();
  QString spoken = m_words[part].spoken;
  for (const Junction& j : m_feed->analysis().junctions) {
    if (j.flySide == part) spoken += QStringLiteral(", ") + junctionSpoken(j, rig);
  }
  return spoken;
}

void StripView::fitBlocks() {
  const std::size_t count = m_feed->rig()->parts.size();
  m_slideTo.resize(count);
  for (std::size_t i = 0; i < count; ++i) {
    m_slideTo[i] = lineBox(i);
    // What is new opens its gap from its own middle.
    if (m_slideFrom[i].isNull()) {
      m_slideFrom[i] = m_slideTo[i];
      m_slideFrom[i].setWidth(1);
      m_slideFrom[i].moveCenter(m_slideTo[i].center());
    }
    Block* block = m_blocks[qsizetype(i)];
    fitInside(block, i);
    block->setWords(spokenOf(i), captionsOf(i).front());
  }
}

/// The block's picture, with the longest caption that fits inside one fill of it.
void StripView::fitInside(Block* block, std::size_t part) {
  Block::Picture picture;
  picture.shape = m_shapes[part];
  picture.pixelsPerGrain = m_pixelsPerGrain;
  const QFont font = m_look->font(kInsideType, true);
  const QFontMetricsF metrics(font);
  const double wide = m_slideTo[part].width();
  const double tall = metrics.height() - 2;
  const bool room = !picture.shape.isFly && !picture.shape.runsOn &&
                    picture.shape.heaviest() * m_pixelsPerGrain >= tall && wide > kLeastInside;
  const QStringList choices = room ? captionsOf(part) : QStringList();
  for (const QString& words : choices) {
    const double share = (textWidth(words, font) + 2 * kInsideMargin) / wide;
    if (share > 1) continue;
    const auto fits = [&](double middle) {
      const double from = middle - share / 2;
      const double to = middle + share / 2;
      const auto& pieces = picture.shape.pieces;
      const bool oneFill = std::none_of(pieces.begin(), pieces.end(), [&](const auto& piece) {
        return piece.to > from && piece.from < to && piece.sinks != picture.shape.sinksAt(middle);
      });
      return oneFill && picture.shape.lightest(from, to) * m_pixelsPerGrain >= tall;
    };
    // The middle when it can be, else as near to it as it can be.
    for (int step = 0; step <= kInsideSteps && picture.caption.isEmpty(); ++step) {
      const double away = (1 - share) / 2 * step / kInsideSteps;
      for (const double middle : {0.5 + away, 0.5 - away}) {
        if (!fits(middle)) continue;
        picture.caption = words;
        picture.captionShare = middle;
        break;
      }
    }
    if (!picture.caption.isEmpty()) break;
  }
  block->setPicture(picture);
}

void StripView::place(double share) {
  const auto between = [share](const QRectF& a, const QRectF& b) {
    if (share >= 1) return b;
    return QRectF(a.left() + (b.left() - a.left()) * share, b.top(),
                  a.width() + (b.width() - a.width()) * share, b.height());
  };
  for (qsizetype i = 0; i < m_blocks.size(); ++i) {
    const QRectF line = between(m_slideFrom[std::size_t(i)], m_slideTo[std::size_t(i)]);
    m_blocks[i]->setGeometry(hitBox(std::size_t(i), line));
    m_blocks[i]->setLine(line);
  }
}

void StripView::markLanding() {
  for (Block* block : std::as_const(m_blocks)) block->setLanding(m_landingAt == block->index());
  const auto selected = m_selectedBlock ? std::optional(m_selectedBlock->index()) : std::nullopt;
  m_lens->mark(selected, m_landingAt);
}

void StripView::fitLens() {
  m_lens->setVisible(m_lensShown);
  if (!m_lensShown) {
    if (!m_document->previewing()) m_lensMiddles.clear();
    return;
  }
  const Rig& rig = *m_feed->rig();
  const MassProfile& profile = m_feed->analysis().profile;
  const double foot = std::max<double>(kLensZoom * m_ruler->pixelsPerFoot(), m_look->px(kLensFoot));
  const int wide = std::min(m_lens->wantedWidth(foot), width() / 2);
  const int tall = Lens::heightFor(*m_look);
  m_lens->setGeometry(width() - wide - 6, int(ruleTop()) - 5 - tall, wide, tall);
  std::vector<Lens::Item> items;
  const double rear = profile.end.feet() - Lens::kFeet;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const PartPlace& place = profile.places[i];
    if (rig.parts[i].kind == PartKind::runningLine || place.to.feet() <= rear) continue;
    items.push_back({i, m_shapes[i], place.from.feet() - rear, place.to.feet() - rear, captionsOf(i)});
  }
  m_lens->magnify(items, m_pixelsPerGrain, foot);
  if (m_document->previewing()) return;
  m_lensPlace = m_lens->geometry();
  m_lensFirst = items.empty() ? rig.parts.size() : items.front().index;
  m_lensMiddles.clear();
  for (const Lens::Item& item : items) {
    m_lensMiddles.push_back(m_lens->x() + m_lens->boxOf(item.index).center().x());
  }
}

JunctionTag* StripView::newTag() {
  auto* tag = new JunctionTag(m_look, this);
  connect(tag, &JunctionTag::clicked, this,
          [this, tag] { Q_EMIT tagClicked(std::size_t(m_tags.indexOf(tag))); });
  return tag;
}

void StripView::fitTags() {
  const Rig& rig = *m_feed->rig();
  const auto& list = m_feed->analysis().junctions;
  while (m_tags.size() < qsizetype(list.size())) m_tags.append(newTag());
  while (m_tags.size() > qsizetype(list.size())) {
    JunctionTag* gone = m_tags.takeLast();
    gone->hide();
    gone->deleteLater();
  }
  std::vector<TagWish> wishes;
  for (std::size_t i = 0; i < list.size(); ++i) {
    JunctionTag* tag = m_tags[qsizetype(i)];
    tag->setJunction(list[i], junctionSpoken(list[i], rig));
    TagWish wish;
    wish.at = m_ruler->x(list[i].at);
    for (std::size_t room = 0; room < wish.widths.size(); ++room) {
      wish.widths[room] = tag->widthFor(JunctionTag::Room(int(room)));
    }
    wish.weight = int(grade(list[i].verdict)) + std::min(0.9, std::abs(std::log(std::max(list[i].ratio3ft, 1e-6))) / 10);
    wishes.push_back(wish);
  }
  const auto places = placeTags(wishes, 8, width() - 8, kTagGap);
  const int tall = JunctionTag::heightFor(*m_look);
  for (std::size_t i = 0; i < places.size(); ++i) {
    JunctionTag* tag = m_tags[qsizetype(i)];
    const bool shown = places[i].room < int(wishes[i].widths.size());
    tag->setVisible(shown);
    if (!shown) continue;
    tag->setRoom(JunctionTag::Room(places[i].room));
    tag->setGeometry(int(std::lround(places[i].left)), kTagTop,
                     int(wishes[i].widths[std::size_t(places[i].room)]), tall);
  }
}

/// How far the line reaches up and down between two places.
double StripView::halfLine(double from, double to) const {
  double most = kThinRing;
  for (std::size_t i = 0; i < m_slideTo.size(); ++i) {
    const QRectF& line = m_slideTo[i];
    if (line.right() < from || line.left() > to) continue;
    if (m_shapes[i].isFly) {
      most = std::max(most, flyLength(m_shapes[i]) * 0.24 * m_look->px(100) / 100.0);
      continue;
    }
    const double wide = std::max(line.width(), 1e-6);
    const double mass = m_shapes[i].heaviest(std::clamp((from - line.left()) / wide, 0.0, 1.0),
                                             std::clamp((to - line.left()) / wide, 0.0, 1.0));
    most = std::max(most, mass * m_pixelsPerGrain / 2 + 1);
  }
  return most;
}

/// What stands beside the line: all that has no caption inside, from the fly back. Leaders and tippets
/// in a row that are too short for their own words share one caption.
std::vector<CaptionWish> StripView::captionWishes(const QFont& font) const {
  const auto& parts = m_feed->rig()->parts;
  const auto beside = [&](std::size_t i) {
    return m_blocks[qsizetype(i)]->picture().caption.isEmpty() && !(m_lensShown && m_lens->shows(i));
  };
  const auto nylon = [&](std::size_t i) {
    return (parts[i].kind == PartKind::leader || parts[i].kind == PartKind::tippet) &&
           !parts[i].isCoatedLeader();
  };
  const auto tight = [&](std::size_t i) {
    return textWidth(captionsOf(i).front(), font) + kInsideMargin > m_slideTo[i].width();
  };
  std::vector<CaptionWish> wishes;
  for (std::size_t i = parts.size(); i-- > 0;) {
    if (!beside(i)) continue;
    const QRectF& line = m_slideTo[i];
    if (nylon(i)) {
      std::size_t first = i;
      bool anyTight = tight(i);
      while (first > 0 && beside(first - 1) && nylon(first - 1)) anyTight = tight(--first) || anyTight;
      if (first < i && anyTight) {
        const QString words = nylonCaption(parts, first, i, m_look->units());
        wishes.push_back({m_slideTo[first].left(), line.right(), {words}, false});
        i = first;
        continue;
      }
    }
    if (parts.size() > kCrowd && line.width() < kCrowdedCaption) continue;
    const double end = m_shapes[i].runsOn ? line.right() - 4 : line.right();
    wishes.push_back({line.left(), end, captionsOf(i), m_shapes[i].isFly});
  }
  return wishes;
}

/// Captions that do not fit inside their block.
void StripView::fitCaptions() {
  const QFont font = m_look->font(kOutsideType);
  const QFontMetricsF metrics(font);
  CaptionRoom room;
  room.body = QRectF(6, bodyTop() - 2, width() - 12, ruleTop() - bodyTop());
  room.middle = m_middle;
  room.height = std::ceil(metrics.height());
  room.halfLine = [this](double from, double to) { return halfLine(from, to); };
  room.width = [&](const QString& words) { return textWidth(words, font) + 2; };
  room.elided = [&](const QString& words, double wide) {
    return metrics.elidedText(words, Qt::ElideRight, wide - 2);
  };
  for (const JunctionTag* tag : std::as_const(m_tags)) {
    if (tag->isVisibleTo(this)) room.uprights.push_back(m_ruler->x(tag->junction().at));
  }
  if (m_lensShown) room.taken.push_back(QRectF(m_lens->geometry()).adjusted(-4, -2, 4, 2));
  const std::vector<CaptionWish> wishes = captionWishes(font);
  m_captions.clear();
  for (const auto& caption : placeCaptions(wishes, room)) {
    if (caption) m_captions.push_back(*caption);
  }
}

/// From rod to fly, then the joints. The button is the anchor: it is made with the strip and comes right
/// behind it, while blocks made later would end up behind everything else in the window.
void StripView::fitTabOrder() {
  QWidget* before = m_fromRod;
  const auto next = [&before](QWidget* widget) {
    if (before->nextInFocusChain() != widget) setTabOrder(before, widget);
    before = widget;
  };
  for (Block* block : std::as_const(m_blocks)) next(block);
  for (JunctionTag* tag : std::as_const(m_tags)) next(tag);
}

void StripView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOut(false);
}

}  // namespace grainwise::ui
