// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/part_editor.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/material/agreement.h"
#include "core/material/sink_rate.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/strip/section_row.h"
#include "ui/text/measured_words.h"
#include "ui/text/problem_words.h"
#include "ui/text/words.h"
#include "ui/theme/kept_focus.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kFieldWidth = 92;
constexpr int kDateWidth = 136;
constexpr int kSummaryWidth = 140;  ///< at least, before its words go on in another line
const QString kName = QStringLiteral("name");

WaterState waterOf(const Rig& rig) {
  WaterState state;
  if (rig.water && rig.water->temperature) state.temperature = *rig.water->temperature;
  if (rig.water && rig.water->salinity) state.salinity = *rig.water->salinity;
  return state;
}

Kept& partKept(Part& part) { return part.kept; }

/// "20 to 6 gr/ft": what stands at the rod's and the fly's end; once where both read the same.
QString bothEnds(const QString& rod, const QString& fly) {
  if (rod == fly) return rod;
  const QString unit = fly.section(QLatin1Char(' '), 1);
  const bool sameUnit = !unit.isEmpty() && rod.section(QLatin1Char(' '), 1) == unit;
  return PartEditor::tr("%1 to %2", "a figure at both ends of a section, the second with unit")
      .arg(sameUnit ? rod.section(QLatin1Char(' '), 0, 0) : rod, fly);
}

QString asError(const Problems& problems) {
  return whatAndFix(problems.front());
}

}  // namespace

PartEditor::PartEditor(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed) {
  m_scroll = new QScrollArea(this);
  m_scroll->setWidgetResizable(true);
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_scroll->viewport()->setAutoFillBackground(false);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(m_scroll);
  connect(feed, &AnalysisFeed::analysisChanged, this, [this] {
    if (!m_document->previewing()) refresh();
  });
  connect(look, &Look::changed, this, &PartEditor::rebuild);
  rebuild();
}

void PartEditor::setPart(std::optional<std::size_t> index) {
  if (index == m_index) return;
  m_index = index;
  rebuild();
}

const Part& PartEditor::part() const { return m_document->rig().parts[*m_index]; }

/// What the fields depend on: while it stays the same they are only filled anew.
QString PartEditor::structure() const {
  if (!m_index || *m_index >= m_document->rig().parts.size()) return QStringLiteral("none");
  QString text = QStringLiteral("%1/%2/").arg(*m_index).arg(int(part().kind));
  for (const Section& s : part().sections) text += QString::number(int(SectionRow::knownBy(s)));
  return text;
}

/// `act`, heard only while the fields are those of what is there: an undo may come between them and a click or a key
/// that was meant for what is gone, and the fields that follow it are on their way.
template <class Act>
auto PartEditor::ofShown(Act act) {
  return [this, act](auto&&... said) {
    if (structure() == m_built && (m_built == QLatin1String("none") || part() == m_shown)) act(said...);
  };
}

void PartEditor::rebuild() {
  const KeptFocus keyboard(m_inside);
  m_built = structure();
  m_rows.clear();
  m_fill.clear();
  m_inside = new QWidget;
  auto* column = new QVBoxLayout(m_inside);
  column->setContentsMargins(0, 2, 8, 4);
  column->setSpacing(4);
  m_summary = new QLabel(m_inside);
  m_summary->setObjectName(QStringLiteral("partSummary"));
  m_summary->setTextFormat(Qt::PlainText);
  m_summary->setWordWrap(true);
  m_summary->setFont(m_look->font(15));
  if (m_built == QLatin1String("none")) {
    column->addWidget(m_summary);
  } else {
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    column->addLayout(row);
    m_wrong = new ErrorLine(m_look, m_inside);
    m_wrong->setObjectName(QStringLiteral("partWrong"));
    column->addWidget(m_wrong);
    addHead(row);
    if (part().kind == PartKind::fly) {
      addFlyFields(row);
    } else {
      addLineFields(row);
    }
    m_summary->setMinimumWidth(m_look->px(kSummaryWidth));
    row->addWidget(m_summary, 1, Qt::AlignTop);
    if (part().kind != PartKind::fly) {
      addSectionButton(row);
      addSections();
    }
  }
  column->addStretch(1);
  m_scroll->setWidget(m_inside);
  // A scroll area makes its widget fill itself; the drawer's ground shall show.
  m_inside->setAutoFillBackground(false);
  refresh();
  keyboard.giveTo(m_inside);
}

