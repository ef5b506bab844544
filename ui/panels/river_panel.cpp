// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/river_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "core/choose/candidate.h"
#include "core/model/edits.h"
#include "core/water/water_line.h"
#include "ui/charts/rig_tables.h"
#include "ui/charts/river_feed.h"
#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/player_bar.h"
#include "ui/panels/slider_row.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kSmallType = 14;
constexpr int kSliders = 310;
constexpr int kWords = 250;
constexpr double kAngleHigh = 80;
constexpr double kMendHigh = 12;
constexpr double kLineLow = 30, kLineHigh = 120;
}  // namespace

RiverPanel::RiverPanel(Look* look, RigDocument* document, AnalysisFeed* feed, const PoolBook* pools,
                       QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed), m_pools(pools) {
  setObjectName(QStringLiteral("riverPanel"));
  m_swings = new RiverFeed(feed, this);
  m_view = new RiverView(look, this);
  (new WayOut(look, m_view))->addWidget(tr("River"), [this] {
    return riverTable(m_picture.get(), m_look->units());
  });
  m_view->setObjectName(QStringLiteral("riverView"));
  m_player = new PlayerBar(look, {{tr("4 times"), 4.0}, {tr("real time"), 1.0}, {tr("1/4"), 0.25}}, 0, this);
  m_view->setSpeed(m_player->speed());
  m_angle = new SliderRow(look, tr("Angle"), 0, kAngleHigh, 1,
                          [](double deg, DisplayUnits) { return numberText(deg, 0) + QChar(0x00b0); }, this);
  m_angle->setToolTip(tr("Of the landed line below straight across"));
  m_mend = new SliderRow(look, tr("Mend"), 0, kMendHigh, 0.5,
                         [](double s, DisplayUnits) { return tr("%1 s").arg(numberText(s, 1)); }, this);
  m_mend->setToolTip(tr("How long the line drifts free before it comes tight"));
  m_lineOut = new SliderRow(look, tr("Line out"), kLineLow, kLineHigh, 1,
                            [](double ft, DisplayUnits u) { return lengthText(Feet(ft), u); }, this);
  m_lineOut->setToolTip(tr("From the rod tip to the fly"));
  bind(m_angle, "angle_deg", &Swing::angle, tr("Angle"));
  bind(m_mend, "mend_s", &Swing::mend, tr("Mend"));
  bind(m_lineOut, "line_out_ft", &Swing::lineOut, tr("Line out"));
  m_result = new QLabel(this);
  m_result->setObjectName(QStringLiteral("riverResult"));
  m_trying = new QWidget(this);
  m_tryingWords = new QLabel(tr("range of depth"), m_trying);
  m_tryingWords->setTextFormat(Qt::PlainText);
  m_progress = new QProgressBar(m_trying);
  m_progress->setObjectName(QStringLiteral("bandProgress"));
  m_progress->setAccessibleName(tr("Swings tried for the range of depth"));
  m_progress->setRange(0, 100);
  m_progress->setTextVisible(false);
  auto* trying = new QHBoxLayout(m_trying);
  trying->setContentsMargins(0, 0, 0, 0);
  trying->addWidget(m_tryingWords);
  trying->addWidget(m_progress, 1);
  QSizePolicy keeps = m_trying->sizePolicy();
  keeps.setRetainSizeWhenHidden(true);
  m_trying->setSizePolicy(keeps);
  m_trying->hide();
  m_caution = new QLabel(tr("Figures for the line, no guide to wading: judge the water by your own eyes, with a "
                            "staff, a belt and company."),
                         this);
  m_depths = new QPushButton(tr("Depths in all pools"), this);
  m_depths->setObjectName(QStringLiteral("allPools"));
  connect(m_depths, &QPushButton::clicked, this, &RiverPanel::depthsWanted);
  layOut();

  connect(m_player, &PlayerBar::playWanted, m_view, &RiverView::setPlaying);
  connect(m_player, &PlayerBar::timeWanted, this, [this](double time_s) {
    m_view->setPlaying(false);
    m_view->setTime(time_s);
  });
  connect(m_player, &PlayerBar::speedWanted, m_view, &RiverView::setSpeed);
  connect(m_view, &RiverView::timeChanged, m_player, &PlayerBar::setTime);
  connect(m_view, &RiverView::playingChanged, m_player, &PlayerBar::setPlaying);
  connect(m_swings, &RiverFeed::started, m_view, [this] {
    m_view->setStale(true);
    showProgress(0);
  });
  connect(m_swings, &RiverFeed::bandProgress, this, &RiverPanel::showProgress);
  connect(m_swings, &RiverFeed::arrived, this, &RiverPanel::take);
  connect(feed, &AnalysisFeed::analysisChanged, this, &RiverPanel::showBand);
  connect(feed, &AnalysisFeed::depthRefined, this, &RiverPanel::showBand);
  connect(feed, &AnalysisFeed::analysisChanged, this, &RiverPanel::showWanted);
  connect(pools, &PoolBook::changed, this, &RiverPanel::showWanted);
  connect(document, &RigDocument::rigChanged, this, &RiverPanel::refresh);
  connect(look, &Look::changed, this, &RiverPanel::applyLook);
  applyLook();
  showBand();
  showWanted();
}

