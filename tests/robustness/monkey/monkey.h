// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <deque>
#include <map>
#include <memory>
#include <random>

#include "core/model/shelf.h"
#include "ui/window/main_window.h"

/// A hand that knows nothing: random clicks, keys, drags, drops, edits, undo, units, sizes and
/// files, the same for the same seed. After each gesture the window must hold what it promises.
namespace grainwise::test {

class Monkey : public QObject {
 public:
  Monkey(std::uint64_t seed, const QString& sampleFolder, Shelf shelf);
  ~Monkey() override;

  /// Makes so many gestures. What is broken after one of them, in words; empty when nothing is.
  QString play(int gestures);

  [[nodiscard]] int made() const { return m_number; }
  /// Enough windows have come and gone for caches of fonts and pictures to be full.
  [[nodiscard]] bool isWarm() const { return m_windows > kWarmWindows; }
  /// What it has done: how often each gesture, how many files opened and refused, edits made.
  [[nodiscard]] QString summary() const;

 private:
  struct Gesture {
    const char* name;
    int weight;
    void (Monkey::*make)();
  };
  static const std::vector<Gesture>& gestures();

  // monkey_hands.cpp: the gestures
  void press(QWidget* on, const QPoint& at, Qt::KeyboardModifiers with,
             std::initializer_list<QTest::MouseAction> actions);
  void click();
  void doubleClick();
  void rightClick();
  void wheel();
  void key();
  void typeText();
  void drag();
  void dropPart();
  void dropFiles();
  void act();
  void undoRedo();
  void resizeWindow();
  void openFile();
  void saveFile();
  void wait();
  void tellFromOutside();
  void paste();
  void turnTo();

  // monkey.cpp: the state around them, and what must hold
  void startWindow();
  void endWindow();
  void answerPopups();
  void settle();
  QString broken();
  QString brokenUndo();
  QString brokenSave();
  QString leftBehind();
  void rememberStart();
  [[nodiscard]] std::size_t below(std::size_t end) {
    return end == 0 ? 0 : std::size_t(m_random() % end);
  }
  [[nodiscard]] bool oneIn(std::size_t n) { return below(n) == 0; }
  /// The main window, or now and then another one that stands open.
  [[nodiscard]] QWidget* anyWindow();
  [[nodiscard]] QWidget* anyWidget(QWidget* window);
  [[nodiscard]] QWidget* anyWidget() { return anyWidget(anyWindow()); }
  /// The face, and on the bench the drawer's page or the task of Make.
  [[nodiscard]] QString place() const;
  [[nodiscard]] QPoint anyPoint(const QWidget* widget);
  [[nodiscard]] QString anyFile();
  [[nodiscard]] QByteArray anyPart();
  void done(const QString& what);

  std::mt19937_64 m_random;
  Shelf m_shelf;
  QTemporaryDir m_folder;
  QStringList m_sources;
  QStringList m_samples;  ///< copies of them, to be written to
  std::unique_ptr<ui::MainWindow> m_window;
  QTimer m_popups;
  Rig m_start;  ///< what undoing everything must lead back to
  int m_number = 0;
  int m_files = 0;
  int m_opened = 0;
  int m_refused = 0;
  int m_steps = 0;
  int m_walks = 0;
  std::deque<QString> m_last;
  std::vector<int> m_counts;
  std::map<QString, int> m_places;  ///< gestures made there
  std::size_t m_bytesEarly = 0;
  std::size_t m_bytesLate = 0;
  static constexpr int kWarmWindows = 4;
  int m_windows = 0;
};

/// Bytes in use on the heap; by the sanitizer's own count where there is one.
std::size_t bytesInUse();

}  // namespace grainwise::test
