// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QButtonGroup;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace grainwise::ui {

class EditDesk;
class PillButton;
class Preferences;
class RigDocument;
class StripView;

/// Changes a card's rigs live: the same line, Shelf and Part as on the Bench, on copies of its own. What is
/// held over the line shows on the card at once. A card of two rigs has both, each with its letter.
class EditPanel : public QWidget {
  Q_OBJECT
 public:
  EditPanel(Look* look, const SharedShelf& shelf, const Preferences* preferences = nullptr,
            QWidget* parent = nullptr);
  ~EditPanel() override;

  /// Starts on one rig or two, with the first.
  void begin(const std::vector<Rig>& rigs);
  /// The parts that either rig may be changed with.
  void setShelf(const SharedShelf& shelf);
  /// The rig that is under the hands: 0, or 1 for B.
  [[nodiscard]] int side() const;
  void setSide(int side);
  [[nodiscard]] StripView* strip() const;
  [[nodiscard]] RigDocument* document() const;

 Q_SIGNALS:
  void rigChanged(const Rig& rig, int side);
  void putBack();

 private:
  void say(const QString& words);
  void enableUndo();

  std::array<EditDesk*, 2> m_desks;
  std::array<PillButton*, 2> m_letters;
  QButtonGroup* m_group;
  QStackedWidget* m_stack;
  QPushButton* m_undo;
  QLabel* m_words;
};

}  // namespace grainwise::ui
