// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

/// A window as the keyboard meets it.
namespace grainwise::test {

/// What a person works: not the inner parts that a control is made of.
bool isControl(const QWidget* widget);

/// "addSection (QPushButton)": how a finding names a widget.
QString controlName(const QWidget* widget);

/// One walk with the Tab key from the first control of a window until it comes round.
struct TabWalk {
  QStringList stops;    ///< names, in the order met
  QStringList faults;   ///< controls skipped, steps back against the reading order, focus marks not seen
  int marksSeen = 0;    ///< controls that looked different with the focus
};

/// Walks `window`, which must be visible and active. `marks` also compares each control's picture with
/// the focus and without it.
TabWalk walkByTab(QWidget* window, bool marks);

}  // namespace grainwise::test
