// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/rig.h"
#include "ui/theme/look.h"

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace grainwise::ui {

class NumberField;
class RigDocument;

/// The water of the rig, edited in place: its name, surface speed (also timed by a
/// leaf that drifts), depth, temperature, salt.
class WaterPanel : public QWidget {
  Q_OBJECT
 public:
  WaterPanel(Look* look, RigDocument* document, QWidget* parent = nullptr);

 private:
  struct Entry {
    NumberField* field;
    const char* key;
    std::function<std::optional<double>(const Water&)> get;
  };
  template <class Q>
  void addField(QHBoxLayout* row, NumberField* field, const char* key,
                std::optional<Q> Water::*member);
  void addLeaf(QHBoxLayout* row);
  void timeLeaf();
  void edit(const char* key, const Water& water);
  void refresh();
  void applyLook();
  [[nodiscard]] Water water() const;

  Look* m_look;
  RigDocument* m_document;
  QLabel* m_nameLabel;
  QLineEdit* m_name;
  QLabel* m_measured;
  QLabel* m_caution;
  NumberField* m_leafWay;
  NumberField* m_leafTime;
  std::optional<double> m_way_ft;
  std::optional<double> m_time_s;
  QList<Entry> m_entries;
};

}  // namespace grainwise::ui
