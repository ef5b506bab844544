// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/standards.h"

#include <array>

namespace grainwise::standards {
namespace {

constexpr int kTwoHandFirst = 6;
constexpr std::array<double, 7> kTwoHandH{250, 300, 360, 430, 510, 600, 700};

double overH(TwoHandClass which) {
  switch (which) {
    case TwoHandClass::h40ft:
      return 0;
    case TwoHandClass::s55ft:
      return 170;
    case TwoHandClass::m65ft:
      return 210;
    case TwoHandClass::l80ft:
      return 350;
  }
  return 0;
}

SingleHandRow row(int number, double low, double target, double high) {
  return {number, Grains(low), Grains(target), Grains(high)};
}

}  // namespace

const std::vector<SingleHandRow>& singleHand() {
  static const std::vector<SingleHandRow> rows{
      row(1, 54, 60, 66),     row(2, 74, 80, 86),     row(3, 94, 100, 106),
      row(4, 114, 120, 126),  row(5, 134, 140, 146),  row(6, 152, 160, 168),
      row(7, 177, 185, 193),  row(8, 202, 210, 218),  row(9, 230, 240, 250),
      row(10, 270, 280, 290), row(11, 318, 330, 342), row(12, 368, 380, 392),
      row(13, 435, 450, 465), row(14, 485, 500, 515), row(15, 535, 550, 565)};
  return rows;
}

std::optional<Grains> twoHand(TwoHandClass which, int lineNumber) {
  const int index = lineNumber - kTwoHandFirst;
  if (index < 0 || index >= static_cast<int>(kTwoHandH.size())) return std::nullopt;
  return Grains(kTwoHandH[static_cast<std::size_t>(index)] + overH(which));
}

Feet weightPoint(TwoHandClass which) {
  switch (which) {
    case TwoHandClass::h40ft:
      return Feet(40);
    case TwoHandClass::s55ft:
      return Feet(55);
    case TwoHandClass::m65ft:
      return Feet(65);
    case TwoHandClass::l80ft:
      return Feet(80);
  }
  return Feet(0);
}

GrainsPerFoot tipForShortHead(Grains head) {
  if (head < Grains(475)) return GrainsPerFoot(8);
  if (head < Grains(575)) return GrainsPerFoot(11);
  return head < Grains(650) ? GrainsPerFoot(14) : GrainsPerFoot(17);
}

}  // namespace grainwise::standards
