// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/print_preview.h"

#include <QPrintPreviewDialog>
#include <QPrinter>

#include "ui/print/paper_files.h"

namespace grainwise::ui {

void previewPages(const std::shared_ptr<const Pages>& pages, QWidget* parent) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setDocName(pages->title());
  printer.setPageSize(QPageSize(localPaper() == Paper::letter ? QPageSize::Letter : QPageSize::A4));
  QPrintPreviewDialog preview(&printer, parent);
  preview.setObjectName(QStringLiteral("printPreview"));
  QObject::connect(&preview, &QPrintPreviewDialog::paintRequested, &preview,
                   [pages](QPrinter* to) { printPages(*pages, *to); });
  preview.exec();
}

}  // namespace grainwise::ui
