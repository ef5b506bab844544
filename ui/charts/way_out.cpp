// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/way_out.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QFileDialog>
#include <QHeaderView>
#include <QKeyEvent>
#include <QListView>
#include <QLocale>
#include <QMenu>
#include <QMimeData>
#include <QSignalBlocker>
#include <QTableView>

#include "ui/charts/diagram_access.h"
#include "ui/theme/hearer.h"
#include "ui/theme/plain_words.h"

namespace grainwise::ui {
namespace {

/// While it lives numbers are written as in a file, whatever the person's locale.
class FileNumbers {
 public:
  FileNumbers() { QLocale::setDefault(QLocale::c()); }
  ~FileNumbers() { QLocale::setDefault(m_before); }
  FileNumbers(const FileNumbers&) = delete;
  FileNumbers& operator=(const FileNumbers&) = delete;

 private:
  QLocale m_before;
};

/// While it lives the look answers with dark ink on white, for a picture that leaves the window;
/// nobody is told, since nothing on screen changes.
class OnPaper {
 public:
  explicit OnPaper(Look* look)
      : m_look(look), m_scheme(look->scheme()), m_follows(look->followsSystem()) {
    const QSignalBlocker quiet(look);
    look->setScheme(Scheme::sunlight);
  }
  ~OnPaper() {
    const QSignalBlocker quiet(m_look);
    m_follows ? m_look->followSystem() : m_look->setScheme(m_scheme);
  }
  OnPaper(const OnPaper&) = delete;
  OnPaper& operator=(const OnPaper&) = delete;

