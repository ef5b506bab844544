// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDropEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPointer>
#include <QScreen>
#include <QUndoGroup>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/charts/way_out_files.h"
#include "ui/clinic/clinic_face.h"
#include "ui/compare/compare_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/document/carried_shelf.h"
#include "ui/document/file_names.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/panels/chooser_panel.h"
#include "ui/panels/drawer.h"
#include "ui/panels/fixes_panel.h"
#include "ui/panels/wallet_window.h"
#include "ui/print/handout.h"
#include "ui/print/paper_files.h"
#include "ui/print/print_preview.h"
#include "ui/print/wallet_pages.h"
#include "ui/strip/strip_view.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/plain_words.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/help_window.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/notice_bar.h"
#include "ui/window/out_menu.h"
#include "ui/window/remembered_place.h"
#include "ui/window/samples_menu.h"
#include "ui/window/settings_desk.h"
#include "ui/window/settings_window.h"
#include "ui/window/top_bar.h"
#include "ui/window/whats_this.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

constexpr auto kFilter = QT_TRANSLATE_NOOP(
    "grainwise::ui::MainWindow",
    "Rigs, decks, shelves, pools, spools (*.rig.json *.deck.json *.shelf.json *.pools.json *.spools.json);;"
    "All files (*)");
constexpr auto kRigFilter = QT_TRANSLATE_NOOP("grainwise::ui::MainWindow", "Rigs (*.rig.json);;All files (*)");
constexpr auto kEnding = ".rig.json";
/// What a desktop puts around a window, at the most; no one says so before it is shown.
constexpr int kFrameWidth = 8;
constexpr int kFrameHeight = 48;
constexpr QSize kLeastAtFirst{1024, 600};

MainWindow::Unsaved askByDialog(QWidget* parent, const QString& name) {
  QMessageBox box(QMessageBox::Question, MainWindow::tr("Unsaved changes"),
                  MainWindow::tr("Save the changes to \"%1\" first?").arg(name),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, parent);
  box.setTextFormat(Qt::PlainText);
  switch (box.exec()) {
    case QMessageBox::Save:
      return MainWindow::Unsaved::save;
    case QMessageBox::Discard:
      return MainWindow::Unsaved::discard;
    default:
      return MainWindow::Unsaved::cancel;
  }
}

