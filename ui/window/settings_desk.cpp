// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_desk.h"

#include "ui/document/own_store.h"
#include "ui/window/settings.h"

namespace grainwise::ui {

SettingsDesk::SettingsDesk(Settings* settings, Look* look, Preferences* preferences, OwnStore* own,
                           QObject* parent)
    : QObject(parent), m_settings(settings), m_look(look), m_preferences(preferences), m_own(own) {
  apply(m_settings->all());
  connect(look, &Look::changed, this, &SettingsDesk::note);
  connect(preferences, &Preferences::rulesChanged, this, &SettingsDesk::note);
  connect(preferences, &Preferences::newRigChanged, this, &SettingsDesk::note);
  connect(preferences, &Preferences::autosaveChanged, this, &SettingsDesk::note);
  connect(own, &OwnStore::rulesChanged, this, &SettingsDesk::note);
}

AllSettings SettingsDesk::now() const {
  return {m_look->scheme(),         m_look->followsSystem(), m_look->typeScale(),
          m_look->reduceMotion(),   m_look->units(),         m_language,
          m_preferences->rules(),   m_preferences->newRig(), m_own->rules(),
          m_preferences->autosave_s()};
}

void SettingsDesk::apply(const AllSettings& all) {
  m_applying = true;
  all.followsSystem ? m_look->followSystem() : m_look->setScheme(all.scheme);
  m_look->setTypeScale(all.typeScale);
  m_look->setReduceMotion(all.reduceMotion);
  m_look->setUnits(all.units);
  m_preferences->setRules(all.rules);
  m_preferences->setNewRig(all.newRig);
  m_preferences->setAutosave(all.autosave_s);
  m_own->setRules(all.bench);
  setLanguage(all.language);
  m_applying = false;
  note();
}

void SettingsDesk::setLanguage(const QString& code) {
  if (code == m_language) return;
  m_language = code;
  note();
  Q_EMIT languageChanged(code);
}

void SettingsDesk::replace(const AllSettings& all) {
  if (all == now()) return;
  m_before = now();
  apply(all);
}

void SettingsDesk::takeBack() {
  if (!m_before) return;
  const AllSettings before = *m_before;
  m_before.reset();
  apply(before);
}

void SettingsDesk::note() {
  if (m_applying) return;
  m_settings->store(now());
  Q_EMIT changed();
}

}  // namespace grainwise::ui
