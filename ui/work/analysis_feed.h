// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <memory>

#include "core/analysis/analysis.h"

namespace grainwise::ui {

class Preferences;
class RigDocument;

/// Follows a document: one `analyse` a turn of the event loop however often the rig changed in it,
/// then one `analysisChanged`. What is shown (preview included) is what is analysed.
class AnalysisFeed : public QObject {
  Q_OBJECT
 public:
  explicit AnalysisFeed(RigDocument* document, QObject* parent = nullptr);

  /// The rig that the present analysis is of, and the analysis.
  [[nodiscard]] std::shared_ptr<const Rig> rig() const { return m_rig; }
  [[nodiscard]] const Analysis& analysis() const { return *m_analysis; }

  void setConditions(const Conditions& conditions);
  [[nodiscard]] const Conditions& conditions() const { return m_conditions; }
  /// Judges by these limits from here on, as they change; nullptr: by the usual ones.
  void follow(const Preferences* preferences);
  [[nodiscard]] const Preferences* preferences() const { return m_preferences; }

  /// A better depth band than the live estimate has been computed for the rig that is analysed.
  void refineDepth(const DepthBand& band);

  /// How often `analyse` ran, for the tests that count recomputation.
  [[nodiscard]] int runs() const { return m_runs; }

 Q_SIGNALS:
  void analysisChanged();
  /// The depth band alone has become surer.
  void depthRefined();

 private:
  void schedule();
  void run();

  void takeRules();

  QPointer<RigDocument> m_document;
  const Preferences* m_preferences = nullptr;
  std::shared_ptr<const Rig> m_rig;
  std::shared_ptr<const Analysis> m_analysis;
  Conditions m_conditions;
  bool m_scheduled = false;
  int m_runs = 0;
};

}  // namespace grainwise::ui
