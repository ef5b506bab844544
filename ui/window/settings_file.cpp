// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QMap>
#include <QSettings>
#include <array>
#include <utility>

#include "core/analysis/rule_table.h"
#include "core/model/limits.h"
#include "ui/document/bench_habits.h"
#include "ui/document/new_rig_rows.h"
#include "ui/document/whole_file.h"
#include "ui/theme/language.h"

namespace grainwise::ui {
namespace {

class SettingsFile {
  Q_DECLARE_TR_FUNCTIONS(SettingsFile)
};

constexpr auto kFormatKey = "settings/format";
constexpr auto kFormat = "grainwise-settings";
constexpr auto kVersionKey = "settings/version";
constexpr auto kVersion = "1";
constexpr qint64 kMostBytes = qint64(256) * 1024;
constexpr int kMostTold = 6;
constexpr std::array<std::pair<Scheme, const char*>, 4> kSchemes{{{Scheme::light, "light"},
                                                                  {Scheme::dark, "dark"},
                                                                  {Scheme::sunlight, "sunlight"},
                                                                  {Scheme::projector, "projector"}}};

QString written(double value) { return QString::fromStdString(shortest(value)); }

std::optional<double> number(const QString& text) {
  bool good = false;
  const double value = text.toDouble(&good);
  return good ? std::optional(value) : std::nullopt;
}

QString fromTo(double low, double high) {
  return SettingsFile::tr("a number from %1 to %2").arg(written(low), written(high));
}

SettingsRow numberRow(const char* key, Limit limit, const std::function<double(const AllSettings&)>& get,
                      const std::function<void(AllSettings&, double)>& set) {
  return {QLatin1String(key), [get](const AllSettings& all) { return written(get(all)); },
          [limit, set](AllSettings& all, const QString& text) {
            const auto value = number(text);
            if (!value || !limit.holds(*value)) return false;
            set(all, *value);
            return true;
          },
          [limit] { return fromTo(limit.low, limit.high); }};
}

template <class Reach>
SettingsRow switchRow(const char* key, Reach reach) {
  return {QLatin1String(key),
          [reach](AllSettings all) { return QLatin1String(reach(all) ? "true" : "false"); },
          [reach](AllSettings& all, const QString& text) {
            if (text != QLatin1String("true") && text != QLatin1String("false")) return false;
            reach(all) = text == QLatin1String("true");
            return true;
          },
          [] { return SettingsFile::tr("true or false"); }};
}

SettingsRow schemeRow() {
  QStringList words;
  for (const auto& [scheme, word] : kSchemes) words.append(QLatin1String(word));
  return {QStringLiteral("look/scheme"),
          [](const AllSettings& all) {
            return QString::fromLatin1(kSchemes[std::size_t(all.scheme)].second);
          },
          [](AllSettings& all, const QString& text) {
            for (const auto& [scheme, word] : kSchemes) {
              if (text != QLatin1String(word)) continue;
              all.scheme = scheme;
              return true;
            }
            return false;
          },
          [words] { return SettingsFile::tr("one of %1").arg(words.join(QStringLiteral(", "))); }};
}

SettingsRow languageRow() {
  QStringList codes;
  for (const Language& one : languages()) codes.append(one.code);
  return {QStringLiteral("look/language"), [](const AllSettings& all) { return all.language; },
          [codes](AllSettings& all, const QString& text) {
            if (!text.isEmpty() && !codes.contains(text)) return false;
            all.language = text;
            return true;
          },
          [codes] { return SettingsFile::tr("nothing, or one of %1").arg(codes.join(QStringLiteral(", "))); }};
}

SettingsRow loopRow() {
  return {QLatin1String(kBenchLoop),
          [](const AllSettings& all) { return QString::fromLatin1(wordOf(all.bench.lineLoop)); },
          [](AllSettings& all, const QString& text) {
            const auto kind = loopKindNamed(text.toStdString());
            if (!kind) return false;
            all.bench.lineLoop = *kind;
            return true;
          },
          [] { return SettingsFile::tr("one of %1").arg(QStringLiteral("none, welded, sleeved, tied")); }};
}

SettingsRow newRigRow(const NewRigRow& row) {
  return {QLatin1String(row.key),
          [&row](const AllSettings& all) {
            const auto value = row.get(all.newRig);
            return value ? written(*value) : QString();
          },
          [&row](AllSettings& all, const QString& text) {
            const auto value = number(text);
            if (!text.isEmpty() && (!value || !row.limit.holds(*value))) return false;
            row.set(all.newRig, value);
            return true;
          },
          [&row] { return SettingsFile::tr("nothing, or %1").arg(fromTo(row.limit.low, row.limit.high)); }};
}

std::vector<SettingsRow> makeRows() {
  std::vector<SettingsRow> rows{
      schemeRow(),
      switchRow("look/follows_system", [](AllSettings& all) -> bool& { return all.followsSystem; }),
      numberRow("look/type_scale", {"", "", 1, 2}, [](const AllSettings& all) { return all.typeScale; },
                [](AllSettings& all, double value) { all.typeScale = value; }),
      switchRow("look/reduce_motion", [](AllSettings& all) -> bool& { return all.reduceMotion; }),
      languageRow(),
      switchRow("units/metres", [](AllSettings& all) -> bool& { return all.units.metres; }),
      switchRow("units/grams", [](AllSettings& all) -> bool& { return all.units.grams; }),
      switchRow("units/celsius", [](AllSettings& all) -> bool& { return all.units.celsius; }),
      numberRow("autosave/seconds", {"", "s", kLeastAutosave_s, kMostAutosave_s},
                [](const AllSettings& all) { return double(all.autosave_s); },
                [](AllSettings& all, double value) { all.autosave_s = int(value); }),
      loopRow()};
  for (const BenchHabit& habit : kBenchHabits) {
    rows.push_back(numberRow(
        habit.key, kAllowance, [&habit](const AllSettings& all) { return (all.bench.*habit.length).value(); },
        [&habit](AllSettings& all, double value) { all.bench.*habit.length = Inches(value); }));
  }
  for (const NewRigRow& row : kNewRigRows) rows.push_back(newRigRow(row));
  for (const RuleRow& row : ruleRows()) {
    SettingsRow one = numberRow("", {row.what, "", row.low, row.high},
                                [&row](const AllSettings& all) { return row.get(all.rules); },
                                [&row](AllSettings& all, double value) { row.set(all.rules, value); });
    one.key = QStringLiteral("limits/") + QLatin1String(row.key);
    rows.push_back(one);
  }
  return rows;
}

QString keyOf(const RuleRow& row) { return QStringLiteral("limits/") + QLatin1String(row.key); }

/// What stands in the wrong order, each pair once.
QStringList disorder(const Rules& rules) {
  QStringList lines;
  for (const RuleProblem& problem : problemsOf(rules)) {
    if (problem.under == nullptr) continue;
    lines.append(SettingsFile::tr("%1 is %2; it must be under %3, which is %4.")
                     .arg(keyOf(*problem.row), written(problem.row->get(rules)), keyOf(*problem.under),
                          written(problem.under->get(rules))));
  }
  return lines;
}

QStringList fewOf(QStringList lines) {
  const auto all = lines.size();
  if (all <= kMostTold) return lines;
  lines = lines.mid(0, kMostTold);
  lines.append(SettingsFile::tr("and more: %1 in all").arg(all));
  return lines;
}

/// What is wrong with the file before a key of it is looked at.
QString unfit(const QString& path) {
  QFile file(path);
  if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) {
    return SettingsFile::tr("The file cannot be read.");
  }
  if (file.size() > kMostBytes) {
    return SettingsFile::tr("This is no settings file of Grainwise: it is too large to be one.");
  }
  const QByteArray bytes = file.readAll();
  if (!bytes.contains(kFormat)) {
    return SettingsFile::tr("This is no settings file of Grainwise. Choose one that was exported here.");
  }
  if (!bytes.endsWith('\n')) {
    return SettingsFile::tr("The file ends in the middle of a line: it was cut off. Export it anew.");
  }
  const QList<QByteArray> lines = bytes.split('\n');
  for (qsizetype i = 0; i < lines.size(); ++i) {
    const QByteArray line = lines[i].trimmed();
    if (line.isEmpty() || line.startsWith(';') || line.contains('=')) continue;
    if (line.startsWith('[') && line.endsWith(']')) continue;
    return SettingsFile::tr("The file is broken: line %1 is neither a [group] nor a key with its value.").arg(i + 1);
  }
  return {};
}

QString quoted(const QVariant& value) {
  QString text = value.toString().left(40);
  for (QChar& c : text) {
    if (!c.isPrint()) c = QLatin1Char(' ');
  }
  return text;
}

}  // namespace

