// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/kept.h"
#include "core/units/trade.h"

namespace grainwise {

/// Kinds of part in their order from rod to fly.
enum class PartKind { runningLine, head, tip, leader, tippet, fly };

/// The rules by which a part is judged. Heads: the first five; tips: the next three; leaders: last.
enum class Style {
  shortHead,
  fine,
  longBelly,
  singleHand,
  extension,
  level,
  floatSink,
  tapered,
  plain,
  coated,
};

enum class Material { nylon, fluorocarbon };

/// A quantity along a section from its rod end to its fly end: one number when level, two when it
/// is typed as a pair (even of equal numbers).
template <class Q>
struct Along {
  Q rodEnd;
  Q flyEnd;
  bool pair = false;
  Along() = default;
  explicit Along(Q level) : rodEnd(level), flyEnd(level) {}
  Along(Q rod, Q fly) : rodEnd(rod), flyEnd(fly), pair(true) {}
  bool operator==(const Along&) const = default;
};

/// What falls timed in a tub said of a section. It holds as long as the section's sink rate is `rate`;
/// a rate typed over it makes it history. What the maker rated is never lost.
struct Timed {
  InchesPerSecond rate;
  std::optional<InchesPerSecond> plusMinus;     ///< four times out of five
  std::optional<Along<InchesPerSecond>> rated;  ///< before it was timed
  std::optional<std::string> on;                ///< ISO 8601 date
  Kept kept;
  bool operator==(const Timed&) const = default;
};

/// A piece of line between two breakpoints, from its rod end to its fly end. Fully known from one
/// pair: `mass` with one of `diameter`, `density`, `sinkRate`, `floats`; or `diameter` with
/// `density` or `material`. Whatever is typed stays; the rest follows (core/material).
struct Section {
  Feet length;
  std::optional<Along<GrainsPerFoot>> mass;
  std::optional<Along<Inches>> diameter;
  std::optional<GramsPerCubicCentimetre> density;
  std::optional<Along<InchesPerSecond>> sinkRate;  ///< rated: fresh water at 15 C
  std::optional<bool> floats;
  std::optional<Material> material;
  std::optional<Timed> timed;
  Kept kept;
  bool operator==(const Section&) const = default;
};

/// What was timed, as long as the section still sinks at that rate; else null.
inline const Timed* timedOf(const Section& section) {
  const bool holds = section.timed && section.sinkRate &&
                     section.sinkRate->rodEnd == section.timed->rate &&
                     section.sinkRate->flyEnd == section.timed->rate;
  return holds ? &*section.timed : nullptr;
}

/// Masses of the loops at a part's two ends; each stands as a point mass at its end.
struct Loops {
  std::optional<Grains> rodEnd;
  std::optional<Grains> flyEnd;
  Kept kept;
  bool operator==(const Loops&) const = default;
};

/// What the bench scale said of a part, loops included.
struct Weighed {
  Grains mass;
  std::optional<std::string> on;  ///< ISO 8601 date
  Kept kept;
  bool operator==(const Weighed&) const = default;
};

/// What is known of a fly. `dry` 0 means that no mass is known.
struct Fly {
  Grains dry;
  std::optional<Grains> wet;                        ///< default: dry
  std::optional<SquareCentimetres> dragArea;        ///< default 1.5
  std::optional<GramsPerCubicCentimetre> density;   ///< of the wet fly, default 1.5
  std::optional<bool> sinksHeadFirst;               ///< weight forward, default false
  std::optional<std::string> hook;                  ///< text, "2/0"
  bool operator==(const Fly&) const = default;

  [[nodiscard]] Grains wetMass() const { return wet.value_or(dry); }
  [[nodiscard]] SquareCentimetres dragAreaOrDefault() const {
    return dragArea.value_or(SquareCentimetres(1.5));
  }
  [[nodiscard]] GramsPerCubicCentimetre densityOrDefault() const {
    return density.value_or(GramsPerCubicCentimetre(1.5));
  }
};

/// One block of the rig. A fly has `fly` and no sections; every other part has 1 to 64 sections.
struct Part {
  PartKind kind = PartKind::head;
  std::optional<Style> style;
  std::optional<std::string> name;
  std::optional<Grains> label;  ///< the mass on the packet; the sections are scaled to it
  std::vector<Section> sections;
  std::optional<Loops> loops;
  std::optional<Weighed> weighed;  ///< outranks the label
  std::optional<Fly> fly;
  std::optional<std::string> id;     ///< on a shelf: unique and stable
  std::optional<std::string> group;  ///< on a shelf: the heading it stands under
  Kept kept;
  bool operator==(const Part&) const = default;

  [[nodiscard]] Feet length() const;
  [[nodiscard]] Grains loopMass() const;
  [[nodiscard]] bool isCoatedLeader() const {
    return kind == PartKind::leader && style == Style::coated;
  }
};

/// The names that files use ("running-line", "long-belly", "nylon").
const char* fileName(PartKind kind);
const char* fileName(Style style);
const char* fileName(Material material);
std::optional<PartKind> partKindFromFile(const std::string& name);
std::optional<Style> styleFromFile(const std::string& name);
std::optional<Material> materialFromFile(const std::string& name);

/// The styles that a kind of part can have, in file order; empty for those without a style.
const std::vector<Style>& stylesOf(PartKind kind);

}  // namespace grainwise
