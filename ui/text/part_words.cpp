// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/mass/profile.h"
#include "ui/text/contexts.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// A name longer than this is no caption; what the part is says more in the same room.
constexpr qsizetype kMostCaption = 20;

/// The part by itself: what it weighs and how its mass runs, label and scale applied. Several words are made of
/// one part after the other: the last is kept. From the window's thread only.
const MassProfile& aloneProfile(const Part& part) {
  static Rig alone;
  static MassProfile kept;
  if (alone.parts.empty() || !(alone.parts.front() == part)) {
    alone.parts = {part};
    kept = massProfile(alone);
  }
  return kept;
}

QString nameOf(const Part& part) {
  return part.name ? shelfName(QString::fromStdString(*part.name).simplified()) : QString();
}

/// "11 gr/ft", "10 to 8 gr/ft".
QString massRange(const MassProfile& profile, DisplayUnits units) {
  if (profile.spans.empty()) return {};
  const auto rodEnd = profile.spans.front().properties.mass.rodEnd;
  const auto flyEnd = profile.spans.back().properties.mass.flyEnd;
  const QString from = lineMassNumber(rodEnd, units);
  if (from == lineMassNumber(flyEnd, units)) return lineMassText(rodEnd, units);
  return Words::tr("%1 to %2", "grains per foot at both ends of a tip, the second with unit")
      .arg(from, lineMassText(flyEnd, units));
}

/// How much of a part sinks, where it is not all of it: "3/4 sinking", "floating".
QString sinkShare(const Part& part, const MassProfile& profile) {
  constexpr double kSameShare = 0.01;
  double sinking_ft = 0;
  for (const ProfileSpan& span : profile.spans) sinking_ft += span.sinks ? span.length().value() : 0;
  const double share = sinking_ft / part.length().value();
  if (share < kSameShare) return Words::tr("floating");
  if (share > 1 - kSameShare) return {};
  const std::array<std::pair<double, QString>, 3> quarters{{{0.25, Words::tr("1/4 sinking")},
                                                            {0.5, Words::tr("1/2 sinking")},
                                                            {0.75, Words::tr("3/4 sinking")}}};
  for (const auto& [quarter, words] : quarters) {
    if (std::abs(share - quarter) < kSameShare) return words;
  }
  return Words::tr("%1 sinking", "per cent of a tip").arg(percentText(share));
}

QString headCaption(const Part& part, DisplayUnits units) {
  const QString mass = massNumber(aloneProfile(part).places.front().mass(), units);
  const QString what = part.style ? styleWords(*part.style) : kindWords(part.kind);
  return Words::tr("%1 %2", "style of a head, its grains: short head 525").arg(what, mass);
}

QString tipCaption(const Part& part, DisplayUnits units) {
  const MassProfile& profile = aloneProfile(part);
  QStringList words{lengthText(part.length(), units)};
  const QString share = sinkShare(part, profile);
  if (!share.isEmpty()) words.append(share);
  words.append(massRange(profile, units));
  return words.join(QStringLiteral(", "));
}

QString runningLineCaption(const Part& part, DisplayUnits units) {
  if (part.sections.empty()) return kindWords(part.kind);
  const Section& first = part.sections.front();
  if (!first.diameter) return kindWords(part.kind);
  const double shown = shownValue(first.diameter->rodEnd.value(), Measure::diameter, units);
  const QString diameter = numberText(shown, units.metres ? 2 : 4);
  return first.material == Material::nylon
             ? Words::tr("mono %1", "a nylon running line, its diameter").arg(diameter)
             : Words::tr("running line %1", "its diameter").arg(diameter);
}

QString flyCaption(const Part& part, DisplayUnits units) {
  QString name = nameOf(part).section(QLatin1Char(','), 0, 0);
  if (name.isEmpty() || name.size() > kMostCaption) name = kindWords(part.kind);
  const Grains wet = part.fly ? part.fly->wetMass() : Grains(0);
  if (wet <= Grains(0)) return name;
  // A number at the end of the name would run into the grains.
  if (name.back().isDigit()) {
    return Words::tr("%1, %2", "a fly, its mass with unit").arg(name, massText(wet, units));
  }
  return Words::tr("%1 %2", "a fly, its grains: leech 33").arg(name, massNumber(wet, units));
}

