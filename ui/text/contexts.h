// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

/// The contexts under which translators find the words of this room.
namespace grainwise::ui {

class Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

class Why {
  Q_DECLARE_TR_FUNCTIONS(Why)
};

class ChoiceWords {
  Q_DECLARE_TR_FUNCTIONS(ChoiceWords)
};

class ShelfWords {
  Q_DECLARE_TR_FUNCTIONS(ShelfWords)
};

class StripWords {
  Q_DECLARE_TR_FUNCTIONS(StripWords)
};

class CardWords {
  Q_DECLARE_TR_FUNCTIONS(CardWords)
};

class PictureWords {
  Q_DECLARE_TR_FUNCTIONS(PictureWords)
};

class PaperWords {
  Q_DECLARE_TR_FUNCTIONS(PaperWords)
};

}  // namespace grainwise::ui
