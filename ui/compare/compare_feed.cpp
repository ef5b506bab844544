// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/compare_feed.h"

#include <QMetaObject>

#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
/// So long nothing must have changed before the swings are run.
constexpr int kCalm_ms = 350;
}  // namespace

CompareFeed::CompareFeed(AnalysisFeed* one, AnalysisFeed* other, QObject* parent)
    : QObject(parent), m_feeds{one, other}, m_runner(this) {
  m_wait.setSingleShot(true);
  m_wait.setInterval(kCalm_ms);
  for (AnalysisFeed* feed : m_feeds) {
    connect(feed, &AnalysisFeed::analysisChanged, this, &CompareFeed::schedule);
  }
  connect(&m_wait, &QTimer::timeout, this, &CompareFeed::startRuns);
  connect(&m_runner, &HeavyRunner::finished, this, [this](const std::shared_ptr<const void>& result) {
    m_runs = std::static_pointer_cast<const Runs>(result);
    compare();
  });
}

void CompareFeed::setFirst(AnalysisFeed* first) {
  m_first = first == m_feeds[0] ? 0 : 1;
  schedule();
}

void CompareFeed::setActive(bool active) {
  if (active == m_active) return;
  m_active = active;
  if (active) {
    compare();
    m_wait.start();
  } else {
    m_wait.stop();
    m_runner.cancel();
  }
}

void CompareFeed::schedule() {
  if (!m_active || m_scheduled) return;
  m_scheduled = true;
  QMetaObject::invokeMethod(
      this,
      [this] {
        m_scheduled = false;
        compare();
        if (!m_fresh) {
          m_runner.cancel();
          m_wait.start();
        }
      },
      Qt::QueuedConnection);
}

const HeavyRuns* CompareFeed::runs(bool ofB) const {
  return m_fresh ? &m_runs->runs[ofB ? 1 - m_first : m_first] : nullptr;
}

std::optional<CastResult> CompareFeed::cast(bool ofB) const {
  return m_fresh ? m_runs->casts[ofB ? 1 - m_first : m_first] : std::nullopt;
}

void CompareFeed::compare() {
  m_fresh = m_runs && m_runs->rigs[0] == m_feeds[0]->rig() && m_runs->rigs[1] == m_feeds[1]->rig() &&
            m_runs->learner == a()->conditions().learner;
  const auto rigA = a()->rig(), rigB = b()->rig();
  m_comparison = compareRigs({*rigA, a()->analysis(), runs(false)},
                             {*rigB, b()->analysis(), runs(true)},
                             a()->conditions());
  m_compared[0] = rigA;
  m_compared[1] = rigB;
  Q_EMIT compared();
}

void CompareFeed::startRuns() {
  const auto rigs = std::array{m_feeds[0]->rig(), m_feeds[1]->rig()};
  const Conditions conditions = m_feeds[0]->conditions();
  m_runner.start([rigs, conditions](const std::stop_token& stop,
                                    const HeavyRunner::Progress&) -> HeavyRunner::Result {
    auto runs = std::make_shared<Runs>();
    runs->learner = conditions.learner;
    for (std::size_t i = 0; i < 2; ++i) {
      runs->rigs[i] = rigs[i];
      runs->runs[i] = swingRuns(*rigs[i], conditions, stop);
      if (const auto model = castModel(*rigs[i], massProfile(*rigs[i]), conditions.turnover())) {
        runs->casts[i] = unroll(*model, {}, stop);
      }
      if (stop.stop_requested()) return nullptr;
    }
    return runs;
  });
}

}  // namespace grainwise::ui
