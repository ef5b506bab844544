// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QTabWidget;

namespace grainwise::ui {

class AnalysisFeed;
class Preferences;
class RigDocument;
class ShelfView;
class StripView;

/// One rig of a card being changed: its line, with Shelf and part under it, and an undo of its own.
class EditDesk : public QWidget {
  Q_OBJECT
 public:
  /// `letter` ends the names of its widgets: empty, or B.
  EditDesk(Look* look, const SharedShelf& shelf, const QString& letter,
           const Preferences* preferences, QWidget* parent = nullptr);

  /// Starts on a copy of this rig, with nothing to undo.
  void begin(const Rig& rig);
  void setShelf(const SharedShelf& shelf);
  [[nodiscard]] RigDocument* document() const { return m_document; }
  [[nodiscard]] StripView* strip() const { return m_strip; }

 Q_SIGNALS:
  void rigChanged(const Rig& rig);
  void refused(const QString& why);

 private:
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  StripView* m_strip;
  ShelfView* m_shelf;
  QTabWidget* m_pages;
};

}  // namespace grainwise::ui
