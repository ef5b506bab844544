// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/compare_words.h"

#include <cmath>

#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

const FactPair* find(const Difference& d, Fact fact) {
  for (const FactPair& f : d.facts) {
    if (f.fact == fact && f.a && f.b) return &f;
  }
  return nullptr;
}

/// "3 ft longer": the size of a change and its direction.
QString changed(double a, double b, const QString& size, const QString& more, const QString& less) {
  return (b > a ? more : less).arg(size);
}

void addLineFacts(QStringList& list, const Difference& d, DisplayUnits units) {
  if (const FactPair* f = find(d, Fact::length)) {
    list << changed(*f->a, *f->b, lengthText(Feet(std::abs(*f->b - *f->a)), units),
                    CompareWords::tr("%1 longer"), CompareWords::tr("%1 shorter"));
  }
  if (const FactPair* f = find(d, Fact::mass)) {
    list << changed(*f->a, *f->b, massText(Grains(std::abs(*f->b - *f->a)), units),
                    CompareWords::tr("%1 heavier"), CompareWords::tr("%1 lighter"));
  }
  if (const FactPair* f = find(d, Fact::sinkingLength)) {
    list << CompareWords::tr("%1 of it sink instead of %2")
                .arg(lengthText(Feet(*f->b), units), lengthText(Feet(*f->a), units));
  }
  if (const FactPair* f = find(d, Fact::sinkRate)) {
    list << CompareWords::tr("sinks at %1 instead of %2")
                .arg(rateText(InchesPerSecond(*f->b), units),
                     rateText(InchesPerSecond(*f->a), units));
  }
}

/// Ends only where length and mass do not tell the two apart.
void addEndFacts(QStringList& list, const Difference& d, DisplayUnits units) {
  if (!list.isEmpty()) return;
  if (const FactPair* f = find(d, Fact::rodEnd)) {
    list << CompareWords::tr("%1 at the rod end instead of %2")
                .arg(lineMassText(GrainsPerFoot(*f->b), units),
                     lineMassText(GrainsPerFoot(*f->a), units));
  }
  if (const FactPair* f = find(d, Fact::flyEnd)) {
    list << CompareWords::tr("%1 at the fly end instead of %2")
                .arg(lineMassText(GrainsPerFoot(*f->b), units),
                     lineMassText(GrainsPerFoot(*f->a), units));
  }
  if (const FactPair* f = find(d, Fact::rodEndDiameter)) {
    list << CompareWords::tr("%1 at the butt instead of %2")
                .arg(diameterText(Inches(*f->b), units), diameterText(Inches(*f->a), units));
  }
  if (const FactPair* f = find(d, Fact::flyEndDiameter)) {
    list << CompareWords::tr("%1 at the front instead of %2")
                .arg(diameterText(Inches(*f->b), units), diameterText(Inches(*f->a), units));
  }
  for (const FactPair& f : d.facts) {
    if (f.fact == Fact::layout) list << CompareWords::tr("another taper");
  }
}

QString flyFact(const FactPair& f) {
  switch (f.fact) {
    case Fact::flyDrag:
      return *f.b > *f.a ? CompareWords::tr("bulkier") : CompareWords::tr("sparser");
    case Fact::flyDensity:
      return *f.b > *f.a ? CompareWords::tr("more compact") : CompareWords::tr("less compact");
    default:
      return {};
  }
}

