// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_window.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QScreen>
#include <QStackedWidget>
#include <algorithm>

#include "ui/theme/focus_ring.h"
#include "ui/theme/pill_list.h"
#include "ui/window/rules_page.h"
#include "ui/window/settings_pages.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 16;
constexpr int kListWidth = 200;
constexpr int kWide = 900, kHigh = 620;
constexpr int kLeastWide = 860, kLeastHigh = 420;
constexpr int kAroundWindow = 60;  ///< title bar and borders
}  // namespace

SettingsWindow::SettingsWindow(SettingsDesk* desk, QWidget* parent)
    : QDialog(parent), m_look(desk->look()) {
  setObjectName(QStringLiteral("settings"));
  setWindowTitle(tr("Settings - Grainwise"));
  m_pages = new QListWidget(this);
  m_pages->setObjectName(QStringLiteral("settingsPages"));
  m_pages->setAccessibleName(tr("Pages of the settings"));
  m_pages->setFrameShape(QFrame::NoFrame);
  m_pages->setItemDelegate(new PillList(m_look, 36, 0, m_pages));
  m_pages->setProperty(FocusRing::kOwnMark, true);
  m_pages->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_stack = new QStackedWidget(this);
  auto* row = new QHBoxLayout(this);
  row->setSpacing(14);
  row->addWidget(m_pages);
  row->addWidget(m_stack, 1);
  using Group = RuleGroup;
  addPage(tr("Units, looks, language"), new LookPage(desk, this));
  addPage(tr("Limits of the verdicts"),
          new RulesPage(desk, "settingsVerdicts",
                        tr("Where a reading turns from one word to the next. No limit is a rod maker's; a rod's own "
                           "window comes first. The commands go by the usual limits."),
                        {Group::joints, Group::headOnRod, Group::tipShare, Group::fly, Group::turnover, Group::stroke,
                         Group::weighIn},
                        this));
  addPage(tr("Choosing tips"),
          new RulesPage(desk, "settingsChoosing",
                        tr("What is refused, the verdicts decide. This orders the rest, in the Tip chooser and the "
                           "wallet."),
                        {Group::grades, Group::weights}, this));
  addPage(tr("New rigs"), new NewRigPage(desk, this));
  addPage(tr("Habits of the bench"), new BenchPage(desk, this));
  addPage(tr("Copies and file"), new FilePage(desk, this));
  connect(m_pages, &QListWidget::currentRowChanged, m_stack, &QStackedWidget::setCurrentIndex);
  connect(m_look, &Look::changed, this, &SettingsWindow::applyLook);
  applyLook();
  m_pages->setCurrentRow(0);
  const QSize room = screen()->availableSize() - QSize(kAroundWindow, kAroundWindow);
  resize(QSize(m_look->px(kWide), m_look->px(kHigh)).boundedTo(room).expandedTo(QSize(kLeastWide, kLeastHigh)));
}

void SettingsWindow::addPage(const QString& words, SettingsPage* page) {
  m_pages->addItem(words);
  page->setAccessibleName(words);
  m_stack->addWidget(page);
}

void SettingsWindow::applyLook() {
  const QFontMetrics metrics(m_look->font(kType));
  int widest = 0;
  for (int i = 0; i < m_pages->count(); ++i) {
    widest = std::max(widest, metrics.horizontalAdvance(m_pages->item(i)->text()));
  }
  m_pages->setFixedWidth(std::max(m_look->px(kListWidth), widest + PillList::beside()));
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().paper);
  m_pages->setPalette(p);
  m_pages->doItemsLayout();
}

}  // namespace grainwise::ui
