// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <stop_token>
#include <thread>

namespace grainwise::bench {

/// From the wish to stop, at a moment of its own each time, until `run` has returned; the worst as a
/// counter. `run(token)` says whether it was stopped; `moment_ms()` when it is asked to.
template <class Run, class Moment>
void timeStopping(benchmark::State& state, Run run, Moment moment_ms) {
  using Clock = std::chrono::steady_clock;
  double worst_s = 0.0;
  for (auto _ : state) {
    std::stop_source stop;
    Clock::time_point asked;
    std::jthread hand([&, after = std::chrono::milliseconds(moment_ms())] {
      std::this_thread::sleep_for(after);
      asked = Clock::now();
      stop.request_stop();
    });
    const bool stopped = run(stop.get_token());
    const auto ended = Clock::now();
    hand.join();
    if (!stopped) state.SkipWithError("ended before it was asked to stop");
    const double took_s = std::chrono::duration<double>(ended - asked).count();
    worst_s = std::max(worst_s, took_s);
    state.SetIterationTime(took_s);
  }
  state.counters["worst_ms"] = 1e3 * worst_s;
}

}  // namespace grainwise::bench
