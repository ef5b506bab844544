// SPDX-License-Identifier: GPL-3.0-or-later
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>
#include <cmath>

#include "core/model/edits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/lens.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_overlay.h"
#include "ui/strip/strip_view.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

/// What keys, clicks and menus do to the line. Each edit is one named step.
namespace grainwise::ui {
namespace {
constexpr double kCursorStep_ft = 0.5;
constexpr double kFineCursorStep_ft = 0.1;
constexpr int kLeastOutline = 60;  ///< px at type scale 1 that a click on an outline may miss by, in all
}  // namespace

void StripView::select(std::optional<std::size_t> index) {
  if (index && *index >= std::size_t(m_blocks.size())) index.reset();
  const bool changed = index != m_selected;
  m_selected = index;
  m_selectedBlock = index ? m_blocks[qsizetype(*index)] : nullptr;
  for (Block* block : std::as_const(m_blocks)) block->setSelected(block == m_selectedBlock);
  markLanding();
  if (changed) Q_EMIT partSelected(m_selected);
}

void StripView::focusBlock(std::size_t index, Qt::FocusReason reason) {
  select(index);
  if (m_selectedBlock && !m_selectedBlock->hasFocus()) m_selectedBlock->setFocus(reason);
}

/// Chooses among the parts of the rig that an edit has just made; its blocks come with the next picture.
void StripView::pickAfterEdit(std::optional<std::size_t> index) {
  m_picked = true;
  m_focusPicked = index.has_value();
  if (index == m_selected) return;
  m_selected = index;
  Q_EMIT partSelected(index);
}

bool StripView::isOnLine(std::size_t index) const {
  const auto& own = m_document->rig().parts;
  const auto& seen = m_document->shown()->parts;
  if (index >= own.size() || index >= seen.size()) return false;
  return own[index] == seen[index] || (own.size() == seen.size() && own[index].kind == seen[index].kind);
}

bool StripView::needSelection() {
  if (m_selected && isOnLine(*m_selected)) return true;
  Q_EMIT refused(tr("Choose a part on the line first."));
  return false;
}

void StripView::moveSelected(int by) {
  if (!needSelection()) return;
  const Rig& rig = m_document->rig();
  const std::size_t from = *m_selected;
  const bool inside = by < 0 ? from > 0 : from + 1 < rig.parts.size();
  if (!inside) {
    Q_EMIT refused(placeWords(rig.parts[from].kind));
    return;
  }
  // Before what then stands one further: towards the fly that is the part after the next.
  const Landing landing = landingOfMoved(rig, from, by < 0 ? from - 1 : from + 2);
  if (!landing.rig) {
    Q_EMIT refused(landing.why);
    return;
  }
  m_document->apply(landing.step, *landing.rig);
  pickAfterEdit(landing.index);
}

void StripView::duplicateSelected() {
  if (!needSelection()) return;
  const Rig& rig = m_document->rig();
  const std::size_t at = *m_selected;
  const PartKind kind = rig.parts[at].kind;
  if (!edits::slotsFor(rig, kind)) {
    Q_EMIT refused(noRoomWords(rig, kind));
    return;
  }
  m_document->apply(tr("Duplicate %1").arg(kindWords(kind)), edits::duplicated(rig, at));
  pickAfterEdit(at + 1);
}

void StripView::removeSelected() {
  if (needSelection()) removeAt(*m_selected);
}

void StripView::removeAt(std::size_t index) {
  const Rig& rig = m_document->rig();
  const QString step = tr("Remove %1").arg(partWords(rig.parts[index], m_look->units()));
  const Rig after = edits::removed(rig, index);
  m_document->apply(step, after);
  if (after.parts.empty()) {
    pickAfterEdit(std::nullopt);
    setFocus();
    return;
  }
  pickAfterEdit(std::min(index, after.parts.size() - 1));
}

void StripView::copyAcross() {
  if (needSelection()) Q_EMIT copyAcrossWanted(*m_selected);
}

void StripView::takeCopy(const Part& part, std::size_t wanted) {
  const Landing landing = landingOfNew(m_document->rig(), part, wanted, m_look->units());
  if (!landing.rig) {
    Q_EMIT refused(landing.why);
    return;
  }
  m_document->apply(landing.step, *landing.rig);
  pickAfterEdit(landing.index);
}

void StripView::stepSelection(int by) {
  const qsizetype count = m_blocks.size();
  if (count == 0 || !m_selected) return;
  const qsizetype next = std::clamp<qsizetype>(qsizetype(*m_selected) + by, 0, count - 1);
  focusBlock(std::size_t(next));
}

void StripView::stepCursor(int by, bool fine) {
  const double step = fine ? kFineCursorStep_ft : kCursorStep_ft;
  const MassProfile& profile = m_feed->analysis().profile;
  const double at = std::round(m_ruler->cursor().feet() / step + by) * step;
  m_ruler->setCursor(Station(std::clamp(at, profile.start.feet(),
                                        std::max(profile.start.feet(), profile.end.feet()))));
}

void StripView::keyPressEvent(QKeyEvent* event) {
  const bool alt = event->modifiers() & Qt::AltModifier;
  const bool control = event->modifiers() & Qt::ControlModifier;
  const bool shift = event->modifiers() & Qt::ShiftModifier;
  const auto step = [&](int by) {
    if (alt) return moveSelected(by);
    return m_selected ? stepSelection(by) : stepCursor(by, shift);
  };
  switch (event->key()) {
    case Qt::Key_Left:
      return step(-1);
    case Qt::Key_Right:
      return step(1);
    case Qt::Key_Home:
      if (!m_blocks.isEmpty()) focusBlock(0);
      return;
    case Qt::Key_End:
      if (!m_blocks.isEmpty()) focusBlock(std::size_t(m_blocks.size()) - 1);
      return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      return removeSelected();
    case Qt::Key_Return:
    case Qt::Key_Enter:
      m_selected ? Q_EMIT partActivated(*m_selected) : askForNext();
      return;
    case Qt::Key_D:
      if (control) return duplicateSelected();
      break;
    case Qt::Key_Up:
    case Qt::Key_Down:
      if (alt && m_otherBelow == (event->key() == Qt::Key_Down)) return copyAcross();
      break;
    case Qt::Key_Escape:
      endPreview();
      select(std::nullopt);
      return setFocus();
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

/// The outline of an empty line that a finger means: a low one is helped to the height of a target.
std::optional<PartKind> StripView::outlineAt(QPointF at) const {
  for (const auto& [kind, box] : outlines()) {
    const double lacks = std::max(0.0, (m_look->px(kLeastOutline) - box.height()) / 2);
    if (box.adjusted(0, -lacks, 0, lacks).contains(at)) return kind;
  }
  return std::nullopt;
}

void StripView::askForNext() {
  for (const auto& [kind, box] : outlines()) {
    if (isNext(kind)) return Q_EMIT partWanted(kind);
  }
}

/// A click beside the blocks lets go of the part and pins the cursor there; one on an outline asks for its part.
void StripView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  select(std::nullopt);
  if (const auto wanted = outlineAt(event->position())) return Q_EMIT partWanted(*wanted);
  mouseMoveEvent(event);
}

void StripView::mouseMoveEvent(QMouseEvent* event) {
  setCursor(outlineAt(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
  if (!(event->buttons() & Qt::LeftButton) || m_blocks.isEmpty()) return;
  const MassProfile& profile = m_feed->analysis().profile;
  const double at = m_ruler->station(event->position().x()).feet();
  m_ruler->setCursor(Station(std::clamp(at, profile.start.feet(),
                                        std::max(profile.start.feet(), profile.end.feet()))));
}

void StripView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  m_overlay->setSpan(bodyTop(), true);
}

void StripView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  m_overlay->setSpan(bodyTop(), false);
}

void StripView::showMenu(std::size_t index, const QPoint& global) {
  focusBlock(index);
  if (!needSelection()) return;
  const Rig& rig = m_document->rig();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->setFont(m_look->font(16));
  const auto add = [&](const QString& words, const char* keys, bool enabled, auto&& what) {
    const QString key = QKeySequence(QLatin1String(keys)).toString(QKeySequence::NativeText);
    QAction* action = menu->addAction(words + QLatin1Char('\t') + key);
    action->setEnabled(enabled);
    connect(action, &QAction::triggered, this, what);
  };
  const bool left = index > 0 && edits::canMove(rig, index, index - 1);
  const bool right = index + 1 < rig.parts.size() && edits::canMove(rig, index, index + 1);
  const bool twice = edits::slotsFor(rig, rig.parts[index].kind).has_value();
  add(tr("Edit"), "Enter", true, [this, index] { Q_EMIT partActivated(index); });
  add(tr("Move left, towards the rod"), "Alt+Left", left, [this] { moveSelected(-1); });
  add(tr("Move right, towards the fly"), "Alt+Right", right, [this] { moveSelected(1); });
  add(tr("Duplicate"), "Ctrl+D", twice, [this] { duplicateSelected(); });
  add(tr("Remove"), "Del", true, [this] { removeSelected(); });
  if (m_otherBelow) {
    add(tr("Copy to the other line"), *m_otherBelow ? "Alt+Down" : "Alt+Up", true, [this] { copyAcross(); });
  }
  menu->popup(global);
}

}  // namespace grainwise::ui
