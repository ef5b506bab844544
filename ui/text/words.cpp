// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Words", text); }

QString percent(double share) {
  return tr("%1 %").arg(QLocale().toString(100 * share, 'f', 0));
}

QString plain(double value, int decimals) {
  QString text = QLocale().toString(value, 'f', decimals);
  const QString point(QLocale().decimalPoint());
  if (text.contains(point)) {
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(point)) text.chop(point.size());
  }
  return text;
}

QString ofTwo(Grains part, Grains whole, DisplayUnits units) {
  return tr("%1 of %2").arg(massNumber(part, units), massText(whole, units));
}

TileWords missing(const QString& what) { return {QString(), QString(), what, std::nullopt}; }

QString headWords(const RodFit& fit) {
  const double head = fit.head->value();
  switch (*fit.headVerdict) {
    case HeadVerdict::fits: {
      const double low = fit.window->low.value();
      const double high = fit.window->high.value();
      if (head < low + 0.2 * (high - low)) return tr("fits, at the light end");
      if (head > high - 0.2 * (high - low)) return tr("fits, at the heavy end");
      return tr("fits this rod");
    }
    case HeadVerdict::touchLight:
      return tr("a touch light for this rod");
    case HeadVerdict::touchHeavy:
      return tr("a touch heavy for this rod");
    case HeadVerdict::wrongLight:
      return tr("too light: wrong head for this rod");
    case HeadVerdict::wrongHeavy:
      return tr("too heavy: wrong head for this rod");
  }
  return {};
}

QString shareWords(TipShareVerdict verdict) {
  switch (verdict) {
    case TipShareVerdict::noGrip:
      return tr("no grip: the water holds too little");
    case TipShareVerdict::light:
      return tr("light: small flies");
    case TipShareVerdict::right:
      return tr("right for this head");
    case TipShareVerdict::heavy:
      return tr("heavy: roll it up first");
    case TipShareVerdict::tooMuch:
      return tr("too much tip for this head");
  }
  return {};
}

QString anchorWords(AnchorVerdict verdict) {
  switch (verdict) {
    case AnchorVerdict::tooLittle:
      return tr("too little in the water");
    case AnchorVerdict::shortish:
      return tr("a little short in the water");
    case AnchorVerdict::good:
      return tr("enough in the water");
    case AnchorVerdict::longish:
      return tr("a long anchor");
  }
  return {};
}

QString flyWords(FlyVerdict verdict) {
  switch (verdict) {
    case FlyVerdict::carries:
      return tr("the tip carries it");
    case FlyVerdict::heavySlow:
      return tr("heavy: slow, open stroke");
    case FlyVerdict::tooHeavy:
      return tr("too heavy for this tip");
  }
  return {};
}

QString leaderWords(LeaderVerdict verdict) {
  switch (verdict) {
    case LeaderVerdict::fine:
      return tr("the leader carries it");
    case LeaderVerdict::watch:
      return tr("heavy for this leader");
    case LeaderVerdict::tooHeavy:
      return tr("too heavy for this leader");
  }
  return {};
}

bool has(const Rig& rig, PartKind kind) {
  for (const Part& part : rig.parts) {
    if (part.kind == kind) return true;
  }
  return false;
}

TileWords hingeTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (!a.worstJunction) {
    return missing(has(rig, PartKind::head) ? tr("no joint yet: add a tip or a leader")
                                            : tr("no head yet: drop one on the line"));
  }
  const Junction& j = a.junctions[*a.worstJunction];
  return {junctionFigures(j, units), lineMassUnit(units), junctionWords(j.verdict), grade(j.verdict)};
}