bool sameLine(const Section& a, const Section& b) {
  return a.length == b.length && a.mass == b.mass && a.diameter == b.diameter && a.density == b.density &&
         a.sinkRate == b.sinkRate && a.floats == b.floats && a.material == b.material;
}

/// Whether everything that a name tells is the same: the line, its label, its style, the hook.
bool sameFigures(const Part& a, const Part& b) {
  return a.label == b.label && a.style == b.style &&
         std::equal(a.sections.begin(), a.sections.end(), b.sections.begin(), b.sections.end(), sameLine) &&
         (a.fly ? a.fly->hook : std::nullopt) == (b.fly ? b.fly->hook : std::nullopt);
}

/// The carried Shelf's name of a fly with another hook: "Wet fly #4" becomes "Wet fly #6".
QString withHook(QString name, const QString& before, const QString& after) {
  const QString numbered = QLatin1Char('#') + before;
  if (name.contains(numbered)) return name.replace(numbered, QLatin1Char('#') + after);
  if (name.endsWith(QLatin1Char(' ') + before)) return name.chopped(before.size()) + after;
  return name;
}

QString plainCaption(const Part& part, DisplayUnits units) {
  const QString what = part.isCoatedLeader() ? styleWords(Style::coated) : kindWords(part.kind);
  return Words::tr("%1 %2", "kind of part, its length: leader 4 ft")
      .arg(what, lengthText(part.length(), units));
}

QString derivedCaption(const Part& part, DisplayUnits units) {
  switch (part.kind) {
    case PartKind::runningLine:
      return runningLineCaption(part, units);
    case PartKind::head:
      return headCaption(part, units);
    case PartKind::tip:
      return tipCaption(part, units);
    case PartKind::leader:
    case PartKind::tippet:
      return plainCaption(part, units);
    case PartKind::fly:
      return flyCaption(part, units);
  }
  return {};
}

/// The rod's stated window for a style of head, in words.
QString windowWords(Style style, const Rod::Windows& windows, DisplayUnits units) {
  const auto range = [&](const std::optional<GrainWindow>& w, const QString& words) {
    if (!w) return QString();
    return words.arg(massNumber(w->low, units), massNumber(w->high, units));
  };
  switch (style) {
    case Style::shortHead:
      return range(windows.shortHead, Words::tr("short heads %1\u2013%2"));
    case Style::fine:
      return range(windows.fine, Words::tr("fine tapers %1\u2013%2"));
    case Style::longBelly:
      return range(windows.longBelly, Words::tr("long bellies %1\u2013%2"));
    case Style::singleHand:
      return range(windows.singleHand, Words::tr("lines %1\u2013%2"));
    default:
      return {};
  }
}

/// Of the head that is fitted; without one, of the first style that the rod states.
QString windowWords(const Rig& rig, DisplayUnits units) {
  const Rod& rod = *rig.rod;
  if (rod.windows) {
    const auto fitted = headStyle(rig);
    if (fitted) {
      QString words = windowWords(*fitted, *rod.windows, units);
      if (!words.isEmpty()) return words;
    } else {
      for (const Style style :
           {Style::shortHead, Style::fine, Style::longBelly, Style::singleHand}) {
        QString words = windowWords(style, *rod.windows, units);
        if (!words.isEmpty()) return words;
      }
    }
  }
  if (!rod.window) return {};
  return Words::tr("heads %1\u2013%2")
      .arg(massNumber(rod.window->low, units), massNumber(rod.window->high, units));
}

}  // namespace

QString kindWords(PartKind kind) {
  switch (kind) {
    case PartKind::runningLine:
      return Words::tr("running line");
    case PartKind::head:
      return Words::tr("head");
    case PartKind::tip:
      return Words::tr("tip");
    case PartKind::leader:
      return Words::tr("leader");
    case PartKind::tippet:
      return Words::tr("tippet");
    case PartKind::fly:
      return Words::tr("fly");
  }
  return {};
}

