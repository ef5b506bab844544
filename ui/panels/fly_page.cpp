// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/fly_page.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>
#include <cmath>

#include "core/bench/own_shelf.h"
#include "core/bench/strength.h"
#include "core/model/edits.h"
#include "core/units/si.h"
#include "ui/document/own_store.h"
#include "ui/document/rig_document.h"
#include "ui/panels/part_drawing.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"

namespace grainwise::ui {
namespace {

constexpr Limit kCount{"number", "", 0, 100};
constexpr Limit kMillimetres{"measure", "mm", 0, 100};
constexpr Limit kEyes{"mass of the eyes", "gr", 0, 200};
constexpr Limit kDressing{"mass of the dressing", "gr", 0, 100};
constexpr Limit kSoak{"water it holds", "times", 0, 50};
constexpr std::array<Metal, 6> kMetals{Metal::sinteredTungsten, Metal::tungsten, Metal::lead,
                                       Metal::brass,            Metal::tin,      Metal::steel};

constexpr int kNameWidth = 130;
constexpr int kBulkWidth = 104;

Inches fromMillimetres(double mm) { return si::toInches(mm * 1e-3); }

Metal metalOf(const QComboBox* box) {
  return kMetals[std::size_t(std::clamp(box->currentIndex(), 0, int(kMetals.size()) - 1))];
}

}  // namespace

FlyPage::FlyPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeFly", parent), m_document(document), m_store(store) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(16);
  auto* left = new QVBoxLayout;
  m_grid = new QGridLayout;
  m_grid->setHorizontalSpacing(10);
  m_grid->setVerticalSpacing(1);  // as a number field stands under its name
  left->addLayout(m_grid);
  const auto words = [this](const QString& text, const QString& spoken, const char* name) {
    auto* edit = new QLineEdit(text, this);
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(spoken);
    edit->setMinimumHeight(32);
    edit->setProperty("designSize", 15);
    connect(edit, &QLineEdit::textEdited, this, &FlyPage::refresh);
    return edit;
  };
  const QStringList metals{tr("tungsten bead"), tr("solid tungsten"), tr("lead"),
                           tr("brass"),         tr("tin"),            tr("steel")};
  const auto labelled = [this](QWidget* widget, const QString& name, int r, int c) {
    m_grid->addWidget(addLabel(name, Size::name), r, c);
    m_grid->addWidget(widget, r + 1, c, Qt::AlignTop);
  };
  m_name = words(tr("New fly"), tr("Name of the fly"), "flyName");
  m_hook = words(QStringLiteral("2"), tr("Hook size"), "flyHook");
  m_beadMetal = addChoice(metals, tr("Metal of the beads"), "flyBeadMetal");
  m_eyesMetal = addChoice(metals, tr("Metal of the eyes"), "flyEyesMetal");
  m_wireMetal = addChoice(metals, tr("Metal of the wire"), "flyWireMetal");
  m_eyesMetal->setCurrentIndex(2);
  m_wireMetal->setCurrentIndex(2);
  m_bulk = addChoice({tr("sparse"), tr("medium"), tr("bulky")}, tr("How bulky it is wet"), "flyBulk");
  m_bulk->setCurrentIndex(1);
  m_name->setMinimumWidth(look->px(kNameWidth));
  m_bulk->setMinimumWidth(look->px(kBulkWidth));
  labelled(m_name, tr("Name"), 0, 0);
  labelled(m_hook, tr("Hook size"), 0, 1);
  m_beads = addNumber(tr("Beads"), "flyBeads", 0, 0, 2);
  m_bead = addNumber(tr("Bead, mm"), "flyBead", 4.6, 0, 3);
  m_hole = addNumber(tr("Its hole, mm"), "flyHole", 1.2, 0, 4);
  labelled(m_beadMetal, tr("of"), 0, 5);
  m_eyes = addNumber(tr("Eyes, gr"), "flyEyes", 0, 2, 0);
  labelled(m_eyesMetal, tr("of"), 2, 1);
  m_turns = addNumber(tr("Turns of wire"), "flyTurns", 0, 2, 2);
  m_wire = addNumber(tr("Wire, mm"), "flyWire", 0.6, 2, 3);
  labelled(m_wireMetal, tr("of"), 2, 4);
  m_dressing = addNumber(tr("Dressing, gr"), "flyDressing", 2.0, 4, 0);
  m_soak = addNumber(tr("Water, times dressing"), "flySoak", 3.0, 4, 1);
  labelled(m_bulk, tr("Wet it is"), 4, 2);
  m_place = addButton(tr("Put it on the line"), "flyPlace");
  m_keep = addButton(tr("Keep it among my parts"), "flyKeep");
  m_grid->addWidget(m_place, 5, 3, 1, 2, Qt::AlignTop);
  m_grid->addWidget(m_keep, 5, 5, Qt::AlignTop);
  m_words = addLabel({}, Size::reading);
  m_words->setObjectName(QStringLiteral("flyWords"));
  m_caution = addLabel({});
  left->addWidget(m_words);
  left->addWidget(m_caution);
  left->addStretch(1);
  row->addLayout(left, 3);
  m_drawing = new FlyDrawing(look, this);
  m_drawing->setObjectName(QStringLiteral("flyDrawing"));
  m_drawing->setMinimumHeight(look->px(110));
  row->addWidget(m_drawing, 2);
  for (QComboBox* box : {m_beadMetal, m_eyesMetal, m_wireMetal, m_bulk}) {
    connect(box, &QComboBox::currentIndexChanged, this, &FlyPage::refresh);
  }
  connect(m_place, &QPushButton::clicked, this, &FlyPage::place);
  connect(m_drawing, &PartDrawing::placed, this, &FlyPage::place);
  connect(m_keep, &QPushButton::clicked, this, &FlyPage::keep);
  restyle();
}

