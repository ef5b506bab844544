// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>

#include "tests/support/make_bench.h"

namespace grainwise::ui {
namespace {

struct ListBench : MakeBench {
  ListBench() { open("makeList"); }
  void paste(const char* text) { find<QPlainTextEdit>("listText")->setPlainText(QString::fromUtf8(text)); }
  QTableWidget* table() { return find<QTableWidget>("listTable"); }
  QString cell(int row, int column) {
    const QTableWidgetItem* item = table()->item(row, column);
    return item ? item->text() : QString();
  }
  /// What a line of the table becomes: its last column.
  QString becomes(int row) { return cell(row, table()->columnCount() - 1); }
  void choose(const char* box, int index) {
    auto* combo = find<QComboBox>(box);
    combo->setCurrentIndex(index);
    Q_EMIT combo->activated(index);
  }
};

}  // namespace

TEST_CASE_METHOD(ListBench, "read a list: a pasted list becomes own tips, and its junk is told by line") {
  paste("name;mass g;length ft\nten;7,35;10\njunk;x;10\nfive;3,7;5\n");
  CHECK(words("listWords").contains(QLatin1String("2 tip")));
  CHECK(table()->verticalHeaderItem(3)->text() == QLatin1String("3"));
  CHECK(becomes(3).contains(QLatin1String("\"x\" is no mass")));
  click("listKeep");
  REQUIRE(store->own().parts.size() == 2);
  CHECK(store->own().parts[0].weighed->mass.value() == Approx(113.4).margin(0.1));
  CHECK(check(store->own()).empty());
}

TEST_CASE_METHOD(ListBench, "read a list: the table shows the lines as they will be read, before anything is kept") {
  paste("name;mass g;length m\n\"ten; winter\";7,3547;3,048\nfive;3,84;1,524\n");
  CHECK(find<QComboBox>("listSeparator")->currentIndex() == 1);
  CHECK(find<QCheckBox>("listHeading")->isChecked());
  REQUIRE(table()->columnCount() == 4);
  CHECK(cell(1, 0) == QLatin1String("name"));
  CHECK(cell(2, 0) == QLatin1String("ten; winter"));
  CHECK(cell(2, 1) == QLatin1String("7,3547"));
  CHECK(becomes(2).contains(QLatin1String("10 ft")));
  CHECK(becomes(2).contains(QLatin1String("114 gr")));
  CHECK(store->own().parts.empty());
}

TEST_CASE_METHOD(ListBench, "read a list: a column taken for the wrong thing can be put right") {
  paste("name,mass,length ft\nten,12.5,10\n");
  CHECK_FALSE(find<QPushButton>("listKeep")->isEnabled());
  CHECK(becomes(2).contains(QLatin1String("gr or g")));
  find<QComboBox>("listColumn1")->setCurrentIndex(2);  // mass, gr
  CHECK(becomes(2).contains(QLatin1String("10 ft")));
  CHECK(find<QPushButton>("listKeep")->isEnabled());
  find<QComboBox>("listColumn1")->setCurrentIndex(3);  // mass, g
  click("listKeep");
  CHECK(store->own().parts[0].weighed->mass.value() == Approx(12.5 / 0.06479891).epsilon(1e-6));
}

TEST_CASE_METHOD(ListBench, "read a list: what parts the columns, and whether the first line names them, can be put right") {
  paste("ten;113,5 gr;10 ft\n");
  CHECK_FALSE(find<QCheckBox>("listHeading")->isChecked());
  CHECK(becomes(1).contains(QLatin1String("10 ft")));
  choose("listSeparator", 0);
  CHECK(table()->columnCount() == 3);  // the decimal comma parts it now
  choose("listSeparator", 1);
  CHECK(becomes(1).contains(QLatin1String("10 ft")));
  QTest::mouseClick(find<QCheckBox>("listHeading"), Qt::LeftButton, {}, QPoint(8, 16));
  CHECK(becomes(1) == QLatin1String("names"));
  CHECK_FALSE(find<QPushButton>("listKeep")->isEnabled());
}

TEST_CASE_METHOD(ListBench, "read a list: a spreadsheet's Latin-1 and Windows line ends are read, a broken file is said") {
  const QString path = folder.filePath(QStringLiteral("tips.csv"));
  test::write(path, QByteArray("Spitze;Masse g;L\xE4nge ft\r\nf\xFCnf;3,7;5\r\n"));
  CHECK(find<ListPage>("makeList")->readFile(path).isEmpty());
  CHECK(cell(2, 0) == QString::fromUtf8("f\xC3\xBCnf"));
  choose("listColumn0", 1);
  find<QComboBox>("listColumn0")->setCurrentIndex(1);
  click("listKeep");
  CHECK(store->own().parts[0].name == "f\xC3\xBCnf");
  CHECK_FALSE(find<ListPage>("makeList")->readFile(folder.filePath(QStringLiteral("none.csv"))).isEmpty());
}

TEST_CASE_METHOD(ListBench, "read a list: a long list with junk of every kind keeps every good line and loses none in silence") {
  QString text = QStringLiteral("name,mass gr,length ft\n");
  int good = 0, bad = 0;
  for (int i = 0; i < 300; ++i) {
    const bool junk = i % 7 == 3;
    text += junk ? QStringLiteral("%1,--,\x01\n").arg(i) : QStringLiteral("tip %1,110.%2,10\n").arg(i).arg(i % 10);
    (junk ? bad : good) += 1;
  }
  find<QPlainTextEdit>("listText")->setPlainText(text);
  CHECK(words("listWords").contains(QString::number(good)));
  CHECK(words("listWords").contains(QString::number(bad)));
  click("listKeep");
  CHECK(int(store->own().parts.size()) == good);
}

}  // namespace grainwise::ui
