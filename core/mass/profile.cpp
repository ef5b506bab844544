// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/profile.h"

#include <algorithm>

#include "core/mass/line_integrals.h"
#include "core/material/rated_diameters.h"

namespace grainwise {
namespace {

double shareOf(const ProfileSpan& span, Station s) {
  if (s <= span.from) return 0.0;
  if (s >= span.to) return 1.0;
  return (s - span.from) / (span.to - span.from);
}

/// First span that reaches beyond `s`.
std::vector<ProfileSpan>::const_iterator firstBeyond(const std::vector<ProfileSpan>& spans,
                                                     Station s) {
  return std::partition_point(spans.begin(), spans.end(),
                              [&](const ProfileSpan& span) { return span.to <= s; });
}

Grains unscaledMass(const Part& part) {
  ExactSum sum;
  for (const Section& section : part.sections) {
    const LineMass mass = lineMass(section, part.kind);
    sum += pieceMass(mass.law, section.length, mass.rodEnd, mass.flyEnd).value();
  }
  return Grains(sum.value());
}

/// Stations of a part's section ends, in order, the part beginning at `from`.
std::vector<Station> sectionEnds(const Part& part, Station from) {
  std::vector<Station> ends;
  ends.reserve(part.sections.size());
  ExactSum at;
  at += from.feet();
  for (const Section& section : part.sections) {
    at += section.length.value();
    ends.emplace_back(at.value());
  }
  return ends;
}

/// The same with the part's fly end at 0: a running line, counted backwards from the head.
std::vector<Station> sectionEndsBeforeZero(const Part& part) {
  std::vector<Station> ends(part.sections.size());
  ExactSum back;
  for (std::size_t i = part.sections.size(); i-- > 0;) {
    ends[i] = Station(0.0 - back.value());
    back += part.sections[i].length.value();
  }
  return ends;
}

Feet lengthOf(const Part& part) {
  ExactSum sum;
  for (const Section& section : part.sections) sum += section.length.value();
  return Feet(sum.value());
}

/// Builds a profile part by part, from rod to fly.
class Builder {
 public:
  explicit Builder(const Rig& rig) {
    m_profile.places.reserve(rig.parts.size());
    std::size_t sections = 0;
    for (const Part& part : rig.parts) sections += part.sections.size();
    m_profile.spans.reserve(sections);
    for (std::size_t i = 0; i < rig.parts.size(); ++i) add(rig.parts[i], i);
    m_profile.end = m_at;
  }
  MassProfile take() { return std::move(m_profile); }

 private:
  void add(const Part& part, std::size_t index) {
    if (part.kind == PartKind::fly) return addFly(part, index);
    const bool running = part.kind == PartKind::runningLine;
    const Station from = running ? Station(0.0 - lengthOf(part).value()) : m_at;
    const auto ends = running ? sectionEndsBeforeZero(part) : sectionEnds(part, from);
    PartPlace place;
    place.from = from;
    place.to = ends.empty() ? from : ends.back();
    place.scaledBy = scaleOf(part);
    addLoop(part, index, place.from, true);
    addSections(part, index, place, ends);
    addLoop(part, index, place.to, false);
    place.loops = part.loopMass();
    m_profile.places.push_back(place);
    if (!running) {
      m_at = place.to;
      return;
    }
    m_profile.firstPart = index + 1;
    m_profile.firstSpan = m_profile.spans.size();
  }

  void addSections(const Part& part, std::size_t index, PartPlace& place,
                   const std::vector<Station>& ends) {
    ExactSum mass;
    Station from = place.from;
    for (std::size_t k = 0; k < part.sections.size(); ++k) {
      const Section& section = part.sections[k];
      ProfileSpan span;
      span.part = index;
      span.section = k;
      span.from = from;
      span.to = ends[k];
      span.properties = sectionProperties(section, part.kind, place.scaledBy, m_rated);
      span.bareNylon = isBareNylon(part, section);
      span.sinks = sinks(section, part.kind);
      mass += span.mass().value();
      from = span.to;
      m_profile.spans.push_back(span);
    }
    place.line = Grains(mass.value());
  }

  void addLoop(const Part& part, std::size_t index, Station at, bool atRodEnd) {
    if (!part.loops) return;
    const auto& loop = atRodEnd ? part.loops->rodEnd : part.loops->flyEnd;
    if (!loop || *loop <= Grains(0)) return;
    m_profile.points.push_back({PointMass::Kind::loop, index, at, *loop, atRodEnd});
  }

  void addFly(const Part& part, std::size_t index) {
    const Grains wet = part.fly ? part.fly->wetMass() : Grains(0);
    m_profile.places.push_back({m_at, m_at, wet, Grains(0), 1.0});
    if (wet > Grains(0)) {
      m_profile.points.push_back({PointMass::Kind::fly, index, m_at, wet, false});
    }
  }

