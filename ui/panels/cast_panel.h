// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "core/model/rig.h"
#include "ui/charts/cast_view.h"
#include "ui/theme/look.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace grainwise::ui {

class AnalysisFeed;
class CastFeed;
class PlayerBar;
class RigDocument;
class SliderRow;

/// The Cast drawer: the unrolling loop of the rig, played, with the sliders of the cast beside it.
class CastPanel : public QWidget {
  Q_OBJECT
 public:
  CastPanel(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent = nullptr);
  [[nodiscard]] CastView* view() const { return m_view; }
  [[nodiscard]] CastFeed* casts() const { return m_casts; }

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void layOut();
  void addSliders(QVBoxLayout* column);
  template <class Q>
  void bind(SliderRow* row, const char* key, std::optional<Q> Cast::*member, const QString& step);
  void refresh();
  void take(const std::shared_ptr<const CastPicture>& picture, const QString& reason);
  void playOnce();
  void playWhenLetGo();
  [[nodiscard]] bool held() const;
  void reset();
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  AnalysisFeed* m_feed;
  CastFeed* m_casts;
  CastView* m_view;
  PlayerBar* m_player;
  QLabel* m_result;
  QLabel* m_caution;
  QCheckBox* m_learner;
  SliderRow* m_speed;
  SliderRow* m_loop;
  SliderRow* m_launch;
  SliderRow* m_rodTip;
  SliderRow* m_altitude;
  QPushButton* m_reset;
  bool m_playLater = false;  ///< something new came while a slider was held
  std::shared_ptr<const CastPicture> m_picture;
};

}  // namespace grainwise::ui
