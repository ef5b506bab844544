// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/chooser_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "core/analysis/depth_table.h"
#include "core/model/edits.h"
#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/document/trial.h"
#include "ui/panels/depth_map.h"
#include "ui/panels/elided_choice.h"
#include "ui/panels/family_row.h"
#include "ui/panels/panel_tables.h"
#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kSideWidth = 264;
constexpr qint64 kWorthTelling_ms = 200;
constexpr std::size_t kFirstParts = 400;
constexpr int kLeastLetters = 8;
constexpr int kBuild = -1;  ///< the last of the flies: one that is still to be built
}  // namespace

ChooserPanel::ChooserPanel(Look* look, RigDocument* document, Trial* trial, AnalysisFeed* feed,
                           PoolBook* pools, const SharedShelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_trial(trial), m_feed(feed), m_pools(pools),
      m_shelf(shelf) {
  setObjectName(QStringLiteral("chooserPanel"));
  m_list = new ChoiceList(look, this);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 4);
  row->setSpacing(16);
  row->addWidget(makeSide());
  auto* middle = new QVBoxLayout;
  middle->setSpacing(2);
  m_family = new FamilyRow(look, this);
  middle->addWidget(m_family);
  m_view = new PreviewList(this);
  m_view->setObjectName(QStringLiteral("chooserList"));
  m_view->setAccessibleName(tr("Tips, the best first"));
  m_view->setModel(m_list);
  m_view->setItemDelegate(new ChoiceRow(m_look, m_list, this));
  m_view->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  middle->addWidget(m_view, 1);
  row->addLayout(middle, 1);
  m_map = new DepthMap(m_look, m_list, this);
  row->addWidget(m_map);
  const auto table = [this] { return tipsTable(*m_list, m_look->units()); };
  (new WayOut(m_look, m_view))->add(tr("Tips"), table);
  (new WayOut(m_look, m_map))->addWidget(tr("Map of the tips"), table);
  connectParts();
  applyLook();
  fillFlies();
  fillPools();
}

/// What is chosen for, fly first; what is left out; what to do next.
QWidget* ChooserPanel::makeSide() {
  auto* side = new QWidget(this);
  side->setObjectName(QStringLiteral("chooserSide"));
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  const auto choice = [&](const char* name, const QString& spoken) {
    auto* box = new ElidedChoice(side);
    box->setObjectName(QLatin1String(name));
    box->setAccessibleName(spoken);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(kLeastLetters);
    return box;
  };
  m_fly = choice("chooserFly", tr("Fly to choose for"));
  m_pool = choice("chooserPool", tr("Pool to choose for"));
  m_kind = choice("chooserKind", tr("Kind of tip"));
  m_kind->addItems({tr("tips and coated leaders"), tr("tips only"), tr("coated leaders only")});
  const auto box = [side](const char* name, const QString& words, const QString& tip) {
    auto* check = new QCheckBox(words, side);
    check->setObjectName(QLatin1String(name));
    check->setToolTip(tip);
    return check;
  };
  m_sameStroke = box("chooserSameStroke", tr("same stroke"), tr("Only tips that keep the stroke of the rig as it stands"));
  m_usable = box("chooserUsable", tr("hide refused"), {});
  m_inWallet = box("chooserWallet", tr("in the wallet"), {});
  column->addWidget(m_fly);
  column->addWidget(m_pool);
  auto* kind = new QHBoxLayout;
  kind->addWidget(m_kind, 1);
  kind->addWidget(m_inWallet);
  column->addLayout(kind);
  auto* checks = new QHBoxLayout;
  checks->addWidget(m_sameStroke, 1);
  checks->addWidget(m_usable);
  column->addLayout(checks);
  m_message = new QLabel(side);
  m_message->setObjectName(QStringLiteral("chooserMessage"));
  m_message->setTextFormat(Qt::PlainText);
  m_message->setWordWrap(true);
  m_message->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  m_message->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);  // what is cut is in its tip
  column->addWidget(m_message, 1);
  setWallet({});
  return side;
}

