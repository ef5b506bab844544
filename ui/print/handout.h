// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/model/pool.h"
#include "core/model/shelf.h"
#include "ui/print/page.h"

namespace grainwise::ui {

/// The sheet that a student takes home, two sides: the rig to scale with what each part weighs, a line a
/// reading; then depths in the day's pools at three speeds, what to try in order, room for what was
/// changed and what happened, the wallet, safety. Black and white loses no meaning.
class Handout : public Pages {
 public:
  /// Without pools the rig's own water is the one row of depths. The wallet is packed from `shelf` for the
  /// pools; without one it holds the tips that are fitted.
  Handout(const Rig& rig, std::vector<Pool> pools, DisplayUnits units, const Conditions& conditions = {},
          const Shelf& shelf = {});

  [[nodiscard]] QString title() const override;
  [[nodiscard]] int count() const override { return 2; }
  void paint(QPainter& p, int page, QSizeF sheet) const override;

 private:
  void paintRig(PageWriter& w) const;
  void paintReadings(PageWriter& w) const;
  void paintDepths(PageWriter& w) const;
  [[nodiscard]] QStringList measuredLines() const;
  void paintWallet(PageWriter& w) const;
  void paintSafety(PageWriter& w) const;

  void plan(const Shelf& shelf);

  struct Packed {
    Part tip;
    QStringList pools;
  };

  PictureRig m_rig;
  std::vector<Packed> m_wallet;
  std::vector<Pool> m_pools;
  DisplayUnits m_units;
  Conditions m_conditions;
};

}  // namespace grainwise::ui
