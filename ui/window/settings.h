// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include "ui/window/settings_file.h"

namespace grainwise::ui {

/// What the program remembers between two sittings: one settings file in the user's configuration
/// folder. Holds no rig data.
class Settings {
 public:
  /// What the person has set; what cannot be taken is as usual.
  [[nodiscard]] AllSettings all() const;
  void store(const AllSettings& all);

  /// The code of the language that was chosen; empty for the system's.
  [[nodiscard]] QString language() const;

  [[nodiscard]] QByteArray geometry() const;
  void setGeometry(const QByteArray& geometry);
  /// The same of another window, by its name.
  [[nodiscard]] QByteArray place(const QString& window) const;
  void setPlace(const QString& window, const QByteArray& geometry);

  /// The face and the page of the drawer that were open last; empty when nothing is known.
  [[nodiscard]] QString face() const;
  [[nodiscard]] QString drawer() const;
  void setOpen(const QString& face, const QString& drawer);

  /// The file that was open last; empty when there was none.
  [[nodiscard]] QString lastFile() const;
  void setLastFile(const QString& path);

  /// Newest first, at most ten, each once; files that have gone are left out.
  [[nodiscard]] QStringList recentFiles() const;
  void addRecent(const QString& path);
  void clearRecent();
};

}  // namespace grainwise::ui
