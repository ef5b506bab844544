// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/panels/cut_drawing.h"

class QPagedPaintDevice;

namespace grainwise::ui {

/// The cut sheet and its labels on paper, black on white: spools with marks, a list of the marks, what
/// lacks, then labels to cut out. As many pages as it takes.
void printCutSheet(QPagedPaintDevice* device, const CutPicture& picture, const QString& title);

/// The same as a PDF of A4 pages. Empty when it was written, else why not.
QString writeCutSheetPdf(const QString& path, const CutPicture& picture, const QString& title);

}  // namespace grainwise::ui
