// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/part_bench.h"

#include "core/mass/profile.h"
#include "core/model/check.h"
#include "tests/support/random_rig.h"
#include "ui/text/words.h"

using namespace grainwise;
using namespace grainwise::test::rigs;
using test::PartBench;

namespace {

double massOf(const Part& part) {
  Rig alone;
  alone.parts = {part};
  return massProfile(alone).places.front().mass().value();
}

}  // namespace

TEST_CASE_METHOD(PartBench, "part editor: a typed length is in the rig digit for digit, as one step with a name") {
  const Rig before = document.rig();
  type("section0_length", "12.50");
  CHECK(section().length == Feet(12.5));
  CHECK(digitsOf(section().kept, "length_ft") == "12.50");
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QLatin1String("Edit tip"));
  undo().undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(PartBench, "part editor: what is refused leaves the rig as it was before the typing, not half of it") {
  const Rig before = document.rig();
  type("section0_length", "1000");  // 1, 10 and 100 ft are possible, 1000 is not
  CHECK(document.rig() == before);
  CHECK(undo().count() == 0);
  CHECK(field("section0_length")->edit()->text() == QLatin1String("1000"));
  // Put right, it is taken, and one undo takes it back.
  press(Qt::Key_Backspace);
  CHECK(section().length == Feet(100));
  CHECK(said("section0_wrong").isEmpty());
  undo().undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(PartBench, "part editor: a later visit goes back to what stood then, and no further") {
  type("section0_length", "12");
  press(Qt::Key_Return);
  type("section0_length", "1500");
  CHECK(section().length == Feet(12));
  CHECK(undo().count() == 1);
  // The same when what was taken is written over as a whole, without a word in between.
  press(Qt::Key_Escape);
  type("section0_length", "13");
  type("section0_length", "1500");
  CHECK(section().length == Feet(13));
}

TEST_CASE_METHOD(PartBench, "part editor: why a figure is refused stands across the row, under the field's name") {
  type("section0_length", "1000");
  const auto* line = find<QLabel>(QStringLiteral("section0_wrong"));
  CHECK(line->isVisible());
  CHECK(line->text().startsWith(QLatin1String("Length: ")));
  CHECK(line->text().contains(QLatin1String("300 ft")));
  CHECK(line->width() > editor->width() * 3 / 4);
  CHECK(line->y() >= field("section0_length")->geometry().bottom());
  CHECK(field("section0_length")->edit()->accessibleDescription().contains(QLatin1String("300 ft")));
  // Another field's trouble takes the line; settling the first does not wipe it.
  type("section0_gr_per_ft", "x");
  CHECK(line->text().startsWith(QLatin1String("Weighs: ")));
  field("section0_length")->setError({});
  CHECK(line->text().startsWith(QLatin1String("Weighs: ")));
}

TEST_CASE_METHOD(PartBench, "part editor: what is clicked for a section that an undo has just taken away does nothing") {
  for (const char* name : {"section1_remove", "section1_split", "addSection"}) {
    INFO(name);
    QTest::mouseClick(find<QPushButton>(QStringLiteral("section0_split")), Qt::LeftButton);
    settle();
    REQUIRE(part().sections.size() == 2);
    auto* button = find<QPushButton>(QLatin1String(name));
    undo().undo();
    const Rig before = document.rig();
    button->click();
    CHECK(document.rig() == before);
    settle();
    CHECK(editor->findChild<QPushButton*>(QStringLiteral("section1_remove")) == nullptr);
  }
}

TEST_CASE_METHOD(PartBench, "part editor: a section too short to be halved is not split") {
  Rig rig = plainWinter();
  rig.parts[2].sections.front().length = Feet(4.9e-324);
  REQUIRE(check(rig.parts[2]).empty());
  edit(rig, 2);
  QTest::mouseClick(find<QPushButton>(QStringLiteral("section0_split")), Qt::LeftButton);
  CHECK(document.rig() == rig);
  CHECK(undo().count() == 0);
}

TEST_CASE_METHOD(PartBench, "part editor: a key that comes before the picture changes what is there, not what was") {
  const auto put = [this](const char* name, const QString& text) {
    QLineEdit* edit = field(name)->edit();
    edit->setText(text);
    Q_EMIT edit->textEdited(text);
  };
  // Two fields in one go: the second knows of the first.
  put("section0_length", QStringLiteral("12"));
  put("section0_gr_per_ft", QStringLiteral("9"));
  CHECK(section().length == Feet(12));
  CHECK(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(9)));
  settle();
  // After an undo the fields still stand on what was undone: they are not heard until they are filled anew.
  undo().undo();
  const Rig before = document.rig();
  REQUIRE_FALSE(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(9)));
  put("section0_length", QStringLiteral("13"));
  CHECK(document.rig() == before);
  settle();
  put("section0_length", QStringLiteral("14"));
  CHECK(section().length == Feet(14));
}

