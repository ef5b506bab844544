// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/quantities.h"

#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "core/model/limits.h"
#include "core/units/si.h"
#include "ui/text/units.h"

namespace grainwise::ui {
namespace {

/// Text longer than any number a person means; a field that holds more holds no number.
constexpr qsizetype kMostTyped = 60;
/// Enough for every typed number, too few to show what a conversion leaves behind.
constexpr int kEditDigits = 12;

double rounded(double value, int decimals) {
  const double half = 0.5 * std::pow(10.0, -decimals);
  return std::abs(value) < half ? 0.0 : value;  // never "-0"
}

QString localText(double value, int decimals) {
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale.toString(rounded(value, decimals), 'f', decimals);
}

QString withoutZeros(QString text, const QString& point) {
  if (!text.contains(point)) return text;
  while (text.endsWith(QLatin1Char('0'))) text.chop(1);
  if (text.endsWith(point)) text.chop(point.size());
  return text;
}

QString withUnit(const QString& number, const QString& unit) {
  return number + QLatin1Char(' ') + unit;
}

/// One decimal, or two where the number was made finer than that.
QString toTenthsOrFiner(double value) {
  constexpr double kRounding = 0.005;
  const double tenths = std::round(value * 10) / 10;
  return numberText(value, std::abs(value - tenths) < kRounding ? 1 : 2);
}

/// What a person typed as a number that may stand in a file: a point as the decimal sign, digits on
/// both its sides, no plus, no leading zeros.
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

/// "10 ft 6 in", "10' 6", in feet.
std::optional<Typed> feetAndInches(const QString& text) {
  static const QRegularExpression form(
      QStringLiteral("^([0-9]+)\\s*(?:(?:ft|feet|foot)\\s*([0-9]+(?:[.,][0-9]*)?)\\s*(?:in|inch|inches|\"|\u2033|\u201d)"
                     "|['\u2032\u2019]\\s*([0-9]+(?:[.,][0-9]*)?)\\s*(?:in|inch|inches|\"|\u2033|\u201d|''|))$"),
      QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
  const auto match = form.match(text);
  if (!match.hasMatch()) return std::nullopt;
  const QString inchesText = match.captured(2).isEmpty() ? match.captured(3) : match.captured(2);
  const double feet = match.captured(1).toDouble();
  const double inches = fileDigits(inchesText).toDouble();
  if (inches >= si::kInchesPerFoot) return std::nullopt;
  return Typed{feet + inches / si::kInchesPerFoot, {}};
}

/// A number of at most kEditDigits digits in plain notation, trailing zeros left out.
QString plainNotation(double value) {
  constexpr int kMostDecimals = 40;
  const double size = std::abs(value);
  const int lead = size > 0 ? static_cast<int>(std::floor(std::log10(size))) : 0;
  const int decimals = std::clamp(kEditDigits - 1 - lead, 0, kMostDecimals);
  return withoutZeros(QString::number(rounded(value, decimals), 'f', decimals),
                      QStringLiteral("."));
}

}  // namespace

QString numberText(double value, int mostDecimals) {
  return withoutZeros(localText(value, mostDecimals), QString(QLocale().decimalPoint()));
}

QString unitOf(Measure measure, DisplayUnits units) {
  const Unit* unit = shownUnit(measure, units);
  return unit != nullptr ? QString::fromUtf8(unit->name) : QString();
}

double shownValue(double fileValue, Measure measure, DisplayUnits units) {
  const Unit* unit = shownUnit(measure, units);
  return unit != nullptr ? fileValue * unit->perFileUnit + unit->offset : fileValue;
}

QString lengthUnit(DisplayUnits units) { return unitOf(Measure::length, units); }
QString massUnit(DisplayUnits units) { return unitOf(Measure::mass, units); }
QString lineMassUnit(DisplayUnits units) { return unitOf(Measure::lineMass, units); }
QString diameterUnit(DisplayUnits units) { return unitOf(Measure::diameter, units); }
QString rateUnit(DisplayUnits units) { return unitOf(Measure::rate, units); }

QString lengthText(Feet value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::length, units);
  return withUnit(units.metres ? numberText(shown, 2) : toTenthsOrFiner(shown), lengthUnit(units));
}

QString roundLengthText(Feet value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::length, units);
  return withUnit(numberText(shown, units.metres ? 2 : 1), lengthUnit(units));
}

