// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

/// Comparing two JSON documents key by key, in order, with the pointer of each difference.
namespace grainwise::test {

using OrderedJson = nlohmann::ordered_json;

/// Numbers on record may differ by what another machine's exp and pow leave in the last bits.
inline constexpr double kLastBits = 1e-11;

inline std::vector<std::string> keysOfObject(const OrderedJson& object) {
  std::vector<std::string> keys;
  for (const auto& item : object.items()) keys.push_back(item.key());
  return keys;
}

inline void collectDifferences(const OrderedJson& then, const OrderedJson& now,
                               const std::string& at, std::vector<std::string>& found) {
  const auto differ = [&](const char* how) {
    found.push_back((at.empty() ? "/" : at) + ": " + how + ", on record " + then.dump() +
                    ", now " + now.dump());
  };
  if (then.is_number() && now.is_number()) {
    const double a = then.get<double>();
    const double b = now.get<double>();
    if (std::abs(a - b) > kLastBits * std::max(1.0, std::abs(a))) differ("number");
  } else if (then.type() != now.type()) {
    differ("type");
  } else if (then.is_object()) {
    if (keysOfObject(then) != keysOfObject(now)) return differ("keys");
    for (const auto& item : then.items()) {
      collectDifferences(item.value(), now[item.key()], at + "/" + item.key(), found);
    }
  } else if (then.is_array()) {
    if (then.size() != now.size()) return differ("length");
    for (std::size_t i = 0; i < then.size(); ++i) {
      collectDifferences(then[i], now[i], at + "/" + std::to_string(i), found);
    }
  } else if (then != now) {
    differ("value");
  }
}

inline std::vector<std::string> differences(const OrderedJson& then, const OrderedJson& now) {
  std::vector<std::string> found;
  collectDifferences(then, now, "", found);
  return found;
}

}  // namespace grainwise::test
