// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/consequence.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/mass/rod_fit.h"

namespace grainwise {
namespace {

constexpr double kMassTolerance = 0.03;   // relative
constexpr Feet kLengthTolerance{0.25};
constexpr double kUnseen = 0.005;         // relative: rounded figures read the same
constexpr double kSame = 1e-9;            // relative: sums of typed decimals
constexpr double kTelling = 0.10;         // relative: as telling as half a foot of depth
constexpr Feet kTellingDepth{0.5};
constexpr Feet kUnseenDepth{0.05};
constexpr Seconds kUnseenTime{0.5};

template <class Verdict>
Figure figure(double value, const std::optional<Verdict>& verdict) {
  Figure f{value, {}, {}};
  if (verdict) {
    f.verdict = *verdict;
    f.grade = grade(*verdict);
  }
  return f;
}

double relative(double a, double b) {
  const double size = std::max(std::abs(a), std::abs(b));
  return size > 0.0 ? std::abs(b - a) / size : 0.0;
}

/// Collects what differs.
class List {
 public:
  explicit List(bool otherWindow = false) : m_otherWindow(otherWindow) {}
  void add(const Consequence& c, double unseen) {
    if (!c.a && !c.b) return;
    if (c.a && c.b && c.a->verdict == c.b->verdict && std::abs(c.b->value - c.a->value) < unseen) {
      return;
    }
    items.push_back(c);
  }
  /// A ratio or a mass; `tolerance` is of the figure itself.
  void addPlain(Effect effect, const std::optional<Figure>& a, const std::optional<Figure>& b,
                std::optional<double> tolerance = std::nullopt) {
    Consequence c;
    c.effect = effect;
    c.a = a;
    c.b = b;
    double unseen = 0.0;
    if (a && b) {
      const double size = std::max(std::abs(a->value), std::abs(b->value));
      unseen = kUnseen * size;
      const double by = std::abs(b->value - a->value);
      // The same figure under another rule (style, window of the rod) differs for certain.
      const bool otherRule = by <= kSame * size || (effect == Effect::headOnRod && m_otherWindow);
      c.within = !otherRule && by < tolerance.value_or(kMassTolerance * size);
    }
    add(c, unseen);
  }
  void addPaired(Effect effect, const Figure& a, const Figure& b, const PairedDifference& by) {
    Consequence c;
    c.effect = effect;
    c.a = a;
    c.b = b;
    c.difference = by;
    c.within = !by.sure();
    add(c, kUnseen * std::max(std::abs(a.value), std::abs(b.value)));
  }
  std::vector<Consequence> items;

