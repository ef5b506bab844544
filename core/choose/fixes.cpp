// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/fixes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/analysis/depth_table.h"
#include "core/choose/two_threads.h"

namespace grainwise {
namespace {

constexpr std::size_t kShown = 7;
constexpr std::size_t kOfOneKind = 3;
constexpr auto kDepth = static_cast<std::size_t>(Reading::depth);
constexpr std::size_t kReadings = kDepth + 1;

/// How many of each reading are wrong, and how many to be watched.
struct Health {
  std::array<int, kReadings> wrong{};
  std::array<int, kReadings> watch{};
  Grains mass;
};

Health healthOf(const Analysis& analysis, bool depthWrong) {
  Health health;
  for (const GradedReading& r : gradedReadings(analysis)) {
    const auto i = static_cast<std::size_t>(r.reading);
    if (r.grade == Grade::wrong) ++health.wrong[i];
    if (r.grade == Grade::watch) ++health.watch[i];
  }
  if (depthWrong) health.wrong[kDepth] = 1;
  health.mass = analysis.totals.mass;
  return health;
}

std::vector<Reading> readingsOf(const std::array<int, kReadings>& counts) {
  std::vector<Reading> list;
  for (std::size_t i = 0; i < kReadings; ++i) {
    if (counts[i] > 0) list.push_back(static_cast<Reading>(i));
  }
  return list;
}

/// A fix with what it is ranked by.
struct Ranked {
  Fix fix;
  std::size_t worth = 0;     ///< faults repaired, or where there is none, watches eased
  std::size_t watches = 0;   ///< left
  double massChange = 0.0;   ///< relative
};

double strokeSize(const Stroke& s, const StrokeLimits& limits) {
  return std::abs(s.lengthChange.value()) / limits.sameLength.value() +
         std::abs(s.massChange) / limits.sameMass +
         std::abs(s.sinkingChange.value()) / limits.slowerLift.value();
}

std::size_t total(const std::array<int, kReadings>& counts) {
  std::size_t sum = 0;
  for (const int n : counts) sum += static_cast<std::size_t>(n);
  return sum;
}

/// Judges one change: nothing when it repairs nothing or breaks something.
std::optional<Ranked> judged(const Trial& trial, const Health& before, const Health& after,
                             const Stroke& stroke, const StrokeLimits& limits) {
  Ranked ranked;
  std::size_t repaired = 0, eased = 0;
  for (std::size_t i = 0; i < kReadings; ++i) {
    if (after.wrong[i] > before.wrong[i]) return std::nullopt;
    const auto reading = static_cast<Reading>(i);
    if (after.wrong[i] < before.wrong[i]) {
      repaired += static_cast<std::size_t>(before.wrong[i] - after.wrong[i]);
      ranked.fix.repaired.push_back(reading);
    }
    if (after.watch[i] < before.watch[i]) {
      eased += static_cast<std::size_t>(before.watch[i] - after.watch[i]);
      ranked.fix.eased.push_back(reading);
    }
  }
  const bool nothingWrong = total(before.wrong) == 0;
  ranked.watches = total(after.watch);
  if (nothingWrong) {
    if (eased == 0 || ranked.watches >= total(before.watch)) return std::nullopt;
    ranked.worth = eased;
  } else {
    if (repaired == 0) return std::nullopt;
    ranked.worth = repaired;
  }
  ranked.fix.change = trial.change;
  ranked.fix.after = trial.after;
  ranked.fix.stroke = stroke;
  ranked.fix.strokeChange = strokeSize(stroke, limits);
  ranked.massChange = std::abs((after.mass - before.mass) / std::max(before.mass, Grains(1.0)));
  return ranked;
}

/// The best of one list, and no more than three of one kind.
std::vector<Fix> shown(std::vector<Ranked> list) {
  const auto key = [](const Ranked& r) {
    return std::make_tuple(-static_cast<long long>(r.worth), r.watches,
                           std::llround(r.fix.strokeChange * 1e6), std::llround(r.massChange * 1e9));
  };
  std::stable_sort(list.begin(), list.end(),
                   [&](const Ranked& a, const Ranked& b) { return key(a) < key(b); });
  std::map<ChangeKind, std::size_t> taken;
  std::set<std::tuple<ChangeKind, std::string, PartEnd, bool>> cuts;
  std::vector<Fix> fixes;
  for (Ranked& r : list) {
    if (fixes.size() == kShown) break;
    const Change& change = r.fix.change;
    const bool byFeet = change.feet != 0.0;  // of cuts at one place the best is enough
    if (byFeet && !cuts.insert({change.kind, change.part, change.end, change.feet < 0}).second) {
      continue;
    }
    if (taken[r.fix.change.kind]++ < kOfOneKind) fixes.push_back(std::move(r.fix));
  }
  return fixes;
}

ChangeKind kindOf(WaterHandle handle) {
  switch (handle) {
    case WaterHandle::angle:
      return ChangeKind::angle;
    case WaterHandle::mend:
      return ChangeKind::mend;
    case WaterHandle::lineOut:
      break;
  }
  return ChangeKind::lineOut;
}

/// Everything that the trials of one rig are judged with.
class Bench {
 public:
  explicit Bench(const FixQuestion& question) : m_question(question) {
    if (question.pool) m_wanted = wantedWater(*question.pool);
  }

