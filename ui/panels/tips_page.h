// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/bench/identify.h"
#include "core/bench/trim.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace grainwise::ui {

class NumberField;
class OwnStore;
class Preferences;
class RigDocument;

/// Three questions before the knife: what is left of a head or tip when feet come off, what a spool
/// divides into, and what an unlabelled tip is.
class TipsPage : public MakePage {
  Q_OBJECT
 public:
  TipsPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent,
           const Preferences* preferences = nullptr);

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* trimSide();
  QWidget* divideSide();
  QWidget* nameSide();
  void refresh();
  void refreshTrim();
  void refreshDivide();
  void refreshName();
  void takeTrim();
  void keepTip();
  NumberField* addNumber(const QString& name, const char* object, std::optional<double>& value,
                         QWidget* side, int measure);
  [[nodiscard]] std::optional<std::size_t> trimPart() const;
  [[nodiscard]] tl::expected<FoundTip, Problem> found() const;

  RigDocument* m_document;
  OwnStore* m_store;
  const Preferences* m_preferences;
  QComboBox* m_part;
  QComboBox* m_end;
  QLabel* m_trimWords;
  QPushButton* m_trimTake;
  std::vector<std::size_t> m_parts;
  QComboBox* m_spool;
  QComboBox* m_way;
  QLabel* m_divideWords;
  QLabel* m_nameWords;
  QPushButton* m_nameKeep;
  std::optional<double> m_off, m_count, m_each, m_mass, m_length, m_diameter, m_sink;
  NumberField* m_offField;
  NumberField* m_countField;
  NumberField* m_eachField;
};

}  // namespace grainwise::ui
