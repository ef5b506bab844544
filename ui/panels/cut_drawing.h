// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QWidget>

#include "core/bench/cut_sheet.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// A cut sheet with every word ready, for the screen and for paper.
struct CutPicture {
  struct Cut {
    double from = 0;  ///< feet from the end that is measured from
    double to = 0;
    QString mark;     ///< "10 ft 5 in"
    QString name;
    bool sinks = false;
  };
  struct Spool {
    QString title;
    double length = 0;
    QList<Cut> cuts;
    QString left;
    [[nodiscard]] double used() const { return cuts.isEmpty() ? 0.0 : cuts.constLast().to; }
  };
  struct Label {
    QString name;
    QString figures;
    QString rings;  ///< in words
    RingCode code;
    bool hasRings = false;
  };
  QList<Spool> spools;
  QList<Label> labels;
  QStringList notes;  ///< what lacks, what is bought whole, how good the plan is
};
CutPicture pictureOf(const CutSheet& sheet, const Spools& spools, DisplayUnits units);

/// How high a spool is drawn with a font of that height.
double spoolHeight(double lineHeight);
/// A spool laid out from left to right, its cuts and marks, what is left with a break where it is long.
void paintSpool(QPainter& p, const QRectF& place, const CutPicture::Spool& spool,
                const Colours& colours);
/// The rings of a label, as they are drawn on the tip: long ones, short ones, a gap, quarters.
void paintRings(QPainter& p, const QRectF& place, const RingCode& code, const QColor& ink);

/// The sheet on screen: each spool with its marks, then a row a label.
class CutDrawing : public QWidget {
  Q_OBJECT
 public:
  CutDrawing(Look* look, QWidget* parent);
  void setPicture(const CutPicture& picture);
  [[nodiscard]] const CutPicture& picture() const { return m_picture; }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double heightNeeded() const;

  Look* m_look;
  CutPicture m_picture;
};

}  // namespace grainwise::ui
