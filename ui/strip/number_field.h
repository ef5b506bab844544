// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPointer>
#include <QWidget>
#include <optional>

#include "core/model/limits.h"
#include "ui/text/quantities.h"
#include "ui/theme/look.h"

class QLineEdit;
class QVBoxLayout;

namespace grainwise::ui {

/// Where a row of fields says what is wrong, in the full width of the row; hidden while nothing is.
class ErrorLine : public QLabel {
  Q_OBJECT
 public:
  ErrorLine(Look* look, QWidget* parent);
  /// `field` has this to say; with no words, what it said before is settled.
  void say(const QWidget* field, const QString& words);

 private:
  void applyLook();

  Look* m_look;
  QPointer<const QWidget> m_field;
};

/// One typed number: its name above, the field with its unit, and under it (or in the row's line) what
/// is wrong while the typing cannot be taken. Takes both decimal signs and a unit behind the number;
/// what is outside the limit or cannot be read is never passed on, and the value from before the typing
/// is passed on again in place of what was passed on underway. Escape does the same. `+` and `-` step
/// lengths by half a foot.
class NumberField : public QWidget {
  Q_OBJECT
 public:
  NumberField(Look* look, const QString& name, Measure measure, Limit limit,
              QWidget* parent = nullptr);

  /// Shows a value in the file's unit, or nothing; `digits` are shown as typed where they are given
  /// and the display unit is the file's. Leaves the text alone while the user is typing the same value.
  void setValue(std::optional<double> value, const QString& digits = {});
  /// A grey figure shown while nothing is typed: what follows from the rest.
  void setDerived(const QString& words);
  /// Whether emptying the field is allowed (`cleared`), else it is an error like any other.
  void setOptional(bool optional) { m_optional = optional; }

  /// In a table only the first row carries the names on screen; the ear hears them in every row.
  void setNameVisible(bool visible);

  /// Between so many pixels wide, but never narrower than its name.
  void setWidths(int least, int most);

  [[nodiscard]] QLineEdit* edit() const { return m_edit; }
  [[nodiscard]] QString error() const { return m_errorText; }
  void setError(const QString& words);
  /// What is typed cannot be taken, for a reason beyond the field's own limit.
  void refuse(const QString& why);
  /// What is wrong is said in `line` instead of under the field.
  void sayErrorsIn(ErrorLine* line) { m_line = line; }

 Q_SIGNALS:
  void typed(const Typed& number);
  void cleared();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void read();
  void begin();
  void goBack();
  bool escape();
  void step(double by_ft);
  void applyLook();
  void refreshText();
  void refreshWidths();

  Look* m_look;
  QString m_nameText;
  Measure m_measure;
  Limit m_limit;
  bool m_optional = false;
  std::optional<double> m_value;
  QString m_digits;
  bool m_typing = false;                ///< since the last Enter, or since the field was entered
  std::optional<double> m_valueBefore;  ///< before the typing
  QString m_digitsBefore;
  QString m_errorText;
  QPointer<ErrorLine> m_line;
  int m_least = 0;
  int m_most = QWIDGETSIZE_MAX;
  QLabel* m_name;
  QLineEdit* m_edit;
  QLabel* m_error;
};

/// A label over what is typed or chosen, as a number field has its name over it.
QVBoxLayout* underLabel(QLabel* label, QWidget* field);

}  // namespace grainwise::ui
