// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/edit_desk.h"

#include <QTabWidget>
#include <QVBoxLayout>

#include "ui/document/rig_document.h"
#include "ui/strip/part_editor.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

EditDesk::EditDesk(Look* look, const SharedShelf& shelf, const QString& letter,
                   const Preferences* preferences, QWidget* parent)
    : QWidget(parent) {
  m_document = new RigDocument(this);
  m_feed = new AnalysisFeed(m_document, this);
  m_feed->follow(preferences);
  auto* ruler = new Ruler(this);
  m_strip = new StripView(look, m_document, m_feed, ruler, this);
  m_strip->setObjectName(QStringLiteral("cardStrip") + letter);
  // Before its pages: Tab goes by what was made first.
  m_pages = new QTabWidget(this);
  m_pages->setObjectName(QStringLiteral("cardPages") + letter);
  m_shelf = new ShelfView(look, m_document, m_pages);
  m_shelf->setObjectName(QStringLiteral("cardShelf") + letter);
  m_shelf->setShelf(shelf);
  auto* part = new PartEditor(look, m_document, m_feed, m_pages);
  part->setObjectName(QStringLiteral("cardPart") + letter);
  m_pages->addTab(m_shelf, tr("Shelf"));
  m_pages->addTab(part, tr("Part"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(m_strip, 2);
  column->addWidget(m_pages, 3);
  connect(m_document, &RigDocument::rigChanged, this, [this] { Q_EMIT rigChanged(*m_document->shown()); });
  connect(m_strip, &StripView::partSelected, part, &PartEditor::setPart);
  connect(m_strip, &StripView::partActivated, this, [this, part] { m_pages->setCurrentWidget(part); });
  connect(m_strip, &StripView::refused, this, &EditDesk::refused);
  connect(m_shelf, &ShelfView::refused, this, &EditDesk::refused);
}

void EditDesk::begin(const Rig& rig) { m_document->startFrom(rig); }

void EditDesk::setShelf(const SharedShelf& shelf) { m_shelf->setShelf(shelf); }

}  // namespace grainwise::ui
