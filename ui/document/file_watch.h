// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QTimer>

namespace grainwise::ui {

/// Watches one file through everything that may happen to it: written to, put in its place by
/// another (which ends a plain watch), taken away and brought back. Says that something stirred,
/// not what: once things have been quiet for a moment.
class FileWatch : public QObject {
  Q_OBJECT
 public:
  explicit FileWatch(QObject* parent = nullptr);

  /// An empty path watches nothing.
  void watch(const QString& path);

 Q_SIGNALS:
  void stirred();

 private:
  void takeUp();

  QFileSystemWatcher m_watcher;
  QTimer m_quiet;
  QString m_path;
};

}  // namespace grainwise::ui