/// The ending is part of the question: the dialog itself asks before a file of that name is replaced.
QString askWhereToSave(QWidget* parent, const QString& path) {
  const QFileInfo file(path);
  QFileDialog dialog(parent, MainWindow::tr("Save the rig"), file.absolutePath(), MainWindow::tr(kRigFilter));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(QLatin1String(kEnding + 1));
  if (!file.fileName().isEmpty()) dialog.selectFile(file.fileName());
  return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

/// The rig of the bench, or the one of Compare that was touched last.
const RigDocument& shownDocument(MainWindow& window) {
  const RigDocument* own = window.compare() != nullptr ? window.compare()->own() : nullptr;
  return own != nullptr ? *own : *window.document();
}

/// The one or two local files of a drop; none for more, or for something that is not on this machine.
QStringList droppedFiles(const QMimeData* data) {
  QStringList files;
  for (const QUrl& url : data->urls()) files << url.toLocalFile();
  if (files.size() > 2 || files.contains(QString())) files.clear();
  return files;
}

/// Also for the window itself: its pages take theirs from it, and it may be older than the new type.
void setType(MainWindow& window, const QFont& type) {
  QApplication::setFont(type);
  window.setFont(type);
}

}  // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {
  setObjectName(QStringLiteral("workbench"));
  setAcceptDrops(true);
  PlainWords::keep();
  m_document = new RigDocument(this);
  m_autosave = new Autosave(m_document, recoveryFolder(), this);
  m_preferences = new Preferences(this);
  m_feed = new AnalysisFeed(m_document, this);
  m_feed->follow(m_preferences);
  m_pools = new PoolBook(this);
  m_own = new OwnStore(carriedShelf(), {}, this);
  m_desk = new SettingsDesk(&m_settings, &m_look, m_preferences, m_own, this);
  setType(*this, m_look.font(15));  // now, or the first words are set in a type that nothing uses
  m_autosave->keepPaceOf(m_preferences);
  m_undo = new QUndoGroup(this);
  m_undo->addStack(m_document->undoStack());
  m_undo->setActiveStack(m_document->undoStack());
  m_actions = new Actions(&m_look, m_undo, this);

  auto* whole = new QWidget(this);
  auto* column = new QVBoxLayout(whole);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  m_top = new TopBar(&m_look, m_document, m_actions->menu(), m_actions->unitsMenu(), whole);
  m_top->addActionButton(m_actions->undo, tr("Undo"));
  m_top->addActionButton(m_actions->redo, tr("Redo"));
  m_top->addActionButton(m_actions->smaller, tr("A–"));  // a dash: the first type has no minus
  m_top->addActionButton(m_actions->larger, tr("A+"));
  column->addWidget(m_top);
  m_notice = new NoticeBar(&m_look, whole);
  column->addWidget(m_notice);
  m_faces = new Faces(m_top, m_actions, whole);
  m_faces->add(QStringLiteral("bench"), tr("Bench"), [this](QWidget* face) {
    m_bench = new BenchFace(&m_look, m_document, m_feed, m_pools, m_own->all(), face);
    m_bench->addMake(m_own, m_preferences);
    return m_bench;
  });
  m_compare = new CompareHost(this);
  m_clinic = new ClinicHost(this);
  column->addWidget(m_faces, 1);
  setCentralWidget(whole);

  askOpenPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Open a rig"), m_document->path(), tr(kFilter));
  };
  askSavePath = [this] {
    const RigDocument& document = shownDocument(*this);
    return askWhereToSave(this, suggestedFile(document.path(), document.rig().name, QLatin1String(kEnding),
                                              m_settings.lastFile()));
  };
  askExportPath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Handout into a file"), QString(),
                                        tr("Paper or picture (*.pdf *.png *.svg)"));
  };
  askUnsaved = [this] {
    return askByDialog(this, QString::fromStdString(m_document->rig().name));
  };
  connectActions();
  connect(&m_look, &Look::changed, this, &MainWindow::applyLook);
  connect(m_document, &RigDocument::rigChanged, this, &MainWindow::refreshTitle);
  connect(m_document, &RigDocument::fileChanged, this, &MainWindow::refreshTitle);
  connect(m_document, &RigDocument::diskChanged, this, &MainWindow::tellOfDisk);
  connect(m_document, &RigDocument::fileChanged, this, &MainWindow::tellOfDisk);
  connect(m_autosave, &Autosave::failed, this, [this](const QString& why) {
    m_bench->drawer()->say(tr("No copy of unsaved work could be kept: %1").arg(why));
  });
  applyLook();
  refreshTitle();
  refreshRecent();
  if (!m_own->problems().empty()) {
    m_bench->showProblems(tr("Own parts or spools that could not be read; the file stays as it is"),
                          m_own->problems());
  }
  // The first time; with the frame that the desktop puts around it on the screen whole.
  const QSize room = screen()->availableSize() - QSize(kFrameWidth, kFrameHeight);
  resize(QSize(1366, 768).boundedTo(room.expandedTo(kLeastAtFirst)));
  restoreGeometry(m_settings.geometry());
}

/// Pages and windows go while the look and the rig are still there: some speak or draw once more as they go.
MainWindow::~MainWindow() {
  QList<QPointer<QWidget>> inside;
  for (QWidget* child : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) inside.append(child);
  for (const QPointer<QWidget>& child : std::as_const(inside)) delete child;
}

