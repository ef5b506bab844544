// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <filesystem>
#include <memory>

#include "core/model/deck.h"
#include "core/model/problem.h"

namespace grainwise::ui {

/// The open deck: a snapshot, its undo stack, its file. Everything that changes it goes through `apply`.
class DeckDocument : public QObject {
  Q_OBJECT
 public:
  explicit DeckDocument(QObject* parent = nullptr);

  [[nodiscard]] const Deck& deck() const { return *m_deck; }
  /// Makes `after` the deck, as one named step; nothing happens when it equals the one that stands.
  /// Steps in a row with the same non-empty `gesture` become one.
  void apply(const QString& step, const Deck& after, const QString& gesture = {});
  [[nodiscard]] QUndoStack* undoStack() { return &m_undo; }

  /// Reads a deck file; on problems the open deck stays as it was and they are returned.
  [[nodiscard]] Problems open(const QString& path);
  /// Writes the deck whole or not at all.
  [[nodiscard]] Problems saveAs(const QString& path);
  void startFrom(const Deck& deck);

  [[nodiscard]] QString path() const { return m_path; }
  /// Where rigs that cards name are looked for; empty for a deck that has no file yet.
  [[nodiscard]] std::filesystem::path folder() const;
  [[nodiscard]] bool isModified() const { return !m_undo.isClean(); }

 Q_SIGNALS:
  void deckChanged();
  void fileChanged();

 private:
  friend class ReplaceDeck;
  void setDeck(std::shared_ptr<const Deck> deck);
  void restart(const Deck& deck, const QString& path);

  std::shared_ptr<const Deck> m_deck;
  QUndoStack m_undo;
  QString m_path;
};

}  // namespace grainwise::ui
