// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/samples_menu.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QLocale>
#include <QMenu>

#include "core/io/deck_file.h"
#include "core/io/rig_file.h"
#include "ui/text/sample_words.h"
#include "ui/theme/language.h"
#include "ui/theme/plain_words.h"
#include "ui/window/clinic_host.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

constexpr QLatin1String kDeckEnding(".deck.json");

QDir carried() { return QDir(QStringLiteral(":/sample-rigs")); }

std::string textOf(const QString& name) {
  QFile file(carried().filePath(name));
  return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

QStringList filesLike(const QString& pattern) { return carried().entryList({pattern}, QDir::Files, QDir::Name); }

/// Each lesson once: "why-that-tip.de.deck.json" in the window's language, where there is one, in place of
/// the English "why-that-tip.deck.json".
QStringList lessons() {
  const QString own = QLatin1Char('.') + spokenIn(QLocale()) + kDeckEnding;
  QStringList found;
  for (const QString& file : filesLike(QStringLiteral("*.deck.json"))) {
    const QString name = file.chopped(kDeckEnding.size());
    if (name.contains(QLatin1Char('.'))) continue;
    found << (carried().exists(name + own) ? name + own : file);
  }
  return found;
}

}  // namespace

SamplesMenu::SamplesMenu(QMenu* menu, MainWindow* window) : QObject(menu), m_menu(menu), m_window(window) {
  connect(menu, &QMenu::aboutToShow, this, [this] {
    if (m_menu->isEmpty()) fill();
  });
}

void SamplesMenu::fill() {
  m_menu->addSection(tr("Decks for a class"));
  addDecks();
  addRigs(tr("Rigs"), QStringLiteral("[0-9]*.rig.json"));
  addRigs(tr("Wrong on purpose, to mend"), QStringLiteral("wrong-*.rig.json"));
}

void SamplesMenu::addDecks() {
  for (const QString& name : lessons()) {
    const auto deck = readDeck(textOf(name));
    if (!deck) continue;
    QAction* entry = m_menu->addAction(PlainWords::inMenu(QString::fromStdString(deck->title)));
    entry->setObjectName(name);
    connect(entry, &QAction::triggered, m_window,
            [window = m_window, path = carried().filePath(name)] { window->clinic()->startFrom(path); });
  }
}

void SamplesMenu::addRigs(const QString& heading, const QString& files) {
  m_menu->addSection(heading);
  for (const QString& name : filesLike(files)) {
    const auto read = readRig(textOf(name));
    if (!read) continue;
    const Rig rig = spokenSample(*read);
    QAction* entry = m_menu->addAction(PlainWords::inMenu(QString::fromStdString(rig.name)));
    entry->setObjectName(name);
    connect(entry, &QAction::triggered, m_window, [window = m_window, rig] { window->startHere(rig); });
  }
}

}  // namespace grainwise::ui
