// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/whole_file.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>

namespace grainwise::ui {
namespace {

struct WholeFile {
  Q_DECLARE_TR_FUNCTIONS(WholeFile)
};

}  // namespace

QString writeWhole(const QString& path, const QByteArray& bytes) {
  const QFileInfo info(path);
  if (info.exists() && !info.isFile()) {
    return WholeFile::tr("this is a folder or a device, no file");
  }
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return file.errorString();
  // A full disk may take a part of a write without calling it an error, and `commit` would then put the
  // part in the place of the whole: what was taken is counted.
  const qint64 taken = file.write(bytes);
  if (taken != bytes.size() || !file.flush()) {
    QString why =
        file.error() == QFileDevice::NoError
            ? WholeFile::tr("the disk took only %1 of %2 bytes").arg(taken).arg(bytes.size())
            : file.errorString();
    file.cancelWriting();
    return why;
  }
  return file.commit() ? QString() : file.errorString();
}

}  // namespace grainwise::ui
