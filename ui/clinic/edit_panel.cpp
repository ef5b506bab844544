// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/edit_panel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/charts/picture.h"
#include "ui/clinic/edit_desk.h"
#include "ui/document/rig_document.h"
#include "ui/theme/pill_button.h"

namespace grainwise::ui {
namespace {
constexpr int kTarget = 44;
/// Of both sides together, beside a button's words.
constexpr int kButtonRoom = 22;
}

EditPanel::EditPanel(Look* look, const SharedShelf& shelf, const Preferences* preferences, QWidget* parent)
    : QWidget(parent) {
  setObjectName(QStringLiteral("cardEdit"));
  m_words = new QLabel(this);
  m_words->setObjectName(QStringLiteral("cardEditWords"));
  m_words->setTextFormat(Qt::PlainText);
  m_stack = new QStackedWidget(this);
  m_group = new QButtonGroup(this);
  auto* row = new QHBoxLayout;
  for (int i = 0; i < 2; ++i) {
    const QString letter = setupLetter(setupOf(std::size_t(i), 2));
    auto* button = m_letters[std::size_t(i)] = new PillButton(look, PillButton::Form::pill, letter, this);
    button->setObjectName(QStringLiteral("cardEdit") + letter);
    button->setAccessibleName(tr("Change %1", "A or B").arg(letter));
    button->setCheckable(true);
    m_group->addButton(button, i);
    row->addWidget(button);
  }
  auto* undo = m_undo = new QPushButton(tr("Undo"), this);
  undo->setObjectName(QStringLiteral("cardEditUndo"));
  auto* back = new QPushButton(tr("Put back"), this);
  back->setObjectName(QStringLiteral("putBack"));
  for (QPushButton* button : {undo, back}) {
    button->setMinimumHeight(kTarget);
    button->setMinimumWidth(QFontMetrics(button->font()).horizontalAdvance(button->text()) + kButtonRoom);
  }
  row->addWidget(m_words, 1);
  row->addWidget(undo);
  row->addWidget(back);
  // Behind the buttons over them: Tab goes by what was made first.
  for (int i = 0; i < 2; ++i) {
    const QString letter = i == 0 ? QString() : setupLetter(Setup::b);
    auto* desk = m_desks[std::size_t(i)] = new EditDesk(look, shelf, letter, preferences, m_stack);
    m_stack->addWidget(desk);
    connect(desk, &EditDesk::rigChanged, this, [this, i](const Rig& rig) { Q_EMIT rigChanged(rig, i); });
    connect(desk, &EditDesk::refused, this, &EditPanel::say);
    connect(desk->document()->undoStack(), &QUndoStack::canUndoChanged, this, &EditPanel::enableUndo);
  }
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 4, 8, 4);
  column->addLayout(row);
  column->addWidget(m_stack, 1);
  connect(m_group, &QButtonGroup::idClicked, this, &EditPanel::setSide);
  connect(undo, &QPushButton::clicked, this, [this] { document()->undoStack()->undo(); });
  connect(back, &QPushButton::clicked, this, &EditPanel::putBack);
}

EditPanel::~EditPanel() {
  // The stacks speak once more as they go.
  for (EditDesk* desk : m_desks) desk->document()->undoStack()->disconnect(this);
}

void EditPanel::begin(const std::vector<Rig>& rigs) {
  for (PillButton* letter : m_letters) letter->setVisible(rigs.size() > 1);
  for (std::size_t i = 0; i < rigs.size() && i < m_desks.size(); ++i) m_desks[i]->begin(rigs[i]);
  setSide(0);
  say(tr("Changed for the class only: it is put back when you leave."));
}

void EditPanel::setShelf(const SharedShelf& shelf) {
  for (EditDesk* desk : m_desks) desk->setShelf(shelf);
}

int EditPanel::side() const { return m_stack->currentIndex(); }

void EditPanel::setSide(int side) {
  m_stack->setCurrentIndex(side);
  m_letters[std::size_t(side)]->setChecked(true);
  enableUndo();
}

void EditPanel::enableUndo() { m_undo->setEnabled(document()->undoStack()->canUndo()); }

StripView* EditPanel::strip() const { return m_desks[std::size_t(side())]->strip(); }

RigDocument* EditPanel::document() const { return m_desks[std::size_t(side())]->document(); }

void EditPanel::say(const QString& words) { m_words->setText(words); }

}  // namespace grainwise::ui
