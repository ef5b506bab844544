// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/edit_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

#include "ui/document/rig_document.h"
#include "ui/strip/part_editor.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kTarget = 44;
}

EditPanel::EditPanel(Look* look, const Shelf& shelf, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("cardEdit"));
  m_document = new RigDocument(this);
  m_feed = new AnalysisFeed(m_document, this);
  auto* ruler = new Ruler(this);
  m_strip = new StripView(look, m_document, m_feed, ruler, this);
  m_strip->setObjectName(QStringLiteral("cardStrip"));
  auto* shelfView = new ShelfView(look, m_document, this);
  shelfView->setObjectName(QStringLiteral("cardShelf"));
  shelfView->setShelf(shelf);
  auto* part = new PartEditor(look, m_document, m_feed, this);
  part->setObjectName(QStringLiteral("cardPart"));
  m_pages = new QTabWidget(this);
  m_pages->setObjectName(QStringLiteral("cardPages"));
  m_pages->addTab(shelfView, tr("Shelf"));
  m_pages->addTab(part, tr("Part"));
  m_words = new QLabel(tr("Changed for the class only: it is put back when you leave."), this);
  m_words->setObjectName(QStringLiteral("cardEditWords"));
  m_words->setTextFormat(Qt::PlainText);
  auto* undo = new QPushButton(tr("Undo"), this);
  undo->setObjectName(QStringLiteral("cardEditUndo"));
  auto* back = new QPushButton(tr("Put back"), this);
  back->setObjectName(QStringLiteral("putBack"));
  for (QPushButton* button : {undo, back}) button->setMinimumHeight(kTarget);
  auto* row = new QHBoxLayout;
  row->addWidget(m_words, 1);
  row->addWidget(undo);
  row->addWidget(back);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 4, 8, 4);
  column->addLayout(row);
  column->addWidget(m_strip, 2);
  column->addWidget(m_pages, 3);
  connect(undo, &QPushButton::clicked, m_document->undoStack(), &QUndoStack::undo);
  connect(back, &QPushButton::clicked, this, &EditPanel::putBack);
  connect(m_document, &RigDocument::rigChanged, this, [this] { Q_EMIT rigChanged(*m_document->shown()); });
  connect(m_strip, &StripView::partSelected, part, &PartEditor::setPart);
  connect(m_strip, &StripView::partActivated, this, [this, part] { m_pages->setCurrentWidget(part); });
  connect(m_strip, &StripView::refused, m_words, &QLabel::setText);
  connect(shelfView, &ShelfView::refused, m_words, &QLabel::setText);
}

void EditPanel::begin(const Rig& rig) {
  m_document->startFrom(rig);
  m_words->setText(tr("Changed for the class only: it is put back when you leave."));
}

}  // namespace grainwise::ui
