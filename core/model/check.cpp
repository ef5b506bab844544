// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/check.h"

#include <algorithm>
#include <initializer_list>
#include <unordered_map>

#include "core/model/fields.h"
#include "core/model/file_order.h"
#include "core/model/utf8.h"

namespace grainwise {

bool Unread::covers(const std::string& pointer) const {
  if (m_pointers.empty()) return false;
  for (std::size_t end = pointer.size(); end != std::string::npos;) {
    if (m_pointers.contains(pointer.substr(0, end))) return true;
    if (end == 0) break;
    end = pointer.rfind('/', end - 1);
  }
  return false;
}

bool Unread::touches(const std::string& pointer) const {
  if (m_pointers.empty()) return false;
  if (covers(pointer)) return true;
  const auto below = m_pointers.lower_bound(pointer + "/");
  return below != m_pointers.end() && below->starts_with(pointer + "/");
}

namespace {

/// "a head", "a running line".
Wording aKind(PartKind kind) {
  switch (kind) {
    case PartKind::runningLine:
      return Problem::tr("a running line");
    case PartKind::head:
      return Problem::tr("a head");
    case PartKind::tip:
      return Problem::tr("a tip");
    case PartKind::leader:
      return Problem::tr("a leader");
    case PartKind::tippet:
      return Problem::tr("a tippet");
    case PartKind::fly:
      break;
  }
  return Problem::tr("a fly");
}


bool isDate(const std::string& text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
  for (const std::size_t i : {0u, 1u, 2u, 3u, 5u, 6u, 8u, 9u}) {
    if (!digit(i)) return false;
  }
  const int year = std::stoi(text.substr(0, 4));
  const int month = std::stoi(text.substr(5, 2));
  const int day = std::stoi(text.substr(8, 2));
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  const std::array<int, 12> days{31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month >= 1 && month <= 12 && day >= 1 && day <= days[static_cast<std::size_t>(month) - 1];
}

/// Gathers what is wrong with a value: the limit of each member, then the rules between members.
class Checker {
 public:
  explicit Checker(const Unread& unread) : m_unread(unread) {}

  template <class T>
  void value(const T& object, const std::string& at);

  Problems found;

 private:
  struct Limits;

  void blame(std::string pointer, Wording what, Wording fix) {
    found.push_back({"", 0, std::move(pointer), std::move(what), std::move(fix)});
  }
  [[nodiscard]] bool readable(const std::string& at,
                              std::initializer_list<const char*> keys) const {
    return std::none_of(keys.begin(), keys.end(),
                        [&](const char* key) { return m_unread.touches(at + "/" + key); });
  }

  template <class T>
  void rules(const T&, const std::string&) {}
  void rules(const Section& section, const std::string& at);
  void rules(const Weighed& weighed, const std::string& at) { dateRule(weighed.on, at); }
  void rules(const Timed& timed, const std::string& at) { dateRule(timed.on, at); }
  void rules(const CurrentFit& fit, const std::string& at) { dateRule(fit.on, at); }
  void rules(const Part& part, const std::string& at);
  void rules(const Rod::Windows& windows, const std::string& at);
  void rules(const Rod& rod, const std::string& at);
  void rules(const Rig& rig, const std::string& at);
  void rules(const Shelf& shelf, const std::string& at);
  void rules(const Pool& pool, const std::string& at);
  void rules(const Spool& spool, const std::string& at);
  void rules(const Card& card, const std::string& at);

  void dateRule(const std::optional<std::string>& on, const std::string& at);
  void flyRules(const Part& part, const std::string& at);
  void lineRules(const Part& part, const std::string& at);
  void styleRule(const Part& part, const std::string& at);
  void orderRules(const Rig& rig, const std::string& at);
  template <class Range>
  void inOrder(const std::optional<Range>& range, const Wording& what, const std::string& at);
  void rigName(const std::optional<CardRig>& rig, const std::string& at);

  const Unread& m_unread;
};

/// Visits the members of one object and holds each against its limit.
struct Checker::Limits {
  Checker& all;
  const Kept& kept;
  const std::string& at;

  void test(const std::string& key, double value, const Limit& limit) {
    if (limit.holds(value)) return;
    std::string pointer = at + "/" + key;
    if (all.m_unread.covers(pointer)) return;
    auto wrong = breach(limit, value, digitsOf(kept, key));
    all.blame(std::move(pointer), std::move(wrong->what), std::move(wrong->fix));
  }
  template <class Q>
  void number(const char* key, const Q& value, const Limit& limit, bool = true) {
    test(key, bare(value), limit);
  }
  template <class Q>
  void number(const char* key, const std::optional<Q>& value, const Limit& limit) {
    if (value) test(key, bare(*value), limit);
  }
  void whole(const char* key, const std::optional<int>& value, const Limit& limit) {
    if (value) test(key, *value, limit);
  }
  template <class Q>
  void along(const char* key, const std::optional<Along<Q>>& value, const Limit& limit) {
    if (!value) return;
    if (!value->pair) return test(key, bare(value->rodEnd), limit);
    test(std::string(key) + "/0", bare(value->rodEnd), limit);
    test(std::string(key) + "/1", bare(value->flyEnd), limit);
  }
  template <class R>
  void range(const char* key, const std::optional<R>& value, const Limit& limit) {
    if (!value) return;
    test(std::string(key) + "/0", bare(value->low), limit);
    test(std::string(key) + "/1", bare(value->high), limit);
  }
  void text(const char* key, const std::string& value) {
    if (value.size() <= limits::kStringChars && !firstBadUtf8(value)) return;
    if (firstBadUtf8(value)) {
      all.blame(at + "/" + key, Problem::tr("%1 is not UTF-8 text").arg(key), Problem::tr("save it as UTF-8"));
    } else if (codePoints(value) > limits::kStringChars) {
      all.blame(at + "/" + key,
                Problem::tr("%1 has %2 characters").arg(key).arg(codePoints(value)),
                Problem::tr("keep it to %1").arg(limits::kStringChars));
    }
  }
  void text(const char* key, const std::optional<std::string>& value) {
    if (value) text(key, *value);
  }
  void flag(const char*, const std::optional<bool>&) {}
  template <class E, class Allowed>
  void choice(const char*, const E&, const Allowed&) {}
  template <class T>
  void object(const char* key, const std::optional<T>& value, Layout) {
    if (value) all.value(*value, at + "/" + key);
  }
  template <class T>
  void list(const char* key, const std::vector<T>& values, Layout, bool) {
    const std::string pointer = at + "/" + key;
    for (std::size_t i = 0; i < values.size(); ++i) all.value(values[i], item(pointer, i));
  }
  void cardRig(const char* key, const std::optional<CardRig>& rig) {
    if (!rig) return;
    if (const auto* whole = std::get_if<Rig>(&*rig)) return all.value(*whole, at + "/" + key);
    text(key, std::get<std::string>(*rig));
  }
  void fly(const Part& part) {
    if (part.fly) describeFly(*this, *part.fly, true);
  }
};

template <class T>
void Checker::value(const T& object, const std::string& at) {
  Limits visitor{*this, object.kept, at};
  describeFields(visitor, object);
  rules(object, at);
}

Wording onePair() {
  return Problem::tr(
      "give one of these pairs: gr_per_ft with diameter_in, density_g_cm3, sink_in_per_s or "
      "\"floats\": true; or diameter_in with density_g_cm3 or material");
}

void Checker::rules(const Section& s, const std::string& at) {
  if (!readable(at, {"gr_per_ft", "diameter_in", "density_g_cm3", "sink_in_per_s", "floats",
                     "material"})) {
    return;
  }
  const bool byMass = s.mass && (s.diameter || s.density || s.sinkRate || s.floats == true);
  const bool byDiameter = s.diameter && (s.density || s.material);
  if (byMass || byDiameter) return;
  if (s.mass) {
    blame(at, Problem::tr("%1 alone does not fix this section").arg("gr_per_ft"),
          Problem::tr("add diameter_in, density_g_cm3, sink_in_per_s or \"floats\": true"));
  } else if (s.diameter) {
    blame(at, Problem::tr("%1 alone does not fix this section").arg("diameter_in"),
          Problem::tr("add density_g_cm3, material or gr_per_ft"));
  } else if (s.density || s.sinkRate || s.floats || s.material) {
    blame(at, Problem::tr("this section has neither gr_per_ft nor diameter_in"),
          onePair());
  } else {
    blame(at, Problem::tr("of this section only the length is known"),
          onePair());
  }
}

void Checker::dateRule(const std::optional<std::string>& on, const std::string& at) {
  if (!on || isDate(*on) || m_unread.touches(at + "/on")) return;
  blame(at + "/on", Problem::tr("\"%1\" is no date").arg(excerpt(*on, 20)),
        Problem::tr("write an ISO 8601 date, year-month-day, as in 2026-03-02"));
}

void Checker::styleRule(const Part& part, const std::string& at) {
  const auto& allowed = stylesOf(part.kind);
  if (!part.style || std::find(allowed.begin(), allowed.end(), *part.style) != allowed.end())
    return;
  const std::string names = fileNames(allowed);
  blame(at + "/style", Problem::tr("%1 has no style \"%2\"").arg(aKind(part.kind)).arg(fileName(*part.style)),
        names.empty() ? Problem::tr("leave style out")
                      : Problem::tr("leave style out, or give one of these: %1").arg(names));
}

void Checker::flyRules(const Part& part, const std::string& at) {
  if (!part.fly && !m_unread.touches(at + "/dry_gr")) {
    blame(at + "/dry_gr", Problem::tr("%1 is missing").arg("dry_gr"),
          Problem::tr("give the fly's dry mass in grains, 0 when it is not known"));
  }
  const Fly fly = part.fly.value_or(Fly{});
  if (fly.wet && *fly.wet < fly.dry && readable(at, {"dry_gr", "wet_gr"})) {
    blame(at + "/wet_gr",
          Problem::tr("wet_gr %1 is less than dry_gr %2").arg(fly.wet->value()).arg(fly.dry.value()),
          Problem::tr("a wet fly weighs at least what the dry one does; give both in grains"));
  }
  const auto refuse = [&](bool there, const char* key, const Wording& fix) {
    if (there) blame(at + "/" + key, Problem::tr("%1 has no %2").arg(aKind(PartKind::fly)).arg(key), fix);
  };
  refuse(part.label.has_value(), "label_gr", Problem::tr("give dry_gr and wet_gr"));
  refuse(!part.sections.empty(), "sections", Problem::tr("take them out; a fly is a point"));
  refuse(part.loops.has_value(), "loops", Problem::tr("take them out"));
  refuse(part.weighed.has_value(), "weighed", Problem::tr("give dry_gr and wet_gr"));
}

void Checker::lineRules(const Part& part, const std::string& at) {
  const std::string sections = at + "/sections";
  if (!m_unread.covers(sections)) {
    const Wording range = Problem::tr("give 1 to %1 sections").arg(limits::kSections);
    if (part.sections.empty()) blame(sections, Problem::tr("%1 needs sections").arg(aKind(part.kind)), range);
    if (part.sections.size() > limits::kSections) {
      blame(sections, Problem::tr("%1 sections are too many").arg(part.sections.size()), range);
    }
  }
  if (!part.fly) return;
  const Fly& fly = *part.fly;
  const std::array<bool, 6> there{fly.dry != Grains(0),           fly.wet.has_value(),
                                  fly.dragArea.has_value(),       fly.density.has_value(),
                                  fly.sinksHeadFirst.has_value(), fly.hook.has_value()};
  const auto first = std::find(there.begin(), there.end(), true);
  const auto index = first == there.end() ? 0 : static_cast<std::size_t>(first - there.begin());
  blame(at + "/" + kFlyKeys[index], Problem::tr("%1 has no %2").arg(aKind(part.kind)).arg(kFlyKeys[index]),
        Problem::tr("take it out, or make the part a fly"));
}

void Checker::rules(const Part& part, const std::string& at) {
  if (!m_unread.touches(at + "/kind")) {
    if (!m_unread.touches(at + "/style")) styleRule(part, at);
    part.kind == PartKind::fly ? flyRules(part, at) : lineRules(part, at);
  }
  if (part.weighed && limits::kWeighed.holds(part.weighed->mass.value()) &&
      readable(at, {"weighed/mass_gr", "loops"}) && !(part.weighed->mass > part.loopMass())) {
    blame(at + "/weighed/mass_gr",
          Problem::tr("the part weighs %1 gr with its loops, but the loops alone %2 gr")
              .arg(part.weighed->mass.value())
              .arg(part.loopMass().value()),
          Problem::tr("the weighed mass must be more than that of the loops"));
  }
}

template <class Range>
void Checker::inOrder(const std::optional<Range>& range, const Wording& what, const std::string& at) {
  if (!range || !(range->high < range->low) || m_unread.touches(at)) return;
  blame(at,
        Problem::tr("%1 runs from %2 down to %3").arg(what).arg(range->low.value()).arg(range->high.value()),
        Problem::tr("give the smaller number first"));
}

void Checker::rules(const Rod::Windows& windows, const std::string& at) {
  inOrder(windows.shortHead, Problem::tr("the grain window"), at + "/short");
  inOrder(windows.fine, Problem::tr("the grain window"), at + "/fine");
  inOrder(windows.longBelly, Problem::tr("the grain window"), at + "/long-belly");
  inOrder(windows.singleHand, Problem::tr("the grain window"), at + "/single-hand");
}

void Checker::rules(const Rod& rod, const std::string& at) {
  inOrder(rod.window, Problem::tr("the grain window"), at + "/window_gr");
}

void Checker::orderRules(const Rig& rig, const std::string& at) {
  std::optional<PartKind> farthest;
  std::unordered_map<int, int> count;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const std::string pointer = item(at + "/parts", i) + "/kind";
    if (m_unread.touches(pointer)) continue;
    const PartKind kind = rig.parts[i].kind;
    const int nth = ++count[static_cast<int>(kind)];
    const bool single = kind == PartKind::runningLine || kind == PartKind::fly;
    if (single && nth > 1) {
      blame(pointer,
            kind == PartKind::fly ? Problem::tr("a rig has one fly, this is another")
                                  : Problem::tr("a rig has one running line, this is another"),
            Problem::tr("take it out"));
    } else if (farthest && kind < *farthest) {
      blame(pointer, Problem::tr("%1 stands after %2").arg(aKind(kind)).arg(aKind(*farthest)),
            Problem::tr("put the parts in order from rod to fly: %1")
                .arg("running-line, head, tip, leader, tippet, fly"));
    }
    if (kind == PartKind::head && nth > limits::kHeadPieces) {
      blame(pointer, Problem::tr("this is head piece number %1").arg(nth),
            Problem::tr("a head has up to %1 pieces").arg(limits::kHeadPieces));
    }
    farthest = std::max(farthest.value_or(kind), kind);
  }
}

void Checker::rules(const Rig& rig, const std::string& at) {
  if (!m_unread.covers(at + "/parts")) {
    const Wording range = Problem::tr("give 1 to %1 parts").arg(limits::kParts);
    if (rig.parts.empty()) blame(at + "/parts", Problem::tr("a rig needs parts"), range);
    if (rig.parts.size() > limits::kParts) {
      blame(at + "/parts", Problem::tr("%1 parts are too many").arg(rig.parts.size()), range);
    }
  }
  orderRules(rig, at);
}

void Checker::rules(const Shelf& shelf, const std::string& at) {
  std::unordered_map<std::string, std::size_t> ids;
  for (std::size_t i = 0; i < shelf.parts.size(); ++i) {
    const Part& part = shelf.parts[i];
    const std::string pointer = item(at + "/parts", i);
    if (!m_unread.touches(pointer + "/id")) {
      if (!part.id || part.id->empty()) {
        blame(pointer + "/id", (part.id ? Problem::tr("%1 is empty") : Problem::tr("%1 is missing")).arg("id"),
              Problem::tr("give each part of a shelf an id of its own, as text"));
      } else if (const auto [first, fresh] = ids.emplace(*part.id, i); !fresh) {
        blame(pointer + "/id",
              Problem::tr("id \"%1\" is taken by part %2 already").arg(excerpt(*part.id, 60)).arg(first->second),
              Problem::tr("give each part of a shelf an id of its own, as text"));
      }
    }
    if (!part.group && !m_unread.touches(pointer + "/group")) {
      blame(pointer + "/group", Problem::tr("%1 is missing").arg("group"),
            Problem::tr("give the heading it stands under, as text"));
    }
  }
}

void Checker::rules(const Pool& pool, const std::string& at) {
  inOrder(pool.clearance, "clearance_ft", at + "/clearance_ft");
  inOrder(pool.wantedDepth, "wanted_depth_ft", at + "/wanted_depth_ft");
  if (pool.clearance && pool.wantedDepth && readable(at, {"clearance_ft", "wanted_depth_ft"})) {
    blame(at + "/wanted_depth_ft",
          Problem::tr("clearance_ft and wanted_depth_ft both say where the fly is wanted"),
          Problem::tr("keep one of the two"));
  }
}

void Checker::rules(const Spool& spool, const std::string& at) {
  if (!readable(at, {"gr_per_ft", "diameter_in", "material", "floats", "sink_in_per_s"})) return;
  if (!spool.mass && !spool.diameter) {
    blame(at, Problem::tr("this spool has neither gr_per_ft nor diameter_in"), Problem::tr("give one of the two"));
  } else if (!spool.mass && !spool.material) {
    blame(at, Problem::tr("diameter_in alone does not say what the line weighs"),
          Problem::tr("add material or gr_per_ft"));
  } else if (!spool.material && !spool.floats && !spool.sinkRate) {
    blame(at, Problem::tr("this spool does not say what its line does in water"),
          Problem::tr("add material, floats or sink_in_per_s"));
  }
  if (spool.floats == true && spool.sinkRate) {
    blame(at + "/sink_in_per_s", Problem::tr("floats is true, but sink_in_per_s says that it sinks"),
          Problem::tr("leave one of the two out"));
  }
}

void Checker::rigName(const std::optional<CardRig>& rig, const std::string& at) {
  const auto* name = rig ? std::get_if<std::string>(&*rig) : nullptr;
  if (!name || m_unread.touches(at)) return;
  if (staysInFolder(*name)) return;
  blame(
      at,
      name->empty() ? Problem::tr("the name of the rig file is empty")
                    : Problem::tr("this name does not stay in the deck's own folder"),
      Problem::tr("name a rig file from the deck's own folder on, with / between folders, or put the rig here"));
}

void Checker::rules(const Card& card, const std::string& at) {
  rigName(card.rig, at + "/rig");
  rigName(card.rigB, at + "/rig_b");
  const auto most = [&](std::size_t count, const std::string& key) {
    if (m_unread.covers(at + key) || count <= kMostOnCard) return;
    blame(at + key, Problem::tr("%1 are too many for a card").arg(count), Problem::tr("give up to %1").arg(kMostOnCard));
  };
  most(card.parts.size(), "/parts");
  most(card.pools.size(), "/pools");
}

template <class T>
Problems checkValue(const T& value, const std::string& at, const Unread& unread) {
  Checker checker(unread);
  checker.value(value, at);
  if (checker.found.size() > 1) sortInFileOrder(checker.found, value, at);
  return std::move(checker.found);
}

}  // namespace

Problems check(const Rig& rig, const std::string& at, const Unread& unread) {
  return checkValue(rig, at, unread);
}
Problems check(const Part& part, const std::string& at, const Unread& unread) {
  return checkValue(part, at, unread);
}
Problems check(const Shelf& shelf, const Unread& unread) {
  return checkValue(shelf, "", unread);
}
Problems check(const Pools& pools, const Unread& unread) {
  return checkValue(pools, "", unread);
}
Problems check(const Spools& spools, const Unread& unread) {
  return checkValue(spools, "", unread);
}
Problems check(const Deck& deck, const Unread& unread) {
  return checkValue(deck, "", unread);
}

}  // namespace grainwise