 private:
  Look* m_look;
  Scheme m_scheme;
  bool m_follows;
};

/// A name without what file systems or people stumble over.
QString fileName(QString name) {
  for (const QChar c : QStringLiteral("/\\:*?\"<>|%\n\t")) name.replace(c, QLatin1Char(' '));
  return name.simplified();
}

QString askByDialog(QWidget* parent, const QString& title, const QString& name,
                    const QStringList& filters) {
  static QString folder;
  QFileDialog dialog(parent, title, folder);
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setNameFilters(filters);
  // The ending follows the kind that is chosen, so that the dialog asks before that file is
  // replaced.
  const auto follow = [&dialog](const QString& filter) {
    dialog.setDefaultSuffix(
        filter.section(QStringLiteral("*."), 1).section(QLatin1Char(')'), 0, 0));
  };
  QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, follow);
  follow(filters.first());
  dialog.selectFile(name);
  if (dialog.exec() != QDialog::Accepted) return {};
  folder = dialog.directory().absolutePath();
  return dialog.selectedFiles().value(0);
}

OutTable tableOf(const QAbstractItemView* view) {
  const QAbstractItemModel* model = view->model();
  OutTable table;
  const auto* grid = qobject_cast<const QTableView*>(view);
  const bool named = grid != nullptr && !grid->verticalHeader()->isHidden();
  if (named) table.header << QString();
  for (int c = 0; c < model->columnCount(); ++c) {
    const QVariant words = grid != nullptr ? model->headerData(c, Qt::Horizontal) : QVariant();
    table.header << words.toString().replace(QLatin1Char('\n'), QLatin1String(", "));
  }
  for (int r = 0; r < model->rowCount(); ++r) {
    std::vector<OutCell> row;
    if (named) row.emplace_back(model->headerData(r, Qt::Vertical).toString());
    for (int c = 0; c < model->columnCount(); ++c) {
      const QModelIndex at = model->index(r, c);
      // A cell that is drawn says what it shows for the ear.
      const QString words = at.data().toString();
      row.emplace_back(words.isEmpty() ? at.data(Qt::AccessibleTextRole).toString() : words);
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

}  // namespace

WayOut::WayOut(Look* look, QWidget* widget) : QObject(widget), m_look(look), m_widget(widget) {
  askPath = [widget](const QString& title, const QString& name, const QStringList& filters) {
    return askByDialog(widget, title, name, filters);
  };
  widget->installEventFilter(this);
}

WayOut* WayOut::add(Offer offer) {
  m_offers.append(std::move(offer));
  return this;
}

WayOut* WayOut::addWidget(const QString& name, std::function<OutTable()> table) {
  makeDiagram(m_look, m_widget);
  return add(name, std::move(table), [this, name] { return pictureOf(m_widget, name); });
}

WayOut* WayOut::add(const QString& name, std::function<OutTable()> table,
                    std::function<OutPicture()> picture) {
  return add({[name] { return name; }, std::move(table), std::move(picture)});
}

WayOut* WayOut::ofView(Look* look, QAbstractItemView* view, const QString& name) {
  return (new WayOut(look, view))->add(name, [view] { return tableOf(view); });
}

WayOut* WayOut::at(const QWidget* widget) {
  for (; widget != nullptr; widget = widget->parentWidget()) {
    if (auto* out = widget->findChild<WayOut*>(QString(), Qt::FindDirectChildrenOnly)) return out;
    if (widget->isWindow()) break;
  }
  return nullptr;
}

QList<WayOut*> WayOut::shownIn(const QWidget* window) {
  QList<WayOut*> shown;
  for (WayOut* out : window->findChildren<WayOut*>()) {
    if (out->widget()->window() == window && out->widget()->isVisible()) shown.append(out);
  }
  return shown;
}

OutPicture WayOut::pictureOfOffer(int offer) const {
  const Offer& of = m_offers[offer];
  return of.picture ? of.picture() : pictureOf(of.table(), of.name(), *m_look);
}

void WayOut::painted(int offer, const std::function<void(const OutPicture&)>& what) const {
  const OnPaper paper(m_look);
  what(pictureOfOffer(offer));
}

OutTable WayOut::tableForFile(int offer) const {
  const FileNumbers numbers;
  return m_offers[offer].table();
}

void WayOut::copyPicture(int offer) {
  if (m_offers[offer].table().rows.empty())
    return Hearer::tell(m_widget, tr("There is nothing in it yet."));
  painted(offer, [](const OutPicture& picture) {
    auto* data = new QMimeData;
    data->setImageData(imageOf(picture));
    data->setData(QStringLiteral("image/svg+xml"), svgOf(picture));
    QApplication::clipboard()->setMimeData(data);
  });
  Hearer::tell(m_widget, tr("Copied as a picture: %1").arg(nameOf(offer)));
}

void WayOut::copyTable(int offer) {
  const OutTable table = m_offers[offer].table();
  if (table.rows.empty()) return Hearer::tell(m_widget, tr("There is nothing in it yet."));
  auto* data = new QMimeData;
  data->setText(tabbedOf(table));
  data->setHtml(htmlOf(table));
  data->setData(QStringLiteral("text/csv"), csvOf(tableForFile(offer)));
  QApplication::clipboard()->setMimeData(data);
  Hearer::tell(m_widget, tr("Copied as a table: %1").arg(nameOf(offer)));
}

void WayOut::tell(const QString& why, const QString& path) {
  Hearer::tell(m_widget, why.isEmpty() ? tr("Written: %1").arg(path) : why);
}

void WayOut::savePicture(int offer) {
  const QString path = askPath(tr("Save the picture"), fileName(nameOf(offer)),
                               {tr("Picture (*.png)"), tr("Drawing (*.svg)"), tr("Paper (*.pdf)")});
  if (path.isEmpty()) return;
  painted(offer, [&](const OutPicture& picture) { tell(writePicture(picture, path), path); });
}

void WayOut::saveTable(int offer) {
  QString path = askPath(tr("Save the table"), fileName(nameOf(offer)), {tr("Table (*.csv)")});
  if (path.isEmpty()) return;
  tell(writeTable(tableForFile(offer), path), path);
}

void WayOut::addOffer(QMenu* menu, int offer) {
  const bool filled = !m_offers[offer].table().rows.empty();
  menu->setToolTipsVisible(true);
  const auto entry = [&](const QString& words, void (WayOut::*what)(int)) {
    QAction* action = menu->addAction(words);
    action->setEnabled(filled);
    if (!filled) action->setToolTip(tr("There is nothing in it yet."));
    connect(action, &QAction::triggered, this, [this, what, offer] { (this->*what)(offer); });
  };
  entry(tr("Copy picture"), &WayOut::copyPicture);
  entry(tr("Copy table"), &WayOut::copyTable);
  entry(tr("Save picture…"), &WayOut::savePicture);
  entry(tr("Save table…"), &WayOut::saveTable);
}

void WayOut::addTo(QMenu* menu) {
  for (int i = 0; i < m_offers.size(); ++i) {
    if (m_offers.size() == 1) return addOffer(menu, i);
    addOffer(menu->addMenu(PlainWords::inMenu(nameOf(i))), i);
  }
}

void WayOut::showMenu(const QPoint& global) {
  if (m_menu != nullptr || m_offers.isEmpty()) return;
  m_menu = new QMenu(m_widget);
  m_menu->setObjectName(QStringLiteral("wayOut"));
  m_menu->setAttribute(Qt::WA_DeleteOnClose);
  m_menu->setFont(m_look->font(15));
  addTo(m_menu);
  m_menu->popup(global);
}

bool WayOut::eventFilter(QObject* watched, QEvent* event) {
  if (watched != m_widget) return false;
  const auto below = [this] {
    return m_widget->mapToGlobal(QPoint(m_widget->width() / 4, m_widget->height() / 4));
  };
  if (event->type() == QEvent::ContextMenu) {
    const auto* asked = static_cast<QContextMenuEvent*>(event);
    showMenu(asked->reason() == QContextMenuEvent::Mouse ? asked->globalPos() : below());
    event->accept();
    return true;
  }
  if (event->type() != QEvent::KeyPress) return false;
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool wanted = key->key() == Qt::Key_Menu ||
                      (key->key() == Qt::Key_F10 && key->modifiers().testFlag(Qt::ShiftModifier));
  if (wanted) showMenu(below());
  return wanted;
}

}  // namespace grainwise::ui