NumberField* FlyPage::addNumber(const QString& name, const char* object, double start, int row,
                                int column) {
  const QByteArray which(object);
  const Limit limit = which == "flyBeads" || which == "flyTurns" ? kCount
                      : which == "flyEyes"                       ? kEyes
                      : which == "flyDressing"                   ? kDressing
                      : which == "flySoak"                       ? kSoak
                                                                 : kMillimetres;
  auto* field = new NumberField(look(), name, Measure::plain, limit, this);
  field->edit()->setObjectName(QLatin1String(object));
  field->setValue(start);
  m_values.append({field, start});
  m_grid->addWidget(field, row, column, 2, 1);
  connect(field, &NumberField::typed, this, [this, field](const Typed& t) {
    for (auto& [known, number] : m_values) {
      if (known == field) number = t.value;
    }
    refresh();
  });
  return field;
}

double FlyPage::value(const NumberField* field) const {
  for (const auto& [known, number] : m_values) {
    if (known == field) return number;
  }
  return 0;
}

FlyRecipe FlyPage::recipe() const {
  FlyRecipe recipe;
  if (!m_name->text().isEmpty()) recipe.name = m_name->text().toStdString();
  if (!m_hook->text().trimmed().isEmpty()) recipe.hook = m_hook->text().trimmed().toStdString();
  Bead bead;
  bead.count = int(std::lround(value(m_beads)));
  bead.diameter = fromMillimetres(value(m_bead));
  bead.hole = fromMillimetres(value(m_hole));
  bead.metal = metalOf(m_beadMetal);
  if (bead.count > 0) recipe.beads.push_back(bead);
  if (value(m_eyes) > 0) {
    recipe.weights.push_back({Grains(value(m_eyes)), metalOf(m_eyesMetal), true});
  }
  WireWraps wraps;
  wraps.turns = int(std::lround(value(m_turns)));
  wraps.wire = fromMillimetres(value(m_wire));
  wraps.over = fromMillimetres(1.0);
  wraps.metal = metalOf(m_wireMetal);
  if (wraps.turns > 0) recipe.wraps.push_back(wraps);
  recipe.dressing = {Grains(value(m_dressing)), value(m_soak)};
  recipe.bulk = static_cast<Bulk>(std::clamp(m_bulk->currentIndex(), 0, 2));
  return recipe;
}

