// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/choose/judge.h"
#include "core/model/shelf.h"

namespace grainwise {

enum class Standing { fits, watch, rejected };

/// One tip, coated leader, or no tip, between the rig's head and leader.
struct TipChoice {
  std::optional<std::size_t> shelf;  ///< index on the shelf; none: no tip, or the rig as it stands
  bool asItStands = false;           ///< the same part as the one that is fitted
  Standing standing = Standing::rejected;
  double score = 0.0;                ///< geometric mean of the grades
  std::vector<Judged> judged;        ///< criteria in their order
  TipFigures figures;
  TipSize size;                      ///< zero for no tip
  [[nodiscard]] std::size_t reasons() const;  ///< criteria that refuse it
};

/// What stands in the way of a good answer, and so what to do next.
enum class ChoiceNeed {
  none,
  head,         ///< no head to put a tip on
  fly,          ///< no fly to carry
  flyMass,      ///< a fly of unknown mass
  shelf,        ///< no tip or coated leader to choose from
  pool,         ///< no pool: depth is not judged (the list is there)
  wantedWater,  ///< a pool that does not say where the fly is wanted (likewise)
  nothingFits,  ///< everything is refused (the list is there, with its reasons)
};

/// What a rig lacks before anything behind its fly can be judged: `head`, `fly`, `flyMass` or `none`.
ChoiceNeed rigNeed(const Rig& rig);

struct TipQuestion {
  Rig rig;
  std::optional<Pool> pool;  ///< none: the rig's own water, with nothing wanted
  Shelf shelf;
  Conditions conditions;
};

struct Choice {
  ChoiceNeed need = ChoiceNeed::none;
  std::vector<TipChoice> ranked;  ///< fits, then watch, each the best first, then the rejected
  std::optional<TipChoice> asItStands;
  std::optional<WantedWater> wanted;
  bool stopped = false;  ///< asked to stop: the list is empty
  [[nodiscard]] std::size_t count(Standing standing) const;
};

/// Every tip and coated leader of the shelf, and no tip, put between head and leader and judged
/// (judge.h). Fits before watch, each by the geometric mean of the grades; equal ones by how near
/// the middle of their depth is to that of the wanted water, then by the least change of the stroke,
/// then by their order on the shelf. The stroke is judged against the rig as it stands, where it has
/// a tip or coated leader or a head that is fished without. Rejected ones by the number of reasons.
/// Cost: about 0.4 ms a tip, on two threads. Stops between two tips.
Choice chooseTip(const TipQuestion& question, const std::stop_token& stop = {},
                 const std::function<void(double)>& progress = {});

/// What the stroke of every tip is judged against: the rig as it stands, where it has a tip or coated
/// leader, or a head that is fished without; else nothing.
std::optional<StrokeBasis> strokeAsItStands(const Rig& rig);

/// One rig judged as a tip choice is: its air side once, `inWater` for each pool.
class TipTrial {
 public:
  TipTrial(const Rig& rig, const Conditions& conditions, const std::optional<StrokeBasis>& reference);
  /// In a pool, or in the rig's own water.
  [[nodiscard]] TipChoice inWater(const std::optional<Pool>& pool) const;
  /// Without any water.
  [[nodiscard]] TipChoice inAir() const;
  /// Whether it is refused before any water.
  [[nodiscard]] bool refusedInAir() const { return m_refused; }

 private:
  [[nodiscard]] TipChoice judged(const std::optional<DepthFit>& depth) const;

  Rig m_rig;
  const Conditions& m_conditions;  // outlives the trial
  MassProfile m_profile;
  std::optional<Style> m_style;
  TipFigures m_figures;
  TipSize m_size;
  bool m_refused = false;
};

/// Members of a family: the shelf's tips of the same length as the one fitted, by grains per foot,
/// then by how much of them sinks; of two that are the same in both the first. Indices into `choice.ranked`. Keeping the length keeps the stroke
/// (common practice, no source).
std::vector<std::size_t> familyOf(const TipQuestion& question, const Choice& choice);

}  // namespace grainwise
