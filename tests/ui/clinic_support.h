// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTest>
#include <memory>

#include "core/io/deck_file.h"
#include "tests/support/shipped_files.h"
#include "tests/support/ui_bench.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/clinic/deck_run.h"

namespace grainwise::test {

inline const std::string kDecks = GRAINWISE_SOURCE_DIR "/sample-rigs";
inline const char* const kDeckNames[] = {"why-that-tip", "how-deep-was-i"};

inline std::string deckPath(const std::string& name) { return kDecks + "/" + name + ".deck.json"; }
inline Deck sampleDeck(const std::string& name) { return loadDeck(deckPath(name)).value(); }

/// A Clinic with the first deck, in a window of a laptop's size.
struct ClinicFixture : UiFixture {
  ClinicFixture() {
    clinic = std::make_unique<ui::ClinicFace>(&look, genericShelf());
    clinic->askUnsaved = [] { return ui::ClinicFace::Unsaved::discard; };
    REQUIRE(clinic->openDeck(QString::fromStdString(deckPath("why-that-tip"))).empty());
    clinic->resize(1366, 720);
    clinic->show();
    REQUIRE(QTest::qWaitForWindowExposed(clinic.get()));
  }
  template <class W>
  W* find(const char* name) {
    auto* found = clinic->findChild<W*>(QLatin1String(name));
    REQUIRE(found);
    return found;
  }
  void press(const char* button) { QTest::mouseClick(find<QWidget>(button), Qt::LeftButton); }

  ui::Look look;
  std::unique_ptr<ui::ClinicFace> clinic;
};

}  // namespace grainwise::test
