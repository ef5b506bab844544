// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/own_parts_page.h"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/bench/own_shelf.h"
#include "core/io/shelf_file.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/charts/way_out.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/document/whole_file.h"
#include "ui/strip/part_editor.h"
#include "ui/text/bench_words.h"
#include "ui/text/words.h"
#include "ui/theme/flow_row.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

namespace {

/// The same part, wherever it stands.
bool same(Part a, Part b) {
  for (Part* part : {&a, &b}) {
    part->id.reset();
    part->group.reset();
  }
  return a == b;
}

}  // namespace

OwnPartsPage::OwnPartsPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeParts", parent), m_document(document), m_store(store) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(16);
  auto* left = new QVBoxLayout;
  m_search = new QLineEdit(this);
  m_search->setObjectName(QStringLiteral("ownSearch"));
  m_search->setPlaceholderText(tr("Search my parts"));
  m_search->setAccessibleName(tr("Search my parts"));
  m_search->setMinimumHeight(32);
  m_search->setProperty("designSize", 15);
  m_list = new QListWidget(this);
  m_list->setObjectName(QStringLiteral("ownList"));
  m_list->setAccessibleName(tr("My parts"));
  m_list->setProperty("designSize", 15);
  m_list->setMinimumHeight(look->px(100));
  WayOut::ofView(look, m_list, tr("My parts"));
  left->addWidget(m_search);
  left->addWidget(m_list, 1);
  row->addLayout(left, 2);
  auto* right = new QVBoxLayout;
  right->setSpacing(4);
  right->addWidget(buttonRow());
  auto* offer = new QHBoxLayout;
  m_offer = addLabel(tr("The one on the line keeps the figures that it has."));
  m_putIn = addButton(tr("Put this one in"), "ownPutIn");
  offer->addWidget(m_offer);
  offer->addWidget(m_putIn);
  offer->addStretch(1);
  right->addLayout(offer);
  m_said = addLabel({});
  m_said->setObjectName(QStringLiteral("ownSaid"));
  right->addWidget(m_said);
  m_edited = new RigDocument(this);
  m_editedFeed = new AnalysisFeed(m_edited, this);
  m_editor = new PartEditor(look, m_edited, m_editedFeed, this);
  m_editor->setObjectName(QStringLiteral("ownEditor"));
  m_editor->setMinimumHeight(look->px(110));
  right->addWidget(m_editor, 1);
  right->addStretch(0);
  row->addLayout(right, 6);
  askReadPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Read a shelf"), {}, tr("Shelves (*.shelf.json)"));
  };
  askWritePath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Write my parts"), tr("my-parts.shelf.json"),
                                        tr("Shelves (*.shelf.json)"));
  };
  connectAll();
  restyle();
}

QWidget* OwnPartsPage::buttonRow() {
  auto* holder = new QWidget(this);
  auto* row = new FlowRow(look()->px(8));
  holder->setLayout(row);
  m_fromLine = addChoice({}, tr("Part of the line"), "ownFromLine");
  m_keep = addButton(tr("Keep it"), "ownKeep");
  m_place = addButton(tr("Put it on the line"), "ownPlace");
  m_copy = addButton(tr("Copy it"), "ownCopy");
  m_remove = addButton(tr("Remove"), "ownRemove");
  m_undo = addButton(tr("Undo"), "ownUndo");
  m_read = addButton(tr("Read a shelf…"), "ownRead");
  m_write = addButton(tr("Write them to a file…"), "ownWrite");
  auto* from = new QWidget(holder);
  auto* together = new QHBoxLayout(from);
  together->setContentsMargins(0, 0, 0, 0);
  together->addWidget(addLabel(tr("From the line")));
  together->addWidget(m_fromLine);
  together->addWidget(m_keep);
  row->addWidget(from);
  for (QPushButton* button : {m_place, m_copy, m_remove, m_undo, m_read, m_write}) row->addWidget(button);
  return holder;
}

