// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>

#include "ui/charts/river_view.h"
#include "ui/work/heavy_runner.h"

namespace grainwise::ui {

class AnalysisFeed;

/// Keeps the swing of the shown rig up to date, away from the window: the swing at once while somebody
/// looks at it, else when the bench has been quiet for a moment; then the band from real swings, which
/// takes the place of the live estimate in the analysis.
class RiverFeed : public QObject {
  Q_OBJECT
 public:
  explicit RiverFeed(AnalysisFeed* feed, QObject* parent = nullptr);

  /// Somebody looks at the river.
  void setActive(bool active);
  [[nodiscard]] bool busy() const { return m_runner.busy() || m_wait.isActive(); }

 Q_SIGNALS:
  void started();
  /// A picture, or nothing and the reason why there is none.
  void arrived(const std::shared_ptr<const RiverPicture>& picture, const QString& reason);
  /// 0 to 1 of the band; 1 when it is there.
  void bandProgress(double share);

 private:
  void changed();
  void runSwing();
  void runBand();
  void finish(const std::shared_ptr<const void>& result);

  AnalysisFeed* m_feed;
  HeavyRunner m_runner;
  QTimer m_wait;
  std::shared_ptr<const Rig> m_of;
  bool m_active = false;
  bool m_bandRuns = false;
};

}  // namespace grainwise::ui
