// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMap>
#include <QWidget>
#include <functional>
#include <memory>

#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QDrag;
class QLabel;
class QLineEdit;
class QListView;
class QListWidget;

namespace grainwise::ui {

class RigDocument;
class ShelfModel;

/// The Shelf drawer: groups at the left, the parts of one group as cards with silhouette and figures; typing
/// in the field searches all groups. A card is dragged up onto the line, or placed with Enter.
class ShelfView : public QWidget {
  Q_OBJECT
 public:
  ShelfView(Look* look, RigDocument* document, QWidget* parent = nullptr);

  void setShelf(const SharedShelf& shelf);
  /// Shows the first group that has a part of this kind, its first card ready to be placed with Enter.
  void showKind(PartKind kind);
  [[nodiscard]] QListView* cards() const { return m_cards; }
  [[nodiscard]] QLineEdit* search() const { return m_search; }
  [[nodiscard]] QListWidget* groups() const { return m_groups; }
  [[nodiscard]] ShelfModel* model() const { return m_model; }
  /// What Enter does with a part, where it is not to be added to the line.
  std::function<void(const Part&)> placePart;
  /// Runs a drag; replaced by tests that only look at its payload.
  std::function<Qt::DropAction(QDrag*)> runDrag;

 Q_SIGNALS:
  void refused(const QString& why);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void showParts();
  void chooseGroup();
  void chooseForNewRig();
  void place(int row);
  void dragOut(int row);
  void enterCards();
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  QLineEdit* m_search;
  QListWidget* m_groups;
  QListView* m_cards;
  QLabel* m_nothing;
  ShelfModel* m_model;
  std::shared_ptr<const Rig> m_chosenFor;  ///< the rig that was opened when the group was chosen
  QMap<PartKind, int> m_firstOf;  ///< the first group with a part of the kind, leaders the bare ones
};

}  // namespace grainwise::ui
