// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/units.h"

#include <array>

#include "core/units/si.h"

namespace grainwise::ui {
namespace {

constexpr double kGramsPerGrain = si::kKilogramsPerGrain * 1e3;
constexpr double kCentimetresPerInch = si::kMetresPerInch * 1e2;
constexpr double kMillimetresPerInch = si::kMetresPerInch * 1e3;

constexpr Unit kFeet{"ft", Measure::length, 1};
constexpr Unit kMetres{"m", Measure::length, si::kMetresPerFoot};
constexpr Unit kCentimetres{"cm", Measure::length, si::kMetresPerFoot * 1e2};
constexpr Unit kInchesOfLength{"in", Measure::length, si::kInchesPerFoot};
constexpr Unit kGrains{"gr", Measure::mass, 1};
constexpr Unit kGrams{"g", Measure::mass, kGramsPerGrain};
constexpr Unit kGrainsPerFoot{"gr/ft", Measure::lineMass, 1};
constexpr Unit kGramsPerMetre{"g/m", Measure::lineMass, kGramsPerGrain / si::kMetresPerFoot};
constexpr Unit kInches{"in", Measure::diameter, 1};
constexpr Unit kMillimetres{"mm", Measure::diameter, kMillimetresPerInch};
constexpr Unit kInchesPerSecond{"in/s", Measure::rate, 1};
constexpr Unit kCentimetresPerSecond{"cm/s", Measure::rate, kCentimetresPerInch};
constexpr Unit kFeetPerSecond{"ft/s", Measure::speed, 1};
constexpr Unit kMetresPerSecond{"m/s", Measure::speed, si::kMetresPerFoot};
constexpr Unit kCelsius{"\u00b0C", Measure::temperature, 1};
constexpr Unit kFahrenheit{"\u00b0F", Measure::temperature, si::kFahrenheitPerCelsius,
                           si::kFahrenheitAtZeroCelsius};

struct Spelling {
  const char* typed;  ///< lower case
  const Unit* unit;
};
constexpr std::array<Spelling, 75> kSpellings{{
    {"ft", &kFeet}, {"feet", &kFeet}, {"foot", &kFeet}, {"'", &kFeet}, {"\u2032", &kFeet},
    {"\u2019", &kFeet}, {"m", &kMetres}, {"metre", &kMetres}, {"metres", &kMetres},
    {"cm", &kCentimetres}, {"in", &kInchesOfLength}, {"inch", &kInchesOfLength},
    {"inches", &kInchesOfLength}, {"\"", &kInchesOfLength}, {"\u2033", &kInchesOfLength},
    {"\u201d", &kInchesOfLength}, {"gr", &kGrains}, {"grain", &kGrains}, {"grains", &kGrains},
    {"g", &kGrams}, {"gram", &kGrams}, {"grams", &kGrams}, {"gr/ft", &kGrainsPerFoot},
    {"gr/foot", &kGrainsPerFoot}, {"g/m", &kGramsPerMetre}, {"in", &kInches}, {"inch", &kInches},
    {"inches", &kInches}, {"\"", &kInches}, {"\u2033", &kInches}, {"\u201d", &kInches},
    {"mm", &kMillimetres}, {"in/s", &kInchesPerSecond}, {"ips", &kInchesPerSecond},
    {"\"/s", &kInchesPerSecond}, {"cm/s", &kCentimetresPerSecond}, {"ft/s", &kFeetPerSecond},
    {"'/s", &kFeetPerSecond}, {"m/s", &kMetresPerSecond}, {"c", &kCelsius},
    {"\u00b0c", &kCelsius}, {"\u00b0 c", &kCelsius}, {"celsius", &kCelsius}, {"f", &kFahrenheit},
    {"\u00b0f", &kFahrenheit}, {"\u00b0 f", &kFahrenheit}, {"fahrenheit", &kFahrenheit},
    {"deg c", &kCelsius}, {"deg f", &kFahrenheit}, {"fps", &kFeetPerSecond},
    // German, Norwegian, Spanish.
    {"fu\u00df", &kFeet}, {"fuss", &kFeet}, {"fot", &kFeet}, {"pie", &kFeet}, {"pies", &kFeet},
    {"meter", &kMetres}, {"metro", &kMetres}, {"metros", &kMetres}, {"zoll", &kInchesOfLength},
    {"tomme", &kInchesOfLength}, {"tommer", &kInchesOfLength}, {"pulgada", &kInchesOfLength},
    {"pulgadas", &kInchesOfLength}, {"zoll", &kInches}, {"tomme", &kInches}, {"tommer", &kInches},
    {"pulgada", &kInches}, {"pulgadas", &kInches}, {"grano", &kGrains}, {"granos", &kGrains},
    {"gramm", &kGrams}, {"gramo", &kGrams}, {"gramos", &kGrams}, {"gr/fu\u00df", &kGrainsPerFoot},
    {"gr/fot", &kGrainsPerFoot},
}};

}  // namespace

const Unit* shownUnit(Measure measure, DisplayUnits units) {
  switch (measure) {
    case Measure::length:
      return units.metres ? &kMetres : &kFeet;
    case Measure::mass:
      return units.grams ? &kGrams : &kGrains;
    case Measure::lineMass:
      return units.grams ? &kGramsPerMetre : &kGrainsPerFoot;
    case Measure::diameter:
      return units.metres ? &kMillimetres : &kInches;
    case Measure::rate:
      return units.metres ? &kCentimetresPerSecond : &kInchesPerSecond;
    case Measure::speed:
      return units.metres ? &kMetresPerSecond : &kFeetPerSecond;
    case Measure::temperature:
      return units.celsius ? &kCelsius : &kFahrenheit;
    case Measure::plain:
      break;
  }
  return nullptr;
}

const Unit* typedUnit(Measure measure, const QString& name) {
  const QString wanted = name.toLower();
  for (const Spelling& spelling : kSpellings) {
    const bool same = wanted == QString::fromUtf8(spelling.typed);
    if (same && spelling.unit->measure == measure) return spelling.unit;
  }
  return nullptr;
}

}  // namespace grainwise::ui
