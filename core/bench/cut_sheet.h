// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/bench/cutting_plan.h"
#include "core/bench/loops.h"
#include "core/model/problem.h"
#include "core/model/spool.h"

namespace grainwise {

/// A level line by what it is, whatever its length: what a cut wants and what a spool holds.
struct LineStuff {
  GrainsPerFoot mass;
  std::optional<Inches> diameter;     ///< where it goes by its diameter (nylon)
  std::optional<Material> material;
  bool sinks = false;
  std::optional<InchesPerSecond> rate;  ///< rated, of what sinks by a rate
  bool operator==(const LineStuff&) const = default;
};
LineStuff stuffOf(const Spool& spool);
/// Nothing for a tapered section: no level spool gives it. `scale` as in core/mass/profile.h.
std::optional<LineStuff> stuffOf(const Part& part, const Section& section, double scale);

/// How far the line of a spool is from the line wanted: 0 is the same, nothing is another line. Same
/// material and within 0.0005 in for nylon; else within 3 % of mass per foot, both sinking or both
/// floating, and rates within 1 in/s. Common practice, no source; the limits are ours.
std::optional<double> mismatch(const LineStuff& wanted, const LineStuff& spool);

/// A ring code drawn on a tip with a marker: long rings count 5 and short ones 1, so many as the
/// grains per foot, rounded; then, on float/sink tips, a short ring for each quarter that sinks.
struct RingCode {
  int longRings = 0;
  int shortRings = 0;
  int quarters = 0;
  bool operator==(const RingCode&) const = default;
};
RingCode ringCode(GrainsPerFoot mass, double sinkingShare, bool floatSink);

/// What is written on a finished tip or leader.
struct TipLabel {
  std::size_t made = 0;   ///< index into CutSheet::made
  std::string name;
  Feet finished;
  Grains mass;            ///< with its loops and the overlaps of its splices, as a scale shows it
  std::optional<GrainsPerFoot> perFoot;  ///< of line, where one number says it
  Feet sinking;           ///< feet that sink
  std::optional<RingCode> rings;  ///< tips only
};

/// One piece to be cut.
struct WantedCut {
  std::size_t made = 0;     ///< index into CutSheet::made
  std::size_t section = 0;
  Feet finished;
  EndAllowances allowances;
  [[nodiscard]] Feet length() const;
};

/// A cut in its place: marks measured from the same end of the spool.
struct PlacedCut {
  std::size_t cut = 0;  ///< index into CutSheet::cuts
  Feet from;
  Feet to;
};

struct SpoolCuts {
  std::size_t spool = 0;  ///< index into the spools given
  std::vector<PlacedCut> cuts;
  Feet left;
};

/// One kind of line: what is wanted of it, what is there, and what cannot be cut.
struct MaterialCuts {
  LineStuff stuff;
  std::vector<std::size_t> spools;  ///< that hold it
  Feet wanted;                      ///< allowances included
  Feet there;
  std::vector<std::size_t> uncut;   ///< cuts for which there is no line
  Feet missing;                     ///< wanted less there, 0 when there is enough in all
  Feet uncutLength;                 ///< of the pieces that cannot be cut, together
  std::size_t opened = 0;
  std::size_t leastOpened = 0;
  bool exact = true;
};

/// A tip, leader or tippet that is made here.
struct MadePart {
  Part part;           ///< with its loops
  std::string from;    ///< the rig or shelf that it is for
  std::optional<Part> next;  ///< towards the fly
};

struct CutSheet {
  std::vector<MadePart> made;
  std::vector<MadePart> bought;  ///< tapered: no level spool gives them
  std::vector<WantedCut> cuts;
  std::vector<SpoolCuts> spools;  ///< opened ones, in the order given
  std::vector<MaterialCuts> materials;
  std::vector<TipLabel> labels;  ///< of what can be cut whole from what is there
  [[nodiscard]] bool complete() const;
};

/// The tips, leaders and tippets of a rig that are made at the bench, each with its neighbour.
std::vector<MadePart> partsToMake(const Rig& rig);

/// The cut sheet for `parts` from `spools`: planCuts for each line. A section takes the nearest of
/// the spools' lines. Loops that a part does not state are proposed and weigh in its label.
CutSheet cutSheet(const std::vector<MadePart>& parts, const Spools& spools,
                  const BenchRules& rules = {});

/// Mass of the overlaps that bind the pieces of a tip or leader cut from level line: at each splice its
/// length of the line on either side. Nothing of what is bought whole, and of nylon knotted to nylon.
Grains spliceMass(const Part& part, const BenchRules& rules = {});

/// One spool cut into equal tips, or into as many of one length as it gives.
struct Division {
  int count = 0;
  Feet finished;  ///< of each, loop end to loop end
  Feet cut;       ///< of each
  Feet left;
  Grains mass;    ///< of each, loops included
};
/// `count` equal tips with a loop at both ends; refused where the loops alone use up the line.
tl::expected<Division, Problem> divideEqually(const Spool& spool, int count,
                                              const BenchRules& rules = {});
/// As many tips of `finished` length as the spool gives; refused where it gives none.
tl::expected<Division, Problem> divideBy(const Spool& spool, Feet finished,
                                         const BenchRules& rules = {});

}  // namespace grainwise