void MainWindow::connectActions() {
  Actions& a = *m_actions;
  const auto on = [this](QAction* action, auto&& what) {
    connect(action, &QAction::triggered, this, std::forward<decltype(what)>(what));
  };
  const auto onBench = [&](QAction* action, auto&& what) {
    on(action, [this, what] {
      if (m_faces->current() == QLatin1String("bench")) what();
    });
  };
  // What only the bench has is opened there.
  const auto toBench = [&](QAction* action, auto&& what) {
    on(action, [this, what] {
      m_faces->open(QStringLiteral("bench"));
      what();
    });
  };
  StripView* strip = m_bench->strip();
  toBench(a.make, [this] { m_bench->openMake(); });
  toBench(a.weigh, [this] { m_bench->weigh(); });
  on(a.newRig, [this] { startHere(rigFrom(m_preferences->newRig())); });
  onBench(a.fromRod, [this] { m_bench->openRod(true); });
  on(a.open, [this] {
    const QString path = askOpenPath();
    if (!path.isEmpty()) openHere(path);
  });
  on(a.save, [this] {
    if (m_clinic->shown()) return void(m_clinic->face()->save());
    m_compare->own() != nullptr ? m_compare->saveOwn(false) : save();
  });
  on(a.saveAs, [this] {
    if (m_clinic->shown()) return void(m_clinic->face()->saveAs());
    m_compare->own() != nullptr ? m_compare->saveOwn(true) : saveAs();
  });
  on(a.print, [this] { m_clinic->shown() ? m_clinic->print() : print(); });
  on(a.exportFile, [this] { exportHandout(); });
  on(a.quit, [this] { close(); });
  onBench(a.editPart, [this] { m_bench->openPart(); });
  onBench(a.moveToRod, [strip] { strip->moveSelected(-1); });
  onBench(a.moveToFly, [strip] { strip->moveSelected(1); });
  onBench(a.duplicate, [strip] { strip->duplicateSelected(); });
  onBench(a.remove, [strip] { strip->removeSelected(); });
  onBench(a.shelf, [this] { m_bench->openShelf(); });
  onBench(a.part, [this] { m_bench->openPart(); });
  toBench(a.tips, [this] { m_bench->openTips(); });
  toBench(a.fixes, [this] { m_bench->openFixes(); });
  toBench(a.pools, [this] { m_bench->openPools(); });
  on(a.wallet, [this] { openWallet(); });
  connect(m_pools, &PoolBook::notStored, m_bench->drawer(), &Drawer::say);
  onBench(a.cast, [this] { m_bench->openCast(); });
  onBench(a.river, [this] { m_bench->openRiver(); });
  toBench(a.depths, [this] { m_bench->openDepths(); });
  onBench(a.rod, [this] { m_bench->openRod(false); });
  onBench(a.water, [this] { m_bench->openWater(); });
  onBench(a.rename, [this] { m_bench->openName(); });
  connect(&a, &Actions::languageChosen, m_desk, &SettingsDesk::setLanguage);
  connect(m_desk, &SettingsDesk::languageChanged, this, [this](const QString& code) {
    m_actions->showLanguage(code);
    m_notice->tell(QStringLiteral("language"),
                   tr("Grainwise speaks the chosen language from its next start."), {});
  });
  on(a.about, [this] { about(); });
  on(a.help, [this] { showHelp(); });
  on(a.settings, [this] { showSettings(); });
  new SamplesMenu(a.samplesMenu(), this);
  new OutMenu(m_actions, this);
  new WhatsThis(m_actions, this);
  new FocusRing(&m_look, this);
  connect(m_top, &TopBar::nameRequested, m_bench, &BenchFace::openName);
  connect(m_top, &TopBar::rodRequested, m_bench, [this] { m_bench->openRod(false); });
  connect(m_top, &TopBar::waterRequested, m_bench, &BenchFace::openWater);
}

void MainWindow::applyLook() {
  m_system.wear();
  setType(*this, m_look.font(15));
  for (QMenu* menu : findChildren<QMenu*>()) menu->setFont(m_look.font(15));
}

