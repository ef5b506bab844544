// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/model/limits.h"
#include "core/report/choice_words.h"
#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise::words {
namespace {

std::string feet(double value) { return shortest(std::abs(value)) + " ft"; }

std::string joined(const std::vector<std::string>& list) {
  std::string text;
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (i > 0) text += i + 1 == list.size() ? " and " : ", ";
    text += list[i];
  }
  return text;
}

const char* endText(PartEnd end) { return end == PartEnd::fly ? "fly end" : "rod end"; }

std::string insteadOf(double to, double from) {
  return fixedText(to, 0) + " instead of " + fixedText(from, 0);
}

}  // namespace

const char* keyOf(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return "junction";
    case Reading::headOnRod:
      return "head-on-rod";
    case Reading::workingLength:
      return "working-length";
    case Reading::tipShare:
      return "tip-share";
    case Reading::anchor:
      return "anchor";
    case Reading::flyAgainstTip:
      return "fly-against-tip";
    case Reading::flyAgainstLeader:
      return "fly-against-leader";
    case Reading::drive:
      return "drive";
    case Reading::reserve:
      return "reserve";
    case Reading::depth:
      return "depth";
  }
  return "";
}

const char* of(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return "the joint";
    case Reading::headOnRod:
      return "the head on this rod";
    case Reading::workingLength:
      return "the working length";
    case Reading::tipShare:
      return "the tip's share of the head";
    case Reading::anchor:
      return "the line in the water";
    case Reading::flyAgainstTip:
      return "the fly against the tip";
    case Reading::flyAgainstLeader:
      return "the fly against the leader";
    case Reading::drive:
      return "the drive";
    case Reading::reserve:
      return "the turnover";
    case Reading::depth:
      return "the depth";
  }
  return "";
}

const char* keyOf(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::swapTip:
      return "swap-tip";
    case ChangeKind::addTip:
      return "add-tip";
    case ChangeKind::removeTip:
      return "remove-tip";
    case ChangeKind::swapLeader:
      return "swap-leader";
    case ChangeKind::swapTippet:
      return "swap-tippet";
    case ChangeKind::swapFly:
      return "swap-fly";
    case ChangeKind::angle:
      return "angle";
    case ChangeKind::mend:
      return "mend";
    case ChangeKind::lineOut:
      return "line-out";
    case ChangeKind::swapHead:
      return "swap-head";
    case ChangeKind::cutTip:
      return "cut-tip";
    case ChangeKind::leaderLength:
      return "leader-length";
    case ChangeKind::addExtension:
      return "add-extension";
    case ChangeKind::removeExtension:
      return "remove-extension";
    case ChangeKind::trimHead:
      return "trim-head";
  }
  return "";
}

std::string changeText(const Change& change) {
  const std::string part = onOneLine(change.part);
  switch (change.kind) {
    case ChangeKind::swapTip:
      return "change the tip for " + part;
    case ChangeKind::addTip:
      return "put on a tip: " + part;
    case ChangeKind::removeTip:
      return "take off " + part;
    case ChangeKind::swapLeader:
      return "change the leader for " + part;
    case ChangeKind::swapTippet:
      return "change the tippet for " + part;
    case ChangeKind::swapFly:
      return "change the fly for " + part;
    case ChangeKind::angle:
      return "cast at " + insteadOf(change.to, change.from) + " degrees";
    case ChangeKind::mend:
      return insteadOf(change.to, change.from) + " s of slack";
    case ChangeKind::lineOut:
      return insteadOf(change.to, change.from) + " ft of line out";
    case ChangeKind::swapHead:
      return "change the head for " + part;
    case ChangeKind::cutTip:
      return "cut " + feet(change.feet) + " off the " + endText(change.end) + " of " + part;
    case ChangeKind::leaderLength:
      return "tie " + part + " " + feet(change.feet) + (change.feet < 0 ? " shorter" : " longer");
    case ChangeKind::addExtension:
      return "put " + part + " behind the head";
    case ChangeKind::removeExtension:
      return "take off " + part;
    case ChangeKind::trimHead:
      return "trim " + feet(change.feet) + " off the " +
             (change.end == PartEnd::fly ? "front" : "rear") + " of " + part;
  }
  return "";
}

std::string fixText(const Fix& fix) {
  std::vector<std::string> list;
  for (const Reading reading : fix.repaired) list.emplace_back(of(reading));
  std::string text = "repairs " + joined(list);
  if (list.empty()) {
    for (const Reading reading : fix.eased) list.emplace_back(of(reading));
    text = "eases " + joined(list);
  }
  return text + "; " + of(fix.stroke.verdict);
}

}  // namespace grainwise::words
