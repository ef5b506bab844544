// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_window.h"

#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QTest>
#include <QTextBrowser>

#include "tests/support/ui_support.h"
#include "ui/theme/language.h"
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

TEST_CASE_METHOD(test::UiFixture, "under every reading the help says where it comes from and whose its limits are") {
  Look look;
  HelpWindow help(&look);
  help.pages()->setCurrentRow(1);
  const QStringList readings = help.text()->toMarkdown().split(QStringLiteral("\n## ")).mid(1);
  REQUIRE(readings.size() > 6);
  for (const QString& one : readings.mid(0, readings.size() - 1)) {  // the last is on limits of one's own
    INFO(one.toStdString());
    CHECK(one.contains(QStringLiteral("source"), Qt::CaseInsensitive));
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

TEST_CASE_METHOD(test::UiFixture, "the help of each language has the pages, headings and rows of the English one") {
  Look look;
  const auto shape = [&look](const QString& code) {
    const Speaking speaking(code);
    HelpWindow help(&look);
    QStringList pages;
    for (int i = 0; i < help.pages()->count(); ++i) {
      help.pages()->setCurrentRow(i);
      const QString source = help.text()->document()->toMarkdown();
      pages << QStringLiteral("%1 headings, %2 items, %3 rows")
                   .arg(source.count(QStringLiteral("\n#")))
                   .arg(source.count(QRegularExpression(QStringLiteral("\n *(-|[0-9]+\\.) "))))
                   .arg(source.count(QStringLiteral("\n|")));
    }
    return pages;
  };
  const auto titles = [&look](const QString& code) {
    const Speaking speaking(code);
    HelpWindow help(&look);
    QStringList all;
    for (int i = 0; i < help.pages()->count(); ++i) all << help.pages()->item(i)->text();
    return all;
  };
  for (const Language& one : languages()) {
    INFO(one.code.toStdString());
    CHECK(shape(one.code) == shape(QStringLiteral("en")));
    if (one.code != QLatin1String("en")) CHECK(titles(one.code) != titles(QStringLiteral("en")));
    const Speaking speaking(one.code);
    HelpWindow help(&look);
    help.pages()->setCurrentRow(1);
    for (const Reading reading : {Reading::depth, Reading::junction, Reading::tipShare,
                                  Reading::flyAgainstTip, Reading::headOnRod, Reading::drive}) {
      CHECK(help.text()->toPlainText().contains(readingTitle(reading)));
    }
  }
}

}  // namespace grainwise::ui
