// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <cmath>

#include "ui/text/choice_words.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/shelf_words.h"

namespace grainwise::ui {
namespace {

QString readingName(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return ChoiceWords::tr("the joint");
    case Reading::headOnRod:
      return ChoiceWords::tr("the head on this rod");
    case Reading::workingLength:
      return ChoiceWords::tr("the length on this rod");
    case Reading::tipShare:
      return ChoiceWords::tr("the tip's share of the head");
    case Reading::anchor:
      return ChoiceWords::tr("the line in the water");
    case Reading::flyAgainstTip:
      return ChoiceWords::tr("the fly against the tip");
    case Reading::flyAgainstLeader:
      return ChoiceWords::tr("the fly against the leader");
    case Reading::drive:
      return ChoiceWords::tr("how the line carries the fly");
    case Reading::reserve:
      return ChoiceWords::tr("the turnover");
    case Reading::depth:
      return ChoiceWords::tr("the depth");
  }
  return {};
}

QString cutWords(const Change& change, const QString& part, const QString& feet) {
  const bool fly = change.end == PartEnd::fly;
  if (change.kind == ChangeKind::trimHead) {
    return (fly ? ChoiceWords::tr("trim %1 off the front of %2")
                : ChoiceWords::tr("trim %1 off the rear of %2"))
        .arg(feet, part);
  }
  return (fly ? ChoiceWords::tr("cut %1 off the fly end of %2")
              : ChoiceWords::tr("cut %1 off the rod end of %2"))
      .arg(feet, part);
}

QString strokeWords(StrokeVerdict verdict) {
  switch (verdict) {
    case StrokeVerdict::same:
      return ChoiceWords::tr("same stroke");
    case StrokeVerdict::adjustLonger:
      return ChoiceWords::tr("longer sweep");
    case StrokeVerdict::adjustShorter:
      return ChoiceWords::tr("shorter sweep");
    case StrokeVerdict::different:
      break;
  }
  return ChoiceWords::tr("a different cast");
}

}  // namespace

QString readingList(const std::vector<Reading>& readings) {
  QStringList names;
  for (const Reading r : readings) names << readingName(r);
  return names.join(QStringLiteral(", "));
}

QString changeWords(const Change& change, DisplayUnits units) {
  const QString part = shelfName(QString::fromStdString(change.part));
  const QString feet = lengthText(Feet(std::abs(change.feet)), units);
  switch (change.kind) {
    case ChangeKind::swapTip:
    case ChangeKind::swapLeader:
    case ChangeKind::swapTippet:
    case ChangeKind::swapFly:
    case ChangeKind::swapHead:
      return ChoiceWords::tr("%1: %2", "what is changed: for which part")
          .arg(changeStep(change), part);
    case ChangeKind::addTip:
      return ChoiceWords::tr("put on a tip: %1").arg(part);
    case ChangeKind::removeTip:
    case ChangeKind::removeExtension:
      return ChoiceWords::tr("take off %1").arg(part);
    case ChangeKind::angle:
      return ChoiceWords::tr("cast at %1° instead of %2°")
          .arg(numberText(change.to, 0), numberText(change.from, 0));
    case ChangeKind::mend:
      return ChoiceWords::tr("%1 s of slack instead of %2")
          .arg(numberText(change.to, 0), numberText(change.from, 0));
    case ChangeKind::lineOut:
      return ChoiceWords::tr("%1 of line out instead of %2")
          .arg(lengthText(Feet(change.to), units), lengthText(Feet(change.from), units));
    case ChangeKind::cutTip:
    case ChangeKind::trimHead:
      return cutWords(change, part, feet);
    case ChangeKind::leaderLength:
      return (change.feet < 0 ? ChoiceWords::tr("tie %1 shorter by %2")
                              : ChoiceWords::tr("tie %1 longer by %2"))
          .arg(part, feet);
    case ChangeKind::addExtension:
      return ChoiceWords::tr("put %1 behind the head").arg(part);
  }
  return {};
}

QString changeStep(const Change& change) {
  switch (change.kind) {
    case ChangeKind::swapTip:
    case ChangeKind::addTip:
      return ChoiceWords::tr("change the tip");
    case ChangeKind::removeTip:
      return ChoiceWords::tr("take the tip off");
    case ChangeKind::swapLeader:
      return ChoiceWords::tr("change the leader");
    case ChangeKind::swapTippet:
      return ChoiceWords::tr("change the tippet");
    case ChangeKind::swapFly:
      return ChoiceWords::tr("change the fly");
    case ChangeKind::swapHead:
      return ChoiceWords::tr("change the head");
    case ChangeKind::angle:
    case ChangeKind::mend:
    case ChangeKind::lineOut:
      return ChoiceWords::tr("change the swing");
    case ChangeKind::cutTip:
      return ChoiceWords::tr("cut the tip");
    case ChangeKind::leaderLength:
      return ChoiceWords::tr("tie the leader anew");
    case ChangeKind::addExtension:
    case ChangeKind::removeExtension:
      return ChoiceWords::tr("change the extension");
    case ChangeKind::trimHead:
      return ChoiceWords::tr("trim the head");
  }
  return {};
}

QString fixWords(const Fix& fix) {
  const QString what = fix.repaired.empty()
                           ? ChoiceWords::tr("eases %1").arg(readingList(fix.eased))
                           : ChoiceWords::tr("repairs %1").arg(readingList(fix.repaired));
  return ChoiceWords::tr("%1; %2", "what a change repairs; what it does to the stroke")
      .arg(what, strokeWords(fix.stroke.verdict));
}

}  // namespace grainwise::ui
