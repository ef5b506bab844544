// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/wallet_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "core/io/rig_file.h"
#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/text/choice_words.h"
#include "ui/text/problem_words.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

constexpr int kCellWidth = 92;
constexpr int kMostTips = 40;
constexpr auto kRigFilter =
    QT_TRANSLATE_NOOP("grainwise::ui::WalletWindow", "Rigs (*.rig.json);;All files (*)");

void drop(std::vector<std::size_t>& list, std::size_t value) { std::erase(list, value); }

/// Where a part stands on a shelf.
std::optional<std::size_t> placeOf(const Part& part, const Shelf& shelf) {
  const auto at = std::find(shelf.parts.begin(), shelf.parts.end(), part);
  if (at == shelf.parts.end()) return std::nullopt;
  return std::size_t(at - shelf.parts.begin());
}

}  // namespace

WalletWindow::WalletWindow(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
                           const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent, Qt::Window), m_look(look), m_document(document), m_feed(feed), m_pools(pools),
      m_shelf(shelf) {
  setObjectName(QStringLiteral("walletWindow"));
  setWindowTitle(tr("Wallet - Grainwise"));
  m_model = new WalletGridModel(look, this);
  askRigPaths = [this] {
    return QFileDialog::getOpenFileNames(this, tr("Rigs for the trip"), QString(), tr(kRigFilter));
  };
  askCardPath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Save the card"), QStringLiteral("wallet.pdf"),
                                        tr("PDF (*.pdf)"));
  };
  auto* row = new QHBoxLayout(this);
  row->setSpacing(16);
  row->addWidget(makeTrip());
  row->addWidget(makeAnswer(), 1);
  connect(document, &RigDocument::rigChanged, this, &WalletWindow::takeOpenRig);
  connect(pools, &PoolBook::changed, this, [this] {
    fillPools();
    pack();
  });
  connect(feed, &AnalysisFeed::analysisChanged, this, [this] {
    m_limitsStand = false;
    const bool others = m_packed && !(m_packed->question.conditions.rules == m_feed->conditions().rules);
    if (others && isVisible()) pack();
  });
  connect(&m_runner, &HeavyRunner::finished, this, &WalletWindow::take);
  connect(&m_runner, &HeavyRunner::progress, this, [this](double share) {
    if (m_runner.busy()) m_progress->setValue(int(share * 100));
  });
  connect(look, &Look::changed, this, &WalletWindow::applyLook);
  resize(m_look->px(1180), m_look->px(660));
  applyLook();
  fillPools();
  fillSides();
  fillKeepMore();
  enableButtons();
  showBusy(false);
}

void WalletWindow::setShelf(const SharedShelf& shelf) {
  if (shelf == m_shelf) return;
  // Parts move when others come and go: what was said of a part stays with it.
  for (std::vector<std::size_t>* list : {&m_keep, &m_leaveOut}) {
    std::vector<std::size_t> there;
    for (const std::size_t i : *list) {
      if (const auto at = placeOf(m_shelf->parts[i], *shelf)) there.push_back(*at);
    }
    *list = there;
  }
  m_shelf = shelf;
  fillSides();
  fillKeepMore();
  if (isVisible()) pack();
}

void WalletWindow::fillKeepMore() {
  m_keepMore->clear();
  m_keepMore->addItem(tr("take along in any case…"));
  for (std::size_t i = 0; i < m_shelf->parts.size(); ++i) {
    if (!isTipOrCoated(m_shelf->parts[i])) continue;
    m_keepMore->addItem(partWords(m_shelf->parts[i], m_look->units()), qulonglong(i));
  }
}

QPushButton* WalletWindow::addButton(const char* name, const QString& words,
                                     std::function<void()> what) {
  auto* button = new QPushButton(words, this);
  button->setObjectName(QLatin1String(name));
  connect(button, &QPushButton::clicked, this, [what = std::move(what)] { what(); });
  m_buttons.append(button);
  return button;
}

