// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/axis_ticks.h"

#include <cmath>

#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

constexpr int kMostDecimals = 2;

double stepOf(double pixelsPerUnit, double pixels) {
  const double least = pixels / pixelsPerUnit;
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double times : {1.0, 2.0, 5.0}) {
    if (times * power >= least) return times * power;
  }
  return 10.0 * power;
}

}  // namespace

std::vector<AxisTick> axisTicks(double low, double high, double pixelsPerUnit, double pixels) {
  std::vector<AxisTick> ticks;
  if (!(high > low) || !(pixelsPerUnit > 0)) return ticks;
  const double step = stepOf(pixelsPerUnit, pixels);
  for (int i = int(std::ceil(low / step - 1e-9)); i * step <= high + 1e-9 * step; ++i) {
    ticks.push_back({i * step, numberText(i * step, kMostDecimals)});
  }
  return ticks;
}

double gridStep(double highest) {
  constexpr double kLines = 3.2;
  constexpr double kMost = 1e15;
  for (double power = 0.1; power < kMost; power *= 10) {
    for (const double times : {1.0, 2.0, 5.0}) {
      if (highest / (times * power) <= kLines) return times * power;
    }
  }
  return kMost;
}

}  // namespace grainwise::ui
