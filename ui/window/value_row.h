// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/model/limits.h"
#include "ui/text/quantities.h"
#include "ui/theme/look.h"

class QLabel;
class QPushButton;

namespace grainwise::ui {

class NumberField;

/// What one number of the settings is.
struct ValueSpec {
  QString object;  ///< name of its field for tests and help
  QString name;
  Measure measure = Measure::plain;
  Limit limit{};         ///< in the file's unit
  QString unit;          ///< of a plain number: "%", "rods"
  bool optional = false; ///< it may be left open
};

/// A number of the settings in one line: its name, the field with what is wrong under it, what is usual
/// and whose that is, and a button that puts it back.
class ValueRow : public QWidget {
  Q_OBJECT
 public:
  ValueRow(Look* look, const ValueSpec& spec, QWidget* parent);

  /// `usual` is said behind the field; the button shows while it is not `isUsual`.
  void setValue(std::optional<double> value, const QString& usual, bool isUsual);
  void refuse(const QString& why);
  [[nodiscard]] NumberField* field() const { return m_field; }

 Q_SIGNALS:
  /// In the file's unit.
  void typed(double value);
  void cleared();
  void resetWanted();

 private:
  void applyLook();

  Look* m_look;
  ValueSpec m_spec;
  QLabel* m_name;
  NumberField* m_field;
  QLabel* m_usual;
  QPushButton* m_reset;
};

}  // namespace grainwise::ui
