#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""locale_test.py GRAINWISE ROOT: every command answers byte for byte the same in a locale with a decimal
comma and another language as in the C locale. The locales are made for the run (localedef), so that the
C library, too, would write a comma if it were asked. Exits 1 when an answer differs."""
import os
import pathlib
import subprocess
import sys
import tempfile

PROGRAM, ROOT = sys.argv[1], pathlib.Path(sys.argv[2])
SAMPLES = ROOT / "sample-rigs"
RIG, OTHER = SAMPLES / "01-plain-winter.rig.json", SAMPLES / "02-slot.rig.json"
POOLS, SPOOLS = SAMPLES / "corrow.pools.json", SAMPLES / "bench.spools.json"
LOCALES = ("de_DE", "nb_NO", "es_ES")
COMMANDS = [
    ["--help"],
    ["report", RIG], ["report", RIG, "--json"], ["report", RIG, "--csv"],
    ["compare", RIG, OTHER], ["compare", RIG, OTHER, "--json"],
    ["choose", RIG, "--pools", POOLS], ["fix", RIG, "--json"],
    ["cut", RIG, "--spools", SPOOLS], ["cut", RIG, "--spools", SPOOLS, "--json"],
    ["check", *sorted(SAMPLES.glob("*.json"))],
    ["report", ROOT / "README.md"],
]


def answer(words, locale, folder):
    env = {"PATH": os.environ["PATH"], "LC_ALL": locale, "LANG": locale, "LANGUAGE": locale[:2]}
    env |= {"LOCPATH": str(folder)} if locale != "C" else {}
    env |= {k: v for k, v in os.environ.items() if k.endswith("SAN_OPTIONS")}
    got = subprocess.run([PROGRAM, *map(str, words)], env=env, capture_output=True, timeout=120,
                         stdin=subprocess.DEVNULL)
    return got.returncode, got.stdout, got.stderr


def made(folder, locale):
    """Whether the locale is there for programs and writes 3.5 with a comma."""
    subprocess.run(["localedef", "-i", locale, "-f", "UTF-8", folder / f"{locale}.UTF-8"],
                   capture_output=True, check=True)
    env = {"PATH": os.environ["PATH"], "LOCPATH": str(folder), "LC_ALL": f"{locale}.UTF-8"}
    said = subprocess.run(["printf", "%.1f", "3,5"], env=env, capture_output=True, text=True)
    return said.stdout == "3,5"


def main():
    faults = []
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for locale in LOCALES:
            if not made(folder, locale):
                faults.append(f"{locale}: the locale writes no comma; nothing was tested")
        for words in COMMANDS:
            plain = answer(words, "C", folder)
            if not plain[1] and not plain[2]:
                faults.append(f"{words[0]}: said nothing at all")
            for locale in LOCALES:
                if answer(words, f"{locale}.UTF-8", folder) != plain:
                    faults.append(f"grainwise {' '.join(map(str, words))}: differs in {locale}")
    print("\n".join(faults) if faults else "commands: the same in every locale")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
