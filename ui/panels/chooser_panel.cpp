// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/chooser_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/analysis/depth_table.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/depth_map.h"
#include "ui/panels/elided_choice.h"
#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kSideWidth = 250;
constexpr double kIntermediate = 3.0;  ///< in/s; slower ones belong to no fast family and back
constexpr qint64 kWorthTelling_ms = 200;

QString rounded(Feet value, DisplayUnits units) { return roundLengthText(value, units); }
}  // namespace

ChooserPanel::ChooserPanel(Look* look, RigDocument* document, AnalysisFeed* feed, PoolBook* pools,
                           const Shelf& shelf, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_pools(pools),
      m_shelf(shelf) {
  setObjectName(QStringLiteral("chooserPanel"));
  m_list = new ChoiceList(look, this);
  layOut();
  connect(document, &RigDocument::rigChanged, this, &ChooserPanel::ask);
  connect(pools, &PoolBook::changed, this, [this] {
    fillPools();
    ask();
  });
  connect(&m_runner, &HeavyRunner::finished, this, &ChooserPanel::take);
  connect(&m_runner, &HeavyRunner::progress, this, [this](double share) {
    if (m_since.elapsed() < kWorthTelling_ms) return;
    m_message->setText(tr("Looking through the shelf: %1").arg(percentText(share)));
  });
  connect(m_view, &PreviewList::previewed, this, &ChooserPanel::preview);
  connect(m_view, &PreviewList::taken, this, [this](int row) { putOn(m_list->choice(row)); });
  connect(m_map, &DepthMap::chosen, this, [this](int row) {
    m_view->setFocus();
    m_view->setCurrentIndex(m_list->index(row, 0));
  });
  connect(m_pool, &QComboBox::activated, this, &ChooserPanel::goTo);
  connect(m_kind, &QComboBox::activated, this, [this] { setFilter(); });
  for (QCheckBox* box : {m_sameStroke, m_usable, m_inWallet}) {
    connect(box, &QCheckBox::toggled, this, [this] { setFilter(); });
  }
  connect(look, &Look::changed, this, &ChooserPanel::applyLook);
  applyLook();
  fillPools();
}

void ChooserPanel::layOut() {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 4);
  row->setSpacing(16);
  auto* side = new QWidget(this);
  side->setObjectName(QStringLiteral("chooserSide"));
  auto* left = new QVBoxLayout(side);
  left->setContentsMargins(0, 0, 0, 0);
  left->setSpacing(4);
  m_pool = new ElidedChoice(side);
  m_pool->setObjectName(QStringLiteral("chooserPool"));
  m_pool->setAccessibleName(tr("Pool to choose for"));
  m_kind = new ElidedChoice(side);
  m_kind->setObjectName(QStringLiteral("chooserKind"));
  m_kind->setAccessibleName(tr("Kind of tip"));
  m_kind->addItems({tr("tips and coated leaders"), tr("tips only"), tr("coated leaders only")});
  const auto box = [side](const char* name, const QString& words) {
    auto* check = new QCheckBox(words, side);
    check->setObjectName(QLatin1String(name));
    return check;
  };
  m_sameStroke = box("chooserSameStroke", tr("same stroke"));
  m_usable = box("chooserUsable", tr("hide refused"));
  m_inWallet = box("chooserWallet", tr("in the wallet"));
  m_inWallet->setEnabled(false);
  m_message = new QLabel(side);
  m_message->setObjectName(QStringLiteral("chooserMessage"));
  m_message->setTextFormat(Qt::PlainText);
  m_message->setWordWrap(true);
  m_message->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  m_message->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);  // what is cut is in its tip
  left->addWidget(m_pool);
  left->addWidget(m_kind);
  auto* checks = new QGridLayout;
  checks->setSpacing(2);
  checks->addWidget(m_sameStroke, 0, 0);
  checks->addWidget(m_usable, 0, 1);
  checks->addWidget(m_inWallet, 1, 0);
  left->addLayout(checks);
  left->addWidget(m_message, 1);
  row->addWidget(side);

  auto* middle = new QVBoxLayout;
  middle->setSpacing(2);
  m_familyBox = new QWidget(this);
  m_familyBox->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  m_familyRow = new QHBoxLayout(m_familyBox);
  m_familyRow->setContentsMargins(0, 0, 0, 0);
  m_familyRow->setSpacing(4);
  middle->addWidget(m_familyBox);
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
}

QString ChooserPanel::message() const { return m_message->text(); }

void ChooserPanel::setWallet(const std::vector<std::size_t>& tips) {
  m_wallet = tips;
  m_inWallet->setEnabled(!tips.empty());
  if (tips.empty()) m_inWallet->setChecked(false);
  setFilter();
}

void ChooserPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  ask();
}

void ChooserPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  preview(-1);
}

void ChooserPanel::ask() {
  fillPools();
  if (!isVisible() || m_document->previewing()) return;
  const Rig& rig = m_document->rig();
  const std::optional<Pool> pool = m_pools->poolOf(rig);
  if (m_asked && *m_asked == rig && m_askedPool == pool) return;
  m_asked = rig;
  m_askedPool = pool;
  m_since.start();
  TipQuestion question{rig, pool, m_shelf, {}};
  question.limits.bench = m_feed->conditions();
  m_runner.start([question](const std::stop_token& stop, const HeavyRunner::Progress& tell)
                     -> HeavyRunner::Result {
    auto answer = std::make_shared<Answer>();
    answer->choice.choice = chooseTip(question, stop, tell);
    if (answer->choice.choice.stopped) return nullptr;
    answer->advice = adviceBeforeTip(question, answer->choice.choice, stop);
    answer->choice.question = question;
    return answer;
  });
}

void ChooserPanel::take(const std::shared_ptr<const void>& result) {
  m_answer = std::static_pointer_cast<const Answer>(result);
  m_list->setAnswer(std::shared_ptr<const AnsweredChoice>(m_answer, &m_answer->choice));
  fillFamily();
  fillMessage();
  Q_EMIT answered();
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
  m_message->setText(lines.join(QLatin1Char('\n')));
  m_message->setToolTip(m_message->text());
}

void ChooserPanel::addFamilyCaption(const QString& words) {
  auto* caption = new QLabel(words, m_familyBox);
  caption->setFont(m_look->font(14));
  m_familyRow->addWidget(caption);
}

void ChooserPanel::addFamilyButton(std::size_t ranked, const QString& words) {
  const TipChoice& tip = m_answer->choice.choice.ranked[ranked];
  const Choice& choice = m_answer->choice.choice;
  auto* button = new QPushButton(words, m_familyBox);
  button->setObjectName(QStringLiteral("family%1").arg(m_family.size()));
  button->setFont(m_look->font(14, tip.asItStands));
  button->setMinimumHeight(m_look->px(32));
  button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  const QString all = tr("%1: %2", "tip: sentence")
                          .arg(choiceName(m_shelf, tip.shelf, m_look->units()),
                               choiceSentence(tip, choice.wanted, m_look->units()));
  button->setToolTip(all);
  button->setAccessibleName(all);
  button->setProperty("ranked", int(ranked));
  button->installEventFilter(this);
  connect(button, &QPushButton::clicked, this, [this, ranked] {
    if (m_answer && ranked < m_answer->choice.choice.ranked.size()) {
      putOn(m_answer->choice.choice.ranked[ranked]);
    }
  });
  m_familyRow->addWidget(button);
  m_family.append(button);
}

void ChooserPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitFamily();
}

/// Buttons that would be cut are left away; every one of them is a row of the list, too.
void ChooserPanel::fitFamily() {
  int room = m_familyBox->width();
  bool full = false;
  for (int i = 0; i < m_familyRow->count(); ++i) {
    QWidget* widget = m_familyRow->itemAt(i)->widget();
    if (widget == nullptr) continue;
    room -= widget->sizeHint().width() + m_familyRow->spacing();
    full = full || room < 0;
    widget->setVisible(!full);
    // A caption without the first button behind it says nothing.
    if (full && i > 0 && qobject_cast<QLabel*>(m_familyRow->itemAt(i - 1)->widget()) != nullptr) {
      m_familyRow->itemAt(i - 1)->widget()->hide();
    }
  }
}

