// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QLabel>
#include <QTimer>

/// The peer of the start-up figure: a bare Qt window that ends itself once it is painted.
class BareWindow : public QLabel {
 public:
  using QLabel::QLabel;

 protected:
  void paintEvent(QPaintEvent* event) override {
    QLabel::paintEvent(event);
    QTimer::singleShot(0, qApp, &QCoreApplication::quit);
  }
};

int main(int argc, char** argv) {
  QApplication::setStyle(QStringLiteral("Fusion"));
  QApplication app(argc, argv);
  BareWindow window(QStringLiteral("bare"));
  window.resize(1366, 768);
  window.show();
  return QApplication::exec();
}
