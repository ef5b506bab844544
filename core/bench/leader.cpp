// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/leader.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/material/section_properties.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kRounding_in = 1e-7;
constexpr double kStep_in = 0.004;
constexpr double kFineStep_in = 0.002;  // of the last two knots
constexpr int kFineKnots = 2;
constexpr double kLeastRatio = 2.0 / 3.0;
constexpr double kSameDiameter_in = 0.0005;

Problem refusal(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

std::string inches(double value) {
  return shortest(std::round(value * 10000.0) / 10000.0) + " in";
}

Section strandSection(const LeaderStock& stock, Feet length) {
  Section section;
  section.length = length;
  section.diameter = Along<Inches>(stock.diameter);
  section.material = stock.material;
  return section;
}

/// Whether `thick` may be tied to `thin` when `knots` knots follow on the fly side.
bool mayStep(double thick, double thin, int knots) {
  const double most = knots < kFineKnots ? kFineStep_in : kStep_in;
  return thick > thin + kRounding_in && thick - thin <= most + kRounding_in &&
         thin >= kLeastRatio * thick - kRounding_in;
}

/// Chains of pieces up from a tippet: the best way to each strand with so many knots behind it.
class Chains {
 public:
  Chains(const std::vector<LeaderStock>& stock, std::vector<std::size_t> body, std::size_t tippet)
      : m_stock(stock), m_body(std::move(body)) {
    std::stable_sort(m_body.begin(), m_body.end(), [&](std::size_t a, std::size_t b) {
      return stock[a].diameter < stock[b].diameter;
    });
    m_links.push_back({tippet, 0, 0.0, kNone});
    // Diameters only grow, so each strand is settled before it is built upon.
    for (const std::size_t next : m_body) extendTo(next);
  }

  /// The best chain whose butt lies in `range`, from butt to tippet; empty when there is none.
  [[nodiscard]] std::vector<std::size_t> into(const ButtRange& range) const {
    const double middle = 0.5 * (range.thin + range.thick).value();
    const Link* best = nullptr;
    for (const Link& link : m_links) {
      const double d = m_stock[link.strand].diameter.value();
      if (d < range.thin.value() - kRounding_in || d > range.thick.value() + kRounding_in) continue;
      if (!best || better(link, *best, middle)) best = &link;
    }
    std::vector<std::size_t> chain;
    for (const Link* link = best; link;
         link = link->below == kNone ? nullptr : &m_links[link->below]) {
      chain.push_back(link->strand);
    }
    return chain;
  }

  /// The thickest strand that can be reached, and how many knots lie behind it there.
  [[nodiscard]] std::pair<double, int> top() const {
    std::pair<double, int> highest{0.0, 0};
    for (const Link& link : m_links) {
      highest = std::max(highest, {m_stock[link.strand].diameter.value(), link.knots});
    }
    return highest;
  }

 private:
  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
  struct Link {
    std::size_t strand;
    int knots;       // on its fly side
    double uneven;   // sum of the squares of the steps in ratio
    std::size_t below;
  };

  void extendTo(std::size_t strand) {
    const double thick = m_stock[strand].diameter.value();
    std::vector<Link> found;
    for (std::size_t i = 0; i < m_links.size(); ++i) {
      const Link& below = m_links[i];
      const double thin = m_stock[below.strand].diameter.value();
      if (!mayStep(thick, thin, below.knots)) continue;
      const double ratio = thick / thin - 1.0;
      keepBest(found, {strand, below.knots + 1, below.uneven + ratio * ratio, i});
    }
    m_links.insert(m_links.end(), found.begin(), found.end());
  }
  /// One link a number of knots, the evenest.
  static void keepBest(std::vector<Link>& found, const Link& link) {
    for (Link& known : found) {
      if (known.knots != link.knots) continue;
      if (link.uneven < known.uneven) known = link;
      return;
    }
    found.push_back(link);
  }
  [[nodiscard]] bool better(const Link& a, const Link& b, double middle) const {
    if (a.knots != b.knots) return a.knots < b.knots;
    const double offA = std::abs(m_stock[a.strand].diameter.value() - middle);
    const double offB = std::abs(m_stock[b.strand].diameter.value() - middle);
    if (std::abs(offA - offB) > kRounding_in) return offA < offB;
    return a.uneven < b.uneven;
  }

  const std::vector<LeaderStock>& m_stock;
  std::vector<std::size_t> m_body;
  std::vector<Link> m_links;
};

std::optional<std::size_t> tippetIn(const std::vector<LeaderStock>& stock, const LeaderWish& wish) {
  std::optional<std::size_t> best;
  for (std::size_t i = 0; i < stock.size(); ++i) {
    if (wish.tippetMaterial && stock[i].material != *wish.tippetMaterial) continue;
    const double off = std::abs((stock[i].diameter - wish.tippet).value());
    if (off > kSameDiameter_in + kRounding_in) continue;
    if (!best || off < std::abs((stock[*best].diameter - wish.tippet).value())) best = i;
  }
  return best;
}

std::vector<std::size_t> bodyOf(const std::vector<LeaderStock>& stock) {
  std::vector<std::size_t> nylon, all;
  for (std::size_t i = 0; i < stock.size(); ++i) {
    all.push_back(i);
    if (stock[i].material == Material::nylon) nylon.push_back(i);
  }
  return nylon.empty() ? all : nylon;
}

/// Shares of the length, butt to tippet: 60/20/20, the butt's pieces in falling lengths.
std::vector<double> shares(std::size_t pieces) {
  if (pieces == 1) return {1.0};
  if (pieces == 2) return {0.8, 0.2};
  const std::size_t steps = std::min<std::size_t>(2, pieces - 2);
  const std::size_t butts = pieces - 1 - steps;
  std::vector<double> all;
  double weights = 0.0;
  for (std::size_t i = 0; i < butts; ++i) weights += static_cast<double>(butts + 1 - i);
  for (std::size_t i = 0; i < butts; ++i) {
    all.push_back(0.6 * static_cast<double>(butts + 1 - i) / weights);
  }
  for (std::size_t i = 0; i < steps; ++i) all.push_back(0.2 / static_cast<double>(steps));
  all.push_back(0.2);
  return all;
}

LeaderPiece pieceOf(const std::vector<LeaderStock>& stock, std::size_t index, Feet finished) {
  const LeaderStock& strand = stock[index];
  LeaderPiece piece;
  piece.stock = index;
  piece.diameter = strand.diameter;
  piece.material = strand.material;
  piece.finished = finished;
  piece.mass = lineMass(strandSection(strand, Feet(1)), PartKind::leader).rodEnd;
  piece.byPacket = strand.packetPounds.has_value();
  piece.strength = strandStrength(strand.material, strand.diameter);
  if (strand.packetPounds) {
    piece.strength = {*strand.packetPounds, *strand.packetPounds, *strand.packetPounds};
  }
  return piece;
}

WeakestLink weakestOf(const std::vector<LeaderPiece>& pieces) {
  WeakestLink weakest;
  weakest.piece = pieces.size() - 1;
  weakest.knot = Knot::terminal;
  weakest.holds = knotted(pieces.back().strength, Knot::terminal);
  for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
    const PoundRange& a = pieces[i].strength;
    const PoundRange& b = pieces[i + 1].strength;
    const PoundRange holds = knotted(a.middle_lb < b.middle_lb ? a : b, Knot::joining);
    if (holds.middle_lb < weakest.holds.middle_lb) weakest = {i, Knot::joining, holds};
  }
  return weakest;
}

