// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/material/section_properties.h"
#include "core/model/problem.h"
#include "core/model/rig.h"

namespace grainwise {

/// Where a section states more than the pair that fixes it, the statements must agree within 2 % of
/// mass per foot (a stated sink rate: 1 in/s); otherwise one problem names both. Pointers below `at`.
Problems checkAgreement(const Part& part, const std::string& at = "");
Problems checkAgreement(const Rig& rig, const std::string& at = "");

/// A derived density outside what is plausible (over 20 g/cm3 or under 0.3): a
/// warning in words for the report and the field, never a refusal. Empty: nothing to say.
std::vector<Wording> implausible(const Part& part, double scale);
/// The same of one section whose properties are known already, without its number.
std::optional<Wording> implausible(const Section& section, const SectionProperties& is);

}  // namespace grainwise
