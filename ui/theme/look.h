// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QHash>
#include <QObject>
#include <QPalette>
#include <utility>

namespace grainwise::ui {

enum class Scheme { light, dark, sunlight, projector };

/// The colours of one scheme, named by what they are for. Verdict colours only second a word and a
/// glyph; classes of tip have no colours.
struct Colours {
  QColor paper;       ///< window ground
  QColor band;        ///< top bar and drawer ground
  QColor card;        ///< tiles, tags, fields
  QColor edge;        ///< hairlines, card outlines
  QColor ink;         ///< words and numbers
  QColor slate;       ///< second words, axes
  QColor river;       ///< lines of setup A, floating outline, focus
  QColor riverFill;   ///< light fill of floating line
  QColor sinkFill;    ///< fill of sinking line
  QColor sinkHatch;   ///< hatch on it
  QColor onSink;      ///< words on sinking line
  QColor alder;       ///< fits
  QColor ochreLine;   ///< watch, lines of setup B
  QColor ochreWord;   ///< watch, words
  QColor brick;       ///< wrong, the pinned cursor
  QColor pill;        ///< selected face or drawer tab
  QColor onPill;
  QColor flyBody;
};
Colours coloursOf(Scheme scheme);

/// Which units the person reads and types in; files always hold trade units.
struct DisplayUnits {
  bool metres = false;   ///< else feet (and inches for diameters; metres bring mm)
  bool grams = false;    ///< else grains
  bool celsius = false;  ///< else Fahrenheit
  bool operator==(const DisplayUnits&) const = default;
};

/// How everything is shown: scheme, type size, units, motion. One object for the whole window, given
/// to each widget's constructor; `changed` tells all of them to lay out and paint anew. View state:
/// it never goes on the undo stack.
class Look : public QObject {
  Q_OBJECT
 public:
  explicit Look(QObject* parent = nullptr);

  [[nodiscard]] Scheme scheme() const { return m_scheme; }
  [[nodiscard]] const Colours& colours() const { return m_colours; }
  [[nodiscard]] DisplayUnits units() const { return m_units; }
  /// 1.0 to 2.0.
  [[nodiscard]] double typeScale() const { return m_typeScale; }
  [[nodiscard]] bool reduceMotion() const { return m_reduceMotion; }

  /// A scheme of the person's own choice; the system's is followed no longer.
  void setScheme(Scheme scheme);
  /// Light or dark as the desktop is, from here on (ui/theme/system_scheme.h tells which).
  void followSystem();
  [[nodiscard]] bool followsSystem() const { return m_followsSystem; }
  /// What the desktop is; shown only while it is followed.
  void setSystemDark(bool dark);
  void setUnits(DisplayUnits units);
  void setTypeScale(double scale);
  void setReduceMotion(bool reduce);

  /// Pixels at the present type scale: 14 floor, 16 labels, 20 readings, 36 numbers.
  [[nodiscard]] QFont font(int pixels, bool bold = false) const;
  [[nodiscard]] int px(double pixels) const;
  [[nodiscard]] QPalette palette() const;

 Q_SIGNALS:
  void changed();

 private:
  void wear(Scheme scheme, bool followsSystem);

  bool m_followsSystem = false;
  bool m_systemDark = false;
  Scheme m_scheme = Scheme::light;
  Colours m_colours = coloursOf(Scheme::light);
  DisplayUnits m_units;
  double m_typeScale = 1.0;
  bool m_reduceMotion = false;
  /// Copies of one font share what is looked up for it; each made anew is looked up again.
  mutable QHash<std::pair<int, bool>, QFont> m_fonts;
};

}  // namespace grainwise::ui