Leader assembled(const std::vector<std::size_t>& chain, const std::vector<double>& share,
                 const LeaderWish& wish, const std::vector<LeaderStock>& stock,
                 const BenchRules& rules) {
  Leader leader;
  std::vector<Feet> used(stock.size());
  for (std::size_t i = 0; i < chain.size(); ++i) {
    LeaderPiece piece = pieceOf(stock, chain[i], wish.length * share[i]);
    const Inches rod = i == 0 ? allowance(rules.nylonLoop, rules) : rules.joiningKnot;
    const Inches fly = i + 1 == chain.size() ? rules.flyKnot : rules.joiningKnot;
    piece.cut = piece.finished + si::toFeet(si::m(rod + fly));
    leader.mass += piece.mass * piece.finished;
    used[chain[i]] += piece.cut;
    leader.pieces.push_back(piece);
  }
  for (std::size_t i = 0; i < stock.size(); ++i) {
    if (used[i] > stock[i].left) leader.notEnoughLeft = true;
  }
  leader.weakest = weakestOf(leader.pieces);
  if (wish.line == LeaderLine::sinkTip) {
    leader.longForSinkTip = wish.length > Feet(5);
    leader.shortForSinkTip = wish.length < Feet(3);
  }
  return leader;
}

tl::expected<Leader, Problem> onSinkTip(const LeaderWish& wish, std::size_t tippet,
                                        const std::vector<LeaderStock>& stock,
                                        const BenchRules& rules) {
  if (wish.pieces <= 1) return assembled({tippet}, {1.0}, wish, stock, rules);
  std::optional<std::size_t> butt;
  const double thin = stock[tippet].diameter.value();
  for (const std::size_t i : bodyOf(stock)) {
    const double d = stock[i].diameter.value();
    // One knot only, and in front of a sink tip: the wider step is allowed.
    if (!mayStep(d, thin, kFineKnots)) continue;
    if (!butt || d > stock[*butt].diameter.value()) butt = i;
  }
  if (butt) return assembled({*butt, tippet}, {0.375, 0.625}, wish, stock, rules);
  const double most = std::min(thin + kStep_in, thin / kLeastRatio);
  return tl::unexpected(refusal(Problem::tr("no spool steps down to %1 in one knot").arg(inches(thin)),
                                Problem::tr("take one over %1 up to %2, or a leader of one piece")
                                    .arg(inches(thin))
                                    .arg(inches(most))));
}

