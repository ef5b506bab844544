// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/json.h"

#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/material/sink_rate.h"
#include "core/report/water_state.h"
#include "core/report/words.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

using Json = nlohmann::ordered_json;

/// The one way a number enters the report: what is not finite is left out.
void put(Json& object, const char* key, double value) {
  if (std::isfinite(value)) object[key] = value;
}

void put(Json& object, const char* key, const std::optional<double>& value) {
  if (value) put(object, key, *value);
}

template <class Tag>
void put(Json& object, const char* key, Quantity<Tag> value) {
  put(object, key, value.value());
}

template <class Tag>
void put(Json& object, const char* key, const std::optional<Quantity<Tag>>& value) {
  if (value) put(object, key, value->value());
}

void putPair(Json& object, const char* key, double first, double second) {
  if (std::isfinite(first) && std::isfinite(second)) object[key] = Json::array({first, second});
}

template <class Verdict>
void putWords(Json& object, const char* key, const std::optional<Verdict>& verdict) {
  if (verdict) object[key] = words::of(*verdict);
}

/// Everything that a block is made from; each block returns null when there is nothing to say.
struct Source {
  const Rig& rig;
  const Analysis& analysis;
  const HeavyRuns& heavy;
};

Json objectOrNull(const Json& object) { return object.empty() ? Json() : object; }

Json totals(const Source& from) {
  const Totals& sum = from.analysis.totals;
  Json block = Json::object();
  put(block, "length_ft", sum.length);
  put(block, "mass_gr", sum.mass);
  put(block, "head_gr", sum.head);
  put(block, "head_and_tip_gr", sum.headAndTip);
  put(block, "first_30_ft_gr", sum.first30ft);
  put(block, "center_of_mass_ft", sum.centreOfMass.feet());
  return block;
}

Json parts(const Source& from) {
  const MassProfile& profile = from.analysis.profile;
  Json list = Json::array();
  auto span = profile.spans.begin();
  for (std::size_t i = 0; i < from.rig.parts.size(); ++i) {
    const Part& part = from.rig.parts[i];
    const PartPlace& place = profile.places[i];
    Json entry = Json::object();
    entry["kind"] = fileName(part.kind);
    entry["name"] = words::nameOf(part);
    put(entry, "start_ft", place.from.feet());
    put(entry, "length_ft", place.to - place.from);
    put(entry, "mass_gr", place.mass());
    if (span != profile.spans.end() && span->part == i) {
      put(entry, "rod_end_gr_per_ft", span->properties.mass.rodEnd);
      while (span != profile.spans.end() && span->part == i) ++span;
      put(entry, "fly_end_gr_per_ft", std::prev(span)->properties.mass.flyEnd);
      put(entry, "scaled_by", place.scaledBy);
    }
    list.push_back(std::move(entry));
  }
  return list;
}

Json profileBlock(const Source& from) {
  Json list = Json::array();
  for (const ProfileRow& row : from.analysis.rows) {
    Json entry = Json::object();
    put(entry, "at_ft", row.at.feet());
    put(entry, "gr_per_ft", row.mass);
    put(entry, "cumulative_gr", row.soFar);
    list.push_back(std::move(entry));
  }
  return list;
}

Json junctionsBlock(const Source& from) {
  Json list = Json::array();
  for (const Junction& j : from.analysis.junctions) {
    Json entry = Json::object();
    put(entry, "at_ft", j.at.feet());
    entry["rod_side"] = words::nameOf(from.rig.parts[j.rodSide]);
    entry["fly_side"] = words::nameOf(from.rig.parts[j.flySide]);
    put(entry, "rod_side_gr_per_ft", j.rodSideMass);
    put(entry, "fly_side_gr_per_ft", j.flySideMass);
    put(entry, "ratio", j.ratio);
    put(entry, "ratio_3ft", j.ratio3ft);
    entry["verdict"] = words::of(j.verdict);
    list.push_back(std::move(entry));
  }
  return list;
}

Json rodBlock(const Source& from) {
  const RodFit& rod = from.analysis.rod;
  Json block = Json::object();
  if (rod.window) {
    putPair(block, "window_gr", rod.window->low.value(), rod.window->high.value());
  }
  putWords(block, "head_verdict", rod.headVerdict);
  put(block, "working_length_ft", rod.workingLength);
  put(block, "length_ratio", rod.lengthRatio);
  putWords(block, "length_verdict", rod.lengthVerdict);
  return objectOrNull(block);
}

Json gripBlock(const Source& from) {
  const Grip& grip = from.analysis.grip;
  Json block = Json::object();
  put(block, "tip_share", grip.tipShare);
  putWords(block, "tip_share_verdict", grip.tipShareVerdict);
  put(block, "anchor_ratio", grip.anchorRatio);
  putWords(block, "anchor_verdict", grip.anchorVerdict);
  put(block, "sinking_gr", grip.sinking);
  put(block, "table_gr_per_ft", grip.table);
  return block;
}

Json flyBlock(const Source& from) {
  const FlyFit& fly = from.analysis.fly;
  Json block = Json::object();
  put(block, "tip_to_fly", fly.tipToFly);
  putWords(block, "tip_to_fly_verdict", fly.tipToFlyVerdict);
  put(block, "leader_to_fly", fly.leaderToFly);
  putWords(block, "leader_to_fly_verdict", fly.leaderToFlyVerdict);
  put(block, "feet_of_tip", fly.feetOfTip);
  return objectOrNull(block);
}

void putRange(Json& object, const char* key, const TurnoverRange& range) {
  putPair(object, key, range.low, range.high);
}

