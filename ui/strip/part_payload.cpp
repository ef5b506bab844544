// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/part_payload.h"

#include <QMimeData>

#include "core/io/rig_file.h"

namespace grainwise::ui {
namespace {
const QString kPart = QStringLiteral("application/x-grainwise-part+json");
const QString kOrigin = QStringLiteral("application/x-grainwise-origin");
}  // namespace

QMimeData* mimeOf(const PartPayload& payload) {
  auto* data = new QMimeData;
  data->setData(kPart, QByteArray::fromStdString(writePart(payload.part)));
  if (payload.origin) data->setData(kOrigin, QByteArray::number(qulonglong(*payload.origin)));
  return data;
}

bool isPart(const QMimeData* data) { return data->hasFormat(kPart); }

std::optional<PartPayload> payloadOf(const QMimeData* data) {
  if (!isPart(data)) return std::nullopt;
  const auto part = readPart(data->data(kPart).toStdString());
  if (!part) return std::nullopt;
  PartPayload payload{*part, std::nullopt};
  if (data->hasFormat(kOrigin)) payload.origin = std::size_t(data->data(kOrigin).toULongLong());
  return payload;
}

}  // namespace grainwise::ui
