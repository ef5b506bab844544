// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/measure_page.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <algorithm>

#include "core/bench/typed.h"
#include "core/mass/profile.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "core/units/si.h"
#include "ui/document/keep_in_pool.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"
#include "ui/text/measured_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr Limit kFall{"fall", "ft", 0, 25, true};

constexpr int kFoundWidth = 220;

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace

MeasurePage::MeasurePage(Look* look, RigDocument* document, PoolBook* pools, QWidget* parent)
    : MakePage(look, "makeMeasure", parent), m_document(document), m_pools(pools) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(28);
  row->addWidget(tubSide(), 1);
  row->addWidget(riverSide(), 1);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  restyle();
}

QWidget* MeasurePage::tubSide() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(addLabel(tr("In a tub: let a level piece sink and time it"), Size::reading));
  m_piece = addChoice({}, tr("Piece that sinks"), "tubPiece");
  column->addWidget(m_piece);
  auto* fields = new QHBoxLayout;
  m_fall = new NumberField(look(), tr("It falls"), Measure::length, kFall, side);
  m_fall->edit()->setObjectName(QStringLiteral("tubFall"));
  m_fall->setValue(m_fallFeet);
  m_tubWater =
      new NumberField(look(), tr("Water"), Measure::temperature, limits::kTemperature, side);
  m_tubWater->edit()->setObjectName(QStringLiteral("tubWater"));
  m_tubWater->setValue(m_tubCelsius);
  auto* times = new QVBoxLayout;
  times->setSpacing(1);  // as a number field stands under its name
  times->addWidget(addLabel(tr("Seconds, one or more: 3.2 3.3"), Size::name));
  m_times = new QLineEdit(side);
  m_times->setObjectName(QStringLiteral("tubTimes"));
  m_times->setAccessibleName(tr("Times in seconds"));
  m_times->setMinimumHeight(32);
  m_times->setProperty("designSize", 16);
  times->addWidget(m_times);
  times->addStretch(1);
  fields->addWidget(m_fall);
  fields->addLayout(times, 1);
  fields->addWidget(m_tubWater);
  column->addLayout(fields);
  m_tubWords = addLabel({});
  m_tubWords->setObjectName(QStringLiteral("tubWords"));
  column->addWidget(m_tubWords);
  auto* buttons = new QHBoxLayout;
  m_tubTake = addButton(tr("Take this rate"), "tubTake");
  m_tubBack = addButton(tr("Back to the rated one"), "tubBack");
  buttons->addWidget(m_tubTake);
  buttons->addWidget(m_tubBack);
  buttons->addStretch(1);
  column->addLayout(buttons);
  column->addStretch(1);
  connect(m_piece, &QComboBox::currentIndexChanged, this, &MeasurePage::refreshTub);
  connect(m_times, &QLineEdit::textEdited, this, &MeasurePage::refreshTub);
  connect(m_fall, &NumberField::typed, this, [this](const Typed& t) {
    m_fallFeet = t.value;
    refreshTub();
  });
  connect(m_tubWater, &NumberField::typed, this, [this](const Typed& t) {
    m_tubCelsius = t.value;
    refreshTub();
  });
  connect(m_times, &QLineEdit::returnPressed, this, &MeasurePage::takeTub);
  connect(m_tubTake, &QPushButton::clicked, this, &MeasurePage::takeTub);
  connect(m_tubBack, &QPushButton::clicked, this, [this] {
    const auto chosen = piece();
    if (!chosen) return;
    const Rig& rig = m_document->rig();
    const Part part = withRatedAgain(rig.parts[chosen->part], chosen->section);
    m_document->apply(tr("Back to the rated sink"), edits::replaced(rig, chosen->part, part));
  });
  return side;
}

