// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QPixmap>
#include <optional>

namespace grainwise::ui {

/// The last picture drawn, kept as long as what it is made of stays the same: rounded edges are slow to smooth.
/// `Of` is all that it is made of, with its `size` in px of the screen and the `scale` of the device to one.
template <class Of>
class KeptPicture {
 public:
  template <class Draw>
  const QPixmap& of(const Of& now, Draw&& draw) {
    if (m_of == now) return m_picture;
    m_picture = QPixmap(now.size * now.scale);
    m_picture.setDevicePixelRatio(now.scale);
    m_picture.fill(Qt::transparent);
    QPainter p(&m_picture);
    draw(p);
    m_of = now;
    return m_picture;
  }

 private:
  std::optional<Of> m_of;
  QPixmap m_picture;
};

}  // namespace grainwise::ui