void ChooserPanel::fillFamily() {
  m_family.clear();
  while (QLayoutItem* item = m_familyRow->takeAt(0)) {
    if (item->widget() != nullptr) item->widget()->deleteLater();
    delete item;
  }
  const TipQuestion& question = m_answer->choice.question;
  const Choice& choice = m_answer->choice.choice;
  const auto family = familyOf(question, choice);
  if (family.size() < 2) return;
  const TipSize here = tipSize(*tipOf(question.rig));
  const auto close = [](double a, double b) { return std::abs(a - b) < 0.05; };
  const auto slow = [](const Part& part) {
    const auto& rate = part.sections.back().sinkRate;
    return rate && rate->flyEnd.value() < kIntermediate;
  };
  const bool slowHere = slow(*tipOf(question.rig));
  const auto belongs = [&](const TipChoice& tip) {
    return slow(question.shelf.parts[*tip.shelf]) == slowHere || tip.size.sinking <= Feet(0);
  };
  const DisplayUnits units = m_look->units();
  const auto depth = [&](const TipChoice& tip) {
    if (!tip.figures.depth) return QString();
    if (!tip.figures.depth->band) return tr("on top");
    if (isOnBottom(tip.figures.depth->state)) return tr("bottom");
    return rounded(tip.figures.depth->band->middle, units);
  };
  const auto label = [&](const QString& what, const TipChoice& tip) {
    const QString deep = depth(tip);
    return deep.isEmpty() ? what : tr("%1 → %2", "how a tip differs → its depth").arg(what, deep);
  };
  const auto rateOf = [&](const TipChoice& tip) {
    const auto& rate = question.shelf.parts[*tip.shelf].sections.back().sinkRate;
    return rate ? rate->flyEnd : InchesPerSecond(0);
  };
  const bool byRate = std::any_of(family.begin(), family.end(), [&](std::size_t i) {
    const TipChoice& tip = choice.ranked[i];
    return !tip.asItStands && close(tip.size.mean.value(), here.mean.value()) && belongs(tip) &&
           close(tip.size.sinking.value(), here.sinking.value());
  });
  addFamilyCaption(byRate ? tr("Same length:") : tr("Same length, sinking:"));
  for (const std::size_t i : family) {
    const TipChoice& tip = choice.ranked[i];
    if (!close(tip.size.mean.value(), here.mean.value()) || !belongs(tip)) continue;
    const bool none = tip.size.sinking <= Feet(0);
    const QString what = none     ? tr("none")
                         : byRate ? rateText(rateOf(tip), units)
                                  : lengthText(tip.size.sinking, units);
    addFamilyButton(i, label(what, tip));
  }
  bool captioned = false;
  for (const std::size_t i : family) {
    const TipChoice& tip = choice.ranked[i];
    if (close(tip.size.mean.value(), here.mean.value()) || !belongs(tip)) continue;
    if (!close(tip.size.sinking.value(), here.sinking.value())) continue;
    if (!captioned) addFamilyCaption(tr("or:"));
    captioned = true;
    addFamilyButton(i, label(lineMassText(tip.size.mean, units), tip));
  }
  m_familyRow->addStretch(1);
  fitFamily();
}

void ChooserPanel::setFilter() {
  ChoiceFilter filter;
  filter.sameStroke = m_sameStroke->isChecked();
  filter.usableOnly = m_usable->isChecked();
  filter.kind = ChoiceFilter::Kind(m_kind->currentIndex());
  if (m_inWallet->isChecked()) filter.wallet = m_wallet;
  m_list->setFilter(filter);
}

Rig ChooserPanel::rigWith(const TipChoice& tip) const {
  const Part* part = tip.shelf ? &m_answer->choice.question.shelf.parts[*tip.shelf] : nullptr;
  return withTip(m_document->rig(), part);
}

void ChooserPanel::preview(int row) {
  m_map->setMarked(row);
  if (row < 0 || !m_answer || row >= m_list->rowCount()) {
    m_document->setPreview(std::nullopt);
    return;
  }
  m_document->setPreview(rigWith(m_list->choice(row)));
}

void ChooserPanel::putOn(const TipChoice& tip) {
  const QString name = choiceName(m_shelf, tip.shelf, m_look->units());
  m_document->apply(tip.shelf ? tr("Put on %1").arg(name) : tr("Take the tip off"), rigWith(tip));
}

bool ChooserPanel::eventFilter(QObject* watched, QEvent* event) {
  const bool in = event->type() == QEvent::Enter || event->type() == QEvent::FocusIn;
  const bool out = event->type() == QEvent::Leave || event->type() == QEvent::FocusOut;
  if ((in || out) && m_answer) {
    const auto ranked = std::size_t(watched->property("ranked").toInt());
    if (in && ranked < m_answer->choice.choice.ranked.size()) {
      m_document->setPreview(rigWith(m_answer->choice.choice.ranked[ranked]));
    } else {
      m_document->setPreview(std::nullopt);
    }
  }
  return QWidget::eventFilter(watched, event);
}

void ChooserPanel::applyLook() {
  for (QWidget* w : {static_cast<QWidget*>(m_pool), static_cast<QWidget*>(m_kind)}) {
    w->setFont(m_look->font(15));
  }
  for (QCheckBox* box : {m_sameStroke, m_usable, m_inWallet}) box->setFont(m_look->font(14));
  m_message->setFont(m_look->font(14));
  auto* side = findChild<QWidget*>(QStringLiteral("chooserSide"));
  int checks = m_look->px(2);
  for (const QCheckBox* box : {m_sameStroke, m_usable}) checks += box->sizeHint().width();
  side->setFixedWidth(std::max(m_look->px(kSideWidth), checks));
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  m_view->setPalette(p);
  m_view->doItemsLayout();
  if (!m_answer) return;
  fillFamily();
  fillMessage();
}

}  // namespace grainwise::ui
