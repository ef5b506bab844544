// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/panels/wallet_window.h"
#include "ui/print/page.h"

namespace grainwise::ui {

/// The card for the wallet's pocket, black on white, framed to be cut out at 90 x 140 mm: the slots with
/// their tips, which of them for which pool and fly, what has nothing, and the cautions. What is more
/// than a side holds goes on, in type that can still be read, on a second side beside it (folded along
/// the line between them), and on further pages.
class WalletPages : public Pages {
 public:
  WalletPages(const PackedWallet& packed, DisplayUnits units);

  [[nodiscard]] QString title() const override;
  [[nodiscard]] int count() const override { return int((m_sides.size() + 1) / 2); }
  void paint(QPainter& p, int page, QSizeF sheet) const override;
  /// Of the type on the card.
  [[nodiscard]] double points() const { return m_points; }
  [[nodiscard]] int sides() const { return int(m_sides.size()); }

 private:
  struct Line {
    QString words;
    double factor = 1;
    bool bold = false;
    double indent = 0;   ///< in heights of the type
    double before = 0.15;  ///< air over it, likewise
  };
  void addTitle(const PackedWallet& packed);
  void addSlots(const PackedWallet& packed, DisplayUnits units);
  void addUses(const PackedWallet& packed, DisplayUnits units);
  void addNothing(const PackedWallet& packed, DisplayUnits units);
  [[nodiscard]] double height(const Line& line, double points) const;
  /// The lines of each side in type of that size.
  [[nodiscard]] std::vector<std::vector<Line>> sidesAt(double points) const;
  void paintSide(QPainter& p, const std::vector<Line>& side, const QRectF& frame) const;

  std::vector<Line> m_lines;
  std::vector<std::vector<Line>> m_sides;
  double m_points = 0;
};

/// What the wallet's window asks of a printer: a preview over `parent`, a file.
WalletPaper walletPaper(QWidget* parent);

}  // namespace grainwise::ui
