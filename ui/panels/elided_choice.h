// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace grainwise::ui {

/// A choice whose words may be longer than its place: there they end in "…", in the list that opens and
/// in the tool tip they are whole.
class ElidedChoice : public QComboBox {
 public:
  using QComboBox::QComboBox;

  void showPopup() override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace grainwise::ui