 private:
  bool m_otherWindow;
};

Figure figureOf(const Junction& joint) {
  return figure(joint.ratio3ft, std::optional(joint.verdict));
}

std::optional<Junction> worstOf(const std::vector<Junction>& list) {
  const auto worst = worstJunction(list);
  return worst ? std::optional(list[*worst]) : std::nullopt;
}

/// The joint that changes most: among those between the same two parts of both rigs, and the worst of
/// those that only one rig has.
void addJunction(List& list, const ComparedRig& a, const ComparedRig& b,
                 const std::vector<PartPair>& pairs) {
  std::vector<Junction> onlyA, onlyB = b.analysis.junctions;
  List both;
  const auto make = [](const std::optional<Junction>& of, const std::optional<Junction>& in) {
    Consequence c;
    c.effect = Effect::junction;
    c.joint = of;
    c.jointB = in;
    if (of) c.a = figureOf(*of);
    if (in) c.b = figureOf(*in);
    c.within = of && in && relative(of->ratio3ft, in->ratio3ft) < kMassTolerance;
    return c;
  };
  const auto inB = [&](std::size_t part) -> std::optional<std::size_t> {
    for (const PartPair& pair : pairs) {
      if (pair.a == part) return pair.b;
    }
    return std::nullopt;
  };
  for (const Junction& of : a.analysis.junctions) {
    const auto rod = inB(of.rodSide), fly = inB(of.flySide);
    const auto twin = std::find_if(onlyB.begin(), onlyB.end(), [&](const Junction& j) {
      return rod && fly && j.rodSide == *rod && j.flySide == *fly;
    });
    if (twin == onlyB.end()) {
      onlyA.push_back(of);
      continue;
    }
    both.add(make(of, *twin), kUnseen * std::max(of.ratio3ft, twin->ratio3ft));
    onlyB.erase(twin);
  }
  both.add(make(worstOf(onlyA), worstOf(onlyB)), 0.0);
  if (both.items.empty()) return;
  list.items.push_back(*std::max_element(
      both.items.begin(), both.items.end(),
      [](const Consequence& p, const Consequence& q) { return p.weight() < q.weight(); }));
}

std::optional<double> lengthTolerance(const Rig& a, const Rig& b) {
  const auto length = [](const Rig& rig) { return rig.rod ? rig.rod->length : std::nullopt; };
  const auto rod = length(a) ? length(a) : length(b);
  return rod ? std::optional(kLengthTolerance / *rod) : std::nullopt;
}

void addMassReadings(List& list, const ComparedRig& a, const ComparedRig& b) {
  const auto of = [](const auto& value, const auto& verdict) -> std::optional<Figure> {
    if (!value) return std::nullopt;
    if constexpr (std::is_same_v<std::decay_t<decltype(*value)>, double>) {
      return figure(*value, verdict);
    } else {
      return figure(value->value(), verdict);
    }
  };
  const Analysis &p = a.analysis, &q = b.analysis;
  const auto tolerance = lengthTolerance(a.rig, b.rig);
  list.addPlain(Effect::headOnRod, of(p.rod.head, p.rod.headVerdict),
                of(q.rod.head, q.rod.headVerdict));
  list.addPlain(Effect::workingLength, of(p.rod.lengthRatio, p.rod.lengthVerdict),
                of(q.rod.lengthRatio, q.rod.lengthVerdict), tolerance);
  list.addPlain(Effect::tipShare, of(p.grip.tipShare, p.grip.tipShareVerdict),
                of(q.grip.tipShare, q.grip.tipShareVerdict));
  list.addPlain(Effect::anchor, of(p.grip.anchorRatio, p.grip.anchorVerdict),
                of(q.grip.anchorRatio, q.grip.anchorVerdict), tolerance);
  list.addPlain(Effect::flyAgainstTip, of(p.fly.tipToFly, p.fly.tipToFlyVerdict),
                of(q.fly.tipToFly, q.fly.tipToFlyVerdict));
  list.addPlain(Effect::flyAgainstLeader, of(p.fly.leaderToFly, p.fly.leaderToFlyVerdict),
                of(q.fly.leaderToFly, q.fly.leaderToFlyVerdict));
}

void addTurnover(List& list, const ComparedRig& a, const ComparedRig& b, const Shared& shared) {
  const auto &p = a.analysis.turnover, &q = b.analysis.turnover;
  const auto reserve = [](const Turnover& t) {
    return figure(t.reserve, std::optional(t.reserveVerdict));
  };
  if (!p || !q) {
    list.addPlain(Effect::reserve, p ? std::optional(reserve(*p)) : std::nullopt,
                  q ? std::optional(reserve(*q)) : std::nullopt);
    return;
  }
  const TurnoverDifference by = turnoverDifference(*p, *q, shared);
  list.addPaired(Effect::reserve, reserve(*p), reserve(*q), by.reserve);
  list.addPaired(Effect::pace, figure(p->pace, std::optional(p->paceVerdict)),
                 figure(q->pace, std::optional(q->paceVerdict)), by.pace);
  if (by.drive) {
    list.addPaired(Effect::drive, figure(*p->drive, p->driveVerdict),
                   figure(*q->drive, q->driveVerdict), *by.drive);
  }
}

std::optional<DepthDifference> depthOf(const ComparedRig& a, const ComparedRig& b,
                                       const Shared& shared, const Conditions& conditions) {
  if (a.heavy && b.heavy) {
    if (auto d = depthDifference(*a.heavy, *b.heavy, shared)) return d;
  }
  const auto live = [&](const ComparedRig& of) {
    return of.live ? *of.live
                   : liveEnds(of.rig, conditions.current, conditions.waterUncertainty);
  };
  return depthDifference(live(a), live(b), shared);
}

void addDepth(List& list, const ComparedRig& a, const ComparedRig& b, const Shared& shared,
              const Conditions& conditions) {
  // Of real swings, what most of the way across is like; else how the line hangs in the end.
  const auto at = [](Feet depth, const ComparedRig& of, bool onBottom) {
    Figure f{depth.value(), {}, {}};
    if (of.analysis.hang) {
      const DepthState state = of.analysis.hang->state;
      f.verdict = isOnBottom(state) == onBottom ? state
                  : onBottom                    ? DepthState::onBottom
                                                : DepthState::nearBottom;
      f.grade = onBottom ? Grade::watch : Grade::fits;
    }
    return f;
  };
  Consequence c;
  c.effect = Effect::depth;
  if (const auto d = depthOf(a, b, shared, conditions)) {
    c.a = at(d->a, a, d->onBottomA);
    c.b = at(d->b, b, d->onBottomB);
    c.difference = d->feet;
    c.fromRuns = d->fromRuns;
    c.within = !d->feet.sure() || (d->onBottomA && d->onBottomB);
  } else {
    const auto middle = [&](const ComparedRig& of) -> std::optional<Figure> {
      if (!of.analysis.depthBand) return std::nullopt;
      return at(of.analysis.depthBand->middle, of, isOnBottom(of.analysis.hang->state));
    };
    c.a = middle(a);
    c.b = middle(b);
  }
  list.add(c, kUnseenDepth.value());
}

void addSwingTime(List& list, const ComparedRig& a, const ComparedRig& b) {
  const auto time = [](const ComparedRig& of) -> std::optional<Figure> {
    if (!of.heavy || !of.heavy->swing || !of.heavy->swing->timeTo10deg) return std::nullopt;
    return Figure{of.heavy->swing->timeTo10deg->value(), {}, {}};
  };
  if (!a.heavy || !b.heavy) return;
  Consequence c;
  c.effect = Effect::swingTime;
  c.a = time(a);
  c.b = time(b);
  list.add(c, kUnseenTime.value());
}

void addStroke(List& list, const ComparedRig& a, const ComparedRig& b,
               const Conditions& conditions) {
  const StrokeBasis basis = strokeBasis(a.rig, a.analysis.profile);
  if (basis.mass <= Grains(0)) return;
  Consequence c;
  c.effect = Effect::stroke;
  c.stroke = stroke(basis, strokeBasis(b.rig, b.analysis.profile), conditions.rules.stroke);
  const bool changes = c.stroke->verdict != StrokeVerdict::same || c.stroke->slowerLift ||
                       c.stroke->quickerLift;
  if (changes) list.items.push_back(c);
}

double stepOf(const Consequence& c) {
  if (c.stroke) return c.stroke->verdict == StrokeVerdict::different ? 0.5 : 0.2;
  const auto rank = [](const std::optional<Figure>& f) -> double {
    return f && f->grade ? static_cast<double>(*f->grade) : 0.0;
  };
  if (c.a.has_value() != c.b.has_value()) {
    return std::max(0.75, std::abs(rank(c.b) - rank(c.a)));
  }
  if (c.a && c.b && c.a->grade != c.b->grade) return std::abs(rank(c.b) - rank(c.a));
  return 0.0;
}

}  // namespace

double Consequence::weight() const {
  constexpr double kStep = 100.0, kMost = 10.0;
  double size = 0.0;
  if (effect == Effect::depth && difference) {
    size = std::abs(difference->middle) / kTellingDepth.value();
  } else if (a && b) {
    size = relative(a->value, b->value) / kTelling;
  } else if (stroke) {
    size = std::abs(stroke->massChange) / kTelling;
  }
  size = std::min(size, kMost);
  if (within) return size * 1e-3;
  return kStep * stepOf(*this) + size;
}

std::vector<Consequence> consequences(const ComparedRig& a, const ComparedRig& b,
                                      const std::vector<PartPair>& pairs,
                                      const Conditions& conditions) {
  const Shared shared = sharedBy(a.rig, b.rig, pairs);
  List list(a.analysis.rod.window != b.analysis.rod.window);
  addJunction(list, a, b, pairs);
  addMassReadings(list, a, b);
  addTurnover(list, a, b, shared);
  addDepth(list, a, b, shared, conditions);
  addSwingTime(list, a, b);
  addStroke(list, a, b, conditions);
  std::stable_sort(list.items.begin(), list.items.end(),
                   [](const Consequence& p, const Consequence& q) {
                     return p.weight() > q.weight();
                   });
  return std::move(list.items);
}

}  // namespace grainwise
