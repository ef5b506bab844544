// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <utility>
#include <vector>

#include "ui/theme/look.h"

class QHBoxLayout;
class QLabel;

namespace grainwise::ui {

class PillButton;

/// One quiet line under the top bar for what came from outside and wants an answer some time: the
/// file was changed by another program, unsaved work was found. Never in the way of work; hidden
/// while there is nothing to tell. One notice at a time; a later one of the same key takes its
/// place.
class NoticeBar : public QWidget {
  Q_OBJECT
 public:
  explicit NoticeBar(Look* look, QWidget* parent = nullptr);

  using Answer = std::pair<QString, std::function<void()>>;
  /// Any answer, and "Later", closes the notice first; one that wants no answer has "Close".
  void tell(const QString& key, const QString& words, const std::vector<Answer>& answers);
  /// Takes a notice back that no longer holds.
  void withdraw(const QString& key);
  [[nodiscard]] QString told() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Notice {
    QString key;
    QString words;
    std::vector<Answer> answers;
  };
  void show(const Notice& notice);
  void next();
  void applyLook();

  Look* m_look;
  QLabel* m_words;
  QHBoxLayout* m_row;
  std::vector<PillButton*> m_buttons;
  std::vector<Notice> m_waiting;
  QString m_key;
};

}  // namespace grainwise::ui
