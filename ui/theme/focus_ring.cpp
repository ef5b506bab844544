// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/focus_ring.h"

#include <QAbstractScrollArea>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QStyle>
#include <QTabBar>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr double kPen = 2;
constexpr int kBeside = 4;

/// All of it, or as much of a row as the words beside a check box take.
QRect placeOn(const QWidget* widget) {
  const bool checks = qobject_cast<const QCheckBox*>(widget) || qobject_cast<const QRadioButton*>(widget);
  if (!checks) return widget->rect();
  QRect words = widget->rect();
  words.setWidth(std::min(words.width(), widget->sizeHint().width() + kBeside));
  return QStyle::visualRect(widget->layoutDirection(), widget->rect(), words);
}

/// Lies over a widget as large as it, and lets every click through.
class Ring : public QWidget {
 public:
  Ring(const Look* look, QWidget* around) : QWidget(around), m_look(look) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setGeometry(placeOn(around));
    around->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (watched == parent() && event->type() == QEvent::Resize) setGeometry(placeOn(parentWidget()));
    return false;
  }
  void paintEvent(QPaintEvent*) override {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(m_look->colours().river, kPen));
    p.drawRoundedRect(QRectF(rect()).adjusted(kPen / 2, kPen / 2, -kPen / 2, -kPen / 2), 3, 3);
  }

 private:
  const Look* m_look;
};

bool isList(const QWidget* widget) { return qobject_cast<const QAbstractScrollArea*>(widget) != nullptr; }

bool isStandardControl(const QWidget* widget) {
  return qobject_cast<const QPushButton*>(widget) || qobject_cast<const QCheckBox*>(widget) ||
         qobject_cast<const QRadioButton*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QAbstractSpinBox*>(widget) ||
         qobject_cast<const QAbstractSlider*>(widget) || qobject_cast<const QTabBar*>(widget);
}

}  // namespace

FocusRing::FocusRing(const Look* look, QObject* parent) : QObject(parent), m_look(look) {
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
}

void FocusRing::follow(QWidget* now) {
  delete m_ring;
  if (now == nullptr || now->property(kOwnMark).toBool()) return;
  const bool clicked = QGuiApplication::mouseButtons() != Qt::NoButton;
  if (!isList(now) && (clicked || !isStandardControl(now))) return;
  m_ring = new Ring(m_look, now);
  m_ring->show();
}

}  // namespace grainwise::ui