void OwnPartsPage::connectAll() {
  connect(m_search, &QLineEdit::textChanged, this, [this] {
    m_chosen.clear();
    refresh();
  });
  connect(m_list, &QListWidget::currentRowChanged, this, [this] {
    load();
    refreshOffer();
  });
  connect(m_list, &QListWidget::itemActivated, this, &OwnPartsPage::place);
  connect(m_edited, &RigDocument::rigChanged, this, &OwnPartsPage::takeEdit);
  connect(m_putIn, &QPushButton::clicked, this, &OwnPartsPage::putIn);
  connect(m_keep, &QPushButton::clicked, this, &OwnPartsPage::keepFromLine);
  connect(m_place, &QPushButton::clicked, this, &OwnPartsPage::place);
  connect(m_copy, &QPushButton::clicked, this, &OwnPartsPage::copy);
  connect(m_remove, &QPushButton::clicked, this, &OwnPartsPage::removePart);
  connect(m_undo, &QPushButton::clicked, m_store, &OwnStore::undo);
  connect(m_read, &QPushButton::clicked, this, [this] {
    const QString path = askReadPath();
    if (!path.isEmpty()) say(readFile(path));
  });
  connect(m_write, &QPushButton::clicked, this, &OwnPartsPage::writeFile);
  connect(m_store, &OwnStore::ownChanged, this, &OwnPartsPage::refresh);
  connect(m_store, &OwnStore::spoolsChanged, this, [this] { m_undo->setEnabled(m_store->canUndo()); });
  connect(m_store, &OwnStore::failed, this, &OwnPartsPage::say);
  connect(m_document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
}

void OwnPartsPage::showEvent(QShowEvent* event) {
  MakePage::showEvent(event);
  refresh();
}

void OwnPartsPage::say(const QString& words) { m_said->setText(words); }

const Part* OwnPartsPage::chosen() const {
  const int row = m_list->currentRow();
  if (row < 0 || row >= int(m_shown.size())) return nullptr;
  return &m_store->own().parts[m_shown[std::size_t(row)]];
}

/// The chosen part stays in the list while it is edited, whatever is searched for.
void OwnPartsPage::fillList() {
  const QSignalBlocker quiet(m_list);
  const int before = m_list->currentRow();
  m_list->clear();
  m_shown.clear();
  const auto& parts = m_store->own().parts;
  const std::string words = m_search->text().toStdString();
  int row = -1;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool stays = !m_chosen.empty() && parts[i].id == m_chosen;
    if (!stays && !ownShelf::matches(parts[i], words)) continue;
    if (stays) row = int(m_shown.size());
    m_shown.push_back(i);
    const QString group = QString::fromStdString(parts[i].group.value_or(""));
    m_list->addItem(tr("%1  (%2)").arg(partWords(parts[i], units()), group));
  }
  if (row < 0 && !m_shown.empty()) row = std::clamp(before, 0, int(m_shown.size()) - 1);
  m_list->setCurrentRow(row);
}

void OwnPartsPage::load() {
  const Part* part = chosen();
  const std::string id = part ? part->id.value_or("") : std::string();
  if (part && id != m_chosen) m_was = *part;
  m_chosen = id;
  const auto& now = m_edited->rig().parts;
  if (part ? !now.empty() && same(now.front(), *part) : now.empty()) return;
  Rig alone;
  if (part) alone.parts = {*part};
  m_filling = true;
  m_edited->startFrom(alone);
  m_filling = false;
  m_editor->setPart(part ? std::optional<std::size_t>(0) : std::nullopt);
}

void OwnPartsPage::takeEdit() {
  const Part* old = chosen();
  if (m_filling || old == nullptr || m_edited->rig().parts.empty()) return;
  Part part = m_edited->rig().parts.front();
  part.id = old->id;
  part.group = old->group;
  const QString typed = m_editor->gesture();
  const QString gesture = typed.isEmpty() ? QString() : QString::fromStdString(*part.id) + typed;
  m_store->setOwn(ownShelf::with(m_store->own(), part, m_store->generic()), gesture);
}

void OwnPartsPage::refresh() {
  fillList();
  load();
  const int line = m_fromLine->currentIndex();
  m_fromLine->clear();
  for (const Part& part : m_document->rig().parts) m_fromLine->addItem(partWords(part, units()));
  m_fromLine->setCurrentIndex(m_fromLine->count() == 0
                                  ? -1
                                  : std::clamp(line, 0, m_fromLine->count() - 1));
  const bool any = chosen() != nullptr;
  for (QPushButton* button : {m_copy, m_remove, m_place}) button->setEnabled(any);
  m_editor->setVisible(any);
  m_keep->setEnabled(m_fromLine->count() > 0);
  m_undo->setEnabled(m_store->canUndo());
  m_write->setEnabled(!m_store->own().parts.empty());
  if (m_store->own().parts.empty()) {
    say(tr("None yet. Keep a part of the line, and it stands on the Shelf from now on."));
  }
  refreshOffer();
}

