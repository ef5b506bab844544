// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/bench/weigh_in.h"
#include "ui/panels/make_page.h"
#include "ui/text/out_table.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace grainwise::ui {

class NumberField;
class OwnStore;
class Preferences;
class RigDocument;

/// Weigh-in with wet hands: one part, one field; a number and Enter go on to the next part. The table
/// shows what was meant, what the scale said, and how far off that is; above it stands, before anything
/// is kept, which readings of the rig change.
class WeighPage : public MakePage {
  Q_OBJECT
 public:
  WeighPage(Look* look, RigDocument* document, const OwnStore* store, QWidget* parent,
            const Preferences* preferences = nullptr);

  /// Starts at the first part that was not weighed, ready for a number.
  void start();
  [[nodiscard]] std::size_t current() const { return m_current; }

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  /// A digit typed anywhere on the page goes into the number.
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void refresh();
  [[nodiscard]] OutTable table() const;
  void choose(std::size_t index);
  void clearTyped();
  void followPart();
  void showNow();
  void commit();
  void forget();
  void countLoops();
  [[nodiscard]] QString meantWords(const Part& part) const;
  [[nodiscard]] WeighRules rules() const;
  /// The current part with what was typed; the problem where it cannot be.
  [[nodiscard]] tl::expected<Part, Problem> weighedPart() const;
  [[nodiscard]] QString changesWords(const Part& weighed) const;
  [[nodiscard]] std::size_t after(std::size_t index) const;

  RigDocument* m_document;
  const OwnStore* m_store;
  const Preferences* m_preferences;
  QLabel* m_name;
  QLabel* m_live;
  QLabel* m_changes;
  NumberField* m_mass;
  NumberField* m_length;
  QComboBox* m_scale;
  QPushButton* m_enter;
  QPushButton* m_forget;
  QPushButton* m_loops;
  QTableWidget* m_table;
  std::size_t m_current = 0;
  std::vector<Part> m_line;  ///< the parts when it was chosen
  std::optional<double> m_massTyped;
  std::optional<double> m_lengthTyped;
  bool m_committing = false;
};

}  // namespace grainwise::ui