void PartEditor::refresh() {
  if (structure() != m_built) {
    rebuild();
    return;
  }
  m_summary->setText(summary());
  if (m_built == QLatin1String("none")) return;
  m_shown = part();
  for (const auto& fill : m_fill) fill(part());
  const bool removable = part().sections.size() > 1;
  for (qsizetype i = 0; i < m_rows.size(); ++i) {
    m_rows[i]->show(part().sections[std::size_t(i)], derived(std::size_t(i)), removable);
  }
}

const Part& PartEditor::beforeGesture(const QString& gesture) {
  if (gesture.isEmpty() || gesture != m_gesture || !(part() == m_after)) m_before = part();
  m_gesture = gesture;
  return m_before;
}

QString PartEditor::take(const Part& changed, const QString& key) {
  Problems problems = check(changed);
  if (problems.empty()) problems = checkAgreement(changed);
  if (!problems.empty()) return asError(problems);
  const QString gesture = key.isEmpty() ? QString() : QStringLiteral("part%1/%2").arg(*m_index).arg(key);
  const Part& before = beforeGesture(gesture);
  m_after = key == kName ? changed : named(before, changed, m_look->units());
  m_document->apply(tr("Edit %1").arg(kindWords(changed.kind)),
                    edits::replaced(m_document->rig(), *m_index, m_after), gesture);
  m_shown = part();
  // The next key may come before the picture that follows: it then changes what this one made.
  for (qsizetype i = 0; i < m_rows.size() && structure() == m_built; ++i) {
    m_rows[i]->setSection(m_shown.sections[std::size_t(i)]);
  }
  return {};
}

void PartEditor::addHead(QHBoxLayout* row) {
  auto* label = new QLabel(tr("Name"), m_inside);
  label->setFont(m_look->font(14));
  auto* name = new QLineEdit(m_inside);
  name->setObjectName(QStringLiteral("partName"));
  name->setAccessibleName(tr("Name of the part"));
  name->setFont(m_look->font(16));
  name->setMinimumHeight(kFieldHeight);
  name->setMinimumWidth(m_look->px(200));
  name->setMaxLength(limits::kStringChars);
  auto* names = underLabel(label, name);
  names->addStretch(1);
  row->addLayout(names);
  m_fill.push_back([this, name](const Part& p) {
    const QString text = QString::fromStdString(p.name.value_or(std::string()));
    if (name->text() != text) name->setText(text);
    Part unnamed = p;
    unnamed.name.reset();
    name->setPlaceholderText(partWords(unnamed, m_look->units()));
  });
  connect(name, &QLineEdit::textEdited, this, ofShown([this](const QString& text) {
    Part p = part();
    p.name = text.isEmpty() ? std::nullopt : std::optional(text.toStdString());
    take(p, kName);
  }));
  const std::vector<Style>& styles = stylesOf(part().kind);
  if (styles.empty()) return;
  auto* style = new QComboBox(m_inside);
  style->addItem(tr("no style"));
  for (const Style s : styles) style->addItem(styleWords(s));
  style->setObjectName(QStringLiteral("partStyle"));
  style->setAccessibleName(tr("Style"));
  style->setFont(m_look->font(15));
  style->setMinimumHeight(kFieldHeight);
  auto* styleLabel = new QLabel(tr("Style"), m_inside);
  styleLabel->setFont(m_look->font(14));
  auto* column = underLabel(styleLabel, style);
  column->addStretch(1);
  row->addLayout(column);
  m_fill.push_back([style, styles](const Part& p) {
    int at = 0;
    for (std::size_t i = 0; i < styles.size(); ++i) {
      if (p.style == styles[i]) at = int(i) + 1;
    }
    style->setCurrentIndex(at);
  });
  connect(style, &QComboBox::activated, this, ofShown([this, styles](int at) {
    Part p = part();
    p.style = at == 0 ? std::nullopt : std::optional(styles[std::size_t(at) - 1]);
    take(p, QString());
  }));
}

