// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/model/problem.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

class AnalysisFeed;
class ChooserPanel;
class Drawer;
class MakePanel;
class OwnStore;
class FixesPanel;
class PartEditor;
class PoolBook;
class Preferences;
class ProblemPanel;
class ProfileChart;
class RigDocument;
class NamePanel;
class RodPanel;
class Ruler;
class SentenceBar;
class ShelfView;
class StripView;
class Trial;
class TileRow;
class WhyPanel;

/// The Bench: the line, what each foot weighs under it on the same ruler, the tiles, one drawer.
class BenchFace : public QWidget {
  Q_OBJECT
 public:
  BenchFace(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
            const SharedShelf& shelf, QWidget* parent = nullptr);

  [[nodiscard]] StripView* strip() const { return m_strip; }
  [[nodiscard]] Drawer* drawer() const { return m_drawer; }

  /// Made when they are first wanted.
  [[nodiscard]] ChooserPanel* chooser();
  [[nodiscard]] FixesPanel* fixes();

  /// The Make drawer, and own parts on the Shelf as they change. W on the line starts weighing.
  void addMake(OwnStore* store, const Preferences* preferences);
  void openMake();
  void weigh();
  /// The cut sheet of these tips alone.
  void cut(const std::vector<Part>& parts, const QString& of);

  void openShelf();
  void openTips();
  void openFixes();
  void openPools();
  void openPart();
  void openCast();
  void openRiver();
  void openDepths();
  void openRod(bool startFrom);
  void openWater();
  void openName();
  void showProblems(const QString& title, const Problems& problems);

 protected:
  void paintEvent(QPaintEvent* event) override;
  /// A part of the line that is let go anywhere else on the face comes off the line.
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void layOut();
  void addPages();
  void addWaysOut();
  void addWaterPages();
  void addChoicePages();
  void addPassingPages();
  void connectParts();
  void addTrialBar();
  void pageOpened(const QString& page);
  void giveRoom();
  void buildFly();
  [[nodiscard]] const SharedShelf& allParts() const;

  Look* m_look;
  RigDocument* m_document;
  Trial* m_trial;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  SharedShelf m_carried;
  OwnStore* m_store = nullptr;
  bool m_backToTips = false;  ///< once the fly that is being built is tied on
  Ruler* m_ruler;
  StripView* m_strip;
  ProfileChart* m_chart;
  TileRow* m_tiles;
  SentenceBar* m_sentence;
  Drawer* m_drawer;
  ShelfView* m_shelf;
  // Pages of the drawer, each there once it was opened.
  WhyPanel* m_why = nullptr;
  NamePanel* m_name = nullptr;
  RodPanel* m_rod = nullptr;
  ProblemPanel* m_problems = nullptr;
  MakePanel* m_make = nullptr;
  ChooserPanel* m_chooser = nullptr;
  FixesPanel* m_fixes = nullptr;
};

}  // namespace grainwise::ui
