// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <QStyledItemDelegate>
#include <memory>
#include <vector>

#include "core/choose/choose.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// One answer of the chooser with what it was asked.
struct AnsweredChoice {
  TipQuestion question;
  Choice choice;
};

/// Which of the ranked tips are shown.
struct ChoiceFilter {
  bool sameStroke = false;
  bool usableOnly = false;             ///< without the refused ones
  enum class Kind { all, tips, coated } kind = Kind::all;
  std::optional<std::vector<Part>> wallet;  ///< the tips that are in the wallet
  bool operator==(const ChoiceFilter&) const = default;
};

/// The ranked tips that pass the filter, in their order.
class ChoiceList : public QAbstractListModel {
  Q_OBJECT
 public:
  ChoiceList(Look* look, QObject* parent);

  void setAnswer(std::shared_ptr<const AnsweredChoice> answer);
  void setFilter(const ChoiceFilter& filter);
  [[nodiscard]] const ChoiceFilter& filter() const { return m_filter; }
  [[nodiscard]] const std::shared_ptr<const AnsweredChoice>& answer() const { return m_answer; }
  [[nodiscard]] const TipChoice& choice(int row) const {
    return m_answer->choice.ranked[m_rows[std::size_t(row)]];
  }
  /// The row that shows the ranked tip at that index; -1 when it is filtered away.
  [[nodiscard]] int rowOf(std::size_t ranked) const;

  [[nodiscard]] QString name(int row) const;
  [[nodiscard]] QString sentence(int row) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

 private:
  void fill();
  [[nodiscard]] bool passes(const TipChoice& choice) const;

  Look* m_look;
  std::shared_ptr<const AnsweredChoice> m_answer;
  ChoiceFilter m_filter;
  std::vector<std::size_t> m_rows;
};

/// Paints a row: glyph, name, a bar for each grade in the order of the criteria, sentence; what is refused
/// in grey.
class ChoiceRow : public QStyledItemDelegate {
  Q_OBJECT
 public:
  ChoiceRow(Look* look, const ChoiceList* list, QObject* parent)
      : QStyledItemDelegate(parent), m_look(look), m_list(list) {}
  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                 const QModelIndex& index) override;

 private:
  void paintGrades(QPainter& p, const QRectF& place, const TipChoice& tip) const;

  Look* m_look;
  const ChoiceList* m_list;
};

/// A list that tells when the pointer or the focus leaves it, and takes Enter itself.
class PreviewList : public QListView {
  Q_OBJECT
 public:
  explicit PreviewList(QWidget* parent = nullptr);
  /// One click takes a row, for a list that shows a row when the pointer is over it.
  void setTakenByClick(bool taken) { m_takenByClick = taken; }
  /// Makes a row the current one without saying so; -1: none.
  void markRow(int row);

 Q_SIGNALS:
  /// Show what this row would do; -1: nothing any more.
  void previewed(int row);
  /// A row was gone to by key or click.
  void chosen(int row);
  void taken(int row);
  void escaped();

 protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  int m_hovered = -1;
  bool m_takenByClick = false;
  bool m_quiet = false;
};

}  // namespace grainwise::ui
