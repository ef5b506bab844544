// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/mass/profile.h"
#include "core/model/rig.h"
#include "ui/strip/silhouette.h"

namespace grainwise::ui {

/// What a line is at any distance from the fly: how thick it is drawn and in which style, so that the
/// cast and the river show the same line as the strip.
class LineLooks {
 public:
  enum class Kind { floating, sinking, nylon };
  struct At {
    double share = 0;  ///< its mass per foot against the heaviest foot, 0 to 1
    Kind kind = Kind::floating;
  };
  LineLooks(const Rig& rig, const MassProfile& profile);
  [[nodiscard]] At fromFly(Feet distance) const;

 private:
  MassProfile m_profile;
  std::vector<Silhouette> m_shapes;
  double m_heaviest = 1;
};

}  // namespace grainwise::ui
