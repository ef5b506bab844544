// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/bench_face.h"

#include <QAction>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/charts/profile_chart.h"
#include "ui/charts/rig_tables.h"
#include "ui/charts/way_out.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/document/trial.h"
#include "ui/panels/chooser_panel.h"
#include "ui/panels/drawer.h"
#include "ui/panels/depth_table_panel.h"
#include "ui/panels/fixes_panel.h"
#include "ui/panels/cast_panel.h"
#include "ui/panels/make_panel.h"
#include "ui/panels/name_panel.h"
#include "ui/panels/pools_panel.h"
#include "ui/panels/problem_panel.h"
#include "ui/panels/river_panel.h"
#include "ui/panels/rod_panel.h"
#include "ui/panels/tiles.h"
#include "ui/panels/trial_bar.h"
#include "ui/panels/water_panel.h"
#include "ui/panels/why_panel.h"
#include "ui/print/cut_pages.h"
#include "ui/strip/part_editor.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
#include "ui/theme/ground.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
const QString kShelf = QStringLiteral("shelf");
const QString kPart = QStringLiteral("part");
const QString kTips = QStringLiteral("tips");
const QString kFixes = QStringLiteral("fixes");
const QString kPools = QStringLiteral("pools");
const QString kCast = QStringLiteral("cast");
const QString kRiver = QStringLiteral("river");
const QString kDepths = QStringLiteral("depths");
const QString kMake = QStringLiteral("make");
const QString kWhy = QStringLiteral("why");
const QString kRod = QStringLiteral("rod");
const QString kWater = QStringLiteral("water");
const QString kName = QStringLiteral("name");
const QString kProblems = QStringLiteral("problems");
/// Height of the face at type size 1 in which a task of Make stands whole below the chart.
constexpr int kRoomForAll = 860;
constexpr int kStripShare = 4;
/// Behind the first picture, and before a rig has been quiet long enough for its swing to be run.
constexpr int kRiverAfter_ms = 300;
}  // namespace

