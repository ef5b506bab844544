// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <tl/expected.hpp>
#include <vector>

#include "core/bench/loops.h"
#include "ui/document/preferences.h"
#include "ui/theme/look.h"

class QSettings;

namespace grainwise::ui {

/// Everything that a person may set, as one value: what the settings file holds besides what was open, and
/// what is exported and imported.
struct AllSettings {
  Scheme scheme = Scheme::light;
  bool followsSystem = true;
  double typeScale = 1.0;
  bool reduceMotion = false;
  DisplayUnits units;
  QString language;  ///< a code; empty for the system's
  Rules rules;
  NewRig newRig;
  BenchRules bench;
  int autosave_s = kUsualAutosave_s;
  bool operator==(const AllSettings&) const = default;
};

/// One of them as the file has it: its key, its text, and how a text is taken; a text that cannot be is
/// refused and changes nothing. Numbers have a decimal point and the units of the rig files, whatever the
/// locale.
struct SettingsRow {
  QString key;
  std::function<QString(const AllSettings&)> text;
  std::function<bool(AllSettings&, const QString&)> take;
  std::function<QString()> wants;  ///< what would be right, in words
};
const std::vector<SettingsRow>& settingsRows();

/// What is there and can be taken; everything else stays usual. Nothing is wrong with the result.
AllSettings readSettings(const QSettings& file);
/// Writes what has changed.
void writeSettings(QSettings& file, const AllSettings& all);

/// A file as `exportSettings` writes it, all or nothing: what is wrong with it, a line each, when it is no
/// such file, broken, of another version, lacks something or holds what cannot be. Keys that are not known
/// are passed over.
tl::expected<AllSettings, QStringList> importSettings(const QString& path);
/// What stopped it, in words; empty when it is written.
QString exportSettings(const QString& path, const AllSettings& all);

}  // namespace grainwise::ui
