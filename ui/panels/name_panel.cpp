// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/name_panel.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/document/rig_document.h"

namespace grainwise::ui {

NamePanel::NamePanel(Look* look, RigDocument* document, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document) {
  setObjectName(QStringLiteral("namePanel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 8, 0, 8);
  m_nameLabel = new QLabel(tr("Name of the rig"), this);
  m_name = new QLineEdit(this);
  m_name->setObjectName(QStringLiteral("rigName"));
  m_name->setMinimumHeight(32);
  m_name->setMaximumWidth(640);
  m_name->setMaxLength(limits::kStringChars);
  m_name->setAccessibleName(m_nameLabel->text());
  m_notesLabel = new QLabel(tr("Notes"), this);
  m_notes = new QPlainTextEdit(this);
  m_notes->setTabChangesFocus(true);
  m_notes->setAccessibleName(m_notesLabel->text());
  m_nameLabel->setBuddy(m_name);
  m_notesLabel->setBuddy(m_notes);
  column->addWidget(m_nameLabel);
  column->addWidget(m_name);
  column->addWidget(m_notesLabel);
  column->addWidget(m_notes, 1);
  connect(m_name, &QLineEdit::textEdited, this, [this](const QString& text) {
    m_document->apply(tr("Rename the rig"), edits::renamed(m_document->rig(), text.toStdString()),
                      QStringLiteral("name"));
  });
  connect(m_notes, &QPlainTextEdit::textChanged, this, [this] {
    const QString text = m_notes->toPlainText().left(limits::kStringChars);
    if (text.toStdString() == m_document->rig().notes.value_or(std::string())) return;
    m_document->apply(tr("Change the notes"), edits::withNotes(m_document->rig(), text.toStdString()),
                      QStringLiteral("notes"));
  });
  connect(document, &RigDocument::rigChanged, this, &NamePanel::refresh);
  connect(look, &Look::changed, this, &NamePanel::applyLook);
  applyLook();
  refresh();
}

void NamePanel::refresh() {
  const Rig& rig = m_document->rig();
  const QString name = QString::fromStdString(rig.name);
  if (m_name->text() != name) m_name->setText(name);
  const QString notes = QString::fromStdString(rig.notes.value_or(std::string()));
  if (m_notes->toPlainText() != notes) {
    const QSignalBlocker quiet(m_notes);
    m_notes->setPlainText(notes);
  }
}

void NamePanel::applyLook() {
  m_nameLabel->setFont(m_look->font(14));
  m_notesLabel->setFont(m_look->font(14));
  m_name->setFont(m_look->font(16));
  m_notes->setFont(m_look->font(15));
}

void NamePanel::begin() { m_name->setFocus(Qt::ShortcutFocusReason); }

}  // namespace grainwise::ui
