// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv.h"

#include "core/model/limits.h"

namespace grainwise {
namespace {

constexpr const char* kLineEnd = "\r\n";  // RFC 4180, section 2

std::string total(const char* name, double value, const char* unit) {
  return std::string(name) + "," + shortest(value) + "," + unit + kLineEnd;
}

}  // namespace

std::string reportCsv(const Rig&, const Analysis& analysis) {
  const Totals& totals = analysis.totals;
  std::string text = std::string("name,value,unit") + kLineEnd;
  text += total("length", totals.length.value(), "ft");
  text += total("mass", totals.mass.value(), "gr");
  text += total("head", totals.head.value(), "gr");
  text += total("head_and_tip", totals.headAndTip.value(), "gr");
  if (totals.first30ft) text += total("first_30_ft", totals.first30ft->value(), "gr");
  text += total("center_of_mass", totals.centreOfMass.feet(), "ft");
  text += std::string(kLineEnd) + "at_ft,gr_per_ft,cumulative_gr" + kLineEnd;
  for (const ProfileRow& row : analysis.rows) {
    text += shortest(row.at.feet()) + "," + shortest(row.mass.value()) + "," +
            shortest(row.soFar.value()) + kLineEnd;
  }
  return text;
}

}  // namespace grainwise
