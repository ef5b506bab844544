// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/placement.h"

#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {

constexpr int kLeftOut = 3;
/// Tags that would fill the row so many times over do not begin as long as that.
constexpr double kCrowd = 3;
/// A joint must stand this far inside its tag, so that its dotted line meets it.
constexpr double kInside = 8;
/// A caption stays at its stretch: at least this much of it (or all of a narrower one) is shared.
constexpr double kShared = 12;
constexpr double kStep = 6;
/// An elided caption shorter than this says nothing.
constexpr double kLeastElided = 40;

/// Lefts nearest to each tag's middle over its joint, in order and apart: clusters that touch stand
/// where the mean of their wishes is.
std::vector<double> packed(const std::vector<double>& wanted, const std::vector<double>& widths,
                           double left, double right, double gap) {
  struct Cluster {
    double sum = 0;  // of wanted lefts less the offset within the cluster
    double wide = 0;
    std::size_t count = 0;
    std::size_t first = 0;
    double at = 0;
  };
  std::vector<Cluster> clusters;
  const auto settle = [&](Cluster& c) {
    c.at = std::clamp(c.sum / double(c.count), left, std::max(left, right - c.wide));
  };
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    Cluster next{wanted[i], widths[i], 1, i, 0};
    settle(next);
    while (!clusters.empty() && clusters.back().at + clusters.back().wide + gap > next.at) {
      const Cluster before = clusters.back();
      clusters.pop_back();
      const double shift = before.wide + gap;
      next = {before.sum + next.sum - double(next.count) * shift, shift + next.wide,
              before.count + next.count, before.first, 0};
      settle(next);
    }
    clusters.push_back(next);
  }
  std::vector<double> lefts;
  for (const Cluster& c : clusters) {
    double x = c.at;
    for (std::size_t i = c.first; i < c.first + c.count; ++i) {
      lefts.push_back(x);
      x += widths[i] + gap;
    }
  }
  return lefts;
}

/// The lightest tag that can still be shortened among those that touch the tag `bad`.
std::size_t lightest(const std::vector<TagWish>& wishes, const std::vector<TagPlace>& places,
                     const std::vector<std::size_t>& shown, const std::vector<double>& lefts,
                     std::size_t bad, double gap) {
  constexpr double kTouch = 1e-6;
  const auto touches = [&](std::size_t k) {
    const double end = lefts[k] + wishes[shown[k]].widths[std::size_t(places[shown[k]].room)];
    return end + gap + kTouch >= lefts[k + 1];
  };
  std::size_t first = bad;
  std::size_t last = bad;
  while (first > 0 && touches(first - 1)) --first;
  while (last + 1 < shown.size() && touches(last)) ++last;
  // Widest form first, then the least weight: all lose their words before one is left out.
  return *std::min_element(shown.begin() + std::ptrdiff_t(first), shown.begin() + std::ptrdiff_t(last) + 1,
                           [&](std::size_t a, std::size_t b) {
                             if (places[a].room != places[b].room) return places[a].room < places[b].room;
                             return wishes[a].weight < wishes[b].weight;
                           });
}

/// The form in which all of them come near to finding room: nothing longer is tried for any.
int roomOfMost(const std::vector<TagWish>& wishes, double row, double gap) {
  int room = 0;
  for (; room + 1 < kLeftOut; ++room) {
    double all = 0;
    for (const TagWish& wish : wishes) all += wish.widths[std::size_t(room)] + gap;
    if (all <= kCrowd * row) break;
  }
  return room;
}

}  // namespace

