// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>

#include "core/model/deck.h"
#include "core/model/pool.h"
#include "core/model/problem.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "core/model/spool.h"

/// Every rule of the file formats that a value can break, except the agreement of over-stated
/// sections (core/material/agreement.h). Each function returns all problems in the order of the
/// file, with the JSON pointer below `at` ("" for the document) and no file or line. Empty: sound.
namespace grainwise {

/// JSON pointers of values that stand in a file but could not be read, so that the value checked
/// holds a stand-in there. Rules that lean on one of them are left out: it is blamed once, as
/// unread.
class Unread {
 public:
  void add(std::string pointer) { m_pointers.insert(std::move(pointer)); }
  /// Whether the value at `pointer`, or one that it stands in, is unread.
  [[nodiscard]] bool covers(const std::string& pointer) const;
  /// The same, or something within the value at `pointer`.
  [[nodiscard]] bool touches(const std::string& pointer) const;

 private:
  std::set<std::string> m_pointers;
};

Problems check(const Rig& rig, const std::string& at = "", const Unread& unread = {});
Problems check(const Part& part, const std::string& at = "", const Unread& unread = {});
Problems check(const Shelf& shelf, const Unread& unread = {});
Problems check(const Pools& pools, const Unread& unread = {});
Problems check(const Spools& spools, const Unread& unread = {});
Problems check(const Deck& deck, const Unread& unread = {});

}  // namespace grainwise
