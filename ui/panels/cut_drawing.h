// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QList>
#include <QString>
#include <QWidget>

#include "core/bench/cut_sheet.h"
#include "ui/charts/picture.h"
#include "ui/strip/silhouette.h"
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
    QString figures;    ///< "10 ft, 11 gr/ft, 116 gr"
    QString sinks;      ///< "7 ft 6 in of it sinks"; empty for nylon
    QString made;       ///< the day it was cut
    Silhouette symbol;  ///< as it stands on a line
    QString rings;  ///< in words
    RingCode code;
    bool hasRings = false;
  };
  QList<Spool> spools;
  QList<Label> labels;
  QStringList notes;  ///< what lacks, what is bought whole, how good the plan is
};
CutPicture pictureOf(const CutSheet& sheet, const Spools& spools, DisplayUnits units,
                     const QDate& day = QDate::currentDate());

/// How high a spool is drawn with a font of that height.
double spoolHeight(double lineHeight);
/// A spool laid out from left to right, its cuts and marks, what is left with a break where it is long.
/// `unit` is a hairline in the painter's own measure.
void paintSpool(QPainter& p, const QRectF& place, const CutPicture::Spool& spool,
                const Colours& colours, double unit = 1);
/// The rings of a label, as they are drawn on the tip: long ones, short ones, a gap, quarters.
void paintRings(QPainter& p, const QRectF& place, const RingCode& code, const QColor& ink);

/// A label to cut out: name, strip symbol, rings, figures, what sinks, the day; nothing shortened. Its
/// width is 20 times the type; returns how high it is, and only measures without a painter.
double paintLabel(QPainter* p, const QRectF& box, const CutPicture::Label& label, const PictureStyle& style);
inline constexpr double kLabelWidth = 20;  ///< in heights of its type
/// What stands over the labels: how rings are read.
QString ringsTold();

/// The sheet on screen: each spool with its marks, then the labels as they are printed.
class CutDrawing : public QWidget {
  Q_OBJECT
 public:
  CutDrawing(Look* look, QWidget* parent);
  void setPicture(const CutPicture& picture);
  [[nodiscard]] const CutPicture& picture() const { return m_picture; }
  /// Draws all of it in that width, or only measures without a painter; returns the height.
  double draw(QPainter* p, double wide) const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Look* m_look;
  CutPicture m_picture;
};

}  // namespace grainwise::ui
