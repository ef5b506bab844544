#!/usr/bin/env python3
"""end_to_end.py GRAINWISE RIG: drives the real window from outside with a real pointer and real keys (it
must run under tests/support/with_screen.sh). The program tells on stdout what stands on the line and where
its widgets are; any Qt warning ends it. Prints a line a step; exits 1 at the first that does not hold."""
import os
import subprocess
import sys
import time

WAIT_S = 10


class Window:
    def __init__(self, program, rig):
        env = {**os.environ, "GRAINWISE_TRACE": "1", "QT_FATAL_WARNINGS": "1"}
        self.log = open(os.environ["XDG_RUNTIME_DIR"] + "/trace", "w+")
        self.process = subprocess.Popen([program, rig], stdout=self.log, env=env)
        self.seen = 0
        self.parts, self.at = [], {}
        if not self.settle():
            sys.exit("the window did not settle")

    def settle(self, holds=lambda parts: True):
        """Waits for a new report in which `holds` is true of the parts; False when none comes."""
        end = time.time() + WAIT_S
        while time.time() < end:
            if self.process.poll() is not None:
                sys.exit(f"the program ended with {self.process.returncode}")
            reports = open(self.log.name).read().split("settled\n")[:-1]
            if len(reports) > self.seen:
                self.seen = len(reports)
                self.read(reports[-1])
                if holds(self.parts):
                    return True
            time.sleep(0.05)
        return False

    def rest(self):
        """Lets everything come to rest and returns the parts of the last report."""
        time.sleep(1.0)
        reports = open(self.log.name).read().split("settled\n")[:-1]
        self.seen = len(reports)
        self.read(reports[-1])
        return self.parts

    def read(self, report):
        self.at = {}
        for line in report.splitlines():
            words = line.split()
            if words and words[0] == "parts":
                self.parts = words[1:]
            elif words and words[0] == "at":
                self.at[words[1]] = tuple(int(w) for w in words[2:])

    def middle(self, name):
        x, y, w, h = self.at[name]
        return x + w // 2, y + h // 2


def xdo(*words):
    subprocess.run(["xdotool", *map(str, words)], check=True)


def drag(start, end, escape=False):
    (x0, y0), (x1, y1) = start, end
    xdo("mousemove", x0, y0, "sleep", 0.1, "mousedown", 1, "sleep", 0.05)
    for step in range(1, 13):
        xdo("mousemove", x0 + (x1 - x0) * step // 12, y0 + (y1 - y0) * step // 12, "sleep", 0.03)
    xdo("sleep", 0.2)
    if escape:
        xdo("key", "Escape", "sleep", 0.1)
    xdo("mouseup", 1, "sleep", 0.2)


def hold(what, holds):
    print(("ok    " if holds else "WRONG ") + what, flush=True)
    if not holds:
        sys.exit(1)


def main():
    window = Window(*sys.argv[1:3])
    start = list(window.parts)
    hold("the rig of the file stands on the line", start.count("tip") == 1 and start[-1] == "fly")

    x, y, _, _ = window.at["shelfCards"]
    card = (x + 90, y + 34)
    drag(card, window.middle("block2"))
    hold("a card dragged from the Shelf is on the line", window.settle(lambda parts: parts.count("tip") == 2))

    xdo("key", "ctrl+z")
    hold("Ctrl+Z takes it off again", window.settle(lambda parts: parts == start))

    tip = window.middle("block2")
    drag(tip, window.middle("shelfCards"))
    hold("a block dragged off the line is gone", window.settle(lambda parts: "tip" not in parts))
    xdo("key", "ctrl+z")
    hold("Ctrl+Z brings it back", window.settle(lambda parts: parts == start))

    drag(card, window.middle("block2"), escape=True)
    hold("Escape in mid-drag leaves the line as it was", window.rest() == start)

    xdo("mousemove", *window.middle("block3"), "click", 1, "sleep", 0.2, "key", "Delete")
    hold("Delete removes the chosen part", window.settle(lambda parts: parts == start[:3] + start[4:]))
    xdo("key", "ctrl+z")
    hold("and Ctrl+Z brings it back", window.settle(lambda parts: parts == start))
    window.process.terminate()
    window.process.wait()


if __name__ == "__main__":
    main()
