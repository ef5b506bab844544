// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include "core/calibrate/calibrate.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace grainwise::ui {

class NumberField;
class PoolBook;
class RigDocument;

/// Where measuring corrects the model: a piece timed in a tub, a depth found in the river. What was
/// rated or stated stays beside what was measured, and comes back.
class MeasurePage : public MakePage {
  Q_OBJECT
 public:
  MeasurePage(Look* look, RigDocument* document, PoolBook* pools, QWidget* parent);

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  struct Piece {
    std::size_t part;
    std::size_t section;
  };
  QWidget* tubSide();
  QWidget* riverSide();
  void refresh();
  void fillPieces();
  void refreshTub();
  void refreshRiver();
  void takeTub();
  void takeRiver();
  [[nodiscard]] std::optional<Piece> piece() const;
  [[nodiscard]] tl::expected<TubRate, Problem> tub() const;
  [[nodiscard]] RiverMeasure measure() const;

  void take(const QString& step, const Rig& after, const std::function<Pool(const Pool&)>& found);

  RigDocument* m_document;
  PoolBook* m_pools;
  QComboBox* m_piece;
  NumberField* m_fall;
  QLineEdit* m_times;
  NumberField* m_tubWater;
  QLabel* m_tubWords;
  QPushButton* m_tubTake;
  QPushButton* m_tubBack;
  QComboBox* m_found;
  NumberField* m_depth;
  QLabel* m_riverWords;
  QPushButton* m_riverTake;
  QPushButton* m_riverBack;
  std::vector<Piece> m_pieces;
  double m_fallFeet = 2;
  double m_tubCelsius = 15;
  std::optional<double> m_depthFeet;
};

}  // namespace grainwise::ui
