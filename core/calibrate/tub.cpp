// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/calibrate/calibrate.h"
#include "core/material/sink_rate.h"
#include "core/model/limits.h"

namespace grainwise {
namespace {

constexpr double kFourInFive = 1.2816;  // half-width of the middle 80 % of a normal error, in s
constexpr Inches kMostFall{300};
constexpr Inches kShortFall{12};
constexpr Seconds kShortTime{2};

Problem refusal(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

double meanOf(const std::vector<Seconds>& times) {
  double sum = 0.0;
  for (const Seconds time : times) sum += time.value();
  return sum / static_cast<double>(times.size());
}

/// Uncertainty of the mean time, four times out of five.
double timeUncertainty_s(const TubTiming& timing, double mean_s) {
  const auto count = static_cast<double>(timing.times.size());
  double hand_s = timing.timeError.value();
  if (timing.times.size() >= 3) {
    double squares = 0.0;
    for (const Seconds time : timing.times) squares += std::pow(time.value() - mean_s, 2.0);
    hand_s = std::max(hand_s, kFourInFive * std::sqrt(squares / (count - 1.0)));
  }
  return hand_s / std::sqrt(count);
}

std::optional<Problem> refused(const TubTiming& timing) {
  if (!(timing.fall > Inches(0)) || timing.fall > kMostFall) {
    return refusal(Problem::tr("a fall of %1 in is no fall in a tub").arg(timing.fall.value()),
                   Problem::tr("give over 0 to 300 in"));
  }
  if (timing.times.empty()) return refusal(Problem::tr("no time is given"), Problem::tr("time at least one fall"));
  for (const Seconds time : timing.times) {
    if (time > Seconds(0) && time < Seconds(3600)) continue;
    return refusal(Problem::tr("a time of %1 s is none").arg(time.value()), Problem::tr("time it again"));
  }
  return std::nullopt;
}

bool isTimed(const Section& section) {
  return section.timed && section.sinkRate && section.sinkRate->rodEnd == section.timed->rate &&
         section.sinkRate->flyEnd == section.timed->rate;
}

}  // namespace

tl::expected<TubRate, Problem> tubRate(const TubTiming& timing, GrainsPerFoot mass) {
  if (auto problem = refused(timing)) return tl::unexpected(std::move(*problem));
  const double mean_s = meanOf(timing.times);
  TubRate result;
  result.inTub = InchesPerSecond(timing.fall.value() / mean_s);
  const auto diameter = diameterFromSinkRate(mass, result.inTub, timing.water);
  if (const auto wrong = breach(limits::kSinkRate, result.inTub.value()); wrong || !diameter) {
    return tl::unexpected(refusal(wrong ? wrong->what : Problem::tr("no line of this mass per foot sinks so"),
                                  Problem::tr("measure the fall and time it again")));
  }
  result.rated = sinkRate(mass, *diameter, kRatingWater);
  const double ofTime = timeUncertainty_s(timing, mean_s) / mean_s;
  const double ofFall = timing.fallError / timing.fall;
  result.plusMinus = result.rated * std::sqrt(ofTime * ofTime + ofFall * ofFall);
  result.shortFall = timing.fall < kShortFall || Seconds(mean_s) < kShortTime;
  return result;
}

tl::expected<Part, Problem> withTimedRate(const Part& part, std::size_t index, const TubRate& rate,
                                          const std::optional<std::string>& on) {
  if (index >= part.sections.size() || !part.sections[index].sinkRate) {
    return tl::unexpected(refusal(Problem::tr("this piece does not go by a sink rate"),
                                  Problem::tr("choose a piece that sinks by its rate")));
  }
  if (const auto wrong = breach(limits::kSinkRate, rate.rated.value())) {
    return tl::unexpected(refusal(wrong->what, wrong->fix));
  }
  Part result = part;
  Section& section = result.sections[index];
  Timed timed;
  timed.rate = InchesPerSecond(std::max(0.01, std::round(rate.rated.value() * 100.0) / 100.0));
  timed.plusMinus = InchesPerSecond(std::round(rate.plusMinus.value() * 100.0) / 100.0);
  // A second timing replaces the first, never what the maker rated.
  timed.rated = isTimed(section) ? section.timed->rated : section.sinkRate;
  timed.on = on;
  section.sinkRate = Along<InchesPerSecond>(timed.rate);
  section.timed = timed;
  return result;
}

Part withRatedAgain(const Part& part, std::size_t index) {
  Part result = part;
  if (index >= part.sections.size() || !part.sections[index].timed) return result;
  Section& section = result.sections[index];
  if (isTimed(section) && section.timed->rated) section.sinkRate = section.timed->rated;
  section.timed.reset();
  return result;
}

}  // namespace grainwise
