// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <stop_token>
#include <vector>

#include "core/air/cast.h"
#include "core/model/deck.h"
#include "core/water/swing.h"
#include "ui/charts/picture.h"

namespace grainwise::ui {

/// What moves on a card, one entry a rig: a river card's swings, a cast card's loops. Entries are null
/// where there is nothing to run.
struct CardRuns {
  std::vector<std::shared_ptr<const SwingResult>> swings;
  std::vector<std::shared_ptr<const grainwise::CastResult>> casts;
  [[nodiscard]] bool any() const;
  /// How long the longest of them is.
  [[nodiscard]] double length_s() const;
};

/// Runs them: 30-50 ms a rig, for a worker. Null for cards that stand still, or when stopped.
std::shared_ptr<const CardRuns> runsOf(CardShow show, const std::vector<PictureRig>& rigs,
                                       const Conditions& conditions = {}, std::stop_token stop = {});

/// The swing at a moment after the landing: the line from the side, fly right, and under it how deep the
/// fly is through the whole swing. With a time under 0 the line is shown as it hangs at the end.
void paintSwing(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs, const CardRuns& runs,
                double time_s, const PictureStyle& style);
/// The unrolling loop at a moment, true to scale, with thin lines of where it was; one above the other.
void paintCast(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs, const CardRuns& runs,
               double time_s, const PictureStyle& style);

}  // namespace grainwise::ui
