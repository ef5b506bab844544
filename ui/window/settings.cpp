// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings.h"

#include <QFileInfo>
#include <QSettings>

namespace grainwise::ui {
namespace {
constexpr auto kLanguage = "look/language";
constexpr auto kGeometry = "window/geometry";
constexpr auto kPlaces = "window/place_";
constexpr auto kFace = "window/face";
constexpr auto kDrawer = "window/drawer";
constexpr auto kLast = "files/last";
constexpr auto kRecent = "files/recent";
constexpr int kMostRecent = 10;

QString key(const char* name) { return QLatin1String(name); }

/// A spoiled settings file may hold anything; no file's name has a NUL.
bool mayBeFile(const QString& path) { return !path.contains(QChar::Null); }

/// What is kept already is not written again: a start would wait for the disk.
void keep(QSettings& s, const char* name, const QVariant& value) {
  if (s.value(key(name)).toString() != value.toString() || !s.contains(key(name))) s.setValue(key(name), value);
}
}  // namespace

AllSettings Settings::all() const { return readSettings(QSettings()); }

void Settings::store(const AllSettings& all) {
  QSettings s;
  writeSettings(s, all);
}

QString Settings::language() const { return QSettings().value(key(kLanguage)).toString(); }

QByteArray Settings::geometry() const { return QSettings().value(key(kGeometry)).toByteArray(); }

void Settings::setGeometry(const QByteArray& geometry) {
  QSettings().setValue(key(kGeometry), geometry);
}

QByteArray Settings::place(const QString& window) const {
  return QSettings().value(key(kPlaces) + window).toByteArray();
}

void Settings::setPlace(const QString& window, const QByteArray& geometry) {
  QSettings().setValue(key(kPlaces) + window, geometry);
}

QString Settings::face() const { return QSettings().value(key(kFace)).toString(); }

QString Settings::drawer() const { return QSettings().value(key(kDrawer)).toString(); }

void Settings::setOpen(const QString& face, const QString& drawer) {
  QSettings s;
  s.setValue(key(kFace), face);
  s.setValue(key(kDrawer), drawer);
}

QString Settings::lastFile() const {
  const QString path = QSettings().value(key(kLast)).toString();
  return mayBeFile(path) ? path : QString();
}

void Settings::setLastFile(const QString& path) {
  QSettings s;
  keep(s, kLast, path);
}

QStringList Settings::recentFiles() const {
  QStringList there;
  const QStringList all = QSettings().value(key(kRecent)).toStringList();
  for (const QString& path : all) {
    if (mayBeFile(path) && QFileInfo(path).isFile()) there.append(path);
  }
  return there;
}

void Settings::addRecent(const QString& path) {
  const QString whole = QFileInfo(path).absoluteFilePath();
  QSettings s;
  QStringList list = s.value(key(kRecent)).toStringList();
  list.removeAll(whole);
  list.prepend(whole);
  if (list == s.value(key(kRecent)).toStringList()) return;
  s.setValue(key(kRecent), QStringList(list.mid(0, kMostRecent)));
}

void Settings::clearRecent() { QSettings().remove(key(kRecent)); }

}  // namespace grainwise::ui
