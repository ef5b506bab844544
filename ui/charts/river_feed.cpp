// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/river_feed.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/heavy_runs.h"
#include "core/units/si.h"
#include "core/water/band.h"
#include "core/water/swing.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kQuiet_ms = 600;
constexpr int kLooking_ms = 15;
constexpr int kArrows = 6;

struct SwingOutcome {
  std::shared_ptr<const RiverPicture> picture;
};
struct BandOutcome {
  std::optional<DepthBand> band;
};

double apart(const SwingPoint& a, const SwingPoint& b) {
  return std::hypot((a.downstream - b.downstream).value(), (a.across - b.across).value(),
                    (a.depth - b.depth).value());
}

RiverFrame shown(const SwingFrame& frame, const LineLooks& looks) {
  RiverFrame out;
  out.time_s = frame.time.value();
  double fromFly_ft = 0;
  for (std::size_t i = frame.line.size(); i-- > 0;) {
    const SwingPoint& point = frame.line[i];
    if (i + 1 < frame.line.size()) fromFly_ft += apart(point, frame.line[i + 1]);
    out.line.push_back({point.downstream.value(), point.across.value(), point.depth.value(),
                        looks.fromFly(Feet(fromFly_ft))});
  }
  return out;  // from the fly to the rod tip
}

std::shared_ptr<const RiverPicture> pictureOf(const Rig& rig, const MassProfile& profile,
                                              const RigInWater& water, const SwingResult& swing) {
  auto picture = std::make_shared<RiverPicture>();
  const LineLooks looks(rig, profile);
  for (const SwingFrame& frame : swing.track) picture->frames.push_back(shown(frame, looks));
  picture->bed_ft = rig.water->depth->value();
  for (int i = 0; i < kArrows; ++i) {
    const double depth_ft = picture->bed_ft * (0.04 + 0.92 * i / (kArrows - 1.0));
    const double speed = water.river.current_m_per_s(-depth_ft * si::kMetresPerFoot);
    picture->current.push_back({depth_ft, speed / water.river.surface_m_per_s});
  }
  picture->afterMend_s = water.setup.mend.value();
  picture->front_ft = grip(rig, profile).anchor.value();
  picture->swing = swing;
  picture->swing.track.clear();
  return picture;
}

HeavyRunner::Result swung(const Rig& rig, const Conditions& conditions, const std::stop_token& stop,
                          const HeavyRunner::Progress& progress) {
  const MassProfile profile = massProfile(rig);
  auto outcome = std::make_shared<SwingOutcome>();
  const auto water = rigInWater(rig, profile, conditions.current);
  if (!water) return outcome;
  const SwingResult result = swing(water->line, water->river, water->setup, {}, stop, progress);
  if (result.end == SwingEnd::stopped) return {};
  if (result.ran()) outcome->picture = pictureOf(rig, profile, *water, result);
  return outcome;
}

HeavyRunner::Result banded(const Rig& rig, const Conditions& conditions, const std::stop_token& stop,
                           const HeavyRunner::Progress& progress) {
  const SwingBand band =
      swingBand(rig, conditions.current, conditions.waterUncertainty, stop, progress);
  if (band.end == SwingEnd::stopped) return {};
  auto outcome = std::make_shared<BandOutcome>();
  outcome->band = band.band;
  return outcome;
}

}  // namespace

RiverFeed::RiverFeed(AnalysisFeed* feed, QObject* parent) : QObject(parent), m_feed(feed) {
  m_wait.setSingleShot(true);
  connect(&m_wait, &QTimer::timeout, this, &RiverFeed::runSwing);
  connect(feed, &AnalysisFeed::analysisChanged, this, &RiverFeed::changed);
  connect(&m_runner, &HeavyRunner::finished, this, &RiverFeed::finish);
  connect(&m_runner, &HeavyRunner::progress, this, [this](double share) {
    if (m_bandRuns) Q_EMIT bandProgress(std::min(share, 0.99));
  });
  changed();
}

void RiverFeed::setActive(bool active) {
  if (active == m_active) return;
  m_active = active;
  if (active) changed();
}

void RiverFeed::changed() {
  m_runner.cancel();
  m_bandRuns = false;
  Q_EMIT started();
  m_wait.start(m_active ? kLooking_ms : kQuiet_ms);
}

void RiverFeed::runSwing() {
  m_bandRuns = false;
  m_runner.start([rig = m_feed->rig(), conditions = m_feed->conditions()](
                     const std::stop_token& stop, const HeavyRunner::Progress& progress) {
    return swung(*rig, conditions, stop, progress);
  });
}

void RiverFeed::runBand() {
  m_bandRuns = true;
  m_runner.start([rig = m_feed->rig(), conditions = m_feed->conditions()](
                     const std::stop_token& stop, const HeavyRunner::Progress& progress) {
    return banded(*rig, conditions, stop, progress);
  });
}

void RiverFeed::finish(const std::shared_ptr<const void>& result) {
  if (m_bandRuns) {
    const auto band = std::static_pointer_cast<const BandOutcome>(result);
    if (band->band) m_feed->refineDepth(*band->band);
    Q_EMIT bandProgress(1);
    return;
  }
  const auto outcome = std::static_pointer_cast<const SwingOutcome>(result);
  if (!outcome->picture) {
    const TileWords tile =
        tileWords(Reading::depth, *m_feed->rig(), m_feed->analysis(), DisplayUnits{});
    Q_EMIT arrived(nullptr, tile.verdict);
    return;
  }
  Q_EMIT arrived(outcome->picture, {});
  runBand();
}

}  // namespace grainwise::ui
