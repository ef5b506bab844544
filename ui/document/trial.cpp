// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/trial.h"

#include "ui/document/rig_document.h"

namespace grainwise::ui {

Trial::Trial(RigDocument* document, QObject* parent) : QObject(parent), m_document(document) {
  connect(document, &RigDocument::rigChanged, this, &Trial::follow);
}

void Trial::tryOn(const QString& what, const QString& step, const std::vector<Part>& parts) {
  if (parts == m_document->rig().parts) return callOff();
  m_parts = parts;
  m_over = m_document->rig().parts;
  m_what = what;
  m_step = step;
  Rig tried = m_document->rig();
  tried.parts = parts;
  m_document->setPreview(tried);
  Q_EMIT changed();
}

void Trial::follow() {
  if (!m_parts || m_document->previewing()) return;
  Rig tried = m_document->rig();
  if (tried.parts != m_over) return end();
  tried.parts = *m_parts;
  m_document->setPreview(tried);
}

void Trial::end() {
  m_parts.reset();
  m_over.clear();
  Q_EMIT changed();
}

void Trial::take() {
  if (!m_parts) return;
  Rig taken = m_document->rig();
  taken.parts = *m_parts;
  end();
  m_document->apply(m_step, taken);
}

void Trial::callOff() {
  if (!m_parts) return;
  end();
  m_document->setPreview(std::nullopt);
}

}  // namespace grainwise::ui
