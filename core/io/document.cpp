// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/document.h"

#include <algorithm>
#include <fstream>

#include "core/material/agreement.h"

namespace grainwise::io {
namespace {

Problem fileProblem(const std::filesystem::path& path, Wording what, Wording fix) {
  return {path.string(), 0, "", std::move(what), std::move(fix)};
}

bool isBelow(const std::string& pointer, const std::string& above) {
  return pointer == above || pointer.starts_with(above + "/");
}

void append(Problems& all, Problems more) {
  for (Problem& p : more) all.push_back(std::move(p));
}

/// Block by block: most files are far smaller than the largest, and a pipe does not tell its size.
std::string readUpTo(std::istream& file, std::size_t most) {
  constexpr std::size_t kBlock = 1 << 16;
  std::string text;
  while (file && text.size() < most) {
    const std::size_t had = text.size();
    text.resize(std::min(had + kBlock, most));
    file.read(text.data() + had, static_cast<std::streamsize>(text.size() - had));
    text.resize(had + static_cast<std::size_t>(file.gcount()));
  }
  return text;
}

}  // namespace

Result<std::string> loadText(const std::filesystem::path& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (status.type() == std::filesystem::file_type::not_found) {
    return tl::unexpected(Problems{fileProblem(path, Problem::tr("there is no such file"), Problem::tr("check the name"))});
  }
  if (status.type() == std::filesystem::file_type::directory) {
    return tl::unexpected(Problems{fileProblem(path, Problem::tr("this is a folder"), Problem::tr("name a file in it"))});
  }
  std::ifstream file(path, std::ios::binary);
  std::string text = readUpTo(file, static_cast<std::size_t>(limits::kFileBytes) + 1);
  if (!file.is_open() || file.bad()) {
    return tl::unexpected(Problems{fileProblem(
        path, Problem::tr("the file cannot be read"),
        Problem::tr("check who may read it and that it is a plain file"))});
  }
  return text;
}

Problems agreement(const Part& part, const std::string& at, const Problems& known,
                   const Unread& unread) {
  if (unread.touches(at + "/kind")) return {};
  // Only sound sections are judged; in place of the others stands one that cannot disagree.
  Section sound;
  sound.length = Feet(1);
  sound.mass = Along<GrainsPerFoot>(GrainsPerFoot(10));
  sound.density = GramsPerCubicCentimetre(1);
  Part judged = part;
  for (std::size_t i = 0; i < judged.sections.size(); ++i) {
    const std::string pointer = at + "/sections/" + std::to_string(i);
    const bool wrong = std::any_of(known.begin(), known.end(),
                                   [&](const Problem& p) { return isBelow(p.pointer, pointer); });
    if (wrong || unread.touches(pointer)) judged.sections[i] = sound;
  }
  return checkAgreement(judged, at);
}

Problems agreement(const Rig& rig, const std::string& at, const Problems& known,
                   const Unread& unread) {
  Problems all;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    append(all, agreement(rig.parts[i], at + "/parts/" + std::to_string(i), known, unread));
  }
  return all;
}

Problems agreement(const Shelf& shelf, const Problems& known, const Unread& unread) {
  Problems all;
  for (std::size_t i = 0; i < shelf.parts.size(); ++i) {
    append(all, agreement(shelf.parts[i], "/parts/" + std::to_string(i), known, unread));
  }
  return all;
}

Problems agreement(const Deck& deck, const Problems& known, const Unread& unread) {
  Problems all;
  const auto judge = [&](const std::optional<CardRig>& rig, const std::string& at) {
    if (const auto* whole = rig ? std::get_if<Rig>(&*rig) : nullptr) {
      append(all, agreement(*whole, at, known, unread));
    }
  };
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    const std::string at = "/cards/" + std::to_string(i);
    judge(deck.cards[i].rig, at + "/rig");
    judge(deck.cards[i].rigB, at + "/rig_b");
    for (std::size_t p = 0; p < deck.cards[i].parts.size(); ++p) {
      append(all, agreement(deck.cards[i].parts[p], at + "/parts/" + std::to_string(p), known, unread));
    }
  }
  return all;
}

Problems inFileOrder(const JsonText& text, std::vector<JsonText::Find> finds, const Problems& rules,
                     const std::string& file) {
  for (const Problem& rule : rules) {
    const JsonValue& at = text.nearest(rule.pointer);
    finds.push_back({rule, at.begin});
    finds.back().problem.line = at.line;
  }
  std::stable_sort(finds.begin(), finds.end(),
                   [](const auto& a, const auto& b) { return a.offset < b.offset; });
  const bool more = finds.size() > kMostFinds;
  if (more) finds.erase(finds.begin() + static_cast<std::ptrdiff_t>(kMostFinds), finds.end());
  Problems all;
  for (JsonText::Find& find : finds) {
    find.problem.file = file;
    all.push_back(std::move(find.problem));
  }
  if (more) {
    all.push_back({file, all.back().line, "",
                   Problem::tr("more is wrong than these %1 problems").arg(kMostFinds),
                   Problem::tr("mend them first")});
  }
  return all;
}

}  // namespace grainwise::io
