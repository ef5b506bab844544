// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <optional>

#include "ui/window/settings_file.h"

namespace grainwise::ui {

class OwnStore;
class Settings;

/// What the person has set, from the settings file to where it is used and back: Look, limits, new rigs,
/// habits of the bench and the copies of unsaved work. Every change is written at once.
class SettingsDesk : public QObject {
  Q_OBJECT
 public:
  /// Puts what is remembered into all of them.
  SettingsDesk(Settings* settings, Look* look, Preferences* preferences, OwnStore* own,
               QObject* parent = nullptr);

  [[nodiscard]] Look* look() const { return m_look; }
  [[nodiscard]] Preferences* preferences() const { return m_preferences; }
  [[nodiscard]] OwnStore* own() const { return m_own; }

  /// Everything as it is now.
  [[nodiscard]] AllSettings now() const;
  void apply(const AllSettings& all);
  void setLanguage(const QString& code);

  /// `apply`, with what was there before kept for `takeBack`.
  void replace(const AllSettings& all);
  [[nodiscard]] bool canTakeBack() const { return m_before.has_value(); }
  void takeBack();

 Q_SIGNALS:
  void changed();
  /// The window speaks it from its next start.
  void languageChanged(const QString& code);

 private:
  void note();

  Settings* m_settings;
  Look* m_look;
  Preferences* m_preferences;
  OwnStore* m_own;
  QString m_language;
  std::optional<AllSettings> m_before;
  bool m_applying = false;
};

}  // namespace grainwise::ui
