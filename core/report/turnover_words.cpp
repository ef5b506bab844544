// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/readings.h"
#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise::words {
namespace {

/// "the tip", "the coated leader": a part inside a sentence.
std::string thePart(const Part& part) {
  return std::string("the ") + (part.isCoatedLeader() ? "coated leader" : of(part.kind));
}

std::string aboutDrive(const Part& part, DriveVerdict verdict) {
  if (verdict == DriveVerdict::doesNotCarry) {
    return thePart(part) + " does not carry the fly: more mass per foot there, or a smaller fly";
  }
  return thePart(part) + " only just carries the fly: a smaller fly or a denser " +
         (part.isCoatedLeader() ? "leader" : of(part.kind)) + " makes it sure";
}

std::string aboutFly(FlyVerdict verdict) {
  if (verdict == FlyVerdict::tooHeavy) {
    return "the fly is too heavy for this tip: a denser tip or a lighter fly";
  }
  return "the fly is heavy for this tip: a slow, open stroke";
}

std::string aboutReserve(ReserveVerdict verdict) {
  const std::string what = of(verdict);
  if (verdict == ReserveVerdict::marginal) {
    return "turns over with little speed to spare: a clean stroke, or a shorter leader";
  }
  return what + ": more line speed, a shorter leader or a smaller fly";
}

}  // namespace

const char* of(ReserveVerdict verdict) {
  switch (verdict) {
    case ReserveVerdict::heap:
      return "will land in a heap";
    case ReserveVerdict::probablyNot:
      return "probably will not turn over";
    case ReserveVerdict::marginal:
      return "marginal";
    case ReserveVerdict::toSpare:
      return "turns over with speed to spare";
  }
  return "";
}

const char* of(DriveVerdict verdict) {
  switch (verdict) {
    case DriveVerdict::carries:
      return "carries";
    case DriveVerdict::marginal:
      return "marginal";
    case DriveVerdict::doesNotCarry:
      return "does not carry";
  }
  return "";
}

const char* of(PaceVerdict verdict) {
  switch (verdict) {
    case PaceVerdict::dies:
      return "dies";
    case PaceVerdict::soft:
      return "soft";
    case PaceVerdict::firm:
      return "firm";
    case PaceVerdict::lively:
      return "lively";
    case PaceVerdict::kicks:
      return "kicks";
  }
  return "";
}

const char* of(NylonVerdict verdict) {
  switch (verdict) {
    case NylonVerdict::fine:
      return "fine";
    case NylonVerdict::flyTooBulky:
      return "fly too bulky for this nylon";
  }
  return "";
}

const char* of(TurnoverInput input) {
  switch (input) {
    case TurnoverInput::skinDrag:
      return "the line's drag along itself";
    case TurnoverInput::flyDrag:
      return "the fly's drag";
    case TurnoverInput::lineSpeed:
      return "the line speed";
  }
  return "";
}

const char* of(CastStop stop) {
  switch (stop) {
    case CastStop::turnedOver:
      return "turned over";
    case CastStop::noTurn:
      return "the fly never came to the front: the cast is left out";
    case CastStop::cancelled:
      return "the run was cancelled: the cast is left out";
    case CastStop::timeReached:
      return "the run ended before the turn: the cast is left out";
    case CastStop::notFinite:
      return "the run overflowed: the cast is left out";
  }
  return "";
}

std::string placeOfDrive(const Rig& rig, const Turnover& turnover) {
  return fixedText(turnover.driveAt.feet(), 1) + " ft, " + nameOf(rig.parts[turnover.drivePart]);
}

std::string turnoverSentence(const Rig& rig, const Analysis& analysis) {
  if (!analysis.turnover) return "";
  const Turnover& t = *analysis.turnover;
  if (const auto concern = turnoverConcern(analysis)) {
    switch (*concern) {
      case TurnoverConcern::drive:
        return aboutDrive(rig.parts[t.drivePart], *t.driveVerdict);
      case TurnoverConcern::flyAgainstTip:
        return aboutFly(*analysis.fly.tipToFlyVerdict);
      case TurnoverConcern::reserve:
        return aboutReserve(t.reserveVerdict);
      case TurnoverConcern::flyDies:
        return "turns over, but the fly arrives without life: more line speed or a smaller fly";
      case TurnoverConcern::flyTooBulky:
        return "the fly is too bulky for this nylon: thicker or shorter nylon, or a smaller fly";
      case TurnoverConcern::flyKicks:
        return "turns over and kicks: a heavier fly, a longer leader or a lighter tip";
    }
  }
  if (!t.drive) return of(t.reserveVerdict);
  return thePart(rig.parts[t.frontPart]) + " carries it and " + of(t.reserveVerdict);
}

}  // namespace grainwise::words
