// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/rig_document.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

#include "core/io/rig_file.h"
#include "core/model/limits.h"
#include "ui/document/replace_rig.h"
#include "ui/document/whole_file.h"

namespace grainwise::ui {
namespace {

Problems notSaved(const QString& path, const Wording& why, bool oldFile) {
  return {Problem{path.toStdString(), 0, "", Problem::tr("not saved: %1").arg(why),
                  oldFile ? Problem::tr("the file that is there is kept as it was; make room, or save elsewhere")
                          : Problem::tr("nothing was written; make room, or save elsewhere")}};
}

/// Why a text of ours must not be written, in the words of the reader; nothing when it may.
Problems unreadable(const QString& path, const std::string& text, bool oldFile) {
  const auto back = readRig(text, path.toStdString());
  if (back) return {};
  Problems why = notSaved(path, back.error().front().what, oldFile);
  why.front().fix = back.error().front().fix;
  return why;
}

QByteArray digest(const QByteArray& text) {
  return QCryptographicHash::hash(text, QCryptographicHash::Sha256);
}

/// Of what lies at `path` now; empty when nothing can be read there.
QByteArray digestOf(const QString& path) {
  QFile file(path);
  if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) return {};
  return digest(file.read(limits::kFileBytes + 1));
}

}  // namespace

RigDocument::RigDocument(QObject* parent) : QObject(parent), m_rig(std::make_shared<const Rig>()) {
  connect(&m_undo, &QUndoStack::cleanChanged, this, &RigDocument::fileChanged);
  connect(&m_watch, &FileWatch::stirred, this, &RigDocument::lookAtDisk);
}

/// A stack that ends says that it is clean: no news of the file.
RigDocument::~RigDocument() { m_undo.disconnect(this); }

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

void RigDocument::restart(const Rig& rig, const QString& path, const QByteArray& seen) {
  m_rig = std::make_shared<const Rig>(rig);
  m_preview.reset();
  adoptFile(path, seen);
  m_undo.clear();
  Q_EMIT rigChanged();
  Q_EMIT fileChanged();
}

void RigDocument::adoptFile(const QString& path, const QByteArray& seen) {
  m_path = path;
  m_seen = seen;
  m_warnedOf.clear();
  m_told = OnDisk::same;
  m_watch.watch(path);
}

void RigDocument::startFrom(const Rig& rig) {
  restart(rig, {}, {});
}

void RigDocument::recover(const Rig& rig, const QString& path, const QByteArray& seen) {
  restart(rig, path, seen);
  m_undo.resetClean();
  Q_EMIT fileChanged();
  lookAtDisk();
}

Problems RigDocument::open(const QString& path) {
  // Before reading: should another program write in between, the change is seen, not missed.
  const QByteArray seen = digestOf(path);
  const auto rig = loadRig(path.toStdString());
  if (!rig) return rig.error();
  restart(*rig, path, seen);
  return {};
}

RigDocument::OnDisk RigDocument::onDisk() const {
  if (m_path.isEmpty()) return OnDisk::same;
  const QByteArray now = digestOf(m_path);
  if (now == m_seen) return OnDisk::same;
  return now.isEmpty() ? OnDisk::gone : OnDisk::changed;
}

void RigDocument::lookAtDisk() {
  const OnDisk now = onDisk();
  if (now == m_told && now != OnDisk::changed) return;
  m_told = now;
  Q_EMIT diskChanged();
}

Problems RigDocument::changedByOthers(const QString& path) {
  if (m_path.isEmpty() || QFileInfo(path) != QFileInfo(m_path)) return {};
  const QByteArray there = digestOf(path);
  if (there.isEmpty() || there == m_seen || there == m_warnedOf) return {};
  m_warnedOf = there;
  Problems why =
      notSaved(path, Problem::tr("another program has changed this file since it was opened"), true);
  why.front().fix = Problem::tr("save again to put yours in its place, or save elsewhere");
  return why;
}

Problems RigDocument::saveAs(const QString& path) {
  const bool oldFile = QFileInfo::exists(path);
  const std::string rig = writeRig(*m_rig);
  const QByteArray text = QByteArray::fromStdString(rig);
  if (Problems why = unreadable(path, rig, oldFile); !why.empty()) return why;
  if (Problems why = changedByOthers(path); !why.empty()) return why;
  if (const QString why = writeWhole(path, text); !why.isEmpty()) return notSaved(path, why.toStdString(), oldFile);
  adoptFile(path, digest(text));
  m_undo.setClean();
  Q_EMIT fileChanged();
  return {};
}

}  // namespace grainwise::ui
