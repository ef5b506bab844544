// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/strength.h"

#include <charconv>
#include <cmath>
#include <numbers>

#include "core/units/si.h"

namespace grainwise {
namespace {

struct Stress {
  double low_pa, middle_pa, high_pa;
};
constexpr Stress kNylon{540e6, 600e6, 730e6};
constexpr Stress kFluorocarbon{630e6, 720e6, 850e6};
constexpr double kQuarterPi = std::numbers::pi / 4.0;

/// A pound-force: 7000 gr under standard gravity.
double newtonsPerPound() { return si::kg(Grains(7000)) * si::kGravity_m_per_s2; }

std::optional<int> wholeNumber(std::string_view text) {
  int value = 0;
  const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || stop != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

PoundRange strandStrength(Material material, Inches diameter) {
  const Stress& stress = material == Material::nylon ? kNylon : kFluorocarbon;
  const double d_m = si::m(diameter);
  const double perPascal_lb = kQuarterPi * d_m * d_m / newtonsPerPound();
  return {stress.low_pa * perPascal_lb, stress.middle_pa * perPascal_lb,
          stress.high_pa * perPascal_lb};
}

Inches nylonDiameterFor(double pounds) {
  const double area_m2 = pounds * newtonsPerPound() / kNylon.middle_pa;
  return si::toInches(std::sqrt(area_m2 / kQuarterPi));
}

PoundRange knotted(const PoundRange& strand, Knot knot) {
  const double low = knot == Knot::joining ? 0.55 : 0.75;
  const double high = knot == Knot::joining ? 0.85 : 0.95;
  return {strand.low_lb * low, strand.middle_lb * 0.5 * (low + high), strand.high_lb * high};
}

Inches diameterOfX(double x) { return Inches((11.0 - x) / 1000.0); }
double xOf(Inches diameter) { return 11.0 - diameter.value() * 1000.0; }

std::optional<int> hookNumber(std::string_view hook) {
  if (hook.starts_with('#')) hook.remove_prefix(1);
  const bool large = hook.ends_with("/0");
  if (large) hook.remove_suffix(2);
  const auto number = wholeNumber(hook);
  if (!number || *number < 1 || *number > (large ? 10 : 28)) return std::nullopt;
  return large ? 1 - *number : *number;
}

std::optional<TippetAdvice> tippetFor(std::string_view hook) {
  const auto number = hookNumber(hook);
  if (!number || *number < -1) return std::nullopt;
  TippetAdvice advice;
  if (*number >= 6) {
    advice.lowX = *number / 4.0;
    advice.highX = *number / 3.0;
    advice.thick = diameterOfX(*advice.lowX);
    advice.thin = diameterOfX(*advice.highX);
    if (advice.thin < Inches(0.003)) return std::nullopt;  // thinner than any tippet
    return advice;
  }
  advice.lowPounds = *number >= 2 ? 10.0 : 12.0;
  advice.highPounds = *number >= 2 ? 12.0 : 20.0;
  advice.thin = nylonDiameterFor(*advice.lowPounds);
  advice.thick = nylonDiameterFor(*advice.highPounds);
  return advice;
}

}  // namespace grainwise
