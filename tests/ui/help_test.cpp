// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_window.h"

#include <QLineEdit>
#include <QListWidget>
#include <QTest>
#include <QTextBrowser>

#include "tests/support/ui_support.h"
#include "ui/text/words.h"

namespace grainwise::ui {

TEST_CASE_METHOD(test::UiFixture, "the help has a page for a first rig, readings, what is left out, care and keys") {
  Look look;
  HelpWindow help(&look);
  REQUIRE(help.pages()->count() == 5);
  for (int i = 0; i < help.pages()->count(); ++i) {
    help.pages()->setCurrentRow(i);
    CHECK(help.text()->toPlainText().startsWith(help.pages()->item(i)->text()));
    CHECK(help.text()->toPlainText().size() > 400);
  }
}

TEST_CASE_METHOD(test::UiFixture, "every reading that has a tile has its place in the help") {
  Look look;
  HelpWindow help(&look);
  help.pages()->setCurrentRow(1);
  for (const Reading reading : {Reading::depth, Reading::junction, Reading::tipShare,
                                Reading::flyAgainstTip, Reading::headOnRod, Reading::drive}) {
    INFO(readingTitle(reading).toStdString());
    CHECK(help.text()->toPlainText().contains(readingTitle(reading)));
  }
}

TEST_CASE_METHOD(test::UiFixture, "a search leaves the pages that hold the words and says when there is none") {
  Look look;
  HelpWindow help(&look);
  help.show();
  QTest::keyClicks(help.search(), QStringLiteral("power lines"));
  int shown = 0;
  for (int i = 0; i < help.pages()->count(); ++i) shown += help.pages()->item(i)->isHidden() ? 0 : 1;
  CHECK(shown == 1);
  CHECK(help.text()->textCursor().selectedText().compare(QStringLiteral("power lines"),
                                                         Qt::CaseInsensitive) == 0);
  help.search()->setText(QStringLiteral("xyzzy"));
  CHECK(help.findChild<QWidget*>(QStringLiteral("helpPages"))->isVisible());
  for (int i = 0; i < help.pages()->count(); ++i) CHECK(help.pages()->item(i)->isHidden());
}

}  // namespace grainwise::ui