const std::vector<SettingsRow>& settingsRows() {
  static const std::vector<SettingsRow> rows = makeRows();
  return rows;
}

AllSettings readSettings(const QSettings& file) {
  AllSettings all;
  for (const SettingsRow& row : settingsRows()) {
    if (file.contains(row.key)) row.take(all, file.value(row.key).toString());
  }
  all.rules = soundRules(all.rules);
  return all;
}

void writeSettings(QSettings& file, const AllSettings& all) {
  const auto keep = [&](const QString& key, const QString& text) {
    if (!file.contains(key) || file.value(key).toString() != text) file.setValue(key, text);
  };
  keep(QLatin1String(kFormatKey), QLatin1String(kFormat));
  keep(QLatin1String(kVersionKey), QLatin1String(kVersion));
  for (const SettingsRow& row : settingsRows()) keep(row.key, row.text(all));
}

tl::expected<AllSettings, QStringList> importSettings(const QString& path) {
  if (const QString why = unfit(path); !why.isEmpty()) return tl::unexpected(QStringList{why});
  const QSettings file(path, QSettings::IniFormat);
  if (file.value(QLatin1String(kFormatKey)).toString() != QLatin1String(kFormat)) {
    return tl::unexpected(QStringList{SettingsFile::tr(
        "This is no settings file of Grainwise. Choose one that was exported here.")});
  }
  const QVariant version = file.value(QLatin1String(kVersionKey));
  if (version.toString() != QLatin1String(kVersion)) {
    return tl::unexpected(QStringList{
        SettingsFile::tr("Settings of version “%1” are not known here; version %2 is.")
            .arg(quoted(version), QLatin1String(kVersion))});
  }
  AllSettings all;
  QStringList problems;
  for (const SettingsRow& row : settingsRows()) {
    if (!file.contains(row.key)) {
      problems.append(SettingsFile::tr("%1 is missing; it wants %2.").arg(row.key, row.wants()));
    } else if (!row.take(all, file.value(row.key).toString())) {
      problems.append(SettingsFile::tr("%1 is “%2”; it wants %3.")
                          .arg(row.key, quoted(file.value(row.key)), row.wants()));
    }
  }
  if (problems.isEmpty()) problems = disorder(all.rules);
  if (!problems.isEmpty()) return tl::unexpected(fewOf(problems));
  return all;
}

QString exportSettings(const QString& path, const AllSettings& all) {
  // Keys and values are plain words and numbers: nothing has to be escaped.
  QMap<QString, QStringList> groups;
  const auto add = [&](const QString& key, const QString& text) {
    const QString inGroup = key.section(QLatin1Char('/'), 1).replace(QLatin1Char('/'), QLatin1Char('\\'));
    groups[key.section(QLatin1Char('/'), 0, 0)].append(inGroup + QLatin1Char('=') + text);
  };
  add(QLatin1String(kFormatKey), QLatin1String(kFormat));
  add(QLatin1String(kVersionKey), QLatin1String(kVersion));
  for (const SettingsRow& row : settingsRows()) add(row.key, row.text(all));
  QString text;
  for (auto group = groups.cbegin(); group != groups.cend(); ++group) {
    text += QLatin1Char('[') + group.key() + QStringLiteral("]\n") +
            group.value().join(QLatin1Char('\n')) + QStringLiteral("\n\n");
  }
  return writeWhole(path, text.toUtf8());
}

}  // namespace grainwise::ui
