// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/shelf_search.h"

#include <QStringList>
#include <algorithm>

#include "ui/text/shelf_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// What anglers of one region or another say for it; search words only, never shown.
QString regionalWords(const Part& part) {
  if (!part.style) return part.kind == PartKind::runningLine ? QStringLiteral("shooting line schussleine") : QString();
  switch (*part.style) {
    case Style::shortHead:
      return QStringLiteral("skagit shooting head schusskopf skytehode lanzadora");
    case Style::fine:
      return QStringLiteral("scandi scandinavian underhand shooting head schusskopf skytehode lanzadora");
    case Style::longBelly:
      return QStringLiteral("spey traditional long belly keule");
    case Style::level:
    case Style::floatSink:
    case Style::tapered:
      return QStringLiteral("sink tip sinktip");
    default:
      return {};
  }
}

Found foundIn(const QString& text, const QString& word) {
  Found found = Found::no;
  for (qsizetype at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    const QChar before = at > 0 ? text[at - 1] : QLatin1Char(' ');
    if (before.isLetterOrNumber() || before == QLatin1Char('.')) continue;
    const qsizetype end = at + word.size();
    if (end >= text.size() || !text[end].isLetterOrNumber()) return Found::whole;
    found = Found::begins;
  }
  return found;
}

QString plain(const QString& words) {
  return words.toCaseFolded().replace(QLatin1Char(','), QLatin1Char('.'));
}

}  // namespace

QString searchText(const Part& part, const QString& name, const QString& figures) {
  QStringList all{name, figures, kindWords(part.kind), regionalWords(part)};
  if (part.style) all << styleWords(*part.style);
  if (part.group) {
    const QString group = QString::fromStdString(*part.group);
    all << group << shelfName(group);
  }
  if (part.name) all << QString::fromStdString(*part.name);
  return plain(all.join(QStringLiteral(" | ")));
}

Found foundBy(const QString& text, const QString& words) {
  const QStringList wanted = plain(words).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  Found worst = Found::whole;
  for (QString word : wanted) {
    while (word.endsWith(QLatin1Char('.'))) word.chop(1);
    if (!word.isEmpty()) worst = std::min(worst, foundIn(text, word));
  }
  return worst;
}

}  // namespace grainwise::ui
