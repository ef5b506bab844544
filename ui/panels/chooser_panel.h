// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QList>
#include <QWidget>
#include <memory>

#include "core/choose/advice.h"
#include "ui/panels/choice_list.h"
#include "ui/work/heavy_runner.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace grainwise::ui {

class AnalysisFeed;
class DepthMap;
class FamilyRow;
class PoolBook;
class RigDocument;
class Trial;

/// The page *Tips*: which tip for this fly on this head in this pool. The fly and the pool are chosen
/// here; a ranked list with a sentence each, a map of depth against drive, the family of the tip that is
/// on, and what angle, mend and line out can do first. The pointer over a row shows a tip on the line; a
/// row or dot that is chosen is tried on and stays, also on other pages; Enter, a double click or a family
/// button puts it on (one undo step). Computed by a worker whenever the rig changes while the page is seen.
class ChooserPanel : public QWidget {
  Q_OBJECT
 public:
  ChooserPanel(Look* look, RigDocument* document, Trial* trial, AnalysisFeed* feed,
               PoolBook* pools, const SharedShelf& shelf, QWidget* parent = nullptr);

  [[nodiscard]] ChoiceList* list() { return m_list; }
  [[nodiscard]] PreviewList* view() { return m_view; }
  [[nodiscard]] DepthMap* map() { return m_map; }
  [[nodiscard]] QString message() const;
  [[nodiscard]] const QList<QPushButton*>& family() const;
  [[nodiscard]] bool busy() const { return m_runner.busy(); }
  /// What is chosen from: the carried shelf and the own parts.
  void setShelf(const SharedShelf& shelf);
  /// The tips of the wallet that was packed last, for the filter.
  void setWallet(const std::vector<Part>& tips);

 Q_SIGNALS:
  /// The list is of the rig as it stands: of the first of a long shelf, then of all of it.
  void answered();
  /// A fly is to be built first.
  void flyWanted();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  struct Answer {
    AnsweredChoice choice;
    std::vector<WaterChange> advice;
  };
  /// What the page says to a question; nothing once stopped. Any thread.
  static std::shared_ptr<const Answer> answerTo(const TipQuestion& question, const std::stop_token& stop,
                                                const HeavyRunner::Progress& tell);
  QWidget* makeSide();
  void connectParts();
  void ask();
  void take(const std::shared_ptr<const void>& result);
  void fillFlies();
  void fillPools();
  void fillMessage();
  void setFilter();
  void tie(int item);
  void goTo(int item);
  void preview(int row);
  void previewRanked(int ranked);
  void tryOn(int row);
  void markTrial();
  void putOn(const TipChoice& tip);
  [[nodiscard]] QString stepOf(const TipChoice& tip) const;
  [[nodiscard]] Rig rigWith(const TipChoice& tip) const;
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  Trial* m_trial;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  SharedShelf m_shelf;
  HeavyRunner m_runner;
  int m_number = 0;  ///< of the question that is being answered
  std::shared_ptr<const Answer> m_answer;
  std::optional<Rig> m_asked;
  std::optional<Pool> m_askedPool;
  Conditions m_askedBy;
  QElapsedTimer m_since;
  ChoiceList* m_list;
  PreviewList* m_view;
  DepthMap* m_map;
  QComboBox* m_fly;
  QComboBox* m_pool;
  QComboBox* m_kind;
  QCheckBox* m_sameStroke;
  QCheckBox* m_usable;
  QCheckBox* m_inWallet;
  QLabel* m_message;
  FamilyRow* m_family;
  std::optional<Part> m_shownFly;
  bool m_fliesShown = false;
  std::vector<Part> m_wallet;
};

}  // namespace grainwise::ui
