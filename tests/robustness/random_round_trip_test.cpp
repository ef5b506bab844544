// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <random>

#include "core/model/check.h"
#include "core/model/fields.h"
#include "tests/support/documents.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

/// Fills every member of a value at random, within its limit: a visitor of the same description
/// that reader and writer use, so that no key can be forgotten here.
class Filler {
 public:
  explicit Filler(std::uint64_t seed) : m_random(seed) {}

  template <class T>
  T make() {
    T value;
    describeFields(*this, value);
    mend(value);
    return value;
  }

  template <class Q>
  void number(const char*, Q& value, const Limit& limit, bool = true) {
    value = Q(within(limit));
  }
  template <class Q>
  void number(const char*, std::optional<Q>& value, const Limit& limit) {
    if (chance()) value = Q(within(limit));
  }
  void whole(const char*, std::optional<int>& value, const Limit& limit) {
    if (chance()) value = static_cast<int>(limit.low) + static_cast<int>(below(2));
  }
  template <class Q>
  void along(const char*, std::optional<Along<Q>>& value, const Limit& limit) {
    value = chance() ? Along<Q>(Q(within(limit))) : Along<Q>(Q(within(limit)), Q(within(limit)));
  }
  template <class R>
  void range(const char*, std::optional<R>& value, const Limit& limit) {
    if (!chance()) return;
    const double a = within(limit);
    const double b = within(limit);
    value.emplace();
    value->low = decltype(value->low)(std::min(a, b));
    value->high = decltype(value->high)(std::max(a, b));
  }
  void text(const char*, std::string& value) { value = words(); }
  void text(const char*, std::optional<std::string>& value) {
    if (chance()) value = words();
  }
  void flag(const char*, std::optional<bool>& value) {
    if (chance()) value = chance();
  }
  template <class E>
  void choice(const char*, E& value, const std::vector<E>& allowed) {
    value = allowed[below(allowed.size())];
  }
  template <class E>
  void choice(const char*, std::optional<E>& value, const std::vector<E>& allowed) {
    if (!allowed.empty() && chance()) value = allowed[below(allowed.size())];
  }
  template <class T>
  void object(const char*, std::optional<T>& value, Layout) {
    if (chance()) value = make<T>();
  }
  template <class T>
  void list(const char*, std::vector<T>& values, Layout, bool) {
    const std::size_t count = 1 + below(4);
    for (std::size_t i = 0; i < count; ++i) values.push_back(make<T>());
  }
  void cardRig(const char*, std::optional<CardRig>& rig) {
    if (chance()) rig = chance() ? CardRig(make<Rig>()) : CardRig("f" + std::to_string(below(99)));
  }
  void fly(Part& part) {
    if (part.kind != PartKind::fly) return;
    part.fly.emplace();
    describeFly(*this, *part.fly, true);
  }

 private:
  std::uint64_t below(std::uint64_t end) { return m_random() % end; }
  bool chance() { return below(2) == 0; }
  double within(const Limit& limit) {
    constexpr double kTwoTo53 = 9007199254740992.0;
    if (below(8) == 0) return limit.high;
    if (below(8) == 0 && !limit.open) return limit.low;
    const double share = static_cast<double>(1 + (m_random() >> 11)) / kTwoTo53;
    const double value = limit.low + (limit.high - limit.low) * share;
    const double rounded = std::round(value * 100) / 100;
    return chance() && limit.holds(rounded) ? rounded : value;
  }
  std::string words() {
    static const std::vector<std::string> kPieces{"a",          "Z",  " ",    "\"",     "\\",
                                                  "\n",         "\t", "\x01", "\u00e9", "\u2020",
                                                  "\U0001F41F", "/",  "\x7F"};
    std::string text;
    for (std::uint64_t n = below(12); n > 0; --n) text += kPieces[below(kPieces.size())];
    return text;
  }

