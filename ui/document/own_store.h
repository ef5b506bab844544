// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

#include "core/bench/loops.h"
#include "core/model/problem.h"
#include "core/model/shelf.h"
#include "core/model/spool.h"

class QSettings;

namespace grainwise::ui {

/// What belongs to the person rather than to a rig: own parts, the spools at the bench, and how loops
/// and knots are made there. The former are kept in the user's data folder, written whole at each change,
/// the last in the settings file. A file that cannot be read is never written over:
/// before the first writing it is set aside under another name.
class OwnStore : public QObject {
  Q_OBJECT
 public:
  /// In the user's data folder, or in `folder`.
  explicit OwnStore(const SharedShelf& generic, const QString& folder = {}, QObject* parent = nullptr);
  ~OwnStore() override;

  [[nodiscard]] const Shelf& generic() const { return *m_generic; }
  [[nodiscard]] const Shelf& own() const { return m_own; }
  /// The generic parts with the own laid over them.
  [[nodiscard]] const SharedShelf& all() const { return m_all; }
  [[nodiscard]] const Spools& spools() const { return m_spools; }
  [[nodiscard]] const BenchRules& rules() const { return m_rules; }
  /// A habit, not a step: `undo` leaves it.
  void setRules(const BenchRules& rules);
  /// What was wrong with the files when they were read, and with the last writing.
  [[nodiscard]] const Problems& problems() const { return m_problems; }

  /// Each is one step that `undo` takes back; steps in a row with the same non-empty `gesture` are one.
  void setOwn(const Shelf& own, const QString& gesture = {});
  void setSpools(const Spools& spools);
  [[nodiscard]] bool canUndo() const { return !m_before.empty(); }
  void undo();

 Q_SIGNALS:
  void ownChanged();
  void spoolsChanged();
  void rulesChanged();
  void failed(const QString& why);

 private:
  struct Before {
    Shelf own;
    Spools spools;
  };
  void load();
  void loadRules();
  void write(const QString& name, const std::string& text);
  void setAside(const QString& path);
  void remember(const QString& gesture);
  void put(const Before& state);
  void takeOwn(const Shelf& own);

  SharedShelf m_generic;
  SharedShelf m_all;
  QString m_folder;
  std::unique_ptr<QSettings> m_habits;
  Shelf m_own;
  Spools m_spools;
  BenchRules m_rules;
  Problems m_problems;
  QStringList m_unread;  ///< files that could not be read and were not set aside yet
  std::vector<Before> m_before;
  QString m_gesture;  ///< of the last step
};

}  // namespace grainwise::ui
