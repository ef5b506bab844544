// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <catch2/catch.hpp>
#include <charconv>
#include <cstdio>
#include <numbers>
#include <string>

#include "core/units/si.h"

using namespace grainwise;

namespace {

/// What GNU units says that one `from` is in `to`; fails the test when the program is not there.
double gnuUnits(const std::string& from, const std::string& to) {
  const std::string command = "units --terse --digits 15 '" + from + "' '" + to + "' 2>&1";
  FILE* pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  std::array<char, 256> buffer{};
  while (std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe) != nullptr) {
    text += buffer.data();
  }
  const int status = pclose(pipe);
  INFO(command << " said: " << text);
  REQUIRE(status == 0);
  double value = 0;
  const auto end = text.data() + text.find_last_not_of(" \n") + 1;
  const auto read = std::from_chars(text.data(), end, value);
  REQUIRE(read.ec == std::errc{});
  REQUIRE(read.ptr == end);
  return value;
}

/// units prints no more than 15 digits.
constexpr double kPrinted = 1e-14;

void compare(const std::string& from, const std::string& to, double ours) {
  INFO(from << " in " << to);
  CHECK(ours == Approx(gnuUnits(from, to)).epsilon(kPrinted).margin(0));
}

}  // namespace

TEST_CASE("GNU units agrees with every factor into SI") {
  compare("grain", "kg", si::kg(Grains(1)));
  compare("ft", "m", si::m(Feet(1)));
  compare("inch", "m", si::m(Inches(1)));
  compare("grain/ft", "kg/m", si::kg_per_m(GrainsPerFoot(1)));
  compare("inch/s", "m/s", si::m_per_s(InchesPerSecond(1)));
  compare("ft/s", "m/s", si::m_per_s(FeetPerSecond(1)));
  compare("cm^2", "m^2", si::m2(SquareCentimetres(1)));
  compare("g/cm^3", "kg/m^3", si::kg_per_m3(GramsPerCubicCentimetre(1)));
  compare("degree", "radian", si::rad(Degrees(1)));
  compare("gravity", "m/s^2", si::kGravity_m_per_s2);
  compare("tempC(0)", "K", si::kKelvinAtZeroCelsius);
}

TEST_CASE("GNU units agrees with every factor out of SI") {
  compare("kg", "grain", si::toGrains(1).value());
  compare("m", "ft", si::toFeet(1).value());
  compare("m", "inch", si::toInches(1).value());
  compare("kg/m", "grain/ft", si::toGrainsPerFoot(1).value());
  compare("m/s", "inch/s", si::toInchesPerSecond(1).value());
  compare("m/s", "ft/s", si::toFeetPerSecond(1).value());
  compare("m^2", "cm^2", si::toSquareCentimetres(1).value());
  compare("kg/m^3", "g/cm^3", si::toGramsPerCubicCentimetre(1).value());
  compare("radian", "degree", si::toDegrees(1).value());
}

TEST_CASE("GNU units agrees with a level strand's grains per foot") {
  compare("(1000 kg/m^3) (pi/4) inch^2", "grain/ft",
          std::numbers::pi / 4 * si::m(Inches(1)) * si::m(Inches(1)) * 1000 /
              si::kg_per_m(GrainsPerFoot(1)));
}
