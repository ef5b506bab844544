// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/quantities.h"

#include <QLocale>
#include <QRegularExpression>
#include <array>
#include <cmath>
#include <string>

#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise::ui {
namespace {

constexpr double kMillimetresPerInch = si::kMetresPerInch * 1e3;
constexpr double kCentimetresPerInch = si::kMetresPerInch * 1e2;
constexpr double kGramsPerGrain = si::kKilogramsPerGrain * 1e3;
constexpr double kGramsPerMetre = kGramsPerGrain / si::kMetresPerFoot;

/// A number in a unit of its own: file value * perUnit + offset.
struct Unit {
  const char* name;
  Measure measure;
  double perFileUnit;  ///< shown = file * perFileUnit + offset
  double offset = 0;
};
constexpr std::array<Unit, 20> kUnits{{
    {"ft", Measure::length, 1},
    {"'", Measure::length, 1},
    {"m", Measure::length, si::kMetresPerFoot},
    {"cm", Measure::length, si::kMetresPerFoot * 100},
    {"in", Measure::length, 12},
    {"gr", Measure::mass, 1},
    {"g", Measure::mass, kGramsPerGrain},
    {"gr/ft", Measure::lineMass, 1},
    {"g/m", Measure::lineMass, kGramsPerMetre},
    {"in", Measure::diameter, 1},
    {"\"", Measure::diameter, 1},
    {"mm", Measure::diameter, kMillimetresPerInch},
    {"in/s", Measure::rate, 1},
    {"cm/s", Measure::rate, kCentimetresPerInch},
    {"ft/s", Measure::speed, 1},
    {"m/s", Measure::speed, si::kMetresPerFoot},
    {"c", Measure::temperature, 1},
    {"\xc2\xb0""c", Measure::temperature, 1},
    {"f", Measure::temperature, 1.8, 32},
    {"\xc2\xb0""f", Measure::temperature, 1.8, 32},
}};

/// The unit that a person with these preferences reads `measure` in.
const char* shownUnit(Measure measure, DisplayUnits units) {
  switch (measure) {
    case Measure::length:
      return units.metres ? "m" : "ft";
    case Measure::mass:
      return units.grams ? "g" : "gr";
    case Measure::lineMass:
      return units.grams ? "g/m" : "gr/ft";
    case Measure::diameter:
      return units.metres ? "mm" : "in";
    case Measure::rate:
      return units.metres ? "cm/s" : "in/s";
    case Measure::speed:
      return units.metres ? "m/s" : "ft/s";
    case Measure::temperature:
      return units.celsius ? "c" : "f";
    case Measure::plain:
      break;
  }
  return "";
}

const Unit* findUnit(const QString& name, Measure measure) {
  for (const Unit& unit : kUnits) {
    if (unit.measure == measure && name == QString::fromUtf8(unit.name)) return &unit;
  }
  return nullptr;
}

double toShown(double fileValue, Measure measure, DisplayUnits units) {
  const Unit* unit = findUnit(QString::fromUtf8(shownUnit(measure, units)), measure);
  return unit != nullptr ? fileValue * unit->perFileUnit + unit->offset : fileValue;
}

/// By the locale, without trailing zeros, without a group separator.
QString number(double value, int mostDecimals) {
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  QString text = locale.toString(value, 'f', mostDecimals);
  const QString point(locale.decimalPoint());
  if (mostDecimals > 0 && text.contains(point)) {
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(point)) text.chop(point.size());
  }
  return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}

/// What a person typed as a number that may stand in a file: no plus, no bare decimal point, no
/// leading zeros.
QString fileDigits(QString digits) {
  digits.replace(QLatin1Char(','), QLatin1Char('.'));
  const bool minus = digits.startsWith(QLatin1Char('-'));
  if (minus || digits.startsWith(QLatin1Char('+'))) digits.remove(0, 1);
  while (digits.size() > 1 && digits.startsWith(QLatin1Char('0')) && digits[1].isDigit()) {
    digits.remove(0, 1);
  }
  if (digits.startsWith(QLatin1Char('.'))) digits.prepend(QLatin1Char('0'));
  if (digits.endsWith(QLatin1Char('.'))) digits.chop(1);
  return minus ? QLatin1Char('-') + digits : digits;
}

