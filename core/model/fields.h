// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <concepts>
#include <string>
#include <type_traits>
#include <vector>

#include "core/model/deck.h"
#include "core/model/limits.h"
#include "core/model/pool.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "core/model/spool.h"

/// The members of every object in our files, said once: key, place in the value, limit, order of
/// writing. `describeFields(visitor, object)` calls the visitor once a member; reader, writer and
/// check are such visitors, so that they cannot drift apart. A visitor has
///
///   number(key, quantity, limit, required = true)   number(key, optional quantity, limit)
///   whole(key, optional int, limit)                 along(key, optional Along, limit)
///   range(key, optional low/high pair, limit)       text(key, string)   text(key, optional string)
///   flag(key, optional bool)                        choice(key, value or optional, allowed)
///   object(key, optional object, layout)            list(key, vector, layout, required)
///   cardRig(key, optional CardRig)                  fly(part)
///
/// A member that is not optional in the value is required in the file.
namespace grainwise {

/// How an object is written: its members on lines of their own, or all in one line.
enum class Layout { block, line };

template <class T, class Plain>
concept Is = std::same_as<std::remove_const_t<T>, Plain>;

/// The names that a file may hold for one of these: "a, b, c".
template <class E>
std::string fileNames(const std::vector<E>& all) {
  std::string names;
  for (const E& e : all) names += (names.empty() ? "" : ", ") + std::string(fileName(e));
  return names;
}

/// What a file of a type says as its `"format"`, and what the user calls such a file.
template <class T>
struct FormatOf;
template <>
struct FormatOf<Rig> {
  static constexpr const char* kName = "grainwise-rig";
  static constexpr const char* kWord = "a rig";
};
template <>
struct FormatOf<Shelf> {
  static constexpr const char* kName = "grainwise-shelf";
  static constexpr const char* kWord = "a shelf";
};
template <>
struct FormatOf<Pools> {
  static constexpr const char* kName = "grainwise-pools";
  static constexpr const char* kWord = "a list of pools";
};
template <>
struct FormatOf<Spools> {
  static constexpr const char* kName = "grainwise-spools";
  static constexpr const char* kWord = "a list of spools";
};
template <>
struct FormatOf<Deck> {
  static constexpr const char* kName = "grainwise-deck";
  static constexpr const char* kWord = "a deck";
};
inline constexpr int kFormatVersion = 1;

inline const std::vector<PartKind>& allKinds() {
  static const std::vector<PartKind> all{PartKind::runningLine, PartKind::head,   PartKind::tip,
                                         PartKind::leader,      PartKind::tippet, PartKind::fly};
  return all;
}
inline const std::vector<Material>& allMaterials() {
  static const std::vector<Material> all{Material::nylon, Material::fluorocarbon};
  return all;
}
inline const std::vector<CardShow>& allShows() {
  static const std::vector<CardShow> all{CardShow::strip, CardShow::profile, CardShow::cast,
                                         CardShow::river, CardShow::compare, CardShow::flies,
                                         CardShow::pools, CardShow::tips,    CardShow::text};
  return all;
}
inline const std::vector<CardFigure>& allFigures() {
  static const std::vector<CardFigure> all{
      CardFigure::none,       CardFigure::fly,           CardFigure::foot,    CardFigure::joint,
      CardFigure::tipShare,   CardFigure::flyAgainstTip, CardFigure::head,    CardFigure::line,
      CardFigure::range,      CardFigure::drift,         CardFigure::deepest, CardFigure::across,
      CardFigure::underWater};
  return all;
}

inline std::optional<PartKind> fromFile(const std::string& name, const PartKind*) {
  return partKindFromFile(name);
}
inline std::optional<Style> fromFile(const std::string& name, const Style*) {
  return styleFromFile(name);
}
inline std::optional<Material> fromFile(const std::string& name, const Material*) {
  return materialFromFile(name);
}
inline std::optional<Bed> fromFile(const std::string& name, const Bed*) {
  return bedFromFile(name);
}
inline std::optional<CardShow> fromFile(const std::string& name, const CardShow*) {
  return cardShowFromFile(name);
}
inline std::optional<CardFigure> fromFile(const std::string& name, const CardFigure*) {
  return cardFigureFromFile(name);
}

/// The bare number of a quantity or a number.
inline double bare(double value) {
  return value;
}
template <class Tag>
double bare(Quantity<Tag> value) {
  return value.value();
}

template <class V, Is<Timed> T>
void describeFields(V& v, T& timed) {
  v.number("in_per_s", timed.rate, limits::kSinkRate);
  v.number("plus_minus_in_per_s", timed.plusMinus, limits::kRateOff);
  v.along("rated_in_per_s", timed.rated, limits::kSinkRate);
  v.text("on", timed.on);
}

template <class V, Is<CurrentFit> T>
void describeFields(V& v, T& fit) {
  v.number("ft_per_s", fit.speed, limits::kSurfaceSpeed);
  v.number("plus_minus_ft_per_s", fit.plusMinus, limits::kSpeedOff);
  v.number("stated_ft_per_s", fit.stated, limits::kSurfaceSpeed);
  v.number("fly_depth_ft", fit.flyDepth, limits::kFlyDepth);
  v.text("on", fit.on);
}

template <class V, Is<Section> T>
void describeFields(V& v, T& section) {
  v.number("length_ft", section.length, limits::kLength);
  v.along("gr_per_ft", section.mass, limits::kGrainsPerFoot);
  v.along("diameter_in", section.diameter, limits::kDiameter);
  v.number("density_g_cm3", section.density, limits::kDensity);
  v.along("sink_in_per_s", section.sinkRate, limits::kSinkRate);
  v.flag("floats", section.floats);
  v.choice("material", section.material, allMaterials());
  v.object("timed", section.timed, Layout::line);
}

template <class V, Is<Loops> T>
void describeFields(V& v, T& loops) {
  v.number("rod_end_gr", loops.rodEnd, limits::kLoop);
  v.number("fly_end_gr", loops.flyEnd, limits::kLoop);
}

template <class V, Is<Weighed> T>
void describeFields(V& v, T& weighed) {
  v.number("mass_gr", weighed.mass, limits::kWeighed);
  v.text("on", weighed.on);
}

/// The members that only a fly has; they stand in the part's own object.
inline constexpr std::array<const char*, 6> kFlyKeys{
    "dry_gr", "wet_gr", "drag_area_cm2", "density_g_cm3", "sinks_head_first", "hook"};
template <class V, Is<Fly> T>
void describeFly(V& v, T& fly, bool required) {
  v.number(kFlyKeys[0], fly.dry, limits::kFlyMass, required);
  v.number(kFlyKeys[1], fly.wet, limits::kFlyMass);
  v.number(kFlyKeys[2], fly.dragArea, limits::kDragArea);
  v.number(kFlyKeys[3], fly.density, limits::kDensity);
  v.flag(kFlyKeys[4], fly.sinksHeadFirst);
  v.text(kFlyKeys[5], fly.hook);
}

template <class V, Is<Part> T>
void describeFields(V& v, T& part) {
  v.text("id", part.id);
  v.text("group", part.group);
  v.choice("kind", part.kind, allKinds());
  v.choice("style", part.style, stylesOf(part.kind));
  v.text("name", part.name);
  v.number("label_gr", part.label, limits::kLabel);
  v.fly(part);
  v.list("sections", part.sections, Layout::line, false);
  v.object("loops", part.loops, Layout::line);
  v.object("weighed", part.weighed, Layout::line);
}

template <class V, Is<Rod::Windows> T>
void describeFields(V& v, T& windows) {
  v.range("short", windows.shortHead, limits::kWindow);
  v.range("fine", windows.fine, limits::kWindow);
  v.range("long-belly", windows.longBelly, limits::kWindow);
  v.range("single-hand", windows.singleHand, limits::kWindow);
}

template <class V, Is<Rod> T>
void describeFields(V& v, T& rod) {
  v.number("length_ft", rod.length, limits::kRodLength);
  v.number("line_number", rod.lineNumber, limits::kLineNumber);
  v.whole("hands", rod.hands, limits::kHands);
  v.object("windows_gr", rod.windows, Layout::line);
  v.range("window_gr", rod.window, limits::kWindow);
}

template <class V, Is<Water> T>
void describeFields(V& v, T& water) {
  v.text("name", water.name);
  v.number("surface_ft_per_s", water.surfaceSpeed, limits::kSurfaceSpeed);
  v.number("depth_ft", water.depth, limits::kDepth);
  v.number("temperature_c", water.temperature, limits::kTemperature);
  v.number("salinity_g_per_kg", water.salinity, limits::kSalinity);
  v.choice("bed", water.bed, allBeds());
  v.object("measured", water.measured, Layout::line);
}

template <class V, Is<Cast> T>
void describeFields(V& v, T& cast) {
  v.number("line_speed_ft_per_s", cast.lineSpeed, limits::kLineSpeed);
  v.number("loop_ft", cast.loop, limits::kCastLoop);
  v.number("launch_deg", cast.launch, limits::kLaunch);
  v.number("rod_tip_ft", cast.rodTip, limits::kRodTip);
  v.number("overhang_ft", cast.overhang, limits::kOverhang);
  v.number("air_altitude_ft", cast.airAltitude, limits::kAirAltitude);
}

template <class V, Is<Swing> T>
void describeFields(V& v, T& swing) {
  v.number("line_out_ft", swing.lineOut, limits::kLineOut);
  v.number("angle_deg", swing.angle, limits::kAngle);
  v.number("mend_s", swing.mend, limits::kMend);
}

template <class V, Is<Rig> T>
void describeFields(V& v, T& rig) {
  v.text("name", rig.name);
  v.text("notes", rig.notes);
  v.object("rod", rig.rod, Layout::block);
  v.list("parts", rig.parts, Layout::block, true);
  v.object("water", rig.water, Layout::line);
  v.object("cast", rig.cast, Layout::line);
  v.object("swing", rig.swing, Layout::line);
}

template <class V, Is<Shelf> T>
void describeFields(V& v, T& shelf) {
  v.list("parts", shelf.parts, Layout::block, true);
}

template <class V, Is<Pool> T>
void describeFields(V& v, T& pool) {
  v.text("name", pool.name);
  v.number("surface_ft_per_s", pool.surfaceSpeed, limits::kSurfaceSpeed);
  v.number("depth_ft", pool.depth, limits::kDepth);
  v.number("temperature_c", pool.temperature, limits::kTemperature);
  v.number("salinity_g_per_kg", pool.salinity, limits::kSalinity);
  v.choice("bed", pool.bed, allBeds());
  v.number("angle_deg", pool.angle, limits::kAngle);
  v.number("mend_s", pool.mend, limits::kMend);
  v.range("clearance_ft", pool.clearance, limits::kClearance);
  v.range("wanted_depth_ft", pool.wantedDepth, limits::kWantedDepth);
  v.text("note", pool.note);
  v.object("measured", pool.measured, Layout::line);
}

template <class V, Is<Pools> T>
void describeFields(V& v, T& pools) {
  v.list("pools", pools.pools, Layout::block, true);
}

template <class V, Is<Spool> T>
void describeFields(V& v, T& spool) {
  v.text("name", spool.name);
  v.number("gr_per_ft", spool.mass, limits::kGrainsPerFoot);
  v.number("diameter_in", spool.diameter, limits::kDiameter);
  v.choice("material", spool.material, allMaterials());
  v.flag("floats", spool.floats);
  v.number("sink_in_per_s", spool.sinkRate, limits::kSinkRate);
  v.number("feet_left", spool.left, limits::kFeetLeft);
}

template <class V, Is<Spools> T>
void describeFields(V& v, T& spools) {
  v.list("spools", spools.spools, Layout::line, true);
}

template <class V, Is<Card> T>
void describeFields(V& v, T& card) {
  v.text("title", card.title);
  v.text("say", card.say);
  v.text("ask", card.ask);
  v.text("reveal", card.reveal);
  v.text("notes", card.notes);
  v.choice("show", card.show, allShows());
  v.choice("figure", card.figure, allFigures());
  v.cardRig("rig", card.rig);
  v.cardRig("rig_b", card.rigB);
  v.list("parts", card.parts, Layout::block, false);
  v.list("pools", card.pools, Layout::line, false);
}

template <class V, Is<Deck> T>
void describeFields(V& v, T& deck) {
  v.text("title", deck.title);
  v.list("cards", deck.cards, Layout::block, true);
}

}  // namespace grainwise
