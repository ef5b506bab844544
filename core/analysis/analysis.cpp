// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/analysis.h"

#include <algorithm>
#include <cmath>

#include "core/mass/line_integrals.h"
#include "core/material/agreement.h"

namespace grainwise {
namespace {

bool hasKind(const Rig& rig, PartKind kind) {
  return std::any_of(rig.parts.begin(), rig.parts.end(),
                     [&](const Part& part) { return part.kind == kind; });
}

/// Grains of the 30 ft of head nearest the fly, with the head loops that stand in them. Source of
/// the stretch: AFFTA, Official fly line specifications, single-hand.
std::optional<Grains> firstThirtyFeet(const Rig& rig, const MassProfile& profile) {
  constexpr double kStretch_ft = 30.0;
  constexpr double kRounding_ft = 1e-9;  // lengths are sums of typed decimals
  std::optional<Station> from;
  Station to;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    if (rig.parts[i].kind != PartKind::head) continue;
    if (!from) from = profile.places[i].from;
    to = profile.places[i].to;
  }
  if (!from || (to - *from).value() < kStretch_ft - kRounding_ft) return std::nullopt;
  const Station begin = std::max(*from, to - Feet(kStretch_ft));
  Grains sum = profile.lineBetween(begin, to);
  for (const PointMass& point : profile.points) {
    const bool ofHead = rig.parts[point.part].kind == PartKind::head;
    if (ofHead && point.at >= begin) sum += point.mass;
  }
  return sum;
}

Totals totalsOf(const Rig& rig, const MassProfile& profile) {
  Totals totals;
  ExactSum mass;
  ExactSum head;
  ExactSum headAndTip;
  for (std::size_t i = profile.firstPart; i < rig.parts.size(); ++i) {
    const Part& part = rig.parts[i];
    const double grains = profile.places[i].mass().value();
    const bool isHead = part.kind == PartKind::head;
    mass += grains;
    if (isHead) head += grains;
    if (isHead || part.kind == PartKind::tip || part.isCoatedLeader()) headAndTip += grains;
  }
  totals.length = profile.end - profile.start;
  totals.mass = Grains(mass.value());
  totals.head = Grains(head.value());
  totals.headAndTip = Grains(headAndTip.value());
  totals.first30ft = firstThirtyFeet(rig, profile);
  totals.centreOfMass = profile.centreOfMass();
  return totals;
}

std::optional<standards::SingleHandRow> singleHandRowOf(const Rig& rig) {
  if (!rig.rod || rig.rod->hands.value_or(2) != 1 || !rig.rod->lineNumber) return std::nullopt;
  for (const auto& row : standards::singleHand()) {
    if (static_cast<double>(row.lineNumber) == *rig.rod->lineNumber) return row;
  }
  return std::nullopt;
}

std::vector<Missing> missingOf(const Rig& rig, const Analysis& analysis) {
  std::vector<Missing> missing;
  const bool head = hasKind(rig, PartKind::head);
  const auto style = headStyle(rig);
  const auto note = [&](bool lacks, Missing what) {
    if (lacks) missing.push_back(what);
  };
  note(!head, Missing::head);
  note(head && !style, Missing::headStyle);
  note(head && style != Style::singleHand && !analysis.grip.tipShare, Missing::tip);
  note(!rig.rod, Missing::rod);
  note(rig.rod && !rig.rod->length, Missing::rodLength);
  note(rig.rod && style && !analysis.rod.window, Missing::window);
  note(!rig.flyIndex(), Missing::fly);
  note(rig.flyIndex() && (analysis.fly.fly <= Grains(0) ||
                          analysis.noTurnover == NoTurnover::noFlyMass),
       Missing::flyMass);
  note(!riverOf(rig), Missing::water);
  if (analysis.hang) {
    const DepthState state = analysis.hang->state;
    note(state == DepthState::stillWater, Missing::stillWater);
    note(state == DepthState::everythingFloats, Missing::nothingSinks);
    note(state == DepthState::flyFloats, Missing::flyFloats);
  }
  note(analysis.noTurnover == NoTurnover::tooShort, Missing::line);
  note(analysis.noTurnover == NoTurnover::tooLong, Missing::castable);
  note(analysis.noTurnover == NoTurnover::tooSlow, Missing::lineSpeed);
  return missing;
}

std::vector<Warning> warningsOf(const Rig& rig, const MassProfile& profile) {
  std::vector<Warning> warnings;
  for (const ProfileSpan& span : profile.spans) {
    const Section& section = rig.parts[span.part].sections[span.section];
    if (const auto what = implausible(section, span.properties)) {
      warnings.push_back({span.part, Problem::tr("section %1: %2").arg(span.section + 1).arg(*what)});
    }
  }
  return warnings;
}

}  // namespace

Analysis analyse(const Rig& rig, const Conditions& conditions) {
  Analysis analysis;
  analysis.profile = massProfile(rig);
  const MassProfile& profile = analysis.profile;
  analysis.rows = profileRows(profile);
  analysis.totals = totalsOf(rig, profile);
  analysis.junctions = junctions(rig, profile, conditions.rules.junctions);
  analysis.worstJunction = worstJunction(analysis.junctions);
  analysis.rod = rodFit(rig, profile, conditions.rules.rod);
  analysis.grip = grip(rig, profile, conditions.rules.grip);
  analysis.fly = flyFit(rig, profile, conditions.rules.grip);
  analysis.singleHandRow = singleHandRowOf(rig);
  if (conditions.strokeReference) {
    analysis.stroke =
        stroke(*conditions.strokeReference, strokeBasis(rig, profile), conditions.rules.stroke);
  }
  if (const auto inWater = rigInWater(rig, profile, conditions.current)) {
    analysis.hang = hangDown(inWater->line, inWater->river);
    analysis.depthBand = liveBand(*analysis.hang, *rig.water->depth,
                                  currentShareOf(rig, conditions.waterUncertainty.current));
  }
  if (auto read = turnover(rig, profile, analysis.junctions, conditions.turnover())) {
    analysis.turnover = std::move(*read);
  } else {
    analysis.noTurnover = read.error();
  }
  analysis.missing = missingOf(rig, analysis);
  analysis.warnings = warningsOf(rig, profile);
  return analysis;
}

}  // namespace grainwise
