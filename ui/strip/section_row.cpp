// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/section_row.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <array>

#include "core/material/section_properties.h"
#include "core/model/kept.h"
#include "core/model/limits.h"
#include "ui/strip/number_field.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

constexpr int kFieldWidth = 92;
constexpr std::array<const char*, 6> kKnownWords{
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "floats"),
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "sinks at a rate"),
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "has a density"),
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "has a diameter"),
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "is nylon"),
    QT_TRANSLATE_NOOP("grainwise::ui::SectionRow", "is fluorocarbon")};

bool byDiameterAlone(SectionRow::KnownBy known) {
  return known == SectionRow::KnownBy::nylon || known == SectionRow::KnownBy::fluorocarbon;
}

/// A section of the wanted make-up that keeps length and, where it can, mass or diameter of the old one.
Section remade(const Section& old, SectionRow::KnownBy known) {
  const SectionProperties was = sectionProperties(old, PartKind::tip, 1.0);
  Section s;
  s.length = old.length;
  s.kept = old.kept;
  s.kept.digits.clear();
  const auto level = [](double a, double b) { return a == b; };
  const auto diameter = [&] {
    return level(was.diameterRodEnd.value(), was.diameterFlyEnd.value())
               ? Along<Inches>(was.diameterRodEnd)
               : Along<Inches>(was.diameterRodEnd, was.diameterFlyEnd);
  };
  if (byDiameterAlone(known)) {
    s.diameter = old.diameter ? *old.diameter : diameter();
    s.material = known == SectionRow::KnownBy::nylon ? Material::nylon : Material::fluorocarbon;
    return s;
  }
  s.mass = old.mass ? *old.mass
                    : (level(was.mass.rodEnd.value(), was.mass.flyEnd.value())
                           ? Along<GrainsPerFoot>(was.mass.rodEnd)
                           : Along<GrainsPerFoot>(was.mass.rodEnd, was.mass.flyEnd));
  switch (known) {
    case SectionRow::KnownBy::sinkRate:
      s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(6));
      break;
    case SectionRow::KnownBy::density:
      s.density = was.densityRodEnd;
      break;
    case SectionRow::KnownBy::diameter:
      s.diameter = old.diameter ? *old.diameter : diameter();
      break;
    default:
      s.floats = true;
      break;
  }
  return s;
}

/// What stands in an empty second field: the same to the end.
QString levelWords() { return SectionRow::tr("level"); }

}  // namespace

SectionRow::KnownBy SectionRow::knownBy(const Section& s) {
  if (!s.mass && s.material == Material::fluorocarbon) return KnownBy::fluorocarbon;
  if (!s.mass && s.material) return KnownBy::nylon;
  if (s.sinkRate) return KnownBy::sinkRate;
  if (s.density) return KnownBy::density;
  if (s.diameter) return KnownBy::diameter;
  return KnownBy::floats;
}

