// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <algorithm>

#include "core/analysis/readings.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

/// The sentence about turnover. Numbers of the model stay behind *why*.
namespace grainwise::ui {
namespace {

QString thePart(const Part& part) {
  if (part.isCoatedLeader()) return Words::tr("the coated leader");
  switch (part.kind) {
    case PartKind::head:
      return Words::tr("the head");
    case PartKind::tip:
      return Words::tr("the tip");
    case PartKind::leader:
      return Words::tr("the leader");
    case PartKind::tippet:
      return Words::tr("the tippet");
    default:
      return Words::tr("the line");
  }
}

QString aboutDrive(const Part& part, DriveVerdict verdict) {
  const QString what = verdict == DriveVerdict::doesNotCarry
                           ? Words::tr("%1 does not carry the fly: more mass per foot there, or a smaller fly")
                           : Words::tr("%1 only just carries the fly: a smaller fly, or more mass per foot there");
  return capital(what.arg(thePart(part)));
}

QString aboutFly(FlyVerdict verdict) {
  return verdict == FlyVerdict::tooHeavy
             ? Words::tr("The fly is too heavy for this tip: a denser tip or a lighter fly")
             : Words::tr("The fly is heavy for this tip: a slow, open stroke");
}

QString aboutReserve(ReserveVerdict verdict) {
  switch (verdict) {
    case ReserveVerdict::heap:
      return Words::tr("Will land in a heap: more line speed, a shorter leader or a smaller fly");
    case ReserveVerdict::probablyNot:
      return Words::tr("Probably will not turn over: more line speed, a shorter leader or a smaller fly");
    case ReserveVerdict::marginal:
      return Words::tr("Turns over with little speed to spare: a clean stroke, or a shorter leader");
    case ReserveVerdict::toSpare:
      break;
  }
  return Words::tr("Turns over with speed to spare");
}

}  // namespace

QString noTurnoverWords(NoTurnover why) {
  switch (why) {
    case NoTurnover::noHead:
      return Words::tr("Turnover is read once there is a head");
    case NoTurnover::noFly:
      return Words::tr("Turnover is read once there is a fly");
    case NoTurnover::noFlyMass:
      return Words::tr("Turnover is read once the fly has a mass");
    case NoTurnover::tooShort:
      return Words::tr("Too little line in front of the loop to read a turnover");
    case NoTurnover::tooLong:
      return Words::tr("Over 300 ft from the rod tip: no turnover is read");
    case NoTurnover::tooSlow:
      return Words::tr("The line is too slow for a loop: give the cast more line speed");
  }
  return {};
}

QString turnoverSentence(const Rig& rig, const Analysis& analysis) {
  if (rig.parts.empty()) return {};
  if (!analysis.turnover) return analysis.noTurnover ? noTurnoverWords(*analysis.noTurnover) : QString();
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
        return Words::tr("Turns over, but the fly arrives without life: more line speed or a smaller fly");
      case TurnoverConcern::flyTooBulky:
        return Words::tr("The fly is too bulky for this nylon: thicker or shorter nylon, or a smaller fly");
      case TurnoverConcern::flyKicks:
        return Words::tr("Turns over and kicks: a heavier fly, a longer leader or a lighter tip");
    }
  }
  if (!t.drive) return aboutReserve(t.reserveVerdict);
  return capital(Words::tr("%1 carries the fly, and it turns over with speed to spare")
                     .arg(thePart(rig.parts[t.frontPart])));
}

QString bedWords(Bed bed) {
  switch (bed) {
    case Bed::sand:
      return Words::tr("smooth: sand or silt");
    case Bed::gravel:
      return Words::tr("usual: gravel");
    case Bed::cobbles:
      return Words::tr("rough: cobbles");
    case Bed::boulders:
      break;
  }
  return Words::tr("very rough: boulders");
}

QString depthWords(DepthState state) {
  switch (state) {
    case DepthState::hangs:
      return Words::tr("swings clear of the bottom");
    case DepthState::nearBottom:
      return Words::tr("near the bottom");
    case DepthState::onBottom:
      return Words::tr("touches the bottom");
    case DepthState::lineOnBottom:
      return Words::tr("lies on the bottom");
    case DepthState::stillWater:
      return Words::tr("still water: no swing");
    case DepthState::everythingFloats:
      return Words::tr("all floats: it fishes on top");
    case DepthState::flyFloats:
      return Words::tr("the fly floats: it fishes on top");
  }
  return {};
}

QString swingSentence(const SwingResult& swing, DisplayUnits units) {
  QStringList said;
  if (swing.bottomShare > 0) {
    said << Words::tr("Touches the bottom for %1 of the swing.").arg(percentText(swing.bottomShare));
  }
  if (swing.swing && !swing.onBottom()) {
    said << Words::tr("Swings at %1, %2 deep after the mend.")
                .arg(roundLengthText(*swing.swing, units), roundLengthText(swing.afterMend, units));
  }
  switch (swing.end) {
    case SwingEnd::rests:
      said << Words::tr("Comes to rest on the bottom before it is round.");
      break;
    case SwingEnd::stillGoing:
      said << Words::tr("Still not round at the end of the run.");
      break;
    case SwingEnd::notConverged:
      said << Words::tr("The run broke off: this line cannot be followed to the end.");
      break;
    default:
      said << Words::tr("Hangs at %1.").arg(roundLengthText(swing.hangDown, units));
      break;
  }
  if (swing.timeTo10deg) {
    said << Words::tr("Round in %1 s.").arg(numberText(swing.timeTo10deg->value(), 0));
  }
  return said.join(QLatin1Char(' '));
}

}  // namespace grainwise::ui
