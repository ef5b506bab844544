// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "core/choose/fixes.h"
#include "ui/theme/look.h"
#include "ui/work/heavy_runner.h"

class QLabel;
class QStandardItemModel;

namespace grainwise::ui {

class AnalysisFeed;
class PoolBook;
class PreviewList;
class RigDocument;

/// The page *Fixes*: what is wrong, and the single changes that mend it, from the wallet now and at
/// the bench later. The pointer over a change or its selection by key shows it on the line; Enter or a click makes it
/// (one undo step). Computed by a worker whenever the rig changes while the page is seen.
class FixesPanel : public QWidget {
  Q_OBJECT
 public:
  FixesPanel(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
             const SharedShelf& shelf, QWidget* parent = nullptr);

  [[nodiscard]] PreviewList* now() { return m_now.view; }
  [[nodiscard]] PreviewList* later() { return m_later.view; }
  [[nodiscard]] QString message() const;
  [[nodiscard]] const Fixes* fixes() const { return m_answer ? &m_answer->fixes : nullptr; }
  [[nodiscard]] bool busy() const { return m_runner.busy(); }
  /// What the bench has: the carried shelf and the own parts.
  void setShelf(const SharedShelf& shelf);
  /// What is along on the water; empty: all of the shelf.
  void setWallet(const Shelf& wallet);

 Q_SIGNALS:
  void answered();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  struct Answer {
    Rig asked;
    Fixes fixes;
  };
  struct Column {
    QLabel* title = nullptr;
    PreviewList* view = nullptr;
    QStandardItemModel* model = nullptr;
    std::vector<Fix> Fixes::*list = nullptr;
  };
  Column addColumn(const char* name, const QString& title, std::vector<Fix> Fixes::*list);
  void ask();
  void take(const std::shared_ptr<const void>& result);
  [[nodiscard]] QString messageText() const;
  void fill();
  void fill(const Column& column);
  [[nodiscard]] const Fix* offered(const Column& column, int row) const;
  [[nodiscard]] Rig made(const Fix& fix) const;
  void preview(const Column& column, int row);
  void make(const Column& column, int row);
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  SharedShelf m_shelf;
  std::optional<Shelf> m_wallet;
  HeavyRunner m_runner;
  std::shared_ptr<const Answer> m_answer;
  std::optional<Rig> m_asked;
  Conditions m_askedBy;
  QLabel* m_message;
  Column m_now;
  Column m_later;
};

}  // namespace grainwise::ui
