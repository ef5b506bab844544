// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "ui/print/page.h"

class QPrinter;

namespace grainwise::ui {

/// The files that were written, or why none was; a file is written whole or not at all.
struct Written {
  QStringList files;
  QString problem;
};

/// Pages as a file, by the ending of its name: `.pdf` (vectors, fonts within, all pages), `.png` (300 dots
/// an inch) or `.svg`; of the last two a file a page, the second called OUT-2.png and so on.
Written writePages(const Pages& pages, const QString& path, Paper paper);

/// The usual paper where the person is.
Paper localPaper();

/// Onto a printer, or into a preview: each page fitted to the printer's own sheet.
void printPages(const Pages& pages, QPrinter& printer);

}  // namespace grainwise::ui
