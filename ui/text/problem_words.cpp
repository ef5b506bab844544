// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/problem_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/model/utf8.h"

namespace grainwise::ui {
namespace {

constexpr auto kContext = "grainwise::Problem";

/// What the limits of core are of, their units that are words, and its formats; they stand in its tables, where no translator
/// finds them.
[[maybe_unused]] constexpr const char* kLimitNames[] = {
    QT_TRANSLATE_NOOP("grainwise::Problem", "length"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "grains per foot"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "diameter"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "sink rate"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "uncertainty of the sink rate"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "density"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "label mass"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "weighed mass"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "loop mass"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "fly mass"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "drag area"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "rod length"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "line number"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "number of hands"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "grain window"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "surface speed"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "uncertainty of the speed"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "depth of the fly"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "depth"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "temperature"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "salinity"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "line speed"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "loop"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "launch angle"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "rod tip height"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "overhang"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "altitude of the air"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "line out"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "angle"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "mend"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "clearance"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "wanted depth"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "feet left"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "a rig"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "a shelf"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "a list of pools"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "a list of spools"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "a deck"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "deg"),
    QT_TRANSLATE_NOOP("grainwise::Problem", "times"),
};

}  // namespace

QString wordingText(const Wording& wording) {
  QString text = QString::fromStdString(wording.text());
  if (wording.isNumber()) return text.replace(QLatin1Char('.'), QLocale().decimalPoint());
  if (wording.form() == nullptr) return text;
  const QString form = QCoreApplication::translate(kContext, wording.form());
  QString said;
  for (int i = 0; i < form.size(); ++i) {
    const int place = form[i] == QLatin1Char('%') && i + 1 < form.size() ? form[i + 1].digitValue() : -1;
    if (place < 1 || place > int(wording.args().size())) {
      said += form[i];
      continue;
    }
    said += wordingText(wording.args()[std::size_t(place - 1)]);
    ++i;
  }
  return said;
}

QString limitUnit(const Limit& limit) { return QCoreApplication::translate(kContext, limit.unit); }

QString whatAndFix(const Problem& problem) { return wordingText(withFix(problem)); }

QString problemLine(const Problem& problem) {
  return QString::fromStdString(printable(wordingText(inPlace(problem)).toStdString()));
}

}  // namespace grainwise::ui