QWidget* MeasurePage::riverSide() {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(addLabel(tr("In the river: how deep was the fly?"), Size::reading));
  auto* fields = new QHBoxLayout;
  m_found = addChoice({tr("hanging below the rod"), tr("on the swing")}, tr("Where it was measured"),
                      "riverFound");
  m_found->setMinimumWidth(look()->px(kFoundWidth));
  m_depth = new NumberField(look(), tr("Depth of the fly"), Measure::length, limits::kFlyDepth, side);
  m_depth->edit()->setObjectName(QStringLiteral("riverDepth"));
  m_depth->setOptional(true);
  fields->addWidget(m_found, 0, Qt::AlignBottom);
  fields->addWidget(m_depth);
  fields->addStretch(1);
  column->addLayout(fields);
  m_riverWords = addLabel({});
  m_riverWords->setObjectName(QStringLiteral("riverWords"));
  column->addWidget(m_riverWords);
  auto* buttons = new QHBoxLayout;
  m_riverTake = addButton(tr("Take this current"), "riverTake");
  m_riverBack = addButton(tr("Back to the stated one"), "riverBack");
  buttons->addWidget(m_riverTake);
  buttons->addWidget(m_riverBack);
  buttons->addStretch(1);
  column->addLayout(buttons);
  column->addWidget(addLabel(tr("Measure where you stand safely; a snagged tip comes back fast.")));
  column->addStretch(1);
  connect(m_found, &QComboBox::currentIndexChanged, this, &MeasurePage::refreshRiver);
  connect(m_depth, &NumberField::typed, this, [this](const Typed& t) {
    m_depthFeet = t.value;
    refreshRiver();
  });
  connect(m_depth, &NumberField::cleared, this, [this] {
    m_depthFeet.reset();
    refreshRiver();
  });
  connect(m_riverTake, &QPushButton::clicked, this, &MeasurePage::takeRiver);
  connect(m_riverBack, &QPushButton::clicked, this, [this] {
    take(tr("Back to the stated current"), withStatedCurrent(m_document->rig()),
         [](const Pool& pool) { return withStatedCurrent(pool); });
  });
  return side;
}

void MeasurePage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

void MeasurePage::fillPieces() {
  const QSignalBlocker quiet(m_piece);
  const int before = m_piece->currentIndex();
  m_piece->clear();
  m_pieces.clear();
  const auto& parts = m_document->rig().parts;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    for (std::size_t k = 0; k < parts[i].sections.size(); ++k) {
      const Section& section = parts[i].sections[k];
      if (!section.sinkRate) continue;
      m_pieces.push_back({i, k});
      m_piece->addItem(tr("%1: %2").arg(partWords(parts[i], units()), sinkRateText(section, units())));
    }
  }
  m_piece->setCurrentIndex(m_pieces.empty() ? -1
                                            : std::clamp(before, 0, int(m_pieces.size()) - 1));
}

std::optional<MeasurePage::Piece> MeasurePage::piece() const {
  const int index = m_piece->currentIndex();
  if (index < 0 || index >= int(m_pieces.size())) return std::nullopt;
  return m_pieces[std::size_t(index)];
}

tl::expected<TubRate, Problem> MeasurePage::tub() const {
  TubTiming timing;
  timing.fall = si::toInches(si::m(Feet(m_fallFeet)));
  timing.water.temperature = Celsius(m_tubCelsius);
  const QStringList words =
      m_times->text().split(QRegularExpression(QStringLiteral("[\\s;]+")), Qt::SkipEmptyParts);
  for (const QString& word : words) {
    const auto number = typedNumber(word.toStdString());
    timing.times.emplace_back(number.value_or(-1.0));
  }
  const auto chosen = piece();
  if (!chosen) return tl::unexpected(Problem{"", 0, "", Problem::tr("nothing on the line sinks by a rate"), ""});
  const Part& part = m_document->rig().parts[chosen->part];
  const auto is = sectionProperties(part.sections[chosen->section], part.kind, scaleOf(part));
  return tubRate(timing, is.mass.rodEnd);
}

void MeasurePage::refresh() {
  fillPieces();
  refreshTub();
  refreshRiver();
}

