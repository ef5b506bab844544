// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/shelf_view.h"

#include <QDrag>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QMimeData>
#include <QPainter>
#include <QVBoxLayout>

#include "core/model/edits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/shelf_model.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// A list of cards whose drag shows the part itself, not the whole row.
class CardList : public QListView {
 public:
  explicit CardList(Look* look, QWidget* parent) : QListView(parent), m_look(look) {}

 protected:
  void startDrag(Qt::DropActions) override {
    const QModelIndex index = currentIndex();
    if (!index.isValid()) return;
    auto* drag = new QDrag(window());
    drag->setMimeData(model()->mimeData({index}));
    const auto* cards = static_cast<ShelfModel*>(model());
    QPixmap picture(m_look->px(160), m_look->px(40));
    picture.fill(Qt::transparent);
    QPainter p(&picture);
    const QRectF box(picture.rect());
    if (cards->silhouette(index.row()).isFly) {
      paintFly(p, box, cards->silhouette(index.row()), m_look->colours());
    } else {
      paintLine(p, box.adjusted(2, 2, -2, -2), cards->silhouette(index.row()),
                box.height() / std::max(cards->heaviest(), 12.0), m_look->colours());
    }
    p.end();
    drag->setPixmap(picture);
    drag->setHotSpot(picture.rect().center());
    drag->exec(Qt::CopyAction);
  }

  void keyPressEvent(QKeyEvent* event) override {
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentIndex().isValid()) {
      Q_EMIT activated(currentIndex());
      return;
    }
    QListView::keyPressEvent(event);
  }

 private:
  Look* m_look;
};

bool matches(const Part& part, const QString& words, DisplayUnits units) {
  QString text = partWords(part, units) + QLatin1Char(' ') + kindWords(part.kind);
  if (part.style) text += QLatin1Char(' ') + styleWords(*part.style);
  if (part.group) text += QLatin1Char(' ') + QString::fromStdString(*part.group);
  const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (const QString& word : wanted) {
    if (!text.contains(word, Qt::CaseInsensitive)) return false;
  }
  return true;
}

}  // namespace

ShelfView::ShelfView(Look* look, RigDocument* document, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document) {
  m_search = new QLineEdit(this);
  m_search->setObjectName(QStringLiteral("shelfSearch"));
  m_search->setPlaceholderText(tr("Search all parts"));
  m_search->setAccessibleName(tr("Search all parts"));
  m_search->setClearButtonEnabled(true);
  m_groups = new QListWidget(this);
  m_groups->setObjectName(QStringLiteral("shelfGroups"));
  m_groups->setAccessibleName(tr("Groups of the Shelf"));
  m_groups->setFrameShape(QFrame::NoFrame);
  m_groups->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_model = new ShelfModel(look, this);
  m_cards = new CardList(look, this);
  m_cards->setObjectName(QStringLiteral("shelfCards"));
  m_cards->setAccessibleName(tr("Parts: drag one onto the line, or press Enter to place it"));
  m_cards->setFrameShape(QFrame::NoFrame);
  m_cards->setModel(m_model);
  m_cards->setItemDelegate(new ShelfCardPainter(look, m_model, m_cards));
  m_cards->setViewMode(QListView::IconMode);
  m_cards->setFlow(QListView::LeftToRight);
  m_cards->setWrapping(true);
  m_cards->setMovement(QListView::Snap);
  m_cards->setResizeMode(QListView::Adjust);
  m_cards->setUniformItemSizes(true);
  m_cards->setDragEnabled(true);
  m_cards->setDragDropMode(QAbstractItemView::DragOnly);
  m_cards->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_nothing = new QLabel(tr("Nothing on the Shelf has these words."), this);
  m_nothing->hide();

  auto* left = new QVBoxLayout;
  left->addWidget(m_search);
  left->addWidget(m_groups, 1);
  auto* right = new QVBoxLayout;
  right->addWidget(m_nothing);
  right->addWidget(m_cards, 1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(12);
  row->addLayout(left);
  row->addLayout(right, 1);

  connect(m_groups, &QListWidget::currentRowChanged, this, [this](int group) {
    if (group >= 0 && !m_search->text().isEmpty()) m_search->clear();
    showParts();
  });
  connect(m_search, &QLineEdit::textChanged, this, &ShelfView::showParts);
  connect(m_search, &QLineEdit::returnPressed, this, [this] {
    if (m_model->rowCount() == 0) return;
    m_cards->setCurrentIndex(m_model->index(0));
    m_cards->setFocus();
  });
  connect(m_cards, &QListView::activated, this, [this](const QModelIndex& index) { place(index.row()); });
  connect(look, &Look::changed, this, &ShelfView::applyLook);
  applyLook();
}

void ShelfView::setShelf(const Shelf& shelf) {
  m_shelf = shelf;
  const QSignalBlocker quiet(m_groups);
  m_groups->clear();
  QStringList seen;
  for (const Part& part : shelf.parts) {
    const QString group = QString::fromStdString(part.group.value_or(std::string()));
    if (seen.contains(group)) continue;
    seen.append(group);
    m_groups->addItem(group.isEmpty() ? tr("Other parts") : group);
    m_groups->item(m_groups->count() - 1)->setData(Qt::UserRole, group);
  }
  const int tips = int(seen.indexOf(QStringLiteral("Level tips")));
  m_groups->setCurrentRow(std::max(0, tips));
  applyLook();
  showParts();
}

void ShelfView::showParts() {
  const QString words = m_search->text().trimmed();
  const QListWidgetItem* group = m_groups->currentItem();
  std::vector<Part> parts;
  for (const Part& part : m_shelf.parts) {
    const bool here = words.isEmpty()
                          ? group != nullptr && QString::fromStdString(part.group.value_or(std::string())) ==
                                                    group->data(Qt::UserRole).toString()
                          : matches(part, words, m_look->units());
    if (here) parts.push_back(part);
  }
  m_nothing->setVisible(parts.empty());
  m_model->setParts(std::move(parts));
  if (m_model->rowCount() > 0) m_cards->setCurrentIndex(m_model->index(0));
}

void ShelfView::place(int row) {
  const Part& part = m_model->part(row);
  const Rig after = edits::placed(m_document->rig(), part);
  if (after == m_document->rig()) {
    Q_EMIT refused(tr("There is no room for another %1 on the line.").arg(kindWords(part.kind)));
    return;
  }
  m_document->apply(tr("Add %1").arg(partWords(part, m_look->units())), after);
}

void ShelfView::applyLook() {
  m_search->setFont(m_look->font(15));
  m_search->setMinimumHeight(m_look->px(34));
  m_groups->setFont(m_look->font(15));
  m_cards->setFont(m_look->font(15));
  m_nothing->setFont(m_look->font(15));
  const int wide = m_look->px(212);
  m_search->setFixedWidth(wide);
  m_groups->setFixedWidth(wide);
  QPalette p = m_look->palette();
  p.setColor(QPalette::Base, m_look->colours().band);
  m_groups->setPalette(p);
  m_cards->setPalette(p);
  for (int i = 0; i < m_groups->count(); ++i) {
    m_groups->item(i)->setSizeHint(QSize(wide - 20, m_look->px(32)));
  }
  m_cards->doItemsLayout();
}

}  // namespace grainwise::ui