/// "B 14 ft, A 13 ft" of what is no part.
QString placeFact(const FactPair& f, DisplayUnits units) {
  const auto pair = [&](const QString& what, auto&& text) {
    const QString none = CompareWords::tr("none");
    return what.arg(f.a ? text(*f.a) : none, f.b ? text(*f.b) : none);
  };
  const auto feet = [&](double v) { return lengthText(Feet(v), units); };
  const auto speed = [&](double v) { return speedText(FeetPerSecond(v), units); };
  const auto grains = [&](double v) { return massText(Grains(v), units); };
  const auto plain = [](double v) { return numberText(v, 1); };
  const auto air = [&](const std::optional<double>& v) {
    return v ? altitudeText(Feet(*v), units) : CompareWords::tr("the usual height", "of a river");
  };
  switch (f.fact) {
    case Fact::rodLength:
      return pair(CompareWords::tr("length %1, now %2"), feet);
    case Fact::lineNumber:
      return pair(CompareWords::tr("line number %1, now %2"), plain);
    case Fact::windowLow:
      return pair(CompareWords::tr("head from %1, now %2"), grains);
    case Fact::windowHigh:
      return pair(CompareWords::tr("head up to %1, now %2"), grains);
    case Fact::surfaceSpeed:
      return pair(CompareWords::tr("surface %1, now %2"), speed);
    case Fact::waterDepth:
      return pair(CompareWords::tr("%1 deep, now %2"), feet);
    case Fact::temperature:
      return pair(CompareWords::tr("%1, now %2"),
                  [&](double v) { return temperatureText(Celsius(v), units); });
    case Fact::salinity:
      return pair(CompareWords::tr("salt %1 g/kg, now %2"), plain);
    case Fact::bed:
      return CompareWords::tr("another bed");
    case Fact::lineSpeed:
      return pair(CompareWords::tr("line speed %1, now %2"), speed);
    case Fact::loop:
      return pair(CompareWords::tr("loop %1, now %2"), feet);
    case Fact::launch:
      return pair(CompareWords::tr("launched at %1°, now %2°"), plain);
    case Fact::rodTip:
      return pair(CompareWords::tr("rod tip at %1, now %2"), feet);
    case Fact::overhang:
      return pair(CompareWords::tr("overhang %1, now %2"), feet);
    case Fact::airAltitude:
      return CompareWords::tr("air at %1, now %2").arg(air(f.a), air(f.b));
    case Fact::lineOut:
      return pair(CompareWords::tr("line out %1, now %2"), feet);
    case Fact::angle:
      return pair(CompareWords::tr("angle %1°, now %2°"), plain);
    case Fact::mend:
      return pair(CompareWords::tr("slack %1 s, now %2 s"), plain);
    default:
      return {};
  }
}

bool onBottom(const std::optional<Figure>& f) {
  const auto* state = f ? std::get_if<DepthState>(&f->verdict) : nullptr;
  return state != nullptr && isOnBottom(*state);
}

template <class V>
const V* verdictOf(const Consequence& c) {
  return c.b ? std::get_if<V>(&c.b->verdict) : nullptr;
}

QString becomes(const QString& a, const QString& b) {
  return CompareWords::tr("%1, now %2").arg(a, b);
}

QString withVerdict(const QString& figures, const QString& verdict) {
  return verdict.isEmpty() ? figures : CompareWords::tr("%1: %2").arg(figures, verdict);
}

QString jointText(const Junction& j, DisplayUnits units) { return junctionFigures(j, units); }

QString junctionEffect(const Consequence& c, DisplayUnits units) {
  const QString none = CompareWords::tr("no joint");
  const QString a = c.joint ? jointText(*c.joint, units) : none;
  const QString b = c.jointB ? jointText(*c.jointB, units) : none;
  const auto* verdict = verdictOf<JunctionVerdict>(c);
  return withVerdict(CompareWords::tr("Joint %1").arg(becomes(a, b)),
                     verdict ? junctionWords(*verdict) : QString());
}

QString ratioEffect(const QString& what, const Consequence& c, const QString& verdict,
                    QString (*text)(double)) {
  const QString none = CompareWords::tr("none");
  return withVerdict(what.arg(becomes(c.a ? text(c.a->value) : none, c.b ? text(c.b->value) : none)),
                     verdict);
}