void FlyPage::refresh() {
  const FlyRecipe made = recipe();
  const auto figures = flyFigures(made);
  m_fly = figures ? std::optional(flyPart(made, *figures)) : std::nullopt;
  m_place->setEnabled(m_fly.has_value());
  m_keep->setEnabled(m_fly.has_value());
  draw(made);
  if (!figures) {
    m_words->setText(problemText(figures.error()));
    m_drawing->setPart({}, tr("No fly"));
    return;
  }
  const FlyRange range = flyRange(made, *figures);
  const auto between = [this](Grains mass, Grains low, Grains high) {
    return tr("%1 (%2–%3)", "a mass, its range")
        .arg(massText(mass, units()), massNumber(low, units()), massNumber(high, units()));
  };
  const QString sum = tr("%1 dry, %2 wet; %3")
                          .arg(between(figures->dry, range.dryLow, range.dryHigh),
                               between(figures->wet, range.wetLow, range.wetHigh),
                               figures->headFirst ? tr("sinks head first") : tr("sinks level"));
  m_words->setText(sum);
  m_drawing->setPart(m_fly, sum);
  QString caution = tr("Mind the point. An estimate: the scale knows better.");
  if (figures->lead) {
    caution = tr("Lead: gloves, away from food and children; where it is forbidden, tungsten or tin "
                 "instead. ") +
              caution;
  }
  m_caution->setText(caution);
}

void FlyPage::draw(const FlyRecipe& made) {
  FlyDrawing::Shape shape;
  const auto number = made.hook ? hookNumber(*made.hook) : std::nullopt;
  shape.shank_mm = number ? std::clamp(34.0 - 2.6 * *number, 6.0, 45.0) : 20.0;
  shape.wire_mm = std::clamp(shape.shank_mm / 24.0, 0.4, 1.6);
  const std::array<double, 3> widths{5.0, 9.0, 15.0};
  shape.width_mm = widths[std::size_t(std::clamp(m_bulk->currentIndex(), 0, 2))] *
                   std::sqrt(shape.shank_mm / 25.0);
  for (const Bead& bead : made.beads) {
    for (int i = 0; i < std::min(bead.count, 4); ++i) {
      shape.beads_mm.append(si::m(bead.diameter) * 1e3);
    }
  }
  for (const KnownWeight& eyes : made.weights) {
    // two balls of that mass, by their volume
    const double volume_mm3 = si::kg(eyes.mass) / si::kg_per_m3(densityOf(eyes.metal)) * 1e9;
    shape.eyes_mm.append(std::cbrt(volume_mm3 / 2.0 * 1.9099));
  }
  for (const WireWraps& wraps : made.wraps) {
    shape.wraps_mm = std::min(shape.shank_mm, wraps.turns * si::m(wraps.wire) * 1e3);
  }
  m_drawing->setShape(shape);
}

void FlyPage::place() {
  if (!m_fly) return;
  m_document->apply(tr("Tie on a new fly"), edits::placed(m_document->rig(), *m_fly));
  Q_EMIT tied();
}

void FlyPage::keep() {
  if (!m_fly) return;
  Part part = *m_fly;
  part.group = tr("My flies").toStdString();
  m_store->setOwn(ownShelf::with(m_store->own(), part, m_store->generic()));
  m_words->setText(tr("Kept among my parts."));
}

void FlyPage::restyle() {
  MakePage::restyle();
  refresh();
}

}  // namespace grainwise::ui
