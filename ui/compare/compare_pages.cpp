// SPDX-License-Identifier: GPL-3.0-or-later
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListView>
#include <QScrollArea>
#include <QStackedWidget>

#include "core/model/edits.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/compare_feed.h"
#include "ui/compare/difference_list.h"
#include "ui/compare/pair_view.h"
#include "ui/compare/readings_table.h"
#include "ui/compare/summary_bar.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/panels/name_panel.h"
#include "ui/panels/problem_panel.h"
#include "ui/panels/rod_panel.h"
#include "ui/panels/water_panel.h"
#include "ui/strip/part_editor.h"
#include "ui/strip/shelf_model.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
#include "ui/text/words.h"
#include "ui/theme/pill_button.h"

/// The pages under the two lines: differences and readings of both; Shelf, part, rod, water and name of
/// the one that was touched last.
namespace grainwise::ui {
namespace {
const QString kDifferences = QStringLiteral("differences");
const QString kCast = QStringLiteral("cast");
const QString kRiver = QStringLiteral("river");
const QString kProblems = QStringLiteral("problems");
const QString kKeys[] = {QStringLiteral("shelf"), QStringLiteral("part"), QStringLiteral("rod"),
                         QStringLiteral("water"), QStringLiteral("name")};
enum Stack { shelf, part, rod, water, name };
}  // namespace

CompareFace::Pages CompareFace::pagesOf(Side* side, const SharedShelf& parts) {
  const std::size_t index = side == m_sides[0] ? 0 : 1;
  RigDocument* document = side->document();
  auto* shelfView = new ShelfView(m_look, document, m_stacks[Stack::shelf]);
  shelfView->setShelf(parts);
  m_shelves[index] = shelfView;
  connectShelf(side);
  connect(side->strip(), &StripView::partWanted, this, [this, side, shelfView](PartKind kind) {
    setCurrent(side);
    openShelf();
    shelfView->showKind(kind);
  });
  auto* editor = new PartEditor(m_look, document, side->feed(), m_stacks[Stack::part]);
  connect(side->strip(), &StripView::partSelected, editor, &PartEditor::setPart);
  auto* water = new WaterPanel(m_look, document, m_pools, m_stacks[Stack::water]);
  connect(water, &WaterPanel::goingTo, this, [this, side](const Pool& pool) { sharePool(side, pool); });
  return {shelfView, editor, new RodPanel(m_look, document, parts, m_stacks[Stack::rod]), water,
          new NamePanel(m_look, document, m_stacks[Stack::name])};
}

namespace {

QScrollArea* scrolled(QWidget* inside, QWidget* parent) {
  auto* area = new QScrollArea(parent);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  area->setWidget(inside);  // at a large type a table may be wider than its half
  inside->setAutoFillBackground(false);
  area->viewport()->setAutoFillBackground(false);
  return area;
}

}  // namespace

void CompareFace::addPages(const SharedShelf& parts) {
  auto* both = new QWidget(m_drawer);
  auto* row = new QHBoxLayout(both);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(m_look->px(28));
  m_readings = new ReadingsTable(m_look, m_feed, both);
  m_list = new DifferenceList(m_look, m_feed, both);
  // Each scrolls by itself: the table stays while one reads down the list.
  row->addWidget(scrolled(m_readings, both), 11);
  row->addWidget(scrolled(m_list, both), 9);
  connect(m_list, &DifferenceList::chosen, this, &CompareFace::choose);
  m_drawer->addPage(kDifferences, tr("Differences"), both, Drawer::Stay::standing);
  for (std::size_t i = 0; i < 5; ++i) {
    m_stacks[i] = new QStackedWidget(m_drawer);
    const bool standing = i <= Stack::part;
    m_drawer->addPage(kKeys[i], QString(), m_stacks[i],
                      standing ? Drawer::Stay::standing : Drawer::Stay::passing);
  }
  for (std::size_t s = 0; s < 2; ++s) {
    m_pages[s] = pagesOf(m_sides[s], parts);
    QWidget* const pages[] = {m_pages[s].shelf, m_pages[s].part, m_pages[s].rod, m_pages[s].water,
                              m_pages[s].name};
    for (std::size_t i = 0; i < 5; ++i) m_stacks[i]->addWidget(pages[i]);
  }
  m_casts = new PairPanel(m_look, m_feed, PairView::Scene::cast, m_drawer);
  m_swings = new PairPanel(m_look, m_feed, PairView::Scene::river, m_drawer);
  m_drawer->addPage(kCast, tr("Cast"), m_casts, Drawer::Stay::standing);
  m_drawer->addPage(kRiver, tr("River"), m_swings, Drawer::Stay::standing);
  m_problems = new ProblemPanel(m_look, m_drawer);
  m_drawer->addPage(kProblems, tr("Problems"), m_problems, Drawer::Stay::passing);
}

void CompareFace::addControls() {
  const auto pill = [this](const char* key, PillButton::Form form, const QString& words,
                           const QString& tip) {
    auto* button = new PillButton(m_look, form, words, m_summary);
    button->setObjectName(QLatin1String(key));
    button->setToolTip(tip);
    m_summary->addControl(button);
    return button;
  };
  m_swap = pill("swapRigs", PillButton::Form::plain, tr("Swap A and B"),
                tr("A becomes B and B becomes A (X)"));
  m_atFly = pill("alignFly", PillButton::Form::pill, tr("Fly to fly"),
                 tr("Lay the flies under each other instead of the rears of the heads"));
  m_lock = pill("oneWater", PillButton::Form::pill, tr("One water"),
                tr("Both fish the same water: a change for one is a change for the other"));
  m_oneWater = m_sides[0]->document()->rig().water == m_own->rig().water;
  m_lock->setChecked(m_oneWater);
  connect(m_swap, &PillButton::clicked, this, &CompareFace::swap);
  connect(m_atFly, &PillButton::toggled, this, [this](bool on) {
    setAlign(on ? CompareChart::Align::fly : CompareChart::Align::rear);
  });
  connect(m_lock, &PillButton::toggled, this, &CompareFace::setOneWater);
}

void CompareFace::nameTabs() {
  const QString letter = current()->letterWord();
  const QString titles[] = {tr("Shelf, for %1"), tr("Part of %1"), tr("Rod of %1"),
                            tr("Water of %1"), tr("Name and notes of %1")};
  for (std::size_t i = 0; i < 5; ++i) m_drawer->setTitle(kKeys[i], titles[i].arg(letter));
}

/// What if: the card under the keyboard shows at once what its part would do in the place of the one of
/// its kind; Enter takes it.
void CompareFace::connectShelf(Side* side) {
  ShelfView* view = m_shelves[side == m_sides[0] ? 0 : 1];
  connect(view, &ShelfView::refused, m_drawer, &Drawer::say);
  view->placePart = [this, side](const Part& part) {
    side->document()->apply(tr("Try %1").arg(partWords(part, m_look->units())),
                            edits::instead(side->document()->rig(), part));
  };
  view->cards()->installEventFilter(this);
  connect(view->cards()->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this, side, view] { tryPart(side, view->cards()->hasFocus()); });
}

