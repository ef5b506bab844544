// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/compare_face.h"

#include <QApplication>
#include <QPainter>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/analysis/depth_table.h"
#include "core/compare/align.h"
#include "core/model/edits.h"
#include "ui/compare/compare_feed.h"
#include "ui/compare/difference_list.h"
#include "ui/compare/summary_bar.h"
#include "ui/document/replace_rig.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_metrics.h"
#include "ui/strip/strip_view.h"
#include "ui/theme/ground.h"
#include "ui/theme/pill_button.h"
#include "ui/theme/tab_order.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
using namespace strip_metrics;
namespace {
constexpr double kSamePlace_ft = 1e-9;
constexpr int kFlyRoom = 60;

/// Whether two rigs are the same but for their water and how it is fished.
bool onlyInTheWater(const Rig& one, Rig other) {
  other.water = one.water;
  other.swing = one.swing;
  return one == other;
}

/// Goes back to this water, or forth, by the rig's own step, where the last one or the next changed nothing
/// but the water and how it is fished: so it is fished as it was there.
bool stepsTo(const std::optional<Water>& water, QUndoStack* steps) {
  // A step that was made of several is none of ours.
  const auto at = [&](int index) { return dynamic_cast<const ReplaceRig*>(steps->command(index)); };
  const auto leads = [&](const ReplaceRig* step, const Rig& (ReplaceRig::*to)() const) {
    return step != nullptr && (step->*to)().water == water && onlyInTheWater(step->before(), step->after());
  };
  if (leads(at(steps->index() - 1), &ReplaceRig::before)) {
    steps->undo();
  } else if (leads(at(steps->index()), &ReplaceRig::after)) {
    steps->redo();
  } else {
    return false;
  }
  return true;
}
}  // namespace

CompareFace::CompareFace(Look* look, RigDocument* bench, AnalysisFeed* benchFeed, const PoolBook* pools,
                         const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_pools(pools) {
  setObjectName(QStringLiteral("compareFace"));
  setAcceptDrops(true);
  m_own = new RigDocument(this);
  m_own->startFrom(bench->rig());
  m_ownFeed = new AnalysisFeed(m_own, this);
  m_ownFeed->setConditions(benchFeed->conditions());
  m_ownFeed->follow(benchFeed->preferences());
  // The ruler and the scale of both lines stand before either lays itself out.
  for (AnalysisFeed* feed : {benchFeed, m_ownFeed}) {
    connect(feed, &AnalysisFeed::analysisChanged, this, &CompareFace::setRulers);
  }
  m_sides = {new Side(look, bench, benchFeed, this), new Side(look, m_own, m_ownFeed, this)};
  m_feed = new CompareFeed(benchFeed, m_ownFeed, this);
  m_chart = new CompareChart(look, m_feed, m_sides[0]->ruler(), m_sides[1]->ruler(), this);
  m_summary = new SummaryBar(look, m_feed, this);
  m_drawer = new Drawer(look, this);
  m_drawer->setObjectName(QStringLiteral("compareDrawer"));
  addPages(shelf);
  addControls();
  addWaysOut();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_sides[0], 4);
  column->addWidget(m_sides[1], 4);
  column->addWidget(m_chart, 3);
  column->addWidget(m_summary);
  column->addWidget(m_drawer, 7);
  for (Side* side : m_sides) connectSide(side);
  connect(look, &Look::changed, this, &CompareFace::setRulers);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
    for (Side* side : m_sides) {
      if (now != nullptr && side->isAncestorOf(now)) setCurrent(side);
    }
  });
  arrange();
  setCurrent(side(Letter::b));
}

Side* CompareFace::side(Letter letter) const {
  return m_sides[std::size_t(letter == Letter::a ? m_first : 1 - m_first)];
}

Side* CompareFace::current() const { return m_sides[std::size_t(m_current)]; }

Side* CompareFace::otherOf(const Side* side) const {
  return side == m_sides[0] ? m_sides[1] : m_sides[0];
}

ShelfView* CompareFace::shelfOf(Letter letter) const {
  return m_shelves[std::size_t(letter == Letter::a ? m_first : 1 - m_first)];
}

void CompareFace::setShelf(const SharedShelf& shelf) {
  for (ShelfView* view : m_shelves) view->setShelf(shelf);
}

