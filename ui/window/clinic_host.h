// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QObject>
#include <functional>
#include <memory>

#include "core/model/deck.h"

class QString;
class QWidget;

namespace grainwise::ui {

class ClinicFace;
class MainWindow;
class Pages;

/// The Clinic face in the window: made when it is first shown, with its deck, and the window's actions
/// acting on the deck while it is shown.
class ClinicHost : public QObject {
  Q_OBJECT
 public:
  explicit ClinicHost(MainWindow* window);

  [[nodiscard]] ClinicFace* face() const { return m_face; }
  [[nodiscard]] bool shown() const;
  /// A deck that the program carries, as an untitled copy; rigs that its cards name stand in it.
  bool startFrom(const QString& carried);
  /// Shows the Clinic with this deck; on problems the Clinic says them.
  bool openDeck(const QString& path);
  /// Whether the open deck may be let go of.
  bool mayLeave();
  /// The rig and the picture that are on screen, as a card of the open deck.
  void takeCard();
  /// The deck on paper, a card a page or four, into a preview from where it is printed.
  void print(bool fourAPage = false);
  /// Shows pages; a test takes them instead.
  std::function<void(const std::shared_ptr<const Pages>&)> preview;

 private:
  QWidget* make(QWidget* parent);
  void follow();
  [[nodiscard]] Card cardOnScreen() const;

  MainWindow* m_window;
  ClinicFace* m_face = nullptr;
  QKeySequence m_showDeck;
  QKeySequence m_showFromHere;
};

}  // namespace grainwise::ui
