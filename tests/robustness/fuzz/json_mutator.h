// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>
#include <string>
#include <vector>

#include "core/io/json_text.h"

/// Changes a document so that it stays JSON: bytes alone seldom get past the lexer.
namespace grainwise::test {

class JsonMutator {
 public:
  explicit JsonMutator(unsigned seed) : m_random(seed) {}

  /// The text with one value exchanged, doubled or removed; as it was when it is no JSON.
  std::string mutate(const std::string& text) {
    const JsonText json = parseJson(text);
    if (json.broken) return text;
    m_all.clear();
    collect(json.root);
    const JsonValue& at = *m_all[below(m_all.size())];
    switch (below(4)) {
      case 0:
        return put(text, at, std::string(json.raw(*m_all[below(m_all.size())])));
      case 1:
        return listed(text, json);
      case 2:
        return put(text, at, edge());
      default:
        return put(text, at, at.kind == JsonKind::number ? near(at) : edge());
    }
  }

 private:
  std::size_t below(std::size_t end) { return end == 0 ? 0 : m_random() % end; }
  void collect(const JsonValue& value) {
    m_all.push_back(&value);
    for (const JsonValue& child : value.children) collect(child);
  }
  static std::string put(const std::string& text, const JsonValue& at, const std::string& value) {
    return text.substr(0, at.begin) + value + text.substr(at.end);
  }
  /// An entry of a list doubled, or a member added beside others.
  std::string listed(const std::string& text, const JsonText& json) {
    const JsonValue& around = *m_all[below(m_all.size())];
    if (around.children.empty()) return text;
    const JsonValue& one = around.children[below(around.children.size())];
    const std::string raw(json.raw(one));
    if (around.kind == JsonKind::array) return put(text, one, raw + ", " + raw);
    return put(text, one, raw + ", " + key() + ": " + edge());
  }
  std::string key() {
    static const std::vector<std::string> kKeys{"\"length_ft\"",
                                                "\"gr_per_ft\"",
                                                "\"diameter_in\"",
                                                "\"density_g_cm3\"",
                                                "\"material\"",
                                                "\"sink_in_per_s\"",
                                                "\"floats\"",
                                                "\"style\"",
                                                "\"label_gr\"",
                                                "\"weighed\"",
                                                "\"loops\"",
                                                "\"dry_gr\"",
                                                "\"wet_gr\"",
                                                "\"kind\"",
                                                "\"rig\"",
                                                "\"rig_b\"",
                                                "\"show\"",
                                                "\"feet_left\"",
                                                "\"wanted_depth_ft\"",
                                                "\"clearance_ft\"",
                                                "\"on\"",
                                                "\"window_gr\"",
                                                "\"x\"",
                                                "\"a/b~c\"",
                                                "\"\\u001b[2J\"",
                                                "\"\\u0000\"",
                                                "\"\\ud83d\\ude00\"",
                                                "\"name\""};
    return kKeys[below(kKeys.size())];
  }
  std::string edge() {
    static const std::vector<std::string> kValues{"0",
                                                  "-0",
                                                  "1",
                                                  "0.5",
                                                  "1e-300",
                                                  "1e308",
                                                  "4.9e-324",
                                                  "0.1000",
                                                  "1E+2",
                                                  "300",
                                                  "5000",
                                                  "null",
                                                  "true",
                                                  "false",
                                                  "\"\"",
                                                  "\"nylon\"",
                                                  "[]",
                                                  "{}",
                                                  "[1, 2]",
                                                  "[2, 1]",
                                                  "[null]",
                                                  "\"fluorocarbon\"",
                                                  "\"coated\"",
                                                  "\"tip\"",
                                                  "\"head\"",
                                                  "\"fly\"",
                                                  "\"running-line\"",
                                                  "\"2026-02-28\"",
                                                  "\"a.rig.json\"",
                                                  "\"\\u001b[31m\"",
                                                  "\"\\u202e\"",
                                                  "123456789012345678901234567890",
                                                  "0.00000000000000000001"};
    return kValues[below(kValues.size())];
  }
  std::string near(const JsonValue& number) {
    std::string digits(number.text);
    const std::size_t at = below(digits.size());
    if (digits[at] >= '0' && digits[at] <= '9') digits[at] = static_cast<char>('0' + below(10));
    return below(3) == 0 ? digits + "0" : digits;
  }

  std::mt19937 m_random;
  std::vector<const JsonValue*> m_all;
};

}  // namespace grainwise::test
