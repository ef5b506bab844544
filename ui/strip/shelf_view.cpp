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
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/document/rig_document.h"
#include "ui/strip/landing.h"
#include "ui/strip/shelf_model.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/pill_list.h"

namespace grainwise::ui {
namespace {
constexpr int kLeftWidth = 236;
constexpr int kTarget = 44;
constexpr int kType = 16;

/// Cards in as many equal columns as there is room for; a drag shows the part itself.
class CardList : public QListView {
 public:
  CardList(Look* look, std::function<void(int)> drag, QWidget* parent)
      : QListView(parent), m_look(look), m_drag(std::move(drag)) {}

  void fitColumns() {
    const int wide = viewport()->width() - 1;
    const int columns = std::max(1, wide / ShelfCardPainter::leastWidthFor(*m_look));
    const QSize cell(wide / columns, ShelfCardPainter::heightFor(*m_look));
    if (gridSize() != cell) setGridSize(cell);
  }

 protected:
  void startDrag(Qt::DropActions) override {
    if (currentIndex().isValid()) m_drag(currentIndex().row());
  }

  void keyPressEvent(QKeyEvent* event) override {
    const bool places = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter ||
                        event->key() == Qt::Key_Insert;
    if (places && currentIndex().isValid()) {
      Q_EMIT activated(currentIndex());
      return;
    }
    QListView::keyPressEvent(event);
  }

  void resizeEvent(QResizeEvent* event) override {
    fitColumns();
    QListView::resizeEvent(event);
  }

