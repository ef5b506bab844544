// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/make_page.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/panels/elided_choice.h"

namespace grainwise::ui {
namespace {
constexpr auto kSize = "designSize";
constexpr int kControlHeight = 32;
}  // namespace

MakePage::MakePage(Look* look, const char* name, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QLatin1String(name));
  connect(look, &Look::changed, this, [this] { restyle(); });
}

QLabel* MakePage::addLabel(const QString& words, Size size) {
  auto* label = new QLabel(words, this);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  const int pixels = size == Size::number ? 36 : size == Size::reading ? 20 : size == Size::name ? 14 : 15;
  label->setProperty(kSize, pixels);
  label->setFont(m_look->font(pixels));
  return label;
}

QPushButton* MakePage::addButton(const QString& words, const char* name) {
  auto* button = new QPushButton(words, this);
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(kControlHeight);
  button->setFont(m_look->font(15));
  button->setProperty(kSize, 15);
  return button;
}

QComboBox* MakePage::addChoice(const QStringList& words, const QString& spoken, const char* name) {
  auto* box = new ElidedChoice(this);
  box->setObjectName(QLatin1String(name));
  box->addItems(words);
  box->setAccessibleName(spoken);
  box->setMinimumHeight(kControlHeight);
  box->setFont(m_look->font(15));
  box->setProperty(kSize, 15);
  return box;
}

QWidget* MakePage::underName(QComboBox* box, const QString& name) {
  auto* both = new QWidget(this);
  auto* column = new QVBoxLayout(both);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(1);
  QLabel* label = addLabel(name, Size::name);
  label->setWordWrap(false);
  label->setBuddy(box);
  column->addWidget(label);
  column->addWidget(box);
  column->addStretch(1);
  return both;
}

void MakePage::restyle() {
  const auto widgets = findChildren<QWidget*>();
  for (QWidget* widget : widgets) {
    const QVariant pixels = widget->property(kSize);
    if (pixels.isValid()) widget->setFont(m_look->font(pixels.toInt()));
  }
}

}  // namespace grainwise::ui
