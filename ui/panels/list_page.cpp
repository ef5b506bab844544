// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/list_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSet>
#include <QStringDecoder>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "core/bench/own_shelf.h"
#include "core/bench/weigh_in.h"
#include "core/model/limits.h"
#include "ui/document/own_store.h"
#include "ui/text/bench_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/flow_row.h"

namespace grainwise::ui {
namespace {

/// What a column can be, with the unit of its bare numbers.
struct Choice {
  const char* words;
  LogColumn column;
};
const std::array<Choice, 12>& choices() {
  static const std::array<Choice, 12> all{{
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "nothing"), {}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "name"), {LogField::name, {}, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "mass, gr"),
       {LogField::mass, MassUnit::grains, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "mass, g"),
       {LogField::mass, MassUnit::grams, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "mass with its unit"),
       {LogField::mass, {}, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "length, ft"),
       {LogField::length, {}, LengthUnit::feet}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "length, m"),
       {LogField::length, {}, LengthUnit::metres}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "length with its unit"),
       {LogField::length, {}, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "gr/ft"), {LogField::perFoot, {}, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "sinks, in/s"), {LogField::sinkRate, {}, {}}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "sinking ft"),
       {LogField::sinkingLength, {}, LengthUnit::feet}},
      {QT_TRANSLATE_NOOP("grainwise::ui::ListPage", "date"), {LogField::date, {}, {}}},
  }};
  return all;
}

constexpr std::array<char, 3> kSeparators{',', ';', '\t'};
constexpr std::size_t kMostColumns = 8;
constexpr std::size_t kMostLines = 200;

Part unnamed(Part part) {
  part.name.reset();
  return part;
}

Grains nominalOrWeighed(const Part& part, const BenchRules& rules) {
  return part.weighed ? part.weighed->mass : nominalMass(part, rules);
}

/// In the table the line's number stands before it.
Problem withoutLine(Problem problem) {
  problem.line = 0;
  return problem;
}

int choiceOf(const LogColumn& column) {
  int same = 0;
  for (std::size_t i = 0; i < choices().size(); ++i) {
    const LogColumn& known = choices()[i].column;
    if (known.field != column.field) continue;
    const bool unit = (column.field != LogField::mass || known.mass == column.mass) &&
                      (column.field != LogField::length || known.length == column.length);
    if (unit) return int(i);
    same = int(i);
  }
  return same;
}

}  // namespace

ListPage::ListPage(Look* look, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeList", parent), m_store(store) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(16);
  m_text = new QPlainTextEdit(this);
  m_text->setObjectName(QStringLiteral("listText"));
  m_text->setAccessibleName(tr("The list"));
  m_text->setPlaceholderText(tr("Paste a list of tips or what the scale said, a line each:\n"
                                "name, mass gr, length ft\nwinter tip, 113.5, 10"));
  m_text->setProperty("designSize", 14);
  m_text->setTabChangesFocus(true);
  row->addWidget(m_text, 1);
  auto* right = new QVBoxLayout;
  right->setSpacing(4);
  right->addWidget(mappingRow());
  m_table = new QTableWidget(this);
  m_table->setObjectName(QStringLiteral("listTable"));
  m_table->setAccessibleName(tr("The lines as they will be read"));
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setSelectionMode(QAbstractItemView::NoSelection);
  m_table->setProperty("designSize", 14);
  m_table->horizontalHeader()->hide();
  m_table->setMinimumHeight(look->px(96));
  right->addWidget(m_table, 1);
  m_words = addLabel({});
  m_words->setObjectName(QStringLiteral("listWords"));
  right->addWidget(m_words);
  row->addLayout(right, 3);
  askPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Read a list"), {},
                                        tr("Lists (*.csv *.txt *.tsv);;All files (*)"));
  };
  connect(m_text, &QPlainTextEdit::textChanged, this, &ListPage::guess);
  guess();
  restyle();
}

QWidget* ListPage::mappingRow() {
  auto* holder = new QWidget(this);
  auto* row = new FlowRow(look()->px(8));
  holder->setLayout(row);
  auto* file = addButton(tr("From a file…"), "listFile");
  m_separator = addChoice({tr("parted by commas"), tr("parted by semicolons"), tr("parted by tabs")},
                          tr("What parts the columns"), "listSeparator");
  m_heading = new QCheckBox(tr("the first line names them"), this);
  m_heading->setObjectName(QStringLiteral("listHeading"));
  m_heading->setProperty("designSize", 15);
  m_heading->setMinimumHeight(32);
  m_keep = addButton(tr("Keep them among my parts"), "listKeep");
  for (QWidget* one : {static_cast<QWidget*>(file), static_cast<QWidget*>(m_separator),
                       static_cast<QWidget*>(m_heading), static_cast<QWidget*>(m_keep)}) {
    row->addWidget(one);
  }
  connect(file, &QPushButton::clicked, this, [this] {
    const QString path = askPath();
    if (path.isEmpty()) return;
    const QString why = readFile(path);
    if (!why.isEmpty()) m_words->setText(why);
  });
  connect(m_separator, &QComboBox::activated, this, &ListPage::separate);
  connect(m_heading, &QCheckBox::clicked, this, [this](bool on) {
    m_mapping.heading = on;
    read();
  });
  connect(m_keep, &QPushButton::clicked, this, &ListPage::keep);
  return holder;
}

