// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/panels/cut_page.h"
#include "ui/print/flow_pages.h"

namespace grainwise::ui {

/// The cut sheet and its labels on paper, black on white: spools with marks, a list of the marks, what
/// lacks, then labels to cut out.
class CutPages : public FlowPages {
 public:
  CutPages(const CutPicture& picture, const QString& of, DisplayUnits units);

 private:
  void addSpool(const CutPicture::Spool& spool);
  void addLabels(const QList<CutPicture::Label>& labels);
};

/// What the cut sheet's page on screen asks of a printer: a preview over `parent`, a file.
CutPaper cutPaper(QWidget* parent);

}  // namespace grainwise::ui
