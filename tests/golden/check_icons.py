#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""check_icons.py FOLDER: every action icon is one drawing of 24 x 24 in strokes of the one ink that
the window tints, without text, pictures or references; the application's mark and the icons of our
files (in files/) are 48 x 48 in the colours of the look. Prints a line a find and exits 1 when there
is one."""
import pathlib
import re
import sys
import xml.etree.ElementTree as tree

INK = "#1D282D"
PALETTE = {"#F6F4EE", INK, "#4C6470", "#16697A", "#55772F", "#B7791F", "#8F5A10", "#A23B3B"}
SHAPES = {"svg", "g", "path", "circle", "rect", "title"}
NEEDED = {"undo", "redo", "type-smaller", "type-larger", "units", "open", "save", "light", "dark"}
MARK = "grainwise"
FORMATS = {"rig", "shelf", "pools", "spools", "deck"}


def faults(name, text):
    found = []
    root = tree.fromstring(text)
    coloured = name.startswith(MARK)
    side = "48" if coloured else "24"
    size = (root.get("width"), root.get("height"), root.get("viewBox"))
    if size != (side, side, f"0 0 {side} {side}"):
        found.append(f"{name}: it should be {side} x {side}, but is {size}")
    for node in root.iter():
        tag = node.tag.rpartition("}")[2]
        if tag not in SHAPES:
            found.append(f"{name}: <{tag}> does not belong into an icon")
        inks = {node.get(key) for key in ("fill", "stroke")} - {None, "none"}
        if not inks <= (PALETTE if coloured else {INK}):
            found.append(f"{name}: {sorted(inks)} is no colour of ours")
    if "href" in text or re.search(r"\bstyle=", text):
        found.append(f"{name}: no references, no styles")
    return found


def main():
    folder = pathlib.Path(sys.argv[1])
    bad = '<svg width="24" height="24" viewBox="0 0 24 24"><text fill="#FF0000"/></svg>'
    if len(faults("undo", bad)) != 2:
        print("selftest: a bad icon should have been refused twice")
        return 1
    icons = {file.stem: file.read_text(encoding="utf-8") for file in folder.glob("*.svg")}
    icons |= {file.stem: file.read_text(encoding="utf-8") for file in folder.glob("files/*.svg")}
    needed = NEEDED | {MARK} | {f"{MARK}-{name}" for name in FORMATS}
    found = [f"{name}: missing" for name in sorted(needed - icons.keys())]
    for name, text in sorted(icons.items()):
        found += faults(name, text)
    print("\n".join(found) if found else f"icons: {len(icons)} sound")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
