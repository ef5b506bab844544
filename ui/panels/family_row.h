// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "ui/panels/choice_list.h"

class QHBoxLayout;
class QMenu;
class QPushButton;

namespace grainwise::ui {

/// The tips of the fitted one's length as one row of buttons, each with its depth and what it does to the
/// stroke: the walk down a pool without another cast. Those that have no room stand in a menu at the end.
class FamilyRow : public QWidget {
  Q_OBJECT
 public:
  explicit FamilyRow(Look* look, QWidget* parent = nullptr);

  void setAnswer(std::shared_ptr<const AnsweredChoice> answer);
  [[nodiscard]] const QList<QPushButton*>& buttons() const { return m_buttons; }
  [[nodiscard]] QMenu* more() const { return m_menu; }
  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  /// A tip of `choice.ranked` to be shown; -1: none any more.
  void previewed(int ranked);
  void taken(int ranked);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fill();
  void fit();
  void addCaption(const QString& words);
  void addButton(std::size_t ranked, const QString& what);
  [[nodiscard]] QString label(const QString& what, const TipChoice& tip) const;

  Look* m_look;
  std::shared_ptr<const AnsweredChoice> m_answer;
  QHBoxLayout* m_row;
  QList<QPushButton*> m_buttons;
  QPushButton* m_more;
  QMenu* m_menu;
};

}  // namespace grainwise::ui
