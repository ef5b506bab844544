// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/model/part.h"

namespace grainwise {

/// A breaking load in pounds-force: how weak, the middle, how strong it may be.
struct PoundRange {
  double low_lb = 0;
  double middle_lb = 0;
  double high_lb = 0;
  bool operator==(const PoundRange&) const = default;
};

/// Breaking load of a level strand without a knot: stress x pi/4 d^2. Nylon 600 MPa (540-730),
/// fluorocarbon 720 MPa (630-850). Common practice, no source; four spools of a published nylon
/// list (20 lb 0.017 in to 4 lb 0.007 in) lie within the range.
PoundRange strandStrength(Material material, Inches diameter);

/// Diameter of nylon of that middle strength.
Inches nylonDiameterFor(double pounds);

/// What a knot leaves: joining knots 55-85 %, knots at the fly 75-95 %. Common practice, no source.
enum class Knot { joining, terminal };
PoundRange knotted(const PoundRange& strand, Knot knot);

/// Diameter of an X size: (11 - X)/1000 in, from 0X on up to 8X. Common practice, no source.
Inches diameterOfX(double x);
double xOf(Inches diameter);

/// The number of a hook as a scale without gap: #6 is 6, 1/0 is 0, 2/0 is -1. Reads "6", "#6",
/// "2/0"; nothing for anything else, or beyond #28 and 10/0.
std::optional<int> hookNumber(std::string_view hook);

/// Tippet for a hook. #6 and smaller: from size/4 to size/3 X. #5-#2: 10-12 lb; #1-2/0: 12-20 lb of
/// nylon. Nothing beyond. Common practice, no source.
struct TippetAdvice {
  Inches thin;
  Inches thick;
  std::optional<double> lowX, highX;          ///< where the trade counts in X
  std::optional<double> lowPounds, highPounds;  ///< where it counts in pounds
};
std::optional<TippetAdvice> tippetFor(std::string_view hook);

}  // namespace grainwise
