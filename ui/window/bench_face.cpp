// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/bench_face.h"

#include <QAction>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/charts/profile_chart.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
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
#include "ui/panels/water_panel.h"
#include "ui/panels/why_panel.h"
#include "ui/strip/part_editor.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
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
}  // namespace

BenchFace::BenchFace(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
                     const Shelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_pools(pools) {
  setAcceptDrops(true);
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
  addPages(shelf);
  layOut();
  connectParts();
}

void BenchFace::layOut() {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(m_strip, 4);
  column->addWidget(m_chart, 3);
  column->addWidget(m_tiles);
  column->addWidget(m_sentence);
  column->addWidget(m_drawer, 5);
}

void BenchFace::addPages(const Shelf& shelf) {
  m_shelf = new ShelfView(m_look, m_document, m_drawer);
  m_shelf->setObjectName(QStringLiteral("shelf"));
  m_shelf->setShelf(shelf);
  m_part = new PartEditor(m_look, m_document, m_feed, m_drawer);
  m_part->setObjectName(QStringLiteral("part"));
  m_why = new WhyPanel(m_look, m_feed, m_drawer);
  m_rod = new RodPanel(m_look, m_document, shelf, m_drawer);
  m_problems = new ProblemPanel(m_look, m_drawer);
  m_drawer->addPage(kShelf, tr("Shelf"), m_shelf, Drawer::Stay::standing);
  m_drawer->addPage(kPart, tr("Part"), m_part, Drawer::Stay::standing);
  auto* river = new RiverPanel(m_look, m_document, m_feed, m_pools, m_drawer);
  connect(river, &RiverPanel::depthsWanted, this, &BenchFace::openDepths);
  m_drawer->addPage(kCast, tr("Cast"), new CastPanel(m_look, m_document, m_feed, m_drawer),
                    Drawer::Stay::standing);
  m_drawer->addPage(kRiver, tr("River"), river, Drawer::Stay::standing);
  addChoicePages(shelf);
  m_drawer->addPage(kDepths, tr("Depths in all pools"),
                    new DepthTablePanel(m_look, m_feed, m_pools, m_drawer), Drawer::Stay::passing);
  m_drawer->addPage(kWhy, tr("Why"), m_why, Drawer::Stay::passing);
  m_drawer->addPage(kRod, tr("Rod"), m_rod, Drawer::Stay::passing);
  m_drawer->addPage(kWater, tr("Water"), new WaterPanel(m_look, m_document, m_drawer),
                    Drawer::Stay::passing);
  m_drawer->addPage(kName, tr("Name and notes"), new NamePanel(m_look, m_document, m_drawer),
                    Drawer::Stay::passing);
  m_drawer->addPage(kProblems, tr("Problems"), m_problems, Drawer::Stay::passing);
}

void BenchFace::addChoicePages(const Shelf& shelf) {
  m_chooser = new ChooserPanel(m_look, m_document, m_feed, m_pools, shelf, m_drawer);
  m_fixes = new FixesPanel(m_look, m_document, m_feed, m_pools, shelf, m_drawer);
  m_drawer->addPage(kTips, tr("Tips"), m_chooser, Drawer::Stay::standing);
  m_drawer->addPage(kFixes, tr("Fixes"), m_fixes, Drawer::Stay::standing);
  m_drawer->addPage(kPools, tr("Pools"), new PoolsPanel(m_look, m_document, m_pools, m_drawer),
                    Drawer::Stay::passing);
}

void BenchFace::connectParts() {
  connect(m_strip, &StripView::partSelected, m_part, &PartEditor::setPart);
  connect(m_strip, &StripView::partActivated, this, &BenchFace::openPart);
  connect(m_strip, &StripView::refused, m_drawer, &Drawer::say);
  connect(m_strip, &StripView::tagClicked, m_tiles, [this] { Q_EMIT m_tiles->whyRequested(Reading::junction); });
  connect(m_shelf, &ShelfView::refused, m_drawer, &Drawer::say);
  connect(m_strip, &StripView::startFromRod, this, [this] { openRod(true); });
  connect(m_document, &RigDocument::rigChanged, m_drawer, [this] { m_drawer->say({}); });
  const auto why = [this](Reading reading) {
    m_why->showReading(reading);
    m_drawer->setTitle(kWhy, tr("Why: %1").arg(readingTitle(reading)));
    m_drawer->open(kWhy);
    m_chart->setDriveShown(reading == Reading::drive);
  };
  connect(m_drawer, &Drawer::opened, m_chart, [this](const QString& page) {
    if (page != kWhy) m_chart->setDriveShown(false);
  });
  connect(m_tiles, &TileRow::whyRequested, this, why);
  connect(m_sentence, &SentenceBar::whyRequested, this, why);
}

void BenchFace::addMake(OwnStore* store) {
  m_make = new MakePanel(m_look, m_document, store, m_pools, m_drawer);
  m_drawer->addPage(kMake, tr("Make"), m_make, Drawer::Stay::standing);
  m_shelf->setShelf(store->all());
  connect(store, &OwnStore::ownChanged, this, [this, store] { m_shelf->setShelf(store->all()); });
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

void BenchFace::openName() { m_drawer->open(kName); }

void BenchFace::showProblems(const QString& title, const Problems& problems) {
  m_problems->show(title, problems);
  m_drawer->open(kProblems);
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

void BenchFace::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), m_look->colours().paper);
}

}  // namespace grainwise::ui
