// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kHeadingType = 17;
constexpr int kTarget = 36;
constexpr int kButtonRoom = 28;  ///< of both sides together, beside a button's words
}  // namespace

SettingsPage::SettingsPage(SettingsDesk* desk, const char* name, QWidget* parent)
    : QScrollArea(parent), m_desk(desk) {
  setObjectName(QLatin1String(name));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  setFocusPolicy(Qt::NoFocus);
  m_inside = new QWidget;
  m_column = new QVBoxLayout(m_inside);
  m_column->setContentsMargins(4, 4, 16, 12);
  m_column->setSpacing(4);
  setWidget(m_inside);
  m_inside->setAutoFillBackground(false);
  viewport()->setAutoFillBackground(false);
  connect(look(), &Look::changed, this, &SettingsPage::applyLook);
}

void SettingsPage::addHeading(const QString& words) {
  auto* label = new QLabel(words, m_inside);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setContentsMargins(0, m_headings.isEmpty() ? 0 : 12, 0, 2);
  m_headings.append(label);
  m_column->addWidget(label);
}

QLabel* SettingsPage::addWords(const QString& words) {
  auto* label = new QLabel(words, m_inside);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  m_plain.append(label);
  m_column->addWidget(label);
  return label;
}

QComboBox* SettingsPage::addChoice(const char* name, const QString& words, const QStringList& items,
                                   const std::function<void(int)>& chosen) {
  auto* row = new QWidget(m_inside);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 2, 0, 2);
  auto* label = new QLabel(words, row);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  auto* choice = new QComboBox(row);
  choice->setObjectName(QLatin1String(name));
  choice->setAccessibleName(words);
  choice->addItems(items);
  choice->setMinimumHeight(kTarget);
  choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  label->setBuddy(choice);
  line->addWidget(label, 1);
  line->addWidget(choice, 1);
  m_plain.append(label);
  m_plain.append(choice);
  m_column->addWidget(row);
  connect(choice, &QComboBox::activated, this, chosen);
  return choice;
}

QPushButton* SettingsPage::addButton(const char* name, const QString& words,
                                     const std::function<void()>& pressed) {
  auto* button = new QPushButton(words, m_inside);
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(kTarget);
  button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  connect(button, &QPushButton::clicked, this, pressed);
  m_plain.append(button);
  m_column->addWidget(button);
  return button;
}

void SettingsPage::add(QWidget* row) { m_column->addWidget(row); }

void SettingsPage::end() {
  m_column->addStretch(1);
  applyLook();
}

void SettingsPage::applyLook() {
  for (QLabel* heading : std::as_const(m_headings)) heading->setFont(look()->font(kHeadingType, true));
  for (QWidget* widget : std::as_const(m_plain)) {
    widget->setFont(look()->font(kType));
    if (auto* button = qobject_cast<QPushButton*>(widget)) {
      button->setMinimumWidth(QFontMetrics(button->font()).horizontalAdvance(button->text()) + kButtonRoom);
    }
  }
}

}  // namespace grainwise::ui
