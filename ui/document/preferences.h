// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "core/analysis/rules.h"
#include "core/model/rig.h"

namespace grainwise::ui {

/// What a new rig starts with; what is left open takes what is usual for its head.
struct NewRig {
  Cast cast;
  Water water;
  Swing swing;
  bool operator==(const NewRig&) const = default;
};
/// An empty rig with these; a group of which nothing is stated is not there at all.
Rig rigFrom(const NewRig& start);

/// How many seconds unsaved work may be behind its copy.
inline constexpr int kUsualAutosave_s = 3, kLeastAutosave_s = 1, kMostAutosave_s = 600;

/// What a person goes by rather than a rig: the limits of the verdicts, what new rigs start with, how often
/// unsaved work is copied. One object for the whole window; whoever judges follows it.
class Preferences : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  [[nodiscard]] const Rules& rules() const { return m_rules; }
  /// Rules with which something is wrong are put right first (core/analysis/rule_table.h).
  void setRules(const Rules& rules);
  [[nodiscard]] const NewRig& newRig() const { return m_newRig; }
  void setNewRig(const NewRig& start);
  [[nodiscard]] int autosave_s() const { return m_autosave_s; }
  void setAutosave(int seconds);

 Q_SIGNALS:
  void rulesChanged();
  void newRigChanged();
  void autosaveChanged();

 private:
  Rules m_rules;
  NewRig m_newRig;
  int m_autosave_s = kUsualAutosave_s;
};

/// The limits to judge by; without preferences the usual ones.
inline Rules rulesOf(const Preferences* preferences) {
  return preferences != nullptr ? preferences->rules() : Rules{};
}

}  // namespace grainwise::ui
