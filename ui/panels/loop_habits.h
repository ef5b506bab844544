// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/panels/make_page.h"

class QComboBox;

namespace grainwise::ui {

class NumberField;
class OwnStore;

/// How loops, splices and knots are made at this bench: the kind of loop and the line that each takes.
/// Kept with what belongs to the person.
class LoopHabits : public MakePage {
  Q_OBJECT
 public:
  LoopHabits(Look* look, OwnStore* store, QWidget* parent);

 Q_SIGNALS:
  void putOnLine();

 protected:
  void restyle() override;

 private:
  NumberField* addLength(const QString& name, const char* object);
  void showRules();

  OwnStore* m_store;
  QComboBox* m_kind;
  NumberField* m_loop;
  NumberField* m_splice;
  NumberField* m_knot;
  NumberField* m_flyKnot;
};

}  // namespace grainwise::ui
