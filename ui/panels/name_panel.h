// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace grainwise::ui {

class RigDocument;

/// The rig's name and notes, edited in place.
class NamePanel : public QWidget {
  Q_OBJECT
 public:
  NamePanel(Look* look, RigDocument* document, QWidget* parent = nullptr);

  /// Puts the keyboard into the name.
  void begin();

 private:
  void refresh();
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  QLabel* m_nameLabel;
  QLabel* m_notesLabel;
  QLineEdit* m_name;
  QPlainTextEdit* m_notes;
};

}  // namespace grainwise::ui
