// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/analysis/readings.h"
#include "core/choose/advice.h"
#include "core/choose/choose.h"
#include "core/choose/cut_part.h"

namespace grainwise {

/// A single change to a rig.
enum class ChangeKind {
  swapTip,     ///< another tip or coated leader in the place of the one that is there
  addTip,
  removeTip,
  swapLeader,
  swapTippet,
  swapFly,
  angle,
  mend,
  lineOut,
  swapHead,
  cutTip,      ///< shorter; never longer
  leaderLength,
  addExtension,
  removeExtension,
  trimHead,
};

struct Change {
  ChangeKind kind = ChangeKind::swapTip;
  std::string part;   ///< name of the part that comes, or of the one that is cut or taken off
  double feet = 0.0;  ///< cut off, trimmed, or a leader's change (negative: shorter)
  PartEnd end = PartEnd::fly;
  double from = 0.0, to = 0.0;  ///< of angle, mend and line out
};

/// Whether a change can be made on the water with what is in the wallet.
bool madeNow(ChangeKind kind);

/// One change that repairs something and breaks nothing.
struct Fix {
  Change change;
  Rig after;
  std::vector<Reading> repaired;  ///< readings that were wrong and are no longer; depth: of the pool
  std::vector<Reading> eased;     ///< readings that were to be watched and now fit
  Stroke stroke;                  ///< against the rig as it stands
  double strokeChange = 0.0;      ///< its size: 1 is a foot, 8 % of mass, or 50 gr that sink
};

struct FixQuestion {
  Rig rig;
  Shelf shelf;                  ///< what the bench has: heads, extensions, spare parts
  std::optional<Shelf> wallet;  ///< what is along on the water; none: the shelf
  std::optional<Pool> pool;     ///< where a depth is wanted
  Conditions conditions;
};

struct Fixes {
  /// What the rig lacks (`head`, `fly`, `flyMass`): that nothing is wrong then says little.
  ChoiceNeed need = ChoiceNeed::none;
  std::vector<Reading> faults;  ///< what is wrong as it stands; depth: nothing of it is wanted
  std::vector<Reading> watches;
  bool nothingWrong = false;  ///< then the fixes ease what is to be watched
  std::vector<Fix> now;       ///< from the wallet, at most seven
  std::vector<Fix> later;     ///< at the bench, at most seven
  bool stopped = false;
};

/// Every single change that the shelf, the wallet and a knife allow, tried; those kept that repair at
/// least one fault and make none (no fault, and no more to be watched than repaired). Ranked by faults
/// repaired, then by readings left to be watched, then by the least stroke change, then by the least
/// change of mass; at most three of one kind in a list, so that different ways are seen. A cut tip
/// is only ever offered shorter: a cut cannot be undone.
/// Cost: about 0.3 ms a change on two threads; with a pool up to 10 quick swings more.
Fixes fixesFor(const FixQuestion& question, const std::stop_token& stop = {},
               const std::function<void(double)>& progress = {});

/// Every change that is tried, before any is judged; angle, mend and line out aside.
struct Trial {
  Change change;
  Rig after;
};
std::vector<Trial> trialsFor(const FixQuestion& question);

}  // namespace grainwise
