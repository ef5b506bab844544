// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDrag>
#include <QDragEnterEvent>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>

#include "tests/support/drag.h"
#include "tests/support/strip_bench.h"
#include "ui/strip/lens.h"
#include "ui/strip/part_payload.h"
#include "ui/strip/shelf_model.h"

namespace grainwise::ui {
namespace {

using test::DragEnd;
using test::realDrag;
using test::StripBench;
using test::twoTips;
namespace rigs = test::rigs;

/// The Shelf with the cards that some words find.
QWidget* cardsOf(StripBench& bench, const char* words) {
  bench.shelf->search()->setText(QLatin1String(words));
  StripBench::settle();
  REQUIRE(bench.shelf->model()->rowCount() > 0);
  return bench.shelf->cards()->viewport();
}
QPoint firstCard(StripBench& bench) {
  const QListView* cards = bench.shelf->cards();
  return cards->visualRect(cards->model()->index(0, 0)).center();
}
void dragCard(StripBench& bench, const char* words, QWidget* to, QPoint at, DragEnd end = DragEnd::drop,
              const std::function<void()>& midway = {}) {
  QWidget* cards = cardsOf(bench, words);
  realDrag(cards, firstCard(bench), to, at, end, midway);
}

Rig fourHeads() {
  Rig rig = rigs::plainWinter();
  for (int i = 0; i < 3; ++i) rig.parts.insert(rig.parts.begin() + 1, rigs::short525());
  return rig;
}

}  // namespace

TEST_CASE_METHOD(StripBench, "a tip dragged from the Shelf onto the line is one named step") {
  dragCard(*this, "10 ft, 14 gr/ft level", strip, at(31));
  REQUIRE(parts().size() == 7);
  CHECK(parts()[3].name == "10 ft, 14 gr/ft");
  CHECK_FALSE(parts()[3].id);
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QStringLiteral("Add 10 ft, 14 gr/ft"));
  CHECK(strip->selected() == 3u);
  CHECK(host->focusWidget() == block(3));
  undo().undo();
  CHECK(document.rig() == rigs::plainWinter());
}

TEST_CASE_METHOD(StripBench, "while a part hovers everything shows the result and the rig is as it was") {
  const Rig before = document.rig();
  bool shown = false;
  dragCard(*this, "10 ft, 14 gr/ft level", strip, at(31), DragEnd::drop, [&] {
    shown = true;
    CHECK(document.previewing());
    CHECK(document.rig() == before);
    CHECK(document.shown()->parts.size() == 7);
    CHECK(feed->rig()->parts.size() == 7);
    REQUIRE(strip->blocks().size() == 7);
    CHECK(block(3)->isLanding());
    CHECK_FALSE(block(2)->isLanding());
    CHECK(undo().count() == 0);
  });
  CHECK(shown);
  CHECK_FALSE(document.previewing());
  CHECK_FALSE(block(3)->isLanding());
}

TEST_CASE_METHOD(StripBench, "Escape in mid-drag leaves the rig, the undo stack and the picture as they were") {
  const Rig before = document.rig();
  dragCard(*this, "10 ft, 14 gr/ft level", strip, at(31), DragEnd::escape,
           [&] { CHECK(document.previewing()); });
  CHECK(document.rig() == before);
  CHECK_FALSE(document.previewing());
  CHECK(undo().count() == 0);
  CHECK(strip->blocks().size() == 6);
}

TEST_CASE_METHOD(StripBench, "carrying a new part off the line again takes its preview away") {
  dragCard(*this, "10 ft, 14 gr/ft level", aside, QPoint(400, 20), DragEnd::drop,
           [&] { CHECK_FALSE(document.previewing()); });
  CHECK(document.rig() == rigs::plainWinter());
  CHECK(undo().count() == 0);
}

TEST_CASE_METHOD(StripBench, "a part dragged past its neighbour changes places with it, in one named step") {
  start(twoTips());
  realDrag(block(2), strip, over(4) - QPoint(6, 0), DragEnd::drop, [&] {
    CHECK(document.shown()->parts[3].name == "first tip");
    CHECK(block(3)->isLanding());
  });
  CHECK(parts()[2].name == "second tip");
  CHECK(parts()[3].name == "first tip");
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QStringLiteral("Move tip"));
  CHECK(strip->selected() == 3u);
  CHECK(host->focusWidget() == block(3));
}

