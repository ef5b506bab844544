// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/work/analysis_feed.h"

#include <QMetaObject>

#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"

namespace grainwise::ui {

AnalysisFeed::AnalysisFeed(RigDocument* document, QObject* parent)
    : QObject(parent), m_document(document) {
  connect(document, &RigDocument::rigChanged, this, &AnalysisFeed::schedule);
  run();
}

void AnalysisFeed::setConditions(const Conditions& conditions) {
  m_conditions = conditions;
  schedule();
}

void AnalysisFeed::follow(const Preferences* preferences) {
  if (m_preferences != nullptr) disconnect(m_preferences, nullptr, this, nullptr);
  m_preferences = preferences;
  if (preferences) connect(preferences, &Preferences::rulesChanged, this, &AnalysisFeed::takeRules);
  takeRules();
}

void AnalysisFeed::takeRules() {
  const Rules rules = rulesOf(m_preferences);
  if (rules == m_conditions.rules) return;
  m_conditions.rules = rules;
  schedule();
}

void AnalysisFeed::refineDepth(const DepthBand& band) {
  // Where the fly floats or nothing pulls it under there is no depth to make surer.
  if (!m_analysis->depthBand || m_analysis->depthBand == band) return;
  auto refined = std::make_shared<Analysis>(*m_analysis);
  refined->depthBand = band;
  m_analysis = std::move(refined);
  Q_EMIT depthRefined();
}

void AnalysisFeed::schedule() {
  if (m_scheduled) return;
  m_scheduled = true;
  QMetaObject::invokeMethod(this, &AnalysisFeed::run, Qt::QueuedConnection);
}

void AnalysisFeed::run() {
  m_scheduled = false;
  if (m_document == nullptr) return;
  m_rig = m_document->shown();
  m_analysis = std::make_shared<const Analysis>(analyse(*m_rig, m_conditions));
  ++m_runs;
  Q_EMIT analysisChanged();
}

}  // namespace grainwise::ui
