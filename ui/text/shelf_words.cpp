// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/shelf_words.h"

#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <array>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// The names and groups of resources/shelf/generic.shelf.json, each number as %1, %2...
constexpr std::array kNames{
    QT_TRANSLATE_NOOP("ShelfWords", "Running lines"),
    QT_TRANSLATE_NOOP("ShelfWords", "Extensions"),
    QT_TRANSLATE_NOOP("ShelfWords", "Short heads"),
    QT_TRANSLATE_NOOP("ShelfWords", "Fine-taper heads"),
    QT_TRANSLATE_NOOP("ShelfWords", "Long bellies"),
    QT_TRANSLATE_NOOP("ShelfWords", "Intermediate and multi-density heads"),
    QT_TRANSLATE_NOOP("ShelfWords", "Single-hand lines"),
    QT_TRANSLATE_NOOP("ShelfWords", "Level tips"),
    QT_TRANSLATE_NOOP("ShelfWords", "Float/sink tips"),
    QT_TRANSLATE_NOOP("ShelfWords", "Tapered tips"),
    QT_TRANSLATE_NOOP("ShelfWords", "Intermediate tips"),
    QT_TRANSLATE_NOOP("ShelfWords", "Floating fronts"),
    QT_TRANSLATE_NOOP("ShelfWords", "Coated leaders"),
    QT_TRANSLATE_NOOP("ShelfWords", "Leaders"),
    QT_TRANSLATE_NOOP("ShelfWords", "Tippets"),
    QT_TRANSLATE_NOOP("ShelfWords", "Flies"),
    QT_TRANSLATE_NOOP("ShelfWords", "mono running line %1 in"),
    QT_TRANSLATE_NOOP("ShelfWords", "coated running line %1 in"),
    QT_TRANSLATE_NOOP("ShelfWords", "extension %1 ft, %2 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "short head %1"),
    QT_TRANSLATE_NOOP("ShelfWords", "fine-taper head %1"),
    QT_TRANSLATE_NOOP("ShelfWords", "long belly %1"),
    QT_TRANSLATE_NOOP("ShelfWords", "short head %1, intermediate"),
    QT_TRANSLATE_NOOP("ShelfWords", "short head %1, float/intermediate"),
    QT_TRANSLATE_NOOP("ShelfWords", "short head %1, intermediate/sink"),
    QT_TRANSLATE_NOOP("ShelfWords", "short head %1, float/intermediate/sink"),
    QT_TRANSLATE_NOOP("ShelfWords", "single-hand line #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, %2 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, none sinking, %2 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, %2/%3 sinking, %4 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, all sinking, %2 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, %2 ft sinking, %3 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "#%1, %2 in/s"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft, intermediate, %2 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "%1 ft floating front, %2 to %3 gr/ft"),
    QT_TRANSLATE_NOOP("ShelfWords", "coated leader %1 ft, light, %2 in/s"),
    QT_TRANSLATE_NOOP("ShelfWords", "coated leader %1 ft, heavy, %2 in/s"),
    QT_TRANSLATE_NOOP("ShelfWords", "leader %1 ft, %2 in nylon"),
    QT_TRANSLATE_NOOP("ShelfWords", "leader %1 ft, %2 to %3 in nylon"),
    QT_TRANSLATE_NOOP("ShelfWords", "tippet %1 ft, %2 in nylon"),
    QT_TRANSLATE_NOOP("ShelfWords", "tippet %1 ft, %2 in fluorocarbon"),
    QT_TRANSLATE_NOOP("ShelfWords", "Dry fly #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Bushy dry fly #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Deer-hair skater #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Soft-hackle #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Low hairwing #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Small double #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Wet fly #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Beaded streamer #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Soft-hackle #%1, big and light"),
    QT_TRANSLATE_NOOP("ShelfWords", "Shrimp #%1, long feelers"),
    QT_TRANSLATE_NOOP("ShelfWords", "Plastic tube, long wing"),
    QT_TRANSLATE_NOOP("ShelfWords", "Winter wet fly %1/%2"),
    QT_TRANSLATE_NOOP("ShelfWords", "Leech, bead-chain eyes"),
    QT_TRANSLATE_NOOP("ShelfWords", "Brass tube, sparse wing"),
    QT_TRANSLATE_NOOP("ShelfWords", "Leech, lead eyes %1/%2 oz"),
    QT_TRANSLATE_NOOP("ShelfWords", "Big weighted streamer %1/%2"),
    QT_TRANSLATE_NOOP("ShelfWords", "Compact cone-head #%1"),
    QT_TRANSLATE_NOOP("ShelfWords", "Fat tube fly %1/%2"),
    QT_TRANSLATE_NOOP("ShelfWords", "Double tungsten"),
};

/// "short head 525" is "short head %1" and "525".
struct Split {
  QString form;
  QStringList numbers;
};

Split split(const QString& name) {
  static const QRegularExpression number(QStringLiteral("[0-9]+(?:\\.[0-9]+)?"));
  Split found;
  qsizetype from = 0;
  for (auto all = number.globalMatch(name); all.hasNext();) {
    const QRegularExpressionMatch one = all.next();
    found.numbers << one.captured();
    found.form += name.mid(from, one.capturedStart() - from) +
                  QStringLiteral("%%1").arg(found.numbers.size());
    from = one.capturedEnd();
  }
  found.form += name.mid(from);
  return found;
}

bool known(const QString& form) {
  return std::any_of(kNames.begin(), kNames.end(),
                     [&](const char* one) { return form == QLatin1String(one); });
}

}  // namespace

bool isShelfName(const QString& name) { return known(split(name).form); }

QString shelfName(const QString& name) {
  const Split parts = split(name);
  if (!known(parts.form)) return name;
  QString words = ShelfWords::tr(parts.form.toLatin1().constData());
  for (const QString& one : parts.numbers) words = words.arg(localDigits(one));
  return words;
}

}  // namespace grainwise::ui
