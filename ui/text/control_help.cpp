// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/control_help.h"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>

#include "ui/text/control_help_rows.h"
#include "ui/text/control_reason_rows.h"

namespace grainwise::ui {
namespace {

class ControlHelp {
  Q_DECLARE_TR_FUNCTIONS(grainwise::ui::ControlHelp)
};

using Table = QHash<QString, const char*>;

template <std::size_t N>
Table tableOf(const ControlRow (&rows)[N]) {
  Table table;
  for (const ControlRow& row : rows) {
    const QStringList names = QString::fromLatin1(row.names).split(QLatin1Char(' '));
    for (const QString& name : names) table.insert(name, row.words);
  }
  return table;
}

/// The words of the longest entry that the name is, or that it goes on from with a digit or a "_".
QString found(const Table& table, const QString& name) {
  for (qsizetype length = name.size(); length > 0; --length) {
    const bool ends = length == name.size() || name[length].isDigit() || name[length] == QLatin1Char('_') ||
                      name[length - 1] == QLatin1Char('_');
    if (!ends) continue;
    const auto entry = table.constFind(name.left(length));
    if (entry != table.cend()) return ControlHelp::tr(*entry);
  }
  return {};
}

}  // namespace

QString controlHelp(const QString& name) {
  static const Table table = tableOf(kControlHelp);
  return found(table, name);
}

QString disabledReason(const QString& name) {
  static const Table table = tableOf(kDisabledReasons);
  return found(table, name);
}

}  // namespace grainwise::ui
