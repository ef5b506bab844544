// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/material/agreement.h"

#include <algorithm>
#include <cmath>

#include "core/material/section_properties.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kMassAgrees = 0.02;             // of mass per foot
constexpr InchesPerSecond kRateAgrees{1.0};
constexpr GramsPerCubicCentimetre kFloatsBelow{1.0};

std::string rounded(double value, double step) {
  return shortest(std::round(value / step) * step);
}

/// "8.13 gr/ft", with three digits that count.
std::string inWords(GrainsPerFoot mass) {
  const double size = std::max(1e-6, std::abs(mass.value()));
  return rounded(mass.value(), std::pow(10.0, std::floor(std::log10(size)) - 2.0)) + " gr/ft";
}
std::string inWords(InchesPerSecond rate) { return rounded(rate.value(), 0.1) + " in/s"; }
std::string inWords(GramsPerCubicCentimetre density) {
  return rounded(density.value(), 0.01) + " g/cm3";
}

bool agrees(GrainsPerFoot stated, GrainsPerFoot follows) {
  return std::abs(stated.value() - follows.value()) <=
         kMassAgrees * std::max(stated.value(), follows.value());
}

/// One section, its statements read one by one.
class Statements {
 public:
  Statements(const Section& section, PartKind kind, std::string at)
      : m_section(section), m_kind(kind), m_at(std::move(at)) {}

  Problems problems() {
    if (!sane()) return {};  // limits are another's business, and nothing follows from nonsense
    if (m_section.mass && m_section.diameter) {
      if (m_section.density) byDensity("density_g_cm3", *m_section.density);
      if (m_section.material) byDensity("material", densityOf(*m_section.material));
    } else if (m_section.density && m_section.material) {
      twoDensities();
    }
    if (m_section.sinkRate && wholeWithoutRate()) byRate();
    if (m_section.floats) byFloats();
    return std::move(m_found);
  }

 private:
  [[nodiscard]] bool sane() const {
    const auto positive = [](const auto& pair) {
      return !pair || (pair->rodEnd.value() > 0 && pair->flyEnd.value() > 0);
    };
    return positive(m_section.mass) && positive(m_section.diameter) &&
           positive(m_section.sinkRate) &&
           (!m_section.density || m_section.density->value() > 0);
  }
  /// Whether two statements besides the rate (and `floats`) already fix the section.
  [[nodiscard]] bool wholeWithoutRate() const {
    const bool density = m_section.density || m_section.material;
    return (m_section.mass && m_section.diameter) || (m_section.mass && density) ||
           (m_section.diameter && density);
  }
  void add(const char* key, Wording what, Wording fix) {
    m_found.push_back({"", 0, m_at + "/" + key, std::move(what), std::move(fix)});
  }

  void byDensity(const char* key, GramsPerCubicCentimetre density) {
    Section byDiameter = m_section;
    byDiameter.mass.reset();
    byDiameter.density = density;
    const LineMass follows = lineMass(byDiameter, m_kind);
    const LineMass stated = lineMass(m_section, m_kind);
    const bool rodEndWrong = !agrees(stated.rodEnd, follows.rodEnd);
    if (!rodEndWrong && agrees(stated.flyEnd, follows.flyEnd)) return;
    const GrainsPerFoot a = rodEndWrong ? stated.rodEnd : stated.flyEnd;
    const GrainsPerFoot b = rodEndWrong ? follows.rodEnd : follows.flyEnd;
    add("gr_per_ft",
        Problem::tr("gr_per_ft says %1, but diameter_in with %2 makes %3").arg(inWords(a)).arg(key).arg(inWords(b)),
        Problem::tr("they must agree within 2 %; leave one of the three out"));
  }

  void twoDensities() {
    const double stated = m_section.density->value();
    const double material = densityOf(*m_section.material).value();
    if (std::abs(stated - material) <= kMassAgrees * std::max(stated, material)) return;
    add("density_g_cm3",
        Problem::tr("density_g_cm3 says %1, but material %2 is %3")
            .arg(inWords(*m_section.density))
            .arg(fileName(*m_section.material))
            .arg(inWords(densityOf(*m_section.material))),
        Problem::tr("they must agree within 2 %; leave one of the two out"));
  }

