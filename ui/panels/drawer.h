// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <QWidget>
#include <functional>

#include "ui/theme/look.h"

class QHBoxLayout;
class QLabel;
class QStackedWidget;

namespace grainwise::ui {

class PillButton;

/// The drawer under the tiles: a row of tabs and one page. Standing pages always have a tab; passing
/// ones (why, rod, water, problems) have one only while they are open. The words at the right end
/// say why something was refused, until the next page or gesture.
class Drawer : public QWidget {
  Q_OBJECT
 public:
  explicit Drawer(Look* look, QWidget* parent = nullptr);

  enum class Stay { standing, passing };
  /// Makes a page as a child of `parent`.
  using Make = std::function<QWidget*(QWidget* parent)>;
  /// A page that is made when it is first opened: the start of the program waits for none of them.
  void addPage(const QString& key, const QString& title, Make make, Stay stay);
  void addPage(const QString& key, const QString& title, QWidget* page, Stay stay);
  /// Makes a page that is not there yet, without opening it.
  void prepare(const QString& key);
  void open(const QString& key);
  void setTitle(const QString& key, const QString& title);
  /// Stands at the right end of the tabs, on every page.
  void addAside(QWidget* widget);
  [[nodiscard]] QString current() const { return m_current; }
  /// Whether there is such a page and it always has a tab.
  [[nodiscard]] bool stays(const QString& key) const;

  void say(const QString& words);
  [[nodiscard]] QString said() const;

 Q_SIGNALS:
  void opened(const QString& key);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void applyLook();
  void bringToSight();

  struct Page {
    PillButton* tab;
    QWidget* widget;  ///< none before it is first opened
    Make make;
    Stay stay;
  };
  Look* m_look;
  QHBoxLayout* m_tabs;
  QStackedWidget* m_stack;
  QLabel* m_words;
  QHash<QString, Page> m_pages;
  QString m_current;
};

}  // namespace grainwise::ui