QString styleWords(Style style) {
  switch (style) {
    case Style::shortHead:
      return Words::tr("short head");
    case Style::fine:
      return Words::tr("fine-taper head");
    case Style::longBelly:
      return Words::tr("long belly");
    case Style::singleHand:
      return Words::tr("one-hand line");
    case Style::extension:
      return Words::tr("extension");
    case Style::level:
      return Words::tr("level tip");
    case Style::floatSink:
      return Words::tr("float/sink tip");
    case Style::tapered:
      return Words::tr("tapered tip");
    case Style::plain:
      return Words::tr("plain leader");
    case Style::coated:
      return Words::tr("coated leader");
  }
  return {};
}

QString partWords(const Part& part, DisplayUnits units) {
  QString name = nameOf(part);
  if (name.isEmpty()) return derivedCaption(part, units);
  if (part.kind != PartKind::fly || !part.fly || part.fly->wetMass() <= Grains(0)) return name;
  return Words::tr("%1, %2", "a fly, its mass with unit")
      .arg(name, massText(part.fly->wetMass(), units));
}

QString partCaption(const Part& part, DisplayUnits units) {
  const QString name = nameOf(part);
  const bool ownName = part.kind != PartKind::fly && !name.isEmpty() && name.size() <= kMostCaption;
  return ownName ? name : derivedCaption(part, units);
}

Part named(const Part& before, Part after, DisplayUnits units) {
  after.name = before.name;
  if (!before.name || sameFigures(before, after)) return after;
  const QString name = QString::fromStdString(*before.name);
  const bool carried = isShelfName(name);
  if (before.kind == PartKind::fly) {
    if (!carried || !before.fly->hook || !after.fly->hook) return after;
    after.name = withHook(name, QString::fromStdString(*before.fly->hook),
                          QString::fromStdString(*after.fly->hook))
                     .toStdString();
    return after;
  }
  if (carried || name == derivedCaption(before, units)) after.name.reset();
  return after;
}

QString partSpoken(const Part& part, DisplayUnits units) {
  if (part.kind == PartKind::fly) {
    const Grains wet = part.fly ? part.fly->wetMass() : Grains(0);
    if (wet <= Grains(0)) return Words::tr("fly, mass not known");
    return units.grams ? Words::tr("fly, %1 grams").arg(massNumber(wet, units))
                       : Words::tr("fly, %1 grains").arg(massNumber(wet, units));
  }
  const MassProfile& profile = aloneProfile(part);
  const Feet length = part.length();
  const double shown = shownValue(length.value(), Measure::length, units);
  const QString lineMass = lineMassNumber(profile.places.front().line / length, units);
  return Words::tr("%1, %2, %3", "kind of part, its length, its mass per length, for the ear")
      .arg(kindWords(part.kind),
           (units.metres ? Words::tr("%1 metres") : Words::tr("%1 feet")).arg(numberText(shown, 2)),
           (units.grams ? Words::tr("%1 grams a metre") : Words::tr("%1 grains a foot"))
               .arg(lineMass));
}

QString rodSentence(const Rig& rig, DisplayUnits units) {
  if (!rig.rod) return missingWords(Missing::rod);
  const Rod& rod = *rig.rod;
  QStringList what;
  what.append(rod.length ? lengthText(*rod.length, units) : Words::tr("rod"));
  if (rod.lineNumber) {
    what.append(Words::tr("#%1", "line number").arg(numberText(*rod.lineNumber, 1)));
  }
  QStringList words{what.join(QLatin1Char(' '))};
  if (rod.hands == 1) words.append(Words::tr("one hand"));
  const QString window = windowWords(rig, units);
  if (!window.isEmpty()) words.append(window);
  return words.join(QStringLiteral(", "));
}

QString waterSentence(const Rig& rig, DisplayUnits units) {
  if (!rig.water) return missingWords(Missing::water);
  const Water& w = *rig.water;
  QStringList words;
  if (w.depth) words.append(Words::tr("%1 deep").arg(lengthText(*w.depth, units)));
  if (w.surfaceSpeed) words.append(currentText(*w.surfaceSpeed, w.measured, units));
  if (w.temperature) words.append(temperatureText(*w.temperature, units));
  const QString facts = words.join(QStringLiteral(", "));
  const QString name = w.name ? QString::fromStdString(*w.name).simplified() : QString();
  if (name.isEmpty()) return facts.isEmpty() ? Words::tr("water") : facts;
  return facts.isEmpty() ? name : Words::tr("%1: %2", "a pool, its water").arg(name, facts);
}

}  // namespace grainwise::ui
