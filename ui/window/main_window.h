// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <functional>

#include "core/model/problem.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/document/autosave.h"
#include "ui/theme/hearer.h"
#include "ui/theme/look.h"
#include "ui/theme/system_scheme.h"
#include "ui/window/file_kinds.h"
#include "ui/window/settings.h"

class QUndoGroup;

namespace grainwise::ui {

class Actions;
class AnalysisFeed;
class BenchFace;
class ClinicHost;
class CompareHost;
class Faces;
class NoticeBar;
class OwnStore;
class PoolBook;
class Preferences;
class RigDocument;
class SettingsDesk;
class SettingsWindow;
class HelpWindow;
class TopBar;
class WalletWindow;

/// The window: one open rig, its face, its actions, its files.
class MainWindow : public QMainWindow, public Hearer {
  Q_OBJECT
 public:
  explicit MainWindow(QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens a rig file, a deck in the Clinic, a shelf among the own parts, pools and spools on their pages.
  /// On problems what is open stays as it was, and they are listed.
  bool openFile(const QString& path);
  /// Opens a second rig beside the first and compares them.
  bool openBeside(const QString& path);
  /// Starts from a rig as an unsaved, unnamed document.
  void startFrom(const Rig& rig);
  /// The same where rigs are: in Compare in place of the rig that was touched last. Asks about unsaved work.
  void startHere(const Rig& rig);
  /// The face and the page of the drawer that were open when the window was last closed.
  void openAsLeft();
  /// Offers unsaved work that an earlier sitting left, if there is any: a line under the top bar.
  void offerRecovery();

  [[nodiscard]] RigDocument* document() { return m_document; }
  [[nodiscard]] AnalysisFeed* feed() { return m_feed; }
  [[nodiscard]] OwnStore* own() { return m_own; }
  [[nodiscard]] Preferences* preferences() { return m_preferences; }
  [[nodiscard]] PoolBook* pools() { return m_pools; }
  [[nodiscard]] BenchFace* bench() { return m_bench; }
  [[nodiscard]] CompareHost* compare() { return m_compare; }
  [[nodiscard]] ClinicHost* clinic() { return m_clinic; }
  void refreshTitle();
  /// Whose undo the buttons are: "A", "B", or empty where there is one rig.
  void showUndoOf(const QString& letter);
  [[nodiscard]] Faces* faces() { return m_faces; }
  /// The undo stacks of all faces; the one that is shown makes its own the active one.
  [[nodiscard]] QUndoGroup* undoGroup() { return m_undo; }
  [[nodiscard]] Actions* actionSet() { return m_actions; }
  [[nodiscard]] Look* look() { return &m_look; }
  [[nodiscard]] NoticeBar* notice() { return m_notice; }

  /// In the place for words of the face that is shown.
  void hear(const QString& words) override;

  /// What to do with unsaved work; asked with a dialog unless a test answers.
  enum class Unsaved { save, discard, cancel };
  std::function<QString()> askOpenPath;
  std::function<QString()> askSavePath;
  std::function<QString()> askExportPath;
  std::function<Unsaved()> askUnsaved;

 protected:
  bool event(QEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void connectActions();
  bool openData(const QString& path, FileKind kind);
  /// Into the rig that was touched last.
  void openHere(const QString& path);
  void entitle(const QString& name, const QString& path, bool modified);
  void showProblems(const QString& title, const Problems& problems);
  void applyLook();
  void refreshRecent();
  /// From here on the stroke is compared with that of the rig as it now stands.
  void rememberStroke();
  bool save();
  bool saveAs();
  bool saveTo(const QString& path);
  void recover(const Left& left);
  void tellOfDisk();
  /// Whether the open rig may be let go of.
  bool mayLeave();
  /// The handout of the open rig: into a preview, or into a file.
  void print();
  void exportHandout();
  void about();
  void showHelp();
  void showSettings();
  void openWallet();

  Settings m_settings;
  Look m_look;
  SystemScheme m_system{&m_look};
  RigDocument* m_document;
  Preferences* m_preferences;
  AnalysisFeed* m_feed;
  PoolBook* m_pools;
  QUndoGroup* m_undo;
  Actions* m_actions;
  Autosave* m_autosave;
  Recovery m_recovery;
  TopBar* m_top;
  OwnStore* m_own;
  SettingsDesk* m_desk;
  NoticeBar* m_notice;
  BenchFace* m_bench = nullptr;
  Faces* m_faces;
  SettingsWindow* m_settingsWindow = nullptr;  ///< made when first opened
  HelpWindow* m_help = nullptr;      ///< made when first opened
  WalletWindow* m_wallet = nullptr;  ///< made when first opened
  CompareHost* m_compare = nullptr;
  ClinicHost* m_clinic = nullptr;
};

}  // namespace grainwise::ui
