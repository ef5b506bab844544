// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>

#include "core/model/rig.h"
#include "core/model/shelf.h"

class QString;
class QWidget;

namespace grainwise::ui {

class CompareFace;
class MainWindow;
class RigDocument;

/// The Compare face in the window: made when it is first shown, its second rig with a file of its own,
/// and the window's actions acting on the rig that was touched last.
class CompareHost : public QObject {
  Q_OBJECT
 public:
  explicit CompareHost(MainWindow* window);

  [[nodiscard]] CompareFace* face() const { return m_face; }
  /// While Compare is shown and the rig touched last is not the bench's: that one.
  [[nodiscard]] RigDocument* own() const;
  /// Whether Compare is the face that is shown.
  [[nodiscard]] bool shown() const;
  /// Opens a rig beside that of the bench and shows both.
  bool openBeside(const QString& path);
  /// Opens into, or saves, the rig that is not the bench's.
  bool openOwn(const QString& path);
  bool saveOwn(bool elsewhere);
  void startOwn(const Rig& rig);
  /// Whether the rig that is not the bench's may be let go of.
  bool mayLeave();

 private:
  QWidget* make(QWidget* parent);
  void follow();
  void connectActions();

  MainWindow* m_window;
  CompareFace* m_face = nullptr;
};

}  // namespace grainwise::ui
