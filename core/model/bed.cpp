// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/bed.h"

namespace grainwise {

const char* fileName(Bed bed) {
  switch (bed) {
    case Bed::sand:
      return "sand";
    case Bed::gravel:
      return "gravel";
    case Bed::cobbles:
      return "cobbles";
    case Bed::boulders:
      break;
  }
  return "boulders";
}

std::optional<Bed> bedFromFile(const std::string& name) {
  for (const Bed bed : allBeds()) {
    if (name == fileName(bed)) return bed;
  }
  return std::nullopt;
}

const std::vector<Bed>& allBeds() {
  static const std::vector<Bed> all{Bed::sand, Bed::gravel, Bed::cobbles, Bed::boulders};
  return all;
}

}  // namespace grainwise
