// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// What each control of the window is for, and why it may not be used just now; by its object name, so that
/// controls that are made later, or anew, have their words too.
namespace grainwise::ui {

/// What a control is for; empty when nothing is known of the name. A name may go on behind the table's with digits
/// or with "_", and "class:Block" stands for every widget of a class.
QString controlHelp(const QString& name);
/// Why the control or action cannot be used now; empty when nothing is known of the name.
QString disabledReason(const QString& name);

}  // namespace grainwise::ui