void ChooserPanel::connectParts() {
  connect(m_document, &RigDocument::rigChanged, this, &ChooserPanel::ask);
  connect(m_feed, &AnalysisFeed::analysisChanged, this, &ChooserPanel::ask);
  connect(m_trial, &Trial::changed, this, &ChooserPanel::markTrial);
  connect(m_pools, &PoolBook::changed, this, [this] {
    fillPools();
    ask();
  });
  connect(&m_runner, &HeavyRunner::finished, this, &ChooserPanel::take);
  connect(&m_runner, &HeavyRunner::progress, this, [this](double share) {
    if (m_since.elapsed() < kWorthTelling_ms) return;
    m_message->setText(tr("Looking through the shelf: %1").arg(percentText(share)));
  });
  connect(m_view, &PreviewList::previewed, this, &ChooserPanel::preview);
  connect(m_view, &PreviewList::chosen, this, &ChooserPanel::tryOn);
  connect(m_view, &PreviewList::taken, this, [this](int row) { putOn(m_list->choice(row)); });
  connect(m_view, &PreviewList::escaped, m_trial, &Trial::callOff);
  connect(m_map, &DepthMap::chosen, this, [this](int row) {
    m_view->markRow(row);
    tryOn(row);
  });
  connect(m_map, &DepthMap::previewed, this, &ChooserPanel::preview);
  connect(m_map, &DepthMap::taken, this, [this](int row) { putOn(m_list->choice(row)); });
  connect(m_map, &DepthMap::escaped, m_trial, &Trial::callOff);
  connect(m_family, &FamilyRow::previewed, this, &ChooserPanel::previewRanked);
  connect(m_family, &FamilyRow::taken, this, [this](int ranked) {
    if (m_answer && std::size_t(ranked) < m_answer->choice.choice.ranked.size()) {
      putOn(m_answer->choice.choice.ranked[std::size_t(ranked)]);
    }
  });
  connect(m_fly, &QComboBox::activated, this, &ChooserPanel::tie);
  connect(m_pool, &QComboBox::activated, this, &ChooserPanel::goTo);
  connect(m_kind, &QComboBox::activated, this, [this] { setFilter(); });
  for (QCheckBox* box : {m_sameStroke, m_usable, m_inWallet}) {
    connect(box, &QCheckBox::toggled, this, [this] { setFilter(); });
  }
  connect(m_look, &Look::changed, this, &ChooserPanel::applyLook);
}

QString ChooserPanel::message() const { return m_message->text(); }

const QList<QPushButton*>& ChooserPanel::family() const { return m_family->buttons(); }

void ChooserPanel::setShelf(const SharedShelf& shelf) {
  if (shelf == m_shelf) return;
  m_shelf = shelf;
  m_fliesShown = false;
  m_asked.reset();
  ask();
}

void ChooserPanel::setWallet(const std::vector<Part>& tips) {
  m_wallet = tips;
  m_inWallet->setEnabled(!tips.empty());
  m_inWallet->setToolTip(tips.empty() ? tr("No wallet is packed yet") : QString());
  if (tips.empty()) m_inWallet->setChecked(false);
  setFilter();
}

void ChooserPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  ask();
}

/// What is tried on stays; the pointer is no longer over anything.
void ChooserPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  preview(-1);
}

void ChooserPanel::ask() {
  if (!isVisible()) return;
  fillFlies();
  fillPools();
  const Rig& rig = m_document->rig();
  const std::optional<Pool> pool = m_pools->poolOf(rig);
  Conditions by = m_feed->conditions();
  by.strokeReference.reset();  // the rig as it stands is the reference here
  if (m_asked && *m_asked == rig && m_askedPool == pool && m_askedBy == by) return;
  m_asked = rig;
  m_askedPool = pool;
  m_askedBy = by;
  m_since.start();
  const TipQuestion question{rig, pool, *m_shelf, by};
  const int number = ++m_number;
  // The first of a long shelf are shown while the rest is looked through. The runner ends before this does.
  const auto soon = [this, number](const std::shared_ptr<const Answer>& answer) {
    QMetaObject::invokeMethod(
        this,
        [this, number, answer] {
          if (number == m_number && m_runner.busy()) take(answer);
        },
        Qt::QueuedConnection);
  };
  m_runner.start([question, soon](const std::stop_token& stop, const HeavyRunner::Progress& tell)
                     -> HeavyRunner::Result {
    if (question.shelf.parts.size() > 2 * kFirstParts) {
      TipQuestion first = question;
      first.shelf.parts.resize(kFirstParts);
      if (const auto answer = answerTo(first, stop, {})) soon(answer);
    }
    return answerTo(question, stop, tell);
  });
}

