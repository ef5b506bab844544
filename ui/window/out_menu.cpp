// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/out_menu.h"

#include <QAction>
#include <QApplication>
#include <QMenu>

#include "ui/charts/way_out.h"
#include "ui/theme/plain_words.h"
#include "ui/window/actions.h"

namespace grainwise::ui {

OutMenu::OutMenu(Actions* actions, QWidget* window) : QObject(window), m_window(window) {
  QMenu* menu = actions->outMenu();
  connect(menu, &QMenu::aboutToShow, this, [this, menu] { fill(menu); });
  connect(actions->copyPicture, &QAction::triggered, this, [this] {
    if (WayOut* out = meant()) out->copyPicture();
  });
  connect(actions->copyTable, &QAction::triggered, this, [this] {
    if (WayOut* out = meant()) out->copyTable();
  });
}

WayOut* OutMenu::meant() const {
  QWidget* window = QApplication::activeWindow() != nullptr ? QApplication::activeWindow() : m_window;
  if (WayOut* out = WayOut::at(QApplication::focusWidget())) return out;
  const QList<WayOut*> shown = WayOut::shownIn(window);
  return shown.isEmpty() ? nullptr : shown.first();
}

void OutMenu::fill(QMenu* menu) {
  menu->clear();
  for (WayOut* out : WayOut::shownIn(m_window)) {
    for (int i = 0; i < out->offers().size(); ++i) {
      QMenu* one = menu->addMenu(PlainWords::inMenu(out->nameOf(i)));
      one->setFont(menu->font());
      out->addOffer(one, i);
    }
  }
  if (menu->isEmpty()) menu->addAction(tr("No picture or table is on screen"))->setEnabled(false);
}

}  // namespace grainwise::ui