BenchFace::BenchFace(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
                     const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_pools(pools), m_carried(shelf) {
  setAcceptDrops(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  m_trial = new Trial(document, this);
  m_ruler = new Ruler(this);
  m_strip = new StripView(look, document, feed, m_ruler, this);
  m_strip->setObjectName(QStringLiteral("strip"));
  m_chart = new ProfileChart(look, feed, m_ruler, this);
  m_chart->setObjectName(QStringLiteral("profile"));
  m_tiles = new TileRow(look, feed, this);
  m_tiles->setObjectName(QStringLiteral("tiles"));
  m_sentence = new SentenceBar(look, feed, this);
  m_drawer = new Drawer(look, this);
  m_drawer->setObjectName(QStringLiteral("drawer"));
  addPages();
  addTrialBar();
  layOut();
  connectParts();
  addWaysOut();
}

/// The line, what each foot weighs and the readings, as pictures and as tables of their numbers.
void BenchFace::addWaysOut() {
  const auto units = [this] { return m_look->units(); };
  (new WayOut(m_look, m_strip))
      ->add(
          tr("The line"), [=, this] { return partsTable(*m_feed->rig(), m_feed->analysis(), units()); },
          [=, this] { return linePicture(*m_feed->rig(), m_feed->conditions(), tr("The line"), units()); })
      ->add(tr("Joints"), [=, this] { return jointsTable(*m_feed->rig(), m_feed->analysis(), units()); });
  const QString weighs = tr("What each foot weighs");
  (new WayOut(m_look, m_chart))
      ->add(
          weighs, [=, this] { return profileTable(m_feed->analysis(), units()); },
          [=, this] { return profilePicture({*m_feed->rig()}, m_feed->conditions(), weighs, units()); });
  (new WayOut(m_look, m_tiles))
      ->add(tr("Readings"), [=, this] { return readingsTable(*m_feed->rig(), m_feed->analysis(), units()); });
}

void BenchFace::layOut() {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_strip, kStripShare);
  column->addWidget(m_chart, 3);
  column->addWidget(m_tiles);
  column->addWidget(m_sentence);
  column->addWidget(m_drawer, 5);
}

void BenchFace::addPages() {
  m_shelf = new ShelfView(m_look, m_document, m_drawer);
  m_shelf->setObjectName(QStringLiteral("shelf"));
  m_shelf->setShelf(m_carried);
  m_drawer->addPage(kShelf, tr("Shelf"), m_shelf, Drawer::Stay::standing);
  m_drawer->addPage(
      kPart, tr("Part"),
      [this](QWidget* parent) {
        auto* part = new PartEditor(m_look, m_document, m_feed, parent);
        part->setObjectName(QStringLiteral("part"));
        connect(m_strip, &StripView::partSelected, part, &PartEditor::setPart);
        part->setPart(m_strip->selected());
        return part;
      },
      Drawer::Stay::standing);
  addWaterPages();
  addChoicePages();
  addPassingPages();
}

void BenchFace::addWaterPages() {
  m_drawer->addPage(
      kCast, tr("Cast"),
      [this](QWidget* parent) { return new CastPanel(m_look, m_document, m_feed, parent); },
      Drawer::Stay::standing);
  m_drawer->addPage(
      kRiver, tr("River"),
      [this](QWidget* parent) {
        auto* river = new RiverPanel(m_look, m_document, m_feed, m_pools, parent);
        connect(river, &RiverPanel::depthsWanted, this, &BenchFace::openDepths);
        return river;
      },
      Drawer::Stay::standing);
  // Its swings refine the depth of the tile whether or not anybody looks at the page.
  QTimer::singleShot(kRiverAfter_ms, this, [this] { m_drawer->prepare(kRiver); });
}

void BenchFace::addChoicePages() {
  m_drawer->addPage(
      kTips, tr("Tips"),
      [this](QWidget* parent) {
        m_chooser = new ChooserPanel(m_look, m_document, m_trial, m_feed, m_pools, allParts(), parent);
        connect(m_chooser, &ChooserPanel::flyWanted, this, &BenchFace::buildFly);
        return m_chooser;
      },
      Drawer::Stay::standing);
  m_drawer->addPage(
      kFixes, tr("Fixes"),
      [this](QWidget* parent) {
        m_fixes = new FixesPanel(m_look, m_document, m_feed, m_pools, allParts(), parent);
        return m_fixes;
      },
      Drawer::Stay::standing);
  m_drawer->addPage(
      kPools, tr("Pools"),
      [this](QWidget* parent) { return new PoolsPanel(m_look, m_document, m_pools, parent); },
      Drawer::Stay::passing);
}

void BenchFace::addPassingPages() {
  const auto passing = [this](const QString& key, const QString& title, Drawer::Make make) {
    m_drawer->addPage(key, title, std::move(make), Drawer::Stay::passing);
  };
  passing(kDepths, tr("Depths in all pools"), [this](QWidget* parent) {
    return new DepthTablePanel(m_look, m_feed, m_pools, parent);
  });
  passing(kWhy, tr("Why"),
          [this](QWidget* parent) { return m_why = new WhyPanel(m_look, m_feed, parent); });
  passing(kRod, tr("Rod"), [this](QWidget* parent) {
    return m_rod = new RodPanel(m_look, m_document, allParts(), parent);
  });
  passing(kWater, tr("Water"),
          [this](QWidget* parent) { return new WaterPanel(m_look, m_document, m_pools, parent); });
  passing(kName, tr("Name and notes"),
          [this](QWidget* parent) { return m_name = new NamePanel(m_look, m_document, parent); });
  passing(kProblems, tr("Problems"),
          [this](QWidget* parent) { return m_problems = new ProblemPanel(m_look, parent); });
}

/// What is carried, and the own parts.
const SharedShelf& BenchFace::allParts() const { return m_store != nullptr ? m_store->all() : m_carried; }

ChooserPanel* BenchFace::chooser() {
  m_drawer->prepare(kTips);
  return m_chooser;
}

FixesPanel* BenchFace::fixes() {
  m_drawer->prepare(kFixes);
  return m_fixes;
}

void BenchFace::connectParts() {
  connect(m_strip, &StripView::partActivated, this, &BenchFace::openPart);
  connect(m_strip, &StripView::refused, m_drawer, &Drawer::say);
  connect(m_strip, &StripView::tagClicked, m_tiles, [this] { Q_EMIT m_tiles->whyRequested(Reading::junction); });
  connect(m_shelf, &ShelfView::refused, m_drawer, &Drawer::say);
  connect(m_strip, &StripView::startFromRod, this, [this] { openRod(true); });
  connect(m_strip, &StripView::partWanted, this, [this](PartKind kind) {
    openShelf();
    m_shelf->showKind(kind);
  });
  connect(m_document, &RigDocument::rigChanged, m_drawer, [this] { m_drawer->say({}); });
  const auto why = [this](Reading reading) {
    m_drawer->prepare(kWhy);
    m_why->showReading(reading);
    m_drawer->setTitle(kWhy, tr("Why: %1").arg(readingTitle(reading)));
    m_drawer->open(kWhy);
    m_chart->setDriveShown(reading == Reading::drive);
  };
  connect(m_drawer, &Drawer::opened, this, &BenchFace::pageOpened);
  connect(m_tiles, &TileRow::whyRequested, this, why);
  connect(m_sentence, &SentenceBar::whyRequested, this, why);
}

void BenchFace::addTrialBar() {
  auto* bar = new TrialBar(m_look, m_trial, m_drawer);
  bar->setReach(this, m_strip, m_drawer);
  m_drawer->addAside(bar);
}

/// What is tried on is looked at in the air and in the water; where the rig itself is worked on it goes back.
void BenchFace::pageOpened(const QString& page) {
  if (page != kWhy) m_chart->setDriveShown(false);
  const bool looking = page == kTips || page == kCast || page == kRiver || page == kDepths || page == kWhy;
  if (!looking) m_trial->callOff();
  if (page != kMake) m_backToTips = false;
  giveRoom();
}

/// Where the face is low, what is made at the bench has the chart's room; the line and its readings stay.
void BenchFace::giveRoom() {
  const bool all = m_drawer->current() != kMake || height() >= m_look->px(kRoomForAll);
  m_chart->setVisible(all);
  static_cast<QVBoxLayout*>(layout())->setStretchFactor(m_strip, all ? kStripShare : 0);
}

void BenchFace::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  giveRoom();
}

