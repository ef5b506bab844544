// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QCursor>
#include <QDrag>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QTimer>
#include <algorithm>

#include "core/model/edits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/lens.h"
#include "ui/strip/strip_view.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

/// What a part in the hand does: lifted from the line, held over it, let go on it or beside it.
namespace grainwise::ui {
namespace {

/// Whether Escape was pressed while a drag ran: the drag itself tells a cancel and a drop on nothing
/// with the same answer.
class EscapeWatch : public QObject {
 public:
  EscapeWatch() {
    // The drag's own filter swallows all keys; the filter that comes last is asked first.
    QTimer::singleShot(0, this, [this] { QCoreApplication::instance()->installEventFilter(this); });
  }
  [[nodiscard]] bool seen() const { return m_seen; }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride) {
      m_seen = m_seen || static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
    }
    return false;
  }

 private:
  bool m_seen = false;
};

}  // namespace

void StripView::startDrag(std::size_t index) {
  if (m_dragging || !isOnLine(index)) return;
  const Part part = m_document->rig().parts[index];
  select(index);
  m_dragging = true;
  m_realDrag = false;
  auto* drag = new QDrag(this);  // not the block's: it may end with its own move
  const PartPayload held{part, PartOrigin{m_name, index}};
  drag->setMimeData(mimeOf(held));
  const QPixmap picture = dragPicture(m_shapes[index], captionsOf(index).front(), part.length().value(),
                                      *m_look, devicePixelRatioF());
  drag->setPixmap(picture);
  drag->setHotSpot(QPoint(int(picture.deviceIndependentSize().width() / 2),
                          int(picture.deviceIndependentSize().height()) + 4));
  const EscapeWatch escape;
  const QPointer<StripView> alive(this);
  const Qt::DropAction done = runDrag(drag);
  if (!alive) return;
  m_dragging = false;
  qDeleteAll(m_parked);
  m_parked.clear();
  forgetHeld();
  const bool letGo = !(QGuiApplication::mouseButtons() & Qt::LeftButton);
  const bool outside = !rect().contains(mapFromGlobal(QCursor::pos()));
  if (done != Qt::IgnoreAction) return;
  endPreview();
  if (m_realDrag && letGo && outside && !escape.seen() && isOwn(held)) removeAt(index);
}

bool StripView::isOwn(const PartPayload& held) const {
  const auto& parts = m_document->rig().parts;
  return held.origin && held.origin->line == m_name && held.origin->index < parts.size() &&
         parts[held.origin->index] == held.part;
}

/// Before which part of the line, as it stands without any preview, a place in the strip lies.
std::size_t StripView::slotAt(const QPointF& at) const {
  const auto before = [&](const std::vector<double>& middles) {
    return std::size_t(std::count_if(middles.begin(), middles.end(), [&](double m) { return m < at.x(); }));
  };
  if (!m_lensMiddles.empty() && m_lensPlace.contains(at.toPoint())) return m_lensFirst + before(m_lensMiddles);
  return before(m_middles);
}

Landing StripView::landingAt(const PartPayload& held, const QPointF& at) const {
  const Rig& rig = m_document->rig();
  if (isOwn(held)) return landingOfMoved(rig, held.origin->index, slotAt(at));
  return landingOfNew(rig, held.part, slotAt(at), m_look->units());
}

void StripView::dragEnterEvent(QDragEnterEvent* event) {
  m_held = payloadOf(event->mimeData());
  m_lastWhy.clear();
  // Over another line a part is copied: the one it comes from stays whole.
  auto* from = qobject_cast<StripView*>(event->source());
  if (from != nullptr && from != this) from->endPreview();
  if (!m_held) {
    // Files and the rest are the window's, except what says it is a part and is none.
    if (holdsPart(event->mimeData())) Q_EMIT refused(tr("What is in the hand is no part that can be read."));
    event->ignore();
    return;
  }
  if (isOwn(*m_held)) {
    event->setDropAction(Qt::MoveAction);
    event->accept();
  } else {
    event->acceptProposedAction();
  }
  update();
}

void StripView::dragMoveEvent(QDragMoveEvent* event) {
  if (!m_held) return event->ignore();
  const Landing landing = landingAt(*m_held, event->position());
  showLanding(landing);
  if (!landing.rig) return event->ignore();
  if (isOwn(*m_held)) {
    event->setDropAction(Qt::MoveAction);
    event->accept();
  } else {
    event->acceptProposedAction();
  }
}

void StripView::showLanding(const Landing& landing) {
  if (!landing.rig) {
    m_landingAt.reset();
    endPreview();
    markLanding();
    if (landing.why != m_lastWhy) Q_EMIT refused(landing.why);
    m_lastWhy = landing.why;
    return;
  }
  m_lastWhy.clear();
  m_landingAt = landing.index;
  if (*landing.rig == m_document->rig()) {
    endPreview();
    markLanding();
  } else {
    m_document->setPreview(landing.rig);
  }
}

void StripView::dragLeaveEvent(QDragLeaveEvent*) {
  const auto held = m_held;
  forgetHeld();
  // A part of this line that is carried away: everything shows the line without it.
  if (held && isOwn(*held) && m_dragging) {
    m_document->setPreview(edits::removed(m_document->rig(), held->origin->index));
  } else {
    endPreview();
  }
}

void StripView::dropEvent(QDropEvent* event) {
  const auto held = payloadOf(event->mimeData());
  forgetHeld();
  if (!held) return event->ignore();
  const Landing landing = landingAt(*held, event->position());
  if (!landing.rig) {
    endPreview();
    Q_EMIT refused(landing.why);
    return event->ignore();
  }
  event->setDropAction(isOwn(*held) ? Qt::MoveAction : Qt::CopyAction);
  event->accept();
  m_document->apply(landing.step, *landing.rig);
  pickAfterEdit(landing.index);
}

void StripView::forgetHeld() {
  m_held.reset();
  m_landingAt.reset();
  markLanding();
  update();
}

bool StripView::canTakeOff(const QMimeData* mime) const {
  const auto held = payloadOf(mime);
  return held && isOwn(*held);
}

void StripView::previewOff(const QMimeData* mime) {
  const auto held = payloadOf(mime);
  if (!held || !isOwn(*held)) return;
  m_document->setPreview(edits::removed(m_document->rig(), held->origin->index));
}

void StripView::takeOff(const QMimeData* mime) {
  const auto held = payloadOf(mime);
  if (held && isOwn(*held)) removeAt(held->origin->index);
}

void StripView::endPreview() { m_document->setPreview(std::nullopt); }

}  // namespace grainwise::ui
