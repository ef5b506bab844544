// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/paired.h"

#include <algorithm>
#include <cmath>

namespace grainwise {
namespace {

/// Squares of what the sources do to either side.
struct Spread {
  double less = 0.0;
  double more = 0.0;
  /// A source that moves the difference by these two: the worse end counts for each side.
  void add(double one, double other) {
    const double down = std::max({0.0, -one, -other});
    const double up = std::max({0.0, one, other});
    less += down * down;
    more += up * up;
  }
};

double moved(const std::optional<double>& end, double middle) {
  return end.value_or(middle) - middle;
}

bool isCommon(BandSource source, const Shared& shared) {
  switch (source) {
    case BandSource::current:
    case BandSource::profile:
      return shared.water;
    case BandSource::rating:
      return shared.lines;
    case BandSource::drag:
      return true;  // a law of the water, whatever the line
    case BandSource::flyDrag:
      return shared.fly;
    case BandSource::mend:
    case BandSource::angle:
      return shared.swing;
    case BandSource::headDensity:
      return shared.head;
  }
  return false;
}

std::optional<double> feet(const std::optional<Feet>& value) {
  return value ? std::optional(value->value()) : std::nullopt;
}

const BandEnds* endsOf(const std::vector<BandEnds>& list, BandSource source) {
  const auto found = std::find_if(list.begin(), list.end(),
                                  [&](const BandEnds& e) { return e.source == source; });
  return found == list.end() ? nullptr : &*found;
}

std::vector<SourceEnds> sourcesOf(const std::vector<BandEnds>& a, const std::vector<BandEnds>& b,
                                  const Shared& shared) {
  std::vector<SourceEnds> sources;
  for (int s = 0; s <= static_cast<int>(BandSource::profile); ++s) {
    const auto source = static_cast<BandSource>(s);
    SourceEnds ends;
    ends.common = isCommon(source, shared);
    if (const BandEnds* of = endsOf(a, source)) {
      ends.oneA = feet(of->one);
      ends.otherA = feet(of->other);
    }
    if (const BandEnds* of = endsOf(b, source)) {
      ends.oneB = feet(of->one);
      ends.otherB = feet(of->other);
    }
    sources.push_back(ends);
  }
  return sources;
}

bool isCommon(TurnoverInput input, const Shared& shared) {
  switch (input) {
    case TurnoverInput::skinDrag:
      return true;  // a law of the air, whatever the line
    case TurnoverInput::flyDrag:
      return shared.fly;
    case TurnoverInput::lineSpeed:
      return shared.cast;
  }
  return false;
}

template <class Figure>
PairedDifference ofTurnover(const Turnover& a, const Turnover& b, double figureA, double figureB,
                            const Shared& shared, Figure figure) {
  std::vector<SourceEnds> sources;
  for (const TurnoverInput input :
       {TurnoverInput::skinDrag, TurnoverInput::flyDrag, TurnoverInput::lineSpeed}) {
    SourceEnds ends;
    ends.common = isCommon(input, shared);
    for (const TurnoverEnd& end : a.ends) {
      if (end.input == input) (end.high ? ends.otherA : ends.oneA) = figure(end);
    }
    for (const TurnoverEnd& end : b.ends) {
      if (end.input == input) (end.high ? ends.otherB : ends.oneB) = figure(end);
    }
    sources.push_back(ends);
  }
  return pairedDifference(figureA, figureB, sources);
}

}  // namespace

PairedDifference pairedDifference(double a, double b, const std::vector<SourceEnds>& sources) {
  Spread spread;
  for (const SourceEnds& s : sources) {
    const double oneA = moved(s.oneA, a), otherA = moved(s.otherA, a);
    const double oneB = moved(s.oneB, b), otherB = moved(s.otherB, b);
    if (s.common) {
      spread.add(oneB - oneA, otherB - otherA);
    } else {
      spread.add(oneB, otherB);
      spread.add(-oneA, -otherA);
    }
  }
  const double middle = b - a;
  return {middle, middle - std::sqrt(spread.less), middle + std::sqrt(spread.more)};
}

std::optional<DepthDifference> depthDifference(const std::optional<LiveEnds>& a,
                                               const std::optional<LiveEnds>& b,
                                               const Shared& shared) {
  if (!a || !b) return std::nullopt;
  DepthDifference d;
  d.a = a->middle;
  d.b = b->middle;
  d.onBottomA = a->onBottom;
  d.onBottomB = b->onBottom;
  d.feet = pairedDifference(d.a.value(), d.b.value(), sourcesOf(a->ends, b->ends, shared));
  return d;
}

std::optional<DepthDifference> depthDifference(const HeavyRuns& a, const HeavyRuns& b,
                                               const Shared& shared) {
  if (!a.band || !b.band || !a.band->middle || !b.band->middle) return std::nullopt;
  DepthDifference d;
  d.fromRuns = true;
  d.a = *a.band->middle;
  d.b = *b.band->middle;
  d.onBottomA = a.swing && a.swing->onBottom();
  d.onBottomB = b.swing && b.swing->onBottom();
  d.feet = pairedDifference(d.a.value(), d.b.value(),
                            sourcesOf(a.band->ends, b.band->ends, shared));
  return d;
}

TurnoverDifference turnoverDifference(const Turnover& a, const Turnover& b, const Shared& shared) {
  TurnoverDifference d;
  d.reserve = ofTurnover(a, b, a.reserve, b.reserve, shared,
                         [](const TurnoverEnd& end) { return end.reserve; });
  d.pace = ofTurnover(a, b, a.pace, b.pace, shared,
                      [](const TurnoverEnd& end) { return end.pace; });
  if (a.drive && b.drive) {
    d.drive = ofTurnover(a, b, *a.drive, *b.drive, shared,
                         [](const TurnoverEnd& end) { return end.drive; });
  }
  return d;
}

}  // namespace grainwise
