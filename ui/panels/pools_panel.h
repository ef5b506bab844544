// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/model/pool.h"
#include "ui/theme/look.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace grainwise::ui {

class BedChoice;
class NumberField;
class PoolBook;
class RigDocument;

/// The pools, edited in place: the water of each, and where the fly is wanted there. Each change can be
/// taken back; "Fish here" puts the rig into the pool that is chosen.
class PoolsPanel : public QWidget {
  Q_OBJECT
 public:
  PoolsPanel(Look* look, RigDocument* document, PoolBook* pools, QWidget* parent = nullptr);

  /// File dialogs, unless a test answers; empty for none.
  std::function<QString()> askOpenPath;
  std::function<QString()> askSavePath;

 private:
  enum class Wanted { nothing, offBottom, belowSurface };
  void layOut();
  QPushButton* addButton(const char* name, const QString& words, std::function<void()> what);
  NumberField* addField(const char* name, NumberField* field, bool optional,
                        std::function<void(Pool&, std::optional<double>)> put,
                        std::function<std::optional<double>(const Pool&)> get);
  [[nodiscard]] std::optional<Pool> current() const;
  void edit(const std::function<void(Pool&)>& change);
  void editWanted();
  void editName();
  void add();
  void openFile();
  void saveFile();
  void fillList();
  void fillFields();
  void applyLook();

  struct Entry {
    NumberField* field;
    std::function<std::optional<double>(const Pool&)> get;
  };
  Look* m_look;
  RigDocument* m_document;
  PoolBook* m_pools;
  QListWidget* m_list;
  QLineEdit* m_name;
  BedChoice* m_bed;
  QComboBox* m_wanted;
  NumberField* m_low;
  NumberField* m_high;
  QLabel* m_note;
  QLabel* m_nameLabel;
  QLabel* m_bedLabel;
  QLabel* m_wantedLabel;
  QList<QPushButton*> m_buttons;
  QPushButton* m_takeBack;
  QList<Entry> m_entries;
  std::optional<double> m_typedLow, m_typedHigh;
  bool m_filling = false;
};

}  // namespace grainwise::ui
