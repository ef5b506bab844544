// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>
#include <memory>

#include "core/model/problem.h"
#include "core/model/shelf.h"
#include "ui/compare/compare_chart.h"
#include "ui/compare/side.h"
#include "ui/theme/look.h"

class QStackedWidget;

namespace grainwise {
struct PartPair;
struct Pool;
struct Rig;
}

namespace grainwise::ui {

class AnalysisFeed;
class CompareFeed;
class DifferenceList;
class Drawer;
class PairPanel;
class PillButton;
class PoolBook;
class ProblemPanel;
class ReadingsTable;
class RigDocument;
class ShelfView;
class SummaryBar;

/// Compare: two rigs on one ruler, A above and B below, both fully editable, what each foot weighs of
/// both in one chart with the difference shaded, the readings in two columns, and in what they differ
/// with what that does. The rig of the bench is one of them; the other is the face's own. Undo, keys and
/// pages act on the one that was touched last.
class CompareFace : public QWidget {
  Q_OBJECT
 public:
  CompareFace(Look* look, RigDocument* bench, AnalysisFeed* benchFeed, const PoolBook* pools,
              const SharedShelf& shelf, QWidget* parent = nullptr);

  using Letter = Side::Letter;
  [[nodiscard]] Side* side(Letter letter) const;
  [[nodiscard]] Side* current() const;
  void setCurrent(Side* side);
  /// The rig that is not the bench's.
  [[nodiscard]] RigDocument* ownDocument() const { return m_own; }
  [[nodiscard]] CompareFeed* feed() const { return m_feed; }
  [[nodiscard]] CompareChart* chart() const { return m_chart; }
  [[nodiscard]] DifferenceList* differences() const { return m_list; }
  [[nodiscard]] ReadingsTable* readings() const { return m_readings; }
  [[nodiscard]] SummaryBar* summary() const { return m_summary; }
  [[nodiscard]] Drawer* drawer() const { return m_drawer; }
  [[nodiscard]] PairPanel* casts() const { return m_casts; }
  [[nodiscard]] PairPanel* swings() const { return m_swings; }
  [[nodiscard]] ShelfView* shelfOf(Letter letter) const;

  void setShelf(const SharedShelf& shelf);
  /// A becomes B and B becomes A; the rigs, their undo and their files stay what they are.
  void swap();
  /// Makes the other rig the same, as one step of the other's undo.
  void copyToOther(Side* from);
  void setAlign(CompareChart::Align align);
  [[nodiscard]] CompareChart::Align align() const { return m_align; }
  /// One water for both: the other takes that of the current one, and every change from then on.
  void setOneWater(bool one);
  void toggleAlign();
  void toggleOneWater();
  [[nodiscard]] bool oneWater() const { return m_oneWater; }

  void openDifferences();
  void openCast();
  void openRiver();
  void openShelf();
  void openPart();
  void openRod(bool startFrom);
  void openWater();
  void openName();
  void showProblems(const QString& title, const Problems& problems);

 Q_SIGNALS:
  void currentChanged();
  void openWanted();
  void saveWanted();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  /// A part that is let go beside its line comes off it.
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  struct Pages {
    QWidget* shelf;
    QWidget* part;
    QWidget* rod;
    QWidget* water;
    QWidget* name;
  };
  void addPages(const SharedShelf& shelf);
  void addWaysOut();
  Pages pagesOf(Side* side, const SharedShelf& shelf);
  void addControls();
  void connectSide(Side* side);
  void connectShelf(Side* side);
  void arrange();
  void setRulers();
  void shareWater(Side* from);
  void sharePool(Side* from, const Pool& pool);
  void followCursor(Side* from);
  void tryPart(Side* side, bool show);
  void choose(const PartPair& parts);
  void nameTabs();
  [[nodiscard]] Side* otherOf(const Side* side) const;

  Look* m_look;
  const PoolBook* m_pools;
  RigDocument* m_own;
  AnalysisFeed* m_ownFeed;
  std::array<Side*, 2> m_sides{};  ///< the bench's, and the own one
  std::array<ShelfView*, 2> m_shelves{};
  std::array<Pages, 2> m_pages{};
  int m_first = 0;    ///< which of them is A
  int m_current = 0;
  CompareFeed* m_feed;
  CompareChart* m_chart;
  ReadingsTable* m_readings;
  DifferenceList* m_list;
  SummaryBar* m_summary;
  Drawer* m_drawer;
  PairPanel* m_casts;
  PairPanel* m_swings;
  ProblemPanel* m_problems;
  QStackedWidget* m_stacks[5] = {};
  PillButton* m_swap;
  PillButton* m_atFly;
  PillButton* m_lock;
  CompareChart::Align m_align = CompareChart::Align::rear;
  bool m_oneWater = true;
  bool m_sharing = false;
  std::array<std::shared_ptr<const Rig>, 2> m_known;  ///< as each last was without a preview
};

}  // namespace grainwise::ui
