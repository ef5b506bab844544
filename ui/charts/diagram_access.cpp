// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/diagram_access.h"

#include <QAccessibleWidget>
#include <QEvent>
#include <QPainter>
#include <QWidget>

#include "ui/theme/look.h"

namespace grainwise::ui {
namespace {

constexpr auto kMark = "grainwiseDiagram";
constexpr double kFrame = 2;

class DiagramAccess : public QAccessibleWidget {
 public:
  explicit DiagramAccess(QWidget* widget) : QAccessibleWidget(widget, QAccessible::Chart) {}
};

QAccessibleInterface* diagramFactory(const QString&, QObject* object) {
  if (object == nullptr || !object->isWidgetType() || !object->property(kMark).toBool())
    return nullptr;
  return new DiagramAccess(static_cast<QWidget*>(object));
}

/// Draws a frame over the widget while it has the focus.
class FocusFrame : public QObject {
 public:
  FocusFrame(Look* look, QWidget* widget) : QObject(widget), m_look(look), m_widget(widget) {
    widget->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (watched != m_widget) return false;
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) m_widget->update();
    // Not in a picture that leaves the window, which is painted on another device.
    if (event->type() != QEvent::Paint || !m_widget->hasFocus() ||
        m_widget->property(kLeaving).toBool()) {
      return false;
    }
    static_cast<QObject*>(m_widget)->event(event);
    QPainter p(m_widget);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(m_look->colours().river, kFrame));
    p.drawRoundedRect(QRectF(m_widget->rect()).adjusted(kFrame, kFrame, -kFrame, -kFrame), 4, 4);
    return true;
  }

 private:
  Look* m_look;
  QWidget* m_widget;
};

}  // namespace

void makeDiagram(Look* look, QWidget* widget) {
  static const bool installed = (QAccessible::installFactory(diagramFactory), true);
  Q_UNUSED(installed);
  if (QAccessible::isActive()) {  // what was said of it before was said of any widget
    if (QAccessibleInterface* before = QAccessible::queryAccessibleInterface(widget)) {
      QAccessible::deleteAccessibleInterface(QAccessible::uniqueId(before));
    }
  }
  widget->setProperty(kMark, true);
  if (widget->focusPolicy() == Qt::NoFocus) widget->setFocusPolicy(Qt::StrongFocus);
  new FocusFrame(look, widget);
}

}  // namespace grainwise::ui
