// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/cut_sheet.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "core/mass/profile.h"
#include "core/material/section_properties.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kRounding_ft = 1e-6;

Feet feet(Inches length) { return si::toFeet(si::m(length)); }

bool isMadeHere(PartKind kind) {
  return kind == PartKind::tip || kind == PartKind::leader || kind == PartKind::tippet;
}

/// What a bench aims at: the label's mass, never that of a piece which was weighed before.
double aimedScale(const Part& part) {
  Part aimed = part;
  aimed.weighed.reset();
  return scaleOf(aimed);
}

bool isCutFromLevelLine(const Part& part) {
  const double scale = aimedScale(part);
  return std::all_of(part.sections.begin(), part.sections.end(), [&](const Section& section) {
    return stuffOf(part, section, scale).has_value();
  });
}

/// The overlaps that bind section `index` to its neighbours. A knot's tag ends are cut off and weigh
/// nothing; a splice stays in the tip.
Feet splicesOf(const Part& part, std::size_t index, const BenchRules& rules) {
  const auto isNylon = [&](std::size_t i) { return isBareNylon(part, part.sections[i]); };
  const auto spliced = [&](std::size_t a, std::size_t b) { return !(isNylon(a) && isNylon(b)); };
  Feet all;
  if (index > 0 && spliced(index - 1, index)) all += feet(rules.splice);
  if (index + 1 < part.sections.size() && spliced(index, index + 1)) all += feet(rules.splice);
  return all;
}

TipLabel labelOf(const Part& part, std::size_t made, const BenchRules& rules) {
  TipLabel label;
  label.made = made;
  label.name = part.name.value_or("");
  label.finished = part.length();
  label.mass = part.loopMass() + spliceMass(part, rules);
  const double scale = aimedScale(part);
  bool onePerFoot = true;
  for (std::size_t i = 0; i < part.sections.size(); ++i) {
    const Section& section = part.sections[i];
    const auto stuff = stuffOf(part, section, scale);
    label.mass += stuff->mass * section.length;
    if (stuff->sinks) label.sinking += section.length;
    if (!label.perFoot) label.perFoot = stuff->mass;
    onePerFoot = onePerFoot && std::abs(stuff->mass / *label.perFoot - 1.0) < 0.005;
  }
  if (!onePerFoot) label.perFoot.reset();
  if (part.kind == PartKind::tip && label.perFoot) {
    label.rings = ringCode(*label.perFoot, label.sinking / label.finished,
                           part.style == Style::floatSink);
  }
  return label;
}

/// Builds a sheet: the parts into cuts, the cuts into lines, each line onto its spools.
class Sheet {
 public:
  Sheet(const Spools& spools, const BenchRules& rules) : m_spools(spools), m_rules(rules) {
    for (const Spool& spool : spools.spools) m_stuffs.push_back(stuffOf(spool));
  }

  void add(const MadePart& wanted) {
    if (!isCutFromLevelLine(wanted.part)) {
      m_sheet.bought.push_back(wanted);
      return;
    }
    MadePart made = wanted;
    made.part.weighed.reset();
    made.part = withProposedLoops(made.part, m_rules);
    const std::size_t index = m_sheet.made.size();
    const auto ends = endAllowances(made.part, made.next ? &*made.next : nullptr, m_rules);
    const double scale = aimedScale(made.part);
    for (std::size_t i = 0; i < made.part.sections.size(); ++i) {
      const Section& section = made.part.sections[i];
      m_sheet.cuts.push_back({index, i, section.length, ends[i]});
      m_material.push_back(materialFor(*stuffOf(made.part, section, scale)));
    }
    m_sheet.labels.push_back(labelOf(made.part, index, m_rules));
    m_sheet.made.push_back(std::move(made));
  }

  CutSheet take() {
    for (std::size_t m = 0; m < m_sheet.materials.size(); ++m) plan(m);
    dropLabelsOfUncut();
    std::sort(m_sheet.spools.begin(), m_sheet.spools.end(),
              [](const SpoolCuts& a, const SpoolCuts& b) { return a.spool < b.spool; });
    return std::move(m_sheet);
  }

 private:
  /// The line, among those on the spools, that a section is cut from; else one of its own.
  std::size_t materialFor(const LineStuff& wanted) {
    LineStuff stuff = wanted;
    std::optional<double> nearest;
    for (const LineStuff& there : m_stuffs) {
      const auto off = mismatch(wanted, there);
      if (!off || (nearest && *off >= *nearest)) continue;
      nearest = off;
      stuff = there;
    }
    auto& all = m_sheet.materials;
    const auto known = std::find_if(all.begin(), all.end(),
                                    [&](const MaterialCuts& m) { return m.stuff == stuff; });
    if (known != all.end()) return static_cast<std::size_t>(known - all.begin());
    MaterialCuts& material = all.emplace_back();
    material.stuff = stuff;
    for (std::size_t s = 0; nearest && s < m_stuffs.size(); ++s) {
      if (!(m_stuffs[s] == stuff)) continue;
      material.spools.push_back(s);
      material.there += m_spools.spools[s].left;
    }
    return all.size() - 1;
  }

  /// A label is for a tip that will be there: one of whose pieces is missing gets none.
  void dropLabelsOfUncut() {
    std::set<std::size_t> lacking;
    for (const MaterialCuts& material : m_sheet.materials) {
      for (const std::size_t cut : material.uncut) lacking.insert(m_sheet.cuts[cut].made);
    }
    std::erase_if(m_sheet.labels, [&](const TipLabel& label) { return lacking.count(label.made) > 0; });
  }

