// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>
#include <QRectF>
#include <vector>

#include "core/mass/profile.h"
#include "ui/theme/look.h"

class QPainter;

namespace grainwise::ui {

/// A part's outline, ready to draw: its sections by share of the part's length, each with its mass per
/// foot and how it is filled.
struct Silhouette {
  struct Piece {
    double from = 0;  ///< 0 rod end to 1 fly end of the part
    double to = 1;
    double rodMass = 0;  ///< gr/ft
    double middleMass = 0;
    double flyMass = 0;
    bool sinks = false;
    double rate = 0;  ///< in/s as rated, for how tight the hatch is; 0 for what does not sink
    bool nylon = false;
    /// gr/ft at a share of the part's length, that of its nearer end outside of it.
    [[nodiscard]] double massAt(double share) const;
    bool operator==(const Piece&) const = default;
  };
  std::vector<Piece> pieces;
  bool rodLoop = false;
  bool flyLoop = false;
  bool runsOn = false;  ///< a running line: longer than its place, cut with a break mark
  bool isFly = false;
  double flyGrains = 0;
  double flyBulk_cm2 = 0;
  double flyDensity = 1;  ///< g/cm3
  bool operator==(const Silhouette&) const = default;

  /// The greatest mass per foot of it, or of what lies between two shares of its length.
  [[nodiscard]] double heaviest() const { return heaviest(0, 1); }
  [[nodiscard]] double heaviest(double from, double to) const;
  [[nodiscard]] double lightest(double from, double to) const;
  [[nodiscard]] double massAt(double share) const;
  /// Whether the line sinks at a share of its length.
  [[nodiscard]] bool sinksAt(double share) const;
};

/// Of every part of a rig in its place.
std::vector<Silhouette> silhouettesOf(const Rig& rig, const MassProfile& profile);
/// Of a part by itself.
Silhouette silhouetteOf(const Part& part);

/// Draws the line pieces symmetric about the middle of `box`, `pixelsPerGrain` high a gr/ft (both sides
/// together); floating outlined and lightly filled, sinking filled and hatched more tightly the faster
/// it sinks, nothing thinner than 2 px. `quiet` is left without hatch, for words.
void paintLine(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
               const Colours& colours, const QRectF& quiet = {});

/// A fly drawn to its bulk and mass: a body as large as its drag area, a head as heavy as its grains.
double flyLength(const Silhouette& s);  ///< px at type scale 1, head included
/// Its head's near edge stands at `tie`, where the tippet ends.
void paintFly(QPainter& p, const QPointF& tie, const Silhouette& s, double zoom, const Colours& colours);

/// What hangs under the pointer while a part is dragged.
QPixmap dragPicture(const Silhouette& s, const QString& caption, double length_ft, const Look& look,
                    double devicePixelRatio);

}  // namespace grainwise::ui