void MainWindow::refreshTitle() {
  if (m_clinic != nullptr && m_clinic->shown()) {
    const DeckDocument& deck = *m_clinic->face()->document();
    return entitle(shownName(deck.deck().title, deck.path(), tr("unnamed deck")), deck.path(), deck.isModified());
  }
  const RigDocument& document = shownDocument(*this);
  entitle(shownName(document.rig().name, document.path(), tr("unnamed rig")), document.path(), document.isModified());
}

void MainWindow::entitle(const QString& name, const QString& path, bool modified) {
  const QString file = path.isEmpty() ? tr("not saved yet") : QFileInfo(path).fileName();
  setWindowTitle(tr("%1[*] (%2) - Grainwise").arg(name, file));
  setWindowModified(modified);
}

void MainWindow::showUndoOf(const QString& letter) {
  const bool one = letter.isEmpty();
  // Name, rod and water are the bench's: a deck has neither.
  m_top->setSentencesShown(one && m_faces->current() == QLatin1String("bench"));
  m_top->setWords(m_actions->undo, one ? tr("Undo") : tr("Undo in %1").arg(letter));
  m_top->setWords(m_actions->redo, one ? tr("Redo") : tr("Redo in %1").arg(letter));
}

void MainWindow::openHere(const QString& path) {
  if (kindOf(path) != FileKind::rig) return void(openFile(path));
  // A rig comes to where rigs are.
  if (m_clinic->shown()) m_faces->open(QStringLiteral("bench"));
  if (m_compare->own() == nullptr) {
    if (mayLeave()) openFile(path);
  } else if (m_compare->mayLeave() && m_compare->openOwn(path)) {
    m_settings.addRecent(path);
    refreshRecent();
  }
}

void MainWindow::showProblems(const QString& title, const Problems& problems) {
  if (m_compare->shown()) return m_compare->face()->showProblems(title, problems);
  m_bench->showProblems(title, problems);
}

void MainWindow::hear(const QString& words) {
  if (m_clinic->shown()) return m_clinic->face()->say(words);
  (m_compare->shown() ? m_compare->face()->drawer() : m_bench->drawer())->say(words);
}

bool MainWindow::openBeside(const QString& path) {
  if (!m_compare->mayLeave() || !m_compare->openBeside(path)) return false;
  m_settings.addRecent(path);
  refreshRecent();
  return true;
}

void MainWindow::refreshRecent() {
  QMenu* menu = m_actions->recentMenu();
  menu->clear();
  const QStringList paths = m_settings.recentFiles();
  for (const QString& path : paths) {
    QAction* entry = menu->addAction(PlainWords::inMenu(QFileInfo(path).fileName()));
    entry->setToolTip(PlainWords::shown(path));
    connect(entry, &QAction::triggered, this, [this, path] { openHere(path); });
  }
  menu->setEnabled(!paths.isEmpty());
  menu->setToolTipsVisible(true);
  if (paths.isEmpty()) return;
  menu->addSeparator();
  connect(menu->addAction(tr("Clear the list")), &QAction::triggered, this, [this] {
    m_settings.clearRecent();
    refreshRecent();
  });
}

bool MainWindow::openFile(const QString& path) {
  const FileKind kind = kindOf(path);
  if (kind != FileKind::rig && kind != FileKind::deck) return openData(path, kind);
  if (kind == FileKind::deck) {
    const bool opened = m_clinic->openDeck(path);
    if (opened) m_settings.addRecent(path);
    refreshRecent();
    return opened;
  }
  const Problems problems = m_document->open(path);
  if (!problems.empty()) {
    showProblems(tr("%1 was not opened").arg(QFileInfo(path).fileName()), problems);
    return false;
  }
  rememberStroke();
  m_settings.addRecent(path);
  m_settings.setLastFile(QFileInfo(path).absoluteFilePath());
  refreshRecent();
  return true;
}

void MainWindow::startFrom(const Rig& rig) {
  m_document->startFrom(rig);
  rememberStroke();
}

