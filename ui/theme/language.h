// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QLocale>
#include <QObject>
#include <QString>
#include <QTranslator>
#include <memory>
#include <vector>

namespace grainwise::ui {

/// A language that the window speaks.
struct Language {
  QString code;  ///< "de": of the file of translations, and what the settings hold
  QString name;  ///< in itself: "Deutsch"
};

/// Those that the program carries, English, which everything is written in, first.
QList<Language> languages();

/// The locale of words and numbers: that of the language `chosen`; the system's where none is chosen
/// (empty), an unknown one is, or the system's is of that language anyhow, so that a person in Austria or
/// Mexico keeps their own numbers.
QLocale localeOf(const QString& chosen, const QLocale& system);

/// The code of the language that a locale is answered in: its own, Bokmål for Norwegian of any kind,
/// English where the program does not speak it.
QString spokenIn(const QLocale& locale);

/// While it lives the application speaks the language `chosen` (empty: the system's), with its numbers;
/// before and after it as it was. Qt's own words (buttons, keys) follow where their translations are
/// installed. Files and commands never ask a locale.
class Speaking : public QObject {
  Q_OBJECT
 public:
  explicit Speaking(const QString& chosen, QObject* parent = nullptr);
  ~Speaking() override;

 private:
  void load(const QString& name, const QString& folder);

  QLocale m_before;
  std::vector<std::unique_ptr<QTranslator>> m_words;
};

}  // namespace grainwise::ui