  MassProfile m_profile;
  RatedDiameters m_rated;
  Station m_at{0.0};
};

}  // namespace

GrainsPerFoot ProfileSpan::at(Station s) const { return properties.massAt(shareOf(*this, s)); }

Grains ProfileSpan::between(Station a, Station b) const {
  if (a <= from && b >= to) return mass();
  const double low = shareOf(*this, a);
  const double high = shareOf(*this, b);
  if (high <= low) return Grains(0);
  return pieceMass(properties.mass.law, properties.length * (high - low), properties.massAt(low),
                   properties.massAt(high));
}

Grains ProfileSpan::mass() const {
  const LineMass& ends = properties.mass;
  return pieceMass(ends.law, properties.length, ends.rodEnd, ends.flyEnd);
}

Station ProfileSpan::centroid() const {
  const LineMass& mass = properties.mass;
  return from + length() * pieceCentroid(mass.law, mass.rodEnd, mass.flyEnd);
}

GrainsPerFoot MassProfile::before(Station s) const {
  const auto span = std::partition_point(spans.begin(), spans.end(),
                                         [&](const ProfileSpan& p) { return p.to < s; });
  return span == spans.end() || span->from >= s ? GrainsPerFoot(0) : span->at(s);
}

GrainsPerFoot MassProfile::after(Station s) const {
  const auto span = firstBeyond(spans, s);
  return span == spans.end() || span->from > s ? GrainsPerFoot(0) : span->at(s);
}

Grains MassProfile::lineBetween(Station from, Station to) const {
  ExactSum sum;
  for (auto span = firstBeyond(spans, from); span != spans.end() && span->from < to; ++span) {
    sum += span->between(from, to).value();
  }
  return Grains(sum.value());
}

Grains MassProfile::soFar(Station s) const {
  if (s < start) return Grains(0);
  ExactSum sum;
  sum += lineBetween(start, s).value();
  for (const PointMass& point : points) {
    if (point.part >= firstPart && point.at <= s) sum += point.mass.value();
  }
  return Grains(sum.value());
}

Station MassProfile::centreOfMass() const {
  ExactSum mass;
  ExactSum moment;
  for (std::size_t i = firstSpan; i < spans.size(); ++i) {
    const double grains = spans[i].mass().value();
    mass += grains;
    moment += grains * spans[i].centroid().feet();
  }
  for (const PointMass& point : points) {
    if (point.part < firstPart) continue;
    mass += point.mass.value();
    moment += point.mass.value() * point.at.feet();
  }
  return mass.value() > 0.0 ? Station(moment.value() / mass.value()) : start;
}

/// Real ones lie near 1. A section of 1e-300 ft that is labelled would weigh more a foot than a number can say.
constexpr double kMostScale = 1e9;

double scaleOf(const Part& part) {
  if (part.kind == PartKind::fly || (!part.weighed && !part.label)) return 1.0;
  const Grains wanted = part.weighed ? part.weighed->mass - part.loopMass() : *part.label;
  const Grains typed = unscaledMass(part);
  return typed > Grains(0) && wanted < typed * kMostScale ? wanted / typed : 1.0;
}

MassProfile massProfile(const Rig& rig) { return Builder(rig).take(); }

std::vector<ProfileRow> profileRows(const MassProfile& profile) {
  std::vector<ProfileRow> rows;
  rows.reserve(2 * (profile.spans.size() - profile.firstSpan) + profile.points.size());
  ExactSum soFar;
  const auto add = [&](Station at, GrainsPerFoot mass) {
    const ProfileRow row{at, mass, Grains(soFar.value())};
    const bool same = !rows.empty() && rows.back().at == row.at && rows.back().mass == row.mass &&
                      rows.back().soFar == row.soFar;
    if (!same) rows.push_back(row);
  };
  auto point = std::find_if(profile.points.begin(), profile.points.end(),
                            [&](const PointMass& p) { return p.part >= profile.firstPart; });
  const auto addPoints = [&](Station upTo, GrainsPerFoot mass) {
    for (; point != profile.points.end() && point->at <= upTo; ++point) {
      soFar += point->mass.value();
      add(upTo, mass);
    }
  };
  for (std::size_t i = profile.firstSpan; i < profile.spans.size(); ++i) {
    const ProfileSpan& span = profile.spans[i];
    const LineMass& mass = span.properties.mass;
    // Before the very first foot there is no line: its own mass per foot stands on both sides.
    if (i == profile.firstSpan && point != profile.points.end() && point->at <= span.from) {
      add(span.from, mass.rodEnd);
    }
    addPoints(span.from, mass.rodEnd);
    add(span.from, mass.rodEnd);
    soFar += span.mass().value();
    add(span.to, mass.flyEnd);
  }
  const GrainsPerFoot last = rows.empty() ? GrainsPerFoot(0) : rows.back().mass;
  if (rows.empty() && point != profile.points.end()) add(profile.end, last);
  addPoints(profile.end, last);
  return rows;
}

}  // namespace grainwise
