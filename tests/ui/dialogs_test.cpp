// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QSettings>
#include <QTest>
#include <QTimer>

#include "tests/support/reading_room.h"
#include "tests/support/strip_bench.h"
#include "ui/clinic/clinic_face.h"
#include "ui/panels/cut_page.h"
#include "ui/panels/list_page.h"
#include "ui/panels/make_panel.h"
#include "ui/panels/own_parts_page.h"
#include "ui/panels/pools_panel.h"
#include "ui/panels/spools_page.h"
#include "ui/panels/wallet_window.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_pages.h"

namespace grainwise::ui {
namespace {

/// What the dialog that a gesture opens says in our words (its buttons are Qt's, and Qt's to translate);
/// it is called off.
QStringList asked(const std::function<void()>& gesture) {
  constexpr int kLook_ms = 5;
  QStringList said;
  QTimer timer;
  timer.setInterval(kLook_ms);
  QObject::connect(&timer, &QTimer::timeout, [&said] {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    if (dialog == nullptr) return;
    said << dialog->windowTitle();
    if (const auto* box = qobject_cast<QMessageBox*>(dialog)) said << box->text() << box->informativeText();
    if (const auto* files = qobject_cast<QFileDialog*>(dialog)) {
      // Behind the words of a kind of file stand the endings, the same everywhere.
      for (const QString& filter : files->nameFilters()) said << filter.section(QLatin1Char('('), 0, 0);
    }
    dialog->reject();
  });
  timer.start();
  gesture();
  return said;
}

struct Pseudo {
  test::PseudoLanguage language;
};
struct DialogFixture : Pseudo, test::UiFixture {};

}  // namespace

TEST_CASE_METHOD(DialogFixture, "every dialog goes through translation, and Escape calls it off") {
  QSettings().clear();
  MainWindow window;
  window.startFrom(test::sampleRig("01-plain-winter"));
  window.show();
  REQUIRE(QTest::qWaitForWindowExposed(&window));
  for (const char* face : {"clinic", "bench"}) window.faces()->open(QLatin1String(face));
  ClinicFace* clinic = window.clinic()->face();
  window.bench()->openPools();
  window.bench()->openMake();
  auto* make = window.findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  for (const char* task : {"makeCut", "makeSpools", "makeParts", "makeList"}) make->openTask(QLatin1String(task));
  window.actionSet()->wallet->trigger();
  window.actionSet()->settings->trigger();
  auto* pools = window.findChild<PoolsPanel*>();
  auto* spools = window.findChild<SpoolsPage*>();
  auto* parts = window.findChild<OwnPartsPage*>();
  auto* list = window.findChild<ListPage*>();
  auto* cut = window.findChild<CutPage*>();
  auto* wallet = window.findChild<WalletWindow*>();
  auto* file = window.findChild<FilePage*>();
  REQUIRE((pools && spools && parts && list && cut && wallet && file));
  const std::vector<std::pair<const char*, std::function<void()>>> gestures{
      {"open", [&] { CHECK(window.askOpenPath().isEmpty()); }},
      {"save as", [&] { CHECK(window.askSavePath().isEmpty()); }},
      {"export", [&] { CHECK(window.askExportPath().isEmpty()); }},
      {"unsaved", [&] { CHECK(window.askUnsaved() == MainWindow::Unsaved::cancel); }},
      {"about", [&] { window.actionSet()->about->trigger(); }},
      {"deck", [&] { CHECK(clinic->askOpenPath().isEmpty()); }},
      {"save deck", [&] { CHECK(clinic->askSavePath().isEmpty()); }},
      {"rig of a card", [&] { CHECK(clinic->askRigPath().isEmpty()); }},
      {"unsaved deck", [&] { CHECK(clinic->askUnsaved() == ClinicFace::Unsaved::cancel); }},
      {"pools", [&] { CHECK(pools->askOpenPath().isEmpty()); }},
      {"save pools", [&] { CHECK(pools->askSavePath().isEmpty()); }},
      {"spools", [&] { CHECK(spools->askReadPath().isEmpty()); }},
      {"write spools", [&] { CHECK(spools->askWritePath().isEmpty()); }},
      {"shelf", [&] { CHECK(parts->askReadPath().isEmpty()); }},
      {"write parts", [&] { CHECK(parts->askWritePath().isEmpty()); }},
      {"list", [&] { CHECK(list->askPath().isEmpty()); }},
      {"add to the cuts", [&] { CHECK(cut->askAddPath().isEmpty()); }},
      {"cut sheet", [&] { CHECK(cut->askPdfPath().isEmpty()); }},
      {"rigs of a trip", [&] { CHECK(wallet->askRigPaths().isEmpty()); }},
      {"wallet card", [&] { CHECK(wallet->askCardPath().isEmpty()); }},
      {"export settings", [&] { CHECK(file->askExportPath().isEmpty()); }},
      {"import settings", [&] { CHECK(file->askImportPath().isEmpty()); }}};
  // "Plain winter", the rig's own name, is nobody's to translate.
  const QStringList own{QStringLiteral("Plain"), QStringLiteral("winter")};
  for (const auto& [name, gesture] : gestures) {
    const QStringList said = asked(gesture);
    INFO(name << ": " << said.join(QStringLiteral(" | ")).toStdString());
    REQUIRE_FALSE(said.isEmpty());
    for (const QString& words : said) {
      QStringList plain = test::plainWords(words);
      plain.removeIf([&](const QString& word) { return own.contains(word); });
      CHECK(plain.isEmpty());
    }
  }
  for (QWidget* other : QApplication::topLevelWidgets()) {
    if (other != &window && other->isVisible()) other->close();
  }
}

}  // namespace grainwise::ui
