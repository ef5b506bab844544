// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/material/section_properties.h"
#include "core/model/rig.h"
#include "core/units/station.h"

namespace grainwise {

/// One section in its place along the rig.
struct ProfileSpan {
  std::size_t part = 0;
  std::size_t section = 0;
  Station from;
  Station to;
  SectionProperties properties;  ///< scaled
  bool bareNylon = false;
  bool sinks = false;

  [[nodiscard]] Feet length() const { return to - from; }
  [[nodiscard]] GrainsPerFoot at(Station s) const;
  /// Grains from the rod end of the span up to `s`, exact for both mass laws.
  [[nodiscard]] Grains upTo(Station s) const { return between(from, s); }
  /// Grains between two stations; what lies outside the span counts nothing.
  [[nodiscard]] Grains between(Station a, Station b) const;
  [[nodiscard]] Grains mass() const;
  [[nodiscard]] Station centroid() const;
};

/// A loop or the fly: a mass without length.
struct PointMass {
  enum class Kind { loop, fly };
  Kind kind;
  std::size_t part = 0;
  Station at;
  Grains mass;
  bool atRodEnd = false;  ///< of a loop: which end of its part
};

/// A part in its place, with what it weighs.
struct PartPlace {
  Station from;
  Station to;
  Grains line;   ///< its sections, scaled
  Grains loops;
  double scaledBy = 1.0;  ///< factor of the label or weighed mass on its sections
  [[nodiscard]] Grains mass() const { return line + loops; }
};

/// The mass of a whole rig along its length: stations from the rear of the head (without a head:
/// from the rear of the first part after the running line); the running line at negative stations.
/// Spans stand in order, each beginning where the one before ends; point masses in order, none of no
/// mass; `places` has one entry a part (a fly's has no length, its wet mass in `line`).
/// Common practice, no source: the closed integrals of core/mass/line_integrals.h, sums compensated
/// (Neumaier 1974), so that masses are exact to a few last bits. Any rig that `check` accepts.
struct MassProfile {
  std::vector<ProfileSpan> spans;         ///< running line included
  std::vector<PointMass> points;
  std::vector<PartPlace> places;
  Station start;  ///< the rear of the head, or of the first part after the running line: 0
  Station end;    ///< the fly, or the end of the line
  std::size_t firstPart = 0;  ///< the first part that counts: 1 behind a running line
  std::size_t firstSpan = 0;  ///< the first span of that part

  /// Grains per foot just before / just after `s` (0 outside the line).
  [[nodiscard]] GrainsPerFoot before(Station s) const;
  [[nodiscard]] GrainsPerFoot after(Station s) const;
  /// Grains of line, without point masses, between two stations. Cost: logarithmic, and linear in
  /// the spans between them.
  [[nodiscard]] Grains lineBetween(Station from, Station to) const;
  /// Grains from `start` to `s`, point masses up to and including `s`; the running line's loops
  /// count nothing.
  [[nodiscard]] Grains soFar(Station s) const;
  /// Centre of the mass from `start` to `end`, loops and fly included; `start` where there is none.
  [[nodiscard]] Station centreOfMass() const;
};

/// The factor that `weighed` (less its loops) or else `label` puts on a part's sections; 1 with
/// neither, and 1 where it would be 1e9 or more: nothing on the line weighs a billionth of its label.
double scaleOf(const Part& part);

MassProfile massProfile(const Rig& rig);

/// A row of the profile: both sides of every step stand as two rows at one station; a point mass is
/// a jump of `soFar` at its station, the row after it including it. No rows for the running line.
struct ProfileRow {
  Station at;
  GrainsPerFoot mass;
  Grains soFar;
};
std::vector<ProfileRow> profileRows(const MassProfile& profile);

}  // namespace grainwise
