// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/own_parts_page.h"

#include <QComboBox>
#include <QFileDialog>
#include <QGridLayout>
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
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/document/whole_file.h"
#include "ui/text/bench_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {

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
  left->addWidget(m_search);
  left->addWidget(m_list, 1);
  row->addLayout(left, 2);
  auto* grid = new QGridLayout;
  m_fromLine = addChoice({}, tr("Part of the line"), "ownFromLine");
  m_keep = addButton(tr("Keep it"), "ownKeep");
  m_name = new QLineEdit(this);
  m_name->setObjectName(QStringLiteral("ownName"));
  m_name->setAccessibleName(tr("Its name"));
  m_name->setMaxLength(limits::kStringChars);
  m_name->setMinimumHeight(32);
  m_name->setProperty("designSize", 15);
  m_rename = addButton(tr("Name it so"), "ownRename");
  m_place = addButton(tr("Put it on the line"), "ownPlace");
  m_place->setToolTip(tr("Edit it there, then keep it again: it takes the place of the old one"));
  m_copy = addButton(tr("Copy it"), "ownCopy");
  m_remove = addButton(tr("Remove"), "ownRemove");
  m_undo = addButton(tr("Undo"), "ownUndo");
  auto* read = addButton(tr("Read a shelf…"), "ownRead");
  m_write = addButton(tr("Write them to a file…"), "ownWrite");
  grid->addWidget(addLabel(tr("From the line")), 0, 0);
  grid->addWidget(m_fromLine, 0, 1, 1, 2);
  grid->addWidget(m_keep, 0, 3);
  grid->addWidget(addLabel(tr("Name")), 1, 0);
  grid->addWidget(m_name, 1, 1, 1, 2);
  grid->addWidget(m_rename, 1, 3);
  grid->addWidget(m_place, 2, 0);
  grid->addWidget(m_copy, 2, 1);
  grid->addWidget(m_remove, 2, 2);
  grid->addWidget(m_undo, 2, 3);
  grid->addWidget(read, 3, 0);
  grid->addWidget(m_write, 3, 1, 1, 2);
  m_said = addLabel({});
  m_said->setObjectName(QStringLiteral("ownSaid"));
  grid->addWidget(m_said, 4, 0, 1, 4);
  grid->setRowStretch(5, 1);
  grid->setColumnStretch(1, 1);
  row->addLayout(grid, 3);
  askReadPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Read a shelf"), {}, tr("Shelves (*.shelf.json)"));
  };
  askWritePath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Write my parts"), tr("my-parts.shelf.json"),
                                        tr("Shelves (*.shelf.json)"));
  };
  connect(m_search, &QLineEdit::textChanged, this, &OwnPartsPage::refresh);
  connect(m_list, &QListWidget::currentRowChanged, this, [this] {
    const Part* part = chosen();
    m_name->setText(part ? QString::fromStdString(part->name.value_or("")) : QString());
  });
  connect(m_list, &QListWidget::itemActivated, this, &OwnPartsPage::place);
  connect(m_keep, &QPushButton::clicked, this, &OwnPartsPage::keepFromLine);
  connect(m_rename, &QPushButton::clicked, this, &OwnPartsPage::rename);
  connect(m_name, &QLineEdit::returnPressed, this, &OwnPartsPage::rename);
  connect(m_place, &QPushButton::clicked, this, &OwnPartsPage::place);
  connect(m_copy, &QPushButton::clicked, this, &OwnPartsPage::copy);
  connect(m_remove, &QPushButton::clicked, this, &OwnPartsPage::removePart);
  connect(m_undo, &QPushButton::clicked, store, &OwnStore::undo);
  connect(read, &QPushButton::clicked, this, [this] {
    const QString path = askReadPath();
    if (!path.isEmpty()) say(readFile(path));
  });
  connect(m_write, &QPushButton::clicked, this, &OwnPartsPage::writeFile);
  connect(store, &OwnStore::ownChanged, this, &OwnPartsPage::refresh);
  connect(store, &OwnStore::spoolsChanged, this, [this] { m_undo->setEnabled(m_store->canUndo()); });
  connect(store, &OwnStore::failed, this, &OwnPartsPage::say);
  connect(document, &RigDocument::rigChanged, this, [this] {
    if (isVisible()) refresh();
  });
  restyle();
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

void OwnPartsPage::refresh() {
  const int before = m_list->currentRow();
  {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    m_shown.clear();
    const auto& parts = m_store->own().parts;
    const std::string words = m_search->text().toStdString();
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (!ownShelf::matches(parts[i], words)) continue;
      m_shown.push_back(i);
      const QString group = QString::fromStdString(parts[i].group.value_or(""));
      m_list->addItem(tr("%1  (%2)").arg(partWords(parts[i], units()), group));
    }
  }
  m_list->setCurrentRow(m_shown.empty() ? -1 : std::clamp(before, 0, int(m_shown.size()) - 1));
  const int line = m_fromLine->currentIndex();
  m_fromLine->clear();
  for (const Part& part : m_document->rig().parts) m_fromLine->addItem(partWords(part, units()));
  m_fromLine->setCurrentIndex(m_fromLine->count() == 0
                                  ? -1
                                  : std::clamp(line, 0, m_fromLine->count() - 1));
  const bool any = chosen() != nullptr;
  for (QPushButton* button : {m_rename, m_copy, m_remove, m_place}) button->setEnabled(any);
  m_name->setEnabled(any);
  m_keep->setEnabled(m_fromLine->count() > 0);
  m_undo->setEnabled(m_store->canUndo());
  m_write->setEnabled(!m_store->own().parts.empty());
  if (m_store->own().parts.empty()) {
    say(tr("None yet. Keep a part of the line, and it stands on the Shelf from now on."));
  }
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
  m_store->setOwn(ownShelf::with(m_store->own(), part, m_store->generic()));
  say(again ? tr("Kept in place of the old one.") : tr("Kept. It stands on the Shelf."));
}

void OwnPartsPage::rename() {
  const Part* part = chosen();
  if (!part || m_name->text().trimmed().isEmpty()) return;
  Part named = *part;
  named.name = m_name->text().trimmed().toStdString();
  m_store->setOwn(ownShelf::with(m_store->own(), named, m_store->generic()));
}

void OwnPartsPage::copy() {
  const Part* part = chosen();
  if (!part) return;
  m_store->setOwn(ownShelf::duplicated(m_store->own(), *part->id, m_store->generic()));
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
