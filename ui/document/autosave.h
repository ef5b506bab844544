// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <optional>

#include "core/model/rig.h"

class QLockFile;

namespace grainwise::ui {

class Preferences;
class RigDocument;

/// Where copies of unsaved work are kept: in the user's data folder, never beside the user's files.
QString recoveryFolder();

/// Keeps a copy of unsaved work while it is unsaved, a few seconds behind the last edit. The copy
/// goes when the work is saved, undone or let go of; it stays when the program is ended from
/// outside, and `Recovery` finds it. Never writes to a file of the user's.
class Autosave : public QObject {
  Q_OBJECT
 public:
  explicit Autosave(RigDocument* document, const QString& folder = recoveryFolder(),
                    QObject* parent = nullptr);
  ~Autosave() override;

  /// Writes the copy now if there is unsaved work.
  void keep();
  void setPace(int ms) { m_timer.setInterval(ms); }
  /// Keeps the person's pace, as it changes.
  void keepPaceOf(const Preferences* preferences);
  /// The copy that is there now; empty when there is none.
  [[nodiscard]] QString copy() const;

 Q_SIGNALS:
  void kept();
  /// A copy could not be written; said once until one could.
  void failed(const QString& why);

 private:
  void follow();
  void drop();
  /// What stopped the writing; empty when it is done.
  QString write();

  RigDocument* m_document;
  QString m_folder;
  QString m_name;
  std::unique_ptr<QLockFile> m_lock;
  QTimer m_timer;
  bool m_there = false;
  bool m_told = false;
};

/// Unsaved work that a program left which was ended from outside.
struct Left {
  Rig rig;
  QString path;     ///< of the file it was edited from; empty when it had none
  QByteArray seen;  ///< what that file held then (RigDocument::seen)
  QDateTime when;
  QString copy;
};

/// Finds such work, newest first. What one of these offers, no other program offers at the same
/// time.
class Recovery {
 public:
  explicit Recovery(const QString& folder = recoveryFolder());
  ~Recovery();

  /// The newest that has not been offered by this object yet; nothing when there is no more.
  [[nodiscard]] std::optional<Left> next();
  /// Throws the copy of the last one away.
  void discard();

 private:
  QString m_folder;
  QStringList m_offered;
  QString m_last;
  std::unique_ptr<QLockFile> m_lock;
};

}  // namespace grainwise::ui