void MainWindow::startHere(const Rig& rig) {
  if (m_clinic->shown()) m_faces->open(QStringLiteral("bench"));
  if (m_compare->own() != nullptr) return m_compare->startOwn(rig);
  if (mayLeave()) startFrom(rig);
}

void MainWindow::rememberStroke() {
  Conditions conditions = m_feed->conditions();
  conditions.strokeReference.reset();
  const Rig& rig = m_document->rig();
  const StrokeBasis basis = strokeBasis(rig, massProfile(rig));
  if (basis.mass > Grains(0)) conditions.strokeReference = basis;
  m_feed->setConditions(conditions);
}

bool MainWindow::save() {
  return m_document->path().isEmpty() ? saveAs() : saveTo(m_document->path());
}

bool MainWindow::saveAs() {
  QString path = askSavePath();
  if (path.isEmpty()) return false;
  if (!path.endsWith(QLatin1String(".json"))) {
    path += QLatin1String(kEnding);
    if (QFileInfo::exists(path)) {  // nobody was asked about this name
      m_bench->drawer()->say(tr("%1 is there already; choose it by its full name, or another one.")
                                 .arg(QFileInfo(path).fileName()));
      return false;
    }
  }
  return saveTo(path);
}

bool MainWindow::saveTo(const QString& path) {
  const Problems problems = m_document->saveAs(path);
  if (!problems.empty()) {
    showProblems(tr("%1 was not saved").arg(QFileInfo(path).fileName()), problems);
    return false;
  }
  m_settings.addRecent(path);
  m_settings.setLastFile(QFileInfo(path).absoluteFilePath());
  refreshRecent();
  return true;
}

void MainWindow::offerRecovery() {
  const auto left = m_recovery.next();
  if (!left) return;
  const QString name = QString::fromStdString(left->rig.name);
  m_notice->tell(QStringLiteral("recovery"),
                 tr("Unsaved work on \"%1\" of %2 was kept.")
                     .arg(name.isEmpty() ? tr("unnamed rig") : name,
                          QLocale().toString(left->when, QLocale::ShortFormat)),
                 {{tr("Open it"), [this, left = *left] { recover(left); }},
                  {tr("Throw it away"), [this] {
                     m_recovery.discard();
                     offerRecovery();
                   }}});
}

void MainWindow::recover(const Left& left) {
  if (!mayLeave()) return;  // it stays where it is
  m_document->recover(left.rig, left.path, left.seen);
  rememberStroke();
  m_autosave->keep();
  if (m_autosave->copy().isEmpty()) return;  // never without any copy
  m_recovery.discard();
  offerRecovery();
}

void MainWindow::tellOfDisk() {
  const QString key = QStringLiteral("disk");
  const QString file = QFileInfo(m_document->path()).fileName();
  switch (m_document->onDisk()) {
    case RigDocument::OnDisk::same:
      return m_notice->withdraw(key);
    case RigDocument::OnDisk::gone:
      return m_notice->tell(key, tr("%1 is no longer there; saving puts it back.").arg(file),
                            {{tr("Save"), [this] { save(); }}});
    case RigDocument::OnDisk::changed:
      break;
  }
  const QString path = m_document->path();
  m_notice->tell(key, tr("%1 was changed by another program.").arg(file),
                 {{tr("Open what it holds now"), [this, path] {
                     if (mayLeave()) openFile(path);
                   }}});
}

bool MainWindow::mayLeave() {
  if (!m_document->isModified()) return true;
  switch (askUnsaved()) {
    case Unsaved::save:
      return save();
    case Unsaved::discard:
      return true;
    case Unsaved::cancel:
      break;
  }
  return false;
}

bool MainWindow::event(QEvent* event) {
  if (event->type() == QEvent::ApplicationPaletteChange) m_system.paletteChanged();
  if (event->type() == QEvent::ThemeChange) m_system.themeChanged();
  return QMainWindow::event(event);
}

