// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QStringList>
#include <optional>
#include <vector>

#include "ui/text/quantities.h"

/// Tables on their way out of the window: into a file, onto the clipboard.
namespace grainwise::ui {

/// A cell: words, or a number with the decimals that it is known to.
struct OutCell {
  OutCell(QString text) : words(std::move(text)) {}  // NOLINT(google-explicit-constructor): a row reads as a list
  OutCell(double value, int places) : number(value), decimals(places) {}
  static OutCell none() { return {QString()}; }
  /// The number when there is one, else an empty cell.
  static OutCell maybe(std::optional<double> value, int decimals) {
    return value ? OutCell(*value, decimals) : none();
  }
  /// As it is read in the window: by the person's locale.
  [[nodiscard]] QString shown() const;

  QString words;
  std::optional<double> number;
  int decimals = 0;
};

/// A figure in the person's unit; `value` is in the unit of a rig file.
OutCell figureCell(double value, Measure measure, int decimals, DisplayUnits units);
/// "Length (ft)".
QString headed(const QString& words, const QString& unit);

/// The same numbers as a diagram, or what a table of the window says; a number's unit stands in its header.
struct OutTable {
  QStringList header;
  std::vector<std::vector<OutCell>> rows;
};

/// RFC 4180 in UTF-8: commas, CRLF, decimal points whatever the locale. Words that a spreadsheet would take
/// for a formula (they begin with =, +, -, @, a tab or a carriage return; OWASP, CSV injection) get an
/// apostrophe in front.
QByteArray csvOf(const OutTable& table);
/// For the clipboard: tabs and line ends, numbers by the locale, as spreadsheets paste them.
QString tabbedOf(const OutTable& table);
/// For the clipboard: a table for a text.
QString htmlOf(const OutTable& table);

}  // namespace grainwise::ui
