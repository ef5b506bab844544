// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <algorithm>
#include <random>

#include "tests/support/ui_support.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

constexpr int kSpoiled = 1500;
constexpr int kWindows = 10;

/// `tests/run --fuzz` asks for more.
int spoiledFiles() { return std::max(kSpoiled, qEnvironmentVariableIntValue("GRAINWISE_SPOILED_SETTINGS")); }

/// A settings file as the program leaves it.
QByteArray soundSettings() {
  QSettings().clear();
  Look look;
  look.setScheme(Scheme::dark);
  look.setTypeScale(1.5);
  look.setUnits({true, false, true});
  Settings settings;
  settings.store(look);
  settings.setGeometry(MainWindow(Shelf{}).saveGeometry());
  settings.setLastFile(QStringLiteral("/tmp/none/a.rig.json"));
  settings.addRecent(QStringLiteral("/tmp/none/b.rig.json"));
  QSettings().sync();
  QFile file(QSettings().fileName());
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

void put(const QByteArray& text) {
  const QString path = QSettings().fileName();
  REQUIRE(QDir().mkpath(QFileInfo(path).path()));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(text) == text.size());
  file.close();
  QSettings().sync();
}

QByteArray spoiled(QByteArray text, std::mt19937_64& random) {
  static const QList<QByteArray> kPieces{
      "nan",         "inf",    "-1", "1e999", "@Invalid()", "@ByteArray(\\x1\\xd9)",
      "99999999999", "true",   "\0", "[",     "=",          "\n",
      "%00",         "a, b, c"};
  for (auto times = 1 + random() % 4; times > 0; --times) {
    const auto at = qsizetype(random() % std::uint64_t(text.size() + 1));
    switch (random() % 4) {
      case 0:
        text.truncate(at);
        break;
      case 1:
        text.insert(at, char(random() % 256));
        break;
      case 2:
        text.remove(at, qsizetype(random() % 9));
        break;
      default: {
        const qsizetype value = text.indexOf('=', at);
        if (value < 0) break;
        const qsizetype end = text.indexOf('\n', value);
        text.replace(value + 1, (end < 0 ? text.size() : end) - value - 1,
                     kPieces[qsizetype(random() % std::uint64_t(kPieces.size()))]);
      }
    }
  }
  return text;
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture,
                 "settings of any make-up give a look within its limits and a window") {
  const QByteArray sound = soundSettings();
  CHECK(sound.contains("type_scale"));
  std::mt19937_64 random(9);
  const int files = spoiledFiles();
  int dark = 0;
  for (int i = 0; i < files; ++i) {
    const QByteArray text = spoiled(sound, random);
    put(text);
    INFO(text.toPercentEncoding().toStdString());
    Look look;
    Settings settings;
    settings.restore(look);
    if (!(look.typeScale() >= 1.0 && look.typeScale() <= 2.0))
      FAIL("type scale " << look.typeScale());
    if (int(look.scheme()) < 0 || look.scheme() > Scheme::projector) FAIL("no such scheme");
    if (!settings.recentFiles().isEmpty()) FAIL("a recent file that is not there");
    dark += look.scheme() == Scheme::dark ? 1 : 0;
    if (i % (files / kWindows) == 0) MainWindow(Shelf{}).show();
    settings.store(look);
    Look again;
    settings.restore(again);
    if (again.scheme() != look.scheme() || again.typeScale() != look.typeScale() ||
        !(again.units() == look.units()) || again.reduceMotion() != look.reduceMotion())
      FAIL("what was stored reads back as another look");
  }
  CHECK(dark > files / 10);  // most changes leave the scheme alone: or nothing was read
  CHECK(dark < files);
  QSettings().clear();
}

TEST_CASE_METHOD(test::UiFixture, "a type size that is no number is the plain one") {
  put("[look]\ntype_scale=nan\n");
  Look look;
  look.setTypeScale(1.7);
  Settings().restore(look);
  CHECK(look.typeScale() == 1.0);
  QSettings().clear();
}

}  // namespace grainwise::ui
