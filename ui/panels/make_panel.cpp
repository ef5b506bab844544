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
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_stack = new QStackedWidget(this);
  row->addWidget(m_list);
  row->addWidget(m_stack, 1);
  m_weigh = new WeighPage(look, document, store, this, preferences);
  m_cut = new CutPage(look, document, store, std::move(paper), this);
  addTask(tr("Cut sheet"), m_cut);
  addTask(tr("Spools"), new SpoolsPage(look, store, this));
  addTask(tr("Weigh-in"), m_weigh);
  addTask(tr("Tie a leader"), new LeaderPage(look, document, store, this));
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
  m_list->setFont(m_look->font(15));
  const QFontMetrics metrics(m_list->font());
  int widest = 0;
  for (int i = 0; i < m_list->count(); ++i) {
    widest = std::max(widest, metrics.horizontalAdvance(m_list->item(i)->text()));
    m_list->item(i)->setSizeHint({0, m_look->px(28)});
  }
  m_list->setFixedWidth(widest + m_look->px(34));
  QPalette p = m_list->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  p.setColor(QPalette::Highlight, m_look->colours().pill);
  p.setColor(QPalette::HighlightedText, m_look->colours().onPill);
  m_list->setPalette(p);
}

}  // namespace grainwise::ui
