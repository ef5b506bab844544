// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/captions.h"

#include <algorithm>

#include "ui/text/quantities.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// "mono running line 0.024 in" is "mono 0.024 in" where it is seen to be the running line.
QString withoutKind(const QString& name, PartKind kind) {
  QString text = name;
  text.remove(kindWords(kind), Qt::CaseInsensitive);
  text = text.simplified();
  return text.isEmpty() ? name : text;
}

/// "Leech" of "Leech, lead eyes 1/24 oz".
QString firstOf(const Part& fly) {
  const QString whole = fly.name ? shelfName(QString::fromStdString(*fly.name)) : QString();
  const QString name = whole.section(QLatin1Char(','), 0, 0).trimmed();
  return name.isEmpty() ? kindWords(PartKind::fly) : name;
}

}  // namespace

QString nylonCaption(const std::vector<Part>& parts, std::size_t first, std::size_t last,
                     DisplayUnits units) {
  Feet length;
  PartKind kind = PartKind::tippet;
  for (std::size_t i = first; i <= last; ++i) {
    length += parts[i].length();
    kind = std::min(kind, parts[i].kind);
  }
  return QStringLiteral("%1 %2").arg(kindWords(kind), lengthText(length, units));
}

QStringList captionChoices(const Part& part, Grains mass, DisplayUnits units) {
  const QString whole = partWords(part, units);
  const QString length = lengthText(part.length(), units);
  const QString kindAndLength = QStringLiteral("%1 %2").arg(kindWords(part.kind), length);
  QStringList choices;
  switch (part.kind) {
    case PartKind::runningLine:
      choices << withoutKind(whole, part.kind) << kindWords(part.kind);
      if (!part.sections.empty() && part.sections.front().diameter) {
        choices << diameterText(part.sections.front().diameter->rodEnd, units);
      }
      break;
    case PartKind::head:
      choices << whole << massText(mass, units);
      break;
    case PartKind::tip:
      choices << whole;
      if (part.length() > Feet(0)) {
        choices << QStringLiteral("%1, %2").arg(length, lineMassText(mass / part.length(), units));
      }
      choices << length;
      break;
    case PartKind::leader:
    case PartKind::tippet:
      if (part.isCoatedLeader()) {
        choices << whole << QStringLiteral("%1 %2").arg(styleWords(Style::coated), length);
      }
      choices << kindAndLength << length;
      break;
    case PartKind::fly:
      if (mass > Grains(0)) {
        choices << QStringLiteral("%1, %2").arg(firstOf(part), massText(mass, units)) << massText(mass, units);
      } else {
        choices << firstOf(part);
      }
      break;
  }
  choices.removeDuplicates();
  return choices;
}

}  // namespace grainwise::ui
