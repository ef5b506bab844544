// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/out_table.h"

namespace grainwise::ui {
namespace {

QString guarded(const QString& words) {
  static const QString formula = QStringLiteral("=+-@\t\r");
  return !words.isEmpty() && formula.contains(words.front()) ? QLatin1Char('\'') + words : words;
}

QString inFile(const OutCell& cell) {
  QString words =
      cell.number ? QString::number(*cell.number, 'f', cell.decimals) : guarded(cell.words);
  if (!words.contains(QLatin1Char('"')) && !words.contains(QLatin1Char(',')) &&
      !words.contains(QLatin1Char('\n')) && !words.contains(QLatin1Char('\r'))) {
    return words;
  }
  words.replace(QLatin1Char('"'), QLatin1String("\"\""));
  return QLatin1Char('"') + words + QLatin1Char('"');
}

QString pasted(const OutCell& cell) {
  QString words = cell.number ? cell.shown() : guarded(cell.words);
  return words.replace(QLatin1Char('\t'), QLatin1Char(' '))
      .replace(QLatin1Char('\n'), QLatin1Char(' '));
}

QString inHtml(const OutCell& cell) {
  return (cell.number ? cell.shown() : guarded(cell.words)).toHtmlEscaped();
}

template <class Write>
QString lines(const OutTable& table, const QString& between, const QString& end, Write write) {
  QString text;
  const auto add = [&](const QStringList& cells) { text += cells.join(between) + end; };
  QStringList head;
  for (const QString& words : table.header) head << write(OutCell(words));
  add(head);
  for (const auto& row : table.rows) {
    QStringList cells;
    for (const OutCell& cell : row) cells << write(cell);
    add(cells);
  }
  return text;
}

}  // namespace

QString OutCell::shown() const {
  return number ? numberText(*number, decimals) : words;
}

OutCell figureCell(double value, Measure measure, int decimals, DisplayUnits units) {
  return {shownValue(value, measure, units), decimals};
}

QString headed(const QString& words, const QString& unit) {
  return QStringLiteral("%1 (%2)").arg(words, unit);
}

QByteArray csvOf(const OutTable& table) {
  return lines(table, QStringLiteral(","), QStringLiteral("\r\n"), inFile).toUtf8();
}

QString tabbedOf(const OutTable& table) {
  return lines(table, QStringLiteral("\t"), QStringLiteral("\n"), pasted);
}

QString htmlOf(const OutTable& table) {
  QString text = QStringLiteral("<table><thead><tr>");
  for (const QString& words : table.header)
    text += QLatin1String("<th>") + inHtml(OutCell(words)) + QLatin1String("</th>");
  text += QLatin1String("</tr></thead><tbody>");
  for (const auto& row : table.rows) {
    text += QLatin1String("<tr>");
    for (const OutCell& cell : row)
      text += QLatin1String("<td>") + inHtml(cell) + QLatin1String("</td>");
    text += QLatin1String("</tr>");
  }
  return text + QLatin1String("</tbody></table>");
}

}  // namespace grainwise::ui
