// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/pool.h"
#include "core/model/rig.h"
#include "ui/theme/look.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace grainwise::ui {

class BedChoice;
class NumberField;
class PoolBook;
class RigDocument;

/// The water of the rig and how it is fished, edited in place: name, surface speed (also timed by a leaf
/// that drifts), depth, temperature, salt, bed, angle and mend; a pool of the book to go to.
class WaterPanel : public QWidget {
  Q_OBJECT
 public:
  WaterPanel(Look* look, RigDocument* document, const PoolBook* pools, QWidget* parent = nullptr);

 Q_SIGNALS:
  /// A pool was chosen, and the rig is about to be in it.
  void goingTo(const grainwise::Pool& pool);

 private:
  struct Entry {
    NumberField* field;
    const char* key;
    std::function<std::optional<double>(const Water&)> get;
  };
  template <class Q>
  void addField(QHBoxLayout* row, NumberField* field, const char* key,
                std::optional<Q> Water::*member);
  template <class Q>
  void addFishing(QHBoxLayout* row, NumberField* field, const char* key, std::optional<Q> Swing::*member);
  void addLeaf(QHBoxLayout* row);
  void addNamed(const QString& name, QWidget* control);
  void addChoice(const QString& name, QComboBox* choice, int width);
  void fillPools();
  void takePool(int index);
  void timeLeaf();
  /// What is typed under one key is one step; without a key each edit is its own.
  void edit(const char* key, const Water& water);
  void refresh();
  void applyLook();
  [[nodiscard]] Water water() const;

  Look* m_look;
  RigDocument* m_document;
  const PoolBook* m_pools;
  QHBoxLayout* m_first;  ///< name, pool, bed
  QComboBox* m_pool;
  BedChoice* m_bed;
  QList<QLabel*> m_labels;
  QLineEdit* m_name;
  QLabel* m_measured;
  QLabel* m_caution;
  NumberField* m_leafWay;
  NumberField* m_leafTime;
  std::optional<double> m_way_ft;
  std::optional<double> m_time_s;
  QList<Entry> m_entries;
  NumberField* m_angle;
  NumberField* m_mend;
};

}  // namespace grainwise::ui
