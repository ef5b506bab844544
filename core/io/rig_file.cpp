// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/rig_file.h"

#include "core/io/document.h"

namespace grainwise {

Result<Rig> readRig(std::string_view text, const std::string& file) {
  return io::readDocument<Rig>(text, file);
}

std::string writeRig(const Rig& rig) {
  return io::writeDocument(rig);
}

Result<Rig> loadRig(const std::filesystem::path& path) {
  return io::loadDocument<Rig>(path);
}

Result<Rig> loadWork(const std::filesystem::path& path) {
  const auto text = io::loadText(path);
  if (!text) return tl::unexpected(text.error());
  return io::valueOf<Rig>(parseJson(*text), path.string(), [](const Rig& rig, const Problem& problem) {
    return rig.parts.empty() && problem.pointer == "/parts";
  });
}

Result<Part> readPart(std::string_view text) {
  constexpr int kLevelsAround = 2;  // the rig and its list of parts
  return io::valueOf<Part>(parseJson(text, limits::kNesting - kLevelsAround), {});
}

std::string writePart(const Part& part) {
  return io::writeDocument(part);
}

}  // namespace grainwise
