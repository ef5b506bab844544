// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/choice_list.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "ui/text/choice_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr int kRowHeight = 30;
constexpr int kGlyph = 11;
constexpr int kNameWidth = 210;
constexpr int kBars = 9;  ///< a slot for each criterion, so that they stand under one another
constexpr int kBar = 5;
constexpr int kBarStep = 7;
constexpr int kBarHeight = 18;
}  // namespace

ChoiceList::ChoiceList(Look* look, QObject* parent) : QAbstractListModel(parent), m_look(look) {}

void ChoiceList::setAnswer(std::shared_ptr<const AnsweredChoice> answer) {
  m_answer = std::move(answer);
  fill();
}

void ChoiceList::setFilter(const ChoiceFilter& filter) {
  if (filter == m_filter) return;
  m_filter = filter;
  fill();
}

bool ChoiceList::passes(const TipChoice& choice) const {
  if (m_filter.usableOnly && choice.standing == Standing::rejected) return false;
  if (m_filter.sameStroke && choice.figures.stroke &&
      choice.figures.stroke->verdict != StrokeVerdict::same) {
    return false;
  }
  if (!choice.shelf) return m_filter.kind == ChoiceFilter::Kind::all;
  const Part& part = m_answer->question.shelf.parts[*choice.shelf];
  if (m_filter.kind == ChoiceFilter::Kind::tips && part.kind != PartKind::tip) return false;
  if (m_filter.kind == ChoiceFilter::Kind::coated && !part.isCoatedLeader()) return false;
  if (!m_filter.wallet) return true;
  return std::find(m_filter.wallet->begin(), m_filter.wallet->end(), part) != m_filter.wallet->end();
}

void ChoiceList::fill() {
  beginResetModel();
  m_rows.clear();
  if (m_answer) {
    for (std::size_t i = 0; i < m_answer->choice.ranked.size(); ++i) {
      if (passes(m_answer->choice.ranked[i])) m_rows.push_back(i);
    }
  }
  endResetModel();
}

int ChoiceList::rowOf(std::size_t ranked) const {
  const auto found = std::find(m_rows.begin(), m_rows.end(), ranked);
  return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

QString ChoiceList::name(int row) const {
  const TipChoice& tip = choice(row);
  const QString words = choiceName(m_answer->question.shelf, tip.shelf, m_look->units());
  return tip.asItStands ? tr("%1 (on)", "a tip that is fitted").arg(words) : words;
}

QString ChoiceList::sentence(int row) const {
  return choiceSentence(choice(row), m_answer->choice.wanted, m_look->units());
}

int ChoiceList::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant ChoiceList::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const int row = index.row();
  if (role == Qt::DisplayRole) return name(row);
  if (role == Qt::AccessibleTextRole) {
    return tr("%1, %2: %3", "tip, verdict: sentence")
        .arg(name(row), gradeWord(gradeOf(choice(row).standing)), sentence(row));
  }
  if (role == Qt::AccessibleDescriptionRole) {
    return tr("Grades: %1").arg(gradeWords(choice(row)).replace(QLatin1Char('\n'), QStringLiteral(", ")));
  }
  return {};
}

void ChoiceRow::paint(QPainter* p, const QStyleOptionViewItem& option,
                      const QModelIndex& index) const {
  const Colours& c = m_look->colours();
  const TipChoice& tip = m_list->choice(index.row());
  const bool selected = option.state & QStyle::State_Selected;
  const bool refused = tip.standing == Standing::rejected;
  p->save();
  QRectF box(option.rect);
  if (selected || (option.state & QStyle::State_MouseOver)) p->fillRect(box, c.card);
  if (selected && (option.state & QStyle::State_HasFocus)) {
    p->setPen(QPen(c.river, 2));
    p->drawRect(box.adjusted(1, 1, -1, -1));
  }
  const double glyph = m_look->px(kGlyph);
  box.adjust(m_look->px(8), 0, -m_look->px(8), 0);
  paintGlyph(*p, QRectF(box.left(), box.center().y() - glyph / 2, glyph, glyph),
             glyphOf(gradeOf(tip.standing)), c);
  box.setLeft(box.left() + glyph + m_look->px(10));
  p->setFont(m_look->font(15, tip.asItStands));
  p->setPen(refused ? c.slate : c.ink);
  const double nameWidth = std::min<double>(m_look->px(kNameWidth), box.width() * 0.42);
  const QRectF nameBox(box.left(), box.top(), nameWidth, box.height());
  p->drawText(nameBox, Qt::AlignVCenter | Qt::AlignLeft,
              p->fontMetrics().elidedText(m_list->name(index.row()), Qt::ElideRight, int(nameWidth)));
  const double bars = m_look->px(kBars * kBarStep), high = m_look->px(kBarHeight);
  paintGrades(*p, QRectF(nameBox.right() + m_look->px(8), box.center().y() - high / 2, bars, high), tip);
  p->setFont(m_look->font(14));
  p->setPen(refused ? c.slate : tip.standing == Standing::watch ? c.ochreWord : c.ink);
  box.setLeft(nameBox.right() + bars + m_look->px(18));
  p->drawText(box, Qt::AlignVCenter | Qt::AlignLeft,
              p->fontMetrics().elidedText(m_list->sentence(index.row()), Qt::ElideRight,
                                          int(box.width())));
  p->restore();
}