TEST_CASE_METHOD(PartBench, "part editor: a section that is given by diameter and density tells its mass, and takes one") {
  Section dense;
  dense.length = Feet(10);
  dense.diameter = Along<Inches>(Inches(0.035));
  dense.density = GramsPerCubicCentimetre(2.5);
  Rig rig = plainWinter();
  rig.parts[2] = tip({dense});
  const double mass = massOf(rig.parts[2]) / 10;
  const auto shown = [this](const char* name) { return field(name)->edit()->placeholderText().toDouble(); };
  edit(rig, 2);
  CHECK(field("section0_gr_per_ft")->edit()->text().isEmpty());
  CHECK(shown("section0_gr_per_ft") == Approx(mass).margin(0.005));
  CHECK(field("section0_gr_per_ft_fly")->edit()->placeholderText() == QLatin1String("level"));
  type("section0_gr_per_ft_fly", "5");
  REQUIRE(section().mass);
  CHECK(section().mass->rodEnd.value() == Approx(mass).epsilon(1e-9));
  CHECK(section().mass->flyEnd == GrainsPerFoot(5));
  CHECK(section().density->value() == Approx(2.5));
  CHECK_FALSE(section().diameter);
  CHECK(said("section0_wrong").isEmpty());
  undo().undo();
  settle();
  CHECK(document.rig() == rig);
  CHECK(field("section0_gr_per_ft")->edit()->text().isEmpty());  // nothing is left of what was taken back
  type("section0_gr_per_ft", "7.50");
  CHECK(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(7.5)));
  CHECK(digitsOf(section().kept, "gr_per_ft") == "7.50");
  CHECK_FALSE(section().diameter);
}

TEST_CASE_METHOD(PartBench, "part editor: nothing that is no number gets into the rig") {
  const Rig before = document.rig();
  for (const char* name : {"section0_length", "section0_gr_per_ft", "section0_sink_in_per_s"}) {
    for (const char* junk : {"", "abc", "-3", "0", "nan", "inf", "1e99", "1.2.3", "12 lb", "--", ",", "1,234.5"}) {
      INFO(name << " '" << junk << "'");
      if (*junk == '-' && name == std::string("section0_length")) continue;  // there it is the step down
      type(name, junk);
      CHECK(document.rig() == before);
      CHECK_FALSE(field(name)->error().isEmpty());
      press(Qt::Key_Escape);
      CHECK(field(name)->error().isEmpty());
    }
  }
  CHECK(undo().count() == 0);
}

TEST_CASE_METHOD(PartBench, "part editor: Escape takes the typing back, and Escape again is left to the window") {
  const Rig before = document.rig();
  type("section0_length", "14");
  CHECK(section().length == Feet(14));
  press(Qt::Key_Escape);
  CHECK(document.rig() == before);
  CHECK(undo().count() == 0);
  CHECK(field("section0_length")->edit()->text() == QLatin1String("10"));
  QKeyEvent again(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
  again.ignore();
  QApplication::sendEvent(field("section0_length")->edit(), &again);
  CHECK_FALSE(again.isAccepted());
}

TEST_CASE_METHOD(PartBench, "part editor: comma and point, and a unit behind the number, are understood in either unit") {
  type("section0_length", "12,5");
  CHECK(section().length == Feet(12.5));
  type("section0_length", "3.048 m");
  CHECK(section().length.value() == Approx(10));
  type("section0_length", "10 ft 6 in");
  CHECK(section().length.value() == Approx(10.5));
  look.setUnits(test::kMetric);
  settle();
  CHECK(field("section0_length")->edit()->text() == QLatin1String("3.2004"));
  type("section0_length", "3,048");
  CHECK(section().length.value() == Approx(10));
  type("part_label_gr", "7.5");
  CHECK(part().label->value() == Approx(7.5 / 0.06479891));
  type("part_label_gr", "113.5 gr");
  CHECK(part().label == Grains(113.5));
}

TEST_CASE_METHOD(PartBench, "part editor: plus and minus step by half a foot and stop at the limit") {
  field("section0_length")->edit()->setFocus();
  press(Qt::Key_Plus);
  press(Qt::Key_Plus);
  CHECK(section().length == Feet(11));
  press(Qt::Key_Minus);
  CHECK(section().length == Feet(10.5));
  type("section0_length", "0.5");
  press(Qt::Key_Minus);
  CHECK(section().length == Feet(0.5));
  CHECK_FALSE(field("section0_length")->error().isEmpty());
}

TEST_CASE_METHOD(PartBench, "part editor: a taper is typed at both ends and taken back by emptying the second") {
  type("section0_gr_per_ft_fly", "8.0");
  CHECK(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(11), GrainsPerFoot(8)));
  CHECK(digitsOf(section().kept, "gr_per_ft/1") == "8.0");
  type("section0_gr_per_ft", "12");
  CHECK(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(12), GrainsPerFoot(8)));
  type("section0_gr_per_ft_fly", "");
  CHECK(section().mass == Along<GrainsPerFoot>(GrainsPerFoot(12)));
  CHECK(check(document.rig()).empty());
}

