// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/keep_awake.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusReply>

namespace grainwise::ui {
namespace {

/// A desktop that does not answer must not hold up the show.
constexpr int kPatience_ms = 500;

QDBusMessage call(const char* method) {
  return QDBusMessage::createMethodCall(
      QStringLiteral("org.freedesktop.ScreenSaver"), QStringLiteral("/org/freedesktop/ScreenSaver"),
      QStringLiteral("org.freedesktop.ScreenSaver"), QLatin1String(method));
}

}  // namespace

KeepAwake::KeepAwake(const QString& why) {
  // Without the variable the library would try to start a bus of its own.
  if (!qEnvironmentVariableIsEmpty("DBUS_SESSION_BUS_ADDRESS")) inhibit(why, QDBusConnection::sessionBus());
}

KeepAwake::KeepAwake(const QString& why, const QDBusConnection& bus) { inhibit(why, bus); }

void KeepAwake::inhibit(const QString& why, const QDBusConnection& bus) {
  if (!bus.isConnected()) return;
  QDBusMessage message = call("Inhibit");
  message << QStringLiteral("Grainwise") << why;
  const QDBusReply<uint> reply = bus.call(message, QDBus::Block, kPatience_ms);
  if (!reply.isValid()) return;
  m_held = true;
  m_cookie = reply.value();
  m_bus = bus.name();
}

KeepAwake::~KeepAwake() {
  if (!m_held) return;
  QDBusMessage message = call("UnInhibit");
  message << m_cookie;
  QDBusConnection(m_bus).call(message, QDBus::NoBlock);
}

}  // namespace grainwise::ui
