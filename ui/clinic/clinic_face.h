// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <memory>
#include <optional>

#include "core/analysis/conditions.h"
#include "core/model/deck.h"
#include "core/model/problem.h"
#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QStackedWidget;
class QTimer;

namespace grainwise::ui {

class CardForm;
class CardView;
class DeckDocument;
class DeckRun;
class EditPanel;
class KeepAwake;
class Preferences;
class RemoteKeys;
class ShowWindow;
class TeacherView;

/// The Clinic: a deck of cards is put together here, and shown to a class on a second screen while this
/// one keeps notes, clock and the next card.
class ClinicFace : public QWidget {
  Q_OBJECT
 public:
  ClinicFace(Look* look, const SharedShelf& shelf, QWidget* parent = nullptr,
             const Preferences* preferences = nullptr);
  ~ClinicFace() override;

  [[nodiscard]] DeckDocument* document() const { return m_document; }
  [[nodiscard]] CardForm* form() const { return m_form; }
  [[nodiscard]] TeacherView* teacher() const { return m_teacher; }
  [[nodiscard]] ShowWindow* showWindow() const { return m_show.get(); }
  [[nodiscard]] DeckRun* run() const { return m_run.get(); }
  [[nodiscard]] EditPanel* editPanel() const { return m_edit; }

  /// Opens a deck; on problems the open one stays and they are said here and returned.
  Problems openDeck(const QString& path);
  /// Saves where it was opened, else asks; false when it was not saved.
  bool save();
  bool saveAs();
  /// A card of this rig and picture behind the card that is chosen.
  void addCard(const Card& card);
  [[nodiscard]] int current() const;
  /// What cards are judged by.
  [[nodiscard]] Conditions conditions() const;
  void choose(int card);

  void startShow(int from);
  void endShow();
  [[nodiscard]] bool showing() const { return m_run != nullptr; }
  /// In the face's place for words.
  void say(const QString& words);
  /// What cards lack, a line each.
  [[nodiscard]] QString said() const;

  /// The rig and the pools of the bench; what to ask for paths and unsaved work, with dialogs unless a test answers.
  std::function<std::optional<Rig>()> benchRig;
  std::function<std::vector<Pool>()> benchPools;
  std::function<QString()> askOpenPath;
  std::function<QString()> askSavePath;
  std::function<QString()> askRigPath;
  enum class Unsaved { save, discard, cancel };
  std::function<Unsaved()> askUnsaved;
  /// Whether the open deck may be let go of.
  bool mayLeave();
  /// A card a page, or four.
  std::function<void(bool fourAPage)> printDeck;

 Q_SIGNALS:
  void deckOpened(const QString& path);

 protected:
  /// Alt+Up and Alt+Down move the card that is chosen in the list.
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void layOut();
  void connectParts();
  void giveButtonsRoom();
  QPushButton* addButton(const QString& name, const QString& words);
  void refresh();
  void refreshCard();
  void checkCards();
  void apply(const QString& step, const Deck& after, int choose, const QString& gesture = {});
  void toggleEdit();
  void takePanelAway();
  void fillScreens();
  [[nodiscard]] QScreen* chosenScreen() const;
  [[nodiscard]] QString rigFileName();

  Look* m_look;
  const Preferences* m_preferences;
  DeckDocument* m_document;
  QStackedWidget* m_stack;
  QWidget* m_desk;
  QLineEdit* m_title;
  QListWidget* m_list;
  CardView* m_preview;
  QPushButton* m_answer;
  CardForm* m_form = nullptr;
  QLabel* m_words = nullptr;
  QComboBox* m_screens;
  TeacherView* m_teacher;
  EditPanel* m_edit;
  QTimer* m_check;
  bool m_filling = false;
  std::unique_ptr<DeckRun> m_run;
  std::unique_ptr<RemoteKeys> m_keys;
  std::unique_ptr<ShowWindow> m_show;
  std::unique_ptr<KeepAwake> m_awake;
};

}  // namespace grainwise::ui
