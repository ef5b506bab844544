// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>

#include "core/compare/compare.h"
#include "ui/work/heavy_runner.h"

namespace grainwise::ui {

class AnalysisFeed;

/// Follows two feeds: one comparison a turn of the event loop, previews included, from the live
/// estimates at once; a moment after the last change the swings of both are run in the background and
/// the comparison is made again with them.
class CompareFeed : public QObject {
  Q_OBJECT
 public:
  CompareFeed(AnalysisFeed* one, AnalysisFeed* other, QObject* parent = nullptr);

  /// Which of the two feeds is A; the other is B.
  void setFirst(AnalysisFeed* first);
  [[nodiscard]] AnalysisFeed* a() const { return m_feeds[m_first]; }
  [[nodiscard]] AnalysisFeed* b() const { return m_feeds[1 - m_first]; }
  [[nodiscard]] const Comparison& comparison() const { return m_comparison; }
  /// A or B as the comparison saw it; the feeds may be an edit ahead.
  [[nodiscard]] const Rig& rigOf(bool ofB) const { return *m_compared[ofB ? 1 : 0]; }
  /// The swings of A or of B as they are shown; nothing until they have been run.
  [[nodiscard]] const HeavyRuns* runs(bool ofB) const;
  /// The unrolling loop of A or of B, with its pictures; nothing until it has been run, or without one.
  [[nodiscard]] std::optional<CastResult> cast(bool ofB) const;
  /// Whether depths and times are those of real swings of the rigs as they are shown.
  [[nodiscard]] bool fromRuns() const { return m_fresh; }
  [[nodiscard]] bool running() const { return m_runner.busy() || m_wait.isActive(); }
  /// Nothing is computed while the face is not seen.
  void setActive(bool active);

 Q_SIGNALS:
  void compared();

 private:
  struct Runs {
    std::shared_ptr<const Rig> rigs[2];
    bool learner = false;
    HeavyRuns runs[2];
    std::optional<CastResult> casts[2];
  };
  void schedule();
  void compare();
  void startRuns();

  AnalysisFeed* m_feeds[2];
  int m_first = 0;
  bool m_active = false;
  bool m_scheduled = false;
  bool m_fresh = false;
  Comparison m_comparison;
  std::shared_ptr<const Rig> m_compared[2];
  std::shared_ptr<const Runs> m_runs;
  QTimer m_wait;
  HeavyRunner m_runner;
};

}  // namespace grainwise::ui
