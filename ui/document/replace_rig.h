// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QUndoCommand>
#include <memory>

#include "core/model/rig.h"

namespace grainwise::ui {

class RigDocument;

/// The one undo command: swaps two snapshots of the rig. Merges with the step before when both belong
/// to the same gesture, and vanishes when the merged step changes nothing.
class ReplaceRig : public QUndoCommand {
 public:
  ReplaceRig(RigDocument* document, const QString& step, std::shared_ptr<const Rig> after,
             const QString& gesture);

  void undo() override;
  void redo() override;
  [[nodiscard]] int id() const override;
  bool mergeWith(const QUndoCommand* other) override;

  [[nodiscard]] const Rig& before() const { return *m_before; }
  [[nodiscard]] const Rig& after() const { return *m_after; }

 private:
  RigDocument* m_document;
  std::shared_ptr<const Rig> m_before;
  std::shared_ptr<const Rig> m_after;
  QString m_gesture;
};

}  // namespace grainwise::ui
