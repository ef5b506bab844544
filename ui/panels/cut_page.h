// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "core/bench/cut_sheet.h"
#include "ui/panels/make_page.h"

class QLabel;
class QPushButton;

namespace grainwise::ui {

class CutDrawing;
class OwnStore;
class RigDocument;

/// The cut sheet of the open rig, and of further rigs and shelves that are added to it, from the spools
/// at the bench.
class CutPage : public MakePage {
  Q_OBJECT
 public:
  CutPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent);

  /// Adds a rig or a shelf file to what is cut; says why not, else nothing.
  QString addFile(const QString& path);
  std::function<QString()> askAddPath;
  std::function<QString()> askPdfPath;

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void savePdf();
  void takeOff();
  void proposeLoops();

  RigDocument* m_document;
  OwnStore* m_store;
  std::vector<MadePart> m_added;
  CutSheet m_sheet;
  CutDrawing* m_drawing;
  QLabel* m_notes;
  QLabel* m_caution;
  QLabel* m_said;
  QPushButton* m_forget;
  QPushButton* m_pdf;
  QPushButton* m_cutThese;
};

}  // namespace grainwise::ui
