// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QByteArray>
#include <QFile>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <catch2/catch.hpp>

namespace Catch {
template <>
struct StringMaker<QString> {
  static std::string convert(const QString& s) { return '"' + s.toStdString() + '"'; }
};
template <>
struct StringMaker<QByteArray> {
  static std::string convert(const QByteArray& s) { return '"' + s.toStdString() + '"'; }
};
}  // namespace Catch

namespace grainwise::test {

/// Qt messages since the fixture began; those that a test platform always prints are left out.
inline QStringList& qtMessages() {
  static QStringList list;
  return list;
}

inline void collectQtMessage(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtDebugMsg || type == QtInfoMsg) return;
  // What the test platform itself cannot do.
  if (text.contains(QLatin1String("propagateSizeHints"))) return;
  if (text.contains(QLatin1String("This plugin does not support"))) return;
  if (text.contains(QLatin1String("XDG_RUNTIME_DIR"))) return;
  qtMessages().append(text);
}

/// What a file holds.
inline QByteArray bytes(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

/// Makes a file hold `text` and nothing else.
inline void write(const QString& path, const QByteArray& text) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(text) == text.size());
}

/// Fails the test when Qt warned or a top-level widget was left behind.
struct UiFixture {
  UiFixture() { qtMessages().clear(); }
  ~UiFixture() {
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    INFO("Qt said: " << qtMessages().join(QLatin1Char('\n')).toStdString());
    CHECK(qtMessages().isEmpty());
    CHECK(QApplication::topLevelWidgets().isEmpty());
  }
};

}  // namespace grainwise::test