std::shared_ptr<const ChooserPanel::Answer> ChooserPanel::answerTo(const TipQuestion& question,
                                                                   const std::stop_token& stop,
                                                                   const HeavyRunner::Progress& tell) {
  auto answer = std::make_shared<Answer>();
  answer->choice.choice = chooseTip(question, stop, tell);
  if (answer->choice.choice.stopped) return nullptr;
  answer->advice = adviceBeforeTip(question, answer->choice.choice, stop);
  answer->choice.question = question;
  return answer;
}

void ChooserPanel::take(const std::shared_ptr<const void>& result) {
  m_answer = std::static_pointer_cast<const Answer>(result);
  const std::shared_ptr<const AnsweredChoice> choice(m_answer, &m_answer->choice);
  m_list->setAnswer(choice);
  m_family->setAnswer(choice);
  markTrial();
  fillMessage();
  Q_EMIT answered();
}

/// The rig's own fly, those of the shelf, and one that is still to be built.
void ChooserPanel::fillFlies() {
  const Rig& rig = m_document->rig();
  const auto at = rig.flyIndex();
  const std::optional<Part> fly = at ? std::optional(rig.parts[*at]) : std::nullopt;
  if (m_fliesShown && fly == m_shownFly) return m_fly->setCurrentIndex(0);
  m_fliesShown = true;
  m_shownFly = fly;
  m_fly->clear();
  m_fly->addItem(fly ? partWords(*fly, m_look->units()) : tr("no fly yet: pick one"));
  m_fly->insertSeparator(1);
  for (std::size_t i = 0; i < m_shelf->parts.size(); ++i) {
    if (m_shelf->parts[i].kind != PartKind::fly) continue;
    m_fly->addItem(partWords(m_shelf->parts[i], m_look->units()), int(i));
  }
  m_fly->insertSeparator(m_fly->count());
  m_fly->addItem(tr("build a fly…"), kBuild);
}

void ChooserPanel::tie(int item) {
  const QVariant what = m_fly->itemData(item);
  m_fly->setCurrentIndex(0);
  if (!what.isValid()) return;
  if (what.toInt() == kBuild) {
    Q_EMIT flyWanted();
    return;
  }
  const Part& fly = m_shelf->parts[std::size_t(what.toInt())];
  m_document->apply(tr("Tie on %1").arg(partWords(fly, m_look->units())), edits::placed(m_document->rig(), fly));
}

void ChooserPanel::fillPools() {
  const std::optional<Pool> here = m_pools->poolOf(m_document->rig());
  const QStringList names = m_pools->names();
  QStringList items{tr("the rig's own water, nothing wanted")};
  items += names;
  QStringList shown;
  for (int i = 0; i < m_pool->count(); ++i) shown << m_pool->itemText(i);
  if (shown != items) {
    m_pool->clear();
    m_pool->addItems(items);
  }
  const auto at = here ? names.indexOf(QString::fromStdString(here->name)) : -1;
  m_pool->setCurrentIndex(int(at) + 1);
}

void ChooserPanel::goTo(int item) {
  const auto& list = m_pools->pools().pools;
  Rig rig = m_document->rig();
  if (item <= 0 || std::size_t(item) > list.size()) {
    if (rig.water) rig.water->name.reset();
    m_document->apply(tr("Leave the pool"), rig);
    return;
  }
  const Pool& pool = list[std::size_t(item - 1)];
  m_document->apply(tr("Go to %1").arg(QString::fromStdString(pool.name)), inPool(rig, pool));
}

