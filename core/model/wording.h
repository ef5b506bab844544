// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace grainwise {

/// A sentence in English with what stands in its places, kept apart, so that a window can say it in
/// another language: `Problem::tr("%1 is missing").arg(key)`. A name or what somebody typed is the same
/// in every language and is made from text alone; a number is written the way of the place.
class Wording {
 public:
  // What stands in a place reads as itself: arg("gr_per_ft"), arg(1.5).
  Wording() = default;
  Wording(std::string name) : m_text(std::move(name)) {}  // NOLINT(google-explicit-constructor)
  Wording(const char* name) : m_text(name) {}  // NOLINT(google-explicit-constructor)
  Wording(double number);  // NOLINT(google-explicit-constructor)
  Wording(int number);  // NOLINT(google-explicit-constructor)
  Wording(std::size_t number);  // NOLINT(google-explicit-constructor)

  /// A sentence that translators find: the text in Problem::tr(), of static storage.
  static Wording sentence(const char* form);
  /// What stands in the next place, %1 first.
  [[nodiscard]] Wording arg(Wording what) const;

  /// All of it in English.
  [[nodiscard]] const std::string& text() const { return m_text; }
  /// The sentence with its places; nullptr for a name or a number.
  [[nodiscard]] const char* form() const { return m_form; }
  [[nodiscard]] const std::vector<Wording>& args() const { return m_args; }
  [[nodiscard]] bool isNumber() const { return m_number; }
  [[nodiscard]] bool empty() const { return m_text.empty(); }

  bool operator==(const Wording& other) const { return m_text == other.m_text; }

 private:
  std::string m_text;
  const char* m_form = nullptr;
  std::vector<Wording> m_args;
  bool m_number = false;
};

}  // namespace grainwise