QString withUnit(const QString& text, const QString& unit) { return text + QLatin1Char(' ') + unit; }

}  // namespace

QString lengthUnit(DisplayUnits units) { return QLatin1String(shownUnit(Measure::length, units)); }
QString massUnit(DisplayUnits units) { return QLatin1String(shownUnit(Measure::mass, units)); }
QString lineMassUnit(DisplayUnits units) {
  return QLatin1String(shownUnit(Measure::lineMass, units));
}
QString diameterUnit(DisplayUnits units) {
  return QLatin1String(shownUnit(Measure::diameter, units));
}
QString rateUnit(DisplayUnits units) { return QLatin1String(shownUnit(Measure::rate, units)); }

QString lengthText(Feet value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::length, units);
  return withUnit(number(shown, units.metres ? 2 : 1), lengthUnit(units));
}

QString stationText(Station value, DisplayUnits units) {
  const double shown = toShown(value.feet(), Measure::length, units);
  return withUnit(QLocale().toString(shown, 'f', units.metres ? 2 : 1), lengthUnit(units));
}

QString massNumber(Grains value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::mass, units);
  const int decimals = units.grams ? (shown < 10 ? 2 : 1) : (shown < 10 ? 1 : 0);
  return number(shown, decimals);
}

QString massText(Grains value, DisplayUnits units) {
  return withUnit(massNumber(value, units), massUnit(units));
}

QString lineMassNumber(GrainsPerFoot value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::lineMass, units);
  const int decimals = shown >= (units.grams ? 1 : 2) ? (units.grams ? 2 : 1) : 2;
  return number(shown, decimals);
}

QString lineMassText(GrainsPerFoot value, DisplayUnits units) {
  return withUnit(lineMassNumber(value, units), lineMassUnit(units));
}

QString diameterText(Inches value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::diameter, units);
  return withUnit(number(shown, units.metres ? 2 : 4), diameterUnit(units));
}

QString rateText(InchesPerSecond value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::rate, units);
  return withUnit(number(shown, units.metres ? 0 : 1), rateUnit(units));
}

QString speedText(FeetPerSecond value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::speed, units);
  return withUnit(number(shown, 1), QLatin1String(shownUnit(Measure::speed, units)));
}

QString temperatureText(Celsius value, DisplayUnits units) {
  const double shown = toShown(value.value(), Measure::temperature, units);
  return withUnit(number(shown, 0), units.celsius ? QStringLiteral("°C") : QStringLiteral("°F"));
}

QString densityText(GramsPerCubicCentimetre value) {
  return withUnit(number(value.value(), 2), QStringLiteral("g/cm³"));
}

std::optional<Typed> parseTyped(const QString& text, Measure measure, DisplayUnits units) {
  static const QRegularExpression form(
      QStringLiteral("^\\s*([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))\\s*(\\S*)\\s*$"));
  const auto match = form.match(text);
  if (!match.hasMatch()) return std::nullopt;
  const QString digits = fileDigits(match.captured(1));
  bool read = false;
  const double shown = digits.toDouble(&read);
  if (!read || !std::isfinite(shown)) return std::nullopt;
  QString name = match.captured(2).toLower();
  if (measure == Measure::plain) {
    return name.isEmpty() ? std::optional(Typed{shown, digits}) : std::nullopt;
  }
  if (name.isEmpty()) name = QString::fromUtf8(shownUnit(measure, units));
  const Unit* unit = findUnit(name, measure);
  if (unit == nullptr) return std::nullopt;
  if (unit->perFileUnit == 1 && unit->offset == 0) return Typed{shown, digits};
  return Typed{(shown - unit->offset) / unit->perFileUnit, {}};
}

QString editText(double fileValue, Measure measure, DisplayUnits units) {
  // Twelve digits: more than anyone types, fewer than conversion noise shows.
  const double shown = toShown(fileValue, measure, units);
  if (shown == fileValue) return QString::fromStdString(shortest(fileValue));
  return QString::number(shown, 'g', 12);
}

}  // namespace grainwise::ui
