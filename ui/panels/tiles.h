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
/// click, Enter, Space or its key (Alt and its place in the row) asks why.
class Tile : public QAbstractButton {
  Q_OBJECT
 public:
  Tile(Look* look, Reading reading, int place, QWidget* parent = nullptr);

  void setWords(const TileWords& words);
  [[nodiscard]] const TileWords& words() const { return m_words; }
  [[nodiscard]] Reading reading() const { return m_reading; }
  /// The width at which no word of it is cut.
  [[nodiscard]] int wordsWidth() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QString keyHint() const;
  [[nodiscard]] QRectF inside() const;
  void paintTitle(QPainter& p, const QRectF& row) const;
  void paintNumber(QPainter& p, const QRectF& row) const;
  void paintVerdict(QPainter& p, const QRectF& row) const;

  Look* m_look;
  Reading m_reading;
  int m_place;
  TileWords m_words;
};

/// The tiles of the face: all in one row where every word of them fits, else in two or more.
class TileRow : public QWidget {
  Q_OBJECT
 public:
  TileRow(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);

  [[nodiscard]] const QList<Tile*>& tiles() const { return m_tiles; }
  [[nodiscard]] int columns() const { return m_columns; }

 Q_SIGNALS:
  void whyRequested(Reading reading);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void arrange();
  [[nodiscard]] int columnsFor(int width) const;

  Look* m_look;
  AnalysisFeed* m_feed;
  QGridLayout* m_grid;
  QList<Tile*> m_tiles;
  int m_columns = 0;
};

/// The one sentence about turnover; asks why as a tile does.
class TurnoverButton : public QAbstractButton {
  Q_OBJECT
 public:
  explicit TurnoverButton(Look* look, QWidget* parent = nullptr);
  void setWords(const QString& sentence, std::optional<Grade> grade);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Look* m_look;
  QString m_sentence;
  std::optional<Grade> m_grade;
};

/// One line under the tiles: at the left, whether it turns over; at the right, the stroke against
/// the reference rig.
class SentenceBar : public QWidget {
  Q_OBJECT
 public:
  SentenceBar(Look* look, AnalysisFeed* feed, QWidget* parent = nullptr);

 Q_SIGNALS:
  void whyRequested(Reading reading);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void arrange();

  Look* m_look;
  AnalysisFeed* m_feed;
  TurnoverButton* m_turnover;
  QLabel* m_stroke;
};

}  // namespace grainwise::ui
