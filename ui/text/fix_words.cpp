// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <cmath>

#include "ui/text/choice_words.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

using Say = ChoiceWords;

QString readingName(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return Say::tr("the joint");
    case Reading::headOnRod:
      return Say::tr("the head on this rod");
    case Reading::workingLength:
      return Say::tr("the length on this rod");
    case Reading::tipShare:
      return Say::tr("the tip's share of the head");
    case Reading::anchor:
      return Say::tr("the line in the water");
    case Reading::flyAgainstTip:
      return Say::tr("the fly against the tip");
    case Reading::flyAgainstLeader:
      return Say::tr("the fly against the leader");
    case Reading::drive:
      return Say::tr("how the line carries the fly");
    case Reading::reserve:
      return Say::tr("the turnover");
    case Reading::depth:
      return Say::tr("the depth");
  }
  return {};
}

QString cutWords(const Change& change, const QString& part, const QString& feet) {
  const bool fly = change.end == PartEnd::fly;
  if (change.kind == ChangeKind::trimHead) {
    return (fly ? Say::tr("trim %1 off the front of %2") : Say::tr("trim %1 off the rear of %2"))
        .arg(feet, part);
  }
  return (fly ? Say::tr("cut %1 off the fly end of %2") : Say::tr("cut %1 off the rod end of %2"))
      .arg(feet, part);
}

QString strokeWords(StrokeVerdict verdict) {
  switch (verdict) {
    case StrokeVerdict::same:
      return Say::tr("same stroke");
    case StrokeVerdict::adjustLonger:
      return Say::tr("longer sweep");
    case StrokeVerdict::adjustShorter:
      return Say::tr("shorter sweep");
    case StrokeVerdict::different:
      break;
  }
  return Say::tr("a different cast");
}

}  // namespace

QString readingList(const std::vector<Reading>& readings) {
  QStringList names;
  for (const Reading r : readings) names << readingName(r);
  return names.join(QStringLiteral(", "));
}

QString changeWords(const Change& change, DisplayUnits units) {
  const QString part = QString::fromStdString(change.part);
  const QString feet = lengthText(Feet(std::abs(change.feet)), units);
  switch (change.kind) {
    case ChangeKind::swapTip:
    case ChangeKind::swapLeader:
    case ChangeKind::swapTippet:
    case ChangeKind::swapFly:
    case ChangeKind::swapHead:
      return Say::tr("%1: %2", "what is changed: for which part").arg(changeStep(change), part);
    case ChangeKind::addTip:
      return Say::tr("put on a tip: %1").arg(part);
    case ChangeKind::removeTip:
    case ChangeKind::removeExtension:
      return Say::tr("take off %1").arg(part);
    case ChangeKind::angle:
      return Say::tr("cast at %1° instead of %2°")
          .arg(numberText(change.to, 0), numberText(change.from, 0));
    case ChangeKind::mend:
      return Say::tr("%1 s of slack instead of %2")
          .arg(numberText(change.to, 0), numberText(change.from, 0));
    case ChangeKind::lineOut:
      return Say::tr("%1 of line out instead of %2")
          .arg(lengthText(Feet(change.to), units), lengthText(Feet(change.from), units));
    case ChangeKind::cutTip:
    case ChangeKind::trimHead:
      return cutWords(change, part, feet);
    case ChangeKind::leaderLength:
      return (change.feet < 0 ? Say::tr("tie %1 shorter by %2") : Say::tr("tie %1 longer by %2"))
          .arg(part, feet);
    case ChangeKind::addExtension:
      return Say::tr("put %1 behind the head").arg(part);
  }
  return {};
}

QString changeStep(const Change& change) {
  switch (change.kind) {
    case ChangeKind::swapTip:
    case ChangeKind::addTip:
      return Say::tr("change the tip");
    case ChangeKind::removeTip:
      return Say::tr("take the tip off");
    case ChangeKind::swapLeader:
      return Say::tr("change the leader");
    case ChangeKind::swapTippet:
      return Say::tr("change the tippet");
    case ChangeKind::swapFly:
      return Say::tr("change the fly");
    case ChangeKind::swapHead:
      return Say::tr("change the head");
    case ChangeKind::angle:
    case ChangeKind::mend:
    case ChangeKind::lineOut:
      return Say::tr("change the swing");
    case ChangeKind::cutTip:
      return Say::tr("cut the tip");
    case ChangeKind::leaderLength:
      return Say::tr("tie the leader anew");
    case ChangeKind::addExtension:
    case ChangeKind::removeExtension:
      return Say::tr("change the extension");
    case ChangeKind::trimHead:
      return Say::tr("trim the head");
  }
  return {};
}

QString fixWords(const Fix& fix) {
  const QString what = fix.repaired.empty() ? Say::tr("eases %1").arg(readingList(fix.eased))
                                            : Say::tr("repairs %1").arg(readingList(fix.repaired));
  return Say::tr("%1; %2", "what a change repairs; what it does to the stroke")
      .arg(what, strokeWords(fix.stroke.verdict));
}

}  // namespace grainwise::ui
