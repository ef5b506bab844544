#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""hardening_test.py SOURCE: a build as people make it (no tests, no options) compiles every file of ours
with the stack guarded and copies checked, and links read-only address tables. Configures only; what comes
out of such a build is held by `tests/run --package`. Prints each fault and exits 1."""
import json
import pathlib
import subprocess
import sys
import tempfile

FLAGS = ("-fstack-protector-strong", "-fstack-clash-protection", "-D_FORTIFY_SOURCE=2", "-fPIE",
         "-Werror=format-security")
LINK_FLAGS = ("-z,relro", "-z,now", "-z,noexecstack", "-pie")


def main():
    faults = []
    with tempfile.TemporaryDirectory() as name:
        subprocess.run(["cmake", "-S", sys.argv[1], "-B", name, "-G", "Ninja"], check=True,
                       capture_output=True)
        folder = pathlib.Path(name)
        units = json.loads((folder / "compile_commands.json").read_text())
        ours = [u for u in units if not u["file"].startswith(name)]
        for unit in ours:
            missing = [f for f in FLAGS if f not in unit["command"] and
                       not (f == "-fPIE" and "-fPIC" in unit["command"])]
            if missing:
                faults.append(f"{unit['file']}: built without {missing}")
        link = [line for line in (folder / "build.ninja").read_text().splitlines()
                if line.strip().startswith("LINK_FLAGS")]
        faults += [f"linked without {flag}" for flag in LINK_FLAGS
                   if not any(flag in line for line in link)]
        if len(ours) < 50:
            faults.append(f"only {len(ours)} files were looked at")
    print("\n".join(faults) if faults else f"{len(ours)} files hardened")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