void CompareFace::setCurrent(Side* side) {
  const int index = side == m_sides[0] ? 0 : 1;
  const bool changed = index != m_current;
  m_current = index;
  for (Side* each : m_sides) each->setCurrent(each == side);
  const Pages& pages = m_pages[std::size_t(index)];
  QWidget* const now[] = {pages.shelf, pages.part, pages.rod, pages.water, pages.name};
  for (std::size_t i = 0; i < 5; ++i) m_stacks[i]->setCurrentWidget(now[i]);
  nameTabs();
  if (changed) Q_EMIT currentChanged();
}

void CompareFace::connectSide(Side* side) {
  const auto onThis = [this, side](auto&& open) {
    return [this, side, open] {
      setCurrent(side);
      open();
    };
  };
  connect(side, &Side::nameWanted, this, onThis([this] { openName(); }));
  connect(side, &Side::rodWanted, this, onThis([this] { openRod(false); }));
  connect(side, &Side::waterWanted, this, onThis([this] { openWater(); }));
  connect(side, &Side::openWanted, this, onThis([this] { Q_EMIT openWanted(); }));
  connect(side, &Side::saveWanted, this, onThis([this] { Q_EMIT saveWanted(); }));
  connect(side, &Side::copyWanted, this, [this, side] { copyToOther(side); });
  m_known[side == m_sides[0] ? 0 : 1] = side->document()->shown();
  StripView* strip = side->strip();
  connect(strip, &StripView::partActivated, this, onThis([this] { openPart(); }));
  connect(strip, &StripView::startFromRod, this, onThis([this] { openRod(true); }));
  connect(strip, &StripView::refused, m_drawer, &Drawer::say);
  connect(strip, &StripView::copyAcrossWanted, this, [this, side](std::size_t index) {
    otherOf(side)->strip()->takeCopy(side->document()->rig().parts[index], index + 1);
  });
  connect(side->document(), &RigDocument::rigChanged, this, [this, side] {
    m_drawer->say({});
    shareWater(side);
  });
  connect(side->ruler(), &Ruler::cursorMoved, this, [this, side] { followCursor(side); });
}

void CompareFace::swap() {
  m_first = 1 - m_first;
  arrange();
  Q_EMIT currentChanged();
}

void CompareFace::arrange() {
  Side *a = m_sides[std::size_t(m_first)], *b = m_sides[std::size_t(1 - m_first)];
  a->setLetter(Letter::a);
  b->setLetter(Letter::b);
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->removeWidget(a);
  column->insertWidget(0, a, 4);
  column->removeWidget(b);
  column->insertWidget(1, b, 4);
  a->strip()->setOtherLine(true);
  b->strip()->setOtherLine(false);
  tabAsLaidOut(this);
  m_shelves[std::size_t(m_first)]->setObjectName(QStringLiteral("shelfA"));
  m_shelves[std::size_t(1 - m_first)]->setObjectName(QStringLiteral("shelfB"));
  m_feed->setFirst(a->feed());
  m_chart->setRulers(a->ruler(), b->ruler());
  setRulers();
  nameTabs();
}

void CompareFace::copyToOther(Side* from) {
  Side* to = otherOf(from);
  to->document()->apply(tr("Copy %1 to %2").arg(from->letterWord(), to->letterWord()),
                        from->document()->rig());
  setCurrent(to);
}

void CompareFace::setAlign(CompareChart::Align align) {
  m_align = align;
  m_chart->setAlign(align);
  setRulers();
}

/// Both lines with the same feet to the pixel and the same height to the grain, from their rears or
/// from their flies.
void CompareFace::setRulers() {
  if (m_sides[0] == nullptr || m_sides[1] == nullptr) return;
  double longest = 0, heaviest = kLeastScale_gr_per_ft;
  bool running = false;
  for (const Side* side : m_sides) {
    const MassProfile& profile = side->feed()->analysis().profile;
    const auto& parts = side->feed()->rig()->parts;
    running = running || (!parts.empty() && parts.front().kind == PartKind::runningLine);
    longest = std::max(longest, (profile.end - profile.start).value());
    for (const ProfileSpan& span : profile.spans) {
      heaviest = std::max({heaviest, span.properties.mass.rodEnd.value(),
                           span.properties.mass.flyEnd.value()});
    }
  }
  longest = spreadFeet(longest);
  const double left = kLeftPlain + m_look->px(kLeftPerType);
  const double right = std::max(left + 100, double(width() - kRight));
  const double from = running ? kLeftPlain + m_look->px(kRunningPerType) : left + kRearRoom;
  const double to = std::max(from + 50, right - m_look->px(kFlyRoom));
  const double perFoot = (to - from) / longest;
  for (const Side* side : m_sides) {
    const MassProfile& profile = side->feed()->analysis().profile;
    const double own = (profile.end - profile.start).value();
    const double rear = m_align == CompareChart::Align::fly ? from + (longest - own) * perFoot : from;
    side->ruler()->setRange(profile.start - Feet((rear - left) / perFoot),
                            profile.start + Feet((right - rear) / perFoot), left, right);
    side->strip()->setScaleFloor(heaviest);
  }
  followCursor(side(Letter::a));
}

