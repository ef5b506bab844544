// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/deck_run.h"

#include <algorithm>

#include "ui/work/heavy_runner.h"

namespace grainwise::ui {
namespace {
constexpr int kFrame_ms = 16;
/// Of real time: a swing lasts half a minute, a cast a second.
constexpr double kSwingSpeed = 6, kSlowSwing = 1.5;
constexpr double kCastSpeed = 0.5, kSlowCast = 0.1;

/// What the worker brings back: for which card, and the rigs that it was run with.
struct Ran {
  int index;
  std::shared_ptr<const ShownCard> of;
  std::shared_ptr<const CardRuns> runs;
};
}  // namespace

DeckRun::DeckRun(const Deck& deck, const std::filesystem::path& folder, const Conditions& conditions,
                 QObject* parent)
    : QObject(parent),
      m_deck(deck),
      m_folder(folder),
      m_conditions(conditions),
      m_cards(deck.cards.size()),
      m_runner(new HeavyRunner(this)) {
  m_timer.setInterval(kFrame_ms);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this, [this] { advance(double(m_clock.restart())); });
  connect(m_runner, &HeavyRunner::finished, this, [this](const std::shared_ptr<const void>& result) {
    const auto ran = std::static_pointer_cast<const Ran>(result);
    if (!ran || !ran->runs) return;
    auto& card = m_cards[std::size_t(ran->index)];
    if (card != ran->of) return;
    auto with = std::make_shared<ShownCard>(*card);
    with->runs = ran->runs;
    card = with;
    if (ran->index == m_index) play();
    Q_EMIT changed();
  });
  startRuns();
}

DeckRun::~DeckRun() = default;

std::shared_ptr<const ShownCard> DeckRun::shown(int index) {
  if (index < 0 || index >= count()) return nullptr;
  auto& card = m_cards[std::size_t(index)];
  if (!card) {
    Card of = m_deck.cards[std::size_t(index)];
    if (index == m_index && editing()) {
      of.rig = m_edited.front();
      if (m_edited.size() > 1) of.rigB = m_edited[1];
    }
    card = std::make_shared<const ShownCard>(shownCard(of, m_folder, m_conditions));
  }
  return card;
}

CardState DeckRun::state() const {
  return {m_index, std::max(1, count()), m_answered, !m_hidden, m_time_s};
}

void DeckRun::next() {
  if (m_blank) {
    toggleBlank();
    return;
  }
  if (count() == 0) return;
  if (!m_answered && m_deck.cards[std::size_t(m_index)].reveal) {
    m_answered = true;
    Q_EMIT changed();
    return;
  }
  if (m_index + 1 < count()) arrive(m_index + 1, false);
}

void DeckRun::back() {
  if (m_blank) {
    toggleBlank();
    return;
  }
  if (m_answered) {
    m_answered = false;
    Q_EMIT changed();
    return;
  }
  if (m_index > 0) arrive(m_index - 1, m_deck.cards[std::size_t(m_index - 1)].reveal.has_value());
}

bool DeckRun::canGoOn() const {
  if (m_blank) return true;
  const bool hasAnswer = count() > 0 && m_deck.cards[std::size_t(m_index)].reveal.has_value();
  return m_index + 1 < count() || (hasAnswer && !m_answered);
}

bool DeckRun::canGoBack() const { return m_blank || m_answered || m_index > 0; }

void DeckRun::goTo(int index) {
  if (index >= 0 && index < count() && index != m_index) arrive(index, false);
}

void DeckRun::arrive(int index, bool answered) {
  setEdited({});
  m_index = index;
  m_answered = answered;
  m_timer.stop();
  m_time_s = -1;
  startRuns();
  play();
  Q_EMIT changed();
}

void DeckRun::toggleBlank() {
  m_blank = !m_blank;
  Q_EMIT changed();
}

void DeckRun::toggleNumbers() {
  m_hidden = !m_hidden;
  Q_EMIT changed();
}

void DeckRun::toggleSlow() {
  m_slow = !m_slow;
  m_time_s = -1;
  play();
  Q_EMIT changed();
}

void DeckRun::setEdited(std::size_t side, const Rig& rig) {
  if (side >= m_edited.size()) return;
  std::vector<Rig> rigs = m_edited;
  rigs[side] = rig;
  setEdited(std::move(rigs));
}

void DeckRun::setEdited(std::vector<Rig> rigs) {
  if (rigs.empty() && m_edited.empty()) return;
  m_edited = std::move(rigs);
  m_cards[std::size_t(m_index)].reset();
  m_timer.stop();
  m_time_s = -1;
  startRuns();
  Q_EMIT changed();
}

void DeckRun::setRules(const Rules& rules) {
  if (rules == m_conditions.rules) return;
  m_conditions.rules = rules;
  for (auto& card : m_cards) card.reset();
  m_timer.stop();
  m_time_s = -1;
  startRuns();
  Q_EMIT changed();
}

bool DeckRun::waiting() const { return m_runner->busy(); }

void DeckRun::startRuns() {
  const auto card = shown(m_index);
  if (!card || card->runs || !card->missing.empty()) return;
  if (card->card.show != CardShow::river && card->card.show != CardShow::cast) return;
  m_runner->start([index = m_index, card, conditions = m_conditions](
                      std::stop_token stop, const HeavyRunner::Progress&) -> HeavyRunner::Result {
    auto ran = std::make_shared<Ran>();
    ran->index = index;
    ran->of = card;
    ran->runs = runsOf(card->card.show, card->rigs, conditions, stop);
    if (!ran->runs) return nullptr;
    return ran;
  });
}

void DeckRun::play() {
  const auto card = shown(m_index);
  if (!card || !card->runs || !card->runs->any() || editing() || (m_still && !m_slow)) return;
  m_time_s = 0;
  m_clock.start();
  m_timer.start();
}

void DeckRun::advance(double wall_ms) {
  const auto card = shown(m_index);
  if (!card || !card->runs || m_time_s < 0) return;
  const bool cast = card->card.show == CardShow::cast;
  const double speed = cast ? (m_slow ? kSlowCast : kCastSpeed) : (m_slow ? kSlowSwing : kSwingSpeed);
  m_time_s += wall_ms * 1e-3 * speed;
  if (m_time_s >= card->runs->length_s()) {
    m_time_s = -1;
    m_timer.stop();
  }
  Q_EMIT changed();
}

}  // namespace grainwise::ui