  [[nodiscard]] Analysis analysisOf(const Rig& rig) const {
    Rig dry = rig;
    dry.water.reset();
    return analyse(dry, m_question.conditions);
  }

  /// The share of its depth band in the wanted water is nothing.
  [[nodiscard]] bool depthWrong(const Rig& rig, const MassProfile& profile) const {
    if (!m_wanted) return false;
    const auto fit = depthFit(inPool(rig, *m_question.pool), profile, m_wanted,
                              m_question.conditions.current, m_question.conditions.rules.choice.bottomTouch);
    return fit && fit->share && *fit->share <= 0.0;
  }

  [[nodiscard]] Health healthOf(const Analysis& analysis, const Rig& rig) const {
    return grainwise::healthOf(analysis, depthWrong(rig, analysis.profile));
  }

  [[nodiscard]] const std::optional<WantedWater>& wanted() const { return m_wanted; }

 private:
  const FixQuestion& m_question;
  std::optional<WantedWater> m_wanted;
};

/// Angle, mend and line out, where the depth is all that is wrong with them.
std::vector<Ranked> onTheWater(const FixQuestion& question, const Bench& bench,
                               std::size_t watches, const std::stop_token& stop) {
  std::vector<Ranked> list;
  const Rig there = inPool(question.rig, *question.pool);
  for (const WaterChange& change :
       waterAdvice(there, *bench.wanted(), question.conditions.current, stop)) {
    if (change.share <= 0.0) continue;
    Ranked ranked;
    ranked.fix.change.kind = kindOf(change.handle);
    ranked.fix.change.from = change.from;
    ranked.fix.change.to = change.to;
    ranked.fix.after = withWaterChange(question.rig, change);
    ranked.fix.repaired = {Reading::depth};
    ranked.worth = 1;
    ranked.watches = watches;
    list.push_back(std::move(ranked));
  }
  return list;
}

}  // namespace

bool madeNow(ChangeKind kind) { return kind <= ChangeKind::lineOut; }

Fixes fixesFor(const FixQuestion& question, const std::stop_token& stop,
               const std::function<void(double)>& progress) {
  Fixes fixes;
  fixes.need = rigNeed(question.rig);
  const Bench bench(question);
  const Analysis asItStands = bench.analysisOf(question.rig);
  const Health before = bench.healthOf(asItStands, question.rig);
  fixes.faults = readingsOf(before.wrong);
  fixes.watches = readingsOf(before.watch);
  fixes.nothingWrong = fixes.faults.empty();
  if (fixes.nothingWrong && fixes.watches.empty()) return fixes;

  const StrokeLimits& strokeLimits = question.conditions.rules.stroke;
  const StrokeBasis reference = strokeBasis(question.rig, asItStands.profile);
  const std::vector<Trial> trials = trialsFor(question);
  std::vector<std::optional<Ranked>> results(trials.size());
  const auto tryOne = [&](std::size_t i) {
    const Rig& rig = trials[i].after;
    const Analysis analysis = bench.analysisOf(rig);
    const Stroke change = stroke(reference, strokeBasis(rig, analysis.profile), strokeLimits);
    results[i] = judged(trials[i], before, bench.healthOf(analysis, rig), change, strokeLimits);
  };
  if (!forEachOnTwo(trials.size(), tryOne, stop, progress)) {
    fixes.stopped = true;
    return fixes;
  }
  std::vector<Ranked> now, later;
  if (before.wrong[kDepth] > 0) now = onTheWater(question, bench, total(before.watch), stop);
  for (std::optional<Ranked>& r : results) {
    if (!r) continue;
    (madeNow(r->fix.change.kind) ? now : later).push_back(std::move(*r));
  }
  fixes.now = shown(std::move(now));
  fixes.later = shown(std::move(later));
  fixes.stopped = stop.stop_requested();
  return fixes;
}

}  // namespace grainwise
