// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/bench/fly.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace grainwise::ui {

class FlyDrawing;
class NumberField;
class OwnStore;
class RigDocument;

/// A fly from what is put on the hook: its mass dry and soaked, how dense it is, how bulky; drawn live,
/// dragged onto the line, placed, or kept among the own parts.
class FlyPage : public MakePage {
  Q_OBJECT
 public:
  FlyPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent);
  [[nodiscard]] const std::optional<Part>& fly() const { return m_fly; }

 Q_SIGNALS:
  /// The fly has been put on the line.
  void tied();

 protected:
  void restyle() override;

 private:
  NumberField* addNumber(const QString& name, const char* object, double start, int row, int column);
  void refresh();
  void draw(const FlyRecipe& recipe);
  void place();
  void keep();
  [[nodiscard]] FlyRecipe recipe() const;
  [[nodiscard]] double value(const NumberField* field) const;

  RigDocument* m_document;
  OwnStore* m_store;
  QGridLayout* m_grid;
  QLineEdit* m_name;
  QLineEdit* m_hook;
  QComboBox* m_beadMetal;
  QComboBox* m_eyesMetal;
  QComboBox* m_wireMetal;
  QComboBox* m_bulk;
  NumberField* m_beads;
  NumberField* m_bead;
  NumberField* m_hole;
  NumberField* m_eyes;
  NumberField* m_turns;
  NumberField* m_wire;
  NumberField* m_dressing;
  NumberField* m_soak;
  QList<QPair<NumberField*, double>> m_values;
  FlyDrawing* m_drawing;
  QLabel* m_words;
  QLabel* m_caution;
  QPushButton* m_place;
  QPushButton* m_keep;
  std::optional<Part> m_fly;
};

}  // namespace grainwise::ui
