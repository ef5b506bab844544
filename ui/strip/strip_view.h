// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/rig.h"
#include "ui/strip/part_payload.h"
#include "ui/theme/look.h"

class QDrag;
class QPushButton;

namespace grainwise::ui {

class AnalysisFeed;
class Block;
class JunctionTag;
class Lens;
class RigDocument;
class Ruler;
class StripOverlay;

/// The line laid on the bench: every part a block true to scale on the ruler, tags on the joints, a lens
/// on the last six feet. Parts are dropped here from the Shelf, moved along, dragged off; each gesture
/// shows its result while it hovers and is one named undo step. Every drag has a twin on the keyboard.
class StripView : public QWidget {
  Q_OBJECT
 public:
  StripView(Look* look, RigDocument* document, AnalysisFeed* feed, Ruler* ruler,
            QWidget* parent = nullptr);

  [[nodiscard]] std::optional<std::size_t> selected() const { return m_selected; }
  void select(std::optional<std::size_t> index);
  /// -1 towards the rod, 1 towards the fly.
  void moveSelected(int by);
  void duplicateSelected();
  void removeSelected();

  /// A part of this line that is held over some other place of the window: shows the line without it,
  /// or takes it off for good.
  [[nodiscard]] bool canTakeOff(const QMimeData* data) const;
  void previewOff(const QMimeData* data);
  void takeOff(const QMimeData* data);
  void endPreview();

  [[nodiscard]] const QList<Block*>& blocks() const { return m_blocks; }
  [[nodiscard]] const QList<JunctionTag*>& tags() const { return m_tags; }
  [[nodiscard]] Lens* lens() const { return m_lens; }
  /// Runs a drag; replaced by tests that only look at its payload.
  std::function<Qt::DropAction(QDrag*)> runDrag;

  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 Q_SIGNALS:
  void partSelected(std::optional<std::size_t> index);
  void partActivated(std::size_t index);
  void tagClicked();
  /// Why a gesture was not taken, in plain words.
  void refused(const QString& why);
  void startFromRod();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dragMoveEvent(QDragMoveEvent* event) override;
  void dragLeaveEvent(QDragLeaveEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  friend class StripOverlay;
  struct Caption {
    QRectF box;
    QString words;
  };
  void layOut(bool slide);
  void setRuler();
  void fitBlocks(bool slide);
  void fitCaptions();
  void fitTags();
  void fitLens();
  void fitTabOrder();
  Block* newBlock();
  [[nodiscard]] QRectF lineBox(std::size_t part) const;
  [[nodiscard]] QRect hitBox(std::size_t part) const;
  [[nodiscard]] double lineBottom() const;
  [[nodiscard]] double middle() const;
  [[nodiscard]] double rulerTop() const;
  [[nodiscard]] double halfHeight() const;
  void paintRule(QPainter& p) const;
  void paintEmpty(QPainter& p) const;

  void startDrag(std::size_t index);
  void showMenu(std::size_t index, const QPoint& global);
  void focusBlock(std::size_t index);
  [[nodiscard]] std::size_t slotAt(double x) const;
  /// The rig with the payload let go at `x`, or why that cannot be.
  struct Landing {
    std::optional<Rig> rig;
    QString step;
    QString why;
    std::size_t index = 0;
  };
  [[nodiscard]] Landing landing(const PartPayload& payload, double x) const;

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  Ruler* m_ruler;
  QList<Block*> m_blocks;
  QList<JunctionTag*> m_tags;
  QList<Caption> m_captions;
  Lens* m_lens;
  StripOverlay* m_overlay;
  QPushButton* m_fromRod;
  double m_pixelsPerGrain = 2;
  std::optional<std::size_t> m_selected;
  std::optional<PartPayload> m_held;       ///< what hovers over the line
  std::vector<double> m_middles;           ///< of the blocks as they stood when the drag came in
  bool m_dragging = false;                 ///< a drag of ours is under way
};

}  // namespace grainwise::ui