QWidget* WalletWindow::makeTrip() {
  auto* side = new QWidget(this);
  side->setObjectName(QStringLiteral("walletTrip"));
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  const auto heading = [&](const QString& words) {
    auto* label = new QLabel(words, side);
    m_headings.append(label);
    column->addWidget(label);
  };
  const auto list = [&](const char* name, const QString& words) {
    auto* widget = new QListWidget(side);
    widget->setObjectName(QLatin1String(name));
    widget->setAccessibleName(words);
    widget->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(widget, 1);
    return widget;
  };
  heading(tr("Rigs and their flies"));
  m_rigList = list("walletRigs", tr("Rigs of the trip"));
  auto* rigButtons = new QHBoxLayout;
  rigButtons->addWidget(addButton("walletAddRigs", tr("Add rigs…"), [this] { addRigFiles(); }));
  m_removeRig = addButton("walletRemoveRig", tr("Remove"), [this] {
    m_rigs.erase(m_rigs.begin() + m_rigList->currentRow());
    fillRigs();
    pack();
  });
  rigButtons->addWidget(m_removeRig);
  connect(m_rigList, &QListWidget::currentRowChanged, this, &WalletWindow::enableButtons);
  column->addLayout(rigButtons);
  heading(tr("Pools"));
  m_poolList = list("walletPools", tr("Pools of the trip"));
  connect(m_poolList, &QListWidget::itemChanged, this, [this] {
    if (!m_filling) pack();
  });
  auto* limits = new QHBoxLayout;
  auto* mostLabel = new QLabel(tr("Tips at most"), side);
  m_headings.append(mostLabel);
  m_most = new QSpinBox(side);
  m_most->setObjectName(QStringLiteral("walletMost"));
  m_most->setRange(0, kMostTips);
  m_most->setSpecialValueText(tr("any"));
  mostLabel->setBuddy(m_most);
  limits->addWidget(mostLabel);
  limits->addWidget(m_most);
  m_oneLength = new QCheckBox(tr("one length"), side);
  m_oneLength->setObjectName(QStringLiteral("walletOneLength"));
  m_oneLength->setToolTip(tr("Tips of one length only, so that the stroke stays"));
  limits->addWidget(m_oneLength);
  limits->addStretch(1);
  column->addLayout(limits);
  connect(m_most, &QSpinBox::valueChanged, this, [this] { pack(); });
  connect(m_oneLength, &QCheckBox::toggled, this, [this] { pack(); });
  heading(tr("Kept and left out (Enter takes it back)"));
  m_sides = list("walletSides", tr("Tips that are kept or left out"));
  connect(m_sides, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
    const auto index = std::size_t(item->data(Qt::UserRole).toULongLong());
    drop(m_keep, index);
    drop(m_leaveOut, index);
    fillSides();
    enableButtons();
    pack();
  });
  m_keepMore = new QComboBox(side);
  m_keepMore->setObjectName(QStringLiteral("walletKeepMore"));
  m_keepMore->setAccessibleName(tr("Take along in any case"));
  connect(m_keepMore, &QComboBox::activated, this, [this](int item) {
    if (item > 0) keep(std::size_t(m_keepMore->itemData(item).toULongLong()));
    m_keepMore->setCurrentIndex(0);
  });
  column->addWidget(m_keepMore);
  return side;
}

