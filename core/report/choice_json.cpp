// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/analysis/rule_table.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

using Json = nlohmann::ordered_json;

void put(Json& object, const char* key, double value) {
  if (std::isfinite(value)) object[key] = value;
}

Json heading(const char* format) {
  Json json = Json::object();
  json["format"] = format;
  json["version"] = 1;
  return json;
}

std::string written(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

const char* zoneKey(Grade zone) {
  return zone == Grade::fits ? "fits" : zone == Grade::watch ? "watch" : "wrong";
}

Json depthJson(const DepthFit& depth) {
  Json block = Json::object();
  if (depth.band) {
    put(block, "low_ft", depth.band->low.value());
    put(block, "middle_ft", depth.band->middle.value());
    put(block, "high_ft", depth.band->high.value());
  }
  block["on_bottom"] = isOnBottom(depth.state);
  if (depth.share) put(block, "share_in_wanted_water", *depth.share);
  return block;
}

Json partJson(const Shelf& shelf, const std::optional<std::size_t>& part) {
  Json block = Json::object();
  block["name"] = words::nameOf(shelf, part);
  if (part && shelf.parts[*part].id) block["id"] = *shelf.parts[*part].id;
  return block;
}

Json tipJson(const Shelf& shelf, const TipChoice& tip, const std::optional<WantedWater>& wanted) {
  Json block = partJson(shelf, tip.shelf);
  block["standing"] = words::keyOf(tip.standing);
  put(block, "score", tip.score);
  block["sentence"] = words::choiceSentence(tip, wanted);
  block["fitted"] = tip.asItStands;
  Json criteria = Json::array();
  for (const Judged& j : tip.judged) {
    Json entry = Json::object();
    entry["name"] = words::keyOf(j.criterion);
    put(entry, "figure", j.figure);
    put(entry, "grade", j.grade);
    entry["zone"] = zoneKey(j.zone);
    criteria.push_back(std::move(entry));
  }
  block["criteria"] = std::move(criteria);
  if (tip.figures.depth) block["depth"] = depthJson(*tip.figures.depth);
  block["reasons"] = words::choiceReasons(tip, wanted);
  return block;
}

Json adviceJson(const std::vector<WaterChange>& advice) {
  Json list = Json::array();
  for (const WaterChange& change : advice) {
    Json entry = Json::object();
    entry["what"] = words::keyOf(change.handle);
    put(entry, "from", change.from);
    put(entry, "to", change.to);
    put(entry, "depth_ft", change.depth.value());
    entry["in_wanted_water"] = change.inside;
    entry["sentence"] = words::adviceText(change);
    list.push_back(std::move(entry));
  }
  return list;
}

Json limitsJson(const Rules& rules) {
  Json list = Json::array();
  for (const RuleRow& row : ruleRows()) {
    Json entry = Json::object();
    entry["what"] = row.what;
    put(entry, "value", row.get(rules));
    if (const std::string unit = unitOf(row.unit); !unit.empty()) entry["unit"] = unit;
    entry["origin"] = row.origin == RuleOrigin::ours ? "ours" : "common practice";
    list.push_back(std::move(entry));
  }
  return list;
}

Json readingsJson(const std::vector<Reading>& readings) {
  Json list = Json::array();
  for (const Reading r : readings) list.push_back(words::keyOf(r));
  return list;
}

Json fixesList(const std::vector<Fix>& fixes) {
  Json list = Json::array();
  for (const Fix& fix : fixes) {
    Json entry = Json::object();
    entry["change"] = words::keyOf(fix.change.kind);
    entry["sentence"] = words::changeText(fix.change);
    if (!fix.change.part.empty()) entry["part"] = fix.change.part;
    if (fix.change.feet != 0.0) put(entry, "feet", fix.change.feet);
    if (fix.change.from != fix.change.to) {
      put(entry, "from", fix.change.from);
      put(entry, "to", fix.change.to);
    }
    entry["repairs"] = readingsJson(fix.repaired);
    entry["eases"] = readingsJson(fix.eased);
    entry["stroke"] = words::of(fix.stroke.verdict);
    put(entry, "working_length_change_ft", fix.stroke.lengthChange.value());
    put(entry, "mass_change", fix.stroke.massChange);
    list.push_back(std::move(entry));
  }
  return list;
}

std::string flyName(const Rig& rig) {
  const auto fly = rig.flyIndex();
  return fly ? words::nameOf(rig.parts[*fly]) : "";
}

}  // namespace

