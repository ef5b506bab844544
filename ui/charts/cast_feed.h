// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <memory>

#include "core/air/turnover.h"
#include "ui/charts/cast_view.h"
#include "ui/work/heavy_runner.h"

namespace grainwise::ui {

class AnalysisFeed;

/// Keeps the unrolling loop of the shown rig up to date while somebody looks at it: each change starts
/// a new run away from the window and calls the old one off.
class CastFeed : public QObject {
  Q_OBJECT
 public:
  explicit CastFeed(AnalysisFeed* feed, QObject* parent = nullptr);

  /// Only while active is anything computed.
  void setActive(bool active);
  [[nodiscard]] bool busy() const { return m_runner.busy(); }
  /// How often a run was begun, for tests.
  [[nodiscard]] int runs() const { return m_runs; }

 Q_SIGNALS:
  void started();
  /// A picture, or nothing and the reason why there is none.
  void arrived(const std::shared_ptr<const CastPicture>& picture, const QString& reason);

 private:
  void refresh();

  AnalysisFeed* m_feed;
  HeavyRunner m_runner;
  std::shared_ptr<const Rig> m_of;
  bool m_active = false;
  int m_runs = 0;
};

}  // namespace grainwise::ui