NumberField* PartEditor::addNumber(QHBoxLayout* row, const QString& name, Measure measure,
                                   const Limit& limit, const char* key,
                                   const std::function<std::optional<double>(const Part&)>& get,
                                   const std::function<void(Part&, std::optional<double>)>& put,
                                   const std::function<Kept&(Part&)>& kept, bool optional) {
  auto* field = new NumberField(m_look, name, measure, limit, m_inside);
  field->setObjectName(QStringLiteral("part_") + QLatin1String(key));
  field->setOptional(optional);
  field->sayErrorsIn(m_wrong);
  field->setWidths(m_look->px(kFieldWidth), m_look->px(kFieldWidth));
  field->edit()->setMinimumHeight(kFieldHeight);
  row->addWidget(field);
  m_fill.push_back([field, key, get, kept](const Part& p) {
    Part copy = p;
    const bool there = get(p).has_value();
    field->setValue(get(p), there ? QString::fromStdString(digitsOf(kept(copy), key)) : QString());
  });
  const auto changed = ofShown([this, field, key, put, kept](const std::optional<Typed>& typed) {
    Part p = part();
    put(p, typed ? std::optional(typed->value) : std::nullopt);
    if (typed) keepDigits(kept(p), key, typed->value, typed->digits.toStdString());
    const QString why = take(p, QLatin1String(key));
    if (!why.isEmpty()) field->refuse(why);
  });
  connect(field, &NumberField::typed, this, [changed](const Typed& t) { changed(t); });
  connect(field, &NumberField::cleared, this, [changed] { changed(std::nullopt); });
  return field;
}

void PartEditor::addLineFields(QHBoxLayout* row) {
  addNumber(
      row, tr("Label"), Measure::mass, limits::kLabel, "label_gr",
      [](const Part& p) { return p.label ? std::optional(p.label->value()) : std::nullopt; },
      [](Part& p, std::optional<double> v) {
        p.label = v ? std::optional(Grains(*v)) : std::nullopt;
        if (!v) keepDigits(p.kept, "label_gr", 0, {});
      },
      partKept, true);
  addNumber(
      row, tr("Weighed"), Measure::mass, limits::kWeighed, "mass_gr",
      [](const Part& p) { return p.weighed ? std::optional(p.weighed->mass.value()) : std::nullopt; },
      [](Part& p, std::optional<double> v) {
        if (!v) {
          p.weighed.reset();
          return;
        }
        if (!p.weighed) {
          p.weighed = Weighed{};
          p.weighed->on = QDate::currentDate().toString(Qt::ISODate).toStdString();
        }
        p.weighed->mass = Grains(*v);
      },
      [](Part& p) -> Kept& { return p.weighed ? p.weighed->kept : p.kept; }, true);
  addWeighedDate(row);
  const auto loop = [&](const QString& name, const char* key, std::optional<Grains> Loops::*member) {
    addNumber(
        row, name, Measure::mass, limits::kLoop, key,
        [member](const Part& p) {
          return p.loops && (*p.loops).*member ? std::optional(((*p.loops).*member)->value()) : std::nullopt;
        },
        [member](Part& p, std::optional<double> v) {
          if (!p.loops) p.loops = Loops{};
          (*p.loops).*member = v ? std::optional(Grains(*v)) : std::nullopt;
          if (*p.loops == Loops{}) p.loops.reset();
        },
        [](Part& p) -> Kept& { return p.loops ? p.loops->kept : p.kept; }, true);
  };
  loop(tr("Loop, rod end"), "rod_end_gr", &Loops::rodEnd);
  loop(tr("Loop, fly end"), "fly_end_gr", &Loops::flyEnd);
}

void PartEditor::addWeighedDate(QHBoxLayout* row) {
  auto* label = new QLabel(tr("Weighed on"), m_inside);
  label->setFont(m_look->font(14));
  auto* date = new QLineEdit(m_inside);
  date->setObjectName(QStringLiteral("part_weighed_on"));
  date->setAccessibleName(tr("Weighed on, year-month-day"));
  date->setPlaceholderText(tr("year-month-day"));
  date->setFont(m_look->font(16));
  date->setMinimumHeight(kFieldHeight);
  date->setFixedWidth(m_look->px(kDateWidth));
  auto* column = underLabel(label, date);
  column->addStretch(1);
  row->addLayout(column);
  m_fill.push_back([this, date](const Part& p) {
    const QString text = p.weighed && p.weighed->on ? QString::fromStdString(*p.weighed->on) : QString();
    if (!date->hasFocus() && date->text() != text) date->setText(text);
    date->setEnabled(p.weighed.has_value());
    date->setToolTip(p.weighed ? QString() : tr("Give the weighed mass first"));
    if (!date->hasFocus()) m_wrong->say(date, {});
  });
  connect(date, &QLineEdit::textEdited, this, ofShown([this, date](const QString& text) {
    Part p = part();
    if (!p.weighed) return;
    p.weighed->on = text.isEmpty() ? std::nullopt : std::optional(text.toStdString());
    m_wrong->say(date, take(p, QStringLiteral("on")));
  }));
}

