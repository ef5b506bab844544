// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/choose.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/analysis/depth_table.h"
#include "core/choose/two_threads.h"

namespace grainwise {
namespace {

constexpr double kFinestScore = 1e9;  // scores nearer than this are equal

bool samePart(const Part& a, const Part& b) {
  Part left = a, right = b;
  for (Part* part : {&left, &right}) {
    part->id.reset();
    part->group.reset();
    part->kept = {};
  }
  return left == right;
}

ChoiceNeed needOf(const Rig& rig, const Shelf& shelf) {
  const ChoiceNeed need = rigNeed(rig);
  if (need != ChoiceNeed::none) return need;
  return hasTips(shelf) ? ChoiceNeed::none : ChoiceNeed::shelf;
}

/// How far the middle of the depth is from the middle of the wanted water, in feet.
double offMiddle(const TipChoice& choice, const std::optional<WantedWater>& wanted) {
  if (!wanted || !choice.figures.depth || !choice.figures.depth->band) return 0.0;
  const Feet middle = (wanted->low + wanted->high) * 0.5;
  return std::abs((choice.figures.depth->band->middle - middle).value());
}

double strokeChange(const TipChoice& choice, const StrokeLimits& limits) {
  if (!choice.figures.stroke) return 0.0;
  const Stroke& s = *choice.figures.stroke;
  return std::abs(s.lengthChange.value()) / limits.sameLength.value() +
         std::abs(s.massChange) / limits.sameMass +
         std::abs(s.sinkingChange.value()) / limits.slowerLift.value();
}

auto rankKey(const TipChoice& choice, const std::optional<WantedWater>& wanted,
             const StrokeLimits& stroke) {
  const bool rejected = choice.standing == Standing::rejected;
  double sum = 0.0;
  for (const Judged& j : choice.judged) sum += j.grade;
  const double worth = rejected ? sum : choice.score;
  return std::make_tuple(choice.standing, rejected ? choice.reasons() : 0,
                         -std::llround(worth * kFinestScore),
                         std::llround(offMiddle(choice, wanted) * kFinestScore),
                         std::llround(strokeChange(choice, stroke) * kFinestScore));
}

Standing standingOf(const std::vector<Judged>& judged) {
  Standing standing = Standing::fits;
  for (const Judged& j : judged) {
    if (j.zone == Grade::wrong) return Standing::rejected;
    if (j.zone == Grade::watch) standing = Standing::watch;
  }
  return standing;
}

}  // namespace

ChoiceNeed rigNeed(const Rig& rig) {
  const auto isHead = [](const Part& part) { return part.kind == PartKind::head; };
  if (std::none_of(rig.parts.begin(), rig.parts.end(), isHead)) return ChoiceNeed::head;
  const auto fly = rig.flyIndex();
  if (!fly || !rig.parts[*fly].fly) return ChoiceNeed::fly;
  return rig.parts[*fly].fly->wetMass() > Grains(0) ? ChoiceNeed::none : ChoiceNeed::flyMass;
}

std::optional<StrokeBasis> strokeAsItStands(const Rig& rig) {
  const auto style = headStyle(rig);
  const bool known = tipOf(rig) != nullptr || style == Style::fine || style == Style::singleHand;
  if (!known) return std::nullopt;
  return strokeBasis(rig, massProfile(rig));
}

std::size_t TipChoice::reasons() const {
  return static_cast<std::size_t>(std::count_if(
      judged.begin(), judged.end(), [](const Judged& j) { return j.zone == Grade::wrong; }));
}

std::size_t Choice::count(Standing standing) const {
  return static_cast<std::size_t>(
      std::count_if(ranked.begin(), ranked.end(),
                    [&](const TipChoice& choice) { return choice.standing == standing; }));
}

TipTrial::TipTrial(const Rig& rig, const Conditions& conditions,
                   const std::optional<StrokeBasis>& reference)
    : m_rig(rig), m_conditions(conditions), m_style(headStyle(rig)) {
  Rig dry = rig;
  dry.water.reset();  // the depth is asked for pool by pool
  Conditions against = conditions;
  against.strokeReference = reference;
  Analysis analysis = analyse(dry, against);
  m_figures = figuresOf(analysis);
  m_profile = std::move(analysis.profile);
  m_refused = standingOf(judge(m_figures, m_style, conditions.rules)) == Standing::rejected;
  if (const Part* tip = tipOf(m_rig)) m_size = tipSize(*tip);
}

TipChoice TipTrial::judged(const std::optional<DepthFit>& depth) const {
  TipChoice choice;
  choice.figures = m_figures;
  choice.figures.depth = depth;
  choice.judged = judge(choice.figures, m_style, m_conditions.rules);
  choice.standing = standingOf(choice.judged);
  choice.score = geometricMean(choice.judged, m_conditions.rules.weights);
  choice.size = m_size;
  return choice;
}

TipChoice TipTrial::inWater(const std::optional<Pool>& pool) const {
  const Rig rig = pool ? inPool(m_rig, *pool) : m_rig;
  return judged(depthFit(rig, m_profile, pool ? wantedWater(*pool) : std::nullopt,
                         m_conditions.current, m_conditions.rules.choice.bottomTouch));
}

TipChoice TipTrial::inAir() const { return judged(std::nullopt); }

Choice chooseTip(const TipQuestion& question, const std::stop_token& stop,
                 const std::function<void(double)>& progress) {
  Choice choice;
  const Rig& rig = question.rig;
  const Conditions& conditions = question.conditions;
  choice.need = needOf(rig, question.shelf);
  if (question.pool) choice.wanted = wantedWater(*question.pool);
  if (choice.need != ChoiceNeed::none) return choice;

  const std::optional<StrokeBasis> reference = strokeAsItStands(rig);
  choice.asItStands = TipTrial(rig, conditions, reference).inWater(question.pool);
  choice.asItStands->asItStands = true;

  std::vector<std::optional<std::size_t>> places{std::nullopt};
  for (std::size_t i = 0; i < question.shelf.parts.size(); ++i) {
    if (isTipOrCoated(question.shelf.parts[i])) places.emplace_back(i);
  }
  std::vector<TipChoice> list(places.size());
  const Part* fitted = tipOf(rig);
  const bool finished = forEachOnTwo(
      places.size(),
      [&](std::size_t i) {
        const Part* tip = places[i] ? &question.shelf.parts[*places[i]] : nullptr;
        list[i] = TipTrial(withTip(rig, tip), conditions, reference).inWater(question.pool);
        list[i].shelf = places[i];
        list[i].asItStands = tip == nullptr ? fitted == nullptr
                                            : fitted != nullptr && samePart(*tip, *fitted);
      },
      stop, progress);
  if (!finished) {
    choice.stopped = true;
    return choice;
  }
  std::stable_sort(list.begin(), list.end(), [&](const TipChoice& a, const TipChoice& b) {
    const StrokeLimits& stroke = conditions.rules.stroke;
    return rankKey(a, choice.wanted, stroke) < rankKey(b, choice.wanted, stroke);
  });
  choice.ranked = std::move(list);
  if (choice.count(Standing::rejected) == choice.ranked.size()) {
    choice.need = ChoiceNeed::nothingFits;
  } else if (!question.pool) {
    choice.need = ChoiceNeed::pool;
  } else if (!choice.wanted) {
    choice.need = ChoiceNeed::wantedWater;
  }
  return choice;
}

std::vector<std::size_t> familyOf(const TipQuestion& question, const Choice& choice) {
  constexpr Feet kSame(0.05);
  std::vector<std::size_t> members;
  const Part* fitted = tipOf(question.rig);
  if (fitted == nullptr || fitted->kind != PartKind::tip) return members;
  const Feet length = fitted->length();
  for (std::size_t i = 0; i < choice.ranked.size(); ++i) {
    const TipChoice& c = choice.ranked[i];
    if (!c.shelf || question.shelf.parts[*c.shelf].kind != PartKind::tip) continue;
    if (std::abs((c.size.length - length).value()) <= kSame.value()) members.push_back(i);
  }
  const auto size = [&](std::size_t i) {
    const TipSize& s = choice.ranked[i].size;
    const Part& part = question.shelf.parts[*choice.ranked[i].shelf];
    const double rate = part.sections.back().sinkRate
                            ? part.sections.back().sinkRate->flyEnd.value()
                            : 0.0;
    return std::make_tuple(std::llround(s.mean.value() * 100.0),
                           std::llround(s.sinking.value() * 100.0), std::llround(rate * 100.0));
  };
  std::sort(members.begin(), members.end(), [&](std::size_t a, std::size_t b) {
    return std::make_tuple(size(a), *choice.ranked[a].shelf) <
           std::make_tuple(size(b), *choice.ranked[b].shelf);
  });
  members.erase(std::unique(members.begin(), members.end(),
                            [&](std::size_t a, std::size_t b) { return size(a) == size(b); }),
                members.end());
  return members;
}

}  // namespace grainwise
