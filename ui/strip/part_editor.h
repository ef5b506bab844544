// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/limits.h"
#include "core/model/rig.h"
#include "ui/text/quantities.h"
#include "ui/theme/look.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QGridLayout;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QScrollArea;

namespace grainwise::ui {

class AnalysisFeed;
class ErrorLine;
class NumberField;
class RigDocument;
class SectionRow;

/// The Part drawer: the chosen part, edited in place with live numbers. Every typed number passes its
/// limit and the rules of the format before it enters the rig; what is refused is said under the row. A
/// name that the program gave goes when the figures that it tells are changed.
class PartEditor : public QWidget {
  Q_OBJECT
 public:
  PartEditor(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent = nullptr);

  void setPart(std::optional<std::size_t> index);
  /// What the last edit was typed into, so that edits in a row can be one step; empty for one alone.
  [[nodiscard]] QString gesture() const { return m_gesture; }

 private:
  void rebuild();
  void refresh();
  void addHead(QHBoxLayout* row);
  void addLineFields(QHBoxLayout* row);
  void addFlyFields(QHBoxLayout* row);
  void addSections();
  void addSectionButton(QHBoxLayout* row);
  void addWeighedDate(QHBoxLayout* row);
  NumberField* addNumber(QHBoxLayout* row, const QString& name, Measure measure, const Limit& limit,
                         const char* key, const std::function<std::optional<double>(const Part&)>& get,
                         const std::function<void(Part&, std::optional<double>)>& put,
                         const std::function<Kept&(Part&)>& kept, bool optional);
  template <class Act>
  auto ofShown(Act act);
  /// Takes the part when nothing is wrong with it; else returns what is.
  QString take(const Part& part, const QString& key);
  void takeSection(std::size_t at, const Section& section, const QString& key);
  /// The part as it was when the typing that now goes on began.
  [[nodiscard]] const Part& beforeGesture(const QString& gesture);
  [[nodiscard]] const Part& part() const;
  [[nodiscard]] QString structure() const;
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QString derived(std::size_t section) const;

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  std::optional<std::size_t> m_index;
  QString m_built;           ///< the structure that the fields were built for
  QScrollArea* m_scroll;
  QWidget* m_inside = nullptr;
  QLabel* m_summary = nullptr;
  ErrorLine* m_wrong = nullptr;
  QString m_gesture;
  Part m_shown;   ///< what the fields were filled with, or made of it
  Part m_before;  ///< when the gesture began
  Part m_after;   ///< what the gesture made of it so far
  QList<SectionRow*> m_rows;
  std::vector<std::function<void(const Part&)>> m_fill;
};

}  // namespace grainwise::ui
