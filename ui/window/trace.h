// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>

namespace grainwise::ui {

class MainWindow;

/// For tests that drive the window from outside: with GRAINWISE_TRACE set, prints on stdout after
/// each settled change a line `parts KIND KIND ...` and a line `at NAME X Y W H` for every visible
/// named widget, in screen pixels, then `settled`. With GRAINWISE_TRACE=first-picture the program prints
/// `usable` and ends by itself once the first picture is painted and all that it queued has run, for
/// timing its start from outside.
class Trace : public QObject {
  Q_OBJECT
 public:
  static std::unique_ptr<Trace> ifWanted(MainWindow& window);

 private:
  explicit Trace(MainWindow& window);
  void print() const;
  bool eventFilter(QObject* watched, QEvent* event) override;

  MainWindow& m_window;
  bool m_usable = false;
};

}  // namespace grainwise::ui