 private:
  Look* m_look;
  std::function<void(int)> m_drag;
};

}  // namespace

ShelfView::ShelfView(Look* look, RigDocument* document, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document) {
  runDrag = [](QDrag* drag) { return drag->exec(Qt::CopyAction); };
  m_search = new QLineEdit(this);
  m_search->setObjectName(QStringLiteral("shelfSearch"));
  m_search->setPlaceholderText(tr("Search all parts"));
  m_search->setAccessibleName(tr("Search all parts"));
  m_search->installEventFilter(this);
  m_groups = new QListWidget(this);
  m_groups->setObjectName(QStringLiteral("shelfGroups"));
  m_groups->setAccessibleName(tr("Groups of the Shelf"));
  m_groups->setFrameShape(QFrame::NoFrame);
  m_groups->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_groups->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  auto* rows = new PillList(look, 34, kTarget, m_groups);
  // While words are searched for, all groups are shown from: the chosen one only waits.
  rows->waits = [this] { return !m_search->text().trimmed().isEmpty(); };
  m_groups->setItemDelegate(rows);
  m_groups->viewport()->installEventFilter(this);
  m_model = new ShelfModel(look, this);
  m_cards = new CardList(look, [this](int row) { dragOut(row); }, this);
  m_cards->setObjectName(QStringLiteral("shelfCards"));
  m_cards->setAccessibleName(tr("Parts: drag one onto the line, or press Enter to place it"));
  m_cards->setFrameShape(QFrame::NoFrame);
  m_cards->setModel(m_model);
  m_cards->setItemDelegate(new ShelfCardPainter(look, m_model, m_cards));
  m_cards->setViewMode(QListView::IconMode);
  m_cards->setFlow(QListView::LeftToRight);
  m_cards->setWrapping(true);
  m_cards->setMovement(QListView::Static);
  m_cards->setResizeMode(QListView::Adjust);
  m_cards->setUniformItemSizes(true);
  m_cards->setSelectionRectVisible(false);
  m_cards->setDragEnabled(true);
  m_cards->setDragDropMode(QAbstractItemView::DragOnly);
  m_cards->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_cards->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  m_cards->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  for (QWidget* list : {static_cast<QWidget*>(m_groups), static_cast<QWidget*>(m_cards)}) {
    list->setProperty(FocusRing::kOwnMark, true);
  }
  m_nothing = new QLabel(this);
  m_nothing->setTextFormat(Qt::PlainText);
  m_nothing->hide();

  auto* left = new QVBoxLayout;
  left->setSpacing(4);
  left->addWidget(m_search);
  left->addWidget(m_groups, 1);
  auto* right = new QVBoxLayout;
  right->addWidget(m_nothing);
  right->addWidget(m_cards, 1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(14);
  row->addLayout(left);
  row->addLayout(right, 1);

  connect(m_groups, &QListWidget::currentRowChanged, this, [this](int group) {
    if (group >= 0 && !m_search->text().isEmpty()) m_search->clear();
    showParts();
  });
  // A press on the group that is chosen already also ends a search.
  connect(m_groups, &QListWidget::itemClicked, m_search, &QLineEdit::clear);
  connect(m_document, &RigDocument::fileChanged, this, &ShelfView::chooseForNewRig);
  connect(m_search, &QLineEdit::textChanged, this, &ShelfView::showParts);
  // The picture of the button is loaded when there is something to clear, not at the start.
  connect(m_search, &QLineEdit::textChanged, m_search,
          [this](const QString& words) { m_search->setClearButtonEnabled(!words.isEmpty()); });
  connect(m_search, &QLineEdit::returnPressed, this, &ShelfView::enterCards);
  connect(m_cards, &QListView::activated, this, [this](const QModelIndex& index) { place(index.row()); });
  connect(look, &Look::changed, this, &ShelfView::applyLook);
  applyLook();
}

void ShelfView::setShelf(const SharedShelf& shelf) {
  if (m_groups->count() > 0 && m_model->holds(shelf)) return;
  m_model->setShelf(shelf);
  const QSignalBlocker quiet(m_groups);
  const QListWidgetItem* before = m_groups->currentItem();
  const QVariant shown = before != nullptr ? before->data(Qt::UserRole) : QVariant();
  m_groups->clear();
  m_firstOf.clear();
  QStringList seen;
  for (const Part& part : shelf->parts) {
    const QString group = QString::fromStdString(part.group.value_or(std::string()));
    if (!seen.contains(group)) {
      seen.append(group);
      m_groups->addItem(group.isEmpty() ? tr("Other parts") : shelfName(group));
      m_groups->item(m_groups->count() - 1)->setData(Qt::UserRole, group);
    }
    // What is tied to a tip is looked for among bare leaders, what drives it not among extensions.
    const bool usual = !part.isCoatedLeader() && part.style != Style::extension;
    if (usual && !m_firstOf.contains(part.kind)) m_firstOf.insert(part.kind, int(seen.indexOf(group)));
  }
  applyLook();
  const auto kept = shown.isValid() ? seen.indexOf(shown.toString()) : -1;
  if (kept < 0) return chooseGroup();
  m_groups->setCurrentRow(int(kept));
  showParts();
}

/// The fly comes first; with one on the line it is the tip that is looked for.
void ShelfView::chooseGroup() {
  const QSignalBlocker quiet(m_groups);
  m_groups->setCurrentRow(m_firstOf.value(m_document->rig().flyIndex() ? PartKind::tip : PartKind::fly));
  m_groups->scrollToItem(m_groups->currentItem(), QAbstractItemView::PositionAtCenter);
  showParts();
}

void ShelfView::showKind(PartKind kind) {
  if (!m_firstOf.contains(kind)) return;
  m_search->clear();
  m_groups->setCurrentRow(m_firstOf.value(kind));
  enterCards();
}

/// A rig that was opened or begun, not one that was edited, also back to what it was, or is only tried.
void ShelfView::chooseForNewRig() {
  const auto rig = m_document->shown();
  if (m_document->previewing() || m_document->undoStack()->count() > 0) return;
  if (m_chosenFor != nullptr && *m_chosenFor == *rig) return;
  m_chosenFor = rig;
  chooseGroup();
}

void ShelfView::showParts() {
  const QString words = m_search->text().trimmed();
  const QListWidgetItem* group = m_groups->currentItem();
  if (!words.isEmpty()) {
    m_model->showFound(words);
  } else if (group != nullptr) {
    m_model->showGroup(group->data(Qt::UserRole).toString());
  }
  const bool nothing = m_model->rowCount() == 0;
  m_nothing->setText(words.isEmpty() ? tr("The Shelf is empty.")
                                     : tr("Nothing on the Shelf is found by “%1”. Fewer words find more.").arg(words));
  m_nothing->setVisible(nothing);
  m_cards->setVisible(!nothing);
  if (!nothing) m_cards->setCurrentIndex(m_model->index(0));
  m_cards->scrollToTop();
  m_groups->viewport()->update();
}

void ShelfView::enterCards() {
  if (m_model->rowCount() == 0) return;
  if (!m_cards->currentIndex().isValid()) m_cards->setCurrentIndex(m_model->index(0));
  m_cards->setFocus();
}

bool ShelfView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_groups->viewport() && event->type() == QEvent::Resize) {
    // The chosen group stays in sight whatever height the list gets; it has that height in the next turn.
    QTimer::singleShot(0, m_groups, [this] { m_groups->scrollToItem(m_groups->currentItem()); });
  }
  if (watched == m_search && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down) {
      enterCards();
      return true;
    }
    if (key == Qt::Key_Escape && !m_search->text().isEmpty()) {
      m_search->clear();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

/// As near the fly as its kind allows; a fly or running line takes the place of the one there is.
void ShelfView::place(int row) {
  if (placePart) return placePart(m_model->part(row));
  const Rig& rig = m_document->rig();
  const Landing landing = landingOfNew(rig, m_model->part(row), rig.parts.size(), m_look->units());
  if (!landing.rig) {
    Q_EMIT refused(landing.why);
    return;
  }
  m_document->apply(landing.step, *landing.rig);
}

void ShelfView::dragOut(int row) {
  const ShelfCard& card = m_model->card(row);
  auto* drag = new QDrag(this);
  drag->setMimeData(m_model->mimeData({m_model->index(row)}));
  const QPixmap picture = dragPicture(card.shape, card.name, card.part->length().value(), *m_look,
                                      devicePixelRatioF());
  drag->setPixmap(picture);
  drag->setHotSpot(QPoint(int(picture.deviceIndependentSize().width() / 2),
                          int(picture.deviceIndependentSize().height()) + 4));
  runDrag(drag);
}

void ShelfView::applyLook() {
  const Colours& c = m_look->colours();
  m_search->setFont(m_look->font(kType));
  m_search->setMinimumHeight(std::max(kTarget, m_look->px(36)));
  m_search->setFixedWidth(m_look->px(kLeftWidth));
  m_groups->setFixedWidth(m_look->px(kLeftWidth));
  m_nothing->setFont(m_look->font(kType));
  for (QWidget* list : {static_cast<QWidget*>(m_groups), static_cast<QWidget*>(m_cards)}) {
    QPalette p = list->palette();
    p.setColor(QPalette::Base, c.band);
    p.setColor(QPalette::Text, c.ink);
    list->setPalette(p);
  }
  m_search->setTextMargins(m_look->px(6), 0, m_look->px(4), 0);
  QPalette words = m_nothing->palette();
  words.setColor(QPalette::WindowText, c.slate);
  m_nothing->setPalette(words);
  static_cast<CardList*>(m_cards)->fitColumns();
  m_groups->doItemsLayout();
  m_cards->doItemsLayout();
  update();
}

}  // namespace grainwise::ui
