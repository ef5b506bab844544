// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QTest>
#include <QUndoStack>
#include <QUrl>
#include <QWheelEvent>
#include <QWindow>

#include "core/io/rig_file.h"
#include "tests/robustness/fuzz/json_mutator.h"
#include "tests/robustness/monkey/monkey.h"
#include "ui/document/rig_document.h"
#include "ui/window/actions.h"
#include "ui/window/notice_bar.h"

namespace grainwise::test {
namespace {

const QString kPartType = QStringLiteral("application/x-grainwise-part+json");
const QString kOriginType = QStringLiteral("application/x-grainwise-origin");

QByteArray bytesOf(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Sends what a platform would send for a drag that hovers and is let go.
void drop(QWidget* on, QPoint at, QMimeData* data, Qt::DropAction action, bool letGo) {
  QPointer<QWidget> target(on);
  QDragEnterEvent enter(at, action, data, Qt::LeftButton, {});
  QApplication::sendEvent(on, &enter);
  if (!enter.isAccepted() || !target) return;
  QDragMoveEvent move(at + QPoint(3, 0), action, data, Qt::LeftButton, {});
  QApplication::sendEvent(on, &move);
  if (!target) return;
  if (!letGo || !move.isAccepted()) {
    QDragLeaveEvent leave;
    QApplication::sendEvent(on, &leave);
    return;
  }
  QDropEvent end(at, action, data, Qt::LeftButton, {});
  QApplication::sendEvent(on, &end);
}

}  // namespace

const std::vector<Monkey::Gesture>& Monkey::gestures() {
  static const std::vector<Gesture> all{
      {"click", 22, &Monkey::click},
      {"double click", 4, &Monkey::doubleClick},
      {"right click", 3, &Monkey::rightClick},
      {"wheel", 3, &Monkey::wheel},
      {"key", 20, &Monkey::key},
      {"type", 10, &Monkey::typeText},
      {"drag", 4, &Monkey::drag},
      {"drop a part", 8, &Monkey::dropPart},
      {"drop files", 2, &Monkey::dropFiles},
      {"act", 10, &Monkey::act},
      {"undo or redo", 10, &Monkey::undoRedo},
      {"resize", 2, &Monkey::resizeWindow},
      {"open", 3, &Monkey::openFile},
      {"save", 2, &Monkey::saveFile},
      {"wait", 2, &Monkey::wait},
      {"change from outside", 1, &Monkey::tellFromOutside},
      {"paste", 2, &Monkey::paste},
      {"turn to a place", 5, &Monkey::turnTo},
  };
  return all;
}

QWidget* Monkey::anyWindow() {
  if (!oneIn(4)) return m_window.get();
  QWidgetList others;
  for (QWidget* window : QApplication::topLevelWidgets()) {
    const bool stays = window->windowType() == Qt::Window && !window->isModal();
    if (window != m_window.get() && window->isVisible() && stays) others.append(window);
  }
  return others.isEmpty() ? m_window.get() : others.at(int(below(std::size_t(others.size()))));
}

/// None that lets the pointer through: no click reaches it.
QWidget* Monkey::anyWidget(QWidget* window) {
  const QList<QWidget*> children = window->findChildren<QWidget*>();
  for (int tries = 0; tries < 30; ++tries) {
    QWidget* child = children.value(int(below(std::size_t(children.size()))));
    if (child == nullptr || !child->isVisible() || child->window() != window) continue;
    if (!child->testAttribute(Qt::WA_TransparentForMouseEvents)) return child;
  }
  return window;
}

QPoint Monkey::anyPoint(const QWidget* widget) {
  return {int(below(std::size_t(std::max(1, widget->width())))),
          int(below(std::size_t(std::max(1, widget->height()))))};
}

/// Sound files, files of other kinds, spoiled ones, none at all.
QString Monkey::anyFile() {
  const QString sample = m_samples.at(int(below(std::size_t(m_samples.size()))));
  const std::size_t kind = below(8);
  if (kind < 4) return sample;
  if (kind == 4) return m_folder.filePath(QStringLiteral("saved%1.rig.json").arg(below(3)));
  if (kind == 5)
    return m_folder.path() + (oneIn(2) ? QString() : QStringLiteral("/absent.rig.json"));
  std::string text = bytesOf(sample).toStdString();
  if (kind == 6) {
    JsonMutator mutator(static_cast<unsigned>(m_random()));
    for (std::size_t i = below(4); i > 0; --i) text = mutator.mutate(text);
  } else {
    text.resize(below(text.size()));
  }
  const QString path =
      m_folder.filePath(QStringLiteral("made%1 <b>&amp;\u202E.rig.json").arg(m_files++ % 5));
  QFile file(path);
  if (file.open(QIODevice::WriteOnly)) file.write(text.data(), qint64(text.size()));
  return path;
}

QByteArray Monkey::anyPart() {
  std::string text;
  if (oneIn(2) && !m_shelf.parts.empty()) {
    text = writePart(m_shelf.parts[below(m_shelf.parts.size())]);
  } else if (const Rig& rig = m_window->document()->rig(); !rig.parts.empty()) {
    text = writePart(rig.parts[below(rig.parts.size())]);
  }
  if (oneIn(5)) text = JsonMutator(static_cast<unsigned>(m_random())).mutate(text);
  if (oneIn(30)) text.resize(below(text.size() + 1));
  return QByteArray::fromStdString(text);
}

/// One after the other on a widget; on the window where a press has taken that away.
void Monkey::press(QWidget* on, const QPoint& at, Qt::KeyboardModifiers with,
                   std::initializer_list<QTest::MouseAction> actions) {
  const QPointer<QWidget> still(on);
  for (const QTest::MouseAction action : actions) {
    QTest::mouseEvent(action, still ? still.data() : m_window.get(), Qt::LeftButton, with, at);
  }
}

void Monkey::click() {
  QWidget* on = anyWidget();
  done(QStringLiteral("  on %1 \"%2\"")
           .arg(QLatin1String(on->metaObject()->className()), on->objectName()));
  const Qt::KeyboardModifiers with = oneIn(8) ? Qt::ShiftModifier : Qt::NoModifier;
  press(on, anyPoint(on), with, {QTest::MousePress, QTest::MouseRelease});
}

void Monkey::doubleClick() {
  QWidget* on = anyWidget();
  press(on, anyPoint(on), Qt::NoModifier,
        {QTest::MousePress, QTest::MouseRelease, QTest::MouseDClick, QTest::MouseRelease});
}

void Monkey::rightClick() {
  QWidget* on = anyWidget();
  const QPoint at = anyPoint(on);
  QContextMenuEvent event(QContextMenuEvent::Mouse, at, on->mapToGlobal(at));
  QApplication::sendEvent(on, &event);
}

void Monkey::wheel() {
  QWidget* on = anyWidget();
  const QPoint at = anyPoint(on);
  QWheelEvent event(at, on->mapToGlobal(at), {}, {0, oneIn(2) ? 120 : -120}, {}, {},
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(on, &event);
}

void Monkey::key() {
  static const std::vector<int> kKeys{
      Qt::Key_Tab,  Qt::Key_Backtab,   Qt::Key_Left,   Qt::Key_Right,    Qt::Key_Up,
      Qt::Key_Down, Qt::Key_Return,    Qt::Key_Escape, Qt::Key_Space,    Qt::Key_Delete,
      Qt::Key_Home, Qt::Key_End,       Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_F2,
      Qt::Key_F3,   Qt::Key_F4,        Qt::Key_F5,     Qt::Key_F6,       Qt::Key_F7,
      Qt::Key_F9,   Qt::Key_Backspace, Qt::Key_Insert, Qt::Key_D,        Qt::Key_1,
      Qt::Key_5,    Qt::Key_Plus,      Qt::Key_Minus,  Qt::Key_W,        Qt::Key_X,
      Qt::Key_B,    Qt::Key_C,         Qt::Key_V,      Qt::Key_A,        Qt::Key_E,
      Qt::Key_H};
  static const std::vector<Qt::KeyboardModifiers> kModifiers{
      Qt::NoModifier,  Qt::NoModifier,      Qt::NoModifier,   Qt::AltModifier,
      Qt::AltModifier, Qt::ControlModifier, Qt::ShiftModifier};
  const auto key = Qt::Key(kKeys[below(kKeys.size())]);
  const Qt::KeyboardModifiers with = kModifiers[below(kModifiers.size())];
  QWidget* focus = QApplication::focusWidget();
  QWidget* to = focus ? focus : m_window.get();
  done(QStringLiteral("  %1+%2 to %3")
           .arg(int(with), 0, 16)
           .arg(int(key), 0, 16)
           .arg(to->objectName()));
  QTest::keyClick(to, key, with);
}

void Monkey::typeText() {
  static const std::vector<const char*> kTexts{
      "11",  "0",        "7,5",      "-3",          "34 g", "2.5 ft",    "9' 6\"", "1e9",
      "abc", "0.017 in", "525",      "20000",       "1/2",  "0.43 mm",   "  ",     "45 F",
      "7 C", "tip",      "head ",    "<b>bold</b>", "&x",   "\u202Eabc", "3 m",    "10 gr/ft",
      "inf", "nan",      "00012.50", "\t",          "fly",  "%1 %2"};
  QList<QLineEdit*> fields = anyWindow()->findChildren<QLineEdit*>();
  QWidget* to = QApplication::focusWidget();
  if ((!to || oneIn(2)) && !fields.isEmpty()) {
    QLineEdit* field = fields.at(int(below(std::size_t(fields.size()))));
    if (field->isVisible() && field->isEnabled()) {
      field->setFocus();
      if (oneIn(2)) field->selectAll();
      to = field;
    }
  }
  if (!to) return;
  const QString text = QString::fromUtf8(kTexts[below(kTexts.size())]);
  done(QStringLiteral("  \"%1\" into %2").arg(text, to->objectName()));
  QPointer<QWidget> still(to);
  for (const QChar letter : text) {
    if (!still) return;
    QKeyEvent down(QEvent::KeyPress, 0, {}, QString(letter));
    QApplication::sendEvent(to, &down);
  }
  if (still && oneIn(2)) QTest::keyClick(to, Qt::Key_Return);
}

/// A real drag: press, carry, let go or escape, in the window's own coordinates.
void Monkey::drag() {
  QWindow* window = m_window->windowHandle();
  QWidget* from = anyWidget(m_window.get());
  QWidget* to = anyWidget(m_window.get());
  const auto inside = [this](QPoint p) {  // a scrolled widget may reach beyond the window
    const QSize size = m_window->windowHandle()->size();
    return QPoint(std::clamp(p.x(), 1, size.width() - 2),
                  std::clamp(p.y(), 1, size.height() - 2));
  };
  const QPoint a = inside(from->mapTo(m_window.get(), anyPoint(from)));
  const QPoint b = inside(to->mapTo(m_window.get(), anyPoint(to)));
  const bool escape = oneIn(5);
  done(QStringLiteral("  from %1 to %2%3")
           .arg(from->objectName(), to->objectName(),
                escape ? QStringLiteral(", escaped") : QString()));
  // QDrag::exec() runs a loop inside the move that starts it: the rest of the gesture waits in timers, each
  // set before its step is made, since the drag may begin inside a step.
  QObject scope;
  int step = 0;
  std::function<void()> rest = [&] {
    const int now = ++step;
    if (now < 45) QTimer::singleShot(1, &scope, rest);
    if (now <= 4) QTest::mouseMove(window, a + (b - a) * now / 4);
    if (now == 5 && escape) QTest::keyClick(window, Qt::Key_Escape);
    if (now == 6) QTest::mouseRelease(window, Qt::LeftButton, {}, b);
    if (now == 40) QTest::keyClick(window, Qt::Key_Escape);
  };
  QTest::mousePress(window, Qt::LeftButton, {}, a);
  QTimer::singleShot(1, &scope, rest);
  QTest::mouseMove(window, inside(a + QPoint(6, 0)));
  QTest::mouseMove(window, inside(a + QPoint(28, 2)));
  (void)QTest::qWaitFor([&] { return step >= 7; }, 4000);
}

void Monkey::dropPart() {
  QMimeData data;
  data.setData(kPartType, anyPart());
  const std::size_t parts = m_window->document()->rig().parts.size();
  const bool inside = oneIn(2);
  if (inside) data.setData(kOriginType, QByteArray::number(qulonglong(below(parts + 1))));
  if (oneIn(40)) data.setData(kOriginType, "-1");
  QWidget* strip = m_window->findChild<QWidget*>(QStringLiteral("strip"));
  QWidget* on = strip && !oneIn(4) ? strip : anyWidget();
  drop(on, anyPoint(on), &data, inside ? Qt::MoveAction : Qt::CopyAction, !oneIn(5));
}

void Monkey::dropFiles() {
  QMimeData data;
  QList<QUrl> urls{oneIn(6) ? QUrl(QStringLiteral("https://example.invalid/a.rig.json"))
                            : QUrl::fromLocalFile(anyFile())};
  if (oneIn(4)) urls.append(QUrl::fromLocalFile(anyFile()));
  data.setUrls(urls);
  drop(m_window.get(), {10, 10}, &data, Qt::CopyAction, true);
}

void Monkey::act() {
  QList<QAction*> actions = m_window->actionSet()->all();
  actions.removeAll(m_window->actionSet()->quit);
  QAction* action = actions.at(int(below(std::size_t(actions.size()))));
  done(QStringLiteral("  %1 (%2)").arg(action->objectName(), action->text()));
  action->trigger();
}

/// To a face, a page of the drawer, a task of Make, another window, or into the show.
void Monkey::turnTo() {
  const QString names[] = {
      QStringLiteral("face_bench"), QStringLiteral("face_compare"), QStringLiteral("face_clinic"),
      QStringLiteral("shelf"),      QStringLiteral("part"),         QStringLiteral("tips"),
      QStringLiteral("fixes"),      QStringLiteral("pools"),        QStringLiteral("cast"),
      QStringLiteral("river"),      QStringLiteral("depths"),       QStringLiteral("rod"),
      QStringLiteral("water"),      QStringLiteral("rename"),       QStringLiteral("wallet"),
      QStringLiteral("help"),       QStringLiteral("showDeck"),     QStringLiteral("make"),
      QStringLiteral("make"),       QStringLiteral("make"),         QStringLiteral("make")};
  const QString name = names[below(std::size(names))];
  done(QStringLiteral("  ") + name);
  for (QAction* action : m_window->actionSet()->all()) {
    if (action->objectName() == name) action->trigger();
  }
  auto* tasks = m_window->findChild<QListWidget*>(QStringLiteral("makeTasks"));
  if (name == QLatin1String("make") && tasks != nullptr) {
    tasks->setCurrentRow(int(below(std::size_t(tasks->count()))));
  }
}

void Monkey::undoRedo() {
  QUndoStack* stack = m_window->document()->undoStack();
  for (std::size_t i = 1 + below(4); i > 0; --i) oneIn(3) ? stack->redo() : stack->undo();
}

void Monkey::resizeWindow() {
  m_window->resize(600 + int(below(1400)), 400 + int(below(800)));
}

void Monkey::openFile() {
  const QString path = anyFile();
  done(QStringLiteral("  ") + QFileInfo(path).fileName());
  const Rig before = m_window->document()->rig();
  ++(m_window->openFile(path) ? m_opened : m_refused);
}

void Monkey::saveFile() {
  (oneIn(2) ? m_window->actionSet()->save : m_window->actionSet()->saveAs)->trigger();
}

void Monkey::wait() {
  QTest::qWait(int(below(30)));
}

/// Another program writes into the open file, or a line under the top bar is answered.
void Monkey::tellFromOutside() {
  const QString path = m_window->document()->path();
  if (path.startsWith(m_folder.path()) && oneIn(2)) {
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) file.write(bytesOf(m_samples.at(0)));
  }
  const QList<QWidget*> answers = m_window->notice()->findChildren<QWidget*>();
  for (QWidget* answer : answers) {
    if (answer->isVisible() && oneIn(3)) return QTest::mouseClick(answer, Qt::LeftButton);
  }
}

void Monkey::paste() {
  auto* data = new QMimeData;
  if (oneIn(2)) data->setData(kPartType, anyPart());
  data->setText(oneIn(2) ? QStringLiteral("12.5") : QString::fromUtf8(anyPart()));
  QApplication::clipboard()->setMimeData(data);
  QWidget* focus = QApplication::focusWidget();
  QTest::keyClick(focus ? focus : m_window.get(), oneIn(3) ? Qt::Key_C : Qt::Key_V,
                  Qt::ControlModifier);
}

}  // namespace grainwise::test
