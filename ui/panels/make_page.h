// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace grainwise::ui {

/// What the pages of the Make drawer share: labels, buttons and choices in the look of the window, kept
/// so when it changes.
class MakePage : public QWidget {
  Q_OBJECT
 public:
  MakePage(Look* look, const char* name, QWidget* parent);

 protected:
  enum class Size { name, small, reading, number };
  QLabel* addLabel(const QString& words, Size size = Size::small);
  QPushButton* addButton(const QString& words, const char* name);
  QComboBox* addChoice(const QStringList& words, const QString& spoken, const char* name);
  /// The choice under its name, as a number field stands under its own; hide and show it by this.
  QWidget* underName(QComboBox* box, const QString& name);
  [[nodiscard]] Look* look() const { return m_look; }
  [[nodiscard]] DisplayUnits units() const { return m_look->units(); }
  /// Puts the fonts right; pages that paint or format by the look go on from here.
  virtual void restyle();

 private:
  Look* m_look;
};

}  // namespace grainwise::ui
