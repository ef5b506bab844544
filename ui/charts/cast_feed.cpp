// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/cast_feed.h"

#include <algorithm>

#include "core/air/cast.h"
#include "core/units/si.h"
#include "ui/charts/line_looks.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

struct Outcome {
  std::shared_ptr<const CastPicture> picture;
  std::optional<NoTurnover> none;
};

CastFrame shown(const grainwise::CastFrame& frame) {
  CastFrame out;
  out.time_s = frame.time.value();
  for (const CastPoint& point : frame.points) {
    out.line_m.emplace_back(point.forward.value() * si::kMetresPerFoot,
                            point.height.value() * si::kMetresPerFoot);
  }
  const CastEnergy& e = frame.energy;
  out.moving_J = e.moving_J + std::max(0.0, e.bent_J);
  out.toAir_J = e.toLineDrag_J + e.toBending_J;
  out.toFly_J = e.toFlyDrag_J;
  return out;
}

std::shared_ptr<const CastPicture> pictureOf(const Rig& rig, const MassProfile& profile,
                                             const CastModel& model, const CastResult& result) {
  auto picture = std::make_shared<CastPicture>();
  for (const grainwise::CastFrame& frame : result.frames) picture->frames.push_back(shown(frame));
  const LineLooks looks(rig, profile);
  const std::size_t links = model.links();
  for (std::size_t i = 0; i < links; ++i) {
    const double fromFly_m = (double(links - i) - 0.5) * model.link_m;
    picture->links.push_back(looks.fromFly(Feet(fromFly_m / si::kMetresPerFoot)));
  }
  picture->rodTip_m = model.rodTip_m;
  if (rig.rod && rig.rod->length) picture->rodLength_m = rig.rod->length->value() * si::kMetresPerFoot;
  picture->turnsOver = result.stop == CastStop::turnedOver;
  picture->endHeight = result.endHeight;
  return picture;
}

HeavyRunner::Result unrolled(const Rig& rig, const TurnoverConditions& conditions,
                             const std::stop_token& stop, const HeavyRunner::Progress& progress) {
  const MassProfile profile = massProfile(rig);
  auto outcome = std::make_shared<Outcome>();
  const auto model = castModel(rig, profile, conditions);
  if (!model) {
    outcome->none = model.error();
    return outcome;
  }
  const CastResult result = unroll(*model, {}, stop, progress);
  if (result.stop == CastStop::cancelled) return {};
  if (result.stop != CastStop::notFinite) outcome->picture = pictureOf(rig, profile, *model, result);
  return outcome;
}

}  // namespace

CastFeed::CastFeed(AnalysisFeed* feed, QObject* parent) : QObject(parent), m_feed(feed) {
  connect(feed, &AnalysisFeed::analysisChanged, this, &CastFeed::refresh);
  connect(&m_runner, &HeavyRunner::finished, this, [this](const std::shared_ptr<const void>& result) {
    const auto outcome = std::static_pointer_cast<const Outcome>(result);
    if (outcome->none) {
      Q_EMIT arrived(nullptr, noTurnoverWords(*outcome->none));
    } else if (outcome->picture) {
      Q_EMIT arrived(outcome->picture, {});
    } else {
      Q_EMIT arrived(nullptr, tr("The figures of this rig are too far out to follow its loop"));
    }
  });
}

void CastFeed::setActive(bool active) {
  if (active == m_active) return;
  m_active = active;
  if (active) {
    refresh();
  } else {
    m_runner.cancel();
  }
}

void CastFeed::refresh() {
  if (!m_active) return;
  ++m_runs;
  Q_EMIT started();
  m_runner.start([rig = m_feed->rig(), conditions = m_feed->conditions().turnover()](
                     const std::stop_token& stop, const HeavyRunner::Progress& progress) {
    return unrolled(*rig, conditions, stop, progress);
  });
}

}  // namespace grainwise::ui