std::string choiceJson(const Rig& rig, const Shelf& shelf, const std::vector<PoolChoice>& pools,
                       const Rules& rules) {
  Json json = heading("grainwise-choice");
  json["rig"] = rig.name;
  json["fly"] = flyName(rig);
  Json list = Json::array();
  for (const PoolChoice& pool : pools) {
    Json block = Json::object();
    if (pool.pool) block["pool"] = pool.pool->name;
    if (const auto& wanted = pool.choice.wanted) {
      block["wanted_ft"] = Json::array({wanted->low.value(), wanted->high.value()});
    }
    if (pool.choice.need != ChoiceNeed::none) {
      block["need"] = words::keyOf(pool.choice.need);
      block["next"] = words::needText(pool.choice.need);
    }
    if (pool.choice.asItStands) {
      block["as_it_stands"] = tipJson(shelf, *pool.choice.asItStands, pool.choice.wanted);
      block["as_it_stands"].erase("name");
    }
    block["advice"] = adviceJson(pool.advice);
    Json tips = Json::array();
    for (const TipChoice& tip : pool.choice.ranked) {
      tips.push_back(tipJson(shelf, tip, pool.choice.wanted));
    }
    block["tips"] = std::move(tips);
    list.push_back(std::move(block));
  }
  json["pools"] = std::move(list);
  json["limits"] = limitsJson(rules);
  return written(json);
}

std::string walletJson(const WalletQuestion& question, const WalletGrid& grid,
                       const Wallet& wallet) {
  Json json = heading("grainwise-wallet");
  json["proven"] = wallet.proven;
  if (wallet.need != ChoiceNeed::none) {
    json["need"] = words::keyOf(wallet.need);
    json["next"] = words::walletNeedText(wallet.need);
  }
  if (wallet.length) put(json, "length_ft", wallet.length->value());
  Json tips = Json::array();
  for (std::size_t slot = 0; slot < wallet.tips.size(); ++slot) {
    Json entry = Json::object();
    entry["slot"] = slot + 1;
    entry.update(partJson(question.shelf, wallet.tips[slot]));
    tips.push_back(std::move(entry));
  }
  json["tips"] = std::move(tips);
  Json spares = Json::array();
  for (const std::size_t slot : wallet.spares) spares.push_back(slot + 1);
  json["spares"] = std::move(spares);
  Json uses = Json::array();
  for (const WalletUse& use : wallet.uses) {
    Json entry = Json::object();
    entry["pool"] = question.pools.pools[use.pool].name;
    entry["rig"] = question.rigs[use.rig].name;
    entry["fly"] = flyName(question.rigs[use.rig]);
    entry["served"] = use.served;
    if (use.served && use.slot) entry["slot"] = *use.slot + 1;
    if (use.served) {
      entry["standing"] = words::keyOf(use.cell.standing);
      put(entry, "score", use.cell.score);
      if (use.cell.band) {
        entry["depth_ft"] = Json::array({use.cell.band->low.value(), use.cell.band->high.value()});
      }
    } else {
      entry["reason"] = words::uncoveredText(use, question.shelf, grid);
    }
    uses.push_back(std::move(entry));
  }
  json["uses"] = std::move(uses);
  return written(json);
}

std::string fixesJson(const FixQuestion& question, const Fixes& fixes) {
  Json json = heading("grainwise-fixes");
  json["rig"] = question.rig.name;
  if (fixes.need != ChoiceNeed::none) {
    json["need"] = words::keyOf(fixes.need);
    json["next"] = words::needText(fixes.need);
  }
  json["faults"] = readingsJson(fixes.faults);
  json["watches"] = readingsJson(fixes.watches);
  json["now"] = fixesList(fixes.now);
  json["later"] = fixesList(fixes.later);
  return written(json);
}

}  // namespace grainwise
