// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/teacher_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTime>
#include <QVBoxLayout>

#include "ui/charts/card_figures.h"
#include "ui/clinic/card_view.h"
#include "ui/clinic/deck_run.h"
#include "ui/theme/flow_row.h"

namespace grainwise::ui {
namespace {
constexpr int kTarget = 44;
constexpr int kGap = 8;  ///< between the buttons
constexpr double kAspect = 16.0 / 9.0;
constexpr int kTick_ms = 1000;
}  // namespace

TeacherView::TeacherView(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("teacher"));
  m_now = new CardView(look, this);
  m_now->setObjectName(QStringLiteral("cardNow"));
  m_now->setAspect(kAspect);
  m_next = new CardView(look, this);
  m_next->setObjectName(QStringLiteral("cardNext"));
  m_next->setAspect(kAspect);
  m_next->setAccessibleName(tr("The next card"));
  m_clock = new QLabel(this);
  m_clock->setObjectName(QStringLiteral("clock"));
  m_where = new QLabel(this);
  m_where->setObjectName(QStringLiteral("cardWhere"));
  m_notes = new QPlainTextEdit(this);
  m_notes->setObjectName(QStringLiteral("cardNotes"));
  m_notes->setAccessibleName(tr("Notes and answer"));
  m_notes->setReadOnly(true);
  m_list = new QListWidget(this);
  m_list->setObjectName(QStringLiteral("cardJump"));
  m_list->setAccessibleName(tr("All cards"));
  m_side = new QWidget(this);
  auto* side = new QVBoxLayout(m_side);
  side->setContentsMargins(0, 0, 0, 0);
  side->addWidget(m_clock);
  side->addWidget(m_where);
  side->addWidget(m_next, 2);
  side->addWidget(m_list, 2);
  m_buttons = new QWidget(this);
  auto* buttons = new FlowRow(kGap);
  m_buttons->setLayout(buttons);
  m_back = addButton(QStringLiteral("showBack"), tr("Back"));
  m_on = addButton(QStringLiteral("showNext"), tr("On"));
  m_blank = addButton(QStringLiteral("showBlank"), tr("Blank (B)"));
  m_numbers = addButton(QStringLiteral("showNumbers"), tr("Hide numbers (H)"));
  m_slow = addButton(QStringLiteral("showSlow"), tr("Slow motion (S)"));
  m_edit = addButton(QStringLiteral("showEdit"), tr("Change the rig (E)"));
  auto* end = addButton(QStringLiteral("showEnd"), tr("End (Esc)"));
  for (QPushButton* button : {m_blank, m_numbers, m_slow, m_edit}) button->setCheckable(true);
  auto* left = new QVBoxLayout;
  left->addWidget(m_now, 3);
  left->addWidget(m_notes, 2);
  auto* row = new QHBoxLayout;
  row->addLayout(left, 3);
  row->addWidget(m_side, 2);
  m_column = new QVBoxLayout(this);
  m_column->setContentsMargins(16, 8, 16, 8);
  m_column->addLayout(row, 1);
  m_column->addWidget(m_buttons);
  m_tick.setInterval(kTick_ms);
  connect(&m_tick, &QTimer::timeout, this, &TeacherView::tick);
  connect(m_back, &QPushButton::clicked, this, [this] { if (m_run) m_run->back(); });
  connect(m_on, &QPushButton::clicked, this, [this] { if (m_run) m_run->next(); });
  connect(m_blank, &QPushButton::clicked, this, [this] { if (m_run) m_run->toggleBlank(); });
  connect(m_numbers, &QPushButton::clicked, this, [this] { if (m_run) m_run->toggleNumbers(); });
  connect(m_slow, &QPushButton::clicked, this, [this] { if (m_run) m_run->toggleSlow(); });
  connect(m_edit, &QPushButton::clicked, this, &TeacherView::editRequested);
  connect(end, &QPushButton::clicked, this, &TeacherView::endRequested);
  connect(m_list, &QListWidget::currentRowChanged, this, [this](int at) { if (m_run) m_run->goTo(at); });
  connect(look, &Look::changed, this, &TeacherView::applyLook);
  applyLook();
}

