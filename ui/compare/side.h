// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

namespace grainwise::ui {

class AnalysisFeed;
class PillButton;
class RigDocument;
class Ruler;
class StripView;

/// One of the two rigs: its letter, its name, rod and water as sentences that open their pages, its own
/// file, and its line, fully editable. Which letter it has is the face's to say.
class Side : public QWidget {
  Q_OBJECT
 public:
  enum class Letter { a, b };
  Side(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent = nullptr);

  [[nodiscard]] RigDocument* document() const { return m_document; }
  [[nodiscard]] AnalysisFeed* feed() const { return m_feed; }
  [[nodiscard]] Ruler* ruler() const { return m_ruler; }
  [[nodiscard]] StripView* strip() const { return m_strip; }
  [[nodiscard]] Letter letter() const { return m_letter; }
  [[nodiscard]] QString letterWord() const;
  void setLetter(Letter letter);
  /// Whether undo, the keys and the pages below act on this one.
  void setCurrent(bool current);
  [[nodiscard]] bool isCurrent() const { return m_current; }

 Q_SIGNALS:
  void nameWanted();
  void rodWanted();
  void waterWanted();
  void openWanted();
  void saveWanted();
  void copyWanted();  ///< this one to the other

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void refresh();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  Ruler* m_ruler;
  StripView* m_strip;
  QWidget* m_header;
  PillButton* m_name;
  PillButton* m_rod;
  PillButton* m_water;
  PillButton* m_copy;
  PillButton* m_open;
  PillButton* m_save;
  Letter m_letter = Letter::a;
  bool m_current = false;
};

}  // namespace grainwise::ui
