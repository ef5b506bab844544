// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <type_traits>

#include "core/model/limits.h"
#include "ui/document/preferences.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {

/// One of the things that a new rig may start with: its key in the settings file (its unit is the file's),
/// what may be typed, and where it stands.
struct NewRigRow {
  const char* key;
  Limit limit;
  Measure measure;
  std::optional<double> (*get)(const NewRig&);
  void (*set)(NewRig&, std::optional<double>);
};

namespace new_rig {
template <auto Group, auto Member>
std::optional<double> get(const NewRig& rig) {
  const auto& value = rig.*Group.*Member;
  return value ? std::optional(value->value()) : std::nullopt;
}
template <auto Group, auto Member>
void set(NewRig& rig, std::optional<double> to) {
  auto& value = rig.*Group.*Member;
  using Unit = typename std::remove_reference_t<decltype(value)>::value_type;
  value = to ? std::optional(Unit(*to)) : std::nullopt;
}
template <auto Group, auto Member>
constexpr NewRigRow row(const char* key, Limit limit, Measure measure) {
  return {key, limit, measure, &get<Group, Member>, &set<Group, Member>};
}
}  // namespace new_rig

inline constexpr std::array<NewRigRow, 13> kNewRigRows{{
    new_rig::row<&NewRig::cast, &Cast::lineSpeed>("new_rig/line_speed_ft_per_s", limits::kLineSpeed, Measure::speed),
    new_rig::row<&NewRig::cast, &Cast::loop>("new_rig/loop_ft", limits::kCastLoop, Measure::length),
    new_rig::row<&NewRig::cast, &Cast::launch>("new_rig/launch_deg", limits::kLaunch, Measure::plain),
    new_rig::row<&NewRig::cast, &Cast::rodTip>("new_rig/rod_tip_ft", limits::kRodTip, Measure::length),
    new_rig::row<&NewRig::cast, &Cast::overhang>("new_rig/overhang_ft", limits::kOverhang, Measure::length),
    new_rig::row<&NewRig::cast, &Cast::airAltitude>("new_rig/air_altitude_ft", limits::kAirAltitude, Measure::length),
    new_rig::row<&NewRig::water, &Water::surfaceSpeed>("new_rig/surface_ft_per_s", limits::kSurfaceSpeed,
                                                       Measure::speed),
    new_rig::row<&NewRig::water, &Water::depth>("new_rig/depth_ft", limits::kDepth, Measure::length),
    new_rig::row<&NewRig::water, &Water::temperature>("new_rig/temperature_c", limits::kTemperature,
                                                      Measure::temperature),
    new_rig::row<&NewRig::water, &Water::salinity>("new_rig/salinity_g_per_kg", limits::kSalinity, Measure::plain),
    new_rig::row<&NewRig::swing, &Swing::lineOut>("new_rig/line_out_ft", limits::kLineOut, Measure::length),
    new_rig::row<&NewRig::swing, &Swing::angle>("new_rig/angle_deg", limits::kAngle, Measure::plain),
    new_rig::row<&NewRig::swing, &Swing::mend>("new_rig/mend_s", limits::kMend, Measure::plain),
}};

}  // namespace grainwise::ui
