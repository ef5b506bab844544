// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>
#include <memory>

#include "tests/support/rig_parts.h"
#include "tests/support/ui_bench.h"
#include "ui/strip/number_field.h"
#include "ui/strip/part_editor.h"

namespace grainwise::test {

/// The part editor by itself, on one part of a rig.
struct PartBench : BenchFixture {
  PartBench() { edit(rigs::plainWinter(), 2); }

  void edit(const Rig& rig, std::size_t index) {
    show(rig);
    at = index;
    host = std::make_unique<QWidget>();
    auto* column = new QVBoxLayout(host.get());
    column->setContentsMargins(0, 0, 0, 0);
    editor = new ui::PartEditor(&look, &document, &feed, host.get());
    column->addWidget(editor);
    host->resize(1280, 320);
    host->show();
    REQUIRE(QTest::qWaitForWindowExposed(host.get()));
    host->activateWindow();
    editor->setPart(index);
    settle();
  }
  [[nodiscard]] const Part& part() const { return document.rig().parts[at]; }
  [[nodiscard]] const Section& section(std::size_t i = 0) const { return part().sections[i]; }

  template <class W>
  W* find(const QString& name) {
    W* widget = editor->findChild<W*>(name);
    INFO(name.toStdString());
    REQUIRE(widget != nullptr);
    return widget;
  }
  ui::NumberField* field(const char* name) { return find<ui::NumberField>(QLatin1String(name)); }
  /// Types over what stands in a field, key by key, the window answering each.
  void type(const char* name, const char* text) {
    QLineEdit* edit = field(name)->edit();
    edit->setFocus();
    edit->selectAll();
    if (*text == '\0') QTest::keyClick(edit, Qt::Key_Delete);
    for (; *text != '\0'; ++text) {
      QTest::keyClick(edit, *text);
      settle();
    }
    settle();
  }
  void press(Qt::Key key) {
    REQUIRE(QApplication::focusWidget() != nullptr);
    QTest::keyClick(QApplication::focusWidget(), key);
    settle();
  }
  QString said(const char* line) { return find<QLabel>(QLatin1String(line))->text(); }
  QUndoStack& undo() { return *document.undoStack(); }

  std::size_t at = 0;
  std::unique_ptr<QWidget> host;
  ui::PartEditor* editor = nullptr;
};

}  // namespace grainwise::test
