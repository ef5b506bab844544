// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "core/units/station.h"
#include "core/units/trade.h"
#include "ui/theme/look.h"

/// Numbers as a person reads and types them: rounded to what is known, in the units of the Look, by
/// the locale. Files never go through here.
namespace grainwise::ui {

QString lengthText(Feet value, DisplayUnits units);               ///< "10 ft", "3.05 m"
QString stationText(Station value, DisplayUnits units);           ///< "14.0 ft"
QString massText(Grains value, DisplayUnits units);               ///< "525 gr", "34.0 g"
QString lineMassText(GrainsPerFoot value, DisplayUnits units);    ///< "17.8 gr/ft", "3.78 g/m"
QString lineMassNumber(GrainsPerFoot value, DisplayUnits units);  ///< "17.8"
QString massNumber(Grains value, DisplayUnits units);             ///< "525"
QString diameterText(Inches value, DisplayUnits units);           ///< "0.024 in", "0.61 mm"
QString rateText(InchesPerSecond value, DisplayUnits units);      ///< "7.5 in/s", "19 cm/s"
QString speedText(FeetPerSecond value, DisplayUnits units);       ///< "3 ft/s", "0.9 m/s"
QString temperatureText(Celsius value, DisplayUnits units);       ///< "45 °F", "7 °C"
QString densityText(GramsPerCubicCentimetre value);               ///< "4.84" and its unit

/// A computed length, to a tenth of a foot and no finer: "2.9 ft".
QString roundLengthText(Feet value, DisplayUnits units);
QString percentText(double share);  ///< "21 %"
QString ratioText(double ratio);    ///< "3.3", from 10 on "11"
/// Any number by the locale, rounded to `mostDecimals` places, without trailing zeros or groups.
QString numberText(double value, int mostDecimals);

QString lengthUnit(DisplayUnits units);
/// The height of a river above the sea, to a whole foot or metre.
QString altitudeText(Feet value, DisplayUnits units);
QString massUnit(DisplayUnits units);
QString lineMassUnit(DisplayUnits units);
QString diameterUnit(DisplayUnits units);
QString rateUnit(DisplayUnits units);

enum class Measure { length, mass, lineMass, diameter, rate, speed, temperature, plain };
QString unitOf(Measure measure, DisplayUnits units);
/// The number that is shown for a value in the file's unit.
double shownValue(double fileValue, Measure measure, DisplayUnits units);

/// A typed number as the trade unit's value, with its digits when it was typed in the trade unit (so
/// that they come back digit for digit). Both `.` and `,` are decimal. A unit written behind the
/// number wins over the display unit ("34 g", "3.05 m", "113.5 gr"); feet and inches may stand
/// together ("10 ft 6 in"). A unit of the wrong kind, an unknown one, or no number at all is nothing.
struct Typed {
  double value = 0;  ///< in the file's unit
  QString digits;    ///< as typed, "." as the decimal sign; empty when converted
};
std::optional<Typed> parseTyped(const QString& text, Measure measure, DisplayUnits units);

/// Digits as files hold them with the person's decimal sign, a point or a comma.
QString localDigits(QString fileDigits);

/// The number to put into a field for editing, in the display unit, full precision, no unit.
QString editText(double fileValue, Measure measure, DisplayUnits units);

}  // namespace grainwise::ui
