// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QUndoCommand>

#include "core/model/pool.h"

namespace grainwise::ui {

class PoolBook;

/// Puts what was found in a pool into the book, as a part of a step of the rig's: undoing the step
/// puts the pool back. A pool that was changed in the book since is left as it is.
class KeepInPool : public QUndoCommand {
 public:
  KeepInPool(PoolBook* book, const Pool& before, const Pool& after);

  void undo() override;
  void redo() override;

 private:
  void swap(const Pool& from, const Pool& to);

  QPointer<PoolBook> m_book;
  Pool m_before;
  Pool m_after;
};

}  // namespace grainwise::ui
