// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/measured_words.h"

#include <QStringList>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

QString joined(QString first, const QStringList& more) {
  for (const QString& each : more) first = Words::tr("%1; %2", "one fact, the next").arg(first, each);
  return first;
}

}  // namespace

QString measuredWords(const CurrentFit& fit, DisplayUnits units) {
  const QString speed = speedText(fit.speed, units);
  const QString first =
      fit.plusMinus
          ? Words::tr("Measured: %1, give or take %2").arg(speed, speedText(*fit.plusMinus, units))
          : Words::tr("Measured: %1").arg(speed);
  QStringList more;
  if (fit.stated) more << Words::tr("stated %1").arg(speedText(*fit.stated, units));
  if (fit.on) more << QString::fromStdString(*fit.on);
  return joined(first, more);
}

QString timedWords(const Timed& timed, DisplayUnits units) {
  const QString rate = rateText(timed.rate, units);
  const QString first =
      timed.plusMinus
          ? Words::tr("Timed: %1, give or take %2").arg(rate, rateText(*timed.plusMinus, units))
          : Words::tr("Timed: %1").arg(rate);
  QStringList more;
  if (timed.rated) more << Words::tr("rated %1").arg(rateText(timed.rated->rodEnd, units));
  if (timed.on) more << QString::fromStdString(*timed.on);
  return joined(first, more);
}

QString sinkRateText(const Section& section, DisplayUnits units) {
  const QString rate = rateText(section.sinkRate->rodEnd, units);
  return timedOf(section) ? Words::tr("%1 timed", "a sink rate").arg(rate) : rate;
}

QString currentText(FeetPerSecond surface, const std::optional<CurrentFit>& measured, DisplayUnits units) {
  const QString speed = speedText(surface, units);
  return holding(measured, surface) ? Words::tr("%1 measured").arg(speed) : speed;
}

}  // namespace grainwise::ui