TileWords shareTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (!has(rig, PartKind::head)) return missing(tr("no head yet: drop one on the line"));
  if (!a.grip.tipShare || a.grip.tip == Grains(0)) {
    if (a.grip.anchorVerdict && grade(*a.grip.anchorVerdict) == Grade::wrong) {
      return {tr("no tip"), {}, anchorWords(*a.grip.anchorVerdict), grade(*a.grip.anchorVerdict)};
    }
    return {tr("no tip"), {}, tr("the line ends in a leader"), std::nullopt};
  }
  TileWords words{percent(*a.grip.tipShare), ofTwo(a.grip.tip, a.grip.head, units), {}, std::nullopt};
  if (a.grip.tipShareVerdict) {
    words.verdict = shareWords(*a.grip.tipShareVerdict);
    words.grade = grade(*a.grip.tipShareVerdict);
  } else {
    words.verdict = tr("no rule for this style of head");
  }
  if (a.grip.anchorVerdict && (!words.grade || grade(*a.grip.anchorVerdict) > *words.grade)) {
    words.verdict = anchorWords(*a.grip.anchorVerdict);
    words.grade = grade(*a.grip.anchorVerdict);
  }
  return words;
}

TileWords flyTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (!has(rig, PartKind::fly)) return missing(tr("no fly yet: drop one on the line"));
  if (!a.fly.tipToFly) {
    return missing(a.fly.fly == Grains(0) ? tr("give the fly a mass") : tr("no line to carry it yet"));
  }
  TileWords words;
  const bool leaderRules = a.fly.leaderToFlyVerdict &&
                           grade(*a.fly.leaderToFlyVerdict) > grade(*a.fly.tipToFlyVerdict);
  const double ratio = leaderRules ? *a.fly.leaderToFly : *a.fly.tipToFly;
  words.number = tr("%1 ×").arg(plain(ratio, ratio < 10 ? 1 : 0));
  words.from = tr("%1 on %2").arg(massNumber(leaderRules ? a.fly.nylon : a.fly.tipWindow, units),
                                  massText(a.fly.fly, units));
  words.verdict =
      leaderRules ? leaderWords(*a.fly.leaderToFlyVerdict) : flyWords(*a.fly.tipToFlyVerdict);
  words.grade = leaderRules ? grade(*a.fly.leaderToFlyVerdict) : grade(*a.fly.tipToFlyVerdict);
  return words;
}

TileWords headTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (!has(rig, PartKind::head)) return missing(tr("no head yet: drop one on the line"));
  if (!a.rod.headVerdict || !a.rod.window) {
    const QString number = a.rod.head ? massNumber(*a.rod.head, units) : QString();
    const QString words = rig.rod ? tr("give the rod a grain window") : tr("no rod yet: choose one");
    return {number, massUnit(units), words, std::nullopt};
  }
  return {massNumber(*a.rod.head, units),
          tr("in %1–%2").arg(massNumber(a.rod.window->low, units), massText(a.rod.window->high, units)),
          headWords(a.rod), grade(*a.rod.headVerdict)};
}

QString windowWords(const Rig& rig, DisplayUnits units) {
  const auto range = [&](const char* format, const GrainWindow& w) {
    return tr(format).arg(massNumber(w.low, units), massNumber(w.high, units));
  };
  const auto& windows = rig.rod->windows;
  if (windows) {
    Style style = Style::shortHead;
    for (const Part& part : rig.parts) {
      if (part.kind == PartKind::head && part.style && *part.style != Style::extension) {
        style = *part.style;
        break;
      }
    }
    if (style == Style::shortHead && windows->shortHead) {
      return range(QT_TRANSLATE_NOOP("Words", "short heads %1–%2"), *windows->shortHead);
    }
    if (style == Style::fine && windows->fine) {
      return range(QT_TRANSLATE_NOOP("Words", "fine tapers %1–%2"), *windows->fine);
    }
    if (style == Style::longBelly && windows->longBelly) {
      return range(QT_TRANSLATE_NOOP("Words", "long bellies %1–%2"), *windows->longBelly);
    }
    if (style == Style::singleHand && windows->singleHand) {
      return range(QT_TRANSLATE_NOOP("Words", "lines %1–%2"), *windows->singleHand);
    }
  }
  if (rig.rod->window) return range(QT_TRANSLATE_NOOP("Words", "heads %1–%2"), *rig.rod->window);
  return {};
}

}  // namespace

