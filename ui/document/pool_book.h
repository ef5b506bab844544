// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <vector>

#include "core/model/pool.h"
#include "core/model/problem.h"
#include "core/model/rig.h"

namespace grainwise::ui {

/// The pools that the window knows: the user's own file, or the sample river until there is one.
/// Every change is written at once where there is a file to write to; each can be taken back.
class PoolBook : public QObject {
  Q_OBJECT
 public:
  explicit PoolBook(QObject* parent = nullptr) : QObject(parent) {}

  [[nodiscard]] const Pools& pools() const { return m_pools; }
  [[nodiscard]] QStringList names() const;

  /// Starts from these pools, with nothing to take back.
  void start(const Pools& pools);
  /// The file that changes are written to; empty: none.
  void setStore(const QString& path) { m_store = path; }
  /// Reads a pools file; on problems the pools stay as they were and are returned.
  [[nodiscard]] Problems open(const QString& path);
  [[nodiscard]] Problems saveAs(const QString& path) const;

  void replace(std::size_t index, const Pool& pool);
  void add(const Pool& pool);
  void remove(std::size_t index);
  [[nodiscard]] bool canTakeBack() const { return !m_before.empty(); }
  void takeBack();

  /// The pool that a rig stands in: the one with the name of its water, at the rig's own speed, depth
  /// and temperature (they may have been changed since), or nothing.
  [[nodiscard]] std::optional<Pool> poolOf(const Rig& rig) const;
  /// A name that no pool has yet.
  [[nodiscard]] std::string freeName(const QString& wanted) const;

 Q_SIGNALS:
  void changed();
  /// The file could not be written.
  void notStored(const QString& why);

 private:
  void put(Pools pools);

  Pools m_pools;
  std::vector<Pools> m_before;
  QString m_store;
};

}  // namespace grainwise::ui
