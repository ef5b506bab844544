// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/sample_words.h"

#include <QCoreApplication>
#include <QString>
#include <algorithm>
#include <array>

namespace grainwise::ui {
namespace {

/// Names and notes of the rigs of sample-rigs, and the notes of its pools; a pool's name is a name in any
/// language.
constexpr std::array kTexts{
    QT_TRANSLATE_NOOP("SampleWords", "Plain winter"),
    QT_TRANSLATE_NOOP("SampleWords", "The all-round winter rig: ten feet of 11 behind a weighted leech. Start here."),
    QT_TRANSLATE_NOOP("SampleWords", "Slot"),
    QT_TRANSLATE_NOOP("SampleWords", "For fast, deep water: the heaviest head of the bag drives ten feet of 17 and a "
                                     "double tungsten fly."),
    QT_TRANSLATE_NOOP("SampleWords", "Thin tail"),
    QT_TRANSLATE_NOOP("SampleWords", "The winter head and stroke, but only a quarter of the tip sinks: for thin tail-outs."),
    QT_TRANSLATE_NOOP("SampleWords", "Small river"),
    QT_TRANSLATE_NOOP("SampleWords", "A light rod on a small river: a big but light fly, and more than half of the tip "
                                     "sinking."),
    QT_TRANSLATE_NOOP("SampleWords", "Dry line"),
    QT_TRANSLATE_NOOP("SampleWords", "Long fine taper and a long tapered leader for a low hairwing just under the surface."),
    QT_TRANSLATE_NOOP("SampleWords", "Under the film"),
    QT_TRANSLATE_NOOP("SampleWords", "A light coated leader carries a small double a foot and a half down."),
    QT_TRANSLATE_NOOP("SampleWords", "Old winter"),
    QT_TRANSLATE_NOOP("SampleWords", "Long belly with a tapered tip in place of its floating front; the stroke is long and "
                                     "slow."),
    QT_TRANSLATE_NOOP("SampleWords", "Trout two-hander"),
    QT_TRANSLATE_NOOP("SampleWords", "A light two-hander for trout: slow tapered tip, one piece of nylon, a beaded "
                                     "streamer."),
    QT_TRANSLATE_NOOP("SampleWords", "Wide water"),
    QT_TRANSLATE_NOOP("SampleWords", "Long tip, half of it sinking, for wide slow pools. The working length is at its "
                                     "upper end."),
    QT_TRANSLATE_NOOP("SampleWords", "Single five"),
    QT_TRANSLATE_NOOP("SampleWords", "A single-hand line for comparison: the first 30 ft stand inside the limits for a #5."),
    QT_TRANSLATE_NOOP("SampleWords", "Anvil"),
    QT_TRANSLATE_NOOP("SampleWords", "Wrong on purpose: the tip weighs nearly half of the head. It stays in the water."),
    QT_TRANSLATE_NOOP("SampleWords", "Fat fly"),
    QT_TRANSLATE_NOOP("SampleWords", "Wrong on purpose: the fly is too heavy for this tip, though the head could lift a "
                                     "heavier tip."),
    QT_TRANSLATE_NOOP("SampleWords", "Hinge"),
    QT_TRANSLATE_NOOP("SampleWords", "Wrong on purpose: the tip is twice as heavy a foot as the end of the head. The line "
                                     "folds there."),
    QT_TRANSLATE_NOOP("SampleWords", "No grip"),
    QT_TRANSLATE_NOOP("SampleWords", "Wrong on purpose: no tip between head and leader, so nothing holds in the water."),
    QT_TRANSLATE_NOOP("SampleWords", "the all-round pool"),
    QT_TRANSLATE_NOOP("SampleWords", "hard on purpose: no sound rig here has its middle figure in it"),
    QT_TRANSLATE_NOOP("SampleWords", "thin tail-out"),
    QT_TRANSLATE_NOOP("SampleWords", "fast shelf"),
    QT_TRANSLATE_NOOP("SampleWords", "summer"),
    QT_TRANSLATE_NOOP("SampleWords", "slow and deep"),
};

std::string spoken(const std::string& text) {
  if (!isSampleText(text)) return text;
  return QCoreApplication::translate("SampleWords", text.c_str()).toStdString();
}

}  // namespace

bool isSampleText(const std::string& text) {
  return std::any_of(kTexts.begin(), kTexts.end(), [&](const char* one) { return text == one; });
}

Rig spokenSample(Rig rig) {
  rig.name = spoken(rig.name);
  if (rig.notes) rig.notes = spoken(*rig.notes);
  return rig;
}

Pools spokenSample(Pools river) {
  for (Pool& pool : river.pools) {
    if (pool.note) pool.note = spoken(*pool.note);
  }
  return river;
}

}  // namespace grainwise::ui
