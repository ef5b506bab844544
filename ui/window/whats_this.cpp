// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/whats_this.h"

#include <QAction>
#include <QApplication>
#include <QHelpEvent>
#include <QToolTip>
#include <QWhatsThis>
#include <QWidget>

#include "ui/text/control_help.h"
#include "ui/theme/plain_words.h"
#include "ui/window/actions.h"

namespace grainwise::ui {
namespace {

QString className(const QWidget* widget) {
  return QStringLiteral("class:") +
         QString::fromLatin1(widget->metaObject()->className()).section(QStringLiteral("::"), -1);
}

/// By the widget's own name, by its class, or by the name of the field that it is the inner part of.
QString tableWords(const QWidget* widget, QString (*table)(const QString&)) {
  for (const QString& name : {widget->objectName(), className(widget)}) {
    if (name.isEmpty()) continue;
    if (QString words = table(name); !words.isEmpty()) return words;
  }
  const QWidget* parent = widget->parentWidget();
  const bool inner = parent != nullptr && !parent->isWindow() && !parent->objectName().isEmpty() &&
                     (widget->objectName().isEmpty() || widget->objectName().startsWith(QLatin1String("qt_")));
  return inner ? table(parent->objectName()) : QString();
}

}  // namespace

WhatsThis::WhatsThis(Actions* actions, QWidget* window) : QObject(window), m_window(window) {
  qApp->installEventFilter(this);
  for (QAction* action : actions->all()) explain(action);
  connect(actions->whatsThis, &QAction::triggered, this, &WhatsThis::tellOfFocus);
  connect(actions->pointAndAsk, &QAction::triggered, this, [] { QWhatsThis::enterWhatsThisMode(); });
}

QString WhatsThis::wordsFor(const QWidget* widget) {
  QStringList words;
  const auto add = [&words](const QString& more) {
    if (!more.isEmpty() && !words.contains(more)) words << more;
  };
  add(tableWords(widget, controlHelp));
  add(widget->whatsThis());
  if (words.isEmpty()) add(widget->toolTip());
  // What has no words of its own is told by the page that it stands on.
  for (const QWidget* at = widget->parentWidget(); words.isEmpty() && at != nullptr; at = at->parentWidget()) {
    add(tableWords(at, controlHelp));
  }
  if (!words.isEmpty()) add(reasonFor(widget));
  return words.join(QLatin1Char(' '));
}

QString WhatsThis::reasonFor(const QWidget* widget) {
  if (widget->isEnabled()) return {};
  // What is disabled with all that holds it has the reason of that.
  for (const QWidget* at = widget; at != nullptr && !at->isEnabled(); at = at->parentWidget()) {
    if (QString words = tableWords(at, disabledReason); !words.isEmpty()) return words;
  }
  return {};
}

/// An action's tooltip is its words while it can be used, else the reason.
void WhatsThis::explain(QAction* action) {
  const auto follow = [action] {
    const QString why = action->isEnabled() ? QString() : disabledReason(action->objectName());
    if (why.isEmpty() && action->property("why").isNull()) return;
    action->setProperty("why", why);
    action->setToolTip(why);  // an empty one is the action's words again
  };
  follow();
  connect(action, &QAction::enabledChanged, this, follow);
}

void WhatsThis::tellOfFocus() {
  const QWidget* widget = QApplication::focusWidget();
  for (; widget != nullptr && wordsFor(widget).isEmpty(); widget = widget->parentWidget()) {
  }
  if (widget == nullptr) return QWhatsThis::enterWhatsThisMode();
  const QPoint at = widget->mapToGlobal(QPoint(widget->width() / 4, widget->height() / 2));
  QWhatsThis::showText(at, PlainWords::shown(wordsFor(widget)), m_window);
}

bool WhatsThis::eventFilter(QObject* watched, QEvent* event) {
  if (!watched->isWidgetType()) return false;
  auto* widget = static_cast<QWidget*>(watched);
  switch (event->type()) {
    case QEvent::QueryWhatsThis:
      if (wordsFor(widget).isEmpty()) return false;
      event->accept();
      return true;
    case QEvent::WhatsThis:
      if (wordsFor(widget).isEmpty()) return false;
      QWhatsThis::showText(static_cast<QHelpEvent*>(event)->globalPos(), PlainWords::shown(wordsFor(widget)), widget);
      return true;
    case QEvent::ToolTip:
      if (const QString why = reasonFor(widget); !why.isEmpty()) {
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), PlainWords::shown(why), widget);
        return true;
      }
      return false;
    default:
      return false;
  }
}

}  // namespace grainwise::ui