QWidget* WalletWindow::makeAnswer() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  m_title = new QLabel(side);
  m_title->setObjectName(QStringLiteral("walletTitle"));
  m_title->setTextFormat(Qt::PlainText);
  m_title->setWordWrap(true);
  column->addWidget(m_title);
  m_progress = new QProgressBar(side);
  m_progress->setObjectName(QStringLiteral("walletProgress"));
  m_progress->setTextVisible(false);
  m_progress->setAccessibleName(tr("How far the packing is"));
  m_progress->setMaximumHeight(6);
  m_stop = addButton("walletStop", tr("Stop"), [this] { m_runner.busy() ? stop() : pack(); });
  auto* waiting = new QHBoxLayout;
  waiting->addWidget(m_progress, 1);
  waiting->addWidget(m_stop);
  column->addLayout(waiting);
  m_table = new QTableView(side);
  m_table->setObjectName(QStringLiteral("walletGrid"));
  m_table->setAccessibleName(tr("Tips against pools and flies"));
  m_table->setModel(m_model);
  m_table->setItemDelegate(new WalletCellPainter(m_look, m_model, this));
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  column->addWidget(m_table, 3);
  WayOut::ofView(m_look, m_table, tr("Wallet"));
  m_uncovered = new QLabel;
  m_uncovered->setObjectName(QStringLiteral("walletUncovered"));
  m_uncovered->setTextFormat(Qt::PlainText);
  m_uncovered->setWordWrap(true);
  m_uncovered->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  auto* scroll = new QScrollArea(side);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(m_uncovered);
  column->addWidget(scroll, 1);
  auto* buttons = new QHBoxLayout;
  const auto onTip = [this](void (WalletWindow::*what)(std::size_t)) {
    return [this, what] {
      if (const auto tip = selectedTip()) (this->*what)(*tip);
    };
  };
  m_keepTip = addButton("walletKeep", tr("Keep"), onTip(&WalletWindow::keep));
  m_leaveOutTip = addButton("walletLeaveOut", tr("Leave out"), onTip(&WalletWindow::leaveOut));
  for (QPushButton* button : {m_keepTip, m_leaveOutTip}) buttons->addWidget(button);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &WalletWindow::enableButtons);
  buttons->addStretch(1);
  m_ofPacked = {addButton("walletCut", tr("Cut this wallet"), [this] { askToCut(); }),
                addButton("walletPrint", tr("Print the card…"),
                          [this] { m_paper.preview(*m_packed, m_look->units()); }),
                addButton("walletCard", tr("Card as PDF…"), [this] { saveCard(); })};
  for (QPushButton* button : std::as_const(m_ofPacked)) buttons->addWidget(button);
  buttons->addWidget(addButton("walletClose", tr("Close"), [this] { close(); }));
  column->addLayout(buttons);
  return side;
}

void WalletWindow::hear(const QString& words) { m_title->setText(words); }

void WalletWindow::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  takeOpenRig();
}

void WalletWindow::takeOpenRig() {
  if (!isVisible()) return;
  if (m_rigs.empty()) {
    m_rigs.push_back(m_document->rig());
  } else if (m_rigs.front() == m_document->rig() && m_packed && m_packed->question.shelf == *m_shelf) {
    return;
  } else {
    m_rigs.front() = m_document->rig();
  }
  fillRigs();
  pack();
}

void WalletWindow::addRig(const Rig& rig) {
  if (m_rigs.empty()) m_rigs.push_back(m_document->rig());
  m_rigs.push_back(rig);
  fillRigs();
  pack();
}

void WalletWindow::addRigFiles() {
  QStringList faulty;
  const QStringList paths = askRigPaths();
  for (const QString& path : paths) {
    const auto rig = loadRig(path.toStdString());
    if (rig) {
      addRig(*rig);
    } else {
      faulty << problemLine(rig.error().front());
    }
  }
  if (!faulty.isEmpty()) m_uncovered->setText(faulty.join(QLatin1Char('\n')));
}

void WalletWindow::enableButtons() {
  m_removeRig->setEnabled(m_rigList->currentRow() > 0);  // the open rig stays
  const auto tip = selectedTip();
  m_keepTip->setEnabled(tip && std::find(m_keep.begin(), m_keep.end(), *tip) == m_keep.end());
  m_leaveOutTip->setEnabled(tip.has_value());
  for (QPushButton* button : std::as_const(m_ofPacked)) button->setEnabled(m_packed && !m_packed->wallet.tips.empty());
}

void WalletWindow::fillRigs() {
  const int row = m_rigList->currentRow();
  m_rigList->clear();
  for (const Rig& rig : m_rigs) {
    const auto fly = rig.flyIndex();
    const QString what =
        fly ? partWords(rig.parts[*fly], m_look->units()) : tr("no fly yet: left out");
    m_rigList->addItem(tr("%1: %2", "rig: fly").arg(QString::fromStdString(rig.name), what));
    m_rigList->item(m_rigList->count() - 1)->setToolTip(m_rigList->item(m_rigList->count() - 1)->text());
  }
  m_rigList->setCurrentRow(std::min(row, m_rigList->count() - 1));
}

void WalletWindow::fillPools() {
  m_filling = true;
  QStringList off;
  for (int i = 0; i < m_poolList->count(); ++i) {
    if (m_poolList->item(i)->checkState() == Qt::Unchecked) off << m_poolList->item(i)->text();
  }
  m_poolList->clear();
  const QStringList names = m_pools->names();
  for (const QString& name : names) {
    auto* item = new QListWidgetItem(name, m_poolList);
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(off.contains(name) ? Qt::Unchecked : Qt::Checked);
  }
  m_filling = false;
}

