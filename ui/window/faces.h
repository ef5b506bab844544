// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QStackedWidget>
#include <functional>

class QAction;

namespace grainwise::ui {

class Actions;
class TopBar;

/// The faces of the window, one shown at a time: a pill in the top bar and an action with a key for each.
/// The first one added is shown from the start; any other is made when it is first shown.
class Faces : public QStackedWidget {
  Q_OBJECT
 public:
  Faces(TopBar* top, Actions* actions, QWidget* parent = nullptr);

  using Make = std::function<QWidget*(QWidget* parent)>;
  void add(const QString& key, const QString& title, Make make);
  void open(const QString& key);
  [[nodiscard]] QString current() const;

 Q_SIGNALS:
  void opened(const QString& key);

 private:
  struct Face {
    QString key;
    QAction* action;
    Make make;
    QWidget* page = nullptr;  ///< what scrolls it; nothing until it is first shown
  };
  TopBar* m_top;
  Actions* m_actions;
  QList<Face> m_faces;
  QString m_current;
};

}  // namespace grainwise::ui
