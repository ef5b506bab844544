// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

#include "ui/text/words.h"
#include "ui/theme/look.h"

class QGridLayout;
class QLabel;

namespace grainwise::ui {

class AnalysisFeed;

/// Why a reading says what it says, live: the figures, how they are put together, the limits and whose
/// they are. Side by side where there is room, else one under the other; what is longer scrolls.
class WhyPanel : public QWidget {
  Q_OBJECT
 public:
  WhyPanel(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);
  void showReading(Reading reading);
  [[nodiscard]] int columns() const { return m_columns; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void addList(const QString& title, QWidget* inside);
  void refresh();
  void applyLook();
  void arrange();

  Look* m_look;
  AnalysisFeed* m_feed;
  Reading m_reading = Reading::junction;
  QGridLayout* m_grid;
  QList<QLabel*> m_titles;
  QList<QLabel*> m_texts;
  int m_columns = 0;
};

}  // namespace grainwise::ui
