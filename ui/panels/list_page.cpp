// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/list_page.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "core/bench/own_shelf.h"
#include "core/model/limits.h"
#include "ui/document/own_store.h"
#include "ui/text/bench_words.h"

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
  row->addWidget(m_text, 2);
  auto* right = new QVBoxLayout;
  right->addWidget(addLabel(tr("The columns are")));
  m_columns = new QHBoxLayout;
  right->addLayout(m_columns);
  m_words = addLabel({});
  m_words->setObjectName(QStringLiteral("listWords"));
  right->addWidget(m_words);
  auto* buttons = new QHBoxLayout;
  auto* file = addButton(tr("From a file…"), "listFile");
  m_keep = addButton(tr("Keep them among my parts"), "listKeep");
  buttons->addWidget(file);
  buttons->addWidget(m_keep);
  buttons->addStretch(1);
  right->addLayout(buttons);
  right->addStretch(1);
  row->addLayout(right, 3);
  askPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Read a list"), {},
                                        tr("Lists (*.csv *.txt *.tsv);;All files (*)"));
  };
  connect(m_text, &QPlainTextEdit::textChanged, this, &ListPage::guess);
  connect(file, &QPushButton::clicked, this, [this] {
    const QString path = askPath();
    if (path.isEmpty()) return;
    const QString why = readFile(path);
    if (!why.isEmpty()) m_words->setText(why);
  });
  connect(m_keep, &QPushButton::clicked, this, &ListPage::keep);
  guess();
  restyle();
}

QString ListPage::readFile(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return file.errorString();
  const QByteArray bytes = file.read(limits::kFileBytes + 1);
  if (bytes.size() > limits::kFileBytes) return tr("This file is over 4 MB; a list is shorter.");
  m_text->setPlainText(QString::fromUtf8(bytes));
  return {};
}

void ListPage::guess() {
  const std::string text = m_text->toPlainText().toStdString();
  m_mapping = guessMapping(text);
  showColumns();
  read();
}

void ListPage::showColumns() {
  qDeleteAll(m_boxes);
  m_boxes.clear();
  QStringList words;
  for (const Choice& choice : choices()) words.append(tr(choice.words));
  const std::size_t count = std::min<std::size_t>(m_mapping.columns.size(), 8);
  for (std::size_t i = 0; i < count; ++i) {
    const QByteArray name = "listColumn" + QByteArray::number(int(i));
    QComboBox* box = addChoice(words, tr("Column %1").arg(i + 1), name.constData());
    box->setCurrentIndex(choiceOf(m_mapping.columns[i]));
    m_columns->addWidget(box);
    m_boxes.append(box);
    connect(box, &QComboBox::currentIndexChanged, this, [this, i](int index) {
      m_mapping.columns[i] = choices()[std::size_t(index)].column;
      read();
    });
  }
}

void ListPage::read() {
  const std::string text = m_text->toPlainText().toStdString();
  ScaleLog log = readScaleLog(text, m_mapping);
  m_parts.clear();
  int assumed = 0;
  for (const LogRow& row : log.rows) {
    if (auto tip = tipOf(row)) {
      assumed += tip->rateAssumed ? 1 : 0;
      m_parts.push_back(tip->part);
    } else {
      log.problems.push_back(tip.error());
    }
  }
  QStringList words;
  if (!text.empty()) words.append(tr("%1 tips read.").arg(m_parts.size()));
  if (assumed > 0) {
    words.append(tr("%1 without a sink rate take the usual one of their class.").arg(assumed));
  }
  constexpr std::size_t kMostTold = 6;
  for (std::size_t i = 0; i < std::min(kMostTold, log.problems.size()); ++i) {
    words.append(tr("Left out, %1").arg(problemText(log.problems[i])));
  }
  if (log.problems.size() > kMostTold) {
    words.append(tr("and %1 lines more.").arg(log.problems.size() - kMostTold));
  }
  m_words->setText(words.join(QLatin1Char('\n')));
  m_keep->setEnabled(!m_parts.empty());
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

void ListPage::restyle() { MakePage::restyle(); }

}  // namespace grainwise::ui