Json turnoverBlock(const Source& from) {
  if (!from.analysis.turnover) return {};
  const Turnover& t = *from.analysis.turnover;
  Json block = Json::object();
  put(block, "reserve", t.reserve);
  block["reserve_verdict"] = words::of(t.reserveVerdict);
  putRange(block, "reserve_range", t.reserveRange);
  if (t.drive) {
    put(block, "drive", *t.drive);
    block["drive_at"] = words::placeOfDrive(from.rig, t);
    putWords(block, "drive_verdict", t.driveVerdict);
    putRange(block, "drive_range", t.driveRange);
  }
  put(block, "coast_ft", t.coast);
  put(block, "pace", t.pace);
  block["pace_verdict"] = words::of(t.paceVerdict);
  putRange(block, "pace_range", t.paceRange);
  put(block, "fly_speed_m_per_s", si::m_per_s(t.flySpeed));
  if (t.arrives) {
    put(block, "time_s", t.time);
    put(block, "end_height_m", si::m(t.endHeight));
  }
  if (t.leastLineSpeed) put(block, "least_line_speed_m_per_s", si::m_per_s(*t.leastLineSpeed));
  put(block, "nylon_keep", t.nylonKeep);
  block["sentence"] = words::turnoverSentence(from.rig, from.analysis);
  return block;
}

Json castBlock(const Source& from) {
  const auto& cast = from.heavy.cast;
  if (!cast || cast->stop != CastStop::turnedOver) return {};
  Json block = Json::object();
  put(block, "time_s", cast->time);
  put(block, "fly_speed_m_per_s", si::m_per_s(cast->flySpeed));
  put(block, "end_height_m", si::m(cast->endHeight));
  return block;
}

Json sectionsBlock(const Source& from) {
  const WaterState water = waterOf(from.rig);
  Json list = Json::array();
  for (const ProfileSpan& span : from.analysis.profile.spans) {
    const SectionProperties& is = span.properties;
    Json entry = Json::object();
    entry["part"] = span.part;
    entry["section"] = span.section;
    putPair(entry, "diameter_in", is.diameterRodEnd.value(), is.diameterFlyEnd.value());
    putPair(entry, "density_g_cm3", is.densityRodEnd.value(), is.densityFlyEnd.value());
    putPair(entry, "sink_in_per_s", sinkRate(is.mass.rodEnd, is.diameterRodEnd, water).value(),
            sinkRate(is.mass.flyEnd, is.diameterFlyEnd, water).value());
    list.push_back(std::move(entry));
  }
  return list;
}

Json depthBlock(const Source& from) {
  const auto& hang = from.analysis.hang;
  const auto& live = from.analysis.depthBand;
  if (!hang || !live) return Json();
  const bool real = from.heavy.band && from.heavy.band->band;
  const DepthBand& band = real ? *from.heavy.band->band : *live;
  Json block = Json::object();
  put(block, "hang_down_ft", hang->fly);
  put(block, "junction_ft", hang->junction);
  put(block, "surfaces_ft_from_fly", hang->surfacesFromFly);
  block["on_bottom"] = isOnBottom(hang->state);
  block["state"] = words::of(hang->state);
  block["held_by_rod"] = hang->heldByRod;
  put(block, "swing_ft", live->middle);
  put(block, "swing_low_ft", band.low);
  put(block, "swing_high_ft", band.high);
  Json shape = Json::array();
  for (const HangPoint& p : hang->shape) {
    shape.push_back(Json::array({p.fromFly.value(), p.depth.value()}));
  }
  block["shape"] = std::move(shape);
  return block;
}

Json swingBlock(const Source& from) {
  const auto& swing = from.heavy.swing;
  if (!swing || !swing->ran()) return Json();
  Json block = Json::object();
  put(block, "after_mend_ft", swing->afterMend);
  put(block, "deepest_ft", swing->deepest);
  put(block, "swing_ft", swing->swing);
  put(block, "hang_down_ft", swing->hangDown);
  put(block, "to_10_deg_s", swing->timeTo10deg);
  put(block, "bottom_share", swing->bottomShare);
  return block;
}

Json warningsBlock(const Source& from) {
  Json list = Json::array();
  for (const Warning& warning : from.analysis.warnings) {
    list.push_back(words::nameOf(from.rig.parts[warning.part]) + ": " + warning.what.text());
  }
  return list.empty() ? Json() : list;
}

Json missingBlock(const Source& from) {
  Json list = Json::array();
  for (const std::string& line : words::missing(from.analysis, from.heavy)) list.push_back(line);
  return list;
}

Json cautionsBlock(const Source& from) { return words::cautions(from.rig, from.analysis); }

/// The report's blocks in their order.
struct Block {
  const char* key;
  Json (*make)(const Source&);
};
constexpr std::array<Block, 15> kBlocks{{{"totals", totals},
                                         {"parts", parts},
                                         {"profile", profileBlock},
                                         {"junctions", junctionsBlock},
                                         {"rod", rodBlock},
                                         {"grip", gripBlock},
                                         {"fly", flyBlock},
                                         {"turnover", turnoverBlock},
                                         {"sections", sectionsBlock},
                                         {"depth", depthBlock},
                                         {"cast", castBlock},
                                         {"swing", swingBlock},
                                         {"warnings", warningsBlock},
                                         {"missing", missingBlock},
                                         {"cautions", cautionsBlock}}};

}  // namespace

std::string reportJson(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy) {
  Json report = Json::object();
  report["format"] = "grainwise-report";
  report["version"] = 1;
  report["name"] = rig.name;
  const Source from{rig, analysis, heavy};
  for (const Block& block : kBlocks) {
    Json made = block.make(from);
    if (!made.is_null()) report[block.key] = std::move(made);
  }
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace grainwise
