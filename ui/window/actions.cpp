// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/actions.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QUndoGroup>
#include <QWidget>
#include <array>
#include <utility>

#include "ui/theme/language.h"
#include "ui/theme/look.h"
#include "ui/window/settings.h"

namespace grainwise::ui {
namespace {
constexpr double kTypeStep = 0.1;
}

Actions::Actions(Look* look, QUndoGroup* stacks, QWidget* window)
    : QObject(window), m_look(look), m_window(window) {
  m_menu = new QMenu(tr("Menu"), window);
  m_units = new QMenu(tr("Units"), window);
  m_recent = new QMenu(tr("Open recent"), window);
  addFile(m_menu->addMenu(tr("&File")));
  addEdit(m_menu->addMenu(tr("&Edit")), stacks);
  m_faces = new QActionGroup(this);
  m_view = m_menu->addMenu(tr("&View"));
  addView(m_view);
  addCompare(m_menu->addMenu(tr("&Compare")));
  addClinic(m_menu->addMenu(tr("C&linic")));
  addUnits();
  m_menu->addMenu(m_units);
  QMenu* helpMenu = m_menu->addMenu(tr("&Help"));
  help = add(helpMenu, QStringLiteral("help"), tr("Help"), QKeySequence::HelpContents);
  whatsThis = add(helpMenu, QStringLiteral("whatsThis"), tr("What is this? (where the keyboard is)"),
                  QKeySequence(Qt::SHIFT | Qt::Key_F1));
  pointAndAsk = add(helpMenu, QStringLiteral("pointAndAsk"), tr("What is this? (point at it)"),
                    QKeySequence(Qt::CTRL | Qt::Key_F1));
  m_samples = helpMenu->addMenu(tr("Sample decks and rigs"));
  about = add(helpMenu, QStringLiteral("about"), tr("About Grainwise"));
  m_menu->addSeparator();
  quit = add(m_menu, QStringLiteral("quit"), tr("Quit"), QKeySequence::Quit);
  // A tooltip says why an action cannot be used.
  for (QMenu* one : m_menu->findChildren<QMenu*>()) one->setToolTipsVisible(true);
}

QAction* Actions::add(QMenu* menu, const QString& name, const QString& words,
                      const QKeySequence& key) {
  auto* action = new QAction(words, this);
  action->setObjectName(name);
  action->setShortcut(key);
  menu->addAction(action);
  m_window->addAction(action);
  m_all.append(action);
  return action;
}

void Actions::addFile(QMenu* menu) {
  newRig = add(menu, QStringLiteral("newRig"), tr("New, empty line"), QKeySequence::New);
  fromRod = add(menu, QStringLiteral("fromRod"), tr("Start from a rod…"),
                QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
  open = add(menu, QStringLiteral("open"), tr("Open…"), QKeySequence::Open);
  menu->addMenu(m_recent);
  menu->addSeparator();
  save = add(menu, QStringLiteral("save"), tr("Save"), QKeySequence::Save);
  saveAs = add(menu, QStringLiteral("saveAs"), tr("Save as…"),
               QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
  menu->addSeparator();
  print = add(menu, QStringLiteral("print"), tr("Handout on paper…"), QKeySequence::Print);
  exportFile = add(menu, QStringLiteral("exportFile"), tr("Handout as PDF or picture…"),
                   QKeySequence(Qt::CTRL | Qt::Key_E));
  m_out = menu->addMenu(tr("Pictures and tables"));
}

QAction* Actions::addFace(const QString& key, const QString& words) {
  auto* action = new QAction(words, this);
  action->setObjectName(QStringLiteral("face_") + key);
  action->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(m_faces->actions().size() + 1)));
  action->setCheckable(true);
  m_faces->addAction(action);
  m_view->insertAction(m_firstOfView, action);
  m_window->addAction(action);
  m_all.append(action);
  return action;
}

void Actions::addEdit(QMenu* menu, QUndoGroup* stacks) {
  const auto adopt = [&](QAction* action, const char* name, const QKeySequence& key) {
    action->setObjectName(QLatin1String(name));
    action->setShortcut(key);
    menu->addAction(action);
    m_window->addAction(action);
    m_all.append(action);
    return action;
  };
  undo = adopt(stacks->createUndoAction(this, tr("Undo")), "undo", QKeySequence::Undo);
  const QKeySequence again(Qt::CTRL | Qt::SHIFT | Qt::Key_Z);
  redo = adopt(stacks->createRedoAction(this, tr("Redo")), "redo", again);
  redo->setShortcuts({again, QKeySequence(Qt::CTRL | Qt::Key_Y)});
  menu->addSeparator();
  // Enter, Alt+Left, Alt+Right, Delete and Ctrl+D belong to the line: it has the focus then, and in
  // a text field the same keys edit text. The menu shows them; the line takes them.
  const auto ofLine = [&](const char* name, const QString& words, const QString& key) {
    return add(menu, QLatin1String(name), words + QLatin1Char('\t') + key);
  };
  editPart = ofLine("editPart", tr("Edit the part"), tr("Enter"));
  moveToRod = ofLine("moveToRod", tr("Move towards the rod"), tr("Alt+Left"));
  moveToFly = ofLine("moveToFly", tr("Move towards the fly"), tr("Alt+Right"));
  duplicate = ofLine("duplicate", tr("Duplicate"), tr("Ctrl+D"));
  remove = ofLine("remove", tr("Remove"), tr("Delete"));
  menu->addSeparator();
  copyPicture = add(menu, QStringLiteral("copyPicture"), tr("Copy picture"),
                    QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I));
  copyTable = add(menu, QStringLiteral("copyTable"), tr("Copy table"),
                  QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T));
  menu->addSeparator();
  rename = add(menu, QStringLiteral("rename"), tr("Name and notes…"), QKeySequence(Qt::Key_F9));
  rod = add(menu, QStringLiteral("rod"), tr("Rod…"), QKeySequence(Qt::CTRL | Qt::Key_R));
  water = add(menu, QStringLiteral("water"), tr("Water…"), QKeySequence(Qt::CTRL | Qt::Key_W));
  menu->addSeparator();
  settings = add(menu, QStringLiteral("settings"), tr("Settings…"), QKeySequence(Qt::CTRL | Qt::Key_Comma));
  settings->setMenuRole(QAction::PreferencesRole);
}

