// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/compare_words.h"

#include <cmath>

#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise::words {
namespace {

std::string perFoot(GrainsPerFoot mass) {
  return fixedText(mass.value(), mass.value() < 2.0 ? 2 : 1);
}

std::string partOf(const Rig& rig, std::size_t part) { return onOneLine(nameOf(rig.parts[part])); }

/// "the same figures again" is no news: a part of the same name is named once.
std::string fromTo(const std::string& a, const std::string& b) {
  return a == b ? a : a + " > " + b;
}

std::string factText(Fact fact, double value) {
  switch (fact) {
    case Fact::mass:
    case Fact::loops:
    case Fact::windowLow:
    case Fact::windowHigh:
      return grainsText(value);
    case Fact::rodEndDiameter:
    case Fact::flyEndDiameter:
      return fixedText(value, 3);
    case Fact::rodEnd:
    case Fact::flyEnd:
    case Fact::flyDensity:
      return fixedText(value, std::abs(value) < 2.0 ? 2 : 1);
    case Fact::lineNumber:
    case Fact::airAltitude:
    case Fact::lineOut:
    case Fact::angle:
    case Fact::temperature:
      return fixedText(value, std::floor(value) == value ? 0 : 1);
    case Fact::sinkRate:
    case Fact::salinity:
      return fixedText(value, 1);
    default:
      return feetText(value);
  }
}

std::string rangeOf(const PairedDifference& d) {
  const double low = std::min(std::abs(d.low), std::abs(d.high));
  const double high = std::max(std::abs(d.low), std::abs(d.high));
  return " (" + roundFeetText(low) + " to " + roundFeetText(high) + ")";
}

std::string depthWords(const Consequence& c) {
  if (!c.difference) return "";
  const auto onBottom = [](const std::optional<Figure>& f) {
    const auto* state = f ? std::get_if<DepthState>(&f->verdict) : nullptr;
    return state && isOnBottom(*state);
  };
  if (onBottom(c.a) && onBottom(c.b)) return "both on the bottom";
  if (onBottom(c.b)) return "B lies on the bottom";
  if (onBottom(c.a)) return "A lies on the bottom";
  if (c.within) return "no more than is known";
  const PairedDifference& d = *c.difference;
  return roundFeetText(std::abs(d.middle)) + " ft " + (d.middle > 0.0 ? "deeper" : "shallower") +
         rangeOf(d);
}

std::string strokeWords(const Stroke& s) {
  std::string text = of(s.verdict);
  if (s.slowerLift) text += ", slower lift";
  if (s.quickerLift) text += ", quicker lift";
  return text;
}

}  // namespace

const char* of(Effect effect) {
  switch (effect) {
    case Effect::junction:
      return "Joint";
    case Effect::headOnRod:
      return "Head on rod";
    case Effect::workingLength:
      return "Working length";
    case Effect::tipShare:
      return "Tip share";
    case Effect::anchor:
      return "Anchor";
    case Effect::flyAgainstTip:
      return "Fly against tip";
    case Effect::flyAgainstLeader:
      return "Fly against leader";
    case Effect::drive:
      return "Line in the loop";
    case Effect::reserve:
      return "Line speed";
    case Effect::pace:
      return "Fly at the end";
    case Effect::depth:
      return "Swing depth";
    case Effect::swingTime:
      return "Time of the swing";
    case Effect::stroke:
      return "Stroke";
  }
  return "";
}

const char* of(Fact fact) {
  switch (fact) {
    case Fact::style:
      return "another style";
    case Fact::length:
      return "length";
    case Fact::mass:
      return "mass";
    case Fact::sinkingLength:
      return "sinking";
    case Fact::sinkRate:
      return "sinks at";
    case Fact::rodEnd:
      return "rod end";
    case Fact::flyEnd:
      return "fly end";
    case Fact::rodEndDiameter:
      return "butt";
    case Fact::flyEndDiameter:
      return "front";
    case Fact::layout:
      return "another taper";
    case Fact::loops:
      return "loops";
    case Fact::flyDrag:
      return "drag area";
    case Fact::flyDensity:
      return "density";
    case Fact::flyAttitude:
      return "sinks another way";
    case Fact::rodLength:
      return "length";
    case Fact::windowLow:
      return "window from";
    case Fact::windowHigh:
      return "window to";
    case Fact::lineNumber:
      return "line number";
    case Fact::surfaceSpeed:
      return "surface";
    case Fact::waterDepth:
      return "depth";
    case Fact::temperature:
      return "temperature";
    case Fact::salinity:
      return "salt";
    case Fact::bed:
      return "another bed";
    case Fact::lineSpeed:
      return "line speed";
    case Fact::loop:
      return "loop";
    case Fact::launch:
      return "launch";
    case Fact::rodTip:
      return "rod tip";
    case Fact::overhang:
      return "overhang";
    case Fact::airAltitude:
      return "air at";
    case Fact::lineOut:
      return "line out";
    case Fact::angle:
      return "angle";
    case Fact::mend:
      return "mend";
  }
  return "";
}