QString readingTitle(Reading reading) {
  switch (reading) {
    case Reading::hinge:
      return tr("Hinge");
    case Reading::tipShare:
      return tr("Tip share");
    case Reading::fly:
      return tr("Fly");
    case Reading::head:
      return tr("Head on rod");
  }
  return {};
}

TileWords tileWords(Reading reading, const Rig& rig, const Analysis& analysis, DisplayUnits units) {
  switch (reading) {
    case Reading::hinge:
      return hingeTile(rig, analysis, units);
    case Reading::tipShare:
      return shareTile(rig, analysis, units);
    case Reading::fly:
      return flyTile(rig, analysis, units);
    case Reading::head:
      return headTile(rig, analysis, units);
  }
  return {};
}

QString junctionWords(JunctionVerdict verdict) {
  switch (verdict) {
    case JunctionVerdict::hinges:
      return tr("hinges");
    case JunctionVerdict::hingesUnlessSlow:
      return tr("hinges unless slow and open");
    case JunctionVerdict::stepsUp:
      return tr("steps up: has to be forced");
    case JunctionVerdict::level:
      return tr("runs level");
    case JunctionVerdict::smoothDrop:
      return tr("smooth drop");
    case JunctionVerdict::collapses:
      return tr("big drop: collapses");
    case JunctionVerdict::nylonNoRule:
      return tr("into the leader");
    case JunctionVerdict::nylonFine:
      return tr("fine for nylon");
    case JunctionVerdict::nylonThin:
      return tr("thin butt");
    case JunctionVerdict::nylonPiles:
      return tr("butt too thin: will pile");
  }
  return {};
}

QString junctionFigures(const Junction& j, DisplayUnits units) {
  return tr("%1 to %2").arg(lineMassNumber(j.rodSideMean, units), lineMassNumber(j.flySideMean, units));
}

QString junctionTag(const Junction& j, DisplayUnits units) {
  return tr("%1: %2").arg(junctionFigures(j, units), junctionWords(j.verdict));
}

QString junctionSpoken(const Junction& j, const Rig& rig) {
  const QString behind = kindWords(rig.parts[j.rodSide].kind);
  const QString ratio = plain(j.ratio3ft, 2);
  if (j.ratio3ft > 1.0) return tr("steps up from the %1 by %2").arg(behind, ratio);
  return tr("steps down from the %1 by %2").arg(behind, ratio);
}

QString kindWords(PartKind kind) {
  switch (kind) {
    case PartKind::runningLine:
      return tr("running line");
    case PartKind::head:
      return tr("head");
    case PartKind::tip:
      return tr("tip");
    case PartKind::leader:
      return tr("leader");
    case PartKind::tippet:
      return tr("tippet");
    case PartKind::fly:
      return tr("fly");
  }
  return {};
}

QString styleWords(Style style) {
  switch (style) {
    case Style::shortHead:
      return tr("short head");
    case Style::fine:
      return tr("fine taper");
    case Style::longBelly:
      return tr("long belly");
    case Style::singleHand:
      return tr("single-hand line");
    case Style::extension:
      return tr("extension");
    case Style::level:
      return tr("level tip");
    case Style::floatSink:
      return tr("float/sink tip");
    case Style::tapered:
      return tr("tapered tip");
    case Style::plain:
      return tr("plain leader");
    case Style::coated:
      return tr("coated leader");
  }
  return {};
}

QString partWords(const Part& part, DisplayUnits units) {
  if (part.kind == PartKind::fly) {
    const QString mass = part.fly ? massNumber(part.fly->wetMass(), units) : QString();
    const QString name = part.name ? QString::fromStdString(*part.name) : tr("fly");
    return mass == QLatin1String("0") ? name : tr("%1, %2").arg(name, massText(part.fly->wetMass(), units));
  }
  if (part.name && !part.name->empty()) return QString::fromStdString(*part.name);
  return tr("%1 %2").arg(kindWords(part.kind), lengthText(part.length(), units));
}

