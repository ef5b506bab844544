// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/text/quantities.h"
#include "ui/theme/look.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace grainwise::ui {

class NumberField;
class RigDocument;

/// The rod, edited in place: length, line number, hands, the grain window of each head style. From
/// here a first rig can be started: the shelf's head, tip and leader for this rod and style.
class RodPanel : public QWidget {
  Q_OBJECT
 public:
  RodPanel(Look* look, RigDocument* document, const SharedShelf& shelf, QWidget* parent = nullptr);

  /// Puts the keyboard into the first field; with `startFrom` the button is pointed out.
  void focusFirst(bool startFrom);

 private:
  void addWindowFields(QGridLayout* grid);
  QVBoxLayout* underLabel(const QString& words, QWidget* choice);
  void refresh();
  void applyLook();
  void edit(const QString& field, const Rod& rod);
  void editNumber(NumberField* field, const char* key,
                  const std::function<void(Rod&, std::optional<double>)>& put);
  void editWindow(int style, bool low, const std::optional<Typed>& typed);
  [[nodiscard]] Rod rod() const;
  void start();

  Look* m_look;
  RigDocument* m_document;
  const SharedShelf m_shelf;
  NumberField* m_length;
  NumberField* m_line;
  QComboBox* m_hands;
  QList<QPair<NumberField*, NumberField*>> m_windows;
  QComboBox* m_style;
  QPushButton* m_start;
  QLabel* m_words;
  QList<QLabel*> m_labels;
};

}  // namespace grainwise::ui
