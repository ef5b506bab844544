// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QTemporaryDir>
#include <algorithm>
#include <random>

#include "core/analysis/rule_table.h"
#include "core/model/check.h"
#include "tests/support/rig_parts.h"
#include "tests/support/ui_support.h"
#include "ui/text/rule_words.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

constexpr int kSpoiled = 1500;
constexpr int kWindows = 10;

/// `tests/run --fuzz` asks for more.
int spoiledFiles() { return std::max(kSpoiled, qEnvironmentVariableIntValue("GRAINWISE_SPOILED_SETTINGS")); }

/// Settings of which none is usual.
AllSettings unusual() {
  AllSettings all;
  all.scheme = Scheme::dark;
  all.followsSystem = false;
  all.typeScale = 1.5;
  all.reduceMotion = true;
  all.units = {true, false, true};
  all.language = QStringLiteral("nb");
  all.rules.junctions.hinge = 2.25;
  all.rules.grip.right = 0.285;
  all.rules.weights.depth = 0.5;
  all.newRig.water.depth = Feet(6.5);
  all.newRig.cast.launch = Degrees(-2.0);
  all.bench.lineLoop = LoopKind::sleeved;
  all.bench.tiedLoop = Inches(5.5);
  all.autosave_s = 20;
  return all;
}

/// A settings file as the program leaves it.
QByteArray soundSettings() {
  QSettings().clear();
  Settings settings;
  settings.store(unusual());
  settings.setGeometry(MainWindow().saveGeometry());
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

/// What is wrong with settings that were read; nothing, always.
std::string wrongWith(const AllSettings& all) {
  if (!(all.typeScale >= 1.0 && all.typeScale <= 2.0)) return "type scale";
  if (int(all.scheme) < 0 || all.scheme > Scheme::projector) return "no such scheme";
  if (!problemsOf(all.rules).empty()) return problemsOf(all.rules).front().row->key;
  if (!(withinReason(all.bench) == all.bench)) return "habits of the bench";
  Rig rig = rigFrom(all.newRig);
  rig.parts.push_back(test::rigs::fly(10));
  if (!check(rig).empty()) return "a new rig: " + describe(check(rig).front());
  if (all.autosave_s < kLeastAutosave_s || all.autosave_s > kMostAutosave_s) return "copies";
  return {};
}

/// A file of its own for every text: Qt takes one of the same size and moment for the same.
struct Texts {
  QString with(const QByteArray& text) {
    if (!last.isEmpty()) QFile::remove(last);
    last = folder.filePath(QStringLiteral("s%1.conf").arg(++count));
    test::write(last, text);
    return last;
  }
  QTemporaryDir folder;
  QString last;
  int count = 0;
};

QByteArray exported(const AllSettings& all) {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("out.conf"));
  REQUIRE(exportSettings(path, all).isEmpty());
  return test::bytes(path);
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture,
                 "settings of any make-up give settings within their limits and a window") {
  const QByteArray sound = soundSettings();
  CHECK(sound.contains("type_scale"));
  std::mt19937_64 random(9);
  const int files = spoiledFiles();
  int dark = 0, taken = 0;
  Texts texts;
  for (int i = 0; i < files; ++i) {
    const QByteArray text = spoiled(sound, random);
    put(text);
    INFO(text.toPercentEncoding().toStdString());
    Settings settings;
    const AllSettings all = settings.all();
    if (const std::string wrong = wrongWith(all); !wrong.empty()) FAIL(wrong);
    if (!settings.recentFiles().isEmpty()) FAIL("a recent file that is not there");
    dark += all.scheme == Scheme::dark ? 1 : 0;
    if (i % (files / kWindows) == 0) MainWindow().show();
    settings.store(all);
    if (!(settings.all() == all)) FAIL("what was stored reads back as something else");
    const auto imported = importSettings(texts.with(text));
    if (!imported) {
      if (imported.error().join(QString()).isEmpty()) FAIL("refused without a word");
      continue;
    }
    ++taken;
    if (const std::string wrong = wrongWith(*imported); !wrong.empty()) FAIL("imported " << wrong);
    const auto again = importSettings(texts.with(exported(*imported)));
    if (!again || !(*again == *imported)) FAIL("what was exported comes in as something else");
  }
  CHECK(dark > files / 10);  // most changes leave the scheme alone: or nothing was read
  CHECK(dark < files);
  CHECK(taken > 0);
  CHECK(taken < files);
  QSettings().clear();
}

TEST_CASE_METHOD(test::UiFixture, "a type size that is no number is the plain one") {
  put("[look]\ntype_scale=nan\n");
  CHECK(Settings().all().typeScale == 1.0);
  QSettings().clear();
}

TEST_CASE_METHOD(test::UiFixture, "a kept name with a NUL in it is no file, and nobody is asked for it") {
  put("[files]\nlast=\"/tmp/a\\x0.rig.json\"\nrecent=\"/tmp/a\\x0.rig.json\", /tmp/none.rig.json\n");
  REQUIRE(QSettings().value(QStringLiteral("files/last")).toString().contains(QChar::Null));
  CHECK(Settings().lastFile().isEmpty());
  CHECK(Settings().recentFiles().isEmpty());
  MainWindow().show();
  QSettings().clear();
}

