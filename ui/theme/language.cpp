// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <algorithm>

namespace grainwise::ui {
namespace {

constexpr auto kCarried = ":/i18n";

QLocale homeOf(const QString& code) {
  // English without America's paper and inches: the trade's units are set apart from the language.
  return code == QLatin1String("en") ? QLocale(QLocale::English, QLocale::UnitedKingdom)
                                     : QLocale(code);
}

QString codeOf(QLocale::Language language) {
  switch (language) {
    case QLocale::English:
      return QStringLiteral("en");
    case QLocale::German:
      return QStringLiteral("de");
    case QLocale::NorwegianBokmal:
    case QLocale::NorwegianNynorsk:
      return QStringLiteral("nb");
    case QLocale::Spanish:
      return QStringLiteral("es");
    default:
      return {};
  }
}

}  // namespace

QList<Language> languages() {
  return {{QStringLiteral("en"), QStringLiteral("English")},
          {QStringLiteral("de"), QStringLiteral("Deutsch")},
          {QStringLiteral("nb"), QStringLiteral("Norsk bokmål")},
          {QStringLiteral("es"), QStringLiteral("Español")}};
}

QString spokenIn(const QLocale& locale) {
  const QStringList wanted = locale.uiLanguages();  // the person's order, where the system knows one
  for (const QString& one : wanted) {
    QString code = codeOf(QLocale(one).language());
    if (!code.isEmpty()) return code;
  }
  return QStringLiteral("en");
}

QLocale localeOf(const QString& chosen, const QLocale& system) {
  const QList<Language> all = languages();
  const bool known = std::any_of(all.begin(), all.end(),
                                 [&](const Language& one) { return one.code == chosen; });
  if (!known) return system;
  return codeOf(system.language()) == chosen ? system : homeOf(chosen);
}

Speaking::Speaking(const QString& chosen, QObject* parent) : QObject(parent) {
  const QLocale locale = localeOf(chosen, QLocale::system());
  QLocale::setDefault(locale);
  const QString code = spokenIn(locale);
  // The last one loaded is asked first.
  load(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  load(QStringLiteral("qt_") + code, QLatin1String(kCarried));
  load(QStringLiteral("grainwise_") + code, QLatin1String(kCarried));
}

Speaking::~Speaking() {
  for (const auto& words : m_words) QCoreApplication::removeTranslator(words.get());
  QLocale::setDefault(m_before);
}

void Speaking::load(const QString& name, const QString& folder) {
  auto words = std::make_unique<QTranslator>();
  if (!words->load(name, folder)) return;
  QCoreApplication::installTranslator(words.get());
  m_words.push_back(std::move(words));
}

}  // namespace grainwise::ui
