// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QDrag>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMimeData>
#include <algorithm>

#include "core/model/edits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/lens.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_view.h"
#include "ui/text/words.h"

/// What hands and keys do to the line. How it looks is in strip_view.cpp.
namespace grainwise::ui {
namespace {

QString noRoom(PartKind kind) {
  if (kind == PartKind::head) return StripView::tr("Four head pieces are the most that a line can have.");
  return StripView::tr("Sixty-four parts are the most that a line can have.");
}

}  // namespace

void StripView::select(std::optional<std::size_t> index) {
  if (index && *index >= m_document->rig().parts.size()) index.reset();
  m_selected = index;
  for (Block* block : m_blocks) block->setSelected(m_selected == block->index());
  m_lens->setSelected(m_selected);
  Q_EMIT partSelected(m_selected);
}

void StripView::focusBlock(std::size_t index) {
  select(index);
  if (qsizetype(index) < m_blocks.size()) m_blocks[qsizetype(index)]->setFocus(Qt::MouseFocusReason);
}

void StripView::moveSelected(int by) {
  if (!m_selected) {
    Q_EMIT refused(tr("Choose a part on the line first."));
    return;
  }
  const Rig& rig = m_document->rig();
  const std::size_t from = *m_selected;
  const bool inside = by < 0 ? from > 0 : from + 1 < rig.parts.size();
  const std::size_t to = by < 0 ? from - 1 : from + 1;
  if (!inside || !edits::canMove(rig, from, to)) {
    Q_EMIT refused(tr("The order from rod to fly keeps the %1 here.").arg(kindWords(rig.parts[from].kind)));
    return;
  }
  m_selected = to;
  m_document->apply(tr("Move %1").arg(kindWords(rig.parts[from].kind)), edits::moved(rig, from, to));
  focusBlock(to);
}

void StripView::duplicateSelected() {
  if (!m_selected) {
    Q_EMIT refused(tr("Choose a part on the line first."));
    return;
  }
  const Rig& rig = m_document->rig();
  const PartKind kind = rig.parts[*m_selected].kind;
  if (!edits::slotsFor(rig, kind)) {
    const bool one = kind == PartKind::fly || kind == PartKind::runningLine;
    Q_EMIT refused(one ? tr("A line has one %1.").arg(kindWords(kind)) : noRoom(kind));
    return;
  }
  m_document->apply(tr("Duplicate %1").arg(kindWords(kind)), edits::duplicated(rig, *m_selected));
}

void StripView::removeSelected() {
  if (!m_selected) {
    Q_EMIT refused(tr("Choose a part on the line first."));
    return;
  }
  const Rig& rig = m_document->rig();
  const std::size_t at = *m_selected;
  const QString step = tr("Remove %1").arg(kindWords(rig.parts[at].kind));
  const Rig after = edits::removed(rig, at);
  std::optional<std::size_t> next;
  if (!after.parts.empty()) next = std::min(at, after.parts.size() - 1);
  m_document->apply(step, after);
  select(next);
  if (next && qsizetype(*next) < m_blocks.size()) m_blocks[qsizetype(*next)]->setFocus();
}

void StripView::keyPressEvent(QKeyEvent* event) {
  const bool alt = event->modifiers() & Qt::AltModifier;
  const bool control = event->modifiers() & Qt::ControlModifier;
  const std::size_t count = m_document->rig().parts.size();
  const auto step = [&](int by) {
    if (count == 0) return;
    const std::size_t from = m_selected.value_or(by > 0 ? count - 1 : 0);
    focusBlock((from + count + std::size_t(by + int(count))) % count);
  };
  switch (event->key()) {
    case Qt::Key_Left:
      return alt ? moveSelected(-1) : step(-1);
    case Qt::Key_Right:
      return alt ? moveSelected(1) : step(1);
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      return removeSelected();
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (m_selected) Q_EMIT partActivated(*m_selected);
      return;
    case Qt::Key_D:
      if (control) return duplicateSelected();
      break;
    case Qt::Key_Escape:
      endPreview();
      return select(std::nullopt);
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

void StripView::mousePressEvent(QMouseEvent*) { select(std::nullopt); }

void StripView::showMenu(std::size_t index, const QPoint& global) {
  focusBlock(index);
  const Rig& rig = m_document->rig();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->setFont(m_look->font(15));
  const auto add = [&](const QString& words, bool enabled, auto&& what) {
    QAction* action = menu->addAction(words);
    action->setEnabled(enabled);
    connect(action, &QAction::triggered, this, what);
  };
  add(tr("Edit") + QStringLiteral("\tEnter"), true, [this, index] { Q_EMIT partActivated(index); });
  add(tr("Move towards the rod") + QStringLiteral("\tAlt+Left"),
      index > 0 && edits::canMove(rig, index, index - 1), [this] { moveSelected(-1); });
  add(tr("Move towards the fly") + QStringLiteral("\tAlt+Right"),
      index + 1 < rig.parts.size() && edits::canMove(rig, index, index + 1), [this] { moveSelected(1); });
  add(tr("Duplicate") + QStringLiteral("\tCtrl+D"),
      edits::slotsFor(rig, rig.parts[index].kind).has_value(), [this] { duplicateSelected(); });
  add(tr("Remove") + QStringLiteral("\tDelete"), true, [this] { removeSelected(); });
  menu->popup(global);
}

void StripView::startDrag(std::size_t index) {
  if (m_dragging || index >= m_document->rig().parts.size()) return;
  m_dragging = true;
  const Part part = m_document->rig().parts[index];
  auto* drag = new QDrag(this);
  drag->setMimeData(mimeOf({part, index}));
  Block* block = m_blocks.value(qsizetype(index));
  if (block != nullptr) {
    drag->setPixmap(block->grab());
    drag->setHotSpot(QPoint(std::min(block->width() / 2, 60), block->height() / 2));
    block->setLifted(true);
  }
  runDrag(drag);
  // The nested loop may have rebuilt the line: touch only what is ours.
  m_dragging = false;
  endPreview();
  for (Block* each : m_blocks) each->setLifted(false);
}

std::size_t StripView::slotAt(double x) const {
  return std::size_t(std::count_if(m_middles.begin(), m_middles.end(), [x](double m) { return m < x; }));
}

StripView::Landing StripView::landing(const PartPayload& payload, double x) const {
  const Rig& rig = m_document->rig();
  const PartKind kind = payload.part.kind;
  const std::size_t wanted = slotAt(x);
  if (payload.origin && *payload.origin < rig.parts.size() &&
      rig.parts[*payload.origin] == payload.part) {
    const std::size_t from = *payload.origin;
    const Rig without = edits::removed(rig, from);
    const auto places = edits::slotsFor(without, kind);
    const std::size_t to = edits::nearestSlot(*places, wanted > from ? wanted - 1 : wanted);
    return {edits::moved(rig, from, to), tr("Move %1").arg(kindWords(kind)), {}, to};
  }
  const QString step = tr("Add %1").arg(partWords(payload.part, m_look->units()));
  if (const auto places = edits::slotsFor(rig, kind)) {
    const std::size_t to = edits::nearestSlot(*places, wanted);
    return {edits::inserted(rig, to, payload.part), step, {}, to};
  }
  if (kind != PartKind::fly && kind != PartKind::runningLine) return {std::nullopt, {}, noRoom(kind), 0};
  const Rig after = edits::placed(rig, payload.part);
  std::size_t to = 0;
  while (after.parts[to].kind != kind) ++to;
  return {after, tr("Change the %1").arg(kindWords(kind)), {}, to};
}

void StripView::dragEnterEvent(QDragEnterEvent* event) {
  m_held = payloadOf(event->mimeData());
  if (!m_held) return;
  m_middles.clear();
  for (const Block* block : m_blocks) m_middles.push_back(QRectF(block->geometry()).center().x());
  event->acceptProposedAction();
}

void StripView::dragMoveEvent(QDragMoveEvent* event) {
  if (!m_held) return;
  const Landing land = landing(*m_held, event->position().x());
  if (!land.rig) {
    Q_EMIT refused(land.why);
    event->ignore();
    return;
  }
  m_document->setPreview(land.rig);
  event->acceptProposedAction();
}

void StripView::dragLeaveEvent(QDragLeaveEvent*) {
  m_held.reset();
  endPreview();
}

void StripView::dropEvent(QDropEvent* event) {
  const auto payload = payloadOf(event->mimeData());
  m_held.reset();
  if (!payload) return;
  const Landing land = landing(*payload, event->position().x());
  if (!land.rig) {
    endPreview();
    Q_EMIT refused(land.why);
    return;
  }
  event->acceptProposedAction();
  m_document->apply(land.step, *land.rig);
  select(land.index);
}

bool StripView::canTakeOff(const QMimeData* held) const {
  const auto payload = payloadOf(held);
  return payload && payload->origin && *payload->origin < m_document->rig().parts.size() &&
         m_document->rig().parts[*payload->origin] == payload->part;
}

void StripView::previewOff(const QMimeData* held) {
  if (!canTakeOff(held)) return;
  m_document->setPreview(edits::removed(m_document->rig(), *payloadOf(held)->origin));
}

void StripView::takeOff(const QMimeData* held) {
  if (!canTakeOff(held)) return;
  const PartPayload payload = *payloadOf(held);
  m_document->apply(tr("Remove %1").arg(kindWords(payload.part.kind)),
                    edits::removed(m_document->rig(), *payload.origin));
  select(std::nullopt);
}

void StripView::endPreview() { m_document->setPreview(std::nullopt); }

}  // namespace grainwise::ui
