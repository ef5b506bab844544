// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QDrag>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QMimeData>
#include <QPainter>
#include <QPlainTextEdit>
#include <QProcess>
#include <QPushButton>
#include <QStandardPaths>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include "core/analysis/analysis.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "core/model/check.h"
#include "tests/support/rig_parts.h"
#include "tests/support/ui_support.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/cut_drawing.h"
#include "ui/panels/cut_page.h"
#include "ui/panels/list_page.h"
#include "ui/panels/make_panel.h"
#include "ui/panels/own_parts_page.h"
#include "ui/panels/part_drawing.h"
#include "ui/panels/spools_page.h"
#include "ui/panels/weigh_page.h"
#include "ui/panels/water_panel.h"
#include "ui/print/cut_pages.h"
#include "ui/strip/part_payload.h"
#include "ui/text/measured_words.h"
#include "ui/text/why_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {

inline const QString kRoot = QStringLiteral(GRAINWISE_SOURCE_DIR);
inline const QString kSpools = kRoot + QStringLiteral("/sample-rigs/bench.spools.json");
inline const QString kFamily = kRoot + QStringLiteral("/sample-rigs/five-tip-family.shelf.json");

/// The Make drawer on the plain winter rig, its store in a folder of its own.
struct MakeBench : test::UiFixture {
  MakeBench() {
    look.setReduceMotion(true);
    CutPaper paper = cutPaper(nullptr);
    paper.preview = [this](const CutPicture&, const QString& of, DisplayUnits) { previewed = of; };
    document.startFrom(test::rigs::plainWinter());
    Shelf generic;
    generic.parts = {part("shelf tip", "generic-tip")};
    store = std::make_unique<OwnStore>(generic, folder.path());
    host = std::make_unique<QWidget>();
    auto* column = new QVBoxLayout(host.get());
    panel = new MakePanel(&look, &document, store.get(), &pools, paper, host.get());
    column->addWidget(panel);
    host->resize(1280, 420);
    host->show();
    REQUIRE(QTest::qWaitForWindowExposed(host.get()));
  }

  static Part part(const char* name, const char* id) {
    Part tip = test::rigs::tip({test::rigs::sinking(10, 11, 7.5)});
    tip.name = name;
    tip.id = id;
    tip.group = "Tips";
    return tip;
  }
  void open(const char* task) {
    panel->openTask(QLatin1String(task));
    QTest::qWait(1);
  }
  void benchSpools() { store->setSpools(loadSpools(kSpools.toStdString()).value()); }
  template <class W>
  W* find(const char* name) {
    W* widget = panel->findChild<W*>(QLatin1String(name));
    INFO(name);
    REQUIRE(widget != nullptr);
    return widget;
  }
  QString words(const char* name) { return find<QLabel>(name)->text(); }
  void type(const char* field, const char* text) {
    auto* edit = find<QLineEdit>(field);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QLatin1String(text));
  }
  void click(const char* button) {
    REQUIRE(find<QPushButton>(button)->isEnabled());
    QTest::mouseClick(find<QPushButton>(button), Qt::LeftButton);
    QTest::qWait(1);
  }
  const std::vector<Part>& parts() { return document.rig().parts; }

  QTemporaryDir folder;
  Look look;
  RigDocument document;
  PoolBook pools;
  QString previewed;  ///< the title of the sheet that was asked for on paper
  std::unique_ptr<OwnStore> store;
  std::unique_ptr<QWidget> host;
  MakePanel* panel = nullptr;
};

/// Types into whatever has the focus, as a person with wet hands does.
inline void typeHere(const char* text) {
  REQUIRE(QApplication::focusWidget() != nullptr);
  QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text));
}
inline void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }

}  // namespace grainwise::ui
