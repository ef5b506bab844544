// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "ui/clinic/card_page.h"

namespace grainwise::ui {

/// Shows one card as the class sees it, in the projector scheme, whatever its size; in the middle of
/// itself, with the proportions of a screen when `aspect` is given.
class CardView : public QWidget {
  Q_OBJECT
 public:
  explicit CardView(Look* look, QWidget* parent = nullptr);

  void setCard(std::shared_ptr<const ShownCard> card, const CardState& state);
  /// Nothing at all: no card, or a blanked screen.
  void setBlank(bool blank);
  /// What is said where there is no card.
  void setPrompt(const QString& words);
  void setAspect(std::optional<double> widthToHeight);

  /// The card, with what of it is shown; null without one.
  [[nodiscard]] const std::shared_ptr<const ShownCard>& card() const { return m_card; }
  [[nodiscard]] const CardState& state() const { return m_state; }

  [[nodiscard]] QSize minimumSizeHint() const override { return {160, 90}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Look* m_look;
  std::shared_ptr<const ShownCard> m_card;
  CardState m_state;
  std::optional<double> m_aspect;
  QString m_prompt;
  bool m_blank = false;
};

}  // namespace grainwise::ui
