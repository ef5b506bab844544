// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

#include "ui/theme/look.h"

namespace grainwise::ui {

/// A flat button of the workbench: plain words, a filled pill while checked, a dotted underline for
/// a sentence that opens something, a visible ring while focused. At least 44 px to hit.
class PillButton : public QAbstractButton {
  Q_OBJECT
 public:
  enum class Form { pill, sentence, plain };
  PillButton(Look* look, Form form, const QString& text, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Its words may be shortened where there is no room for all of them.
  void setGivesWay(bool gives);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintText(QPainter& p, const QRectF& inside, const QColor& colour) const;

  Look* m_look;
  Form m_form;
  bool m_givesWay = false;
};

}  // namespace grainwise::ui
