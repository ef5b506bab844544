// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/model/bed.h"
#include "ui/panels/elided_choice.h"

namespace grainwise::ui {

/// The beds from smooth to rough. The usual one is what a rig or a pool need not state.
class BedChoice : public ElidedChoice {
  Q_OBJECT
 public:
  explicit BedChoice(QWidget* parent = nullptr);
  void setBed(const std::optional<Bed>& bed);

 Q_SIGNALS:
  void chosen(std::optional<grainwise::Bed> bed);
};

}  // namespace grainwise::ui
