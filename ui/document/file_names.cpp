// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/file_names.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>

namespace grainwise::ui {
namespace {

constexpr int kLongest = 60;  ///< characters of a name that is proposed: no disk refuses it with its ending

QString folderBeside(const QString& last) {
  const QFileInfo file(last);
  if (!last.isEmpty() && file.dir().exists()) return file.absolutePath();
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

}  // namespace

QString shownName(const std::string& name, const QString& path, const QString& nameless) {
  if (!name.empty()) return QString::fromStdString(name);
  const QString file = QFileInfo(path).fileName();
  const QString bare = file.section(QLatin1Char('.'), 0, 0).trimmed();
  return bare.isEmpty() ? nameless : bare;
}

QString suggestedFile(const QString& path, const std::string& name, const QString& ending, const QString& last) {
  if (!path.isEmpty()) return path;
  static const QRegularExpression refused(QStringLiteral("[\\x{0000}-\\x{001f}/\\\\:*?\"<>|]+|^\\.+"));
  const QString bare = QString::fromStdString(name).left(kLongest).replace(refused, QStringLiteral("-")).trimmed();
  return folderBeside(last) + QLatin1Char('/') + (bare.isEmpty() ? QString() : bare + ending);
}

}  // namespace grainwise::ui
