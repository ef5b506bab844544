// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/drawer.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/theme/ground.h"
#include "ui/theme/pill_button.h"
#include "ui/theme/tab_order.h"

namespace grainwise::ui {
namespace {
/// Two rows of the shelf, at type scale 1.
constexpr int kLeastPage = 124;

/// As tall as a scrolled page ever asks to be, whichever pages are made by now: opening one for the first
/// time moves nothing on the face.
class Pages : public QStackedWidget {
 public:
  using QStackedWidget::QStackedWidget;
  [[nodiscard]] QSize sizeHint() const override {
    const int row = fontMetrics().height();
    return {36 * row, 24 * row};
  }
};
}  // namespace

Drawer::Drawer(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 0, 16, 8);
  column->setSpacing(0);
  m_tabs = new QHBoxLayout;
  m_tabs->setSpacing(4);
  m_words = new QLabel(this);
  m_words->setObjectName(QStringLiteral("refusal"));
  m_words->setTextFormat(Qt::PlainText);
  m_words->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_words->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  m_tabs->addWidget(m_words, 1);
  column->addLayout(m_tabs);
  m_stack = new Pages(this);
  column->addWidget(m_stack, 1);
  connect(look, &Look::changed, this, &Drawer::applyLook);
  applyLook();
}

void Drawer::addPage(const QString& key, const QString& title, Make make, Stay stay) {
  auto* tab = new PillButton(m_look, PillButton::Form::pill, title, this);
  tab->setObjectName(QStringLiteral("tab_") + key);
  tab->setVisible(stay == Stay::standing);
  tab->setGivesWay(stay == Stay::passing);  // its title may be a sentence
  m_tabs->insertWidget(m_tabs->indexOf(m_words), tab);
  m_pages.insert(key, {tab, nullptr, std::move(make), stay});
  connect(tab, &PillButton::clicked, this, [this, key] { open(key); });
  tabAsLaidOut(this);
  if (m_current.isEmpty()) open(key);
}

void Drawer::addPage(const QString& key, const QString& title, QWidget* page, Stay stay) {
  addPage(key, title, [page](QWidget*) { return page; }, stay);
  prepare(key);
}

void Drawer::prepare(const QString& key) {
  const auto page = m_pages.find(key);
  if (page == m_pages.end() || page->widget != nullptr) return;
  // A page that is taller than the drawer scrolls by itself, not the whole face.
  auto* scroll = new QScrollArea(m_stack);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  page->widget = scroll;
  QWidget* inside = page->make(scroll);
  scroll->setWidget(inside);
  inside->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  scroll->setMinimumHeight(m_look->px(kLeastPage));
  m_stack->addWidget(scroll);
  tabAsLaidOut(this);
}

void Drawer::open(const QString& key) {
  if (!m_pages.contains(key)) return;
  prepare(key);
  m_current = key;
  for (auto it = m_pages.cbegin(); it != m_pages.cend(); ++it) {
    const bool here = it.key() == key;
    it->tab->setChecked(here);
    it->tab->setVisible(here || it->stay == Stay::standing);
  }
  m_stack->setCurrentWidget(m_pages[key].widget);
  say({});
  Q_EMIT opened(key);
  bringToSight();
}

/// On a face that is taller than the window: as much of the page as there is room for, its tab above all.
void Drawer::bringToSight() {
  if (!isVisible()) return;
  for (QWidget* w = parentWidget(); w != nullptr; w = w->parentWidget()) {
    auto* area = qobject_cast<QScrollArea*>(w);
    if (area == nullptr) continue;
    const QPoint top = mapTo(area->widget(), QPoint(0, 0));
    area->ensureVisible(0, top.y() + height(), 0, 0);
    area->ensureVisible(0, top.y(), 0, 0);
  }
}

bool Drawer::stays(const QString& key) const {
  const auto page = m_pages.constFind(key);
  return page != m_pages.cend() && page->stay == Stay::standing;
}

void Drawer::setTitle(const QString& key, const QString& title) {
  PillButton* tab = m_pages[key].tab;
  tab->setText(title);
  tab->setAccessibleName(title);
  tab->updateGeometry();
}

void Drawer::addAside(QWidget* widget) { m_tabs->addWidget(widget, 1); }

void Drawer::say(const QString& words) {
  m_words->setText(words);
  m_words->setToolTip(words);
  m_words->setAccessibleName(words);
}

QString Drawer::said() const { return m_words->text(); }

void Drawer::applyLook() {
  m_words->setFont(m_look->font(15));
  QPalette p = m_words->palette();
  p.setColor(QPalette::WindowText, m_look->colours().ochreWord);
  m_words->setPalette(p);
  update();
}

void Drawer::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().band);
}

}  // namespace grainwise::ui