QString reserveEffect(const Consequence& c) {
  if (!c.b) return CompareWords::tr("Nothing to turn over");
  if (!c.a) return CompareWords::tr("Now there is a line to turn over");
  if (const auto* verdict = verdictOf<ReserveVerdict>(c); verdict && c.a->verdict != c.b->verdict) {
    switch (*verdict) {
      case ReserveVerdict::heap:
        return CompareWords::tr(
            "Now lands in a heap: more line speed, a shorter leader or a smaller fly");
      case ReserveVerdict::probablyNot:
        return CompareWords::tr(
            "Now probably does not turn over: more line speed or a smaller fly");
      case ReserveVerdict::marginal:
        return CompareWords::tr("Now turns over with little speed to spare: a clean stroke");
      case ReserveVerdict::toSpare:
        return CompareWords::tr("Now turns over with speed to spare");
    }
  }
  return c.b->value > c.a->value ? CompareWords::tr("Turns over more easily")
                                 : CompareWords::tr("Turns over less easily");
}

QString driveEffect(const Consequence& c) {
  if (const auto* verdict = verdictOf<DriveVerdict>(c); verdict && c.a->verdict != c.b->verdict) {
    switch (*verdict) {
      case DriveVerdict::doesNotCarry:
        return CompareWords::tr("The line now does not carry the fly");
      case DriveVerdict::marginal:
        return CompareWords::tr("The line now only just carries the fly");
      case DriveVerdict::carries:
        return CompareWords::tr("The line now carries the fly");
    }
  }
  return c.b->value > c.a->value ? CompareWords::tr("Carries the fly better")
                                 : CompareWords::tr("Carries the fly less well");
}

QString paceEffect(const Consequence& c) {
  if (const auto* verdict = verdictOf<PaceVerdict>(c); verdict && c.a->verdict != c.b->verdict) {
    if (*verdict == PaceVerdict::kicks) {
      return CompareWords::tr("Now kicks: a heavier fly, a longer leader or a lighter tip");
    }
    if (*verdict == PaceVerdict::dies) return CompareWords::tr("Now dies before the fly is round");
  }
  return c.b->value > c.a->value ? CompareWords::tr("The fly comes round faster")
                                 : CompareWords::tr("The fly comes round softer");
}

QString effectName(Effect effect) {
  switch (effect) {
    case Effect::junction:
      return CompareWords::tr("the joints");
    case Effect::headOnRod:
      return CompareWords::tr("the head on the rod");
    case Effect::workingLength:
      return CompareWords::tr("the length of the line");
    case Effect::tipShare:
      return CompareWords::tr("the share of the tip");
    case Effect::anchor:
      return CompareWords::tr("the anchor");
    case Effect::flyAgainstTip:
    case Effect::flyAgainstLeader:
      return CompareWords::tr("what the fly asks of the line");
    case Effect::drive:
      return CompareWords::tr("how the line carries the fly");
    case Effect::reserve:
      return CompareWords::tr("turnover");
    case Effect::pace:
      return CompareWords::tr("how fast the fly comes round");
    case Effect::depth:
      return CompareWords::tr("depth");
    case Effect::swingTime:
      return CompareWords::tr("the time of the swing");
    case Effect::stroke:
      return CompareWords::tr("the stroke");
  }
  return {};
}

}  // namespace

QString differenceTitle(const Difference& d, const Rig& a, const Rig& b, DisplayUnits units) {
  switch (d.what) {
    case Difference::What::part: {
      const QString from = partWords(a.parts[*d.parts.a], units);
      const QString to = partWords(b.parts[*d.parts.b], units);
      if (from == to) return capital(CompareWords::tr("%1, another").arg(from));
      return capital(CompareWords::tr("%1 → %2").arg(from, to));
    }
    case Difference::What::onlyInA:
      return CompareWords::tr("Only A has %1").arg(partWords(a.parts[*d.parts.a], units));
    case Difference::What::onlyInB:
      return CompareWords::tr("Only B has %1").arg(partWords(b.parts[*d.parts.b], units));
    case Difference::What::rod:
      return CompareWords::tr("Another rod");
    case Difference::What::water:
      return CompareWords::tr("Another water");
    case Difference::What::cast:
      return CompareWords::tr("Another cast");
    case Difference::What::swing:
      return CompareWords::tr("Another swing");
  }
  return {};
}

