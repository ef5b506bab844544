// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/preferences.h"

#include <algorithm>

#include "core/analysis/rule_table.h"

namespace grainwise::ui {

Rig rigFrom(const NewRig& start) {
  Rig rig;
  if (!(start.cast == Cast{})) rig.cast = start.cast;
  if (!(start.water == Water{})) rig.water = start.water;
  if (!(start.swing == Swing{})) rig.swing = start.swing;
  return rig;
}

void Preferences::setRules(const Rules& rules) {
  const Rules sound = soundRules(rules);
  if (sound == m_rules) return;
  m_rules = sound;
  Q_EMIT rulesChanged();
}

void Preferences::setNewRig(const NewRig& start) {
  if (start == m_newRig) return;
  m_newRig = start;
  Q_EMIT newRigChanged();
}

void Preferences::setAutosave(int seconds) {
  seconds = std::clamp(seconds, kLeastAutosave_s, kMostAutosave_s);
  if (seconds == m_autosave_s) return;
  m_autosave_s = seconds;
  Q_EMIT autosaveChanged();
}

}  // namespace grainwise::ui