void CompareFace::followCursor(Side* from) {
  const Ruler& leads = *from->ruler();
  Ruler& follows = *otherOf(from)->ruler();
  const Station there = follows.station(leads.x(leads.cursor()));
  if (std::abs((there - follows.cursor()).value()) > kSamePlace_ft) follows.setCursor(there);
}

void CompareFace::setOneWater(bool one) {
  m_oneWater = one;
  if (m_lock->isChecked() != one) m_lock->setChecked(one);
  shareWater(current());
}

void CompareFace::toggleAlign() { m_atFly->toggle(); }

void CompareFace::toggleOneWater() { m_lock->toggle(); }

/// A change of the water is one step of the other as well, and is undone and done again with it. Where that
/// step is no longer the other's last one, the water comes by a new step, with how it is fished if that
/// changed along with it.
void CompareFace::shareWater(Side* from) {
  if (from->document()->previewing()) return;
  const auto now = from->document()->shown();
  const auto before = std::exchange(m_known[from == m_sides[0] ? 0 : 1], now);
  // What is done on the bench alone does not reach a rig that is not seen.
  if (!m_oneWater || m_sharing || !isVisible()) return;
  RigDocument* to = otherOf(from)->document();
  if (to->previewing()) to->setPreview(std::nullopt);
  if (to->rig().water == now->water) return;
  m_sharing = true;
  if (!stepsTo(now->water, to->undoStack())) {
    Rig there = edits::withWater(to->rig(), now->water);
    if (before->swing != now->swing && onlyInTheWater(*before, *now)) there = edits::withSwing(there, now->swing);
    to->apply(tr("Take the water of %1").arg(from->letterWord()), there, QStringLiteral("compare/water"));
  }
  m_sharing = false;
}

/// A pool says how it is fished as well: in one water both go there, each in one step of its own.
void CompareFace::sharePool(Side* from, const Pool& pool) {
  if (!m_oneWater) return;
  RigDocument* to = otherOf(from)->document();
  m_sharing = true;
  to->apply(tr("Take the water of %1").arg(from->letterWord()), inPool(to->rig(), pool));
  m_sharing = false;
}

void CompareFace::choose(const PartPair& parts) {
  side(Letter::a)->strip()->select(parts.a);
  side(Letter::b)->strip()->select(parts.b);
}

void CompareFace::dragEnterEvent(QDragEnterEvent* event) {
  for (const Side* side : m_sides) {
    if (!side->strip()->canTakeOff(event->mimeData())) continue;
    side->strip()->previewOff(event->mimeData());
    event->acceptProposedAction();
  }
}

void CompareFace::dragLeaveEvent(QDragLeaveEvent*) {
  for (const Side* side : m_sides) side->strip()->endPreview();
}

void CompareFace::dropEvent(QDropEvent* event) {
  for (const Side* side : m_sides) {
    if (!side->strip()->canTakeOff(event->mimeData())) continue;
    event->acceptProposedAction();
    side->strip()->takeOff(event->mimeData());
  }
}

void CompareFace::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().paper);
}

void CompareFace::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  setRulers();
}

void CompareFace::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  // One caster and one set of conditions for both; they are set on the bench.
  const Conditions& conditions = m_sides[0]->feed()->conditions();
  if (!(m_ownFeed->conditions() == conditions)) m_ownFeed->setConditions(conditions);
  m_feed->setActive(true);
  if (m_sides[0]->document()->rig().water != m_own->rig().water) setOneWater(false);
  current()->strip()->setFocus();
}

void CompareFace::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_feed->setActive(false);
}

}  // namespace grainwise::ui
