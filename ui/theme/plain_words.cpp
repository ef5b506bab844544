// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/plain_words.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QHelpEvent>
#include <QLabel>
#include <QToolTip>

namespace grainwise::ui {

namespace {

/// The tooltip that would be shown at `at`: of an entry of a list, or of the widget itself.
QString toolTipOf(const QWidget* widget, QPoint at) {
  const auto* view = qobject_cast<const QAbstractItemView*>(widget->parentWidget());
  if (!view || view->viewport() != widget) return widget->toolTip();
  return view->indexAt(at).data(Qt::ToolTipRole).toString();
}

}  // namespace

void PlainWords::keep() {
  QCoreApplication* app = QCoreApplication::instance();
  if (app->findChild<PlainWords*>(QString(), Qt::FindDirectChildrenOnly)) return;
  app->installEventFilter(new PlainWords(app));
}

QString PlainWords::shown(const QString& text) {
  if (!Qt::mightBeRichText(text)) return text;
  return QStringLiteral("<span>") + text.toHtmlEscaped() + QStringLiteral("</span>");
}

QString PlainWords::inMenu(const QString& text) {
  QString plain = text;
  return plain.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

bool PlainWords::eventFilter(QObject* object, QEvent* event) {
  if (event->type() == QEvent::Polish) {
    auto* label = qobject_cast<QLabel*>(object);
    if (label && label->textFormat() == Qt::AutoText) label->setTextFormat(Qt::PlainText);
  } else if (event->type() == QEvent::ToolTip) {
    auto* widget = qobject_cast<QWidget*>(object);
    auto* help = static_cast<QHelpEvent*>(event);
    const QString text = widget ? toolTipOf(widget, help->pos()) : QString();
    if (Qt::mightBeRichText(text)) {
      QToolTip::showText(help->globalPos(), shown(text), widget);
      return true;
    }
  }
  return QObject::eventFilter(object, event);
}

}  // namespace grainwise::ui
