// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace grainwise::ui {

/// A window or face that has a place for words about what was just done or could not be.
class Hearer {
 public:
  Hearer() = default;
  virtual ~Hearer() = default;
  Hearer(const Hearer&) = delete;
  Hearer& operator=(const Hearer&) = delete;
  virtual void hear(const QString& words) = 0;

  /// Says it at the nearest such place from `widget` upwards.
  static void tell(QWidget* widget, const QString& words) {
    for (QWidget* at = widget; at != nullptr; at = at->parentWidget()) {
      if (auto* hearer = dynamic_cast<Hearer*>(at)) return hearer->hear(words);
    }
  }
};

}  // namespace grainwise::ui