TEST_CASE("every setting is taken just inside its limits and refused just outside") {
  struct Row {
    const char* key;
    const char* low;
    const char* high;
    const char* under;
    const char* over;
  };
  // Written out once more on purpose; the limits of the verdicts have a table of their own in core.
  const Row rows[] = {{"look/type_scale", "1", "2", "0.99", "2.01"},
                      {"autosave/seconds", "1", "600", "0", "601"},
                      {"bench/tied_loop_in", "0", "24", "-0.001", "24.001"},
                      {"new_rig/line_speed_ft_per_s", "0.001", "200", "0", "200.001"},
                      {"new_rig/loop_ft", "0.3", "15", "0.29", "15.01"},
                      {"new_rig/launch_deg", "-10", "45", "-10.01", "45.01"},
                      {"new_rig/depth_ft", "0.2", "60", "0.19", "60.01"},
                      {"new_rig/temperature_c", "0", "35", "-0.01", "35.01"},
                      {"new_rig/line_out_ft", "10", "150", "9.9", "151"},
                      {"new_rig/angle_deg", "0", "89", "-1", "90"},
                      {"new_rig/mend_s", "0", "30", "-1", "31"},
                      {"look/scheme", "light", "projector", "", "pink"},
                      {"look/language", "", "nb", "no", "xx"},
                      {"look/follows_system", "true", "false", "1", "yes"},
                      {"bench/loop", "none", "tied", "", "glued"},
                      {"limits/joints/hinge", "1.05", "5", "1.049", "5.001"},
                      {"limits/weights/depth", "0", "10", "-0.001", "10.001"}};
  const auto& all = settingsRows();
  for (const Row& row : rows) {
    INFO(row.key);
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const SettingsRow& r) { return r.key == QLatin1String(row.key); });
    REQUIRE(found != all.end());
    for (const char* good : {row.low, row.high}) {
      AllSettings into;
      INFO(good);
      CHECK(found->take(into, QLatin1String(good)));
      CHECK(found->text(into) == QLatin1String(good));
    }
    for (const char* bad : {row.under, row.over, "nan", "inf", "1e999", "two", "1,5"}) {
      AllSettings into;
      INFO(bad);
      CHECK_FALSE(found->take(into, QLatin1String(bad)));
      CHECK(into == AllSettings{});
    }
    CHECK_FALSE(found->wants().isEmpty());
  }
  for (const RuleRow& row : ruleRows()) {
    INFO(row.key);
    CHECK(ruleWordsKnown(row));
    CHECK(std::any_of(all.begin(), all.end(), [&](const SettingsRow& r) {
      return r.key == QStringLiteral("limits/") + QLatin1String(row.key);
    }));
  }
}

TEST_CASE_METHOD(test::UiFixture, "what is exported comes in again, and the program's own file too") {
  Texts texts;
  for (const AllSettings& all : {AllSettings{}, unusual()}) {
    const auto read = importSettings(texts.with(exported(all)));
    REQUIRE(read);
    CHECK(*read == all);
  }
  const auto own = importSettings(texts.with(soundSettings()));
  REQUIRE(own);
  CHECK(*own == unusual());
  // A key that a later program may know is passed over.
  QByteArray more = exported(unusual());
  more.replace("[look]\n", "[look]\nsparkle=yes\n");
  CHECK(importSettings(texts.with(more)) == unusual());
  QSettings().clear();
}

TEST_CASE_METHOD(test::UiFixture, "a broken or foreign settings file is refused with what, where and what would be right") {
  Texts texts;
  const QByteArray good = exported(unusual());
  const auto refusal = [&](QByteArray text) {
    const auto read = importSettings(texts.with(text));
    REQUIRE_FALSE(read);
    return read.error().join(QLatin1Char('\n'));
  };
  const auto with = [&](const char* old, const char* now) {
    REQUIRE(good.contains(old));
    QByteArray text = good;
    return refusal(text.replace(old, now));
  };
  const QByteArray rig = test::bytes(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/01-plain-winter.rig.json"));
  CHECK(refusal(rig).contains(QLatin1String("no settings file of Grainwise")));
  CHECK(refusal({}).contains(QLatin1String("no settings file")));
  CHECK(refusal(QByteArray(300000, 'a')).contains(QLatin1String("too large")));
  CHECK(refusal("[settings]\nformat=grainwise-settings\nno key at all\n").contains(QLatin1String("line 3 is neither")));
  CHECK(refusal(QByteArray("\0\1\2[grainwise-settings\n", 23)).contains(QLatin1String("line 1 is neither")));
  CHECK(with("version=1", "version=2").contains(QStringLiteral("version “2”")));
  CHECK(with("joints\\hinge=2.25", "joints\\hinge=lots")
            .contains(QStringLiteral("limits/joints/hinge is “lots”; it wants a number from 1.05 to 5")));
  CHECK(with("joints\\hinge=2.25", "joints\\hinge=1.5")
            .contains(QLatin1String("limits/joints/slow is 1.55; it must be under limits/joints/hinge")));
  CHECK(with("joints\\hinge=2.25\n", "").contains(QLatin1String("limits/joints/hinge is missing")));
  CHECK(with("scheme=dark", "scheme=pink").contains(QLatin1String("light, dark, sunlight, projector")));
  CHECK(with("depth_ft=6.5", "depth_ft=600").contains(QLatin1String("new_rig/depth_ft")));
  const auto none = importSettings(QStringLiteral("/no/such/settings.conf"));
  REQUIRE_FALSE(none);
  CHECK(none.error().front().contains(QLatin1String("cannot be read")));
  int refused = 0;
  for (qsizetype cut = 0; cut + 1 < good.size(); cut += 7) {
    if (!importSettings(texts.with(good.left(cut)))) ++refused;
  }
  CHECK(refused == int((good.size() - 2) / 7) + 1);  // wherever it was cut off
}

}  // namespace grainwise::ui
