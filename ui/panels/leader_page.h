// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/bench/leader.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace grainwise::ui {

class LeaderDrawing;
class NumberField;
class OwnStore;
class RigDocument;

/// A leader from the spools at the bench: what it is tied to, its length and tippet in; pieces, cuts and
/// the weakest knot out; drawn live, dragged onto the line or placed.
class LeaderPage : public MakePage {
  Q_OBJECT
 public:
  LeaderPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent);
  [[nodiscard]] const std::optional<Leader>& leader() const { return m_leader; }

 Q_SIGNALS:
  /// There is nothing to tie from yet.
  void spoolsWanted();

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void place();
  void keep();
  [[nodiscard]] QString massRangeText(const Leader& leader) const;
  void fillTippets();
  void takeFly();
  [[nodiscard]] LeaderWish wish() const;
  [[nodiscard]] std::vector<LeaderStock> stock() const;
  [[nodiscard]] std::optional<GrainsPerFoot> lineTipMass() const;

  RigDocument* m_document;
  OwnStore* m_store;
  QWidget* m_fields;
  QComboBox* m_line;
  QComboBox* m_tippet;
  std::vector<LeaderStock> m_offered;  ///< what its rows stand for
  QComboBox* m_pieces;
  QWidget* m_piecesNamed;
  NumberField* m_length;
  NumberField* m_lineTip;
  NumberField* m_packet;
  double m_lengthTyped = 9;
  std::optional<double> m_lineTipTyped;
  std::optional<double> m_packetTyped;
  LeaderDrawing* m_drawing;
  QLabel* m_words;
  QLabel* m_advice;
  QPushButton* m_spools;
  QPushButton* m_place;
  QPushButton* m_keep;
  std::optional<Leader> m_leader;
};

}  // namespace grainwise::ui
