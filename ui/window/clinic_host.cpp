// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/clinic_host.h"

#include <QAction>
#include <QFile>
#include <QFileInfo>
#include <QUndoGroup>

#include "core/io/deck_file.h"
#include "core/io/rig_file.h"
#include "core/model/deck_edits.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/clinic/edit_panel.h"
#include "ui/compare/compare_face.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/print/deck_pages.h"
#include "ui/print/print_preview.h"
#include "ui/text/sample_words.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {
const QString kKey = QStringLiteral("clinic");
}

ClinicHost::ClinicHost(MainWindow* window) : QObject(window), m_window(window) {
  window->faces()->add(kKey, tr("Clinic"), [this](QWidget* parent) { return make(parent); });
  connect(window->faces(), &Faces::opened, this, &ClinicHost::follow);
  Actions& a = *window->actionSet();
  m_showDeck = a.showDeck->shortcut();
  m_showFromHere = a.showFromHere->shortcut();
  connect(a.takeCard, &QAction::triggered, this, &ClinicHost::takeCard);
  connect(a.showDeck, &QAction::triggered, this, [this] { m_face->startShow(0); });
  connect(a.showFromHere, &QAction::triggered, this, [this] { m_face->startShow(std::max(0, m_face->current())); });
  connect(a.printFour, &QAction::triggered, this, [this] { print(true); });
  preview = [this](const std::shared_ptr<const Pages>& pages) { previewPages(pages, m_window); };
  follow();
}

bool ClinicHost::shown() const { return m_face != nullptr && m_window->faces()->current() == kKey; }

QWidget* ClinicHost::make(QWidget* parent) {
  OwnStore* own = m_window->own();
  m_face = new ClinicFace(m_window->look(), own->all(), parent, m_window->preferences());
  connect(own, &OwnStore::ownChanged, m_face, [this, own] { m_face->editPanel()->setShelf(own->all()); });
  m_face->benchRig = [this] { return std::optional(m_window->document()->rig()); };
  m_face->benchPools = [this] { return m_window->pools()->pools().pools; };
  m_face->printDeck = [this](bool four) { print(four); };
  m_window->undoGroup()->addStack(m_face->document()->undoStack());
  connect(m_face->document(), &DeckDocument::deckChanged, m_window, &MainWindow::refreshTitle);
  connect(m_face->document(), &DeckDocument::fileChanged, m_window, &MainWindow::refreshTitle);
  return m_face;
}

/// Undo belongs to the deck while the Clinic is shown; so do the keys that start a show: F5, which
/// remotes send, opens the river elsewhere, and a key has one meaning at a time.
void ClinicHost::follow() {
  Actions& a = *m_window->actionSet();
  const bool here = shown();
  a.showDeck->setEnabled(here);
  a.showFromHere->setEnabled(here);
  a.printFour->setEnabled(here);
  const QKeySequence start(Qt::Key_F5), fromHere(Qt::SHIFT | Qt::Key_F5);
  a.river->setShortcut(here ? QKeySequence() : start);
  a.showDeck->setShortcuts(here ? QList{start, m_showDeck} : QList{m_showDeck});
  a.showFromHere->setShortcuts(here ? QList{fromHere, m_showFromHere} : QList{m_showFromHere});
  if (here) m_window->undoGroup()->setActiveStack(m_face->document()->undoStack());
  m_window->refreshTitle();
}

bool ClinicHost::openDeck(const QString& path) {
  m_window->faces()->open(kKey);
  return m_face->mayLeave() && m_face->openDeck(path).empty();
}

bool ClinicHost::startFrom(const QString& carried) {
  const auto textOf = [](const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
  };
  auto deck = readDeck(textOf(carried));
  if (!deck) return false;
  for (Card& card : deck->cards) {
    for (std::optional<CardRig>* rig : {&card.rig, &card.rigB}) {
      const auto* name = *rig ? std::get_if<std::string>(&**rig) : nullptr;
      if (name == nullptr) continue;
      if (const auto read = readRig(textOf(QStringLiteral(":/sample-rigs/") + QString::fromStdString(*name)))) {
        *rig = spokenSample(*read);
      }
    }
  }
  m_window->faces()->open(kKey);
  if (!m_face->mayLeave()) return false;
  m_face->document()->startFrom(*deck);
  m_face->choose(0);
  return true;
}

bool ClinicHost::mayLeave() {
  if (!m_face) return true;
  m_face->endShow();
  return m_face->mayLeave();
}

Card ClinicHost::cardOnScreen() const {
  const auto showOf = [](const Drawer* drawer, CardShow otherwise) {
    const QString page = drawer->current();
    return page == QLatin1String("river")  ? CardShow::river
           : page == QLatin1String("cast") ? CardShow::cast
                                           : otherwise;
  };
  const CompareHost* compare = m_window->compare();
  if (compare->shown() && compare->face()) {
    const CompareFace& face = *compare->face();
    const auto rig = [&](CompareFace::Letter letter) { return face.side(letter)->document()->rig(); };
    Card card = deck_edits::cardOf(rig(CompareFace::Letter::a), showOf(face.drawer(), CardShow::compare));
    card.rigB = rig(CompareFace::Letter::b);
    return card;
  }
  return deck_edits::cardOf(m_window->document()->rig(),
                            showOf(m_window->bench()->drawer(), CardShow::strip));
}

void ClinicHost::takeCard() {
  const Card card = cardOnScreen();
  m_window->faces()->open(kKey);
  m_face->addCard(card);
}

void ClinicHost::print(bool fourAPage) {
  const auto form = fourAPage ? DeckPages::Form::fourAPage : DeckPages::Form::cardAPage;
  preview(std::make_shared<DeckPages>(m_face->document()->deck(), m_face->document()->folder(), form,
                                      m_window->look()->units(), m_face->conditions()));
}

}  // namespace grainwise::ui