  void byRate() {
    const SectionProperties p = sectionProperties(m_section, m_kind, 1.0);
    const SinkEnds follows = sinkRates(p, kRatingWater);
    const auto& stated = *m_section.sinkRate;
    const auto off = [](InchesPerSecond a, InchesPerSecond b) {
      return std::abs((a - b).value()) > kRateAgrees.value();
    };
    const bool rodEndWrong = off(stated.rodEnd, follows.rodEnd);
    if (!rodEndWrong && !off(stated.flyEnd, follows.flyEnd)) return;
    add("sink_in_per_s",
        Problem::tr("sink_in_per_s says %1, but %2 sink at %3")
            .arg(inWords(rodEndWrong ? stated.rodEnd : stated.flyEnd))
            .arg(others())
            .arg(inWords(rodEndWrong ? follows.rodEnd : follows.flyEnd)),
        Problem::tr("they must agree within 1 in/s; leave one of the three out"));
  }

  /// The pair besides the rate, by its keys.
  [[nodiscard]] Wording others() const {
    const char* second = m_section.density ? "density_g_cm3" : "material";
    if (m_section.mass && m_section.diameter) return Problem::tr("%1 with %2").arg("gr_per_ft").arg("diameter_in");
    return Problem::tr("%1 with %2").arg(m_section.mass ? "gr_per_ft" : "diameter_in").arg(second);
  }

  void byFloats() {
    const bool floats = *m_section.floats;
    if (m_section.sinkRate) {
      if (floats) {
        add("floats", Problem::tr("floats is true, but sink_in_per_s says that it sinks"),
            Problem::tr("leave one of the two out"));
      }
      return;
    }
    if (!wholeWithoutRate() && !m_section.density && !m_section.material) return;
    const SectionProperties p = sectionProperties(m_section, m_kind, 1.0);
    const auto heavier = std::max(p.densityRodEnd, p.densityFlyEnd);
    if (floats ? heavier < kFloatsBelow : heavier >= kFloatsBelow) return;
    add("floats",
        Problem::tr("floats is %1, but the rest makes %2").arg(floats ? "true" : "false").arg(inWords(heavier)),
        Problem::tr("water is 1 g/cm3; leave floats out or correct the rest"));
  }

  const Section& m_section;
  PartKind m_kind;
  std::string m_at;
  Problems m_found;
};

}  // namespace

Problems checkAgreement(const Part& part, const std::string& at) {
  Problems all;
  for (std::size_t i = 0; i < part.sections.size(); ++i) {
    Statements one(part.sections[i], part.kind, at + "/sections/" + std::to_string(i));
    for (Problem& p : one.problems()) all.push_back(std::move(p));
  }
  return all;
}

Problems checkAgreement(const Rig& rig, const std::string& at) {
  Problems all;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    for (Problem& p : checkAgreement(rig.parts[i], at + "/parts/" + std::to_string(i))) {
      all.push_back(std::move(p));
    }
  }
  return all;
}

std::optional<Wording> implausible(const Section& section, const SectionProperties& is) {
  const auto [low, high] = std::minmax(is.densityRodEnd, is.densityFlyEnd);
  if (limits::kDensity.holds(low.value()) && limits::kDensity.holds(high.value())) {
    return std::nullopt;
  }
  const bool heavy = high.value() > limits::kDensity.high;
  const GramsPerCubicCentimetre density = heavy ? high : low;
  const bool byRate = section.sinkRate && !section.diameter;
  const Wording form =
      byRate && heavy  ? Problem::tr("%1 follows from its mass and its sink rate, heavier than any line; check what was typed")
      : byRate         ? Problem::tr("%1 follows from its mass and its sink rate, lighter than any line; check what was typed")
      : heavy          ? Problem::tr("%1 follows from its mass and its diameter, heavier than any line; check what was typed")
                       : Problem::tr("%1 follows from its mass and its diameter, lighter than any line; check what was typed");
  return form.arg(inWords(density));
}

std::vector<Wording> implausible(const Part& part, double scale) {
  std::vector<Wording> words;
  for (std::size_t i = 0; i < part.sections.size(); ++i) {
    const Section& section = part.sections[i];
    const auto what = implausible(section, sectionProperties(section, part.kind, scale));
    if (what) words.push_back(Problem::tr("section %1: %2").arg(i + 1).arg(*what));
  }
  return words;
}

}  // namespace grainwise
