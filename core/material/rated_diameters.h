// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>

#include "core/material/section_properties.h"

namespace grainwise {

/// The diameters that rated sink rates fix, the last ones kept: sections that meet in a taper share an
/// end, and parts of one make their mass and rate. The same bits as worked out anew.
class RatedDiameters {
 public:
  Inches at(GrainsPerFoot mass, InchesPerSecond rate);

 private:
  struct Kept {
    GrainsPerFoot mass;
    InchesPerSecond rate;
    Inches diameter;
  };
  static constexpr std::size_t kPlaces = 256;
  std::array<Kept, kPlaces> m_kept{};
};

/// As without `rated`, for many sections one after the other.
SectionProperties sectionProperties(const Section& section, PartKind kind, double scale, RatedDiameters& rated);

}  // namespace grainwise
