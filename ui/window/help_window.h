// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QStringList>

#include "ui/theme/look.h"

class QLabel;
class QLineEdit;
class QListWidget;
class QTextBrowser;

namespace grainwise::ui {

/// The help: pages that the program carries with it, a list of them, and a search over all. Opens nothing
/// outside the program.
class HelpWindow : public QDialog {
  Q_OBJECT
 public:
  explicit HelpWindow(Look* look, QWidget* parent = nullptr);

  [[nodiscard]] QListWidget* pages() const { return m_pages; }
  [[nodiscard]] QLineEdit* search() const { return m_search; }
  [[nodiscard]] QTextBrowser* text() const { return m_text; }

 private:
  void fill();
  void showPage();
  void find(const QString& words);
  void applyLook();

  Look* m_look;
  QStringList m_files;
  QStringList m_sources;  ///< of each page, as written
  QLineEdit* m_search;
  QListWidget* m_pages;
  QTextBrowser* m_text;
  QLabel* m_nothing;
};

}  // namespace grainwise::ui
