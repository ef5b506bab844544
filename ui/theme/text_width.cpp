// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/text_width.h"

#include <QFontMetricsF>
#include <QHash>
#include <utility>

namespace grainwise::ui {
namespace {
/// Of all fonts together: figures change all the time, and so does the size of the type.
constexpr qsizetype kMostKept = 4000;
}  // namespace

double textWidth(const QString& words, const QFont& font) {
  static QHash<std::pair<QFont, QString>, double> kept;
  const std::pair<QFont, QString> key(font, words);
  if (const auto known = kept.constFind(key); known != kept.constEnd()) return *known;
  if (kept.size() >= kMostKept) kept.clear();
  const double wide = QFontMetricsF(font).horizontalAdvance(words);
  kept.insert(key, wide);
  return wide;
}

}  // namespace grainwise::ui
