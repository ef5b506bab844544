// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QImage>
#include <QPainter>
#include <QScreen>

#include "tests/ui/clinic_support.h"
#include "ui/clinic/card_view.h"
#include "ui/clinic/edit_panel.h"
#include "ui/clinic/show_window.h"
#include "ui/clinic/teacher_view.h"

/// Run by itself, on a platform with a laptop and a projector of another scale (two_screens.json).
namespace grainwise::ui {

TEST_CASE_METHOD(test::ClinicFixture, "The card fills the other screen in its own scale, and the laptop keeps the notes", "[.two-screens]") {
  const QList<QScreen*> screens = QGuiApplication::screens();
  REQUIRE(screens.size() == 2);
  REQUIRE(screens[0]->devicePixelRatio() == 1.0);
  REQUIRE(screens[1]->devicePixelRatio() == 1.5);
  REQUIRE(clinic->screen() == screens[0]);
  CHECK(find<QComboBox>("showScreen")->currentIndex() == 1);
  clinic->startShow(2);
  ShowWindow* show = clinic->showWindow();
  REQUIRE(QTest::qWaitForWindowExposed(show));
  CHECK(show->screen() == screens[1]);
  CHECK(show->geometry() == screens[1]->geometry());
  CHECK(show->view()->size() == screens[1]->size());
  // Drawn in the projector's own pixels, not blown up from the laptop's.
  const QImage card = show->grab().toImage();
  CHECK(card.size() == screens[1]->size() * 1.5);
  QImage drawn(card.size(), QImage::Format_RGB32);
  drawn.setDevicePixelRatio(card.devicePixelRatio());
  QPainter p(&drawn);
  paintCardPage(p, screens[1]->size(), *clinic->run()->shown(), clinic->run()->state(),
                coloursOf(Scheme::projector), look.units());
  p.end();
  CHECK(card.convertToFormat(QImage::Format_RGB32) == drawn);
  CHECK(clinic->teacher()->isVisible());
  CHECK(clinic->teacher()->grab().devicePixelRatio() == 1.0);
  CHECK(clinic->teacher()->notes().contains(QLatin1String("Answer")));
  // The rig is changed on the laptop: the class sees nothing but the card.
  QTest::keyClick(show, Qt::Key_E);
  CHECK(clinic->teacher()->isAncestorOf(clinic->editPanel()));
  CHECK(show->view()->size() == screens[1]->size());
  clinic->endShow();
  // And the other way round.
  find<QComboBox>("showScreen")->setCurrentIndex(0);
  clinic->startShow(2);
  show = clinic->showWindow();
  REQUIRE(QTest::qWaitForWindowExposed(show));
  CHECK(show->geometry() == screens[0]->geometry());
  CHECK(show->grab().toImage().size() == screens[0]->size());
  clinic->endShow();
}

}  // namespace grainwise::ui