void PartEditor::addFlyFields(QHBoxLayout* row) {
  const auto mass = [](std::optional<Grains> g) { return g ? std::optional(g->value()) : std::nullopt; };
  addNumber(row, tr("Dry"), Measure::mass, limits::kFlyMass, "dry_gr",
            [](const Part& p) { return std::optional(p.fly->dry.value()); },
            [](Part& p, std::optional<double> v) { p.fly->dry = Grains(*v); }, partKept, false);
  addNumber(row, tr("Wet"), Measure::mass, limits::kFlyMass, "wet_gr",
            [mass](const Part& p) { return mass(p.fly->wet); },
            [](Part& p, std::optional<double> v) {
              p.fly->wet = v ? std::optional(Grains(*v)) : std::nullopt;
            },
            partKept, true);
  addNumber(row, tr("Bulk, cm²"), Measure::plain, limits::kDragArea, "drag_area_cm2",
            [](const Part& p) {
              return p.fly->dragArea ? std::optional(p.fly->dragArea->value()) : std::nullopt;
            },
            [](Part& p, std::optional<double> v) {
              p.fly->dragArea = v ? std::optional(SquareCentimetres(*v)) : std::nullopt;
            },
            partKept, true)
      ->setDerived(QStringLiteral("1.5"));
  addNumber(row, tr("Density, g/cm³"), Measure::plain, limits::kDensity, "density_g_cm3",
            [](const Part& p) {
              return p.fly->density ? std::optional(p.fly->density->value()) : std::nullopt;
            },
            [](Part& p, std::optional<double> v) {
              p.fly->density = v ? std::optional(GramsPerCubicCentimetre(*v)) : std::nullopt;
            },
            partKept, true)
      ->setDerived(QStringLiteral("1.5"));
  auto* hookLabel = new QLabel(tr("Hook"), m_inside);
  hookLabel->setFont(m_look->font(14));
  auto* hook = new QLineEdit(m_inside);
  hook->setObjectName(QStringLiteral("part_hook"));
  hook->setAccessibleName(tr("Hook size"));
  hook->setFont(m_look->font(16));
  hook->setMinimumHeight(kFieldHeight);
  hook->setFixedWidth(m_look->px(80));
  auto* eyes = new QCheckBox(tr("sinks head first"), m_inside);
  eyes->setFont(m_look->font(15));
  auto* column = underLabel(hookLabel, hook);
  column->addWidget(eyes);
  column->addStretch(1);
  row->addLayout(column);
  m_fill.push_back([hook, eyes](const Part& p) {
    const QString text = QString::fromStdString(p.fly->hook.value_or(std::string()));
    if (hook->text() != text) hook->setText(text);
    eyes->setChecked(p.fly->sinksHeadFirst.value_or(false));
  });
  connect(hook, &QLineEdit::textEdited, this, ofShown([this](const QString& text) {
    Part p = part();
    p.fly->hook = text.isEmpty() ? std::nullopt : std::optional(text.toStdString());
    take(p, QStringLiteral("hook"));
  }));
  connect(eyes, &QCheckBox::clicked, this, ofShown([this](bool on) {
    Part p = part();
    p.fly->sinksHeadFirst = on ? std::optional(true) : std::nullopt;
    take(p, QString());
  }));
}

void PartEditor::addSections() {
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(10);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(6, 1);
  static_cast<QVBoxLayout*>(m_inside->layout())->addLayout(grid);
  for (std::size_t i = 0; i < part().sections.size(); ++i) {
    auto* row = new SectionRow(m_look, grid, int(i), SectionRow::knownBy(part().sections[i]), m_inside);
    m_rows.append(row);
    connect(row, &SectionRow::edited, this,
            ofShown([this, i](const Section& s, const QString& key) { takeSection(i, s, key); }));
    connect(row, &SectionRow::splitWanted, this, ofShown([this, i] {
      const Feet half = part().sections[i].length / 2;
      if (!(half > Feet(0))) return;
      const QString why = take(edits::withSectionSplit(part(), i, half), QString());
      if (!why.isEmpty()) m_rows[qsizetype(i)]->refuse(why);
    }));
    connect(row, &SectionRow::removeWanted, this,
            ofShown([this, i] { take(edits::withSectionRemoved(part(), i), QString()); }));
  }
}

