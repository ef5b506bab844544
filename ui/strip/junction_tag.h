// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QWidget>
#include <array>
#include <optional>

#include "core/mass/junctions.h"
#include "ui/theme/kept_picture.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// The badge on a joint: a glyph, and as much of "17.8 to 11: smooth drop" as there is room for. Pressed
/// by pointer or keyboard it asks for the why.
class JunctionTag : public QWidget {
  Q_OBJECT
 public:
  enum class Room { whole, figures, glyph };
  JunctionTag(Look* look, QWidget* parent);

  void setJunction(const Junction& junction, const QString& spoken);
  [[nodiscard]] const Junction& junction() const { return m_junction; }
  void setRoom(Room room);
  [[nodiscard]] Room room() const { return m_room; }
  [[nodiscard]] double widthFor(Room room) const;
  [[nodiscard]] static int heightFor(const Look& look);

 Q_SIGNALS:
  void clicked();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  /// What the words are made of: most joints stay as they are at an edit.
  struct Said {
    GrainsPerFoot rodSideMean, flySideMean;
    JunctionVerdict verdict;
    DisplayUnits units;
    QLocale locale;
    bool operator==(const Said&) const = default;
  };
  /// What a picture of the badge is made of.
  struct Drawn {
    QString words;
    Grade grade;
    QSize size;
    QFont font;
    QColor card, slate, river, ink;
    double scale;
    bool focus;
    bool operator==(const Drawn&) const = default;
  };
  [[nodiscard]] Drawn toDraw() const;
  void draw(QPainter& p) const;
  [[nodiscard]] const QString& words(Room room) const { return m_words[std::size_t(room)]; }

  Look* m_look;
  Junction m_junction;
  std::optional<Said> m_said;
  KeptPicture<Drawn> m_picture;
  std::array<QString, 3> m_words;  ///< by room; a glyph alone has none
  Room m_room = Room::whole;
};

}  // namespace grainwise::ui
