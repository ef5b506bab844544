// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QList>
#include <optional>

#include "core/compare/compare.h"
#include "ui/text/out_table.h"
#include "ui/theme/look.h"

class QLabel;
class QVBoxLayout;

namespace grainwise::ui {

class CompareFeed;

/// One difference: what differs, and below it what that does by itself. A click chooses its parts on
/// the lines.
class DifferenceCard : public QAbstractButton {
  Q_OBJECT
 public:
  DifferenceCard(Look* look, QWidget* parent);

  struct Line {
    QString words;
    std::optional<Grade> becomes;
    bool quiet = false;
  };
  void setWords(int number, const QString& title, const QString& facts, const QList<Line>& lines);
  [[nodiscard]] QString words() const;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double layOut(QPainter* p, double width) const;

  Look* m_look;
  int m_number = 1;
  QString m_title, m_facts;
  QList<Line> m_lines;
};

/// In what B differs from A, what matters most first.
class DifferenceList : public QWidget {
  Q_OBJECT
 public:
  DifferenceList(Look* look, CompareFeed* feed, QWidget* parent = nullptr);

  [[nodiscard]] const QList<DifferenceCard*>& cards() const { return m_cards; }
  [[nodiscard]] OutTable table() const;

 Q_SIGNALS:
  void chosen(const PartPair& parts);

 private:
  void refresh();
  void fill(DifferenceCard* card, int number, const Difference& difference) const;
  [[nodiscard]] QList<DifferenceCard::Line> linesOf(const Difference& difference) const;

  Look* m_look;
  CompareFeed* m_feed;
  QVBoxLayout* m_column;
  QLabel* m_none;
  QList<DifferenceCard*> m_cards;
};

}  // namespace grainwise::ui
