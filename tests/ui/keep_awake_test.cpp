// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDBusConnection>
#include <QDBusVariant>
#include <QProcess>
#include <QTest>
#include <QThread>
#include <QVariantMap>
#include <atomic>
#include <memory>

#include "tests/ui/clinic_support.h"
#include "ui/clinic/keep_awake.h"

namespace grainwise::ui {

/// What a desktop offers: counts who holds the screen awake, by cookies. It answers from a thread of its own, as
/// a desktop does from a process of its own.
class FakeScreenSaver : public QObject {
  Q_OBJECT
  Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")
 public:
  std::atomic<int> holds{0};
  std::atomic<int> asked{0};
  std::atomic<int> wrong{0};

 public Q_SLOTS:
  uint Inhibit(const QString& program, const QString& why) {
    if (program.isEmpty() || why.isEmpty()) ++wrong;
    ++holds;
    return kFirst + uint(++asked);
  }
  void UnInhibit(uint cookie) {
    if (cookie != kFirst + uint(asked)) ++wrong;
    --holds;
  }

 private:
  static constexpr uint kFirst = 40;
};

namespace {

const QString kService = QStringLiteral("org.freedesktop.ScreenSaver");

/// A message bus that only this test knows.
struct PrivateBus : test::UiFixture {
  PrivateBus() {
    daemon.start(QStringLiteral("dbus-daemon"),
                 {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
    REQUIRE(daemon.waitForReadyRead(10000));
    address = QString::fromUtf8(daemon.readLine()).trimmed();
    REQUIRE_FALSE(address.isEmpty());
  }
  ~PrivateBus() {
    if (server.isRunning()) {
      server.quit();
      server.wait();
    }
    QDBusConnection::disconnectFromBus(QStringLiteral("saver"));
    QDBusConnection::disconnectFromBus(QStringLiteral("ours"));
    daemon.kill();
    daemon.waitForFinished();
  }
  QDBusConnection ours() { return QDBusConnection::connectToBus(address, QStringLiteral("ours")); }
  void offerScreenSaver() {
    saver.moveToThread(&server);
    server.start();
    auto bus = QDBusConnection::connectToBus(address, QStringLiteral("saver"));
    REQUIRE(bus.isConnected());
    REQUIRE(bus.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &saver,
                               QDBusConnection::ExportAllSlots));
    REQUIRE(bus.registerService(kService));
  }
  bool held(int wanted) {
    return QTest::qWaitFor([&] { return saver.holds == wanted; }, 5000);
  }

  QProcess daemon;
  QString address;
  FakeScreenSaver saver;
  QThread server;
};

}  // namespace

TEST_CASE_METHOD(PrivateBus, "The screen is kept awake as long as it is asked for, and let go of afterwards") {
  offerScreenSaver();
  {
    const KeepAwake awake(QStringLiteral("A deck is being shown"), ours());
    CHECK(awake.held());
    CHECK(held(1));
  }
  CHECK(held(0));
  CHECK(saver.asked == 1);
  CHECK(saver.wrong == 0);
}

TEST_CASE_METHOD(PrivateBus, "On a bus where nobody keeps screens awake nothing is held and nothing fails") {
  const KeepAwake awake(QStringLiteral("A deck is being shown"), ours());
  CHECK(ours().isConnected());
  CHECK_FALSE(awake.held());
}

}  // namespace grainwise::ui

#include "keep_awake_test.moc"