  // What the rules between members ask for.
  template <class T>
  void mend(T&) {}
  void mend(Section& s) {
    s.kept = {};
    const auto length = s.length;
    switch (below(4)) {
      case 0:
        s.diameter.reset(), s.density.reset(), s.sinkRate.reset(), s.material.reset();
        s.floats = true;
        break;
      case 1:
        s.diameter.reset(), s.density.reset(), s.material.reset(), s.floats.reset();
        break;
      case 2:
        s.diameter.reset(), s.sinkRate.reset(), s.material.reset(), s.floats.reset();
        s.density = GramsPerCubicCentimetre(1.25);
        break;
      default:
        s.mass.reset(), s.density.reset(), s.sinkRate.reset(), s.floats.reset();
        s.material = Material::nylon;
    }
    s.length = length;
  }
  void mend(Weighed& weighed) { weighed.on = date(); }
  void mend(Timed& timed) { timed.on = date(); }
  void mend(CurrentFit& fit) { fit.on = date(); }
  std::string date() { return "2026-0" + std::to_string(1 + below(9)) + "-28"; }
  void mend(Part& part) {
    if (part.kind == PartKind::fly) {
      part.sections.clear();
      part.label.reset(), part.loops.reset(), part.weighed.reset();
      if (part.fly->wet) part.fly->wet = std::max(*part.fly->wet, part.fly->dry);
    } else if (part.weighed) {
      part.weighed->mass = Grains(std::max(part.weighed->mass.value(), 101.0));
    }
  }
  void mend(Rig& rig) {
    std::stable_sort(rig.parts.begin(), rig.parts.end(),
                     [](const Part& a, const Part& b) { return a.kind < b.kind; });
    const auto last =
        std::unique(rig.parts.begin(), rig.parts.end(), [](const Part& a, const Part& b) {
          return a.kind == b.kind && (a.kind == PartKind::fly || a.kind == PartKind::runningLine);
        });
    rig.parts.erase(last, rig.parts.end());
  }
  void mend(Shelf& shelf) {
    for (std::size_t i = 0; i < shelf.parts.size(); ++i) {
      shelf.parts[i].id = "part " + std::to_string(i);
      shelf.parts[i].group = words();
    }
  }
  void mend(Pool& pool) {
    if (pool.clearance) pool.wantedDepth.reset();
  }
  void mend(Spool& spool) {
    if (!spool.mass && !spool.diameter) spool.mass = GrainsPerFoot(9);
    spool.material = Material::fluorocarbon;
    if (spool.floats == true) spool.sinkRate.reset();
  }

  std::mt19937_64 m_random;
};

template <class T>
void roundTrips(Result<T> (*read)(std::string_view, const std::string&),
                std::string (*write)(const T&), int runs) {
  for (int i = 0; i < runs; ++i) {
    const T value = Filler(static_cast<std::uint64_t>(i)).template make<T>();
    const std::string text = write(value);
    const auto back = read(text, "");
    INFO("seed " << i << "\n" << text);
    if (!back) FAIL(inWords(back.error()));
    if (!(*back == value)) FAIL("the value reads back as another");
    if (write(*back) != text) FAIL("the text is written another way");
  }
}

}  // namespace

TEST_CASE("any sound rig is written so that it reads back as the same rig") {
  roundTrips<Rig>(readRig, writeRig, 2000);
}
TEST_CASE("any sound shelf is written so that it reads back as the same shelf") {
  roundTrips<Shelf>(readShelf, writeShelf, 500);
}
TEST_CASE("any sound list of pools is written so that it reads back as the same list") {
  roundTrips<Pools>(readPools, writePools, 1000);
}
TEST_CASE("any sound list of spools is written so that it reads back as the same list") {
  roundTrips<Spools>(readSpools, writeSpools, 1000);
}
TEST_CASE("any sound deck is written so that it reads back as the same deck") {
  roundTrips<Deck>(readDeck, writeDeck, 500);
}
