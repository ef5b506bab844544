// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/autosave.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLockFile>
#include <QSaveFile>
#include <QStandardPaths>
#include <QUuid>

#include "core/io/rig_file.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"

// Three files a copy: NAME.rig.json, the work; NAME.from.json, which file it belongs to; NAME.lock,
// held by the program for as long as it lives. A lock whose program is gone marks work that was
// left.
namespace grainwise::ui {
namespace {

constexpr auto kWork = ".rig.json";
constexpr auto kFrom = ".from.json";
constexpr auto kLock = ".lock";

QString with(const QString& folder, const QString& name, const char* ending) {
  return folder + QLatin1Char('/') + name + QLatin1String(ending);
}

/// Nobody else reads unsaved work.
bool makePrivateFolder(const QString& folder) {
  if (QFileInfo(folder).isDir()) return true;
  return QDir().mkpath(folder) &&
         QFile::setPermissions(folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
}

QString writePrivate(const QString& path, const QByteArray& text) {
  QSaveFile file(path);
  const bool written = file.open(QIODevice::WriteOnly) &&
                       file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) &&
                       file.write(text) == text.size() && file.flush();
  if (!written) file.cancelWriting();
  return written && file.commit() ? QString() : file.errorString();
}

void removeCopy(const QString& folder, const QString& name) {
  QFile::remove(with(folder, name, kWork));
  QFile::remove(with(folder, name, kFrom));
}

std::unique_ptr<QLockFile> lockFor(const QString& folder, const QString& name) {
  auto lock = std::make_unique<QLockFile>(with(folder, name, kLock));
  lock->setStaleLockTime(0);  // only a program that is gone makes a lock stale, never its age
  return lock;
}

}  // namespace

QString recoveryFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
         QStringLiteral("/recovery");
}

Autosave::Autosave(RigDocument* document, const QString& folder, QObject* parent)
    : QObject(parent),
      m_document(document),
      m_folder(folder),
      m_name(QUuid::createUuid().toString(QUuid::WithoutBraces)) {
  m_timer.setSingleShot(true);
  m_timer.setInterval(kUsualAutosave_s * 1000);
  connect(&m_timer, &QTimer::timeout, this, &Autosave::keep);
  connect(document, &RigDocument::rigChanged, this, &Autosave::follow);
  connect(document, &RigDocument::fileChanged, this, &Autosave::follow);
}

Autosave::~Autosave() {
  drop();
}

void Autosave::keepPaceOf(const Preferences* preferences) {
  const auto take = [this, preferences] { setPace(preferences->autosave_s() * 1000); };
  connect(preferences, &Preferences::autosaveChanged, this, take);
  take();
}

QString Autosave::copy() const {
  return m_there ? with(m_folder, m_name, kWork) : QString();
}

void Autosave::follow() {
  if (!m_document->isModified()) return drop();
  if (m_document->previewing()) return;
  if (!m_timer.isActive())
    m_timer.start();  // not put off by the next edit: work in one go is kept too
}

void Autosave::drop() {
  m_timer.stop();
  if (m_there) removeCopy(m_folder, m_name);
  m_there = false;
  m_lock.reset();
}

void Autosave::keep() {
  if (!m_document->isModified()) return drop();
  const QString why = write();
  if (why.isEmpty()) {
    m_told = false;
    Q_EMIT kept();
  } else if (!m_told) {
    m_told = true;
    Q_EMIT failed(why);
  }
}

QString Autosave::write() {
  if (!makePrivateFolder(m_folder)) return tr("the folder %1 could not be made").arg(m_folder);
  if (!m_lock) {
    m_lock = lockFor(m_folder, m_name);
    if (!m_lock->tryLock(0)) {
      m_lock.reset();
      return tr("nothing can be written in %1").arg(m_folder);
    }
  }
  const QJsonObject from{{QStringLiteral("path"), m_document->path()},
                         {QStringLiteral("seen"), QString::fromLatin1(m_document->seen().toHex())}};
  QString why = writePrivate(with(m_folder, m_name, kFrom), QJsonDocument(from).toJson());
  if (!why.isEmpty()) return why;
  const QByteArray work = QByteArray::fromStdString(writeRig(m_document->rig()));
  QString whyWork = writePrivate(with(m_folder, m_name, kWork), work);
  m_there = m_there || whyWork.isEmpty();
  return whyWork;
}

Recovery::Recovery(const QString& folder) : m_folder(folder) {}

Recovery::~Recovery() = default;

std::optional<Left> Recovery::next() {
  m_lock.reset();
  m_last.clear();
  const QDir folder(m_folder);
  const QFileInfoList copies =
      folder.entryInfoList({QStringLiteral("*") + QLatin1String(kWork)}, QDir::Files, QDir::Time);
  for (const QFileInfo& copy : copies) {
    const QString name = copy.fileName().chopped(qsizetype(qstrlen(kWork)));
    if (m_offered.contains(name)) continue;
    auto lock = lockFor(m_folder, name);
    if (!lock->tryLock(0)) continue;  // its program lives, or another offers it
    auto rig = loadWork(copy.filePath().toStdString());
    if (!rig) continue;
    m_offered.append(name);
    m_last = name;
    m_lock = std::move(lock);
    QFile from(with(m_folder, name, kFrom));
    const QJsonObject where = from.open(QIODevice::ReadOnly)
                                  ? QJsonDocument::fromJson(from.readAll()).object()
                                  : QJsonObject();
    return Left{std::move(*rig), where[QStringLiteral("path")].toString(),
                QByteArray::fromHex(where[QStringLiteral("seen")].toString().toLatin1()),
                copy.lastModified(), copy.filePath()};
  }
  return std::nullopt;
}

void Recovery::discard() {
  if (m_last.isEmpty()) return;
  removeCopy(m_folder, m_last);
  m_last.clear();
  m_lock.reset();
}

}  // namespace grainwise::ui
