// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/rig_document.h"

#include <QFileInfo>
#include <QSaveFile>

#include "core/io/rig_file.h"
#include "ui/document/replace_rig.h"

namespace grainwise::ui {
namespace {

Problems notSaved(const QString& path, const QString& why, bool oldFile) {
  const QString fix =
      oldFile ? RigDocument::tr("the file that is there is kept as it was; make room, or save elsewhere")
              : RigDocument::tr("nothing was written; make room, or save elsewhere");
  return {Problem{path.toStdString(), 0, "", RigDocument::tr("not saved: %1").arg(why).toStdString(),
                  fix.toStdString()}};
}

/// What stopped the writing, or nothing. A full disk may take a part of a write without calling it an
/// error, and `commit` would then put the part in the place of the whole: what was taken is counted.
QString whyNotWritten(QSaveFile& file, const QByteArray& text) {
  const qint64 taken = file.write(text);
  if (taken == text.size() && file.flush()) return {};
  const bool silent = file.error() == QFileDevice::NoError;
  const QString why =
      silent ? RigDocument::tr("the disk took only %1 of %2 bytes").arg(taken).arg(text.size())
             : file.errorString();
  file.cancelWriting();
  return why;
}

}  // namespace

RigDocument::RigDocument(QObject* parent)
    : QObject(parent), m_rig(std::make_shared<const Rig>()) {
  connect(&m_undo, &QUndoStack::cleanChanged, this, &RigDocument::fileChanged);
}

void RigDocument::apply(const QString& step, const Rig& after, const QString& gesture) {
  if (after == *m_rig) {
    setPreview(std::nullopt);
    return;
  }
  m_undo.push(new ReplaceRig(this, step, std::make_shared<const Rig>(after), gesture));
}

void RigDocument::setPreview(std::optional<Rig> preview) {
  if (!preview && !m_preview) return;
  if (preview && *preview == *shown()) return;
  m_preview = preview ? std::make_shared<const Rig>(std::move(*preview)) : nullptr;
  Q_EMIT rigChanged();
}

void RigDocument::setRig(std::shared_ptr<const Rig> rig) {
  m_rig = std::move(rig);
  m_preview.reset();
  Q_EMIT rigChanged();
}

void RigDocument::restart(const Rig& rig, const QString& path) {
  m_rig = std::make_shared<const Rig>(rig);
  m_preview.reset();
  m_path = path;
  m_undo.clear();
  Q_EMIT rigChanged();
  Q_EMIT fileChanged();
}

void RigDocument::startFrom(const Rig& rig) { restart(rig, {}); }

Problems RigDocument::open(const QString& path) {
  const auto rig = loadRig(path.toStdString());
  if (!rig) return rig.error();
  restart(*rig, path);
  return {};
}

Problems RigDocument::saveAs(const QString& path) {
  const QFileInfo info(path);
  if (info.exists() && !info.isFile()) {
    return notSaved(path, tr("this is a folder or a device, no file"), true);
  }
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return notSaved(path, file.errorString(), info.exists());
  const QByteArray text = QByteArray::fromStdString(writeRig(*m_rig));
  const QString why = whyNotWritten(file, text);
  if (!why.isEmpty()) return notSaved(path, why, info.exists());
  if (!file.commit()) return notSaved(path, file.errorString(), info.exists());
  m_path = path;
  m_undo.setClean();
  Q_EMIT fileChanged();
  return {};
}

}  // namespace grainwise::ui