/// As tall as the grade; to be watched half as wide; refused a cross.
void ChoiceRow::paintGrades(QPainter& p, const QRectF& place, const TipChoice& tip) const {
  const Colours& c = m_look->colours();
  const double step = m_look->px(kBarStep), wide = m_look->px(kBar);
  p.setRenderHint(QPainter::Antialiasing, false);
  for (const Judged& j : tip.judged) {
    const double left = std::round(place.left() + int(j.criterion) * step);
    const QRectF slot(left, place.top(), wide, place.height());
    p.setPen(QPen(c.edge, 1));
    p.drawLine(slot.bottomLeft(), slot.bottomRight());
    if (j.zone == Grade::wrong) {
      const QRectF cross(left, place.bottom() - wide - 3, wide - 1, wide - 1);
      p.setRenderHint(QPainter::Antialiasing, true);
      p.setPen(QPen(c.brick, 1.5));
      p.drawLine(cross.topLeft(), cross.bottomRight());
      p.drawLine(cross.bottomLeft(), cross.topRight());
      p.setRenderHint(QPainter::Antialiasing, false);
      continue;
    }
    const bool watch = j.zone == Grade::watch;
    const double tall = std::max(2.0, std::round(j.grade * place.height()));
    p.fillRect(QRectF(left, place.bottom() - tall, watch ? std::round(wide / 2) : wide, tall),
               watch ? c.ochreLine : c.alder);
  }
  p.setRenderHint(QPainter::Antialiasing, true);
}

/// The whole sentence, which the row may cut, and the grades in words.
bool ChoiceRow::helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                          const QModelIndex& index) {
  if (event->type() != QEvent::ToolTip || !index.isValid()) {
    return QStyledItemDelegate::helpEvent(event, view, option, index);
  }
  QToolTip::showText(event->globalPos(),
                     m_list->sentence(index.row()) + QStringLiteral("\n\n") + gradeWords(m_list->choice(index.row())), view);
  return true;
}

QSize ChoiceRow::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
  return {m_look->px(300), m_look->px(kRowHeight)};
}

PreviewList::PreviewList(QWidget* parent) : QListView(parent) {
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setMouseTracking(true);
  viewport()->setAttribute(Qt::WA_Hover);  // a row knows that the pointer is over it
}

void PreviewList::markRow(int row) {
  m_quiet = true;
  setCurrentIndex(row >= 0 && model() != nullptr ? model()->index(row, 0) : QModelIndex());
  m_quiet = false;
}

void PreviewList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  if (m_quiet) return;
  const int row = current.isValid() ? current.row() : -1;
  Q_EMIT chosen(row);
  if (hasFocus()) Q_EMIT previewed(row);
}

void PreviewList::mouseMoveEvent(QMouseEvent* event) {
  QListView::mouseMoveEvent(event);
  const QModelIndex index = indexAt(event->pos());
  const int row = index.isValid() ? index.row() : -1;
  if (row == m_hovered) return;
  m_hovered = row;
  Q_EMIT previewed(row >= 0 ? row : hasFocus() && currentIndex().isValid() ? currentIndex().row() : -1);
}

void PreviewList::mouseReleaseEvent(QMouseEvent* event) {
  QListView::mouseReleaseEvent(event);
  const QModelIndex index = indexAt(event->pos());
  if (m_takenByClick && event->button() == Qt::LeftButton && index.isValid() && index == currentIndex()) {
    Q_EMIT taken(index.row());
  }
}

void PreviewList::mouseDoubleClickEvent(QMouseEvent* event) {
  const QModelIndex index = indexAt(event->pos());
  if (!m_takenByClick && index.isValid()) Q_EMIT taken(index.row());
}

void PreviewList::leaveEvent(QEvent* event) {
  QListView::leaveEvent(event);
  m_hovered = -1;
  Q_EMIT previewed(hasFocus() && currentIndex().isValid() ? currentIndex().row() : -1);
}

/// A list that is entered makes its first row the current one; with a press that is not what was chosen.
void PreviewList::focusInEvent(QFocusEvent* event) {
  m_quiet = event->reason() == Qt::MouseFocusReason;
  QListView::focusInEvent(event);
  m_quiet = false;
}

void PreviewList::focusOutEvent(QFocusEvent* event) {
  QListView::focusOutEvent(event);
  m_hovered = -1;
  Q_EMIT previewed(-1);
}

void PreviewList::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (currentIndex().isValid()) Q_EMIT taken(currentIndex().row());
      return;
    case Qt::Key_Escape:
      setCurrentIndex({});
      Q_EMIT previewed(-1);
      Q_EMIT escaped();
      return;
    default:
      QListView::keyPressEvent(event);
  }
}

}  // namespace grainwise::ui
