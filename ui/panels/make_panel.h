// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/panels/cut_page.h"

class QListWidget;
class QStackedWidget;

namespace grainwise::ui {

class OwnStore;
class PoolBook;
class Preferences;
class RigDocument;
class WeighPage;

/// The Make drawer: what is done at the bench, one task at a time; the list at the left names them.
class MakePanel : public QWidget {
  Q_OBJECT
 public:
  MakePanel(Look* look, RigDocument* document, OwnStore* store, PoolBook* pools,
            CutPaper paper, QWidget* parent = nullptr, const Preferences* preferences = nullptr);

  /// Opens a task: "makeCut", "makeSpools", "makeWeigh", "makeLeader", "makeFly", "makeTips",
  /// "makeMeasure", "makeParts", "makeList".
  void openTask(const QString& name);
  [[nodiscard]] QString task() const;
  /// Opens the cut sheet of these alone.
  void cut(const std::vector<Part>& parts, const QString& of);
  /// Opens the weigh-in, ready for a number.
  void weigh();

 Q_SIGNALS:
  /// A fly that was built here is on the line.
  void flyTied();

 private:
  void addTask(const QString& words, QWidget* page);
  void applyLook();

  Look* m_look;
  QListWidget* m_list;
  QStackedWidget* m_stack;
  CutPage* m_cut;
  WeighPage* m_weigh;
};

}  // namespace grainwise::ui
