// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/two_threads.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>

namespace grainwise {

bool forEachOnTwo(std::size_t count, const std::function<void(std::size_t)>& work,
                  const std::stop_token& stop, const std::function<void(double)>& progress) {
  constexpr std::size_t kWorthAThread = 4;
  std::atomic<std::size_t> next{0};
  std::exception_ptr failed;
  const auto takeOne = [&] {
    if (stop.stop_requested()) return false;
    const std::size_t i = next++;
    if (i >= count) return false;
    work(i);
    return true;
  };
  {
    std::jthread other;
    if (count >= kWorthAThread) {
      other = std::jthread([&] {
        try {
          while (takeOne()) {}
        } catch (...) {
          failed = std::current_exception();
          next = count;
        }
      });
    }
    while (takeOne()) {
      if (progress) progress(static_cast<double>(std::min(next.load(), count)) /
                             static_cast<double>(count));
    }
  }
  if (failed) std::rethrow_exception(failed);
  return !stop.stop_requested();
}

}  // namespace grainwise