void ChooserPanel::fillMessage() {
  const DisplayUnits units = m_look->units();
  QStringList lines;
  if (m_answer->choice.choice.wanted) {
    lines << tr("Wanted %1.").arg(wantedWords(*m_answer->choice.choice.wanted, units));
  }
  const QString need = needWords(m_answer->choice.choice.need);
  if (!need.isEmpty()) lines << need;
  if (!m_answer->advice.empty()) lines << tr("Before another tip:");
  for (const WaterChange& change : m_answer->advice) lines << adviceWords(change, units);
  lines << tr("Limits: common practice; turnover, depth and grades ours.");
  m_message->setText(lines.join(QLatin1Char('\n')));
  m_message->setToolTip(m_message->text());
}

void ChooserPanel::setFilter() {
  ChoiceFilter filter;
  filter.sameStroke = m_sameStroke->isChecked();
  filter.usableOnly = m_usable->isChecked();
  filter.kind = ChoiceFilter::Kind(m_kind->currentIndex());
  if (m_inWallet->isChecked()) filter.wallet = m_wallet;
  m_list->setFilter(filter);
  markTrial();
}

Rig ChooserPanel::rigWith(const TipChoice& tip) const {
  const Part* part = tip.shelf ? &m_answer->choice.question.shelf.parts[*tip.shelf] : nullptr;
  return withTip(m_document->rig(), part);
}

void ChooserPanel::preview(int row) {
  const bool shows = row >= 0 && m_answer && row < m_list->rowCount();
  const int tried = m_view->currentIndex().isValid() ? m_view->currentIndex().row() : -1;
  m_map->setMarked(shows ? row : tried);
  if (!shows || row == tried) return m_document->setPreview(std::nullopt);
  m_document->setPreview(rigWith(m_list->choice(row)));
}

void ChooserPanel::previewRanked(int ranked) {
  if (!m_answer || ranked < 0 || std::size_t(ranked) >= m_answer->choice.choice.ranked.size()) return preview(-1);
  m_map->setMarked(m_list->rowOf(std::size_t(ranked)));
  m_document->setPreview(rigWith(m_answer->choice.choice.ranked[std::size_t(ranked)]));
}

QString ChooserPanel::stepOf(const TipChoice& tip) const {
  const QString name = choiceName(m_answer->choice.question.shelf, tip.shelf, m_look->units());
  return tip.shelf ? tr("Put on %1").arg(name) : tr("Take the tip off");
}

void ChooserPanel::tryOn(int row) {
  if (row < 0 || !m_answer || row >= m_list->rowCount()) return m_trial->callOff();
  const TipChoice& tip = m_list->choice(row);
  m_trial->tryOn(m_list->name(row), stepOf(tip), rigWith(tip).parts);
  m_map->setMarked(row);
}

/// The row of what is tried on is the current one, in the list and on the map.
void ChooserPanel::markTrial() {
  if (!m_answer) return;
  const auto& trial = m_trial->parts();
  int tried = -1;
  for (int row = 0; trial && tried < 0 && row < m_list->rowCount(); ++row) {
    if (rigWith(m_list->choice(row)).parts == *trial) tried = row;
  }
  const QModelIndex current = m_view->currentIndex();
  // With nothing tried on, the row of the tip that is on may stay the current one.
  const bool standing = !trial && current.isValid() && m_list->choice(current.row()).asItStands;
  if (!standing) m_view->markRow(tried);
  m_map->setMarked(standing ? current.row() : tried);
}

void ChooserPanel::putOn(const TipChoice& tip) { m_document->apply(stepOf(tip), rigWith(tip)); }

void ChooserPanel::applyLook() {
  for (QWidget* w : {static_cast<QWidget*>(m_fly), static_cast<QWidget*>(m_pool), static_cast<QWidget*>(m_kind)}) {
    w->setFont(m_look->font(15));
  }
  for (QCheckBox* box : {m_sameStroke, m_usable, m_inWallet}) box->setFont(m_look->font(14));
  m_message->setFont(m_look->font(14));
  auto* side = findChild<QWidget*>(QStringLiteral("chooserSide"));
  side->setFixedWidth(std::max(m_look->px(kSideWidth), side->layout()->minimumSize().width()));
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  m_view->setPalette(p);
  m_view->doItemsLayout();
  m_fliesShown = false;
  fillFlies();
  if (!m_answer) return;
  m_family->setAnswer(std::shared_ptr<const AnsweredChoice>(m_answer, &m_answer->choice));
  fillMessage();
}

}  // namespace grainwise::ui