SectionRow::SectionRow(Look* look, QGridLayout* grid, int row, KnownBy known, QWidget* parent)
    : QObject(parent), m_look(look), m_parent(parent), m_row(row) {
  const int line = gridRow(row);
  m_wrong = new ErrorLine(look, parent);
  m_wrong->setObjectName(QStringLiteral("section%1_wrong").arg(row));
  grid->addWidget(m_wrong, line + 1, 0, 1, 9);
  m_length = addField(tr("Length"), Measure::length, limits::kLength);
  m_length->setObjectName(QStringLiteral("section%1_length").arg(row));
  grid->addWidget(m_length, line, 0);
  m_fill.push_back([this](const Section& s) {
    m_length->setValue(s.length.value(), QString::fromStdString(digitsOf(s.kept, "length_ft")));
  });
  connect(m_length, &NumberField::typed, this, [this](const Typed& t) {
    Section s = m_section;
    s.length = Feet(t.value);
    keepDigits(s.kept, "length_ft", t.value, t.digits.toStdString());
    emitEdited(s, QStringLiteral("length"), m_length);
  });
  if (byDiameterAlone(known)) {
    addAlong<Inches>(grid, tr("Diameter"), Measure::diameter, limits::kDiameter, "diameter_in",
                     &Section::diameter, 1);
  } else {
    addAlong<GrainsPerFoot>(grid, tr("Weighs"), Measure::lineMass, limits::kGrainsPerFoot, "gr_per_ft",
                            &Section::mass, 1);
  }
  m_known = new QComboBox(parent);
  for (const char* words : kKnownWords) m_known->addItem(tr(words));
  m_known->setCurrentIndex(int(known));
  m_known->setObjectName(QStringLiteral("section%1_known").arg(row));
  m_known->setAccessibleName(tr("What is known of section %1").arg(row + 1));
  m_known->setFont(look->font(15));
  m_known->setMinimumHeight(look->px(kFieldHeight));
  grid->addWidget(m_known, line, 3, Qt::AlignBottom);
  connect(m_known, &QComboBox::activated, this, &SectionRow::changeKnownBy);
  if (known == KnownBy::sinkRate) {
    addAlong<InchesPerSecond>(grid, tr("Sinks"), Measure::rate, limits::kSinkRate, "sink_in_per_s",
                              &Section::sinkRate, 4);
  } else if (known == KnownBy::diameter) {
    addAlong<Inches>(grid, tr("Diameter"), Measure::diameter, limits::kDiameter, "diameter_in",
                     &Section::diameter, 4);
  } else if (known == KnownBy::density) {
    addDensity(grid, 4);
  }
  m_derived = new QLabel(parent);
  m_derived->setObjectName(QStringLiteral("section%1_derived").arg(row));
  m_derived->setFont(look->font(14));
  m_derived->setTextFormat(Qt::PlainText);
  m_derived->setWordWrap(true);
  m_derived->setMinimumHeight(look->px(kFieldHeight));
  grid->addWidget(m_derived, line, 6, Qt::AlignBottom);
  m_split = new QPushButton(tr("Split"), parent);
  m_remove = new QPushButton(tr("Remove"), parent);
  m_split->setObjectName(QStringLiteral("section%1_split").arg(row));
  m_remove->setObjectName(QStringLiteral("section%1_remove").arg(row));
  m_split->setToolTip(tr("Cut this section in two halves that weigh the same together"));
  for (QPushButton* button : {m_split, m_remove}) {
    button->setFont(look->font(14));
    button->setMinimumHeight(look->px(kFieldHeight));
    grid->addWidget(button, line, button == m_split ? 7 : 8, Qt::AlignBottom);
  }
  connect(m_split, &QPushButton::clicked, this, &SectionRow::splitWanted);
  connect(m_remove, &QPushButton::clicked, this, &SectionRow::removeWanted);
}

NumberField* SectionRow::addField(const QString& name, Measure measure, const Limit& limit) {
  auto* field = new NumberField(m_look, name, measure, limit, m_parent);
  field->setWidths(m_look->px(kFieldWidth), m_look->px(kFieldWidth));
  field->edit()->setMinimumHeight(kFieldHeight);
  field->setNameVisible(m_row == 0);
  field->sayErrorsIn(m_wrong);
  return field;
}

