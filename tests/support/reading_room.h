// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

namespace grainwise::test {

/// While it lives every text of the program is one that no language has: in brackets, without a plain
/// letter, two fifths longer (resources/i18n/texts.py pseudo).
class PseudoLanguage {
 public:
  PseudoLanguage();
  ~PseudoLanguage();
  PseudoLanguage(const PseudoLanguage&) = delete;
  PseudoLanguage& operator=(const PseudoLanguage&) = delete;

 private:
  class Private;
  Private* m_d;
};

/// What a person would object to in everything that a window says at this moment, each as a line naming
/// the widget: words that did not go through translation, text that its place cuts off, widgets that
/// stick out of what holds them. `words` false leaves the words out: for the real languages.
QStringList objections(const QWidget* window, bool words);

/// The words of a text that no translation gave and that are no unit, key or name of the tests' data.
QStringList plainWords(const QString& text);

}  // namespace grainwise::test
