// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/keep_in_pool.h"

#include <algorithm>

#include "ui/document/pool_book.h"

namespace grainwise::ui {

KeepInPool::KeepInPool(PoolBook* book, const Pool& before, const Pool& after)
    : m_book(book), m_before(before), m_after(after) {}

void KeepInPool::undo() { swap(m_after, m_before); }

void KeepInPool::redo() { swap(m_before, m_after); }

void KeepInPool::swap(const Pool& from, const Pool& to) {
  if (!m_book) return;
  const auto& pools = m_book->pools().pools;
  const auto found = std::find(pools.begin(), pools.end(), from);
  if (found != pools.end()) m_book->replace(std::size_t(found - pools.begin()), to);
}

}  // namespace grainwise::ui