void WalletWindow::fillSides() {
  m_sides->clear();
  const auto add = [&](const std::vector<std::size_t>& list, const QString& words) {
    for (const std::size_t i : list) {
      auto* item = new QListWidgetItem(words.arg(partWords(m_shelf->parts[i], m_look->units())), m_sides);
      item->setData(Qt::UserRole, qulonglong(i));
    }
  };
  add(m_keep, tr("kept: %1"));
  add(m_leaveOut, tr("left out: %1"));
}

void WalletWindow::keep(std::size_t shelfIndex) {
  drop(m_leaveOut, shelfIndex);
  drop(m_keep, shelfIndex);
  m_keep.push_back(shelfIndex);
  fillSides();
  enableButtons();
  pack();
}

void WalletWindow::leaveOut(std::size_t shelfIndex) {
  drop(m_keep, shelfIndex);
  drop(m_leaveOut, shelfIndex);
  m_leaveOut.push_back(shelfIndex);
  fillSides();
  pack();
}

std::optional<std::size_t> WalletWindow::selectedTip() const {
  const QModelIndex index = m_table->currentIndex();
  if (!index.isValid() || !m_packed) return std::nullopt;
  // What is shown may have been packed from a shelf that is another by now.
  const std::size_t packed = m_packed->wallet.tips[std::size_t(index.row())];
  return placeOf(m_packed->question.shelf.parts[packed], *m_shelf);
}

WalletQuestion WalletWindow::question() const {
  WalletQuestion q;
  q.rigs = m_rigs;
  q.shelf = *m_shelf;
  const auto& all = m_pools->pools().pools;
  for (int i = 0; i < m_poolList->count() && std::size_t(i) < all.size(); ++i) {
    if (m_poolList->item(i)->checkState() == Qt::Checked) q.pools.pools.push_back(all[std::size_t(i)]);
  }
  if (m_most->value() > 0) q.most = std::size_t(m_most->value());
  q.oneLength = m_oneLength->isChecked();
  q.keep = m_keep;
  q.leaveOut = m_leaveOut;
  q.conditions = m_feed->conditions();
  return q;
}

void WalletWindow::pack() {
  if (m_rigs.empty()) return;
  const WalletQuestion q = question();
  // What was computed of tips, pools and flies serves every change of the limits.
  std::shared_ptr<const WalletGrid> grid;
  if (m_limitsStand && m_packed && m_packed->question.rigs == q.rigs && m_packed->question.pools == q.pools &&
      m_packed->question.shelf == q.shelf) {
    grid = m_packed->grid;
  }
  m_limitsStand = true;
  showBusy(true);
  m_runner.start([q, grid](const std::stop_token& stop, const HeavyRunner::Progress& tell)
                     -> HeavyRunner::Result {
    auto result = std::make_shared<PackedWallet>();
    result->question = q;
    result->grid = grid ? grid : std::make_shared<const WalletGrid>(walletGrid(q, stop, tell));
    result->wallet = grainwise::pack(q, *result->grid, stop);
    return result->wallet.stopped ? nullptr : result;
  });
}

void WalletWindow::stop() {
  m_runner.cancel();
  m_limitsStand = false;
  showBusy(false);
  m_stop->setText(tr("Pack again"));
  m_stop->show();
  m_title->setText(tr("Stopped: nothing new is packed."));
}

void WalletWindow::showBusy(bool busy) {
  m_stop->setText(tr("Stop"));
  m_progress->setValue(0);
  m_progress->setVisible(busy);
  m_stop->setVisible(busy);
}

QString WalletWindow::titleText() const {
  const Wallet& wallet = m_packed->wallet;
  if (wallet.tips.empty()) {
    return wallet.need == ChoiceNeed::none ? tr("No tip is needed on this trip.")
                                           : tr("Nothing is packed yet.");
  }
  QString title = wallet.tips.size() == 1 ? tr("1 tip for the trip")
                                          : tr("%1 tips for the trip").arg(wallet.tips.size());
  if (wallet.proven) title += tr("; fewer will not do");
  if (wallet.spares.size() == 1) title += tr("; take a spare of it");
  if (wallet.spares.size() == 2) {
    title += tr("; take a spare of %1 and of %2").arg(wallet.spares[0] + 1).arg(wallet.spares[1] + 1);
  }
  return title + QLatin1Char('.');
}

