// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/work/heavy_runner.h"

#include <QMetaObject>

namespace grainwise::ui {

HeavyRunner::HeavyRunner(QObject* parent)
    : QObject(parent), m_thread([this](const std::stop_token& ended) { work(ended); }) {}

HeavyRunner::~HeavyRunner() {
  cancel();
  m_thread.request_stop();
  m_thread.join();
}

void HeavyRunner::start(Job job) {
  const std::lock_guard guard(m_lock);
  m_running.request_stop();
  m_running = std::stop_source();
  m_waiting = std::move(job);
  ++m_generation;
  m_busy = true;
  m_wake.notify_one();
}

void HeavyRunner::cancel() {
  const std::lock_guard guard(m_lock);
  m_running.request_stop();
  m_waiting.reset();
  ++m_generation;
  m_busy = false;
}

void HeavyRunner::work(const std::stop_token& ended) {
  std::unique_lock guard(m_lock);
  while (m_wake.wait(guard, ended, [this] { return m_waiting.has_value(); })) {
    const Job job = std::move(*m_waiting);
    m_waiting.reset();
    const int generation = m_generation;
    const std::stop_token stopped = m_running.get_token();
    guard.unlock();
    post(job, generation, stopped);
    guard.lock();
  }
}

void HeavyRunner::post(const Job& job, int generation, const std::stop_token& stopped) {
  const auto tell = [this, generation](double share) {
    QMetaObject::invokeMethod(
        this,
        [this, generation, share] {
          if (generation == m_generation && m_busy) Q_EMIT progress(share);
        },
        Qt::QueuedConnection);
  };
  Result result = job(stopped, tell);
  if (stopped.stop_requested()) return;
  QMetaObject::invokeMethod(
      this, [this, generation, result] { arrive(generation, result); }, Qt::QueuedConnection);
}

void HeavyRunner::arrive(int generation, const Result& result) {
  if (generation != m_generation || !m_busy) return;
  m_busy = false;
  if (result) Q_EMIT finished(result);
}

}  // namespace grainwise::ui
