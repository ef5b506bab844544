// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <utility>
#include <vector>

#include "core/model/part.h"

namespace grainwise {

/// Parts to build rigs from. Each has an `id` (unique, stable) and a `group`.
struct Shelf {
  std::vector<Part> parts;
  Kept kept;
  bool operator==(const Shelf&) const = default;
};

/// A shelf that several keep at once. What it holds never changes, so that a copy costs a pointer, not hundreds of
/// parts; one that changes is another.
class SharedShelf {
 public:
  SharedShelf() : SharedShelf(Shelf{}) {}
  // NOLINTNEXTLINE(google-explicit-constructor): a shelf goes wherever one is shared.
  SharedShelf(Shelf shelf) : m_shelf(std::make_shared<const Shelf>(std::move(shelf))) {}

  const Shelf& operator*() const { return *m_shelf; }
  const Shelf* operator->() const { return m_shelf.get(); }
  bool operator==(const SharedShelf& other) const { return m_shelf == other.m_shelf || *m_shelf == *other.m_shelf; }

 private:
  std::shared_ptr<const Shelf> m_shelf;
};

/// `own` laid over `base`: where both have an id, the part of `own` stands, in the place of the
/// one it replaces; the others of `own` follow at the end.
Shelf merged(const Shelf& base, const Shelf& own);

}  // namespace grainwise