/// The tip that was chosen, else the one that took its place.
void WalletWindow::chooseTip(std::optional<std::size_t> tip, int row) {
  if (!tip) return;
  const auto& tips = m_packed->wallet.tips;
  const auto there = std::find(tips.begin(), tips.end(), *tip);
  const int to = there != tips.end() ? int(there - tips.begin()) : std::min(row, int(tips.size()) - 1);
  if (to >= 0) m_table->setCurrentIndex(m_model->index(to, 0));
}

void WalletWindow::take(const std::shared_ptr<const void>& result) {
  const int row = m_table->currentIndex().row();
  const auto chosen = selectedTip();
  m_packed = std::static_pointer_cast<const PackedWallet>(result);
  m_model->setPacked(m_packed);
  chooseTip(chosen, row);
  enableButtons();
  showBusy(false);
  const DisplayUnits units = m_look->units();
  const Wallet& wallet = m_packed->wallet;
  m_title->setText(titleText());
  QStringList lines;
  if (wallet.need != ChoiceNeed::none) lines << walletNeedWords(wallet.need);
  for (const WalletUse& use : wallet.uses) {
    if (use.served) continue;
    const Rig& rig = m_packed->question.rigs[use.rig];
    lines << tr("Nothing for %1, %2: %3", "pool, fly: why")
                 .arg(QString::fromStdString(m_packed->question.pools.pools[use.pool].name),
                      partWords(rig.parts[*rig.flyIndex()], units),
                      uncoveredWords(use, m_packed->question.shelf, *m_packed->grid, units));
  }
  if (lines.isEmpty()) lines << tr("Every pool and fly has a tip, or needs none.");
  lines << tr("Depths are estimates, no guide to wading. Local rules on weighted lines and flies decide.");
  m_uncovered->setText(lines.join(QLatin1Char('\n')));
  std::vector<Part> tips;
  for (const std::size_t tip : wallet.tips) tips.push_back(m_packed->question.shelf.parts[tip]);
  Q_EMIT wasPacked(tips);
}

void WalletWindow::saveCard() {
  const QString path = askCardPath();
  if (path.isEmpty()) return;
  const QString why = m_paper.write(*m_packed, m_look->units(), path);
  m_title->setText(why.isEmpty() ? tr("The card is in %1.").arg(path) : tr("The card was not written: %1").arg(why));
}

void WalletWindow::askToCut() {
  const Wallet& wallet = m_packed->wallet;
  std::vector<Part> tips;
  for (const std::size_t tip : wallet.tips) tips.push_back(m_packed->question.shelf.parts[tip]);
  for (const std::size_t slot : wallet.spares) tips.push_back(m_packed->question.shelf.parts[wallet.tips[slot]]);
  Q_EMIT cutWanted(tips);
}

void WalletWindow::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), m_look->colours().paper);
}

void WalletWindow::applyLook() {
  setPalette(m_look->palette());
  m_title->setFont(m_look->font(20));
  m_uncovered->setFont(m_look->font(14));
  for (QLabel* label : m_headings) label->setFont(m_look->font(14, true));
  for (QWidget* w : {static_cast<QWidget*>(m_rigList), static_cast<QWidget*>(m_poolList),
                     static_cast<QWidget*>(m_sides), static_cast<QWidget*>(m_most),
                     static_cast<QWidget*>(m_oneLength), static_cast<QWidget*>(m_keepMore),
                     static_cast<QWidget*>(m_table)}) {
    w->setFont(m_look->font(14));
  }
  for (QPushButton* button : m_buttons) {
    button->setFont(m_look->font(15));
    button->setMinimumHeight(m_look->px(36));
  }
  m_table->horizontalHeader()->setMinimumSectionSize(m_look->px(kCellWidth));
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->verticalHeader()->setDefaultSectionSize(m_look->px(34));
  fillRigs();
}

}  // namespace grainwise::ui
