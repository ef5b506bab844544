// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include "ui/charts/card_picture.h"
#include "ui/print/page.h"

namespace grainwise::ui {

/// A deck on paper: a card a page with its answer and the teacher's notes, or four to a page without
/// them and with lines for the student's own.
class DeckPages : public Pages {
 public:
  enum class Form { cardAPage, fourAPage };
  DeckPages(const Deck& deck, const std::filesystem::path& folder, Form form, DisplayUnits units,
            const Conditions& conditions = {});

  [[nodiscard]] QString title() const override { return m_title; }
  [[nodiscard]] int count() const override;
  void paint(QPainter& p, int page, QSizeF sheet) const override;
  /// What cards lack, a line each with the card's number; empty when the deck is whole.
  [[nodiscard]] QStringList missing() const;

 private:
  void paintCard(QPainter& p, std::size_t card, QSizeF sheet) const;
  void paintQuarter(QPainter& p, std::size_t card, const QRectF& box) const;

  QString m_title;
  std::vector<ShownCard> m_cards;
  Form m_form;
  DisplayUnits m_units;
};

}  // namespace grainwise::ui