QString differenceFacts(const Difference& d, DisplayUnits units) {
  QStringList list;
  if (d.what > Difference::What::onlyInB) {
    for (const FactPair& f : d.facts) list << placeFact(f, units);
    return list.join(QStringLiteral("; "));
  }
  addLineFacts(list, d, units);
  for (const FactPair& f : d.facts) {
    if (f.a && f.b) list << flyFact(f);
  }
  list.removeAll(QString());
  addEndFacts(list, d, units);
  return list.join(QStringLiteral(", "));
}

QString rangeText(double low_ft, double high_ft, DisplayUnits units) {
  const auto number = [&](double ft) {
    return numberText(shownValue(ft, Measure::length, units), units.metres ? 2 : 1);
  };
  return CompareWords::tr("%1 to %2 %3").arg(number(low_ft), number(high_ft), lengthUnit(units));
}

QString depthDifferenceWords(const Consequence& c, DisplayUnits units) {
  if (!c.difference) return {};
  if (onBottom(c.a) && onBottom(c.b)) return CompareWords::tr("both on the bottom");
  if (onBottom(c.b)) return CompareWords::tr("B lies on the bottom");
  if (onBottom(c.a)) return CompareWords::tr("A lies on the bottom");
  if (c.within) return CompareWords::tr("no difference for certain");
  const PairedDifference& d = *c.difference;
  const double low = std::min(std::abs(d.low), std::abs(d.high));
  const double high = std::max(std::abs(d.low), std::abs(d.high));
  return (d.middle > 0 ? CompareWords::tr("B %1 deeper (%2)")
                       : CompareWords::tr("B %1 shallower (%2)"))
      .arg(roundLengthText(Feet(std::abs(d.middle)), units), rangeText(low, high, units));
}

QString strokeDifferenceWords(const Stroke& stroke) {
  QString words;
  switch (stroke.verdict) {
    case StrokeVerdict::same:
      words = CompareWords::tr("same stroke");
      break;
    case StrokeVerdict::adjustLonger:
      words = CompareWords::tr("a longer sweep");
      break;
    case StrokeVerdict::adjustShorter:
      words = CompareWords::tr("a shorter sweep");
      break;
    case StrokeVerdict::different:
      words = CompareWords::tr("a different cast");
      break;
  }
  if (stroke.slowerLift) words = CompareWords::tr("%1, slower lift").arg(words);
  if (stroke.quickerLift) words = CompareWords::tr("%1, quicker lift").arg(words);
  return words;
}

/// Of one difference by itself: what it does to whichever rig has it.
static QString depthEffect(const Consequence& c, DisplayUnits units) {
  if (onBottom(c.a) && onBottom(c.b)) return CompareWords::tr("Lies on the bottom as before");
  if (onBottom(c.b)) return CompareWords::tr("Now lies on the bottom");
  if (onBottom(c.a)) return CompareWords::tr("Now swims clear of the bottom");
  const PairedDifference& d = *c.difference;
  const double low = std::min(std::abs(d.low), std::abs(d.high));
  const double high = std::max(std::abs(d.low), std::abs(d.high));
  return (d.middle > 0 ? CompareWords::tr("Swims %1 deeper (%2)")
                       : CompareWords::tr("Swims %1 shallower (%2)"))
      .arg(roundLengthText(Feet(std::abs(d.middle)), units), rangeText(low, high, units));
}