QAction* Actions::addChoice(QMenu* menu, QActionGroup* group, const QString& words, bool checked) {
  QAction* action = menu->addAction(words);
  action->setCheckable(true);
  action->setChecked(checked);
  group->addAction(action);
  m_all.append(action);
  return action;
}

void Actions::addView(QMenu* menu) {
  m_firstOfView = menu->addSeparator();
  shelf = add(menu, QStringLiteral("shelf"), tr("Shelf"), QKeySequence(Qt::Key_F2));
  part = add(menu, QStringLiteral("part"), tr("Part"), QKeySequence(Qt::Key_F3));
  make = add(menu, QStringLiteral("make"), tr("Make"), QKeySequence(Qt::Key_F7));
  weigh = add(menu, QStringLiteral("weighIn"), tr("Weigh in") + QLatin1Char('\t') + tr("W"));
  fixes = add(menu, QStringLiteral("fixes"), tr("Fixes"), QKeySequence(Qt::Key_F6));
  tips = add(menu, QStringLiteral("tips"), tr("Tips"), QKeySequence(Qt::Key_F8));
  pools = add(menu, QStringLiteral("pools"), tr("Pools"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
  wallet = add(menu, QStringLiteral("wallet"), tr("Pack a wallet…"),
               QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
  cast = add(menu, QStringLiteral("cast"), tr("Cast"), QKeySequence(Qt::Key_F4));
  river = add(menu, QStringLiteral("river"), tr("River"), QKeySequence(Qt::Key_F5));
  depths = add(menu, QStringLiteral("depths"), tr("Depths in all pools"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D));
  menu->addSeparator();
  auto* schemes = new QActionGroup(this);
  QAction* asSystem = addChoice(menu, schemes, tr("As the system"), m_look->followsSystem());
  asSystem->setObjectName(QStringLiteral("scheme_system"));
  connect(asSystem, &QAction::triggered, m_look, &Look::followSystem);
  connect(m_look, &Look::changed, asSystem,
          [this, asSystem] { asSystem->setChecked(m_look->followsSystem()); });
  const std::array<std::pair<Scheme, QString>, 4> names{{{Scheme::light, tr("Light")},
                                                         {Scheme::dark, tr("Dark")},
                                                         {Scheme::sunlight, tr("Sunlight")},
                                                         {Scheme::projector, tr("Projector")}}};
  for (const auto& [scheme, words] : names) {
    const auto chosen = [this, scheme = scheme] {
      return !m_look->followsSystem() && m_look->scheme() == scheme;
    };
    QAction* choice = addChoice(menu, schemes, words, chosen());
    connect(choice, &QAction::triggered, this, [this, scheme = scheme] { m_look->setScheme(scheme); });
    connect(m_look, &Look::changed, choice, [choice, chosen] { choice->setChecked(chosen()); });
  }
  menu->addSeparator();
  larger = add(menu, QStringLiteral("larger"), tr("Larger type"), QKeySequence::ZoomIn);
  smaller = add(menu, QStringLiteral("smaller"), tr("Smaller type"), QKeySequence::ZoomOut);
  connect(larger, &QAction::triggered, this,
          [this] { m_look->setTypeScale(m_look->typeScale() + kTypeStep); });
  connect(smaller, &QAction::triggered, this,
          [this] { m_look->setTypeScale(m_look->typeScale() - kTypeStep); });
  QAction* still = menu->addAction(tr("Reduce motion"));
  still->setCheckable(true);
  still->setChecked(m_look->reduceMotion());
  connect(still, &QAction::toggled, m_look, &Look::setReduceMotion);
  m_all.append(still);
  addLanguages(menu->addMenu(tr("Language")));
}

void Actions::addLanguages(QMenu* menu) {
  auto* group = m_languages = new QActionGroup(this);
  const QString now = Settings().language();
  QList<Language> all = languages();
  all.prepend({QString(), tr("As the system")});
  for (const Language& one : std::as_const(all)) {
    QAction* choice = addChoice(menu, group, one.name, one.code == now);
    choice->setObjectName(QStringLiteral("language_") + one.code);
    connect(choice, &QAction::triggered, this, [this, code = one.code] { Q_EMIT languageChosen(code); });
  }
}

void Actions::showLanguage(const QString& code) {
  for (QAction* choice : m_languages->actions()) {
    choice->setChecked(choice->objectName() == QStringLiteral("language_") + code);
  }
}

void Actions::addCompare(QMenu* menu) {
  swapRigs = add(menu, QStringLiteral("swapRigsAction"), tr("Swap A and B"), QKeySequence(Qt::Key_X));
  copyAcross = add(menu, QStringLiteral("copyAcross"), tr("Copy this rig to the other"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C));
  alignFly = add(menu, QStringLiteral("alignFlyAction"), tr("Fly to fly, or rear to rear"),
                 QKeySequence(Qt::CTRL | Qt::Key_L));
  oneWater = add(menu, QStringLiteral("oneWaterAction"), tr("One water, or each its own"),
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W));
}

void Actions::addClinic(QMenu* menu) {
  takeCard = add(menu, QStringLiteral("takeCard"), tr("Card from this picture"),
                 QKeySequence(Qt::CTRL | Qt::Key_K));
  showDeck = add(menu, QStringLiteral("showDeck"), tr("Show the deck"), QKeySequence(Qt::Key_F11));
  showFromHere = add(menu, QStringLiteral("showFromHere"), tr("Show from the chosen card"),
                     QKeySequence(Qt::SHIFT | Qt::Key_F11));
  printFour = add(menu, QStringLiteral("printFour"), tr("Four cards a page on paper…"));
}

void Actions::addUnits() {
  const auto pair = [this](const QString& trade, const QString& metric, bool DisplayUnits::*field) {
    auto* group = new QActionGroup(this);
    for (const bool on : {false, true}) {
      QAction* choice = addChoice(m_units, group, on ? metric : trade, (m_look->units().*field) == on);
      connect(choice, &QAction::triggered, this, [this, field, on] {
        DisplayUnits units = m_look->units();
        units.*field = on;
        m_look->setUnits(units);
      });
      connect(m_look, &Look::changed, choice, [this, choice, field, on] {
        choice->setChecked((m_look->units().*field) == on);
      });
    }
  };
  pair(tr("Feet and inches"), tr("Metres and millimetres"), &DisplayUnits::metres);
  m_units->addSeparator();
  pair(tr("Grains"), tr("Grams"), &DisplayUnits::grams);
  m_units->addSeparator();
  pair(tr("Fahrenheit"), tr("Celsius"), &DisplayUnits::celsius);
}

}  // namespace grainwise::ui
