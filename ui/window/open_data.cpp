// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFileInfo>

#include "core/bench/own_shelf.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/window/bench_face.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

/// Files that are neither a rig nor a deck: what they hold goes where the person keeps such things, and can be
/// taken back there.
namespace grainwise::ui {

bool MainWindow::openData(const QString& path, FileKind kind) {
  m_faces->open(QStringLiteral("bench"));
  const QString file = QFileInfo(path).fileName();
  const std::string name = path.toStdString();
  const auto refused = [&](const Problems& problems) {
    m_bench->showProblems(tr("%1 was not opened").arg(file), problems);
    return false;
  };
  const auto openTask = [this](const char* task) {
    m_bench->openMake();
    m_bench->findChild<MakePanel*>()->openTask(QLatin1String(task));
  };
  QString said;
  if (kind == FileKind::pools) {
    if (const Problems problems = m_pools->open(path); !problems.empty()) return refused(problems);
    m_bench->openPools();
    said = tr("The pools of %1 are there now; Undo brings yours back.").arg(file);
  } else if (kind == FileKind::spools) {
    const auto spools = loadSpools(name);
    if (!spools) return refused(spools.error());
    m_own->setSpools(*spools);
    openTask("makeSpools");
    said = tr("The spools of %1 are there now; Undo brings yours back.").arg(file);
  } else {
    const auto shelf = loadShelf(name);
    if (!shelf) return refused(shelf.error());
    const auto result = ownShelf::imported(m_own->own(), *shelf, m_own->generic());
    m_own->setOwn(result.shelf);
    openTask("makeParts");
    said = tr("Of %1 added to your parts: %2; there already: %3. Undo takes them off.")
               .arg(file)
               .arg(result.added)
               .arg(result.same);
  }
  m_settings.addRecent(path);
  refreshRecent();
  m_bench->drawer()->say(said);
  return true;
}

}  // namespace grainwise::ui
