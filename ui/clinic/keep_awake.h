// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>

class QDBusConnection;

namespace grainwise::ui {

/// Keeps the screen from sleeping as long as it lives, by asking the desktop (org.freedesktop.ScreenSaver
/// on the session bus); nothing happens where nobody answers. Released at the end, and by the bus itself
/// should the program die.
class KeepAwake {
 public:
  explicit KeepAwake(const QString& why);
  /// On another bus, for tests.
  KeepAwake(const QString& why, const QDBusConnection& bus);
  ~KeepAwake();
  Q_DISABLE_COPY_MOVE(KeepAwake)

  [[nodiscard]] bool held() const { return m_held; }

 private:
  void inhibit(const QString& why, const QDBusConnection& bus);
  bool m_held = false;
  uint m_cookie = 0;
  QString m_bus;
};

}  // namespace grainwise::ui
