// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/file_watch.h"

#include <QFileInfo>

namespace grainwise::ui {
namespace {
/// Programs that save in several steps are done by then.
constexpr int kQuietMs = 150;
}  // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  m_quiet.setSingleShot(true);
  m_quiet.setInterval(kQuietMs);
  const auto later = [this] { m_quiet.start(); };
  connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, later);
  connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, later);
  connect(&m_quiet, &QTimer::timeout, this, [this] {
    takeUp();
    Q_EMIT stirred();
  });
}

void FileWatch::watch(const QString& path) {
  const QStringList before = m_watcher.files() + m_watcher.directories();
  if (!before.isEmpty()) m_watcher.removePaths(before);
  m_quiet.stop();
  m_path = path.isEmpty() ? QString() : QFileInfo(path).absoluteFilePath();
  takeUp();
}

void FileWatch::takeUp() {
  if (m_path.isEmpty()) return;
  const QFileInfo file(m_path);
  const QString folder = file.absolutePath();
  if (file.isFile() && !m_watcher.files().contains(m_path)) m_watcher.addPath(m_path);
  if (QFileInfo(folder).isDir() && !m_watcher.directories().contains(folder)) {
    m_watcher.addPath(folder);
  }
}

}  // namespace grainwise::ui
