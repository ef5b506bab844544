// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QWidget;

namespace grainwise::ui {

/// A window beside the workbench opens where it was last, and as large. It goes by the window's name.
class RememberedPlace : public QObject {
  Q_OBJECT
 public:
  explicit RememberedPlace(QWidget* window);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* m_window;
};

}  // namespace grainwise::ui
