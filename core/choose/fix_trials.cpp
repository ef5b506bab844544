// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/choose/fixes.h"
#include "core/model/edits.h"

namespace grainwise {
namespace {

constexpr int kMostHalfFeet = 10;        // what a tip is cut by at most
constexpr int kMostLeaderHalfFeet = 6;   // what a leader is made longer or shorter by at most
constexpr int kMostTrimHalfFeet = 10;    // what a head is trimmed by at most
constexpr Feet kLeastTip(2.0);

std::string nameOf(const Part& part) { return part.name.value_or(fileName(part.kind)); }

/// Gathers the trials of one rig.
class Trials {
 public:
  explicit Trials(const FixQuestion& question) : m_question(question), m_rig(question.rig) {}

  std::vector<Trial> take() {
    const Shelf& wallet = m_question.wallet ? *m_question.wallet : m_question.shelf;
    tips(wallet);
    swaps(wallet);
    heads();
    knife();
    return std::move(m_list);
  }

 private:
  void add(ChangeKind kind, const std::string& part, Rig after, Feet feet = Feet(0),
           PartEnd end = PartEnd::fly) {
    if (after.parts == m_rig.parts) return;
    Change change;
    change.kind = kind;
    change.part = part;
    change.feet = feet.value();
    change.end = end;
    m_list.push_back({std::move(change), std::move(after)});
  }

  void tips(const Shelf& wallet) {
    const Part* fitted = tipOf(m_rig);
    const ChangeKind kind = fitted != nullptr ? ChangeKind::swapTip : ChangeKind::addTip;
    for (const Part& part : wallet.parts) {
      if (isTipOrCoated(part)) add(kind, nameOf(part), withTip(m_rig, &part));
    }
    if (fitted != nullptr) add(ChangeKind::removeTip, nameOf(*fitted), withTip(m_rig, nullptr));
  }

  /// Leader, tippet and fly, each for one of its kind.
  void swaps(const Shelf& wallet) {
    for (std::size_t i = 0; i < m_rig.parts.size(); ++i) {
      const Part& there = m_rig.parts[i];
      if (isTipOrCoated(there)) continue;
      const auto kind = there.kind == PartKind::leader   ? ChangeKind::swapLeader
                        : there.kind == PartKind::tippet ? ChangeKind::swapTippet
                                                         : ChangeKind::swapFly;
      if (there.kind < PartKind::leader) continue;
      for (const Part& part : wallet.parts) {
        if (part.kind != there.kind || part.isCoatedLeader()) continue;
        add(kind, nameOf(part), edits::replaced(m_rig, i, part));
      }
    }
  }

  [[nodiscard]] bool oneHanded() const { return m_rig.rod && m_rig.rod->hands.value_or(2) == 1; }

  void heads() {
    std::optional<std::size_t> first;
    for (std::size_t i = 0; i < m_rig.parts.size(); ++i) {
      const Part& there = m_rig.parts[i];
      if (there.kind != PartKind::head) continue;
      if (!first) first = i;
      if (there.style == Style::extension) {
        add(ChangeKind::removeExtension, nameOf(there), edits::removed(m_rig, i));
        continue;
      }
      for (const Part& part : m_question.shelf.parts) {
        if (part.kind != PartKind::head || part.style == Style::extension) continue;
        if ((part.style == Style::singleHand) != oneHanded()) continue;
        add(ChangeKind::swapHead, nameOf(part), edits::replaced(m_rig, i, part));
      }
    }
    if (!first || !edits::slotsFor(m_rig, PartKind::head)) return;
    for (const Part& part : m_question.shelf.parts) {
      if (part.kind != PartKind::head || part.style != Style::extension) continue;
      add(ChangeKind::addExtension, nameOf(part), edits::inserted(m_rig, *first, part));
    }
  }

  /// What a knife and a few knots can do to the parts that are there.
  void knife() {
    for (std::size_t i = 0; i < m_rig.parts.size(); ++i) {
      const Part& there = m_rig.parts[i];
      if (there.kind == PartKind::tip) {
        cuts(i, ChangeKind::cutTip, kMostHalfFeet, kLeastTip);
      } else if (there.kind == PartKind::head && there.style != Style::extension) {
        cuts(i, ChangeKind::trimHead, kMostTrimHalfFeet, there.length() * 0.5);
      } else if (there.kind == PartKind::leader && !there.isCoatedLeader()) {
        leaderLengths(i);
      }
    }
  }

  void cuts(std::size_t at, ChangeKind kind, int most, Feet least) {
    const Part& there = m_rig.parts[at];
    const bool level = there.sections.size() == 1 && there.style == Style::level;
    for (int half = 1; half <= most; ++half) {
      const Feet feet(0.5 * half);
      if (there.length() - feet < least) return;
      for (const PartEnd end : {PartEnd::fly, PartEnd::rod}) {
        if (level && end == PartEnd::rod) continue;  // the same as at the other end
        if (auto cut = cutShorter(there, feet, end)) {
          add(kind, nameOf(there), edits::replaced(m_rig, at, *cut), feet, end);
        }
      }
    }
  }

  void leaderLengths(std::size_t at) {
    const Part& there = m_rig.parts[at];
    for (int half = -kMostLeaderHalfFeet; half <= kMostLeaderHalfFeet; ++half) {
      if (half == 0) continue;
      const Feet feet(0.5 * half);
      if (auto tied = tiedLonger(there, feet)) {
        add(ChangeKind::leaderLength, nameOf(there), edits::replaced(m_rig, at, *tied), feet);
      }
    }
  }

  const FixQuestion& m_question;
  const Rig& m_rig;
  std::vector<Trial> m_list;
};

}  // namespace

std::vector<Trial> trialsFor(const FixQuestion& question) { return Trials(question).take(); }

}  // namespace grainwise
