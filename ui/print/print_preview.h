// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "ui/print/page.h"

class QWidget;

namespace grainwise::ui {

/// Shows the pages as they will come out of a printer, from where they can be printed; returns when the
/// preview is closed. Needs no printer.
void previewPages(const std::shared_ptr<const Pages>& pages, QWidget* parent);

}  // namespace grainwise::ui
