// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "core/bench/cut_sheet.h"
#include "ui/panels/cut_drawing.h"
#include "ui/panels/make_page.h"

class QLabel;
class QPushButton;

namespace grainwise::ui {

class LoopHabits;
class OwnStore;
class RigDocument;

/// How a cut sheet comes on paper; the panels know no printer. `of` says what is cut.
struct CutPaper {
  std::function<void(const CutPicture&, const QString& of, DisplayUnits)> preview;
  /// Writes a file; says why not, else nothing.
  std::function<QString(const CutPicture&, const QString& of, DisplayUnits, const QString& path)> write;
};

/// The cut sheet of the open rig, of further rigs and shelves that are added to it, or of a packed wallet,
/// from the spools at the bench.
class CutPage : public MakePage {
  Q_OBJECT
 public:
  CutPage(Look* look, RigDocument* document, OwnStore* store, CutPaper paper, QWidget* parent);

  /// Adds a rig or a shelf file to what is cut; says why not, else nothing.
  QString addFile(const QString& path);
  /// Cuts these and not the open rig, until "Only this rig"; `of` heads the sheet.
  void cutOnly(const std::vector<Part>& parts, const QString& of);
  std::function<QString()> askAddPath;
  std::function<QString()> askPdfPath;

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* buttonRow();
  void refresh();
  void say(const QString& words);
  void print();
  void savePdf();
  void takeOff();
  void proposeLoops();
  [[nodiscard]] QString of() const;

  RigDocument* m_document;
  OwnStore* m_store;
  CutPaper m_paper;
  std::vector<MadePart> m_added;
  QString m_instead;  ///< what is cut in place of the open rig; empty when it is that
  CutSheet m_sheet;
  CutDrawing* m_drawing;
  LoopHabits* m_habits;
  QLabel* m_notes;
  QLabel* m_caution;
  QLabel* m_said;
  QPushButton* m_forget;
  QPushButton* m_print;
  QPushButton* m_pdf;
  QPushButton* m_cutThese;
  QPushButton* m_loops;
};

}  // namespace grainwise::ui
