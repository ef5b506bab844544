// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace grainwise::ui {

/// Holds on to the keyboard while a page is made anew: what had it gives it to the control of the same
/// name, or to the one that then stands in its place.
class KeptFocus {
 public:
  explicit KeptFocus(const QWidget* inside);
  /// Nothing when the keyboard was elsewhere.
  void giveTo(QWidget* inside) const;

 private:
  bool m_held = false;
  QString m_name;
  qsizetype m_at = 0;  ///< among the controls, as Tab meets them
};

}  // namespace grainwise::ui
