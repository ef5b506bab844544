// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>

#include "core/model/limits.h"
#include "core/model/rig.h"
#include "ui/text/quantities.h"
#include "ui/theme/look.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace grainwise::ui {

class ErrorLine;
class NumberField;

/// Height of the fields of a part, at type size 1: three sections stand in a low drawer.
inline constexpr int kFieldHeight = 28;

/// One section of the part being edited, as a row of fields: length, what is typed at its two ends,
/// what makes it known, and in words what follows; below them, across the row, what is wrong. Hands on
/// a changed section; judges nothing. Takes two rows of the grid.
class SectionRow : public QObject {
  Q_OBJECT
 public:
  /// What makes a section known beside its mass per foot, or instead of it.
  enum class KnownBy { floats, sinkRate, density, diameter, nylon, fluorocarbon };
  static KnownBy knownBy(const Section& section);

  SectionRow(Look* look, QGridLayout* grid, int row, KnownBy known, QWidget* parent);
  /// The row of the grid where section `row` begins.
  static int gridRow(int row) { return 2 * row; }

  /// The section that the next field changes; the fields stay as they are typed.
  void setSection(const Section& section) { m_section = section; }
  void show(const Section& section, const QString& derived, bool removable);
  /// Says under the field that was typed last why the section was not taken.
  void refuse(const QString& why);

 Q_SIGNALS:
  /// `key` names the field for merging undo steps while one field is being typed.
  void edited(const Section& section, const QString& key);
  void splitWanted();
  void removeWanted();

 private:
  template <class Q>
  NumberField* addAlong(QGridLayout* grid, const QString& name, Measure measure, const Limit& limit,
                        const char* key, std::optional<Along<Q>> Section::*member, int column);
  NumberField* addField(const QString& name, Measure measure, const Limit& limit);
  void addDensity(QGridLayout* grid, int column);
  void changeKnownBy(int index);
  void emitEdited(const Section& section, const QString& key, NumberField* from);

  Look* m_look;
  QWidget* m_parent;
  int m_row;
  Section m_section;
  ErrorLine* m_wrong;
  NumberField* m_length;
  NumberField* m_typedLast = nullptr;
  QComboBox* m_known;
  QLabel* m_derived;
  QPushButton* m_split;
  QPushButton* m_remove;
  std::vector<std::function<void(const Section&)>> m_fill;
};

}  // namespace grainwise::ui
