// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QList>
#include <QScrollArea>
#include <functional>

#include "ui/window/settings_desk.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace grainwise::ui {

class ValueRow;

/// A page of the settings: headings and rows under each other, as tall as they are, in a place to scroll.
class SettingsPage : public QScrollArea {
  Q_OBJECT
 public:
  SettingsPage(SettingsDesk* desk, const char* name, QWidget* parent);

 protected:
  void addHeading(const QString& words);
  QLabel* addWords(const QString& words);
  /// A choice with its name before it.
  QComboBox* addChoice(const char* name, const QString& words, const QStringList& items,
                       const std::function<void(int)>& chosen);
  QPushButton* addButton(const char* name, const QString& words, const std::function<void()>& pressed);
  void add(QWidget* row);
  void end();

  [[nodiscard]] SettingsDesk* desk() const { return m_desk; }
  [[nodiscard]] Look* look() const { return m_desk->look(); }
  [[nodiscard]] QWidget* inside() const { return m_inside; }

 private:
  void applyLook();

  SettingsDesk* m_desk;
  QWidget* m_inside;
  QVBoxLayout* m_column;
  QList<QLabel*> m_headings;
  QList<QWidget*> m_plain;
};

}  // namespace grainwise::ui
