// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QLabel>
#include <QTimer>
#include <cstdio>

/// The peer of the start-up figure: a bare Qt window that says when it is painted and ends.
class BareWindow : public QLabel {
 public:
  using QLabel::QLabel;

 protected:
  void paintEvent(QPaintEvent* event) override {
    QLabel::paintEvent(event);
    QTimer::singleShot(0, qApp, [] {
      std::puts("usable");
      std::fflush(stdout);
      QCoreApplication::quit();
    });
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
