// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/replace_rig.h"

#include "ui/document/rig_document.h"

namespace grainwise::ui {
namespace {
constexpr int kMergeable = 1;
constexpr int kAlone = -1;
}  // namespace

ReplaceRig::ReplaceRig(RigDocument* document, const QString& step,
                       std::shared_ptr<const Rig> after, const QString& gesture)
    : QUndoCommand(step),
      m_document(document),
      m_before(document->m_rig),
      m_after(std::move(after)),
      m_gesture(gesture) {}

void ReplaceRig::undo() { m_document->setRig(m_before); }

void ReplaceRig::redo() { m_document->setRig(m_after); }

int ReplaceRig::id() const { return m_gesture.isEmpty() ? kAlone : kMergeable; }

bool ReplaceRig::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const ReplaceRig*>(other);
  if (next->m_gesture != m_gesture) return false;
  m_after = next->m_after;
  setObsolete(*m_after == *m_before);
  return true;
}

}  // namespace grainwise::ui
