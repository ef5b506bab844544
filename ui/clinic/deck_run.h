// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <filesystem>
#include <memory>
#include <vector>

#include "core/model/deck.h"
#include "ui/clinic/card_page.h"

namespace grainwise::ui {

class HeavyRunner;

/// A deck as it is being shown: which card, whether its answer stands, what is hidden, what moves. The
/// projector's window and the teacher's view both follow it.
class DeckRun : public QObject {
  Q_OBJECT
 public:
  DeckRun(const Deck& deck, const std::filesystem::path& folder, const Conditions& conditions = {},
          QObject* parent = nullptr);
  ~DeckRun() override;

  [[nodiscard]] int count() const { return int(m_deck.cards.size()); }
  [[nodiscard]] int index() const { return m_index; }
  [[nodiscard]] const Deck& deck() const { return m_deck; }
  /// The card that stands, and any other, ready to be drawn.
  [[nodiscard]] std::shared_ptr<const ShownCard> shown() { return shown(m_index); }
  [[nodiscard]] std::shared_ptr<const ShownCard> shown(int index);
  [[nodiscard]] CardState state() const;
  [[nodiscard]] bool answered() const { return m_answered; }
  [[nodiscard]] bool blank() const { return m_blank; }
  [[nodiscard]] bool numbersHidden() const { return m_hidden; }
  [[nodiscard]] bool slow() const { return m_slow; }

  /// First the answer, then the next card. A blanked screen comes back first.
  void next();
  /// The other way round.
  void back();
  void goTo(int index);
  /// Whether `next` and `back` have somewhere to go.
  [[nodiscard]] bool canGoOn() const;
  [[nodiscard]] bool canGoBack() const;
  void toggleBlank();
  void toggleNumbers();
  /// Plays what moves on the card, slowly and at its own speed in turn.
  void toggleSlow();

  /// Judges by other limits from here on; what stands is drawn anew.
  void setRules(const Rules& rules);

  /// Nothing plays by itself, only when slow motion is asked for.
  void setStill(bool still) { m_still = still; }

  /// The card's rigs while they are being changed live, as they stand; empty puts the card's own back.
  void setEdited(std::vector<Rig> rigs);
  /// One of them changed: 0, or 1 for B.
  void setEdited(std::size_t side, const Rig& rig);
  [[nodiscard]] bool editing() const { return !m_edited.empty(); }

  /// Moves the picture on by wall-clock time, as the timer does; for tests.
  void advance(double wall_ms);
  [[nodiscard]] bool playing() const { return m_timer.isActive(); }
  /// Whether a run for the card that stands is still to come.
  [[nodiscard]] bool waiting() const;

 Q_SIGNALS:
  void changed();

 private:
  void arrive(int index, bool answered);
  void startRuns();
  void play();

  Deck m_deck;
  std::filesystem::path m_folder;
  Conditions m_conditions;
  std::vector<std::shared_ptr<const ShownCard>> m_cards;
  int m_index = 0;
  bool m_answered = false;
  bool m_blank = false;
  bool m_hidden = false;
  bool m_slow = false;
  bool m_still = false;
  double m_time_s = -1;
  std::vector<Rig> m_edited;
  HeavyRunner* m_runner;
  QTimer m_timer;
  QElapsedTimer m_clock;
};

}  // namespace grainwise::ui