void MainWindow::openAsLeft() {
  m_faces->open(m_settings.face());
  if (m_bench->drawer()->stays(m_settings.drawer())) m_bench->drawer()->open(m_settings.drawer());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!mayLeave() || !m_compare->mayLeave() || !m_clinic->mayLeave()) {
    event->ignore();
    return;
  }
  m_settings.setGeometry(saveGeometry());
  m_settings.setOpen(m_faces->current(), m_bench->drawer()->current());
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QStringList files = droppedFiles(event->mimeData());
  event->acceptProposedAction();
  if (files.isEmpty()) {
    hear(tr("Drop one file that is on this machine, or two rigs to compare them."));
    return;
  }
  const auto isRig = [](const QString& file) { return kindOf(file) == FileKind::rig; };
  if (files.size() == 1 || !std::all_of(files.begin(), files.end(), isRig)) {
    for (const QString& file : files) openHere(file);
    return;
  }
  if (mayLeave() && openFile(files.front())) openBeside(files.back());
}

void MainWindow::openWallet() {
  if (m_wallet == nullptr) {
    m_wallet = new WalletWindow(&m_look, m_document, m_feed, m_pools, m_own->all(), this);
    connect(m_own, &OwnStore::ownChanged, m_wallet, [this] { m_wallet->setShelf(m_own->all()); });
    m_wallet->setPaper(walletPaper(m_wallet));
    new RememberedPlace(m_wallet);
    connect(m_wallet, &WalletWindow::cutWanted, this, [this](const std::vector<Part>& tips) {
      m_faces->open(QStringLiteral("bench"));
      m_bench->cut(tips, tr("The packed wallet"));
      raise();
      activateWindow();
    });
    connect(m_wallet, &WalletWindow::wasPacked, this, [this](const std::vector<Part>& tips) {
      m_bench->chooser()->setWallet(tips);
      Shelf along;
      along.parts = tips;
      m_bench->fixes()->setWallet(along);
    });
  }
  if (m_wallet->isVisible()) {
    m_wallet->raise();
    m_wallet->activateWindow();
  }
  m_wallet->show();
}

void MainWindow::showHelp() {
  if (m_help == nullptr) {
    m_help = new HelpWindow(&m_look, this);
    new RememberedPlace(m_help);
  }
  m_help->show();
  m_help->raise();
  m_help->activateWindow();
}

void MainWindow::showSettings() {
  if (m_settingsWindow == nullptr) {
    m_settingsWindow = new SettingsWindow(m_desk, this);
    new RememberedPlace(m_settingsWindow);
  }
  m_settingsWindow->show();
  m_settingsWindow->raise();
  m_settingsWindow->activateWindow();
}

void MainWindow::print() {
  previewPages(std::make_shared<Handout>(*m_document->shown(), m_pools->pools().pools, m_look.units(),
                                         m_feed->conditions(), *m_own->all()),
               this);
}

void MainWindow::exportHandout() {
  QString path = askExportPath();
  if (path.isEmpty()) return;
  if (!pictureFileOf(path)) path += QLatin1String(".pdf");
  const Handout handout(*m_document->shown(), m_pools->pools().pools, m_look.units(), m_feed->conditions(),
                        *m_own->all());
  const Written written = writePages(handout, path, localPaper());
  m_bench->drawer()->say(written.problem.isEmpty()
                             ? tr("Written: %1").arg(written.files.join(QStringLiteral(", ")))
                             : written.problem);
}

void MainWindow::about() {
  QMessageBox::about(
      this, tr("About Grainwise"),
      tr("Grainwise %1: a workbench for building and balancing two-handed fly rigs.\n\n"
         "Limits and verdicts are common practice or ours, never a rod maker's. Rod makers' limits "
         "and a qualified instructor's advice come first.\n\n"
         "Free software under the GNU GPL, version 3 or later. Uses Qt %2, Qt Charts, "
         "nlohmann/json and tl::expected.")
          .arg(QApplication::applicationVersion(), QLatin1String(qVersion())));
}

}  // namespace grainwise::ui