EffectWords effectWords(const Consequence& c, DisplayUnits units) {
  EffectWords out;
  if (c.b && c.b->grade && (!c.a || c.a->grade != c.b->grade)) out.becomes = c.b->grade;
  switch (c.effect) {
    case Effect::junction:
      out.words = junctionEffect(c, units);
      break;
    case Effect::headOnRod: {
      const auto* verdict = verdictOf<HeadVerdict>(c);
      RodFit fit;
      if (verdict) fit.headVerdict = *verdict;
      const auto grains = [&](const std::optional<Figure>& f) {
        return f ? massText(Grains(f->value), units) : CompareWords::tr("none");
      };
      const bool wrong = verdict && (*verdict == HeadVerdict::wrongLight ||
                                     *verdict == HeadVerdict::wrongHeavy);
      const QString words = !verdict ? QString()
                            : wrong  ? CompareWords::tr("wrong head for this rod")
                            : *verdict == HeadVerdict::fits ? CompareWords::tr("fits the rod")
                            : *verdict == HeadVerdict::touchLight
                                ? CompareWords::tr("a touch light")
                                : CompareWords::tr("a touch heavy");
      const bool same = c.a && c.b && c.a->value == c.b->value;
      out.words = withVerdict(
          CompareWords::tr("Head %1").arg(same ? grains(c.b) : becomes(grains(c.a), grains(c.b))),
          words);
      break;
    }
    case Effect::workingLength: {
      const auto* verdict = verdictOf<LengthVerdict>(c);
      out.words = ratioEffect(CompareWords::tr("Line of %1 rods"), c,
                              verdict ? lengthWords(*verdict) : QString(), ratioText);
      break;
    }
    case Effect::tipShare: {
      const auto* verdict = verdictOf<TipShareVerdict>(c);
      out.words = ratioEffect(CompareWords::tr("Tip %1 of the head"), c,
                              verdict ? tipShareWords(*verdict) : QString(), percentText);
      break;
    }
    case Effect::anchor: {
      const auto* verdict = verdictOf<AnchorVerdict>(c);
      out.words = ratioEffect(CompareWords::tr("Anchor of %1 rods"), c,
                              verdict ? anchorWords(*verdict) : QString(), ratioText);
      break;
    }
    case Effect::flyAgainstTip: {
      const auto* verdict = verdictOf<FlyVerdict>(c);
      out.words = ratioEffect(CompareWords::tr("Tip %1 × the fly"), c,
                              verdict ? flyWords(*verdict) : QString(), ratioText);
      break;
    }
    case Effect::flyAgainstLeader: {
      const auto* verdict = verdictOf<LeaderVerdict>(c);
      out.words = ratioEffect(CompareWords::tr("Leader %1 × the fly"), c,
                              verdict ? leaderWords(*verdict) : QString(), ratioText);
      break;
    }
    case Effect::drive:
      out.words = driveEffect(c);
      break;
    case Effect::reserve:
      out.words = reserveEffect(c);
      break;
    case Effect::pace:
      out.words = paceEffect(c);
      break;
    case Effect::depth:
      if (c.difference) {
        out.words = depthEffect(c, units);
      } else {
        out.words =
            c.b ? CompareWords::tr("Now it has a depth") : CompareWords::tr("Now it has no depth");
      }
      break;
    case Effect::swingTime:
      if (c.a && c.b) {
        const double by = c.b->value - c.a->value;
        out.words = (by > 0 ? CompareWords::tr("Takes %1 s longer to come round")
                            : CompareWords::tr("Comes round %1 s sooner"))
                        .arg(numberText(std::abs(by), 0));
      } else {
        out.words = c.b ? CompareWords::tr("Now it comes round")
                        : CompareWords::tr("Now it never comes round");
      }
      break;
    case Effect::stroke:
      out.words = capital(strokeDifferenceWords(*c.stroke));
      break;
  }
  return out;
}

QString withinWords(const std::vector<Consequence>& list) {
  QStringList names;
  for (const Consequence& c : list) {
    if (!c.within) continue;
    const QString name = effectName(c.effect);
    if (!names.contains(name)) names << name;
  }
  return names.isEmpty()
             ? QString()
             : CompareWords::tr("No more than is known: %1").arg(names.join(QStringLiteral(", ")));
}

}  // namespace grainwise::ui