QString ListPage::readFile(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return file.errorString();
  const QByteArray bytes = file.read(limits::kFileBytes + 1);
  if (bytes.size() > limits::kFileBytes) return tr("This file is over 4 MB; a list is shorter.");
  QStringDecoder utf8(QStringDecoder::Utf8);
  const QString text = utf8(bytes);
  // Older spreadsheets write Latin-1.
  m_text->setPlainText(utf8.hasError() ? QString::fromLatin1(bytes) : text);
  return {};
}

void ListPage::guess() {
  m_read = m_text->toPlainText().toStdString();
  m_mapping = guessMapping(m_read);
  showMapping();
}

void ListPage::separate(int which) {
  m_mapping = guessMapping(m_read, kSeparators[std::size_t(std::clamp(which, 0, 2))]);
  showMapping();
}

void ListPage::showMapping() {
  const auto* which = std::find(kSeparators.begin(), kSeparators.end(), m_mapping.separator);
  m_separator->setCurrentIndex(int(which - kSeparators.begin()));
  m_heading->setChecked(m_mapping.heading);
  showColumns();
  read();
}

/// What each column is, to be chosen above it; the last column is what the line becomes.
void ListPage::showColumns() {
  m_boxes.clear();
  m_table->clear();
  QStringList words;
  for (const Choice& choice : choices()) words.append(tr(choice.words));
  const int count = int(std::min(m_mapping.columns.size(), kMostColumns));
  m_table->setColumnCount(m_read.empty() ? 0 : count + 1);
  m_table->setRowCount(m_read.empty() ? 0 : 1);
  for (int i = 0; i < count && !m_read.empty(); ++i) {
    const QByteArray name = "listColumn" + QByteArray::number(i);
    QComboBox* box = addChoice(words, tr("Column %1").arg(i + 1), name.constData());
    box->setCurrentIndex(choiceOf(m_mapping.columns[std::size_t(i)]));
    m_table->setCellWidget(0, i, box);
    m_boxes.append(box);
    connect(box, &QComboBox::currentIndexChanged, this, [this, i](int index) {
      m_mapping.columns[std::size_t(i)] = choices()[std::size_t(index)].column;
      read();
    });
  }
}

void ListPage::read() {
  ScaleLog log = readScaleLog(m_read, m_mapping);
  m_parts.clear();
  QHash<int, QString> answers;
  int assumed = 0;
  for (const LogRow& row : log.rows) {
    if (auto tip = tipOf(row)) {
      assumed += tip->rateAssumed ? 1 : 0;
      answers[row.line] = tr("%1, %2").arg(partWords(unnamed(tip->part), units()),
                                           massText(nominalOrWeighed(tip->part, m_store->rules()), units()));
      m_parts.push_back(tip->part);
    } else {
      log.problems.push_back(tip.error());
      log.problems.back().line = row.line;
    }
  }
  QSet<int> left;
  for (const Problem& problem : log.problems) {
    answers[problem.line] = problemText(withoutLine(problem));
    left.insert(problem.line);
  }
  showLines(answers);
  QStringList words;
  if (!m_read.empty()) words.append(tr("%1 tips read.").arg(m_parts.size()));
  if (!left.isEmpty()) words.append(tr("Lines left out: %1.").arg(left.size()));
  if (assumed > 0) {
    words.append(tr("%1 without a sink rate take the usual one of their class.").arg(assumed));
  }
  m_words->setText(words.join(QLatin1Char(' ')));
  m_keep->setEnabled(!m_parts.empty());
}

void ListPage::showLines(const QHash<int, QString>& answers) {
  const auto lines = logLines(m_read, m_mapping.separator, kMostLines);
  const int columns = int(m_boxes.size());
  m_table->setRowCount(m_read.empty() ? 0 : 1 + int(lines.size()));
  if (m_read.empty()) return;
  QStringList numbers{QString()};
  const auto put = [this](int row, int column, const QString& words) {
    m_table->setItem(row, column, new QTableWidgetItem(words));
  };
  put(0, columns, tr("becomes"));
  bool heading = m_mapping.heading;
  for (int i = 0; i < int(lines.size()); ++i) {
    const LogLine& line = lines[std::size_t(i)];
    numbers.append(QString::number(line.line));
    for (int c = 0; c < columns; ++c) {
      const bool there = std::size_t(c) < line.cells.size();
      put(i + 1, c, there ? QString::fromStdString(line.cells[std::size_t(c)]) : QString());
    }
    put(i + 1, columns, std::exchange(heading, false) ? tr("names") : answers.value(line.line));
  }
  m_table->setVerticalHeaderLabels(numbers);
  m_table->resizeColumnsToContents();
  m_table->horizontalHeader()->setStretchLastSection(true);
}

void ListPage::keep() {
  Shelf own = m_store->own();
  for (Part part : m_parts) {
    part.group = tr("My tips").toStdString();
    own = ownShelf::with(own, part, m_store->generic());
  }
  m_store->setOwn(own);
  m_words->setText(tr("%1 kept among my parts.").arg(m_parts.size()));
  m_keep->setEnabled(false);
}

void ListPage::restyle() {
  MakePage::restyle();
  read();
}

}  // namespace grainwise::ui
