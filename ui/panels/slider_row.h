// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "ui/theme/look.h"

class QLabel;
class QSlider;

namespace grainwise::ui {

/// A named slider with its value in words at the right end. Values are in the file's unit.
class SliderRow : public QWidget {
  Q_OBJECT
 public:
  using Words = std::function<QString(double value, DisplayUnits units)>;
  SliderRow(Look* look, const QString& name, double low, double high, double step, Words words,
            QWidget* parent = nullptr);

  /// Shows a value without saying that it was moved; outside the slider's range it stands at the end
  /// and the words still say what it is.
  void setValue(double value);
  [[nodiscard]] QSlider* slider() const { return m_slider; }
  /// A number of the drag, the held key or the turns of the wheel that go on: what moves under one number
  /// is one step to undo.
  [[nodiscard]] int gesture() const { return m_gesture; }
  /// The mouse holds it.
  [[nodiscard]] bool held() const;

 Q_SIGNALS:
  void moved(double value);
  void gestureEnded();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void endGesture();
  void showWords();
  void applyLook();
  void alignNames();

  Look* m_look;
  double m_low;
  double m_step;
  double m_value;
  int m_gesture = 0;
  Words m_words;
  QLabel* m_name;
  QSlider* m_slider;
  QLabel* m_valueLabel;
};

/// A label of whole sentences beside the sliders: so wide, and as high as its lines need.
void giveRoom(QLabel* words, int width);

}  // namespace grainwise::ui