std::vector<TagPlace> placeTags(const std::vector<TagWish>& wishes, double left, double right,
                                double gap) {
  std::vector<TagPlace> places(wishes.size(), TagPlace{roomOfMost(wishes, right - left, gap), 0});
  for (;;) {
    std::vector<std::size_t> shown;
    std::vector<double> wanted;
    std::vector<double> widths;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
      if (places[i].room == kLeftOut) continue;
      shown.push_back(i);
      widths.push_back(wishes[i].widths[std::size_t(places[i].room)]);
      wanted.push_back(wishes[i].at - widths.back() / 2);
    }
    const std::vector<double> lefts = packed(wanted, widths, left, right, gap);
    std::optional<std::size_t> bad;
    for (std::size_t k = 0; k < shown.size() && !bad; ++k) {
      const double inside = std::min(kInside, widths[k] / 2);
      const double at = std::clamp(wishes[shown[k]].at, left + inside, right - inside);
      const bool holds = at >= lefts[k] + inside - 1e-6 && at <= lefts[k] + widths[k] - inside + 1e-6;
      if (!holds || lefts[k] + widths[k] > right + 1e-6) bad = k;
    }
    if (!bad) {
      for (std::size_t k = 0; k < shown.size(); ++k) places[shown[k]].left = lefts[k];
      return places;
    }
    ++places[lightest(wishes, places, shown, lefts, *bad, gap)].room;
  }
}

namespace {

class Captions {
 public:
  explicit Captions(CaptionRoom room) : m_room(std::move(room)) {}

  std::optional<CaptionPlace> place(const CaptionWish& wish) {
    for (const bool crossing : {false, true}) {
      for (const QString& words : wish.choices) {
        if (auto box = boxFor(wish, m_room.width(words), crossing)) return take({*box, words});
      }
    }
    const QString& last = wish.choices.back();
    const double whole = m_room.width(last);
    for (double wide = std::max(wish.to - wish.from, kLeastElided); wide >= kLeastElided; wide -= kStep) {
      if (wide >= whole) continue;
      const QString words = m_room.elided(last, wide);
      if (words.size() < 3) break;
      if (auto box = boxFor(wish, m_room.width(words), true)) return take({*box, words});
    }
    return std::nullopt;
  }

 private:
  CaptionPlace take(CaptionPlace place) {
    m_room.taken.push_back(place.box);
    return place;
  }

  /// The free place nearest to the middle of the stretch.
  [[nodiscard]] std::optional<QRectF> boxFor(const CaptionWish& wish, double wide, bool crossing) const {
    const double shared = std::min(kShared, wish.to - wish.from);
    const double middle = (wish.from + wish.to - wide) / 2;
    const double furthest = (wide + wish.to - wish.from) / 2 - shared;
    for (double shift = 0; shift <= std::max(0.0, furthest); shift += kStep) {
      for (const bool below : {wish.preferBelow, !wish.preferBelow}) {
        for (const double x : {middle + shift, middle - shift}) {
          const QRectF box = boxAt(x, wide, below);
          if (free(box, below, crossing)) return box;
        }
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] QRectF boxAt(double x, double wide, bool below) const {
    const double away = m_room.halfLine(x, x + wide) + m_room.gap;
    const double y = below ? m_room.middle + away : m_room.middle - away - m_room.height;
    return {x, y, wide, m_room.height};
  }

  [[nodiscard]] bool free(const QRectF& box, bool below, bool crossing) const {
    constexpr double kApart = 4;
    if (!m_room.body.contains(box)) return false;
    const QRectF apart = box.adjusted(-kApart, 0, kApart, 0);
    for (const QRectF& other : m_room.taken) {
      if (other.intersects(apart)) return false;
    }
    if (below || crossing) return true;
    return std::none_of(m_room.uprights.begin(), m_room.uprights.end(), [&](double x) {
      return x > box.left() - 2 && x < box.right() + 2;
    });
  }

  CaptionRoom m_room;
};

}  // namespace

std::vector<std::optional<CaptionPlace>> placeCaptions(const std::vector<CaptionWish>& wishes,
                                                       CaptionRoom room) {
  Captions captions(std::move(room));
  std::vector<std::optional<CaptionPlace>> places;
  places.reserve(wishes.size());
  for (const CaptionWish& wish : wishes) {
    places.push_back(wish.choices.isEmpty() ? std::nullopt : captions.place(wish));
  }
  return places;
}

}  // namespace grainwise::ui
