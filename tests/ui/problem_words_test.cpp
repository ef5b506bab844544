// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/problem_words.h"

#include <QLocale>
#include <QRegularExpression>

#include "core/bench/typed.h"
#include "tests/support/limit_rows.h"
#include "tests/support/reading_room.h"
#include "tests/support/ui_support.h"

namespace grainwise::ui {
namespace {

/// The sentences of a wording that came out in English all the same.
QStringList untranslated(const Wording& wording) {
  QStringList found;
  if (wording.form() != nullptr) {
    Wording bare = Wording::sentence(wording.form());
    for (std::size_t i = 0; i < wording.args().size(); ++i) bare = bare.arg("");
    // Signs alone ("%1: %2") are the same everywhere.
    const bool letters = QRegularExpression(QStringLiteral("[a-z]")).match(QString::fromStdString(bare.text())).hasMatch();
    if (letters && wordingText(bare) == QString::fromStdString(bare.text())) {
      found.append(QString::fromLatin1(wording.form()));
    }
  }
  for (const Wording& inside : wording.args()) found += untranslated(inside);
  return found;
}

QStringList untranslated(const Problems& problems) {
  QStringList found;
  for (const Problem& problem : problems) found += untranslated(problem.what) + untranslated(problem.fix);
  return found;
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "what is wrong with a file is said in the person's language") {
  const test::PseudoLanguage pseudo;
  for (const test::LimitRow& row : test::kLimitRows) {
    const Problems problems =
        test::readAny(row.format, test::with(test::soundText(row.format), row.at, row.outside)).problems;
    INFO(row.format << " " << row.at << " " << row.outside);
    REQUIRE_FALSE(problems.empty());
    CHECK(untranslated(problems).join(QLatin1Char('\n')).toStdString().empty());
  }
  for (const test::LimitDocument& document : test::limitDocuments()) {
    INFO(document.format << ": " << document.about);
    const Problems problems = test::readAny(document.format, document.text).problems;
    CHECK(untranslated(problems).join(QLatin1Char('\n')).toStdString().empty());
  }
}

TEST_CASE_METHOD(test::UiFixture, "a sentence of core keeps its names and writes its numbers as the person does") {
  const QLocale before;
  const Problem wrong{"a.rig.json", 7, "/parts/0", Problem::tr("wet_gr %1 is less than dry_gr %2").arg(1.5).arg(2),
                      Problem::tr("give %1").arg("%1")};
  QLocale::setDefault(QLocale(QLocale::German));
  const QString said = problemLine(wrong);
  QLocale::setDefault(before);
  CHECK(said.toStdString() == "a.rig.json:7: /parts/0: wet_gr 1,5 is less than dry_gr 2; give %1");
  CHECK(describe(wrong) == "a.rig.json:7: /parts/0: wet_gr 1.5 is less than dry_gr 2; give %1");
}

TEST_CASE_METHOD(test::UiFixture, "what a scale says in no unit is refused in the person's language") {
  const test::PseudoLanguage pseudo;
  const auto mass = typedMass("twelve");
  REQUIRE_FALSE(mass);
  CHECK(untranslated({mass.error()}).isEmpty());
  CHECK(whatAndFix(mass.error()).contains(QStringLiteral("twelve")));
}

}  // namespace grainwise::ui
