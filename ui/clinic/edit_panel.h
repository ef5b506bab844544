// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QLabel;
class QTabWidget;

namespace grainwise::ui {

class AnalysisFeed;
class RigDocument;
class StripView;

/// Changes a card's rig live: the same line, Shelf and Part as on the Bench, on a copy of its own. What is
/// held over the line shows on the card at once.
class EditPanel : public QWidget {
  Q_OBJECT
 public:
  EditPanel(Look* look, const Shelf& shelf, QWidget* parent = nullptr);

  void begin(const Rig& rig);
  [[nodiscard]] StripView* strip() const { return m_strip; }
  [[nodiscard]] RigDocument* document() const { return m_document; }

 Q_SIGNALS:
  void rigChanged(const Rig& rig);
  void putBack();

 private:
  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  StripView* m_strip;
  QTabWidget* m_pages;
  QLabel* m_words;
};

}  // namespace grainwise::ui
