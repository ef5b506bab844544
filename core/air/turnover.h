// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "core/air/air.h"
#include "core/air/air_line.h"
#include "core/air/cast_setup.h"
#include "core/mass/junctions.h"
#include "core/mass/profile.h"

namespace grainwise {

enum class ReserveVerdict { heap, probablyNot, marginal, toSpare };
enum class DriveVerdict { carries, marginal, doesNotCarry };
enum class PaceVerdict { dies, soft, firm, lively, kicks };
enum class NylonVerdict { fine, flyTooBulky };

Grade grade(ReserveVerdict verdict);
Grade grade(DriveVerdict verdict);
Grade grade(PaceVerdict verdict);
Grade grade(NylonVerdict verdict);

/// Why there is no turnover to read.
enum class NoTurnover {
  noHead,
  noFly,
  noFlyMass,  ///< under 0.001 gr: none known
  tooShort,   ///< no line left in front of the loop as it forms
  tooLong,    ///< over 300 ft from the rod tip to the fly: nobody casts that
  tooSlow,    ///< the legs part by less than 4 m/s: the loop is no loop
};

/// Common practice, no source; the limits are ours.
struct TurnoverLimits {
  double heap = 0.85, probablyNot = 1.0, toSpare = 1.3;      ///< of the reserve
  double doesNotCarry = 0.7, carries = 1.0;                  ///< of the drive
  double dies = 0.5, firm = 0.8, lively = 2.5, kicks = 4.0;  ///< of the pace
  double stepsUp = 1.55;  ///< a joint over this (3-ft means): it kicks from `lively` on
  double nylonKeep = 0.4;
  Feet driveWindow{20.0};
  bool operator==(const TurnoverLimits&) const = default;
};

/// What turnover depends on besides the rig.
struct TurnoverConditions {
  TurnoverLimits limits;
  bool learner = false;  ///< 20 % less line speed
  bool operator==(const TurnoverConditions&) const = default;
};

/// What is known least: each is moved alone, the others staying.
enum class TurnoverInput {
  skinDrag,   ///< Ct, 0.005-0.015
  flyDrag,    ///< CdA times or divided by 1.5
  lineSpeed,  ///< u0 15 % up or down
};

/// Between which values a reading lies for what is known least, and the one input that changes its
/// verdict (the one that moves the reading most, if several do); none: the verdict stands.
struct TurnoverRange {
  double low = 0.0;
  double high = 0.0;
  std::optional<TurnoverInput> hangsOn;
};

/// The readings with one of the inputs at one of its two ends, the others as stated: two rigs are
/// compared end by end.
struct TurnoverEnd {
  TurnoverInput input = TurnoverInput::skinDrag;
  bool high = false;
  double reserve = 0.0;
  double drive = 0.0;  ///< as stated where there is none
  double pace = 0.0;
};

/// Line and need at one place, for a chart: where the line is under the need the loop loses speed.
struct TurnoverStation {
  Station at;
  GrainsPerFoot line;
  GrainsPerFoot need;
  bool bareNylon = false;
};

/// Whether the line turns the fly over, by the rolling loop (core/air/rolling_loop.h).
struct Turnover {
  CastSetup cast;
  double reserve = 0.0;  ///< line speed / least line speed that turns over; 0: none does
  ReserveVerdict reserveVerdict = ReserveVerdict::heap;
  std::optional<FeetPerSecond> leastLineSpeed;
  /// Least pull / need over the front 20 ft of line that is not bare nylon; none when the loop
  /// starts in the nylon. Blind to a compact fly's mass: *fly against tip* stands beside it.
  std::optional<double> drive;
  std::optional<DriveVerdict> driveVerdict;
  Station driveAt;
  std::size_t drivePart = 0;
  std::size_t frontPart = 0;  ///< the last part of line that is not bare nylon
  Feet coast;  ///< from the last point where the line gives what the loop needs, to the fly
  bool arrives = false;  ///< false: the leg stops on the way, pace and fly speed are 0
  double pace = 0.0;     ///< fly speed at the end / line speed
  PaceVerdict paceVerdict = PaceVerdict::dies;
  FeetPerSecond flySpeed;
  Seconds time;
  Feet endHeight;                   ///< of the fly above the water; under 0 it does not turn over
  std::optional<double> nylonKeep;  ///< fly speed at the end / at the start of the bare nylon
  std::optional<NylonVerdict> nylonVerdict;
  TurnoverRange reserveRange, driveRange, paceRange;
  std::vector<TurnoverEnd> ends;  ///< every input, low before high
  std::vector<TurnoverStation> stations;  ///< from the loop's start to the fly
};

/// The line of a rig as it is cast, or why nothing can be said about its turnover: the same reasons
/// for the rolling loop and for the unrolling one (core/air/cast.h).
struct CastLine {
  CastSetup cast;
  AirLine line;
};
tl::expected<CastLine, NoTurnover> castLine(const Rig& rig, const MassProfile& profile,
                                            bool learner);

/// All readings of one rig. `joints` are its junctions (for the kick). Cost: 0.1-0.3 ms with the
/// ranges for a usual rig (about 25 runs of the loop). Any rig that `check` accepts: every figure
/// is finite.
tl::expected<Turnover, NoTurnover> turnover(const Rig& rig, const MassProfile& profile,
                                            const std::vector<Junction>& joints,
                                            const TurnoverConditions& conditions = {});

}  // namespace grainwise
