// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/text_width.h"

#include <QFontMetricsF>
#include <QHash>

namespace grainwise::ui {
namespace {
/// Of one font; figures that change all the time would fill the memory without an end.
constexpr qsizetype kMostKept = 2000;
}  // namespace

double textWidth(const QString& words, const QFont& font) {
  static QHash<QFont, QHash<QString, double>> kept;
  QHash<QString, double>& ofFont = kept[font];
  if (const auto known = ofFont.constFind(words); known != ofFont.constEnd()) return *known;
  if (ofFont.size() >= kMostKept) ofFont.clear();
  const double wide = QFontMetricsF(font).horizontalAdvance(words);
  ofFont.insert(words, wide);
  return wide;
}

}  // namespace grainwise::ui
