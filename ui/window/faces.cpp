// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/faces.h"

#include <QAction>
#include <QScrollArea>

#include "ui/window/actions.h"
#include "ui/window/top_bar.h"

namespace grainwise::ui {
namespace {

/// A face that is taller than the window scrolls as a whole.
QWidget* scrolled(const Faces::Make& make, QWidget* parent) {
  auto* scroll = new QScrollArea(parent);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(make(scroll));
  return scroll;
}

}  // namespace

Faces::Faces(TopBar* top, Actions* actions, QWidget* parent)
    : QStackedWidget(parent), m_top(top), m_actions(actions) {
  setObjectName(QStringLiteral("faces"));
}

void Faces::add(const QString& key, const QString& title, Make make) {
  QAction* action = m_actions->addFace(key, title);
  m_top->addFace(action);
  m_faces.append({key, action, std::move(make)});
  connect(action, &QAction::triggered, this, [this, key] { open(key); });
  if (m_faces.size() == 1) open(key);
}

void Faces::open(const QString& key) {
  for (Face& face : m_faces) {
    if (face.key != key) continue;
    if (face.page == nullptr) {
      face.page = scrolled(face.make, this);
      addWidget(face.page);
    }
    m_current = key;
    face.action->setChecked(true);
    setCurrentWidget(face.page);
    Q_EMIT opened(key);
    return;
  }
}

QString Faces::current() const { return m_current; }

}  // namespace grainwise::ui
