// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <stop_token>

namespace grainwise {

/// Calls `work(i)` for every i below `count`, each once, on this thread and one more. Calls must not
/// depend on one another; what each writes to its own place is there when this returns. `progress`
/// (0 to 1) is called on this thread only. False when stopped: some were not called; an i that was
/// begun is always finished. An exception of `work` comes out here.
bool forEachOnTwo(std::size_t count, const std::function<void(std::size_t)>& work,
                  const std::stop_token& stop = {},
                  const std::function<void(double)>& progress = {});

}  // namespace grainwise
