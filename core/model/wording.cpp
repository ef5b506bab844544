// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/wording.h"

#include "core/model/limits.h"

namespace grainwise {

Wording::Wording(double number) : m_text(shortest(number)), m_number(true) {}
Wording::Wording(int number) : m_text(std::to_string(number)), m_number(true) {}
Wording::Wording(std::size_t number) : m_text(std::to_string(number)), m_number(true) {}

Wording Wording::sentence(const char* form) {
  Wording wording(form);
  wording.m_form = form;
  return wording;
}

Wording Wording::arg(Wording what) const {
  Wording filled = *this;
  filled.m_args.push_back(std::move(what));
  // Anew from the form: what stands in one place may itself look like another place.
  filled.m_text.clear();
  for (const char* at = m_form; *at != '\0'; ++at) {
    const int place = *at == '%' && at[1] >= '1' && at[1] <= '9' ? at[1] - '1' : -1;
    if (place >= 0 && place < static_cast<int>(filled.m_args.size())) {
      filled.m_text += filled.m_args[static_cast<std::size_t>(place)].text();
      ++at;
    } else {
      filled.m_text += *at;
    }
  }
  return filled;
}

}  // namespace grainwise