Problem noChain(const Chains& chains, const ButtRange& range,
                const std::vector<LeaderStock>& stock) {
  const auto inRange = [&](const LeaderStock& strand) {
    return strand.diameter.value() >= range.thin.value() - kRounding_in &&
           strand.diameter.value() <= range.thick.value() + kRounding_in;
  };
  const Wording butts = Problem::tr("%1 to %2").arg(inches(range.thin.value())).arg(inches(range.thick.value()));
  if (std::none_of(stock.begin(), stock.end(), inRange)) {
    return refusal(Problem::tr("no spool has a diameter for the butt"), Problem::tr("add one of %1").arg(butts));
  }
  const auto [top, knots] = chains.top();
  const double most = std::min(top + (knots < kFineKnots ? kFineStep_in : kStep_in),
                               top / kLeastRatio);
  return refusal(Problem::tr("from the tippet up the spools lead no farther than %1; the butt wants %2")
                     .arg(inches(top))
                     .arg(butts),
                 Problem::tr("add a diameter over %1 up to %2").arg(inches(top)).arg(inches(most)));
}

}  // namespace

std::vector<LeaderStock> leaderStock(const Spools& spools) {
  std::vector<LeaderStock> stock;
  for (const Spool& spool : spools.spools) {
    if (!spool.diameter || !spool.material) continue;
    stock.push_back({spool.name, *spool.diameter, *spool.material, spool.left, std::nullopt});
  }
  return stock;
}

Inches floatingDiameter(GrainsPerFoot mass) {
  const double rho_kg_per_m3 = si::kg_per_m3(floatingDensity(PartKind::head));
  return si::toInches(std::sqrt(si::kg_per_m(mass) / (0.25 * std::numbers::pi * rho_kg_per_m3)));
}

std::optional<ButtRange> buttRange(const LeaderWish& wish) {
  if (wish.line == LeaderLine::twoHand) return ButtRange{Inches(0.022), Inches(0.026)};
  std::optional<Inches> tip = wish.lineTip;
  if (!tip && wish.lineTipMass) tip = floatingDiameter(*wish.lineTipMass);
  if (!tip) return std::nullopt;
  return ButtRange{*tip * 0.60, *tip * 0.75};
}

tl::expected<Leader, Problem> buildLeader(const LeaderWish& wish,
                                          const std::vector<LeaderStock>& stock,
                                          const BenchRules& rules) {
  if (const auto wrong = breach(limits::kLength, wish.length.value())) {
    return tl::unexpected(refusal(wrong->what, wrong->fix));
  }
  if (stock.empty()) {
    return tl::unexpected(refusal(Problem::tr("there is no nylon or fluorocarbon to tie a leader from"),
                                  Problem::tr("add spools with their diameters")));
  }
  const auto tippet = tippetIn(stock, wish);
  if (!tippet) {
    return tl::unexpected(refusal(Problem::tr("no spool is a tippet of %1").arg(inches(wish.tippet.value())),
                                  Problem::tr("choose a tippet that is there, or add the spool")));
  }
  if (wish.line == LeaderLine::sinkTip) return onSinkTip(wish, *tippet, stock, rules);
  const auto range = buttRange(wish);
  if (!range) {
    return tl::unexpected(refusal(Problem::tr("the butt follows from the line's tip, which is not known"),
                                  Problem::tr("give its diameter, or what a foot of it weighs")));
  }
  const Chains chains(stock, bodyOf(stock), *tippet);
  const auto chain = chains.into(*range);
  if (chain.empty()) return tl::unexpected(noChain(chains, *range, stock));
  return assembled(chain, shares(chain.size()), wish, stock, rules);
}

GrainsRange massRange(const Leader& leader) {
  constexpr Inches kDrawnTo(0.0005);
  GrainsRange range;
  for (const LeaderPiece& piece : leader.pieces) {
    const double share = kDrawnTo / piece.diameter;
    const Grains mass = piece.mass * piece.finished;
    range.low += mass * ((1.0 - share) * (1.0 - share));
    range.high += mass * ((1.0 + share) * (1.0 + share));
  }
  return range;
}

std::vector<Part> partsOf(const Leader& leader) {
  std::vector<Part> parts;
  Part body;
  body.kind = PartKind::leader;
  body.style = Style::plain;
  Part front;
  front.kind = PartKind::tippet;
  for (std::size_t i = 0; i < leader.pieces.size(); ++i) {
    const LeaderPiece& piece = leader.pieces[i];
    Section section;
    section.length = piece.finished;
    section.diameter = Along<Inches>(piece.diameter);
    section.material = piece.material;
    (i + 1 == leader.pieces.size() ? front : body).sections.push_back(section);
  }
  if (!body.sections.empty()) parts.push_back(body);
  if (!front.sections.empty()) parts.push_back(front);
  return parts;
}

Rig withLeader(const Rig& rig, const Leader& leader) {
  Rig result = rig;
  std::erase_if(result.parts, [](const Part& part) {
    return part.kind == PartKind::tippet ||
           (part.kind == PartKind::leader && !part.isCoatedLeader());
  });
  for (const Part& part : partsOf(leader)) result = edits::placed(result, part);
  return result;
}

}  // namespace grainwise
