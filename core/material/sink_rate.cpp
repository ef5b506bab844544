// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/material/sink_rate.h"

#include <cmath>
#include <numbers>
#include <utility>

#include "core/material/drag.h"
#include "core/numerics/root.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

// Everything is solved in x = ln Re, where drag is nearly a straight line: Newton needs 3-4 steps.
// The bracket spans every line that the file format allows and then some.
constexpr double kLeastLnRe = -46.0;  // Re 1e-20
constexpr double kMostLnRe = 40.0;
constexpr numerics::RootOptions kToTheLastDigits{1e-9, 0.0, 200};  // the next error is its square

constexpr double kQuarterPi = std::numbers::pi / 4.0;

/// A start within a few per cent over Re 1-1e4: Re G is close to 12 Re^1.25 + Re^2.
double guessFromReG(double reG) {
  const double viscous = std::pow(reG / 12.0, 0.8);
  const double inertial = std::sqrt(reG);
  return std::log(viscous * inertial / (viscous + inertial));
}

}  // namespace

InchesPerSecond sinkRate(GrainsPerFoot mass, Inches diameter, const WaterState& water) {
  const Fluid fluid = waterAt(water);
  const double d_m = si::m(diameter);
  const double net_kg_per_m = si::kg_per_m(mass) - fluid.rho_kg_per_m3 * kQuarterPi * d_m * d_m;
  // |net| g = 1/2 mu G(Re) w with w = Re nu / d
  const double reG = 2.0 * std::abs(net_kg_per_m) * si::kGravity_m_per_s2 * d_m /
                     (fluid.mu_pa_s * fluid.nu_m2_per_s());
  if (!(reG > 1e-20)) return InchesPerSecond(0.0);
  const double wanted = std::log(reG);
  const auto residual = [wanted](double lnRe) {
    const DragAt drag = cylinderDrag(std::exp(lnRe));
    return std::pair(lnRe + std::log(drag.g) - wanted, 1.0 + drag.slope);
  };
  const auto root = numerics::findRootNewton(residual, kLeastLnRe, kMostLnRe, guessFromReG(reG),
                                             kToTheLastDigits);
  const double w_m_per_s = std::exp(root.x) * fluid.nu_m2_per_s() / d_m;
  return si::toInchesPerSecond(std::copysign(w_m_per_s, net_kg_per_m));
}

std::optional<Inches> diameterFromSinkRate(GrainsPerFoot mass, InchesPerSecond rate,
                                           const WaterState& water) {
  const Fluid fluid = waterAt(water);
  const double w_m_per_s = si::m_per_s(rate);
  const double mass_kg_per_m = si::kg_per_m(mass);
  if (!(w_m_per_s > 0.0) || !(mass_kg_per_m > 0.0)) return std::nullopt;
  // m g = b Re^2 + c G(Re), b Re^2 the buoyancy and c G the drag, d = Re nu / w
  const double perRe_m = fluid.nu_m2_per_s() / w_m_per_s;
  const double weight = mass_kg_per_m * si::kGravity_m_per_s2;
  const double b =
      fluid.rho_kg_per_m3 * kQuarterPi * perRe_m * perRe_m * si::kGravity_m_per_s2 / weight;
  const double c = 0.5 * fluid.mu_pa_s * w_m_per_s / weight;
  const auto residual = [b, c](double lnRe) {
    const double re = std::exp(lnRe);
    const DragAt drag = cylinderDrag(re);
    const double buoyancy = b * re * re, force = c * drag.g, sum = buoyancy + force;
    return std::pair(std::log(sum), (2.0 * buoyancy + drag.slope * force) / sum);
  };
  const double neutral = 1.0 / std::sqrt(b);  // Re of the widest, neutral line
  if (!(std::log(neutral) > kLeastLnRe)) return std::nullopt;  // below the law's range, nothing to search
  const double dragged = std::max(1e-18, (1.0 / c - 12.0) * 0.7);
  const auto root = numerics::findRootNewton(
      residual, kLeastLnRe, std::log(neutral), std::log(neutral * dragged / (neutral + dragged)),
      kToTheLastDigits);
  const double re = std::exp(root.x);
  if (!root.ok() || re >= kMostReynolds) return std::nullopt;
  return si::toInches(re * perRe_m);
}

std::optional<Inches> diameterFromDensity(GramsPerCubicCentimetre density, InchesPerSecond rate,
                                          const WaterState& water) {
  const Fluid fluid = waterAt(water);
  const double excess_kg_per_m3 = si::kg_per_m3(density) - fluid.rho_kg_per_m3;
  const double w_m_per_s = std::abs(si::m_per_s(rate));
  if (!(w_m_per_s > 0.0) || !(excess_kg_per_m3 * rate.value() > 0.0)) return std::nullopt;
  // excess A g = 1/2 mu G w, d = Re nu / w: Re^2 / G = 2 mu w^3 / (pi excess g nu^2)
  const double nu = fluid.nu_m2_per_s();
  const double wanted =
      std::log(0.5 * fluid.mu_pa_s * w_m_per_s * w_m_per_s * w_m_per_s /
               (kQuarterPi * std::abs(excess_kg_per_m3) * si::kGravity_m_per_s2 * nu * nu));
  const auto residual = [wanted](double lnRe) {
    const DragAt drag = cylinderDrag(std::exp(lnRe));
    return std::pair(2.0 * lnRe - std::log(drag.g) - wanted, 2.0 - drag.slope);
  };
  const auto root = numerics::findRootNewton(residual, kLeastLnRe, kMostLnRe, wanted + 1.5,
                                             kToTheLastDigits);
  const double re = std::exp(root.x);
  if (!root.ok() || re >= kMostReynolds) return std::nullopt;
  return si::toInches(re * nu / w_m_per_s);
}

}  // namespace grainwise
