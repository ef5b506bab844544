// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_window.h"

#include <QDir>
#include <QFile>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScreen>
#include <QTextBrowser>
#include <QTextCursor>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/theme/focus_ring.h"
#include "ui/theme/language.h"
#include "ui/theme/pill_list.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 16;
constexpr int kListWidth = 260;
constexpr int kTextMargin = 16;
constexpr int kAroundWindow = 60;  ///< title bar and borders
constexpr int kLeastWide = 700, kLeastHigh = 420;
}  // namespace

HelpWindow::HelpWindow(Look* look, QWidget* parent) : QDialog(parent), m_look(look) {
  setObjectName(QStringLiteral("help"));
  setWindowTitle(tr("Help - Grainwise"));
  m_search = new QLineEdit(this);
  m_search->setObjectName(QStringLiteral("helpSearch"));
  m_search->setPlaceholderText(tr("Search the help"));
  m_search->setAccessibleName(tr("Search the help"));
  m_search->setClearButtonEnabled(true);
  m_pages = new QListWidget(this);
  m_pages->setObjectName(QStringLiteral("helpPages"));
  m_pages->setAccessibleName(tr("Pages of the help"));
  m_pages->setFrameShape(QFrame::NoFrame);
  m_pages->setItemDelegate(new PillList(look, 36, 0, m_pages));
  m_pages->setProperty(FocusRing::kOwnMark, true);
  m_pages->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_text = new QTextBrowser(this);
  m_text->setObjectName(QStringLiteral("helpText"));
  m_text->setAccessibleName(tr("Help"));
  m_text->setOpenLinks(false);  // nothing is fetched
  m_nothing = new QLabel(tr("No page speaks of that."), this);
  m_nothing->setTextFormat(Qt::PlainText);
  m_nothing->hide();
  auto* left = new QVBoxLayout;
  left->addWidget(m_search);
  left->addWidget(m_nothing);
  left->addWidget(m_pages, 1);
  auto* row = new QHBoxLayout(this);
  row->addLayout(left);
  row->addWidget(m_text, 1);
  fill();
  connect(m_pages, &QListWidget::currentRowChanged, this, &HelpWindow::showPage);
  connect(m_search, &QLineEdit::textChanged, this, &HelpWindow::find);
  connect(look, &Look::changed, this, &HelpWindow::applyLook);
  applyLook();
  m_pages->setCurrentRow(0);
  const QSize room = screen()->availableSize() - QSize(kAroundWindow, kAroundWindow);
  resize(QSize(m_look->px(940), m_look->px(620)).boundedTo(room).expandedTo(QSize(kLeastWide, kLeastHigh)));
}

void HelpWindow::fill() {
  // The person's language where there are pages in it; English lies on top.
  QDir carried(QStringLiteral(":/help/") + spokenIn(QLocale()));
  if (!carried.exists()) carried.setPath(QStringLiteral(":/help"));
  for (const QString& name : carried.entryList({QStringLiteral("*.md")}, QDir::Files, QDir::Name)) {
    QFile file(carried.filePath(name));
    if (!file.open(QIODevice::ReadOnly)) continue;
    const QString source = QString::fromUtf8(file.readAll());
    m_files.append(name);
    m_sources.append(source);
    m_pages->addItem(source.section(QLatin1Char('\n'), 0, 0).mid(2));
  }
}

void HelpWindow::showPage() {
  const int at = m_pages->currentRow();
  if (at < 0) return;
  m_text->setMarkdown(m_sources[at]);
  m_text->document()->setDocumentMargin(m_look->px(kTextMargin));
  const QString words = m_search->text().trimmed();
  if (!words.isEmpty()) m_text->find(words);
}

/// Pages that hold the words stay in the list; the first of them is shown, the words marked.
void HelpWindow::find(const QString& words) {
  const QString wanted = words.trimmed();
  int first = -1;
  for (int i = 0; i < m_pages->count(); ++i) {
    const bool holds = wanted.isEmpty() || m_sources[i].contains(wanted, Qt::CaseInsensitive);
    m_pages->item(i)->setHidden(!holds);
    if (holds && first < 0) first = i;
  }
  m_nothing->setVisible(first < 0);
  if (first < 0) return;
  if (m_pages->item(m_pages->currentRow())->isHidden()) {
    m_pages->setCurrentRow(first);
  } else {
    showPage();
  }
}

void HelpWindow::applyLook() {
  for (QWidget* widget : {static_cast<QWidget*>(m_search), static_cast<QWidget*>(m_pages),
                          static_cast<QWidget*>(m_text), static_cast<QWidget*>(m_nothing)}) {
    widget->setFont(m_look->font(kType));
  }
  int wide = m_look->px(kListWidth);
  for (int i = 0; i < m_pages->count(); ++i) {
    wide = std::max(wide, m_pages->fontMetrics().horizontalAdvance(m_pages->item(i)->text()) + PillList::beside());
  }
  for (QWidget* left : {static_cast<QWidget*>(m_search), static_cast<QWidget*>(m_pages)}) left->setFixedWidth(wide);
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().paper);
  m_pages->setPalette(p);
  m_pages->doItemsLayout();
  m_text->document()->setDocumentMargin(m_look->px(kTextMargin));
  m_search->setMinimumHeight(m_look->px(36));
}

}  // namespace grainwise::ui