QString altitudeText(Feet value, DisplayUnits units) {
  return withUnit(numberText(shownValue(value.value(), Measure::length, units), 0), lengthUnit(units));
}

QString stationText(Station value, DisplayUnits units) {
  const double shown = shownValue(value.feet(), Measure::length, units);
  return withUnit(localText(shown, units.metres ? 2 : 1), lengthUnit(units));
}

QString massNumber(Grains value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::mass, units);
  if (units.grams) return localText(shown, std::abs(shown) < 9.995 ? 2 : 1);
  return numberText(shown, std::abs(shown) < 99.95 ? 1 : 0);
}

QString massText(Grains value, DisplayUnits units) {
  return withUnit(massNumber(value, units), massUnit(units));
}

QString lineMassNumber(GrainsPerFoot value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::lineMass, units);
  if (units.grams) return localText(shown, std::abs(shown) < 0.9995 ? 3 : 2);
  return numberText(shown, std::abs(shown) < 1.995 ? 2 : 1);
}

QString lineMassText(GrainsPerFoot value, DisplayUnits units) {
  return withUnit(lineMassNumber(value, units), lineMassUnit(units));
}

QString diameterText(Inches value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::diameter, units);
  return withUnit(numberText(shown, units.metres ? 2 : 4), diameterUnit(units));
}

QString rateText(InchesPerSecond value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::rate, units);
  return withUnit(numberText(shown, units.metres ? 0 : 1), rateUnit(units));
}

QString speedText(FeetPerSecond value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::speed, units);
  return withUnit(numberText(shown, 1), unitOf(Measure::speed, units));
}

QString temperatureText(Celsius value, DisplayUnits units) {
  const double shown = shownValue(value.value(), Measure::temperature, units);
  return withUnit(numberText(shown, 0), unitOf(Measure::temperature, units));
}

QString densityText(GramsPerCubicCentimetre value) {
  return withUnit(numberText(value.value(), 2), QStringLiteral("g/cm\u00b3"));
}

QString percentText(double share) {
  return withUnit(numberText(100 * share, 0), QStringLiteral("%"));
}

QString ratioText(double ratio) { return numberText(ratio, std::abs(ratio) < 9.95 ? 1 : 0); }

std::optional<Typed> parseTyped(const QString& text, Measure measure, DisplayUnits units) {
  static const QRegularExpression form(
      QStringLiteral("^([+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+))\\s*([^0-9\\s].*)?$"),
      QRegularExpression::UseUnicodePropertiesOption);
  QString typed = text.trimmed();
  if (typed.size() > kMostTyped) return std::nullopt;
  typed.replace(QChar(0x2212), QLatin1Char('-'));
  const auto match = form.match(typed);
  if (!match.hasMatch()) return std::nullopt;
  const QString digits = fileDigits(match.captured(1));
  const double shown = digits.toDouble();
  const QString name = match.captured(2).simplified();
  if (measure == Measure::plain) {
    return name.isEmpty() ? std::optional(Typed{shown, digits}) : std::nullopt;
  }
  const Unit* unit = name.isEmpty() ? shownUnit(measure, units) : typedUnit(measure, name);
  if (unit == nullptr) {
    return measure == Measure::length ? feetAndInches(typed) : std::nullopt;
  }
  if (unit->isFileUnit()) return Typed{shown, digits};
  return Typed{(shown - unit->offset) / unit->perFileUnit, {}};
}

QString localDigits(QString fileDigits) {
  if (QLocale().decimalPoint() == QLatin1String(",")) {
    fileDigits.replace(QLatin1Char('.'), QLatin1Char(','));
  }
  return fileDigits;
}

QString editText(double fileValue, Measure measure, DisplayUnits units) {
  const double shown = shownValue(fileValue, measure, units);
  if (shown != fileValue) return localDigits(plainNotation(shown));
  const QString text = QString::fromStdString(shortest(fileValue));
  return localDigits(text.contains(QLatin1Char('e')) ? plainNotation(fileValue) : text);
}

}  // namespace grainwise::ui
