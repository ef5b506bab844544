// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QWidget>
#include <memory>

#include "core/choose/advice.h"
#include "ui/panels/choice_list.h"
#include "ui/work/heavy_runner.h"

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;

namespace grainwise::ui {

class AnalysisFeed;
class DepthMap;
class PoolBook;
class RigDocument;

/// The page *Tips*: which tip for this fly on this head in this pool. A ranked list with a sentence
/// each, a map of depth against drive, the family of the tip that is on, and what angle, mend and line
/// out can do first. Hover or selection shows a tip on the line; Enter, a double click or a family
/// button puts it on (one undo step). Computed by a worker whenever the rig changes while the page is seen.
class ChooserPanel : public QWidget {
  Q_OBJECT
 public:
  ChooserPanel(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
               const Shelf& shelf, QWidget* parent = nullptr);

  [[nodiscard]] ChoiceList* list() { return m_list; }
  [[nodiscard]] PreviewList* view() { return m_view; }
  [[nodiscard]] DepthMap* map() { return m_map; }
  [[nodiscard]] QString message() const;
  [[nodiscard]] const QList<QPushButton*>& family() const { return m_family; }
  [[nodiscard]] bool busy() const { return m_runner.busy(); }
  /// Shelf indices of the wallet that was packed last, for the filter.
  void setWallet(const std::vector<std::size_t>& tips);

 Q_SIGNALS:
  void answered();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Answer {
    AnsweredChoice choice;
    std::vector<WaterChange> advice;
  };
  void layOut();
  void ask();
  void take(const std::shared_ptr<const void>& result);
  void fillPools();
  void fillFamily();
  void fitFamily();
  void addFamilyCaption(const QString& words);
  void addFamilyButton(std::size_t ranked, const QString& words);
  void fillMessage();
  void setFilter();
  void goTo(int item);
  void preview(int row);
  void putOn(const TipChoice& tip);
  [[nodiscard]] Rig rigWith(const TipChoice& tip) const;
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  Shelf m_shelf;
  HeavyRunner m_runner;
  std::shared_ptr<const Answer> m_answer;
  std::optional<Rig> m_asked;
  std::optional<Pool> m_askedPool;
  QElapsedTimer m_since;
  ChoiceList* m_list;
  PreviewList* m_view;
  DepthMap* m_map;
  QComboBox* m_pool;
  QComboBox* m_kind;
  QCheckBox* m_sameStroke;
  QCheckBox* m_usable;
  QCheckBox* m_inWallet;
  QLabel* m_message;
  QWidget* m_familyBox;
  QHBoxLayout* m_familyRow;
  QList<QPushButton*> m_family;
  std::vector<std::size_t> m_wallet;
};

}  // namespace grainwise::ui
