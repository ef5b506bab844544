// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/model/problem.h"
#include "ui/theme/look.h"

class QLabel;

namespace grainwise::ui {

/// What was wrong with a file: a heading, then a line a problem with where it stands, what is wrong
/// and what would be right. Text from files is shown as plain text; it can be selected and copied.
class ProblemPanel : public QWidget {
  Q_OBJECT
 public:
  explicit ProblemPanel(Look* look, QWidget* parent = nullptr);
  void show(const QString& title, const Problems& problems);

 private:
  void applyLook();

  Look* m_look;
  QLabel* m_title;
  QLabel* m_list;
};

}  // namespace grainwise::ui
