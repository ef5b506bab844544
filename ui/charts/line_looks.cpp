// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/line_looks.h"

#include <algorithm>

namespace grainwise::ui {

LineLooks::LineLooks(const Rig& rig, const MassProfile& profile)
    : m_profile(profile), m_shapes(silhouettesOf(rig, profile)) {
  for (const Silhouette& shape : m_shapes) {
    if (!shape.isFly) m_heaviest = std::max(m_heaviest, shape.heaviest());
  }
}

LineLooks::At LineLooks::fromFly(Feet distance) const {
  const double at_ft = (m_profile.end - distance).feet();
  for (std::size_t i = 0; i < m_shapes.size(); ++i) {
    const PartPlace& place = m_profile.places[i];
    const double length_ft = (place.to - place.from).value();
    if (m_shapes[i].isFly || length_ft <= 0 || at_ft < place.from.feet() || at_ft > place.to.feet()) {
      continue;
    }
    const double share = std::clamp((at_ft - place.from.feet()) / length_ft, 0.0, 1.0);
    At look{m_shapes[i].massAt(share) / m_heaviest, Kind::floating};
    for (const Silhouette::Piece& piece : m_shapes[i].pieces) {
      if (share < piece.from || share > piece.to) continue;
      look.kind = piece.nylon ? Kind::nylon : piece.sinks ? Kind::sinking : Kind::floating;
    }
    return look;
  }
  return {};
}

}  // namespace grainwise::ui
