#!/usr/bin/env python3
"""check_layers.py ROOT: refuses any include against the architecture's arrows, any Qt header in
core/, any Qt Test verification macro inside a test, any second place that writes files, and any source
file over 600 lines. Prints a
line a find and exits 1 when there is one. Run with --selftest to see that it can fail."""
import pathlib
import re
import sys

# room -> the rooms that it may include besides itself (DEVELOPERS.md, the one picture)
UNITS = {"core/units"}
MODEL = UNITS | {"core/model"}
MATERIAL = MODEL | {"core/numerics", "core/material"}
MASS = MATERIAL - {"core/numerics"} | {"core/mass"}
PHYSICS = MASS | {"core/numerics"}
ANALYSIS = PHYSICS | {"core/air", "core/water", "core/bench", "core/analysis"}
CORE_TOP = ANALYSIS | {"core/compare", "core/calibrate", "core/choose", "core/report", "core/io"}
UI_BASE = CORE_TOP | {"ui/theme", "ui/text"}
UI_DOC = UI_BASE | {"ui/document"}
UI_WORK = UI_DOC | {"ui/work"}
UI_VIEW = UI_WORK | {"ui/strip"}
ALLOWED = {
    "core/units": set(),
    "core/numerics": set(),
    "core/model": UNITS,
    "core/material": MODEL | {"core/numerics"},
    "core/mass": MODEL | {"core/material"},
    "core/io": MODEL | {"core/material"},
    "core/air": PHYSICS,
    "core/water": PHYSICS,
    "core/bench": PHYSICS - {"core/numerics"},
    "core/analysis": ANALYSIS - {"core/numerics"},
    "core/compare": ANALYSIS - {"core/numerics"},
    "core/calibrate": PHYSICS | {"core/water", "core/analysis"},
    "core/choose": ANALYSIS - {"core/numerics"},
    "core/report": ANALYSIS - {"core/numerics"} | {"core/compare", "core/calibrate", "core/choose"},
    "ui/theme": set(),
    "ui/text": CORE_TOP - {"core/numerics"} | {"ui/theme"},
    "ui/document": UI_BASE,
    "ui/work": UI_DOC,
    "ui/strip": UI_WORK,
    "ui/charts": UI_VIEW,
    "ui/panels": UI_VIEW | {"ui/charts"},
    "ui/clinic": UI_VIEW | {"ui/charts", "ui/panels"},
    "ui/compare": UI_VIEW | {"ui/charts", "ui/panels"},
    "ui/print": UI_VIEW | {"ui/charts", "ui/panels"},
    "ui/window": UI_VIEW | {"ui/charts", "ui/panels", "ui/compare", "ui/clinic", "ui/print"},
    "app": CORE_TOP | {"ui/window", "ui/document", "ui/theme", "ui/text", "ui/print"},
}
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^">]+)[">]', re.M)
QT_HEADER = re.compile(r"^(Q[A-Z]\w*|Qt\w*/.*|q[a-z]+\.h)$")
QT_MACRO = re.compile(r"\b(QVERIFY2?|QCOMPARE|QTRY_\w+|QSKIP|QFAIL|QBENCHMARK)\b")
WRITES = re.compile(r"\b(QSaveFile|std::ofstream|fopen)\b")
MOST_LINES = 600


def room_of(path):
    parts = path.split("/")
    return parts[0] if parts[0] == "app" else "/".join(parts[:2])


def faults(path, text):
    """The lines to print for one source file: `path` relative to the root, with its text."""
    found = []
    room = room_of(path)
    for kind, target in INCLUDE.findall(text):
        if path.startswith("core/") and QT_HEADER.match(target):
            found.append(f"{path}: core/ is free of Qt, but includes <{target}>")
        if kind != '"' or path.startswith("tests/"):
            continue
        other = room_of(target)
        if other != room and other not in ALLOWED.get(room, set()):
            found.append(f"{path}: {room} may not include {other} ({target})")
    if not path.startswith("tests/") and room not in ALLOWED:
        found.append(f"{path}: {room} is no room of the architecture")
    if path.startswith("tests/") and QT_MACRO.search(text):
        found.append(f"{path}: a Qt Test macro inside Catch is swallowed; use REQUIRE")
    if not path.startswith("tests/") and room != "ui/document" and WRITES.search(text):
        found.append(f"{path}: files are written by ui/document/whole_file.h, whole or not at all")
    lines = text.count("\n")
    if lines > MOST_LINES:
        found.append(f"{path}: {lines} lines; over {MOST_LINES} it wants a split")
    return found


def selftest():
    bad = [
        ("core/units/x.h", '#include "core/model/rig.h"\n'),
        ("core/air/x.h", '#include "core/water/hang.h"\n'),
        ("core/model/x.h", "#include <QString>\n"),
        ("ui/strip/x.h", '#include "ui/window/main_window.h"\n'),
        ("core/shed/x.h", "\n"),
        ("tests/ui/x.cpp", "QVERIFY(true);\n"),
        ("ui/panels/x.cpp", "QSaveFile file(path);\n"),
        ("core/air/y.cpp", "\n" * 601),
    ]
    for path, text in bad:
        if not faults(path, text):
            print(f"selftest: {path} should have been refused")
            return 1
    return 1 if faults("core/air/x.h", '#include "core/mass/profile.h"\n') else 0


def main():
    root = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else ".").resolve()
    if selftest():
        return 1
    found = []
    for top in ("core", "ui", "app", "tests"):
        for file in sorted((root / top).rglob("*")):
            if file.suffix in (".h", ".cpp"):
                found += faults(str(file.relative_to(root)), file.read_text(encoding="utf-8"))
    print("\n".join(found) if found else "layers: every include follows the architecture")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
