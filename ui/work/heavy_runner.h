// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace grainwise::ui {

/// Runs one heavy job at a time on a thread of its own, away from the window. A newer job stops the
/// one that runs and takes the place of the one that waits; only the newest job's result arrives.
/// Jobs hold what they need by value and look at their stop token. The destructor stops and waits.
class HeavyRunner : public QObject {
  Q_OBJECT
 public:
  using Progress = std::function<void(double share)>;
  using Result = std::shared_ptr<const void>;
  /// Returns nothing when it was stopped.
  using Job = std::function<Result(std::stop_token, const Progress&)>;

  explicit HeavyRunner(QObject* parent = nullptr);
  ~HeavyRunner() override;
  Q_DISABLE_COPY_MOVE(HeavyRunner)

  void start(Job job);
  /// Stops what runs and forgets what waits; nothing arrives any more.
  void cancel();
  /// Whether a result is still to come.
  [[nodiscard]] bool busy() const { return m_busy; }

 Q_SIGNALS:
  void progress(double share);
  void finished(const std::shared_ptr<const void>& result);

 private:
  void work(const std::stop_token& ended);
  void post(const Job& job, int generation, const std::stop_token& stopped);
  void arrive(int generation, const Result& result);

  std::mutex m_lock;
  std::condition_variable_any m_wake;
  std::optional<Job> m_waiting;        // guarded by m_lock
  std::stop_source m_running;          // guarded by m_lock
  int m_generation = 0;                // written by the window's thread under m_lock
  bool m_busy = false;                 // window's thread only
  std::jthread m_thread;               // last: it ends before the rest goes
};

}  // namespace grainwise::ui
