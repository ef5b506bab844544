// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/compare_host.h"

#include <QAction>
#include <QFileInfo>
#include <QUndoGroup>

#include "ui/compare/compare_face.h"
#include "ui/document/autosave.h"
#include "ui/document/own_store.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/strip/strip_view.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {
const QString kKey = QStringLiteral("compare");
}

CompareHost::CompareHost(MainWindow* window) : QObject(window), m_window(window) {
  window->faces()->add(kKey, tr("Compare"), [this](QWidget* parent) { return make(parent); });
  connect(window->faces(), &Faces::opened, this, &CompareHost::follow);
  connectActions();
}

bool CompareHost::shown() const { return m_window->faces()->current() == kKey; }

RigDocument* CompareHost::own() const {
  if (m_face == nullptr || !shown()) return nullptr;
  RigDocument* document = m_face->current()->document();
  return document == m_face->ownDocument() ? document : nullptr;
}

QWidget* CompareHost::make(QWidget* parent) {
  OwnStore* own = m_window->own();
  m_face = new CompareFace(m_window->look(), m_window->document(), m_window->feed(), m_window->pools(), own->all(),
                           parent);
  connect(own, &OwnStore::ownChanged, m_face, [this, own] { m_face->setShelf(own->all()); });
  m_window->undoGroup()->addStack(m_face->ownDocument()->undoStack());
  connect(m_face, &CompareFace::currentChanged, this, &CompareHost::follow);
  connect(m_face, &CompareFace::openWanted, m_window->actionSet()->open, &QAction::trigger);
  connect(m_face, &CompareFace::saveWanted, m_window->actionSet()->save, &QAction::trigger);
  (new Autosave(m_face->ownDocument(), recoveryFolder(), m_face))->keepPaceOf(m_window->preferences());
  connect(m_face->ownDocument(), &RigDocument::rigChanged, m_window, &MainWindow::refreshTitle);
  connect(m_face->ownDocument(), &RigDocument::fileChanged, m_window, &MainWindow::refreshTitle);
  return m_face;
}

/// Undo, and the words on its button, belong to the rig that was touched last.
void CompareHost::follow() {
  Actions& a = *m_window->actionSet();
  const bool here = shown() && m_face != nullptr;
  RigDocument* document = here ? m_face->current()->document() : m_window->document();
  if (here || m_window->faces()->current() == QStringLiteral("bench")) {
    m_window->undoGroup()->setActiveStack(document->undoStack());
  }
  m_window->showUndoOf(here ? m_face->current()->letterWord() : QString());
  a.swapRigs->setEnabled(here);
  a.alignFly->setEnabled(here);
  a.oneWater->setEnabled(here);
  a.copyAcross->setEnabled(here);
  m_window->refreshTitle();
}

void CompareHost::connectActions() {
  Actions& a = *m_window->actionSet();
  const auto on = [this](QAction* action, auto&& what) {
    connect(action, &QAction::triggered, this, [this, what] {
      if (m_face != nullptr && shown()) what();
    });
  };
  on(a.swapRigs, [this] { m_face->swap(); });
  on(a.copyAcross, [this] { m_face->copyToOther(m_face->current()); });
  on(a.alignFly, [this] { m_face->toggleAlign(); });
  on(a.oneWater, [this] { m_face->toggleOneWater(); });
  on(a.shelf, [this] { m_face->openShelf(); });
  on(a.part, [this] { m_face->openPart(); });
  on(a.cast, [this] { m_face->openCast(); });
  on(a.river, [this] { m_face->openRiver(); });
  on(a.editPart, [this] { m_face->openPart(); });
  on(a.rod, [this] { m_face->openRod(false); });
  on(a.fromRod, [this] { m_face->openRod(true); });
  on(a.water, [this] { m_face->openWater(); });
  on(a.rename, [this] { m_face->openName(); });
  on(a.moveToRod, [this] { m_face->current()->strip()->moveSelected(-1); });
  on(a.moveToFly, [this] { m_face->current()->strip()->moveSelected(1); });
  on(a.duplicate, [this] { m_face->current()->strip()->duplicateSelected(); });
  on(a.remove, [this] { m_face->current()->strip()->removeSelected(); });
  follow();
}

bool CompareHost::openBeside(const QString& path) {
  m_window->faces()->open(kKey);
  return openOwn(path);
}

bool CompareHost::openOwn(const QString& path) {
  RigDocument* document = m_face->ownDocument();
  // The water of a file is what the file says: it is not made the other's by opening it.
  m_face->setOneWater(false);
  const Problems problems = document->open(path);
  if (!problems.empty()) {
    m_face->showProblems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), problems);
    return false;
  }
  m_face->setOneWater(document->rig().water == m_window->document()->rig().water);
  m_face->openDifferences();
  return true;
}

void CompareHost::startOwn(const Rig& rig) {
  if (!mayLeave()) return;
  m_face->setOneWater(false);
  m_face->ownDocument()->startFrom(rig);
  m_face->setOneWater(rig.water == m_window->document()->rig().water);
}

bool CompareHost::saveOwn(bool elsewhere) {
  RigDocument* document = m_face->ownDocument();
  QString path = document->path();
  if (elsewhere || path.isEmpty()) path = m_window->askSavePath();
  if (path.isEmpty()) return false;
  if (!path.endsWith(QLatin1String(".json"))) path += QStringLiteral(".rig.json");
  const Problems problems = document->saveAs(path);
  if (problems.empty()) return true;
  m_face->showProblems(tr("%1 was not saved").arg(QFileInfo(path).fileName()), problems);
  return false;
}

bool CompareHost::mayLeave() {
  if (m_face == nullptr || !m_face->ownDocument()->isModified()) return true;
  m_window->faces()->open(kKey);
  m_face->setCurrent(m_face->side(m_face->side(CompareFace::Letter::a)->document() ==
                                          m_face->ownDocument()
                                      ? CompareFace::Letter::a
                                      : CompareFace::Letter::b));
  switch (m_window->askUnsaved()) {
    case MainWindow::Unsaved::save:
      return saveOwn(false);
    case MainWindow::Unsaved::discard:
      return true;
    case MainWindow::Unsaved::cancel:
      break;
  }
  return false;
}

}  // namespace grainwise::ui