TEST_CASE_METHOD(StripBench, "a part let go where it stood is no step") {
  start(twoTips());
  realDrag(block(2), strip, over(2) + QPoint(20, 0));
  CHECK(document.rig() == twoTips());
  CHECK(undo().count() == 0);
}

TEST_CASE_METHOD(StripBench, "a part dragged off the line comes off, and is seen to while it hovers") {
  realDrag(block(2), aside, QPoint(500, 30), DragEnd::drop, [&] {
    CHECK(document.rig().parts.size() == 6);
    CHECK(document.shown()->parts.size() == 5);
    CHECK(strip->blocks().size() == 5);
  });
  REQUIRE(parts().size() == 5);
  CHECK(parts()[2].kind == PartKind::leader);
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QStringLiteral("Remove 10 ft, 11 gr/ft"));
}

TEST_CASE_METHOD(StripBench, "Escape outside the strip keeps the part on the line") {
  realDrag(block(2), aside, QPoint(500, 30), DragEnd::escape);
  CHECK(document.rig() == rigs::plainWinter());
  CHECK_FALSE(document.previewing());
  CHECK(undo().count() == 0);
  CHECK(strip->blocks().size() == 6);
  CHECK(strip->selected() == 2u);
}

TEST_CASE_METHOD(StripBench, "a fifth head piece is refused in words and nothing is dropped") {
  start(fourHeads());
  QSignalSpy refused(strip, &StripView::refused);
  dragCard(*this, "short head 650", strip, at(31), DragEnd::drop,
           [&] { CHECK_FALSE(document.previewing()); });
  CHECK(document.rig() == fourHeads());
  CHECK(undo().count() == 0);
  REQUIRE(refused.count() == 1);  // once, however long it hovers
  CHECK(refused.first().first().toString().contains(QStringLiteral("head pieces are the most")));
}

TEST_CASE_METHOD(StripBench, "a part carried where its kind cannot stand is refused and stays") {
  QSignalSpy refused(strip, &StripView::refused);
  realDrag(block(2), strip, at(2));
  CHECK(document.rig() == rigs::plainWinter());
  CHECK(undo().count() == 0);
  REQUIRE(refused.count() >= 1);
  CHECK(refused.first().first().toString() ==
        QStringLiteral("A tip stands between the head and the leader."));
}

TEST_CASE_METHOD(StripBench, "a fly from the Shelf takes the place of the one on the line") {
  dragCard(*this, "double tungsten", strip, at(5));
  REQUIRE(parts().size() == 6);
  CHECK(parts()[5].name == "Double tungsten");
  CHECK(undo().undoText() == QStringLiteral("Change to Double tungsten, 60 gr"));
  undo().undo();
  CHECK(document.rig() == rigs::plainWinter());
}

TEST_CASE_METHOD(StripBench, "a running line from the Shelf takes the place of the one on the line") {
  dragCard(*this, "coated running line 0.032", strip, at(30));
  REQUIRE(parts().size() == 6);
  CHECK(parts()[0].name == "coated running line 0.032 in");
  CHECK(undo().count() == 1);
}

TEST_CASE_METHOD(StripBench, "on an empty line a part lands wherever it is dropped") {
  start(Rig{});
  dragCard(*this, "double tungsten", strip, QPoint(200, 60));
  REQUIRE(parts().size() == 1);
  CHECK(parts()[0].kind == PartKind::fly);
  dragCard(*this, "short head 525", strip, QPoint(900, 60));
  REQUIRE(parts().size() == 2);
  CHECK(parts()[0].kind == PartKind::head);
  CHECK(undo().count() == 2);
}

TEST_CASE_METHOD(StripBench, "what is dragged from the line carries the part and where it came from") {
  std::optional<PartPayload> seen;
  bool picture = false;
  QObject* parent = nullptr;
  strip->runDrag = [&](QDrag* drag) {
    seen = payloadOf(drag->mimeData());
    picture = !drag->pixmap().isNull();
    parent = drag->parent();
    drag->deleteLater();
    return Qt::IgnoreAction;
  };
  QTest::mousePress(block(2), Qt::LeftButton, {}, QPoint(20, 10));
  QTest::mouseMove(block(2), QPoint(60, 12));
  QMouseEvent move(QEvent::MouseMove, QPointF(60, 12), QPointF(60, 12), Qt::LeftButton, Qt::LeftButton, {});
  QApplication::sendEvent(block(2), &move);
  REQUIRE(seen);
  CHECK(seen->part == parts()[2]);
  REQUIRE(seen->origin);
  CHECK(seen->origin->index == 2);
  CHECK(picture);
  CHECK(parent == strip);
  CHECK(document.rig() == rigs::plainWinter());  // a drag that ends nowhere takes nothing off
}