QPushButton* TeacherView::addButton(const QString& name, const QString& words) {
  auto* button = new QPushButton(words, m_buttons);
  button->setObjectName(name);
  button->setMinimumHeight(kTarget);
  m_buttons->layout()->addWidget(button);
  return button;
}

void TeacherView::applyLook() {
  m_clock->setFont(m_look->font(36, true));
  m_where->setFont(m_look->font(16));
  m_notes->setFont(m_look->font(20));
  m_list->setFont(m_look->font(16));
}

void TeacherView::setRun(DeckRun* run) {
  if (m_run) disconnect(m_run, nullptr, this, nullptr);
  m_run = run;
  m_tick.stop();
  const QSignalBlocker quiet(m_list);
  m_list->clear();
  if (!run) return;
  for (const Card& card : run->deck().cards) m_list->addItem(QString::fromStdString(card.title));
  m_since.start();
  m_tick.start();
  connect(run, &DeckRun::changed, this, &TeacherView::follow);
  follow();
  tick();
}

void TeacherView::setPanel(QWidget* panel) {
  if (panel == m_panel) return;
  if (m_panel) {
    m_column->removeWidget(m_panel);
    m_panel->hide();
  }
  m_panel = panel;
  m_notes->setVisible(!panel);
  m_list->setVisible(!panel);
  if (!m_panel) return;
  m_column->insertWidget(1, m_panel, 3);
  m_panel->show();
}

void TeacherView::follow() {
  const auto card = m_run->shown();
  CardState now = m_run->state();
  now.numbers = true;  // hidden from the class, not from who teaches
  m_now->setCard(card, now);
  m_now->setBlank(m_run->blank());
  CardState next;
  next.index = m_run->index() + 1;
  next.count = m_run->count();
  m_next->setCard(m_run->shown(next.index), next);
  QStringList words;
  if (card) {
    if (card->card.notes) words.append(QString::fromStdString(*card->card.notes));
    if (card->card.reveal) words.append(tr("Answer: %1").arg(QString::fromStdString(*card->card.reveal)));
    QStringList numbers;
    for (const Figure& figure : figuresOf(*card, m_look->units())) numbers.append(figureLine(figure));
    if (!numbers.isEmpty()) words.append(numbers.join(QLatin1Char('\n')));
    for (const QString& what : card->missing) words.append(tr("Missing: %1").arg(what));
  }
  const QString text = words.join(QStringLiteral("\n\n"));
  if (text != m_notes->toPlainText()) m_notes->setPlainText(text);
  m_where->setText(tr("Card %1 of %2").arg(m_run->index() + 1).arg(m_run->count()));
  m_blank->setChecked(m_run->blank());
  m_numbers->setChecked(m_run->numbersHidden());
  m_slow->setChecked(m_run->slow());
  m_edit->setChecked(m_run->editing());
  m_back->setEnabled(m_run->canGoBack());
  m_on->setEnabled(m_run->canGoOn());
  m_edit->setEnabled(card && !card->rigs.empty());
  const QSignalBlocker quiet(m_list);
  m_list->setCurrentRow(m_run->index());
}

void TeacherView::tick() {
  const qint64 seconds = m_since.elapsed() / 1000;
  m_clock->setText(tr("%1   %2:%3")
                       .arg(QLocale().toString(QTime::currentTime(), QStringLiteral("HH:mm")))
                       .arg(seconds / 60)
                       .arg(seconds % 60, 2, 10, QLatin1Char('0')));
  m_clock->setAccessibleDescription(tr("Time of day, and minutes since the show began"));
}

QString TeacherView::notes() const { return m_notes->toPlainText(); }

}  // namespace grainwise::ui