void MeasurePage::refreshTub() {
  const auto chosen = piece();
  const Section* section =
      chosen ? &m_document->rig().parts[chosen->part].sections[chosen->section] : nullptr;
  m_tubBack->setEnabled(section && section->timed);
  m_tubTake->setEnabled(false);
  if (!section) {
    m_tubWords->setText(tr("Nothing on the line sinks by a rate."));
    return;
  }
  if (m_times->text().trimmed().isEmpty()) {
    if (!section->timed) {
      m_tubWords->setText(tr("Rated %1. Several falls make it surer.")
                              .arg(rateText(section->sinkRate->rodEnd, units())));
      return;
    }
    m_tubWords->setText(timedWords(*section->timed, units()));
    return;
  }
  const auto rate = tub();
  if (!rate) {
    m_tubWords->setText(problemText(rate.error()));
    return;
  }
  m_tubTake->setEnabled(true);
  QString words = tr("%1 at %4, give or take %2 (4 times in 5); rated %3.")
                      .arg(rateText(rate->rated, units()), rateText(rate->plusMinus, units()),
                           rateText(section->sinkRate->rodEnd, units()),
                           temperatureText(kRatingWater.temperature, units()));
  if (rate->shortFall) words += tr(" A deeper tub would say more.");
  m_tubWords->setText(words);
}

void MeasurePage::takeTub() {
  const auto chosen = piece();
  const auto rate = tub();
  if (!chosen || !rate || !m_fall->error().isEmpty() || !m_tubWater->error().isEmpty()) return;
  const Rig& rig = m_document->rig();
  const auto part = withTimedRate(rig.parts[chosen->part], chosen->section, *rate, today());
  if (!part) return m_tubWords->setText(problemText(part.error()));
  m_times->clear();
  m_document->apply(tr("Take a timed sink rate"), edits::replaced(rig, chosen->part, *part));
}

RiverMeasure MeasurePage::measure() const {
  RiverMeasure measure;
  measure.flyDepth = Feet(m_depthFeet.value_or(0));
  measure.found =
      m_found->currentIndex() == 1 ? DepthFound::swinging : DepthFound::hangingDown;
  return measure;
}

void MeasurePage::refreshRiver() {
  const Rig& rig = m_document->rig();
  const bool measured = rig.water && rig.water->measured;
  m_riverBack->setEnabled(measured);
  m_riverTake->setEnabled(false);
  if (!m_depthFeet) {
    m_riverWords->setText(
        measured ? measuredWords(*rig.water->measured, units())
                 : tr("The current that explains the depth is kept with the water and its pool, and "
                      "narrows the range."));
    return;
  }
  const auto fit = riverFit(rig, measure());
  if (!fit) {
    m_riverWords->setText(problemText(fit.error()));
    return;
  }
  m_riverTake->setEnabled(true);
  m_riverWords->setText(tr("Fits a current of %1 at the surface, give or take %2; stated %3.")
                            .arg(speedText(fit->speed, units()), speedText(fit->plusMinus, units()),
                                 speedText(fit->stated, units())));
}

void MeasurePage::takeRiver() {
  const auto fit = riverFit(m_document->rig(), measure());
  if (!fit || !m_depth->error().isEmpty()) return;
  const RiverMeasure taken = measure();
  m_depthFeet.reset();
  m_depth->edit()->clear();
  const std::string day = today();
  take(tr("Take a measured current"), withFittedCurrent(m_document->rig(), *fit, taken, day),
       [&](const Pool& pool) { return withFittedCurrent(pool, *fit, taken, day); });
}

/// The rig's water and the pool of its name in the book, in one step.
void MeasurePage::take(const QString& step, const Rig& after,
                       const std::function<Pool(const Pool&)>& found) {
  if (after == m_document->rig()) return;
  const auto& water = m_document->rig().water;
  const auto& pools = m_pools->pools().pools;
  const auto pool = std::find_if(pools.begin(), pools.end(), [&](const Pool& p) {
    return water && water->name && p.name == *water->name;
  });
  QUndoStack* stack = m_document->undoStack();
  stack->beginMacro(step);
  m_document->apply(step, after);
  if (pool != pools.end()) stack->push(new KeepInPool(m_pools, *pool, found(*pool)));
  stack->endMacro();
}

void MeasurePage::restyle() {
  MakePage::restyle();
  m_fall->setValue(m_fallFeet);
  m_tubWater->setValue(m_tubCelsius);
  if (isVisible()) refresh();
}

}  // namespace grainwise::ui
