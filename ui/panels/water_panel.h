// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/rig.h"
#include "ui/theme/look.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace grainwise::ui {

class AnalysisFeed;
class NumberField;
class PoolBook;
class RigDocument;

/// The water of the rig and how it is fished, edited in place: name, surface speed (also timed by a leaf
/// that drifts), depth, temperature, salt, angle and mend; a pool of the book to go to; what the bed is.
class WaterPanel : public QWidget {
  Q_OBJECT
 public:
  WaterPanel(Look* look, RigDocument* document, QWidget* parent = nullptr);

  /// Offers the pools of a book to go to.
  void offerPools(const PoolBook* pools);
  /// Offers beds from smooth to rough, which the readings then take for every rig.
  void offerBeds(AnalysisFeed* feed);

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
  QComboBox* addChoice(const QString& name, const char* object, int width);
  void fillPools();
  void takePool(int index);
  void takeBed(int index);
  void timeLeaf();
  void edit(const char* key, const Water& water);
  void refresh();
  void applyLook();
  [[nodiscard]] Water water() const;

  Look* m_look;
  RigDocument* m_document;
  const PoolBook* m_pools = nullptr;
  AnalysisFeed* m_feed = nullptr;
  QHBoxLayout* m_first;  ///< name, pool, bed
  QComboBox* m_pool = nullptr;
  QComboBox* m_bed = nullptr;
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