TEST_CASE_METHOD(StripBench, "payloads come back whole, and whatever is none is refused") {
  Part part = rigs::short525();
  part.name = "with } and \"quotes\" \xE2\x80\x93 and {braces}";
  const auto back = [](QMimeData* mime) {
    const std::unique_ptr<QMimeData> owned(mime);
    return payloadOf(owned.get());
  };
  const auto plain = back(mimeOf({part, std::nullopt}));
  REQUIRE(plain);
  CHECK(plain->part == part);
  CHECK_FALSE(plain->origin);
  const auto own = back(mimeOf({part, PartOrigin{QStringLiteral("a-1"), 63}}));
  REQUIRE(own);
  CHECK(own->part == part);
  CHECK(own->origin == PartOrigin{QStringLiteral("a-1"), 63});
  const QString format = QStringLiteral("application/x-grainwise-part+json");
  for (const char* text : {"", "{}", "{\"origin\":null,\"part\":", "{\"origin\":null,\"part\":}",
                           "{\"origin\":{\"line\":\"x\",\"index\":-1},\"part\":{}}", "\0\xff", "[]"}) {
    INFO(text);
    auto* mime = new QMimeData;
    mime->setData(format, QByteArray(text));
    CHECK_FALSE(back(mime));
  }
  auto* other = new QMimeData;
  other->setText(QStringLiteral("a tip"));
  CHECK_FALSE(back(other));
}

TEST_CASE_METHOD(StripBench, "a part of another line is added, not moved") {
  const std::unique_ptr<QMimeData> mime(mimeOf({parts()[2], PartOrigin{QStringLiteral("elsewhere"), 2}}));
  CHECK_FALSE(strip->canTakeOff(mime.get()));
  QDragEnterEvent enter(at(31), Qt::CopyAction, mime.get(), Qt::LeftButton, {});
  QApplication::sendEvent(strip, &enter);
  REQUIRE(enter.isAccepted());
  QDropEvent drop(at(31), Qt::CopyAction, mime.get(), Qt::LeftButton, {});
  QApplication::sendEvent(strip, &drop);
  CHECK(parts().size() == 7);
}

TEST_CASE_METHOD(StripBench, "files and other things are left to the window") {
  QMimeData urls;
  urls.setUrls({QUrl(QStringLiteral("file:///a.rig.json"))});
  QDragEnterEvent enter(at(31), Qt::CopyAction, &urls, Qt::LeftButton, {});
  QApplication::sendEvent(strip, &enter);
  CHECK_FALSE(enter.isAccepted());
}

TEST_CASE_METHOD(StripBench, "parts in the lens are dragged and dropped on as on the line") {
  start(test::sampleRig("07-old-winter"));
  Lens* lens = strip->lens();
  REQUIRE(lens->isVisible());
  const std::size_t tippet = 4;
  REQUIRE(parts()[tippet].kind == PartKind::tippet);
  REQUIRE(lens->shows(tippet));
  const QPoint inLens = lens->boxOf(tippet).center().toPoint();
  SECTION("dragged off") {
    realDrag(lens, inLens, aside, QPoint(500, 30));
    CHECK(parts().size() == 5);
    CHECK(undo().undoText() == QStringLiteral("Remove tippet 2.5 ft, 0.013 in fluorocarbon"));
  }
  SECTION("dropped on: before or behind by the lens's own scale") {
    const QPoint front = lens->mapTo(strip, QPoint(int(lens->boxOf(tippet).right()) - 4, inLens.y()));
    dragCard(*this, "tippet 2 ft 0.011", strip, front);
    REQUIRE(parts().size() == 7);
    CHECK(parts()[tippet + 1].name == "tippet 2 ft, 0.011 in nylon");
    undo().undo();
    settle();
    const QPoint rear = lens->mapTo(strip, QPoint(int(lens->boxOf(tippet).left()) + 4, inLens.y()));
    dragCard(*this, "tippet 2 ft 0.011", strip, rear);
    CHECK(parts()[tippet].name == "tippet 2 ft, 0.011 in nylon");
  }
}

}  // namespace grainwise::ui
