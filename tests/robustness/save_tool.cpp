// SPDX-License-Identifier: GPL-3.0-or-later
// save_tool loop TARGET RIG RIG: saves the two rigs to TARGET in turn until it is ended from
// outside. save_tool once TARGET RIG: saves the rig once; exits 1 and says why when that is
// refused. save_tool edit TARGET RIG: opens TARGET, turns it into RIG, keeps copies, and waits to
// be ended.
#include <QCoreApplication>
#include <cstdio>
#include <cstring>

#include "core/io/rig_file.h"
#include "ui/document/autosave.h"
#include "ui/document/rig_document.h"

using namespace grainwise;

namespace {

int once(ui::RigDocument& document, const QString& target) {
  const Problems problems = document.saveAs(target);
  for (const Problem& problem : problems) std::fprintf(stderr, "%s\n", describe(problem).c_str());
  return problems.empty() ? 0 : 1;
}

int loop(ui::RigDocument& document, const QString& target, const Rig& one, const Rig& two) {
  std::puts("saving");
  std::fflush(stdout);
  for (;;) {
    document.apply(QStringLiteral("Turn"), document.rig() == one ? two : one);
    if (once(document, target) != 0) return 1;
  }
}

int edit(ui::RigDocument& document, const QString& target, const Rig& rig) {
  if (!document.open(target).empty()) return 1;
  ui::Autosave autosave(&document);
  autosave.setPace(1);
  QObject::connect(&autosave, &ui::Autosave::kept, [] {
    std::puts("kept");
    std::fflush(stdout);
  });
  document.apply(QStringLiteral("Edit"), rig);
  return QCoreApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
  QCoreApplication app(argc, argv);
  QCoreApplication::setOrganizationName(QStringLiteral("grainwise"));
  QCoreApplication::setApplicationName(QStringLiteral("grainwise"));
  if (argc < 4) return 2;
  const auto rig = loadRig(argv[3]);
  if (!rig) return 2;
  const QString target = QString::fromLocal8Bit(argv[2]);
  ui::RigDocument document;
  document.startFrom(*rig);
  if (std::strcmp(argv[1], "edit") == 0) return edit(document, target, *rig);
  if (std::strcmp(argv[1], "loop") != 0) return once(document, target);
  const auto other = loadRig(argc > 4 ? argv[4] : "");
  return other ? loop(document, target, *rig, *other) : 2;
}
