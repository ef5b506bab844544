// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "core/model/rig.h"
#include "ui/charts/river_view.h"
#include "ui/theme/look.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace grainwise::ui {

class AnalysisFeed;
class PlayerBar;
class PoolBook;
class RigDocument;
class RiverFeed;
class SliderRow;

/// The River drawer: angle, mend and line out in front, since they come before changing the tip; the
/// swing played beside them, what it does in words below.
class RiverPanel : public QWidget {
  Q_OBJECT
 public:
  RiverPanel(Look* look, RigDocument* document, AnalysisFeed* feed, const PoolBook* pools,
             QWidget* parent = nullptr);
  [[nodiscard]] RiverView* view() const { return m_view; }
  [[nodiscard]] RiverFeed* swings() const { return m_swings; }

 Q_SIGNALS:
  /// The depths of the rig in all pools are asked for.
  void depthsWanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void layOut();
  template <class Q>
  void bind(SliderRow* row, const char* key, std::optional<Q> Swing::*member, const QString& step);
  void refresh();
  void take(const std::shared_ptr<const RiverPicture>& picture, const QString& reason);
  void showBand();
  void showProgress(double share);
  void showWanted();
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  const PoolBook* m_pools;
  RiverFeed* m_swings;
  RiverView* m_view;
  PlayerBar* m_player;
  SliderRow* m_angle;
  SliderRow* m_mend;
  SliderRow* m_lineOut;
  QLabel* m_result;
  QWidget* m_trying;  ///< while swings run for the range of depth: what, and how far they are
  QLabel* m_tryingWords;
  QProgressBar* m_progress;
  QLabel* m_caution;
  QPushButton* m_depths;
  std::shared_ptr<const RiverPicture> m_picture;
};

}  // namespace grainwise::ui