void BenchFace::buildFly() {
  m_drawer->open(kMake);
  m_make->openTask(QStringLiteral("makeFly"));
  m_backToTips = true;
}

void BenchFace::addMake(OwnStore* store, const Preferences* preferences) {
  m_store = store;
  m_drawer->addPage(
      kMake, tr("Make"),
      [this, store, preferences](QWidget* parent) {
        m_make = new MakePanel(m_look, m_document, store, m_pools, cutPaper(this), parent, preferences);
        connect(m_make, &MakePanel::flyTied, this, [this] {
          if (m_backToTips) openTips();
        });
        return m_make;
      },
      Drawer::Stay::standing);
  m_shelf->setShelf(store->all());
  connect(store, &OwnStore::ownChanged, this, [this] {
    m_shelf->setShelf(allParts());
    if (m_chooser != nullptr) m_chooser->setShelf(allParts());
    if (m_fixes != nullptr) m_fixes->setShelf(allParts());
  });
  connect(store, &OwnStore::failed, m_drawer, &Drawer::say);
  // A letter as a key: only where nothing is typed.
  auto* weighing = new QAction(tr("Weigh in"), this);
  weighing->setObjectName(QStringLiteral("weigh"));
  weighing->setShortcut(Qt::Key_W);
  weighing->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  connect(weighing, &QAction::triggered, this, &BenchFace::weigh);
  for (QWidget* place : {static_cast<QWidget*>(m_strip), static_cast<QWidget*>(m_chart),
                         static_cast<QWidget*>(m_tiles)}) {
    place->addAction(weighing);
  }
}

void BenchFace::openMake() { m_drawer->open(kMake); }

void BenchFace::weigh() {
  m_drawer->open(kMake);
  m_make->weigh();
}

void BenchFace::cut(const std::vector<Part>& parts, const QString& of) {
  m_drawer->open(kMake);
  m_make->cut(parts, of);
}

void BenchFace::openShelf() { m_drawer->open(kShelf); }

void BenchFace::openTips() { m_drawer->open(kTips); }

void BenchFace::openFixes() { m_drawer->open(kFixes); }

void BenchFace::openPools() { m_drawer->open(kPools); }
void BenchFace::openCast() { m_drawer->open(kCast); }

void BenchFace::openDepths() { m_drawer->open(kDepths); }

void BenchFace::openRiver() { m_drawer->open(kRiver); }

void BenchFace::openPart() { m_drawer->open(kPart); }

void BenchFace::openRod(bool startFrom) {
  m_drawer->open(kRod);
  m_rod->focusFirst(startFrom);
}

void BenchFace::openWater() { m_drawer->open(kWater); }

void BenchFace::openName() {
  m_drawer->open(kName);
  m_name->begin();
}

void BenchFace::showProblems(const QString& title, const Problems& problems) {
  m_drawer->open(kProblems);
  m_problems->show(title, problems);
}

void BenchFace::dragEnterEvent(QDragEnterEvent* event) {
  if (!m_strip->canTakeOff(event->mimeData())) return;
  m_strip->previewOff(event->mimeData());
  event->acceptProposedAction();
}

void BenchFace::dragLeaveEvent(QDragLeaveEvent*) { m_strip->endPreview(); }

void BenchFace::dropEvent(QDropEvent* event) {
  if (!m_strip->canTakeOff(event->mimeData())) return;
  event->acceptProposedAction();
  m_strip->takeOff(event->mimeData());
}

void BenchFace::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_trial->callOff();
}

void BenchFace::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().paper);
}

}  // namespace grainwise::ui
