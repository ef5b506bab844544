// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/rig_tables.h"
#include "ui/charts/way_out.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/compare_feed.h"
#include "ui/compare/difference_list.h"
#include "ui/compare/pair_view.h"
#include "ui/compare/readings_table.h"
#include "ui/strip/strip_view.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

/// What Compare shows of both rigs, on its way out of the window.
namespace grainwise::ui {
namespace {

constexpr int kTimePlaces = 2;
constexpr int kFeetPlaces = 2;

/// Both tables under each other, whose each row is in front.
OutTable ofBoth(const OutTable& a, const OutTable& b) {
  OutTable both;
  both.header = QStringList{CompareFace::tr("Rig")} + a.header;
  const auto add = [&](const QString& letter, const OutTable& table) {
    for (const auto& row : table.rows) {
      both.rows.push_back({letter});
      both.rows.back().insert(both.rows.back().end(), row.begin(), row.end());
    }
  };
  add(CompareFace::tr("A"), a);
  add(CompareFace::tr("B"), b);
  return both;
}

/// The fly of one line through time: feet away from the rod and above the water.
OutTable flyTable(const PairTrack& track, DisplayUnits units) {
  const QString unit = lengthUnit(units);
  OutTable table;
  table.header = {CompareFace::tr("Time (s)"),
                  CompareFace::tr("Fly away from the rod (%1)").arg(unit),
                  CompareFace::tr("Fly above the water (%1)").arg(unit)};
  for (const PairTrack::Frame& frame : track.frames) {
    if (frame.feet.empty()) continue;
    const QPointF fly = frame.feet.back();
    table.rows.push_back({OutCell(frame.time_s, kTimePlaces),
                          figureCell(fly.x(), Measure::length, kFeetPlaces, units),
                          figureCell(fly.y(), Measure::length, kFeetPlaces, units)});
  }
  return table;
}

}  // namespace

void CompareFace::addWaysOut() {
  const auto units = [this] { return m_look->units(); };
  for (Side* side : m_sides) {
    const auto name = [side] {
      return side->letter() == Letter::a ? CompareFace::tr("The line of A")
                                         : CompareFace::tr("The line of B");
    };
    (new WayOut(m_look, side->strip()))
        ->add({name,
               [=] { return partsTable(*side->feed()->rig(), side->feed()->analysis(), units()); },
               [=] {
                 return linePicture(*side->feed()->rig(), side->feed()->conditions(), name(),
                                    units());
               }})
        ->add(tr("Joints"),
              [=] { return jointsTable(*side->feed()->rig(), side->feed()->analysis(), units()); });
  }
  (new WayOut(m_look, m_chart))->addWidget(tr("What each foot weighs, of A and of B"), [=, this] {
    return ofBoth(profileTable(m_feed->a()->analysis(), units()),
                  profileTable(m_feed->b()->analysis(), units()));
  });
  (new WayOut(m_look, m_readings))->addWidget(tr("Readings of A and B"), [this] {
    return m_readings->table();
  });
  (new WayOut(m_look, m_list))->add(tr("Differences"), [this] { return m_list->table(); });
  for (PairPanel* panel : {m_casts, m_swings}) {
    PairView* view = panel->view();
    (new WayOut(m_look, view))->addWidget(view->accessibleName(), [=] {
      return ofBoth(flyTable(view->track(false), units()), flyTable(view->track(true), units()));
    });
  }
}

}  // namespace grainwise::ui