std::vector<std::size_t> OwnPartsPage::onLine() const {
  std::vector<std::size_t> found;
  const Part* part = chosen();
  const auto& parts = m_document->rig().parts;
  for (std::size_t i = 0; part && i < parts.size(); ++i) {
    if (parts[i].kind != part->kind || same(parts[i], *part)) continue;
    if ((part->name && parts[i].name == part->name) || same(parts[i], m_was)) found.push_back(i);
  }
  return found;
}

void OwnPartsPage::refreshOffer() {
  const bool offered = !onLine().empty();
  m_offer->setVisible(offered);
  m_putIn->setVisible(offered);
}

void OwnPartsPage::putIn() {
  const Part* part = chosen();
  if (!part) return;
  Part taken = *part;
  taken.id.reset();
  taken.group.reset();
  Rig rig = m_document->rig();
  for (const std::size_t i : onLine()) rig = edits::replaced(rig, i, taken);
  m_document->apply(tr("Put the new %1 in").arg(kindWords(part->kind)), rig);
}

void OwnPartsPage::keepFromLine() {
  const auto& parts = m_document->rig().parts;
  const int index = m_fromLine->currentIndex();
  if (index < 0 || index >= int(parts.size())) return;
  Part part = parts[std::size_t(index)];
  if (!part.name) part.name = partWords(part, units()).toStdString();
  // Kept again under its name, an edited part takes the place of the one it came from.
  for (const Part& own : m_store->own().parts) {
    if (own.name == part.name && own.kind == part.kind) {
      part.id = own.id;
      part.group = own.group;
    }
  }
  const bool again = part.id.has_value();
  const Shelf shelf = ownShelf::with(m_store->own(), part, m_store->generic());
  m_chosen = part.id ? *part.id : shelf.parts.back().id.value_or("");
  m_store->setOwn(shelf);
  say(again ? tr("Kept in place of the old one.") : tr("Kept. It stands on the Shelf."));
}

void OwnPartsPage::copy() {
  const Part* part = chosen();
  if (!part) return;
  const int row = m_list->currentRow();
  m_store->setOwn(ownShelf::duplicated(m_store->own(), *part->id, m_store->generic()));
  if (row + 1 < m_list->count()) m_list->setCurrentRow(row + 1);  // the copy, to be made another
}

void OwnPartsPage::removePart() {
  const Part* part = chosen();
  if (!part) return;
  const QString name = partWords(*part, units());
  m_store->setOwn(ownShelf::without(m_store->own(), *part->id));
  say(tr("Removed %1; Undo brings it back.").arg(name));
}

void OwnPartsPage::place() {
  const Part* part = chosen();
  if (!part) return;
  if (!edits::slotsFor(m_document->rig(), part->kind) && part->kind != PartKind::fly &&
      part->kind != PartKind::runningLine) {
    return say(tr("There is no room for another one on the line."));
  }
  m_document->apply(tr("Add %1").arg(partWords(*part, units())),
                    edits::placed(m_document->rig(), *part));
}

QString OwnPartsPage::readFile(const QString& path) {
  const auto shelf = loadShelf(path.toStdString());
  if (!shelf) return problemText(shelf.error().front());
  const auto result = ownShelf::imported(m_store->own(), *shelf, m_store->generic());
  m_store->setOwn(result.shelf);
  return tr("%1 added, %2 there already").arg(result.added).arg(result.same);
}

void OwnPartsPage::writeFile() {
  const QString path = askWritePath();
  if (path.isEmpty()) return;
  const QString why = writeWhole(path, QByteArray::fromStdString(writeShelf(m_store->own())));
  say(why.isEmpty() ? tr("Written.") : tr("Not written: %1").arg(why));
}

void OwnPartsPage::restyle() {
  MakePage::restyle();
  refresh();
}

}  // namespace grainwise::ui
