// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/deck_document.h"


#include "core/io/deck_file.h"
#include "ui/document/whole_file.h"

namespace grainwise::ui {

/// Swaps two snapshots of the deck; merges within one gesture and vanishes when nothing changed.
class ReplaceDeck : public QUndoCommand {
 public:
  ReplaceDeck(DeckDocument* document, const QString& step, std::shared_ptr<const Deck> after,
              const QString& gesture)
      : QUndoCommand(step),
        m_document(document),
        m_before(document->m_deck),
        m_after(std::move(after)),
        m_gesture(gesture) {}

  void undo() override { m_document->setDeck(m_before); }
  void redo() override { m_document->setDeck(m_after); }
  [[nodiscard]] int id() const override { return m_gesture.isEmpty() ? -1 : 2; }
  bool mergeWith(const QUndoCommand* other) override {
    const auto* next = static_cast<const ReplaceDeck*>(other);
    if (next->m_gesture != m_gesture) return false;
    m_after = next->m_after;
    setObsolete(*m_after == *m_before);
    return true;
  }

 private:
  DeckDocument* m_document;
  std::shared_ptr<const Deck> m_before;
  std::shared_ptr<const Deck> m_after;
  QString m_gesture;
};

DeckDocument::DeckDocument(QObject* parent) : QObject(parent), m_deck(std::make_shared<const Deck>()) {
  connect(&m_undo, &QUndoStack::cleanChanged, this, &DeckDocument::fileChanged);
}

void DeckDocument::apply(const QString& step, const Deck& after, const QString& gesture) {
  if (after == *m_deck) return;
  m_undo.push(new ReplaceDeck(this, step, std::make_shared<const Deck>(after), gesture));
}

void DeckDocument::setDeck(std::shared_ptr<const Deck> deck) {
  m_deck = std::move(deck);
  Q_EMIT deckChanged();
}

void DeckDocument::restart(const Deck& deck, const QString& path) {
  m_path = path;
  m_undo.clear();
  setDeck(std::make_shared<const Deck>(deck));
  Q_EMIT fileChanged();
}

void DeckDocument::startFrom(const Deck& deck) { restart(deck, {}); }

Problems DeckDocument::open(const QString& path) {
  const auto deck = loadDeck(path.toStdString());
  if (!deck) return deck.error();
  restart(*deck, path);
  return {};
}

Problems DeckDocument::saveAs(const QString& path) {
  const auto failed = [&](const QString& why) {
    return Problems{{path.toStdString(), 0, "", tr("not saved: %1").arg(why).toStdString(),
                     tr("the file that was there is kept; make room, or save elsewhere").toStdString()}};
  };
  const std::string text = writeDeck(*m_deck);
  if (const auto back = readDeck(text, path.toStdString()); !back) {  // it could never be opened again
    Problem why = back.error().front();
    why.what = Problem::tr("not saved: %1").arg(why.what);
    return {why};
  }
  const QString why = writeWhole(path, QByteArray::fromStdString(text));
  if (!why.isEmpty()) return failed(why);
  m_path = path;
  m_undo.setClean();
  Q_EMIT fileChanged();
  return {};
}

std::filesystem::path DeckDocument::folder() const {
  return m_path.isEmpty() ? std::filesystem::path()
                          : std::filesystem::path(m_path.toStdString()).parent_path();
}

}  // namespace grainwise::ui
