// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QPointer>
#include <functional>

#include "ui/charts/way_out_files.h"
#include "ui/text/out_table.h"

class QAbstractItemView;
class QMenu;

namespace grainwise::ui {

/// The way out of the window for what a widget shows: its picture and its numbers, onto the clipboard or
/// into a file, from a menu of its own (right click, the menu key, Shift+F10) and from the window's.
class WayOut : public QObject {
  Q_OBJECT
 public:
  struct Offer {
    std::function<QString()> name;         ///< of what is shown; the file's name to begin with
    std::function<OutTable()> table;       ///< built anew each time: numbers as the locale of that moment has them
    std::function<OutPicture()> picture;   ///< without one the table is drawn
  };
  /// Lives with the widget.
  WayOut(Look* look, QWidget* widget);
  WayOut* add(Offer offer);
  WayOut* add(const QString& name, std::function<OutTable()> table, std::function<OutPicture()> picture = {});
  /// The widget itself is the picture.
  WayOut* addWidget(const QString& name, std::function<OutTable()> table);
  /// What a list or table of the window says, row by row.
  static WayOut* ofView(Look* look, QAbstractItemView* view, const QString& name);

  /// The one of a widget, or of the nearest that holds it; null when there is none.
  static WayOut* at(const QWidget* widget);
  /// Those that are on screen in a window, in their order.
  static QList<WayOut*> shownIn(const QWidget* window);

  [[nodiscard]] const QList<Offer>& offers() const { return m_offers; }
  [[nodiscard]] QString nameOf(int offer) const { return m_offers[offer].name(); }
  [[nodiscard]] QWidget* widget() const { return m_widget; }
  /// Entries for each offer; of several each in a menu of its own.
  void addTo(QMenu* menu);
  void addOffer(QMenu* menu, int offer);

  void copyPicture(int offer = 0);
  void copyTable(int offer = 0);
  void savePicture(int offer = 0);
  void saveTable(int offer = 0);
  [[nodiscard]] OutPicture pictureOfOffer(int offer) const;

  /// Where to save, unless a test answers: title of the dialog, suggested name, filters.
  std::function<QString(const QString& title, const QString& name, const QStringList& filters)> askPath;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void showMenu(const QPoint& global);
  void painted(int offer, const std::function<void(const OutPicture&)>& what) const;
  [[nodiscard]] OutTable tableForFile(int offer) const;
  void tell(const QString& why, const QString& path);

  Look* m_look;
  QWidget* m_widget;
  QList<Offer> m_offers;
  QPointer<QMenu> m_menu;
};

}  // namespace grainwise::ui
