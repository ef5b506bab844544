// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointer>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/model/rig.h"
#include "ui/strip/landing.h"
#include "ui/strip/part_payload.h"
#include "ui/strip/placement.h"
#include "ui/strip/silhouette.h"
#include "ui/theme/look.h"

class QDrag;
class QPushButton;
class QVariantAnimation;

namespace grainwise::ui {

class AnalysisFeed;
class Block;
class JunctionTag;
class Lens;
class RigDocument;
class Ruler;
class StripOverlay;

/// The line laid on the bench: every part a block true to scale on the ruler, tags on the joints, a lens
/// on the last six feet where they are too small to grab. Parts are dropped here from the Shelf, moved
/// along, dragged off; each gesture shows its result while it hovers and is one named undo step. Every
/// drag has a twin on the keyboard.
class StripView : public QWidget {
  Q_OBJECT
 public:
  StripView(Look* look, RigDocument* document, AnalysisFeed* feed, Ruler* ruler,
            QWidget* parent = nullptr);
  ~StripView() override;

  [[nodiscard]] std::optional<std::size_t> selected() const { return m_selected; }
  void select(std::optional<std::size_t> index);
  /// -1 towards the rod, 1 towards the fly.
  void moveSelected(int by);
  void duplicateSelected();
  void removeSelected();

  /// A part of this line that is held over some other place of the window: shows the line without it,
  /// or takes it off for good.
  [[nodiscard]] bool canTakeOff(const QMimeData* mime) const;
  void previewOff(const QMimeData* mime);
  void takeOff(const QMimeData* mime);
  void endPreview();

  /// A line beside another one: its ruler is set by who lays the two out, the rule is drawn elsewhere,
  /// and there is no lens.
  void setGuest(bool guest);
  /// Heights are drawn for a foot of at least this, so that two lines have one scale.
  void setScaleFloor(double gr_per_ft);
  /// There is another line, below this one or above: a part is copied to it by menu and key as by a drag.
  void setOtherLine(bool below) { m_otherBelow = below; }
  /// A part of another line, let go here before the part that now is `wanted`.
  void takeCopy(const Part& part, std::size_t wanted);

  [[nodiscard]] const QList<Block*>& blocks() const { return m_blocks; }
  [[nodiscard]] const QList<JunctionTag*>& tags() const { return m_tags; }
  [[nodiscard]] const std::vector<CaptionPlace>& captions() const { return m_captions; }
  [[nodiscard]] Lens* lens() const { return m_lens; }
  /// Runs a drag; replaced by tests that only look at its payload.
  std::function<Qt::DropAction(QDrag*)> runDrag;

  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 Q_SIGNALS:
  void partSelected(std::optional<std::size_t> index);
  void partActivated(std::size_t index);
  void tagClicked(std::size_t junction);
  /// Why a gesture was not taken, in plain words.
  void refused(const QString& why);
  void startFromRod();
  /// An outline of the empty line was clicked, or Enter pressed there: a part of that kind is looked for.
  void partWanted(PartKind kind);
  /// A part of this line is wanted on the other one, too.
  void copyAcrossWanted(std::size_t index);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  // strip_view.cpp: how it is laid out
  void layOut(bool slide);
  void adoptBlocks(const Rig& rig);
  void settleSelection();
  void setRuler();
  void setScale();
  void fitBlocks();
  void fitInside(Block* block, std::size_t part);
  void fitTags();
  void fitLens();
  void fitCaptions();
  [[nodiscard]] std::vector<CaptionWish> captionWishes(const QFont& font) const;
  void fitTabOrder();
  void fitFromRod(bool empty);
  void place(double share);
  void markLanding();
  Block* newBlock();
  JunctionTag* newTag();
  void fitWords();
  [[nodiscard]] const QStringList& captionsOf(std::size_t part) const { return m_words[part].captions; }
  [[nodiscard]] QString spokenOf(std::size_t part) const;
  [[nodiscard]] QRectF lineBox(std::size_t part) const;
  [[nodiscard]] QRect hitBox(std::size_t part, const QRectF& line) const;
  [[nodiscard]] double halfLine(double from, double to) const;
  [[nodiscard]] Feet profileLength() const;
  [[nodiscard]] double flyRoom() const;
  [[nodiscard]] bool lensUseful() const;
  [[nodiscard]] double bodyTop() const;
  [[nodiscard]] double bodyBottom() const;
  [[nodiscard]] double ruleTop() const;

