// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/make_panel.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QScrollArea>
#include <QStackedWidget>

#include "ui/panels/fly_page.h"
#include "ui/panels/leader_page.h"
#include "ui/panels/list_page.h"
#include "ui/panels/measure_page.h"
#include "ui/panels/own_parts_page.h"
#include "ui/panels/spools_page.h"
#include "ui/panels/tips_page.h"
#include "ui/panels/weigh_page.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/pill_list.h"

namespace grainwise::ui {
namespace {
constexpr int kTaskRole = Qt::UserRole;
}

MakePanel::MakePanel(Look* look, RigDocument* document, OwnStore* store, PoolBook* pools,
                     CutPaper paper, QWidget* parent, const Preferences* preferences)
    : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("makePanel"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 6, 0, 0);
  row->setSpacing(14);
  m_list = new QListWidget(this);
  m_list->setObjectName(QStringLiteral("makeTasks"));
  m_list->setAccessibleName(tr("Tasks at the bench"));
  m_list->setFrameShape(QFrame::NoFrame);
  m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_list->setItemDelegate(new PillList(look, 27, 0, m_list));
  m_list->setProperty(FocusRing::kOwnMark, true);
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_stack = new QStackedWidget(this);
  row->addWidget(m_list);
  row->addWidget(m_stack, 1);
  m_weigh = new WeighPage(look, document, store, this, preferences);
  m_cut = new CutPage(look, document, store, std::move(paper), this);
  addTask(tr("Cut sheet"), m_cut);
  addTask(tr("Spools"), new SpoolsPage(look, store, this));
  addTask(tr("Weigh-in"), m_weigh);
  auto* leader = new LeaderPage(look, document, store, this);
  connect(leader, &LeaderPage::spoolsWanted, this, [this] { openTask(QStringLiteral("makeSpools")); });
  addTask(tr("Tie a leader"), leader);
  auto* fly = new FlyPage(look, document, store, this);
  connect(fly, &FlyPage::tied, this, &MakePanel::flyTied);
  addTask(tr("Dress a fly"), fly);
  addTask(tr("Trim, divide, name"), new TipsPage(look, document, store, this, preferences));
  addTask(tr("Tub and river"), new MeasurePage(look, document, pools, this));
  addTask(tr("My parts"), new OwnPartsPage(look, document, store, this));
  addTask(tr("Read a list"), new ListPage(look, store, this));
  connect(m_list, &QListWidget::currentRowChanged, m_stack, &QStackedWidget::setCurrentIndex);
  connect(look, &Look::changed, this, &MakePanel::applyLook);
  m_list->setCurrentRow(0);
  applyLook();
}

void MakePanel::addTask(const QString& words, QWidget* page) {
  auto* scroll = new QScrollArea(m_stack);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(page);
  page->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  m_stack->addWidget(scroll);
  auto* item = new QListWidgetItem(words, m_list);
  item->setData(kTaskRole, page->objectName());
}

void MakePanel::openTask(const QString& name) {
  for (int i = 0; i < m_list->count(); ++i) {
    if (m_list->item(i)->data(kTaskRole).toString() == name) m_list->setCurrentRow(i);
  }
}

QString MakePanel::task() const {
  const QListWidgetItem* item = m_list->currentItem();
  return item ? item->data(kTaskRole).toString() : QString();
}

void MakePanel::cut(const std::vector<Part>& parts, const QString& of) {
  openTask(QStringLiteral("makeCut"));
  m_cut->cutOnly(parts, of);
}

void MakePanel::weigh() {
  openTask(QStringLiteral("makeWeigh"));
  m_weigh->start();
}

void MakePanel::applyLook() {
  const QFontMetrics metrics(m_look->font(16));
  int widest = 0;
  for (int i = 0; i < m_list->count(); ++i) {
    widest = std::max(widest, metrics.horizontalAdvance(m_list->item(i)->text()));
  }
  // With the scroll bar that it has where there is little room.
  m_list->setFixedWidth(widest + PillList::beside() + m_list->style()->pixelMetric(QStyle::PM_ScrollBarExtent));
  QPalette p = m_list->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  m_list->setPalette(p);
  m_list->doItemsLayout();
}

}  // namespace grainwise::ui
