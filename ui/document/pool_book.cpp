// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/pool_book.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "core/io/pools_file.h"
#include "ui/document/whole_file.h"

namespace grainwise::ui {
namespace {
constexpr std::size_t kMostBefore = 100;
}  // namespace

QStringList PoolBook::names() const {
  QStringList list;
  for (const Pool& pool : m_pools.pools) list << QString::fromStdString(pool.name);
  return list;
}

void PoolBook::start(const Pools& pools) {
  m_pools = pools;
  m_before.clear();
  Q_EMIT changed();
}

Problems PoolBook::open(const QString& path) {
  auto pools = loadPools(path.toStdString());
  if (!pools) return pools.error();
  put(std::move(*pools));
  return {};
}

Problems PoolBook::saveAs(const QString& path) const {
  QDir().mkpath(QFileInfo(path).absolutePath());
  const QString why = writeWhole(path, QByteArray::fromStdString(writePools(m_pools)));
  if (why.isEmpty()) return {};
  return {Problem{path.toStdString(), 0, "", why.toStdString(),
                  tr("make room, or save elsewhere").toStdString()}};
}

void PoolBook::put(Pools pools) {
  if (pools == m_pools) return;
  m_before.push_back(std::move(m_pools));
  if (m_before.size() > kMostBefore) m_before.erase(m_before.begin());
  m_pools = std::move(pools);
  Q_EMIT changed();
  if (m_store.isEmpty()) return;
  const Problems problems = saveAs(m_store);
  if (!problems.empty()) Q_EMIT notStored(QString::fromStdString(problems.front().what.text()));
}

void PoolBook::replace(std::size_t index, const Pool& pool) {
  if (index >= m_pools.pools.size()) return;
  Pools pools = m_pools;
  pools.pools[index] = pool;
  put(std::move(pools));
}

void PoolBook::add(const Pool& pool) {
  Pools pools = m_pools;
  pools.pools.push_back(pool);
  put(std::move(pools));
}

void PoolBook::remove(std::size_t index) {
  if (index >= m_pools.pools.size()) return;
  Pools pools = m_pools;
  pools.pools.erase(pools.pools.begin() + static_cast<std::ptrdiff_t>(index));
  put(std::move(pools));
}

void PoolBook::takeBack() {
  if (m_before.empty()) return;
  Pools pools = std::move(m_before.back());
  m_before.pop_back();
  put(std::move(pools));
  m_before.pop_back();  // what was taken back is gone
}

std::optional<Pool> PoolBook::poolOf(const Rig& rig) const {
  if (!rig.water || !rig.water->name || !rig.water->surfaceSpeed || !rig.water->depth) {
    return std::nullopt;
  }
  const auto found = std::find_if(m_pools.pools.begin(), m_pools.pools.end(),
                                  [&](const Pool& p) { return p.name == *rig.water->name; });
  if (found == m_pools.pools.end()) return std::nullopt;
  Pool pool = *found;
  pool.surfaceSpeed = *rig.water->surfaceSpeed;
  pool.depth = *rig.water->depth;
  pool.temperature = rig.water->temperature;
  pool.salinity = rig.water->salinity;
  pool.bed = rig.water->bed;
  pool.measured = rig.water->measured;
  pool.angle.reset();  // the rig says how it is fished
  pool.mend.reset();
  return pool;
}

std::string PoolBook::freeName(const QString& wanted) const {
  const QStringList taken = names();
  QString name = wanted;
  for (int i = 2; taken.contains(name); ++i) name = QStringLiteral("%1 %2").arg(wanted).arg(i);
  return name.toStdString();
}

}  // namespace grainwise::ui