/// The river, what can be changed without a new tip, the words: side by side, since the drawer is low.
void RiverPanel::layOut() {
  auto* sliders = new QVBoxLayout;
  sliders->setSpacing(2);
  for (SliderRow* row : {m_angle, m_mend, m_lineOut}) sliders->addWidget(row);
  sliders->addWidget(m_player);
  sliders->addWidget(m_depths, 0, Qt::AlignLeft);
  sliders->addStretch(1);
  auto* words = new QVBoxLayout;
  words->setSpacing(6);
  for (QLabel* label : {m_result, m_caution}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    words->addWidget(label);
    if (label == m_result) words->addWidget(m_trying);
  }
  words->addStretch(1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(16);
  row->addWidget(m_view, 1);
  row->addLayout(sliders);
  row->addLayout(words);
}

template <class Q>
void RiverPanel::bind(SliderRow* row, const char* key, std::optional<Q> Swing::*member,
                      const QString& step) {
  row->slider()->setObjectName(QLatin1String(key));
  connect(row, &SliderRow::moved, this, [this, row, key, member, step](double value) {
    Swing swing = m_document->rig().swing.value_or(Swing{});
    swing.*member = Q(value);
    keepDigits(swing.kept, key, value, {});
    m_document->apply(step, edits::withSwing(m_document->rig(), swing),
                      QStringLiteral("swing/%1/%2").arg(QLatin1String(key)).arg(row->gesture()));
  });
}

void RiverPanel::refresh() {
  if (!isVisible()) return;
  const SwingSetup setup = swingSetup(*m_document->shown());
  m_angle->setValue(setup.angle.value());
  m_mend->setValue(setup.mend.value());
  m_lineOut->setValue(setup.lineOut.value());
}

void RiverPanel::take(const std::shared_ptr<const RiverPicture>& picture, const QString& reason) {
  m_picture = picture;
  m_player->setEnabled(picture != nullptr);
  if (!picture) {
    showProgress(1);
    m_view->setReason(reason);
    m_result->clear();
    return;
  }
  m_player->setLength(picture->length_s());
  const bool fresh = m_view->shownFrame() == nullptr;
  m_view->setPicture(picture);
  if (fresh) m_view->setTime(picture->afterMend_s);
  applyLook();
}

/// Where the fly is wanted in the pool that the rig stands in.
void RiverPanel::showWanted() {
  const std::optional<Pool> pool = m_pools->poolOf(*m_feed->rig());
  const auto wanted = pool ? wantedWater(*pool) : std::nullopt;
  m_view->setWanted(wanted ? std::optional(FeetRange{wanted->low, wanted->high}) : std::nullopt);
}

/// While swings are tried for the range; a new edit begins again at nothing.
void RiverPanel::showProgress(double share) {
  m_progress->setValue(int(100 * share));
  m_trying->setVisible(share < 1);
}

void RiverPanel::showBand() { m_view->setBand(m_feed->analysis().depthBand); }

void RiverPanel::applyLook() {
  m_result->setFont(m_look->font(kType));
  m_caution->setFont(m_look->font(kSmallType));
  m_depths->setFont(m_look->font(kType));
  m_tryingWords->setFont(m_look->font(kSmallType));
  m_progress->setFixedHeight(m_look->px(10));
  m_depths->setMinimumHeight(m_look->px(32));
  QPalette quiet = m_caution->palette();
  quiet.setColor(QPalette::WindowText, m_look->colours().slate);
  m_caution->setPalette(quiet);
  m_player->setFixedWidth(m_look->px(kSliders));
  if (m_picture) m_result->setText(swingSentence(m_picture->swing, m_look->units()));
  for (QLabel* label : {m_result, m_caution}) giveRoom(label, m_look->px(kWords));
}

void RiverPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
  m_swings->setActive(true);
}

void RiverPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_view->setPlaying(false);
  m_swings->setActive(false);
}

}  // namespace grainwise::ui
