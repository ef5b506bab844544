// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/rig_document.h"

#include <QFileInfo>
#include <QSaveFile>

#include "core/io/rig_file.h"
#include "ui/document/replace_rig.h"

namespace grainwise::ui {
namespace {

Problems notSaved(const QString& path, const QString& why) {
  return {Problem{path.toStdString(), 0, "", "not saved: " + why.toStdString(),
                  "the old file, if there was one, is as it was; choose another place"}};
}

}  // namespace

RigDocument::RigDocument(QObject* parent)
    : QObject(parent), m_rig(std::make_shared<const Rig>()) {
  connect(&m_undo, &QUndoStack::cleanChanged, this, &RigDocument::fileChanged);
}

void RigDocument::apply(const QString& step, const Rig& after, const QString& gesture) {
  m_preview.reset();
  if (after == *m_rig) {
    Q_EMIT rigChanged();
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

Problems RigDocument::open(const QString& path) {
  const auto rig = loadRig(path.toStdString());
  if (!rig) return rig.error();
  startFrom(*rig);
  m_path = path;
  Q_EMIT fileChanged();
  return {};
}

Problems RigDocument::saveAs(const QString& path) {
  const QFileInfo info(path);
  if (info.exists() && !info.isFile()) return notSaved(path, tr("this is no plain file"));
  const QByteArray text = QByteArray::fromStdString(writeRig(*m_rig));
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return notSaved(path, file.errorString());
  // On a full disk a short write can still commit: what was written must be counted.
  if (file.write(text) != text.size() || !file.flush()) {
    const QString why = file.errorString();
    file.cancelWriting();
    return notSaved(path, why);
  }
  if (!file.commit()) return notSaved(path, file.errorString());
  m_path = path;
  m_undo.setClean();
  Q_EMIT fileChanged();
  return {};
}

void RigDocument::startFrom(const Rig& rig) {
  m_undo.clear();
  m_path.clear();
  setRig(std::make_shared<const Rig>(rig));
  Q_EMIT fileChanged();
}

}  // namespace grainwise::ui
