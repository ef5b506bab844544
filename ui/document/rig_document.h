// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <memory>
#include <optional>

#include "core/model/problem.h"
#include "core/model/rig.h"
#include "ui/document/file_watch.h"

namespace grainwise::ui {

/// The open rig: a snapshot, its undo stack, its file. Everything that changes the rig goes through
/// `apply`; everything that only shows what a change would do goes through `setPreview`.
class RigDocument : public QObject {
  Q_OBJECT
 public:
  explicit RigDocument(QObject* parent = nullptr);
  ~RigDocument() override;

  /// The rig as it stands, without any preview.
  [[nodiscard]] const Rig& rig() const { return *m_rig; }
  /// What is to be shown: the preview while there is one, else the rig.
  [[nodiscard]] std::shared_ptr<const Rig> shown() const { return m_preview ? m_preview : m_rig; }
  [[nodiscard]] bool previewing() const { return m_preview != nullptr; }

  /// Makes `after` the rig, as one named step ("Move tip"). Nothing happens when it equals the rig
  /// that stands. Steps in a row with the same non-empty `gesture` become one.
  void apply(const QString& step, const Rig& after, const QString& gesture = {});
  void setPreview(std::optional<Rig> preview);

  [[nodiscard]] QUndoStack* undoStack() { return &m_undo; }

  /// Reads a rig file; on problems the open rig stays as it was and they are returned.
  [[nodiscard]] Problems open(const QString& path);
  /// Writes the rig whole or not at all; on failure the old file stays and the problem is returned.
  /// What no reader of ours would open (an empty line) is not written. A file that another program
  /// has changed since it was read is kept the first time; saving again puts ours in its place.
  [[nodiscard]] Problems saveAs(const QString& path);
  /// Starts from `rig` as an unsaved, unnamed document.
  void startFrom(const Rig& rig);
  /// Goes on with work that was left unsaved on the file at `path` (or on none) when that held
  /// `seen`.
  void recover(const Rig& rig, const QString& path, const QByteArray& seen);

  /// The file as it lies on the disk, against what was last read from it or written to it.
  enum class OnDisk { same, changed, gone };
  [[nodiscard]] OnDisk onDisk() const;
  /// A digest of what was last read or written; empty when there is no file.
  [[nodiscard]] QByteArray seen() const { return m_seen; }

  [[nodiscard]] QString path() const { return m_path; }
  [[nodiscard]] bool isModified() const { return !m_undo.isClean(); }

 Q_SIGNALS:
  /// What `shown()` returns has changed.
  void rigChanged();
  /// The path or the modified mark has changed.
  void fileChanged();
  /// Another program has changed the file, taken it away or brought it back: `onDisk` tells.
  void diskChanged();

 private:
  friend class ReplaceRig;
  void setRig(std::shared_ptr<const Rig> rig);
  void restart(const Rig& rig, const QString& path, const QByteArray& seen);
  void adoptFile(const QString& path, const QByteArray& seen);
  void lookAtDisk();
  /// The complaint of a save that would lose what another program has written; made once for each.
  [[nodiscard]] Problems changedByOthers(const QString& path);

  std::shared_ptr<const Rig> m_rig;
  std::shared_ptr<const Rig> m_preview;
  QUndoStack m_undo;
  QString m_path;
  QByteArray m_seen;
  QByteArray m_warnedOf;  ///< what another program had put there when a save was refused
  OnDisk m_told = OnDisk::same;
  FileWatch m_watch;
};

}  // namespace grainwise::ui
