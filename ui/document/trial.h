// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <vector>

#include "core/model/part.h"

namespace grainwise::ui {

class RigDocument;

/// Parts that are looked at before they are taken. They are shown in the place of the rig's own, over its
/// cast, swing and water however those are set meanwhile, until others are tried on, they are taken (one
/// step), called off, or the rig gets other parts. A passing preview goes before them and leaves them.
class Trial : public QObject {
  Q_OBJECT
 public:
  explicit Trial(RigDocument* document, QObject* parent = nullptr);

  /// `what` names it; `step` is what taking it is called. Nothing is tried on where the rig has these parts.
  void tryOn(const QString& what, const QString& step, const std::vector<Part>& parts);
  [[nodiscard]] bool on() const { return m_parts.has_value(); }
  [[nodiscard]] QString what() const { return m_what; }
  /// Nothing while nothing is tried on.
  [[nodiscard]] const std::optional<std::vector<Part>>& parts() const { return m_parts; }
  void take();
  void callOff();

 Q_SIGNALS:
  /// Something else is tried on, or nothing any more.
  void changed();

 private:
  void follow();
  void end();

  RigDocument* m_document;
  std::optional<std::vector<Part>> m_parts;
  std::vector<Part> m_over;  ///< the rig's own, in whose place they stand
  QString m_what;
  QString m_step;
};

}  // namespace grainwise::ui