template <class Q>
NumberField* SectionRow::addAlong(QGridLayout* grid, const QString& name, Measure measure,
                                  const Limit& limit, const char* key,
                                  std::optional<Along<Q>> Section::*member, int column) {
  NumberField* rod = addField(name, measure, limit);
  NumberField* fly = addField(SectionRow::tr("to"), measure, limit);
  fly->setOptional(true);
  rod->setObjectName(QStringLiteral("section%1_%2").arg(m_row).arg(QLatin1String(key)));
  fly->setObjectName(rod->objectName() + QStringLiteral("_fly"));
  grid->addWidget(rod, gridRow(m_row), column);
  grid->addWidget(fly, gridRow(m_row), column + 1);
  const std::string k = key;
  // One that is given by its diameter and density tells its mass, but in the grey of what nobody typed.
  const auto given = [member](const Section& s) { return s.*member ? s : remade(s, knownBy(s)); };
  const auto found = [=, this](Q value) { return numberText(shownValue(value.value(), measure, m_look->units()), 2); };
  m_fill.push_back([=](const Section& s) {
    const auto& along = s.*member;
    if (!along) {
      const Along<Q> derived = *(given(s).*member);
      rod->setDerived(found(derived.rodEnd));
      fly->setDerived(derived.pair ? found(derived.flyEnd) : levelWords());
      rod->setValue(std::nullopt);
      fly->setValue(std::nullopt);
      return;
    }
    const std::string first = along->pair ? k + "/0" : k;
    rod->setValue(along->rodEnd.value(), QString::fromStdString(digitsOf(s.kept, first)));
    fly->setDerived(along->pair ? QString() : levelWords());
    fly->setValue(along->pair ? std::optional(along->flyEnd.value()) : std::nullopt,
                  QString::fromStdString(digitsOf(s.kept, k + "/1")));
  });
  connect(rod, &NumberField::typed, this, [=, this](const Typed& t) {
    Section s = given(m_section);
    auto& along = s.*member;
    along->rodEnd = Q(t.value);
    if (!along->pair) along->flyEnd = Q(t.value);
    keepDigits(s.kept, along->pair ? k + "/0" : k, t.value, t.digits.toStdString());
    emitEdited(s, QString::fromStdString(k), rod);
  });
  connect(fly, &NumberField::typed, this, [=, this](const Typed& t) {
    Section s = given(m_section);
    auto& along = s.*member;
    const std::string rodDigits = digitsOf(s.kept, along->pair ? k + "/0" : k);
    keepDigits(s.kept, k, 0, {});
    along = Along<Q>(along->rodEnd, Q(t.value));
    keepDigits(s.kept, k + "/0", along->rodEnd.value(), rodDigits);
    keepDigits(s.kept, k + "/1", t.value, t.digits.toStdString());
    emitEdited(s, QString::fromStdString(k + "/1"), fly);
  });
  connect(fly, &NumberField::cleared, this, [=, this] {
    Section s = given(m_section);
    auto& along = s.*member;
    const std::string rodDigits = digitsOf(s.kept, k + "/0");
    keepDigits(s.kept, k + "/0", 0, {});
    keepDigits(s.kept, k + "/1", 0, {});
    along = Along<Q>(along->rodEnd);
    keepDigits(s.kept, k, along->rodEnd.value(), rodDigits);
    emitEdited(s, QString::fromStdString(k + "/1"), fly);
  });
  return rod;
}

void SectionRow::addDensity(QGridLayout* grid, int column) {
  NumberField* field = addField(tr("g/cm³"), Measure::plain, limits::kDensity);
  field->setObjectName(QStringLiteral("section%1_density").arg(m_row));
  grid->addWidget(field, gridRow(m_row), column);
  m_fill.push_back([field](const Section& s) {
    if (!s.density) return;
    field->setValue(s.density->value(), QString::fromStdString(digitsOf(s.kept, "density_g_cm3")));
  });
  connect(field, &NumberField::typed, this, [this, field](const Typed& t) {
    Section s = m_section;
    s.density = GramsPerCubicCentimetre(t.value);
    keepDigits(s.kept, "density_g_cm3", t.value, t.digits.toStdString());
    emitEdited(s, QStringLiteral("density"), field);
  });
}

void SectionRow::changeKnownBy(int index) {
  const auto known = KnownBy(index);
  if (known == knownBy(m_section)) return;
  emitEdited(remade(m_section, known), QString(), nullptr);
}

void SectionRow::emitEdited(const Section& section, const QString& key, NumberField* from) {
  m_typedLast = from;
  Q_EMIT edited(section, key);
}

void SectionRow::show(const Section& section, const QString& derived, bool removable) {
  m_section = section;
  for (const auto& fill : m_fill) fill(section);
  m_derived->setText(derived);
  m_remove->setEnabled(removable);
  m_remove->setToolTip(removable ? tr("Take this section out") : tr("A part has at least one section"));
}

void SectionRow::refuse(const QString& why) {
  NumberField* field = m_typedLast != nullptr ? m_typedLast : m_length;
  field->refuse(why);
  m_known->setCurrentIndex(int(knownBy(m_section)));
}

}  // namespace grainwise::ui
