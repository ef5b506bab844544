// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/model/edits.h"
#include "ui/document/rig_document.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

/// Times one edit of the largest allowed realistic rig (64 parts of 16 sections): to a new Analysis,
/// and to a new picture of the whole window. Prints percentiles; judges nothing.
namespace {

using namespace grainwise;
constexpr int kParts = 64;
constexpr int kSections = 16;

Part linePart(PartKind kind, int salt) {
  Part part;
  part.kind = kind;
  if (kind == PartKind::head) part.style = Style::shortHead;
  if (kind == PartKind::tip) part.style = Style::level;
  for (int i = 0; i < kSections; ++i) {
    Section s;
    s.length = Feet(0.05 + 0.01 * ((i + salt) % 5));
    if (kind == PartKind::leader || kind == PartKind::tippet) {
      s.diameter = Along<Inches>(Inches(0.02 - 0.0005 * i), Inches(0.0195 - 0.0005 * i));
      s.material = Material::nylon;
    } else {
      s.mass = Along<GrainsPerFoot>(GrainsPerFoot(12 + (i + salt) % 3), GrainsPerFoot(11 + i % 3));
      if (kind == PartKind::tip) {
        s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(6 + 0.1 * ((i + salt) % 20)));
      } else {
        s.floats = true;
      }
    }
    part.sections.push_back(s);
  }
  return part;
}

Rig largestRig() {
  Rig rig;
  rig.name = "largest";
  Rod rod;
  rod.length = Feet(13);
  rod.lineNumber = 8;
  rig.rod = rod;
  for (int i = 0; i < 4; ++i) rig.parts.push_back(linePart(PartKind::head, i));
  for (int i = 4; i < kParts - 11; ++i) rig.parts.push_back(linePart(PartKind::tip, i));
  for (int i = 0; i < 10; ++i) {
    rig.parts.push_back(linePart(i < 5 ? PartKind::leader : PartKind::tippet, i));
  }
  Part fly;
  fly.kind = PartKind::fly;
  fly.fly = Fly{};
  fly.fly->dry = Grains(30);
  rig.parts.push_back(fly);
  return rig;
}

Rig edited(const Rig& rig, int turn) {
  const std::size_t at = std::size_t(turn) % (rig.parts.size() - 1);
  Section s = rig.parts[at].sections[3];
  s.length = Feet(0.05 + 0.001 * (turn % 40));
  return edits::replaced(rig, at, edits::withSection(rig.parts[at], 3, s));
}

double ms(std::chrono::steady_clock::duration d) {
  return std::chrono::duration<double, std::milli>(d).count();
}

void print(const char* what, std::vector<double> times, double limit) {
  std::sort(times.begin(), times.end());
  const auto at = [&](double share) { return times[std::size_t(share * double(times.size() - 1))]; };
  std::printf("%-52s p50 %7.3f  p99 %7.3f  worst %7.3f ms  (aim %g)\n", what, at(0.5), at(0.99),
              times.back(), limit);
}

void benchAnalysis(const Rig& rig, int turns) {
  std::vector<double> times;
  double sink = 0;
  for (int i = 0; i < turns; ++i) {
    const auto start = std::chrono::steady_clock::now();
    const Rig next = edited(rig, i);
    const Analysis analysis = analyse(next);
    times.push_back(ms(std::chrono::steady_clock::now() - start));
    sink += analysis.totals.mass.value();
  }
  print("edit to a new Analysis, 64 parts x 16 sections", times, 1.0);
  if (sink < 0) std::puts("");
}

void benchPicture(const char* what, const Rig& rig, bool preview, int turns) {
  ui::MainWindow window(Shelf{});
  window.resize(1920, 1080);
  window.startFrom(rig);
  window.show();
  QEventLoop().processEvents();
  std::vector<double> times;
  for (int i = 0; i < turns; ++i) {
    const auto start = std::chrono::steady_clock::now();
    if (preview) {
      window.document()->setPreview(edited(rig, i));
    } else {
      window.document()->apply(QStringLiteral("edit"), edited(rig, i), QStringLiteral("bench"));
    }
    QApplication::sendPostedEvents();
    QApplication::processEvents();
    times.push_back(ms(std::chrono::steady_clock::now() - start));
  }
  print(what, times, 8.0);
  window.document()->setPreview(std::nullopt);
  window.document()->undoStack()->setClean();
}

Rig plainRig(const Rig& largest) {
  Rig rig = largest;
  std::vector<Part> few;
  for (const std::size_t i : {0, 10, 55, 60, 63}) few.push_back(largest.parts[i]);
  rig.parts = few;
  return rig;
}

}  // namespace

int main(int argc, char** argv) {
  QApplication::setStyle(QStringLiteral("Fusion"));
  QApplication app(argc, argv);
  const Rig rig = largestRig();
  benchAnalysis(rig, 2000);
  benchPicture("edit to a new picture 1920x1080, 64 x 16", rig, false, 300);
  benchPicture("hover to a new picture while dragging, 64 x 16", rig, true, 300);
  benchPicture("edit to a new picture 1920x1080, 5 x 16", plainRig(rig), false, 300);
  benchPicture("hover to a new picture while dragging, 5 x 16", plainRig(rig), true, 300);
  return 0;
}
