// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/file_kinds.h"

#include <QFile>
#include <QRegularExpression>
#include <array>
#include <utility>

namespace grainwise::ui {
namespace {

/// The format stands near the beginning of each file.
constexpr qint64 kHead_bytes = 4096;

constexpr std::array<std::pair<const char*, FileKind>, 5> kKinds{{{"rig", FileKind::rig},
                                                                   {"deck", FileKind::deck},
                                                                   {"shelf", FileKind::shelf},
                                                                   {"pools", FileKind::pools},
                                                                   {"spools", FileKind::spools}}};

}  // namespace

FileKind kindOf(const QString& path) {
  for (const auto& [name, kind] : kKinds) {
    if (path.endsWith(QStringLiteral(".%1.json").arg(QLatin1String(name)))) return kind;
  }
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return FileKind::rig;
  static const QRegularExpression format(QStringLiteral("\"format\"\\s*:\\s*\"grainwise-([a-z]+)\""));
  const QString named = format.match(QString::fromUtf8(file.read(kHead_bytes))).captured(1);
  for (const auto& [name, kind] : kKinds) {
    if (named == QLatin1String(name)) return kind;
  }
  return FileKind::rig;
}

}  // namespace grainwise::ui
