// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/part_payload.h"

#include <QMimeData>
#include <QRegularExpression>

#include "core/io/rig_file.h"

namespace grainwise::ui {
namespace {
const QString kFormat = QStringLiteral("application/x-grainwise-part+json");
}  // namespace

QMimeData* mimeOf(const PartPayload& payload) {
  QString origin;
  if (payload.origin) {
    origin = QStringLiteral("{\"origin\":{\"line\":\"%1\",\"index\":%2},")
                 .arg(payload.origin->line)
                 .arg(payload.origin->index);
  } else {
    origin = QStringLiteral("{\"origin\":null,");
  }
  auto* data = new QMimeData;
  data->setData(kFormat, origin.toUtf8() + "\"part\":" +
                             QByteArray::fromStdString(writePart(payload.part)).trimmed() + "}");
  return data;
}

bool holdsPart(const QMimeData* data) { return data != nullptr && data->hasFormat(kFormat); }

std::optional<PartPayload> payloadOf(const QMimeData* data) {
  if (!holdsPart(data)) return std::nullopt;
  // The wrapper is written by this program alone, so its exact form is known; what it wraps goes
  // through the reader of files with all its checks.
  static const QRegularExpression wrapper(QStringLiteral(
      "^\\{\"origin\":(?:null|\\{\"line\":\"([0-9a-zA-Z-]*)\",\"index\":([0-9]{1,4})\\}),\"part\":"));
  QString text = QString::fromUtf8(data->data(kFormat));
  std::optional<PartOrigin> origin;
  const auto match = wrapper.match(text);
  if (match.hasMatch()) {
    if (!text.endsWith(QLatin1Char('}'))) return std::nullopt;
    if (!match.captured(2).isEmpty()) {
      origin = PartOrigin{match.captured(1), std::size_t(match.captured(2).toUInt())};
    }
    text = text.mid(match.capturedLength()).chopped(1);
  }
  const auto part = readPart(text.toStdString());
  if (!part) return std::nullopt;
  return PartPayload{*part, origin};
}

}  // namespace grainwise::ui
