// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/plain_words.h"

#include <QAbstractItemView>
#include <QAction>
#include <QFile>
#include <QHelpEvent>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QSettings>
#include <QTemporaryDir>
#include <QSignalSpy>
#include <QTest>
#include <QToolTip>

#include "core/io/rig_file.h"
#include "tests/support/sample_rig.h"
#include "tests/support/ui_support.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"
#include "ui/window/notice_bar.h"

namespace grainwise::ui {
namespace {

const std::string kMarkup = "<b>bold</b> & <img src='file:///etc/hostname'>";
const QString kShown = QString::fromStdString(kMarkup);

Rig marked() {
  Rig rig = test::sampleRig("01-plain-winter");
  rig.name = rig.notes.emplace(kMarkup);
  if (rig.water) rig.water->name = kMarkup;
  for (Part& part : rig.parts) part.name = kMarkup;
  return rig;
}

struct MarkupFixture : test::UiFixture {
  MarkupFixture() {
    QSettings().clear();
    Shelf shelf;
    for (Part part : marked().parts) {
      part.id = "id" + std::to_string(shelf.parts.size());
      part.group = kMarkup;
      shelf.parts.push_back(part);
    }
    window = std::make_unique<MainWindow>();
    window->own()->setOwn(shelf);
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    window->startFrom(marked());
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  ~MarkupFixture() { window->own()->setOwn({}); }
  /// How many labels show the markup; each as it stands.
  int labelsWithMarkup() {
    int found = 0;
    for (const QLabel* label : window->findChildren<QLabel*>()) {
      if (!label->isVisible() || !label->text().contains(QLatin1Char('<'))) continue;
      INFO(label->objectName().toStdString() << ": " << label->text().toStdString());
      CHECK(label->textFormat() == Qt::PlainText);
      ++found;
    }
    return found;
  }
  static QString toolTipAt(QWidget* widget, QPoint at) {
    QHelpEvent help(QEvent::ToolTip, at, widget->mapToGlobal(at));
    QApplication::sendEvent(widget, &help);
    return QToolTip::text();
  }
  std::unique_ptr<MainWindow> window;
};

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "a label without a format of its own does not guess one") {
  PlainWords::keep();
  PlainWords::keep();
  QLabel guess(kShown);
  QLabel meant(QStringLiteral("<b>ours</b>"));
  meant.setTextFormat(Qt::RichText);
  for (QLabel* label : {&guess, &meant}) label->show();
  QTest::qWait(10);
  CHECK(guess.textFormat() == Qt::PlainText);
  CHECK(meant.textFormat() == Qt::RichText);
}

TEST_CASE("only what looks like markup is dressed to show as it stands") {
  CHECK(PlainWords::shown(QStringLiteral("17.8 to 11")) == QStringLiteral("17.8 to 11"));
  CHECK(PlainWords::shown(QStringLiteral("<b>x</b>")) ==
        QStringLiteral("<span>&lt;b&gt;x&lt;/b&gt;</span>"));
  CHECK(PlainWords::inMenu(QStringLiteral("Salt & pepper")) == QStringLiteral("Salt && pepper"));
}

TEST_CASE_METHOD(MarkupFixture, "markup in the names of a file shows as it stands, on every page") {
  int found = labelsWithMarkup();
  for (QAction* action :
       {window->actionSet()->shelf, window->actionSet()->part, window->actionSet()->rod,
        window->actionSet()->water, window->actionSet()->rename}) {
    action->trigger();
    QTest::qWait(20);
    found += labelsWithMarkup();
  }
  for (const char* tile : {"1", "2", "3", "4", "5"}) {
    QSignalSpy why(window->findChild<Drawer*>(), &Drawer::opened);
    QTest::keyClick(window.get(), Qt::Key(tile[0]), Qt::AltModifier);
    REQUIRE((!why.isEmpty() || why.wait(1000)));  // a button's key is let go a moment later
    found += labelsWithMarkup();
  }
  window->bench()->showProblems(kShown, {Problem{kMarkup, 1, "/x", kMarkup, kMarkup}});
  window->notice()->tell(QStringLiteral("k"), kShown, {});
  QTest::qWait(20);
  REQUIRE(window->notice()->isVisible());
  found += labelsWithMarkup();
  CHECK(found >= 2);  // the list of problems, the notice: or nothing was looked at
}

TEST_CASE_METHOD(MarkupFixture, "no tooltip obeys markup in a name") {
  int found = 0;
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || !widget->toolTip().contains(QLatin1Char('<'))) continue;
    const QString tip = toolTipAt(widget, widget->rect().center());
    INFO(widget->objectName().toStdString() << ": " << tip.toStdString());
    CHECK_FALSE(tip.contains(QStringLiteral("<img")));
    CHECK_FALSE(tip.contains(QStringLiteral("<b>")));
    ++found;
  }
  for (auto* view : window->findChildren<QAbstractItemView*>()) {
    if (!view->isVisible() || !view->model() || view->model()->rowCount() == 0) continue;
    const QPoint at = view->visualRect(view->model()->index(0, 0)).center();
    CHECK_FALSE(toolTipAt(view->viewport(), at).contains(QStringLiteral("<img")));
    ++found;
  }
  QToolTip::hideText();
  QTest::qWait(400);  // it fades
  // The platform of these tests has no place for the little window of a tooltip.
  test::qtMessages().removeIf(
      [](const QString& said) { return said.contains(QLatin1String("focusObjectChanged")); });
  CHECK(found >= 2);
}

TEST_CASE_METHOD(MarkupFixture, "a recent file's name keeps its & in the menu") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("salt & pepper.rig.json"));
  window->askSavePath = [&] { return path; };
  window->actionSet()->saveAs->trigger();
  const QList<QAction*> entries = window->actionSet()->recentMenu()->actions();
  REQUIRE_FALSE(entries.isEmpty());
  CHECK(entries.first()->text() == QStringLiteral("salt && pepper.rig.json"));
}

}  // namespace grainwise::ui
