// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

#include "ui/text/words.h"
#include "ui/theme/look.h"

class QLabel;

namespace grainwise::ui {

class AnalysisFeed;

/// Why a reading says what it says, live: the figures, how they are put together, the limits and whose
/// they are, in three columns.
class WhyPanel : public QWidget {
  Q_OBJECT
 public:
  WhyPanel(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);
  void showReading(Reading reading);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void applyLook();

  Look* m_look;
  AnalysisFeed* m_feed;
  Reading m_reading = Reading::hinge;
  QList<QLabel*> m_titles;
  QList<QLabel*> m_texts;
};

}  // namespace grainwise::ui
