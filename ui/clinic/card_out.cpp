// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_out.h"

#include "ui/charts/diagram_access.h"
#include "ui/charts/rig_tables.h"
#include "ui/charts/way_out.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr QSizeF kScreen(1280, 720);
constexpr int kMassPlaces = 1;

/// The card's own words, then what lies on it: the parts of its rigs, flies, pools and tips.
OutTable tableOf(const ShownCard& shown, bool answered, DisplayUnits units) {
  OutTable table;
  table.header = {CardView::tr("On the card"), CardView::tr("What it is"),
                  CardView::tr("Weighs (%1)").arg(massUnit(units)),
                  CardView::tr("How deep the fly is")};
  const auto words = [&](const QString& what, const QString& text) {
    if (!text.isEmpty()) table.rows.push_back({what, text, OutCell::none(), OutCell::none()});
  };
  const auto of = [](const std::optional<std::string>& text) {
    return QString::fromStdString(text.value_or(""));
  };
  words(CardView::tr("Title"), QString::fromStdString(shown.card.title));
  words(CardView::tr("Line"), of(shown.card.say));
  words(CardView::tr("Question"), of(shown.card.ask));
  if (answered) words(CardView::tr("Answer"), of(shown.card.reveal));
  const auto mass = [&](Grains value) {
    return answered ? figureCell(value.value(), Measure::mass, kMassPlaces, units)
                    : OutCell::none();
  };
  for (const PictureRig& rig : shown.rigs) {
    for (std::size_t i = 0; i < rig.rig->parts.size(); ++i) {
      const Part& part = rig.rig->parts[i];
      table.rows.push_back({kindWords(part.kind), partWords(part, units),
                            mass(rig.analysis->profile.places[i].mass()), OutCell::none()});
    }
  }
  for (const Part& fly : shown.flies) {
    table.rows.push_back(
        {kindWords(fly.kind), partWords(fly, units), mass(fly.fly->wetMass()), OutCell::none()});
  }
  for (const DepthRow& row : shown.pools) {
    table.rows.push_back({CardView::tr("Pool"), QString::fromStdString(row.pool.name),
                          OutCell::none(),
                          answered ? OutCell(depthIn(row, units)) : OutCell::none()});
  }
  for (std::size_t t = 0; shown.tips && t < shown.tips->tips.size(); ++t) {
    QStringList depths;
    for (std::size_t pool = 0; pool < shown.tips->pools.size(); ++pool) {
      depths << CardView::tr("%1: %2", "pool, how deep")
                    .arg(QString::fromStdString(shown.tips->pools[pool].name),
                         depthIn(shown.tips->at(t, pool), units));
    }
    table.rows.push_back({kindWords(PartKind::tip), partWords(shown.tips->tips[t], units),
                          OutCell::none(),
                          answered ? OutCell(depths.join(QStringLiteral("; "))) : OutCell::none()});
  }
  return table;
}

}  // namespace

void addWayOut(Look* look, CardView* view) {
  makeDiagram(look, view);
  (new WayOut(look, view))
      ->add(
          CardView::tr("Card"),
          [=] {
            return view->card() ? tableOf(*view->card(), view->state().answered, look->units())
                                : OutTable();
          },
          [=] {
            return OutPicture{
                CardView::tr("Card"), kScreen,
                [card = view->card(), state = view->state(), units = look->units()](QPainter& p) {
                  Colours colours = coloursOf(Scheme::light);
                  colours.paper = colours.band = Qt::white;
                  if (card) paintCardPage(p, kScreen, *card, state, colours, units);
                }};
          });
}

}  // namespace grainwise::ui