  void plan(std::size_t index) {
    MaterialCuts& material = m_sheet.materials[index];
    std::vector<std::size_t> mine;
    std::vector<Feet> lengths;
    for (std::size_t c = 0; c < m_sheet.cuts.size(); ++c) {
      if (m_material[c] != index) continue;
      mine.push_back(c);
      lengths.push_back(m_sheet.cuts[c].length());
      material.wanted += lengths.back();
    }
    std::vector<Feet> rooms;
    for (const std::size_t s : material.spools) rooms.push_back(m_spools.spools[s].left);
    const CuttingPlan plan = planCuts(lengths, rooms);
    material.exact = plan.exact;
    material.opened = plan.spools.size();
    material.leastOpened = plan.leastOpened;
    for (const std::size_t c : plan.unplaced) {
      material.uncut.push_back(mine[c]);
      material.uncutLength += lengths[c];
    }
    if (!material.uncut.empty()) {
      material.missing = std::max(Feet(0), material.wanted - material.there);
    }
    for (const auto& load : plan.spools) {
      SpoolCuts& spool = m_sheet.spools.emplace_back();
      spool.spool = material.spools[load.spool];
      Feet at;
      for (const std::size_t c : load.cuts) {
        spool.cuts.push_back({mine[c], at, at + lengths[c]});
        at += lengths[c];
      }
      spool.left = load.left;
    }
  }

  const Spools& m_spools;
  const BenchRules& m_rules;
  std::vector<LineStuff> m_stuffs;
  std::vector<std::size_t> m_material;  // of each cut
  CutSheet m_sheet;
};

Feet loopsOf(const BenchRules& rules) { return feet(allowance(rules.lineLoop, rules)) * 2.0; }

Division divisionOf(const Spool& spool, int count, Feet finished, const BenchRules& rules) {
  Division division;
  division.count = count;
  division.finished = finished;
  division.cut = finished + loopsOf(rules);
  division.left = std::max(Feet(0), spool.left - division.cut * static_cast<double>(count));
  division.mass = stuffOf(spool).mass * division.cut;
  return division;
}

}  // namespace

Feet WantedCut::length() const {
  return finished + feet(allowances.rodEnd) + feet(allowances.flyEnd);
}

bool CutSheet::complete() const {
  return std::all_of(materials.begin(), materials.end(),
                     [](const MaterialCuts& material) { return material.uncut.empty(); });
}

Grains spliceMass(const Part& part, const BenchRules& rules) {
  if (!isMadeHere(part.kind) || !isCutFromLevelLine(part)) return Grains(0);
  const double scale = aimedScale(part);
  Grains mass;
  for (std::size_t i = 0; i < part.sections.size(); ++i) {
    mass += stuffOf(part, part.sections[i], scale)->mass * splicesOf(part, i, rules);
  }
  return mass;
}

std::vector<MadePart> partsToMake(const Rig& rig) {
  std::vector<MadePart> parts;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    if (!isMadeHere(rig.parts[i].kind)) continue;
    MadePart& made = parts.emplace_back();
    made.part = rig.parts[i];
    made.from = rig.name;
    if (i + 1 < rig.parts.size()) made.next = rig.parts[i + 1];
  }
  return parts;
}

CutSheet cutSheet(const std::vector<MadePart>& parts, const Spools& spools,
                  const BenchRules& rules) {
  Sheet sheet(spools, rules);
  for (const MadePart& part : parts) {
    if (isMadeHere(part.part.kind) && !part.part.sections.empty()) sheet.add(part);
  }
  return sheet.take();
}

tl::expected<Division, Problem> divideEqually(const Spool& spool, int count,
                                              const BenchRules& rules) {
  Problem problem;
  if (count < 1) {
    problem.what = Problem::tr("a spool cannot be divided into %1 tips").arg(count);
    problem.fix = Problem::tr("ask for one or more");
    return tl::unexpected(problem);
  }
  const Feet finished = spool.left / static_cast<double>(count) - loopsOf(rules);
  if (finished.value() > kRounding_ft) return divisionOf(spool, count, finished, rules);
  problem.what = Problem::tr("the loops of %1 tips use up the %2 ft that are left").arg(count).arg(spool.left.value());
  problem.fix = Problem::tr("ask for fewer tips");
  return tl::unexpected(problem);
}

tl::expected<Division, Problem> divideBy(const Spool& spool, Feet finished,
                                         const BenchRules& rules) {
  Problem problem;
  if (!limits::kLength.holds(finished.value())) {
    problem.what = Problem::tr("a tip of %1 ft cannot be cut").arg(finished.value());
    problem.fix = giveRange(limits::kLength);
    return tl::unexpected(problem);
  }
  const Feet cut = finished + loopsOf(rules);
  const double count = std::floor((spool.left.value() + kRounding_ft) / cut.value());
  if (count > std::numeric_limits<int>::max()) {
    problem.what = Problem::tr("a tip of %1 ft cannot be cut").arg(finished.value());
    problem.fix = Problem::tr("ask for fewer tips");
    return tl::unexpected(problem);
  }
  if (count >= 1) return divisionOf(spool, static_cast<int>(count), finished, rules);
  const double tenths = std::ceil((cut - spool.left).value() * 10.0 - kRounding_ft) / 10.0;
  problem.what = Problem::tr("the spool is %1 ft short of one such tip with its loops").arg(tenths);
  problem.fix = Problem::tr("ask for a shorter one");
  return tl::unexpected(problem);
}

}  // namespace grainwise
