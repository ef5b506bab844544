// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/quantities.h"

#include <QLocale>
#include <cstring>
#include <random>
#include <vector>

#include "tests/support/ui_support.h"

namespace grainwise::ui {
namespace {

constexpr DisplayUnits kTrade{};
constexpr DisplayUnits kMetric{.metres = true, .grams = true, .celsius = true};
/// A few last bits: parsing converts by one factor.
constexpr double kConverted = 1e-12;

struct TypedRow {
  const char* text;
  Measure measure;
  DisplayUnits units;
  double value;
  const char* digits;
};

void checkTyped(const std::vector<TypedRow>& rows) {
  for (const TypedRow& row : rows) {
    INFO("typed: " << row.text);
    const auto typed = parseTyped(QString::fromUtf8(row.text), row.measure, row.units);
    REQUIRE(typed);
    CHECK(typed->value == Approx(row.value).epsilon(kConverted).margin(kConverted));
    CHECK(typed->digits == QString::fromUtf8(row.digits));
  }
}

void checkRefused(const std::vector<const char*>& texts, Measure measure) {
  for (const char* text : texts) {
    for (const DisplayUnits units : {kTrade, kMetric}) {
      INFO("typed: " << text);
      CHECK_FALSE(parseTyped(QString::fromUtf8(text), measure, units));
    }
  }
}

}  // namespace

TEST_CASE("a typed number is read in the unit that is shown, its digits kept in the file's unit") {
  checkTyped({
      {"525", Measure::mass, kTrade, 525, "525"},
      {" 113.50 ", Measure::mass, kTrade, 113.5, "113.50"},
      {"113,5", Measure::mass, kTrade, 113.5, "113.5"},
      {".024", Measure::diameter, kTrade, 0.024, "0.024"},
      {",024", Measure::diameter, kTrade, 0.024, "0.024"},
      {"10.", Measure::length, kTrade, 10, "10"},
      {"+10", Measure::length, kTrade, 10, "10"},
      {"007", Measure::length, kTrade, 7, "7"},
      {"0.50", Measure::length, kTrade, 0.5, "0.50"},
      {"-3", Measure::temperature, kMetric, -3, "-3"},
      {"\u22123", Measure::temperature, kMetric, -3, "-3"},
      {"3.5", Measure::plain, kMetric, 3.5, "3.5"},
      {"34", Measure::mass, kMetric, 34 / 0.06479891, ""},
      {"3.048", Measure::length, kMetric, 10, ""},
      {"2.54", Measure::rate, kMetric, 1, ""},
      {"0.61", Measure::diameter, kMetric, 0.61 / 25.4, ""},
      {"45", Measure::temperature, kTrade, (45 - 32) / 1.8, ""},
      {"7", Measure::temperature, kMetric, 7, "7"},
      {"0.9144", Measure::speed, kMetric, 3, ""},
  });
}

TEST_CASE("a unit behind the number wins over the one that is shown") {
  checkTyped({
      {"34 g", Measure::mass, kTrade, 34 / 0.06479891, ""},
      {"34g", Measure::mass, kTrade, 34 / 0.06479891, ""},
      {"113.5 gr", Measure::mass, kMetric, 113.5, "113.5"},
      {"113,5 gr", Measure::mass, kTrade, 113.5, "113.5"},
      {"525 Grains", Measure::mass, kMetric, 525, "525"},
      {"34 grams", Measure::mass, kTrade, 34 / 0.06479891, ""},
      {"10.5 ft", Measure::length, kMetric, 10.5, "10.5"},
      {"10.5'", Measure::length, kMetric, 10.5, "10.5"},
      {"10.5\u2032", Measure::length, kTrade, 10.5, "10.5"},
      {"3 m", Measure::length, kTrade, 3 / 0.3048, ""},
      {"305cm", Measure::length, kTrade, 3.05 / 0.3048, ""},
      {"126 in", Measure::length, kTrade, 10.5, ""},
      {"126\"", Measure::length, kTrade, 10.5, ""},
      {"0.024 in", Measure::diameter, kMetric, 0.024, "0.024"},
      {"0.024\"", Measure::diameter, kMetric, 0.024, "0.024"},
      {"0.61 mm", Measure::diameter, kTrade, 0.61 / 25.4, ""},
      {"11 gr/ft", Measure::lineMass, kMetric, 11, "11"},
      {"2.34 g/m", Measure::lineMass, kTrade, 2.34 * 0.3048 / 0.06479891, ""},
      {"7.5 in/s", Measure::rate, kMetric, 7.5, "7.5"},
      {"19 cm/s", Measure::rate, kTrade, 19 / 2.54, ""},
      {"3 ft/s", Measure::speed, kMetric, 3, "3"},
      {"0.9 m/s", Measure::speed, kTrade, 0.9 / 0.3048, ""},
      {"45 F", Measure::temperature, kMetric, (45 - 32) / 1.8, ""},
      {"45 \u00b0F", Measure::temperature, kMetric, (45 - 32) / 1.8, ""},
      {"7 \u00b0C", Measure::temperature, kTrade, 7, "7"},
      {"7\u00a0c", Measure::temperature, kTrade, 7, "7"},
  });
}

TEST_CASE("feet and inches may stand together") {
  checkTyped({
      {"10 ft 6 in", Measure::length, kTrade, 10.5, ""},
      {"10ft6in", Measure::length, kMetric, 10.5, ""},
      {"10' 6\"", Measure::length, kTrade, 10.5, ""},
      {"10'6", Measure::length, kTrade, 10.5, ""},
      {"9 feet 7 inches", Measure::length, kTrade, 9 + 7.0 / 12, ""},
      {"9' 1,5\"", Measure::length, kTrade, 9.125, ""},
  });
  checkRefused({"10 ft 12 in", "10.5 ft 6 in", "10 ft 6", "6 in 10 ft", "10' 6' 3\"", "-10' 6\""},
               Measure::length);
}

TEST_CASE("what is no number of that kind is nothing, whatever is shown") {
  const std::vector<const char*> never{"",    " ",     "abc",   "gr",     "1e3",    "1 000",  "1.2.3",
                                       "1,2,3", "1,234.5", "--5", "0x10",  "inf",    "nan",    "5 5",
                                       ".",   "+",     "5 kg",  "5 stone", "5 gr gr", "1/24",  "\u0665"};
  for (const auto measure : {Measure::length, Measure::mass, Measure::lineMass, Measure::diameter,
                             Measure::rate, Measure::speed, Measure::temperature, Measure::plain}) {
    checkRefused(never, measure);
  }
  checkRefused({std::string(61, '1').c_str()}, Measure::plain);
}

TEST_CASE("a unit of another kind is refused, not taken for the nearest one") {
  checkRefused({"34 ft", "34 gr/ft", "34 m", "34 in"}, Measure::mass);
  checkRefused({"3 g", "3 gr", "3 ft/s", "3 mm"}, Measure::length);
  checkRefused({"11 g", "11 gr", "11 ft"}, Measure::lineMass);
  checkRefused({"0.02 ft", "0.6 m", "0.6 g"}, Measure::diameter);
  checkRefused({"7 ft/s", "7 in", "7 mm"}, Measure::rate);
  checkRefused({"3 in/s", "3 m", "3 C"}, Measure::speed);
  checkRefused({"7 K", "7 g"}, Measure::temperature);
  checkRefused({"8 gr", "8 ft", "8 #"}, Measure::plain);
}

TEST_CASE("what a field shows for editing reads back as the same value") {
  const std::vector<double> values{525, 113.5, 0.024, 1e-4, 2.97, 299.9, 17.8125, 0.3, 12.5, 4};
  for (const auto measure : {Measure::length, Measure::mass, Measure::lineMass, Measure::diameter,
                             Measure::rate, Measure::speed, Measure::temperature, Measure::plain}) {
    for (const DisplayUnits units : {kTrade, kMetric}) {
      for (const double value : values) {
        const QString text = editText(value, measure, units);
        INFO(text.toStdString());
        const auto typed = parseTyped(text, measure, units);
        REQUIRE(typed);
        CHECK(typed->value == Approx(value).epsilon(1e-9).margin(1e-10));  // 12 digits are shown
      }
    }
  }
}

/// A measure, its two units by their definitions (international foot and pound, 1959), and its words.
struct TwoUnits {
  Measure measure;
  double most;
  const char* trade;
  const char* metric;
  double metricPerTrade;
  double metricAtZero;
  QString (*words)(double, DisplayUnits);
};

TEST_CASE("a metric and a trade entry of one thing agree to the last digit shown, in either unit") {
  // What is stored comes in degrees Celsius; all else in the trade's unit.
  const std::vector<TwoUnits> rows{
      {Measure::length, 300, "ft", "m", 0.3048, 0, [](double v, DisplayUnits u) { return lengthText(Feet(v), u); }},
      {Measure::length, 300, "ft", "cm", 30.48, 0, [](double v, DisplayUnits u) { return roundLengthText(Feet(v), u); }},
      {Measure::length, 300, "in", "cm", 2.54, 0, [](double v, DisplayUnits u) { return lengthText(Feet(v), u); }},
      {Measure::mass, 900, "gr", "g", 0.06479891, 0, [](double v, DisplayUnits u) { return massText(Grains(v), u); }},
      {Measure::lineMass, 60, "gr/ft", "g/m", 0.06479891 / 0.3048, 0,
       [](double v, DisplayUnits u) { return lineMassText(GrainsPerFoot(v), u); }},
      {Measure::diameter, 0.2, "in", "mm", 25.4, 0, [](double v, DisplayUnits u) { return diameterText(Inches(v), u); }},
      {Measure::rate, 20, "in/s", "cm/s", 2.54, 0, [](double v, DisplayUnits u) { return rateText(InchesPerSecond(v), u); }},
      {Measure::speed, 15, "ft/s", "m/s", 0.3048, 0, [](double v, DisplayUnits u) { return speedText(FeetPerSecond(v), u); }},
      {Measure::temperature, 90, "F", "C", 5.0 / 9, -160.0 / 9,
       [](double v, DisplayUnits u) { return temperatureText(Celsius(v), u); }},
  };
  constexpr int kRounds = 2000;
  std::mt19937 random(20260307);
  for (const TwoUnits& row : rows) {
    std::uniform_real_distribution<double> any(row.most / 1000, row.most);
    for (int round = 0; round < kRounds; ++round) {
      // Nine decimals are typed: as good as never lies one on the half of the last digit shown.
      const QString trade = QString::number(any(random), 'f', 9);
      const double metric = trade.toDouble() * row.metricPerTrade + row.metricAtZero;
      const QString typedMetric = QString::number(metric, 'f', 12) + QLatin1Char(' ') + QLatin1String(row.metric);
      const QString typedTrade = trade + QLatin1Char(' ') + QLatin1String(row.trade);
      INFO(typedTrade.toStdString() << " and " << typedMetric.toStdString());
      const auto one = parseTyped(typedTrade, row.measure, kTrade);
      const auto other = parseTyped(typedMetric, row.measure, kTrade);
      REQUIRE(one);
      REQUIRE(other);
      for (const DisplayUnits units : {kTrade, kMetric}) {
        REQUIRE(row.words(one->value, units) == row.words(other->value, units));
      }
      // Without a unit behind it a number is in the one that is shown.
      if (QString::fromLatin1(row.metric) != unitOf(row.measure, kMetric).right(qsizetype(std::strlen(row.metric)))) continue;
      const auto bare = parseTyped(QString::number(metric, 'f', 12), row.measure, kMetric);
      REQUIRE(bare);
      REQUIRE(bare->value == other->value);
    }
  }
}

TEST_CASE("34 g stays 34 in the field while the file holds grains") {
  const auto typed = parseTyped(QStringLiteral("34 g"), Measure::mass, kMetric);
  REQUIRE(typed);
  CHECK(editText(typed->value, Measure::mass, kMetric) == QStringLiteral("34"));
  CHECK(editText(1e-7, Measure::lineMass, kTrade) == QStringLiteral("0.0000001"));
}

TEST_CASE("numbers are rounded to what is known, in the units that the person thinks in") {
  struct Row {
    QString text;
    const char* wanted;
  };
  const std::vector<Row> rows{
      {lengthText(Feet(10), kTrade), "10 ft"},
      {lengthText(Feet(2.75), kTrade), "2.75 ft"},
      {lengthText(Feet(10), kMetric), "3.05 m"},
      {roundLengthText(Feet(3.0303), kTrade), "3 ft"},
      {stationText(Station(14), kTrade), "14.0 ft"},
      {stationText(Station(14), kMetric), "4.27 m"},
      {massText(Grains(525), kTrade), "525 gr"},
      {massText(Grains(113.5), kTrade), "114 gr"},
      {massText(Grains(2.97), kTrade), "3 gr"},
      {massText(Grains(45.5), kTrade), "45.5 gr"},
      {massText(Grains(525), kMetric), "34.0 g"},
      {massText(Grains(33), kMetric), "2.14 g"},
      {lineMassText(GrainsPerFoot(17.8125), kTrade), "17.8 gr/ft"},
      {lineMassText(GrainsPerFoot(11), kTrade), "11 gr/ft"},
      {lineMassText(GrainsPerFoot(0.7853), kTrade), "0.79 gr/ft"},
      {lineMassText(GrainsPerFoot(17.8), kMetric), "3.78 g/m"},
      {lineMassText(GrainsPerFoot(0.459), kMetric), "0.098 g/m"},
      {diameterText(Inches(0.024), kTrade), "0.024 in"},
      {diameterText(Inches(0.024), kMetric), "0.61 mm"},
      {rateText(InchesPerSecond(7.5), kTrade), "7.5 in/s"},
      {rateText(InchesPerSecond(7.5), kMetric), "19 cm/s"},
      {speedText(FeetPerSecond(3), kTrade), "3 ft/s"},
      {speedText(FeetPerSecond(3), kMetric), "0.9 m/s"},
      {temperatureText(Celsius(7), kTrade), "45 \u00b0F"},
      {temperatureText(Celsius(7), kMetric), "7 \u00b0C"},
      {densityText(GramsPerCubicCentimetre(4.844)), "4.84 g/cm\u00b3"},
      {massText(Grains(-0.01), kTrade), "0 gr"},
      {percentText(0.2095), "21 %"},
      {ratioText(3.333), "3.3"},
      {ratioText(11.1), "11"},
      {numberText(1234567, 0), "1234567"},
  };
  for (const Row& row : rows) CHECK(row.text == QString::fromUtf8(row.wanted));
}

TEST_CASE("numbers on screen follow the person's decimal sign, typed ones take both") {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  CHECK(lineMassText(GrainsPerFoot(17.8), kTrade) == QStringLiteral("17,8 gr/ft"));
  CHECK(lengthText(Feet(10.0), kTrade) == QStringLiteral("10 ft"));
  CHECK(numberText(12345.5, 1) == QStringLiteral("12345,5"));
  CHECK(parseTyped(QStringLiteral("17,8"), Measure::lineMass, kTrade)->digits ==
        QStringLiteral("17.8"));
  QLocale::setDefault(before);
}

}  // namespace grainwise::ui
