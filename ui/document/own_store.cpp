// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/own_store.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <memory>

#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "ui/document/bench_habits.h"
#include "ui/document/whole_file.h"

namespace grainwise::ui {
namespace {
constexpr auto kParts = "my-parts.shelf.json";
constexpr auto kSpools = "my-spools.spools.json";
constexpr auto kOwnSettings = "settings.conf";  // beside the rest, where a folder is given
constexpr std::size_t kMostSteps = 100;

QString nameOf(const char* file) { return QLatin1String(file); }
}  // namespace

OwnStore::OwnStore(const SharedShelf& generic, const QString& folder, QObject* parent)
    : QObject(parent), m_generic(generic), m_all(generic), m_folder(folder),
      m_habits(folder.isEmpty() ? std::make_unique<QSettings>()
                                : std::make_unique<QSettings>(QDir(folder).filePath(nameOf(kOwnSettings)),
                                                              QSettings::IniFormat)) {
  if (m_folder.isEmpty()) {
    m_folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  }
  load();
}

OwnStore::~OwnStore() = default;

void OwnStore::load() {
  const auto take = [this](const char* name, auto&& read, auto& into) {
    const QString path = QDir(m_folder).filePath(nameOf(name));
    if (!QFileInfo::exists(path)) return;
    const auto value = read(path.toStdString());
    if (value) {
      into = *value;
      return;
    }
    m_problems.insert(m_problems.end(), value.error().begin(), value.error().end());
    m_unread.append(path);
  };
  Shelf own;
  take(kParts, [](const std::string& path) { return loadShelf(path); }, own);
  if (!(own == Shelf{})) takeOwn(own);
  take(kSpools, [](const std::string& path) { return loadSpools(path); }, m_spools);
  loadRules();
}

void OwnStore::loadRules() {
  const auto loop = loopKindNamed(m_habits->value(nameOf(kBenchLoop)).toString().toStdString());
  m_rules.lineLoop = loop.value_or(m_rules.lineLoop);
  for (const BenchHabit& habit : kBenchHabits) {
    bool good = false;
    const double inches = m_habits->value(nameOf(habit.key)).toDouble(&good);
    if (good) m_rules.*habit.length = Inches(inches);
  }
  m_rules = withinReason(m_rules);
}

void OwnStore::setRules(const BenchRules& rules) {
  if (rules == m_rules) return;
  m_rules = rules;
  m_habits->setValue(nameOf(kBenchLoop), QLatin1String(wordOf(m_rules.lineLoop)));
  for (const BenchHabit& habit : kBenchHabits) {
    m_habits->setValue(nameOf(habit.key), (m_rules.*habit.length).value());
  }
  m_habits->sync();
  Q_EMIT rulesChanged();
}

void OwnStore::setAside(const QString& path) {
  QString aside = path + QStringLiteral(".unread");
  for (int n = 2; QFileInfo::exists(aside); ++n) {
    aside = path + QStringLiteral(".unread-%1").arg(n);
  }
  QFile::rename(path, aside);
}

void OwnStore::setOwn(const Shelf& own, const QString& gesture) {
  if (own == m_own) return;
  remember(gesture);
  put({own, m_spools});
  // A gesture that led back to where it began is no step.
  if (!gesture.isEmpty() && m_before.back().own == own && m_before.back().spools == m_spools) {
    m_before.pop_back();
    m_gesture.clear();
    Q_EMIT ownChanged();
  }
}

void OwnStore::setSpools(const Spools& spools) {
  if (spools == m_spools) return;
  remember({});
  put({m_own, spools});
}

void OwnStore::undo() {
  if (m_before.empty()) return;
  const Before last = m_before.back();
  m_before.pop_back();
  m_gesture.clear();
  put(last);
}

void OwnStore::remember(const QString& gesture) {
  const bool goesOn = !gesture.isEmpty() && gesture == m_gesture;
  m_gesture = gesture;
  if (goesOn) return;
  m_before.push_back({m_own, m_spools});
  if (m_before.size() > kMostSteps) m_before.erase(m_before.begin());
}

void OwnStore::takeOwn(const Shelf& own) {
  m_own = own;
  m_all = SharedShelf(merged(*m_generic, own));
}

void OwnStore::put(const Before& state) {
  const bool parts = !(state.own == m_own);
  const bool spools = !(state.spools == m_spools);
  if (parts) takeOwn(state.own);
  m_spools = state.spools;
  if (parts) write(nameOf(kParts), writeShelf(m_own));
  if (spools) write(nameOf(kSpools), writeSpools(m_spools));
  if (parts) Q_EMIT ownChanged();
  if (spools) Q_EMIT spoolsChanged();
}

void OwnStore::write(const QString& name, const std::string& text) {
  const QString path = QDir(m_folder).filePath(name);
  QDir().mkpath(m_folder);
  if (m_unread.removeAll(path) > 0) setAside(path);
  const QString why = writeWhole(path, QByteArray::fromStdString(text));
  if (why.isEmpty()) return;
  Q_EMIT failed(tr("%1 could not be written; it stays as it was. %2").arg(path, why));
}

}  // namespace grainwise::ui
