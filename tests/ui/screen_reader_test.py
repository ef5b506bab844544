#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""screen_reader_test.py GRAINWISE SAMPLES: reads the running window over AT-SPI, from outside, as a screen
reader does, and works it by the actions that it offers there. It must run under tests/support/with_screen.sh on a
session bus of its own (dbus-run-session). Prints a line a check; exits 1 when one does not hold."""
import os
import pathlib
import re
import subprocess
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

WAIT_S = 30
# Roles of what a person works: each has to say what it is.
WORKED = {"push button", "check box", "page tab", "radio button", "toggle button", "text", "entry", "combo box", "slider",
          "spin button", "list", "table", "chart", "list item"}
wrong = []


def hold(what, holds, found=""):
    print(("ok    " if holds else "WRONG ") + what + ("" if holds else f": {found}"), flush=True)
    if not holds:
        wrong.append(what)


def attempt(read, otherwise):
    """What a node that may just have gone away says."""
    try:
        return read()
    except GLib.Error:
        return otherwise


def nodes(top):
    """Everything that is on screen, in its order: (role, name, description, node)."""
    found = []

    def walk(node, depth):
        if node is None or depth > 24:
            return
        states = attempt(node.get_state_set, None)
        if states is None or (depth > 0 and not states.contains(Atspi.StateType.SHOWING)):
            return
        found.append((attempt(node.get_role_name, ""), attempt(node.get_name, "") or "",
                      attempt(node.get_description, "") or "", node))
        for i in range(attempt(node.get_child_count, 0)):
            walk(attempt(lambda i=i: node.get_child_at_index(i), None), depth + 1)

    for i in range(attempt(top.get_child_count, 0)):
        walk(top.get_child_at_index(i), 0)
    return found


def until(read):
    """The first true answer within the time; the last one otherwise."""
    end = time.time() + WAIT_S
    while True:
        answer = read()
        if answer or time.time() > end:
            return answer
        time.sleep(0.2)


def program(name):
    desktop = Atspi.get_desktop(0)
    for i in range(desktop.get_child_count()):
        child = attempt(lambda i=i: desktop.get_child_at_index(i), None)
        if child is not None and attempt(child.get_name, "") == name:
            return child
    return None


def named(app, role, pattern):
    for node in nodes(app):
        if node[0] == role and re.search(pattern, node[1]):
            return node
    return None


def act(node, name):
    for i in range(Atspi.Action.get_n_actions(node[3])):
        if Atspi.Action.get_action_name(node[3], i) == name:
            return Atspi.Action.do_action(node[3], i)
    return False


def spoken(app, role, pattern, description):
    """Whether there is one of that role and name whose description says that."""
    def look():
        node = named(app, role, pattern)
        return node is not None and re.search(description, node[2]) and node
    return until(look)


def nameless(app):
    return [f"{role} in {description!r}" for role, name, description, _ in nodes(app) if role in WORKED and not name]


def bench(app):
    until(lambda: named(app, "list item", "^fly"))
    items = [node[1] for node in nodes(app) if node[0] == "list item"]
    hold("the parts of the line are read from the rod to the fly",
         [name.split(",")[0] for name in items[:6]] == ["running line", "head", "tip", "leader", "tippet", "fly"], items)
    hold("a part says its feet, what a foot weighs and its joint",
         "tip, 10 feet, 11 grains a foot, steps down from the head by 0.62: smooth drop" in items, items)
    hold("a junction tag says its figures, what it does and its verdict",
         spoken(app, "push button", "^17.8 to 11: smooth drop, fits$", "steps down from the head by 0.62"))
    hold("the chart says its length, what it weighs and where it is heaviest",
         spoken(app, "chart", "^What each foot weighs$", r"37 ft of line, 671 gr in all, heaviest at .* The cursor is at"))
    tiles = [node[1] for node in nodes(app) if node[0] == "push button" and node[2] == "opens why"]
    hold("five tiles say reading, figures and verdict",
         [tile.split(",")[0] for tile in tiles] == ["Depth", "Hinge", "Tip share", "Fly", "Head on rod"], tiles)


def worked(app):
    act(named(app, "push button", "^Hinge"), "Press")
    hold("a tile pressed from outside opens its why", until(lambda: named(app, "page tab", "^Why: Hinge$")))
    act(named(app, "list item", "^tip, 10 feet"), "Press")
    hold("a part pressed from outside opens for editing", until(lambda: named(app, "text", "^Name")))
    hold("a refused move leaves the line as it was", act(named(app, "list item", "^fly"), "Increase")
         and named(app, "list item", "^fly"))
    for tab, name, says in (("Cast", "^The cast", "An unrolling loop of"), ("River", "^The swing", "A swing of"),
                            ("Tips", "^Map of the tips", "[0-9]+ fit, [0-9]+ to be watched")):
        act(named(app, "page tab", f"^{tab}$"), "Press")
        hold(f"{tab}: its diagram has a role, a name and a summary", spoken(app, "chart", name, says))
        hold(f"{tab}: nothing to work is without a name", not nameless(app), nameless(app))


def faces(app):
    act(named(app, "page tab", "^Compare$"), "Press")
    hold("Compare: both readings are said", spoken(app, "chart", "^Readings of A and B$", "Hinge: A 17.8 to 11"))
    hold("Compare: the chart says both rigs under the cursor", spoken(app, "chart", "^What each foot weighs, of A and of B$",
                                                                     "A .* B "))
    hold("Compare: nothing to work is without a name", not nameless(app), nameless(app))
    act(named(app, "page tab", "^Clinic$"), "Press")
    until(lambda: named(app, "list", "^Cards of the deck$"))
    hold("Clinic: nothing to work is without a name", not nameless(app), nameless(app))


def main():
    path, samples = sys.argv[1], pathlib.Path(sys.argv[2])
    env = {**os.environ, "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1"}
    process = subprocess.Popen([path, samples / "01-plain-winter.rig.json"], env=env)
    try:
        app = until(lambda: program("grainwise"))
        hold("the program is there for a screen reader", app is not None)
        if app is not None:
            bench(app)
            worked(app)
            faces(app)
    finally:
        process.terminate()
        process.wait()
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