TEST_CASE_METHOD(PartBench, "part editor: what follows is said for both ends of a taper") {
  Rig rig = plainWinter();
  rig.parts[1] = fine480();
  edit(rig, 1);
  CHECK(said("section2_derived").contains(QLatin1String("16.3 to 6 gr/ft")));
  CHECK(said("section1_derived").contains(QLatin1String("16.3 gr/ft")));
  CHECK_FALSE(said("section1_derived").contains(QLatin1String(" to ")));
  look.setUnits(test::kMetric);
  settle();
  CHECK(said("section2_derived").contains(QLatin1String("3.47 to 1.28 g/m")));
}

TEST_CASE_METHOD(PartBench, "part editor: a mass under that of the loops is refused by name, and the old one stays") {
  Rig rig = plainWinter();
  rig.parts[2] = withLoops(rig.parts[2], 2.3, 2.3);
  edit(rig, 2);
  type("part_mass_gr", "113.5");
  REQUIRE(part().weighed);
  CHECK(part().weighed->on == QDate::currentDate().toString(Qt::ISODate).toStdString());
  press(Qt::Key_Return);
  type("part_mass_gr", "4");
  CHECK(part().weighed->mass == Grains(113.5));
  CHECK(said("partWrong").startsWith(QLatin1String("Weighed: ")));
  CHECK(said("partWrong").contains(QLatin1String("loops")));
  type("part_mass_gr", "");
  CHECK_FALSE(part().weighed);
  CHECK(said("partWrong").isEmpty());
}

TEST_CASE_METHOD(PartBench, "part editor: a date that is none is refused and the old one stays") {
  type("part_mass_gr", "113.5");
  auto* date = find<QLineEdit>(QStringLiteral("part_weighed_on"));
  date->setFocus();
  date->selectAll();
  QTest::keyClicks(date, QStringLiteral("2026-02-28"));
  CHECK(part().weighed->on == "2026-02-28");
  QTest::keyClick(date, Qt::Key_Backspace);
  CHECK(part().weighed->on == "2026-02-28");
  CHECK_FALSE(said("partWrong").isEmpty());
}

TEST_CASE_METHOD(PartBench, "part editor: splitting and removing are steps that keep the rest, and one section must stay") {
  type("section0_gr_per_ft_fly", "6");
  type("section0_length", "10.00");
  const double before = massOf(part());
  QTest::mouseClick(find<QPushButton>(QStringLiteral("section0_split")), Qt::LeftButton);
  settle();
  REQUIRE(part().sections.size() == 2);
  CHECK(field("section0_length")->edit()->text() == QLatin1String("5"));  // not the 10.00 that was typed
  CHECK(massOf(part()) == Approx(before).epsilon(1e-12));
  CHECK(part().length().value() == Approx(10));
  QTest::mouseClick(find<QPushButton>(QStringLiteral("section1_remove")), Qt::LeftButton);
  settle();
  CHECK(part().sections.size() == 1);
  CHECK_FALSE(find<QPushButton>(QStringLiteral("section0_remove"))->isEnabled());
  undo().undo();
  undo().undo();
  settle();
  CHECK(massOf(part()) == before);
  CHECK(field("section0_length")->edit()->text() == QLatin1String("10.00"));
}

