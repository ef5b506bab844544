// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/focus_ring.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QEvent>
#include <QPainter>

namespace grainwise::ui {
namespace {
constexpr double kPen = 2;

/// Lies over a widget as large as it, and lets every click through.
class Ring : public QWidget {
 public:
  Ring(const Look* look, QWidget* around) : QWidget(around), m_look(look) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setGeometry(around->rect());
    around->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (watched == parent() && event->type() == QEvent::Resize) setGeometry(parentWidget()->rect());
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

}  // namespace

FocusRing::FocusRing(const Look* look, QObject* parent) : QObject(parent), m_look(look) {
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
}

void FocusRing::follow(QWidget* now) {
  delete m_ring;
  const bool wanted = qobject_cast<QAbstractScrollArea*>(now) != nullptr && !now->property(kOwnMark).toBool();
  if (!wanted) return;
  m_ring = new Ring(m_look, now);
  m_ring->show();
}

}  // namespace grainwise::ui