QString captionWords(const Part& part, DisplayUnits units) {
  if (part.kind != PartKind::runningLine || part.sections.empty()) return partWords(part, units);
  const Section& first = part.sections.front();
  const SectionProperties is = sectionProperties(first, part.kind, 1.0);
  const QString diameter = diameterText(is.diameterRodEnd, units);
  return first.material ? tr("mono %1").arg(diameter) : tr("coated %1").arg(diameter);
}

QString partSpoken(const Part& part) {
  if (part.kind == PartKind::fly) {
    const QString mass = part.fly ? plain(part.fly->wetMass().value(), 1) : QStringLiteral("0");
    return tr("fly, %1 grains").arg(mass);
  }
  const QString length = plain(part.length().value(), 1);
  double grains = 0;
  for (const Section& section : part.sections) {
    const LineMass mass = lineMass(section, part.kind);
    grains += (mass.rodEnd.value() + mass.flyEnd.value()) / 2 * section.length.value();
  }
  grains *= scaleOf(part);
  const double perFoot = grains / part.length().value();
  return tr("%1, %2 feet, %3 grains a foot")
      .arg(kindWords(part.kind), length, plain(perFoot, perFoot < 2 ? 2 : 1));
}

QString rodSentence(const Rig& rig, DisplayUnits units) {
  if (!rig.rod) return tr("no rod yet");
  QStringList words;
  QString rod = rig.rod->length ? lengthText(*rig.rod->length, units) : tr("rod");
  if (rig.rod->lineNumber) rod += QStringLiteral(" #") + plain(*rig.rod->lineNumber, 1);
  words.append(rod);
  if (rig.rod->hands == 1) words.append(tr("one hand"));
  const QString window = windowWords(rig, units);
  if (!window.isEmpty()) words.append(window);
  return words.join(QStringLiteral(", "));
}

QString waterSentence(const Rig& rig, DisplayUnits units) {
  if (!rig.water) return tr("no water yet");
  const Water& w = *rig.water;
  QStringList words;
  if (w.depth) words.append(tr("%1 deep").arg(lengthText(*w.depth, units)));
  if (w.surfaceSpeed) words.append(speedText(*w.surfaceSpeed, units));
  if (w.temperature) words.append(temperatureText(*w.temperature, units));
  const QString facts = words.join(QStringLiteral(", "));
  if (!w.name || w.name->empty()) return facts.isEmpty() ? tr("water") : facts;
  const QString name = QString::fromStdString(*w.name);
  return facts.isEmpty() ? name : tr("%1: %2").arg(name, facts);
}

QString strokeSentence(const Stroke& stroke) {
  QString words;
  switch (stroke.verdict) {
    case StrokeVerdict::same:
      words = tr("Same stroke as the rig you opened");
      break;
    case StrokeVerdict::adjustLonger:
      words = tr("Stroke against the rig you opened: a longer sweep");
      break;
    case StrokeVerdict::adjustShorter:
      words = tr("Stroke against the rig you opened: a shorter sweep");
      break;
    case StrokeVerdict::different:
      words = tr("A different cast from the rig you opened");
      break;
  }
  if (stroke.slowerLift) return tr("%1; slower lift").arg(words);
  if (stroke.quickerLift) return tr("%1; quicker lift").arg(words);
  return words;
}

QString gradeWord(Grade grade) {
  switch (grade) {
    case Grade::fits:
      return tr("fits");
    case Grade::watch:
      return tr("watch");
    case Grade::wrong:
      return tr("wrong");
  }
  return {};
}

Glyph glyphOf(Grade grade) {
  return grade == Grade::fits ? Glyph::circle : grade == Grade::watch ? Glyph::triangle : Glyph::square;
}

}  // namespace grainwise::ui