/// In the row of the fields, where it stays in sight however many sections there are.
void PartEditor::addSectionButton(QHBoxLayout* row) {
  auto* add = new QPushButton(tr("Add a section"), m_inside);
  add->setObjectName(QStringLiteral("addSection"));
  add->setFont(m_look->font(15));
  add->setMinimumHeight(kFieldHeight);
  auto* beside = new QVBoxLayout;
  beside->setSpacing(0);
  beside->addSpacing(QFontMetrics(m_look->font(14)).height() + 1);
  beside->addWidget(add);
  beside->addStretch(1);
  row->addLayout(beside);
  connect(add, &QPushButton::clicked, this, ofShown([this](bool) {
    Section next = part().sections.back();
    next.kept = {};
    next.length = Feet(1);
    take(edits::withSectionInserted(part(), part().sections.size(), next), QString());
  }));
}

void PartEditor::takeSection(std::size_t at, const Section& section, const QString& key) {
  const QString gesture = key.isEmpty() ? QString() : QStringLiteral("section%1/%2").arg(at).arg(key);
  const QString why = take(edits::withSection(part(), at, section), gesture);
  if (!why.isEmpty()) m_rows[qsizetype(at)]->refuse(why);
}

QString PartEditor::summary() const {
  if (m_built == QLatin1String("none")) return tr("Choose a part on the line: click it, or use the arrow keys there.");
  const Analysis& a = m_feed->analysis();
  if (*m_index >= a.profile.places.size()) return {};
  const DisplayUnits units = m_look->units();
  const PartPlace& place = a.profile.places[*m_index];
  const Part& p = part();
  if (p.kind == PartKind::fly) {
    return tr("Casts at %1 wet. Bulk and density count in the air and in the water; left empty they are taken as 1.5.")
        .arg(massText(p.fly->wetMass(), units));
  }
  QString words = tr("%1 to %2: weighs %3", "where a part begins and ends, its mass")
                      .arg(stationText(place.from, units), stationText(place.to, units), massText(place.mass(), units));
  if (place.loops > Grains(0)) words += tr(", of it loops %1").arg(massText(place.loops, units));
  if (place.scaledBy != 1.0) {
    const QString percent = QLocale().toString(100 * (place.scaledBy - 1), 'f', 1);
    words += p.weighed ? tr("; sections scaled by %1 % to what the scale said").arg(percent)
                       : tr("; sections scaled by %1 % to the label").arg(percent);
  }
  for (const Warning& warning : a.warnings) {
    if (warning.part == *m_index) words += QStringLiteral(". ") + wordingText(warning.what);
  }
  return words + QLatin1Char('.');
}

QString PartEditor::derived(std::size_t at) const {
  const Analysis& a = m_feed->analysis();
  if (*m_index >= a.profile.places.size()) return {};
  const SectionProperties s =
      sectionProperties(part().sections[at], part().kind, a.profile.places[*m_index].scaledBy);
  const DisplayUnits units = m_look->units();
  const WaterState water = waterOf(m_document->rig());
  const InchesPerSecond rate = sinkRate(s.mass.rodEnd, s.diameterRodEnd, water);
  const InchesPerSecond rateFly = sinkRate(s.mass.flyEnd, s.diameterFlyEnd, water);
  const bool floating = rate <= InchesPerSecond(0) && rateFly <= InchesPerSecond(0);
  const QString motion =
      floating ? tr("floats")
               : tr("sinks %1 here").arg(bothEnds(rateText(rate, units), rateText(rateFly, units)));
  const QString words =
      tr("%1, %2, %3, %4")
          .arg(bothEnds(lineMassText(s.mass.rodEnd, units), lineMassText(s.mass.flyEnd, units)),
               bothEnds(diameterText(s.diameterRodEnd, units), diameterText(s.diameterFlyEnd, units)),
               bothEnds(densityText(s.densityRodEnd), densityText(s.densityFlyEnd)), motion);
  const Timed* timed = timedOf(part().sections[at]);
  return timed ? words + QLatin1Char('\n') + timedWords(*timed, units) : words;
}

}  // namespace grainwise::ui
