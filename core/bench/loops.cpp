// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/loops.h"

#include <array>
#include <cmath>

#include "core/mass/profile.h"
#include "core/material/section_properties.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

Feet feet(Inches length) { return si::toFeet(si::m(length)); }

bool hasLineLoops(const Part& part) {
  return part.kind == PartKind::tip || part.isCoatedLeader();
}

Inches rodEndOf(const Part& part, const BenchRules& rules) {
  if (hasLineLoops(part)) return allowance(rules.lineLoop, rules);
  if (part.kind == PartKind::leader) return allowance(rules.nylonLoop, rules);
  return part.kind == PartKind::tippet ? rules.joiningKnot : Inches(0);
}

Inches flyEndOf(const Part& part, const Part* next, const BenchRules& rules) {
  if (hasLineLoops(part)) return allowance(rules.lineLoop, rules);
  const bool toFly = next ? next->kind == PartKind::fly : part.kind == PartKind::tippet;
  if (toFly) return rules.flyKnot;
  return part.kind == PartKind::leader || part.kind == PartKind::tippet ? rules.joiningKnot
                                                                        : Inches(0);
}

Grains toTenths(Grains mass) { return Grains(std::round(mass.value() * 10.0) / 10.0); }

}  // namespace

const char* wordOf(LoopKind loop) {
  constexpr std::array<const char*, 4> kWords{"none", "welded", "sleeved", "tied"};
  return kWords[static_cast<std::size_t>(loop)];
}

std::optional<LoopKind> loopKindNamed(std::string_view word) {
  for (const LoopKind loop : {LoopKind::none, LoopKind::welded, LoopKind::sleeved, LoopKind::tied}) {
    if (word == wordOf(loop)) return loop;
  }
  return std::nullopt;
}

Inches* lengthOf(LoopKind loop, BenchRules& rules) {
  switch (loop) {
    case LoopKind::welded:
      return &rules.weldedLoop;
    case LoopKind::sleeved:
      return &rules.sleevedLoop;
    case LoopKind::tied:
      return &rules.tiedLoop;
    case LoopKind::none:
      break;
  }
  return nullptr;
}

BenchRules withinReason(BenchRules rules) {
  const BenchRules usual;
  for (const auto member : {&BenchRules::weldedLoop, &BenchRules::sleevedLoop, &BenchRules::tiedLoop,
                            &BenchRules::splice, &BenchRules::joiningKnot, &BenchRules::flyKnot}) {
    if (!kAllowance.holds((rules.*member).value())) rules.*member = usual.*member;
  }
  return rules;
}

Inches allowance(LoopKind loop, const BenchRules& rules) {
  BenchRules these = rules;
  const Inches* length = lengthOf(loop, these);
  return length ? *length : Inches(0);
}

Grains loopMass(LoopKind loop, GrainsPerFoot line, const BenchRules& rules) {
  return line * feet(allowance(loop, rules));
}

std::vector<EndAllowances> endAllowances(const Part& part, const Part* next,
                                         const BenchRules& rules) {
  std::vector<EndAllowances> ends(part.sections.size());
  if (ends.empty()) return ends;
  ends.front().rodEnd = rodEndOf(part, rules);
  ends.back().flyEnd = flyEndOf(part, next, rules);
  for (std::size_t i = 1; i < ends.size(); ++i) {
    const bool knotted =
        isBareNylon(part, part.sections[i - 1]) && isBareNylon(part, part.sections[i]);
    const Inches joint = knotted ? rules.joiningKnot : rules.splice;
    ends[i - 1].flyEnd = joint;
    ends[i].rodEnd = joint;
  }
  return ends;
}

Part withProposedLoops(const Part& part, const BenchRules& rules) {
  if (!hasLineLoops(part) || part.sections.empty()) return part;
  const double scale = scaleOf(part);
  const auto massAt = [&](const Section& section, double share) {
    return sectionProperties(section, part.kind, scale).massAt(share);
  };
  Part result = part;
  Loops loops = part.loops.value_or(Loops{});
  if (!loops.rodEnd) {
    loops.rodEnd = toTenths(loopMass(rules.lineLoop, massAt(part.sections.front(), 0.0), rules));
  }
  if (!loops.flyEnd) {
    loops.flyEnd = toTenths(loopMass(rules.lineLoop, massAt(part.sections.back(), 1.0), rules));
  }
  result.loops = loops;
  return result;
}

Rig withProposedLoops(const Rig& rig, const BenchRules& rules) {
  Rig result = rig;
  for (Part& part : result.parts) part = withProposedLoops(part, rules);
  return result;
}

}  // namespace grainwise
