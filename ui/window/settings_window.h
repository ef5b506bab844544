// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "ui/theme/look.h"

class QListWidget;
class QStackedWidget;

namespace grainwise::ui {

class SettingsDesk;
class SettingsPage;

/// The settings beside the workbench: what is changed shows in every face at once.
class SettingsWindow : public QDialog {
  Q_OBJECT
 public:
  explicit SettingsWindow(SettingsDesk* desk, QWidget* parent = nullptr);

  [[nodiscard]] QListWidget* pages() const { return m_pages; }

 private:
  void addPage(const QString& words, SettingsPage* page);
  void applyLook();

  Look* m_look;
  QListWidget* m_pages;
  QStackedWidget* m_stack;
};

}  // namespace grainwise::ui
