// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/start.h"

#include <cmath>
#include <limits>

#include "core/mass/profile.h"
#include "core/mass/rod_fit.h"
#include "core/mass/standards.h"
#include "core/model/edits.h"

namespace grainwise {
namespace {

constexpr double kLeaderBehindTip_ft = 4.0;
constexpr double kTipLength_ft = 10.0;
constexpr double kTipShareAim = 0.21;  // the middle of "right" for a short head (core/mass/grip.h)

Grains massOf(const Part& part) {
  Rig alone;
  alone.parts.push_back(part);
  return massProfile(alone).places.front().mass();
}

/// The part of the shelf with the least cost; a cost of infinity is out of the question.
template <class Cost>
const Part* cheapest(const Shelf& shelf, Cost&& cost) {
  const Part* best = nullptr;
  double least = std::numeric_limits<double>::infinity();
  for (const Part& part : shelf.parts) {
    const double c = cost(part);
    if (c < least) {
      least = c;
      best = &part;
    }
  }
  return best;
}

constexpr double kNever = std::numeric_limits<double>::infinity();

std::optional<GrainWindow> windowOf(const Rod& rod, Style style) {
  if (rod.windows) {
    const auto& w = *rod.windows;
    const auto& own = style == Style::shortHead   ? w.shortHead
                      : style == Style::fine      ? w.fine
                      : style == Style::longBelly ? w.longBelly
                                                  : w.singleHand;
    if (own) return own;
  }
  if (rod.window) return rod.window;
  if (!rod.lineNumber) return std::nullopt;
  if (rod.hands.value_or(2) == 2) return defaultWindow(style, *rod.lineNumber);
  for (const auto& row : standards::singleHand()) {
    if (row.lineNumber == *rod.lineNumber) return GrainWindow{row.low, row.high};
  }
  return std::nullopt;
}

const Part* headFor(const Shelf& shelf, Style style, const GrainWindow& window) {
  const double middle = (window.low.value() + window.high.value()) / 2;
  return cheapest(shelf, [&](const Part& part) {
    if (part.kind != PartKind::head || part.style != style) return kNever;
    return std::abs(massOf(part).value() - middle);
  });
}

const Part* tipFor(const Shelf& shelf, Style style, Grains head) {
  if (style == Style::shortHead) {
    const GrainsPerFoot wanted = standards::tipForShortHead(head);
    return cheapest(shelf, [&](const Part& part) {
      if (part.kind != PartKind::tip || part.style != Style::level) return kNever;
      return std::abs(massOf(part).value() - wanted.value() * kTipLength_ft) +
             std::abs(part.length().value() - kTipLength_ft);
    });
  }
  if (style != Style::longBelly) return nullptr;
  return cheapest(shelf, [&](const Part& part) {
    if (part.kind != PartKind::tip || part.style != Style::tapered) return kNever;
    return std::abs(massOf(part).value() - kTipShareAim * head.value());
  });
}

const Part* leaderFor(const Shelf& shelf, double wanted_ft) {
  return cheapest(shelf, [&](const Part& part) {
    if (part.kind != PartKind::leader || part.isCoatedLeader()) return kNever;
    return std::abs(part.length().value() - wanted_ft);
  });
}

Result<Rig> missing(const Wording& what, const Wording& fix) {
  return tl::make_unexpected(Problems{Problem{"", 0, "", what, fix}});
}

}  // namespace

Result<Rig> startFromRod(const Rod& rod, Style style, const Shelf& shelf) {
  const auto window = windowOf(rod, style);
  if (!window) {
    return missing(Problem::tr("the grains that this rod is made for are not known"),
                   Problem::tr("give its line number, or the grains that its maker names"));
  }
  const Part* head = headFor(shelf, style, *window);
  if (head == nullptr) return missing(Problem::tr("the shelf has no head of this style"), Problem::tr("add one to it"));
  Rig rig;
  rig.name = "New rig";
  rig.rod = rod;
  const Part* running = cheapest(
      shelf, [](const Part& part) { return part.kind == PartKind::runningLine ? 0.0 : kNever; });
  const Part* tip = tipFor(shelf, style, massOf(*head));
  const Part* leader =
      leaderFor(shelf, tip != nullptr ? kLeaderBehindTip_ft
                                      : rod.length.value_or(Feet(kLeaderBehindTip_ft)).value());
  for (const Part* part : {running, head, tip, leader}) {
    if (part != nullptr) rig = edits::placed(rig, *part);
  }
  return rig;
}

}  // namespace grainwise
