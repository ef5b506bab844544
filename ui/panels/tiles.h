// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QList>

#include "ui/text/words.h"
#include "ui/theme/look.h"

class QGridLayout;
class QLabel;

namespace grainwise::ui {

class AnalysisFeed;

/// One reading: its name, a big number with the two it came from, a glyph and a verdict in words. A
/// click, Enter or its key asks why.
class Tile : public QAbstractButton {
  Q_OBJECT
 public:
  Tile(Look* look, Reading reading, QWidget* parent = nullptr);

  void setWords(const TileWords& words);
  [[nodiscard]] const TileWords& words() const { return m_words; }
  [[nodiscard]] Reading reading() const { return m_reading; }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Whether every word fits without being cut, at the present width.
  [[nodiscard]] bool fits() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] int wordsWidth() const;
  void paintVerdict(QPainter& p, const QRectF& row) const;

  Look* m_look;
  Reading m_reading;
  TileWords m_words;
};

/// The tiles of the face, in one row, or in two when the type is too large for one.
class TileRow : public QWidget {
  Q_OBJECT
 public:
  TileRow(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);

  [[nodiscard]] const QList<Tile*>& tiles() const { return m_tiles; }

 Q_SIGNALS:
  void whyRequested(Reading reading);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void arrange();

  Look* m_look;
  AnalysisFeed* m_feed;
  QGridLayout* m_grid;
  QList<Tile*> m_tiles;
  int m_columns = 0;
};

/// One line under the tiles: the stroke against the rig that was opened.
class SentenceBar : public QWidget {
  Q_OBJECT
 public:
  SentenceBar(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);

 private:
  void refresh();

  Look* m_look;
  AnalysisFeed* m_feed;
  QLabel* m_right;
};


}  // namespace grainwise::ui
