// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <memory>

#include "ui/panels/wallet_grid_model.h"
#include "ui/theme/hearer.h"
#include "ui/work/heavy_runner.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QProgressBar;
class QPushButton;
class QSpinBox;
class QTableView;

namespace grainwise::ui {

class AnalysisFeed;
class PoolBook;
class RigDocument;

/// How the wallet's card comes on paper; the panels know no printer.
struct WalletPaper {
  std::function<void(const PackedWallet&, DisplayUnits)> preview;
  /// Writes a file; says why not, else nothing.
  std::function<QString(const PackedWallet&, DisplayUnits, const QString& path)> write;
};

/// The wallet: the trip goes in (rigs with their flies, pools, limits), the fewest tips come out, with
/// what each does in every pool for every fly, what has nothing and why, and a card to print. A tip
/// can be kept or left out; the rest is packed anew around it. Computed by a worker.
class WalletWindow : public QWidget, public Hearer {
  Q_OBJECT
 public:
  WalletWindow(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
               const SharedShelf& shelf, QWidget* parent = nullptr);
  /// What is packed from: the carried shelf and the own parts. What was kept or left out stays so.
  void setShelf(const SharedShelf& shelf);
  void setPaper(WalletPaper paper) { m_paper = std::move(paper); }

  /// Rig files for the trip and the card's file, unless a test answers.
  std::function<QStringList()> askRigPaths;
  std::function<QString()> askCardPath;

  /// Over the table, until the wallet is packed anew.
  void hear(const QString& words) override;

  void addRig(const Rig& rig);
  void keep(std::size_t shelfIndex);
  void leaveOut(std::size_t shelfIndex);
  [[nodiscard]] const PackedWallet* packed() const { return m_packed.get(); }
  [[nodiscard]] bool busy() const { return m_runner.busy(); }

 Q_SIGNALS:
  /// The tips that were packed.
  void wasPacked(const std::vector<Part>& tips);
  /// These are to be cut at the bench: the tips that were packed, spares once more.
  void cutWanted(const std::vector<Part>& tips);

 protected:
  void showEvent(QShowEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QWidget* makeTrip();
  QWidget* makeAnswer();
  QPushButton* addButton(const char* name, const QString& words, std::function<void()> what);
  void addRigFiles();
  void saveCard();
  void askToCut();
  void takeOpenRig();
  void fillRigs();
  void fillPools();
  void fillSides();
  void fillKeepMore();
  void pack();
  void stop();
  void showBusy(bool busy);
  /// Which buttons have something to act on.
  void enableButtons();
  [[nodiscard]] QString titleText() const;
  void take(const std::shared_ptr<const void>& result);
  void chooseTip(std::optional<std::size_t> tip, int row);
  [[nodiscard]] WalletQuestion question() const;
  [[nodiscard]] std::optional<std::size_t> selectedTip() const;
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  SharedShelf m_shelf;
  WalletPaper m_paper;
  HeavyRunner m_runner;
  std::vector<Rig> m_rigs;  ///< the first is the open one
  std::vector<std::size_t> m_keep;
  std::vector<std::size_t> m_leaveOut;
  std::shared_ptr<const PackedWallet> m_packed;
  WalletGridModel* m_model;
  QListWidget* m_rigList;
  QListWidget* m_poolList;
  QListWidget* m_sides;
  QSpinBox* m_most;
  QCheckBox* m_oneLength;
  QComboBox* m_keepMore;
  QTableView* m_table;
  QLabel* m_title;
  QLabel* m_uncovered;
  QProgressBar* m_progress;
  QPushButton* m_removeRig;
  QPushButton* m_keepTip;
  QPushButton* m_leaveOutTip;
  QList<QPushButton*> m_ofPacked;  ///< cut, print, card
  QPushButton* m_stop;  ///< stops what is computed; once stopped, starts it again
  QList<QPushButton*> m_buttons;
  QList<QLabel*> m_headings;
  bool m_filling = false;
  bool m_limitsStand = false;  ///< no limit can have changed since the grid was computed
};

}  // namespace grainwise::ui
