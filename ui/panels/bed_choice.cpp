// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/bed_choice.h"

#include <algorithm>

#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr Bed kUsual = Bed::gravel;
}  // namespace

BedChoice::BedChoice(QWidget* parent) : ElidedChoice(parent) {
  for (const Bed bed : allBeds()) addItem(bedWords(bed));
  setAccessibleDescription(tr("The rougher the bed, the slower the water near it."));
  setWhatsThis(accessibleDescription());
  connect(this, &QComboBox::activated, this, [this](int index) {
    const Bed bed = allBeds()[std::size_t(index)];
    Q_EMIT chosen(bed == kUsual ? std::nullopt : std::optional(bed));
  });
}

void BedChoice::setBed(const std::optional<Bed>& bed) {
  const auto& all = allBeds();
  setCurrentIndex(int(std::find(all.begin(), all.end(), bed.value_or(kUsual)) - all.begin()));
}

}  // namespace grainwise::ui