TEST_CASE_METHOD(PartBench, "part editor: every way of knowing a section gives one that a file can hold") {
  for (int way = 0; way < 6; ++way) {
    const Rig before = document.rig();
    auto* known = find<QComboBox>(QStringLiteral("section0_known"));
    known->setCurrentIndex(way);
    Q_EMIT known->activated(way);
    settle();
    INFO("way " << way);
    CHECK(check(document.rig()).empty());
    CHECK(section().length == Feet(10));
    if (!(document.rig() == before)) undo().undo();
    settle();
    CHECK(document.rig() == before);
  }
}

TEST_CASE_METHOD(PartBench, "part editor: a name of the program goes with the figures it tells, one of the person stays") {
  Rig rig = plainWinter();
  rig.parts[2].name = "10 ft, 11 gr/ft";
  edit(rig, 2);
  type("part_mass_gr", "113.5");
  CHECK(part().name == "10 ft, 11 gr/ft");  // weighing makes no other tip of it
  type("section0_length", "12");
  CHECK_FALSE(part().name);
  CHECK(ui::partWords(part(), test::kTrade) == QLatin1String("12 ft, 9.5 gr/ft"));
  press(Qt::Key_Escape);
  CHECK(part().name == "10 ft, 11 gr/ft");
  type("section0_length", "1000");
  CHECK(part().name == "10 ft, 11 gr/ft");

  rig.parts[2].name = "Grandfather's tip";
  edit(rig, 2);
  type("section0_length", "12");
  CHECK(part().name == "Grandfather's tip");
}

TEST_CASE_METHOD(PartBench, "part editor: a carried fly's name follows its hook, and no other figure") {
  Rig rig = plainWinter();
  rig.parts.back().name = "Wet fly #4";
  rig.parts.back().fly->hook = "4";
  edit(rig, rig.parts.size() - 1);
  type("part_dry_gr", "12");
  CHECK(part().name == "Wet fly #4");
  auto* hook = find<QLineEdit>(QStringLiteral("part_hook"));
  hook->setFocus();
  hook->selectAll();
  QTest::keyClicks(hook, QStringLiteral("6"));
  CHECK(part().fly->hook == "6");
  CHECK(part().name == "Wet fly #6");
}

TEST_CASE_METHOD(PartBench, "part editor: a fly's figures are typed, refused and left empty") {
  edit(plainWinter(), 5);
  type("part_dry_gr", "26.50");
  CHECK(part().fly->dry == Grains(26.5));
  type("part_wet_gr", "33");
  CHECK(part().fly->wet == Grains(33));
  const Rig before = document.rig();
  for (const char* name : {"part_dry_gr", "part_wet_gr", "part_drag_area_cm2", "part_density_g_cm3"}) {
    INFO(name);
    type(name, "5000");
    CHECK(document.rig() == before);
    CHECK_FALSE(said("partWrong").isEmpty());
    press(Qt::Key_Escape);
  }
  type("part_wet_gr", "");
  CHECK_FALSE(part().fly->wet);
  CHECK(check(document.rig()).empty());
}

TEST_CASE_METHOD(PartBench, "part editor: random typing in every field leaves a sound rig, and undo leads back to the start") {
  test::Random random(41);
  Rig rig = plainWinter();
  rig.parts[1] = fine480();
  edit(rig, 1);
  const QStringList texts{"1",  "12.5", "0,5", "300", "301", "-2", "x",   "",     "7 g",
                          "1 m", "99",  "0",   "1e3", "+",   "..", "5000", "16.32", "0.03"};
  for (int round = 0; round < 150; ++round) {
    const auto fields = editor->findChildren<ui::NumberField*>();
    REQUIRE_FALSE(fields.isEmpty());
    ui::NumberField* one = fields[qsizetype(random.below(std::size_t(fields.size())))];
    one->edit()->setFocus();
    one->edit()->selectAll();
    QTest::keyClicks(one->edit(), texts[qsizetype(random.below(std::size_t(texts.size())))]);
    if (random.chance(0.2)) QTest::keyClick(one->edit(), Qt::Key_Escape);
    settle();
    REQUIRE(check(document.rig()).empty());
  }
  while (undo().canUndo()) undo().undo();
  CHECK(document.rig() == rig);
}
