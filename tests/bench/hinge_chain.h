// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "core/air/cast_model.h"

struct mjData_;
struct mjModel_;

namespace grainwise::bench {

/// The bare chain of a cast as a chain of hinges in MuJoCo: point masses at the links' ends, gravity,
/// its RK4 with a fixed step, contacts and constraints switched off.
class HingeChain {
 public:
  HingeChain(const CastModel& model, double step_s);
  ~HingeChain();
  HingeChain(const HingeChain&) = delete;
  HingeChain& operator=(const HingeChain&) = delete;

  void step();
  /// To the end of the span, the last step cut to it.
  void run(double span_s);
  /// Of the links, from the x axis.
  [[nodiscard]] std::vector<double> angles() const;

 private:
  struct Parts;
  std::unique_ptr<Parts> m_parts;
};

}  // namespace grainwise::bench
