// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QStringList>

#include "tests/support/sample_rig.h"
#include "tests/support/ui_support.h"
#include "ui/document/rig_document.h"
#include "ui/theme/look.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::test {

inline constexpr ui::DisplayUnits kTrade{};
inline constexpr ui::DisplayUnits kMetric{.metres = true, .grams = true, .celsius = true};

/// The samples that must read without a fault, and those that are wrong on purpose.
inline const char* const kSound[] = {"01-plain-winter", "02-slot",      "03-thin-tail",
                                     "04-small-river",  "05-dry-line",  "06-under-the-film",
                                     "07-old-winter",   "08-trout-two-hander",
                                     "09-wide-water",   "10-single-five"};
inline const char* const kWrong[] = {"wrong-anvil", "wrong-fat-fly", "wrong-hinge", "wrong-no-grip"};

/// A document with its feed and a look: what every view of a rig is made from.
struct BenchFixture : UiFixture {
  BenchFixture() : feed(&document) { show(sampleRig("01-plain-winter")); }
  void show(const Rig& rig) {
    document.startFrom(rig);
    settle();
  }
  static void settle() {
    for (int turn = 0; turn < 4; ++turn) QCoreApplication::processEvents();
  }

  ui::Look look;
  ui::RigDocument document;
  ui::AnalysisFeed feed;
};

/// Counts the paint events of a widget.
class PaintCounter : public QObject {
 public:
  explicit PaintCounter(QWidget* widget) { widget->installEventFilter(this); }
  [[nodiscard]] int count() const { return m_count; }

 private:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++m_count;
    return false;
  }
  int m_count = 0;
};

}  // namespace grainwise::test