const char* unitOf(Fact fact) {
  switch (fact) {
    case Fact::length:
    case Fact::sinkingLength:
    case Fact::rodLength:
    case Fact::waterDepth:
    case Fact::loop:
    case Fact::rodTip:
    case Fact::overhang:
    case Fact::airAltitude:
    case Fact::lineOut:
      return "ft";
    case Fact::mass:
    case Fact::loops:
    case Fact::windowLow:
    case Fact::windowHigh:
      return "gr";
    case Fact::sinkRate:
      return "in/s";
    case Fact::rodEnd:
    case Fact::flyEnd:
      return "gr/ft";
    case Fact::rodEndDiameter:
    case Fact::flyEndDiameter:
      return "in";
    case Fact::flyDrag:
      return "cm2";
    case Fact::flyDensity:
      return "g/cm3";
    case Fact::surfaceSpeed:
    case Fact::lineSpeed:
      return "ft/s";
    case Fact::temperature:
      return "C";
    case Fact::salinity:
      return "g/kg";
    case Fact::launch:
    case Fact::angle:
      return "deg";
    case Fact::mend:
      return "s";
    case Fact::style:
    case Fact::layout:
    case Fact::flyAttitude:
    case Fact::bed:
    case Fact::lineNumber:
      return "";
  }
  return "";
}

const char* of(Difference::What what) {
  switch (what) {
    case Difference::What::part:
      return "part";
    case Difference::What::onlyInA:
      return "only in A";
    case Difference::What::onlyInB:
      return "only in B";
    case Difference::What::rod:
      return "rod";
    case Difference::What::water:
      return "water";
    case Difference::What::cast:
      return "cast";
    case Difference::What::swing:
      return "swing";
  }
  return "";
}

std::string of(const AnyVerdict& verdict) {
  return std::visit(
      [](const auto& v) -> std::string {
        if constexpr (std::is_same_v<std::decay_t<decltype(v)>, std::monostate>) {
          return "";
        } else {
          return of(v);
        }
      },
      verdict);
}

std::string titleOf(const Difference& difference, const Rig& a, const Rig& b) {
  const PartPair& parts = difference.parts;
  if (parts.a && parts.b) return fromTo(partOf(a, *parts.a), partOf(b, *parts.b));
  if (parts.a) return "only in A: " + partOf(a, *parts.a);
  if (parts.b) return "only in B: " + partOf(b, *parts.b);
  return std::string("the ") + of(difference.what);
}

std::string figuresOf(const FactPair& fact) {
  const auto text = [&](const std::optional<double>& value) {
    return value ? factText(fact.fact, *value) : std::string("-");
  };
  if (!fact.a && !fact.b) return "";
  const std::string unit = unitOf(fact.fact);
  return text(fact.a) + " > " + text(fact.b) + (unit.empty() ? "" : " " + unit);
}

std::string factsOf(const Difference& difference) {
  std::string text;
  for (const FactPair& fact : difference.facts) {
    if (!text.empty()) text += ", ";
    text += of(fact.fact);
    const std::string figures = figuresOf(fact);
    if (!figures.empty()) text += " " + figures;
  }
  return text;
}

std::string figureOf(const Consequence& c, bool ofB) {
  const std::optional<Figure>& f = ofB ? c.b : c.a;
  const std::optional<Junction>& joint = ofB ? c.jointB : c.joint;
  if (!f) return "-";
  switch (c.effect) {
    case Effect::junction:
      return joint ? perFoot(joint->rodSideMean) + " to " + perFoot(joint->flySideMean) +
                         " gr/ft (" + ratioText(f->value) + ")"
                   : ratioText(f->value);
    case Effect::headOnRod:
      return grainsText(f->value) + " gr";
    case Effect::workingLength:
    case Effect::anchor:
      return ratioText(f->value) + " rods";
    case Effect::tipShare:
      return percentText(f->value);
    case Effect::depth:
      return roundFeetText(f->value) + " ft";
    case Effect::swingTime:
      return fixedText(f->value, 0) + " s";
    default:
      return ratioText(f->value);
  }
}

std::string differenceOf(const Consequence& c) {
  if (c.stroke) return strokeWords(*c.stroke);
  if (c.effect == Effect::depth) return depthWords(c);
  if (c.within) return "no more than is known";
  if (c.effect == Effect::swingTime && c.a && c.b) {
    const double by = c.b->value - c.a->value;
    return fixedText(std::abs(by), 0) + " s " + (by > 0.0 ? "longer" : "shorter");
  }
  return "";
}

}  // namespace grainwise::words
