// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "ui/window/settings_page.h"

class QCheckBox;
class QLineEdit;

namespace grainwise::ui {

/// How everything is shown: units, colours, type, motion, language.
class LookPage : public SettingsPage {
  Q_OBJECT
 public:
  LookPage(SettingsDesk* desk, QWidget* parent);

 private:
  void refresh();

  QComboBox* m_lengths;
  QComboBox* m_masses;
  QComboBox* m_degrees;
  QComboBox* m_scheme;
  QComboBox* m_type;
  QCheckBox* m_still;
  QComboBox* m_language;
};

/// What a new rig starts with; what is left open is as usual for its head.
class NewRigPage : public SettingsPage {
  Q_OBJECT
 public:
  NewRigPage(SettingsDesk* desk, QWidget* parent);

 private:
  void refresh();

  std::vector<ValueRow*> m_rows;  ///< in the order of kNewRigRows
  QPushButton* m_reset;
};

/// The line that loops, splices and knots take at this bench.
class BenchPage : public SettingsPage {
  Q_OBJECT
 public:
  BenchPage(SettingsDesk* desk, QWidget* parent);

 private:
  void refresh();

  QComboBox* m_kind;
  std::vector<ValueRow*> m_rows;  ///< in the order of kBenchHabits
  QPushButton* m_reset;
};

/// How often unsaved work is copied, and the settings as a file: out, in, all as usual, and back.
class FilePage : public SettingsPage {
  Q_OBJECT
 public:
  FilePage(SettingsDesk* desk, QWidget* parent);

  /// Where to, and from where; asked with a dialog unless a test answers.
  std::function<QString()> askExportPath;
  std::function<QString()> askImportPath;

 private:
  void importFile();
  void exportFile();
  void say(const QString& words, bool good);
  void refresh();

  ValueRow* m_autosave;
  QPushButton* m_back;
  QPushButton* m_usual;
  QLabel* m_words;
  QLineEdit* m_place;
};

}  // namespace grainwise::ui