  // strip_paint.cpp: what is drawn behind the blocks
  void paintRule(QPainter& p) const;
  void paintJoints(QPainter& p) const;
  void paintLensGuides(QPainter& p) const;
  void paintCaptions(QPainter& p) const;
  void paintOutlines(QPainter& p) const;
  [[nodiscard]] bool holds(PartKind kind) const;
  [[nodiscard]] bool growing() const;
  [[nodiscard]] double headEdge() const;
  [[nodiscard]] std::vector<std::pair<PartKind, QRectF>> outlines() const;
  [[nodiscard]] bool isNext(PartKind kind) const;

  // strip_gestures.cpp: what keys and clicks do
  void focusBlock(std::size_t index, Qt::FocusReason reason = Qt::OtherFocusReason);
  void pickAfterEdit(std::optional<std::size_t> index);
  void stepSelection(int by);
  [[nodiscard]] std::optional<PartKind> outlineAt(QPointF at) const;
  void askForNext();
  void stepCursor(int by, bool fine);
  void removeAt(std::size_t index);
  void copyAcross();
  void showMenu(std::size_t index, const QPoint& global);
  /// Whether what is seen at a place of the line is the line's own, and not of a change that is only shown.
  [[nodiscard]] bool isOnLine(std::size_t index) const;
  bool needSelection();

  // strip_drag.cpp: what a part in the hand does
  /// Whether what is in the hand still stands where it was taken from, on this line.
  [[nodiscard]] bool isOwn(const PartPayload& held) const;
  void startDrag(std::size_t index);
  [[nodiscard]] std::size_t slotAt(const QPointF& at) const;
  [[nodiscard]] Landing landingAt(const PartPayload& held, const QPointF& at) const;
  void showLanding(const Landing& landing);
  void forgetHeld();

  /// What a part is called; kept as long as the part is the same, since it is weighed alone for it.
  struct PartWords {
    Part part;
    Grains mass;
    QStringList captions;
    QString spoken;
  };

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  Ruler* m_ruler;
  QList<Block*> m_blocks;
  QList<Block*> m_parked;  ///< blocks that ended during a drag of ours; deleted after it
  QList<JunctionTag*> m_tags;
  std::vector<CaptionPlace> m_captions;
  std::vector<Silhouette> m_shapes;
  std::vector<PartWords> m_words;
  std::vector<QRectF> m_slideFrom;
  std::vector<QRectF> m_slideTo;
  std::shared_ptr<const Rig> m_shownRig;
  std::shared_ptr<const Rig> m_settledRig;  ///< the last that was no preview
  Lens* m_lens;
  StripOverlay* m_overlay;
  QPushButton* m_fromRod;
  QVariantAnimation* m_slide;
  double m_pixelsPerGrain = 2;
  double m_middle = 80;  ///< y of the line
  double m_half = 40;    ///< the heaviest foot reaches this far from it
  bool m_lensShown = false;
  std::optional<bool> m_otherBelow;
  bool m_guest = false;
  double m_scaleFloor = 0;

  std::optional<std::size_t> m_selected;
  QPointer<Block> m_selectedBlock;
  bool m_picked = false;  ///< an edit of ours has chosen what is selected after it
  bool m_focusPicked = false;

  const QString m_name;  ///< of this line, in payloads
  std::optional<PartPayload> m_held;       ///< what hovers over the line
  std::optional<std::size_t> m_landingAt;  ///< where it would land
  QString m_lastWhy;
  std::vector<double> m_middles;      ///< of the parts as they stand without any preview
  std::vector<double> m_lensMiddles;  ///< the same in the lens, from part `m_lensFirst` on
  std::size_t m_lensFirst = 0;
  QRect m_lensPlace;
  bool m_dragging = false;  ///< a drag of ours is under way
  bool m_realDrag = false;
};

}  // namespace grainwise::ui
