// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <vector>

#include "core/mass/profile.h"
#include "ui/theme/look.h"

class QPainter;

namespace grainwise::ui {

/// A part's outline, ready to draw: its sections by share of the part's length, each with its mass per
/// foot at both ends and how it is filled.
struct Silhouette {
  struct Piece {
    double from = 0;       ///< 0 rod end to 1 fly end of the part
    double to = 1;
    double rodMass = 0;    ///< gr/ft
    double flyMass = 0;
    bool sinks = false;
    double rate = 0;       ///< in/s, for how tight the hatch is
    bool nylon = false;
  };
  std::vector<Piece> pieces;
  bool rodLoop = false;
  bool flyLoop = false;
  bool isFly = false;
  double flyGrains = 0;
  double flyBulk_cm2 = 0;
  bool operator==(const Silhouette&) const;
  [[nodiscard]] double heaviest() const;
};

/// Of a part in its place in a profile (spans are those of the part), or of a part alone.
Silhouette silhouetteOf(const Part& part, const MassProfile& profile, std::size_t index);
Silhouette silhouetteOf(const Part& part);

/// Draws the line pieces symmetric about the middle of `box`, `pixelsPerGrain` high a gr/ft (both sides
/// together); floating outlined and lightly filled, sinking filled and hatched more tightly the faster
/// it sinks, nothing thinner than 2 px.
void paintLine(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
               const Colours& colours);
/// Draws a fly to its mass and bulk in the middle of `box`.
void paintFly(QPainter& p, const QRectF& box, const Silhouette& s, const Colours& colours);

}  // namespace grainwise::ui
