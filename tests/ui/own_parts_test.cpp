// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/make_bench.h"
#include "ui/strip/number_field.h"

namespace grainwise::ui {
namespace {

struct OwnBench : MakeBench {
  OwnBench() {
    store->setOwn(Shelf{{part("winter tip", "a"), part("summer tip", "b")}, {}});
    open("makeParts");
    settle();
  }
  static void settle() { QTest::qWait(1); }
  /// Types over a field of the chosen part's editor.
  void edit(const char* field, const char* text) {
    auto* edit = find<NumberField>(field)->edit();
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QLatin1String(text));
    settle();
  }
  const Part& own(std::size_t i) { return store->own().parts[i]; }
  void choose(int row) {
    find<QListWidget>("ownList")->setCurrentRow(row);
    settle();
  }
};

}  // namespace

TEST_CASE_METHOD(OwnBench, "my parts: every figure of an own part is edited, and stands on the Shelf and in the file") {
  edit("section0_length", "12.5");
  edit("section0_gr_per_ft", "14");
  edit("section0_gr_per_ft_fly", "12");
  edit("section0_sink_in_per_s", "8,5");
  edit("part_label_gr", "162");
  edit("part_rod_end_gr", "2.3");
  CHECK(own(0).sections[0].length == Feet(12.5));
  CHECK(own(0).sections[0].mass == Along<GrainsPerFoot>(GrainsPerFoot(14), GrainsPerFoot(12)));
  CHECK(own(0).sections[0].sinkRate->rodEnd == InchesPerSecond(8.5));
  CHECK(own(0).label == Grains(162));
  CHECK(own(0).loops->rodEnd == Grains(2.3));
  CHECK(own(0).id == "a");
  CHECK(own(0).group == "Tips");
  CHECK(own(1) == part("summer tip", "b"));
  CHECK(check(store->own()).empty());
  CHECK(OwnStore(Shelf{}, folder.path()).own() == store->own());
  CHECK(document.undoStack()->count() == 0);  // the line has nothing to do with it
}

TEST_CASE_METHOD(OwnBench, "my parts: what is typed into one field is one step, and a refused figure is none") {
  const Shelf before = store->own();
  edit("section0_length", "123");
  click("ownUndo");
  settle();
  CHECK(store->own() == before);
  CHECK(find<NumberField>("section0_length")->edit()->text() == QLatin1String("10"));
  edit("section0_length", "1000");
  CHECK(store->own() == before);
  CHECK(words("section0_wrong").contains(QLatin1String("300 ft")));
  click("ownUndo");  // what came before it: the two parts themselves
  CHECK(store->own().parts.empty());
}

TEST_CASE_METHOD(OwnBench, "my parts: the one that is edited stays in the list, whatever is searched for") {
  find<QLineEdit>("ownSearch")->setText(QStringLiteral("summer"));
  settle();
  CHECK(find<QListWidget>("ownList")->count() == 1);
  type("partName", "autumn tip");
  settle();
  CHECK(own(1).name == "autumn tip");
  CHECK(own(0).name == "winter tip");
  CHECK(find<QListWidget>("ownList")->count() == 1);
  CHECK(find<QLineEdit>("partName")->text() == QLatin1String("autumn tip"));
}

TEST_CASE_METHOD(OwnBench, "my parts: a copy is chosen to be made another, and leaves its model as it is") {
  click("ownCopy");
  settle();
  CHECK(find<QListWidget>("ownList")->currentRow() == 1);
  edit("section0_gr_per_ft", "17");
  CHECK(own(1).sections[0].mass == Along<GrainsPerFoot>(GrainsPerFoot(17)));
  CHECK(own(1).name == "winter tip (copy)");
  CHECK(own(0) == part("winter tip", "a"));
}

TEST_CASE_METHOD(OwnBench, "my parts: a part that is on the line keeps its figures until the new one is put in") {
  CHECK(find<QPushButton>("ownPutIn")->isHidden());
  choose(0);
  click("ownPlace");
  settle();
  const auto onLine = [&] {
    return std::find_if(parts().begin(), parts().end(), [](const Part& p) { return p.name == "winter tip"; });
  };
  REQUIRE(onLine() != parts().end());
  CHECK(find<QPushButton>("ownPutIn")->isHidden());
  const Rig before = document.rig();
  edit("section0_length", "12");
  CHECK(document.rig() == before);
  CHECK_FALSE(find<QPushButton>("ownPutIn")->isHidden());
  click("ownPutIn");
  settle();
  CHECK(onLine()->sections[0].length == Feet(12));
  CHECK_FALSE(onLine()->id);
  CHECK_FALSE(onLine()->group);
  CHECK(find<QPushButton>("ownPutIn")->isHidden());
  document.undoStack()->undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(OwnBench, "my parts: a renamed part is still known on the line as the one it was") {
  choose(1);
  click("ownPlace");
  settle();
  type("partName", "late summer tip");
  settle();
  CHECK_FALSE(find<QPushButton>("ownPutIn")->isHidden());
  click("ownPutIn");
  CHECK(std::any_of(parts().begin(), parts().end(), [](const Part& p) { return p.name == "late summer tip"; }));
}

TEST_CASE_METHOD(OwnBench, "my parts: a fly of one's own is edited as a fly") {
  Part leech;
  leech.kind = PartKind::fly;
  leech.name = "leech";
  leech.fly = Fly{};
  leech.fly->dry = Grains(26);
  leech.id = "c";
  leech.group = "Flies";
  store->setOwn(Shelf{{leech}, {}});
  settle();
  edit("part_dry_gr", "28");
  CHECK(own(0).fly->dry == Grains(28));
  CHECK(panel->findChild<NumberField*>(QStringLiteral("section0_length")) == nullptr);
}

}  // namespace grainwise::ui