void CompareFace::tryPart(Side* side, bool show) {
  const ShelfView* view = m_shelves[side == m_sides[0] ? 0 : 1];
  const QModelIndex at = view->cards()->currentIndex();
  if (!show || !at.isValid()) {
    side->document()->setPreview(std::nullopt);
    return;
  }
  const Part& part = view->model()->part(at.row());
  side->document()->setPreview(edits::instead(side->document()->rig(), part));
  m_drawer->say(tr("What if %1 had this? Enter keeps it, Escape does not.")
                    .arg(side->letterWord()));
}

bool CompareFace::eventFilter(QObject* watched, QEvent* event) {
  for (std::size_t i = 0; i < 2; ++i) {
    if (m_shelves[i] == nullptr || watched != m_shelves[i]->cards()) continue;
    if (event->type() == QEvent::FocusIn) tryPart(m_sides[i], true);
    if (event->type() == QEvent::FocusOut) tryPart(m_sides[i], false);
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
      tryPart(m_sides[i], false);
      m_sides[i]->strip()->setFocus();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void CompareFace::openDifferences() { m_drawer->open(kDifferences); }

void CompareFace::openCast() { m_drawer->open(kCast); }

void CompareFace::openRiver() { m_drawer->open(kRiver); }

void CompareFace::openShelf() { m_drawer->open(kKeys[Stack::shelf]); }

void CompareFace::openPart() { m_drawer->open(kKeys[Stack::part]); }

void CompareFace::openRod(bool startFrom) {
  m_drawer->open(kKeys[Stack::rod]);
  static_cast<RodPanel*>(m_pages[std::size_t(m_current)].rod)->focusFirst(startFrom);
}

void CompareFace::openWater() { m_drawer->open(kKeys[Stack::water]); }

void CompareFace::openName() {
  m_drawer->open(kKeys[Stack::name]);
  static_cast<NamePanel*>(m_pages[std::size_t(m_current)].name)->begin();
}

void CompareFace::showProblems(const QString& title, const Problems& problems) {
  m_problems->show(title, problems);
  m_drawer->open(kProblems);
}

}  // namespace grainwise::ui
