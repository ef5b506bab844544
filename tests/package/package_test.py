#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""package_test.py SOURCE BUILD install|deb: installs the built program below a temporary root, or packs
and unpacks the Debian package there, and holds what lies there: every file, what the validators of the
desktop say, types and icons of our files, the man page, and the program started from there with nothing
of the checkout but a sample. Needs a screen (tests/support/with_screen.sh). Prints each fault; exits 1."""
import gzip
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import time

SOURCE, BUILD = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
FORMATS = ("rig", "shelf", "pools", "spools", "deck")
PREFIX = "usr"
FILES = [
    "bin/grainwise",
    "share/applications/grainwise.desktop",
    "share/metainfo/local.grainwise.grainwise.metainfo.xml",
    "share/mime/packages/grainwise.xml",
    "share/icons/hicolor/scalable/apps/grainwise.svg",
    "share/icons/hicolor/48x48/apps/grainwise.png",
    "share/man/man1/grainwise.1.gz",
    "share/doc/grainwise/copyright",
    "share/doc/grainwise/README.md",
    *[f"share/icons/hicolor/scalable/mimetypes/grainwise-{name}.svg" for name in FORMATS],
    *[f"share/grainwise/schema/{name}.schema.json" for name in FORMATS],
]
START_S = 20
faults = []


def expect(holds, what):
    if not holds:
        faults.append(what)


def run(*words, **options):
    return subprocess.run([str(w) for w in words], capture_output=True, text=True, timeout=120, **options)


def must_pass(*words, **options):
    """The output of a validator that has to be content and silent about faults."""
    got = run(*words, **options)
    expect(got.returncode == 0, f"{words[0]} {words[-1]}: {got.stdout}{got.stderr}")
    return got


def installed(root):
    options = {"env": {**os.environ, "DESTDIR": str(root)}}
    must_pass("cmake", "--install", BUILD, "--prefix", f"/{PREFIX}", **options)


def unpacked(root):
    """The Debian package's files under `root`; holds its control data on the way."""
    with tempfile.TemporaryDirectory() as name:
        out = pathlib.Path(name)
        must_pass("cpack", "-G", "DEB", "-B", out, "--config", BUILD / "CPackConfig.cmake", cwd=out)
        packages = list(out.glob("grainwise_*.deb"))
        expect(len(packages) == 1, f"cpack made {packages}")
        control = run("dpkg-deb", "-f", packages[0]).stdout
        hold_control(control)
        lines = run("dpkg-deb", "-c", packages[0]).stdout.splitlines()
        for line in lines:
            mode, owner = line.split()[:2]
            expect(owner == "root/root", f"owned by {owner}: {line}")
            expect(mode in ("drwxr-xr-x", "-rw-r--r--", "-rwxr-xr-x"), f"mode: {line}")
        must_pass("dpkg-deb", "-x", packages[0], root)


def hold_control(control):
    fields = dict(re.findall(r"^(\S+): (.*)$", control, re.MULTILINE))
    expect(fields.get("Package") == "grainwise", f"package {fields.get('Package')}")
    expect(fields.get("Version") == version(), f"version {fields.get('Version')}")
    needs = {need.split()[0] for need in fields.get("Depends", "").split(", ") if need}
    for name in ("libc6", "libstdc++6", "libqt6core6", "libqt6gui6", "libqt6widgets6", "libqt6charts6",
                 "libqt6svg6"):
        expect(any(need.startswith(name) for need in needs), f"the package does not need {name}: {needs}")
    expect(not any("network" in need for need in needs), f"the package needs a network library: {needs}")
    expect("qt6-wayland" in fields.get("Recommends", ""), "the package recommends no Wayland")


def version():
    return re.search(r"project\(grainwise VERSION (\S+)", (SOURCE / "CMakeLists.txt").read_text())[1]


def hold_files(root):
    found = {str(p.relative_to(root / PREFIX)) for p in root.rglob("*") if not p.is_dir()}
    for name in FILES:
        expect(name in found, f"{name} is not installed")
    samples = {p.name for p in (SOURCE / "sample-rigs").glob("*.json")}
    there = {name.rpartition("/")[2] for name in found if name.startswith("share/grainwise/sample-rigs/")}
    expect(there == samples, f"samples that differ: {sorted(samples ^ there)}")
    others = {n for n in found - set(FILES) if not n.startswith("share/grainwise/sample-rigs/")}
    allowed = re.compile(r"share/grainwise/(schema|translations|help)/")
    expect(all(allowed.match(n) for n in others), f"more is installed than is known: {sorted(others)}")


def hold_desktop(share):
    entry = share / "applications/grainwise.desktop"
    got = must_pass("desktop-file-validate", entry)
    expect(not (got.stdout + got.stderr).strip(), f"desktop-file-validate: {got.stdout}{got.stderr}")
    metainfo = share / "metainfo/local.grainwise.grainwise.metainfo.xml"
    must_pass("appstreamcli", "validate", "--no-net", metainfo)
    expect(f'<release version="{version()}"' in metainfo.read_text(), f"the metainfo lacks {version()}")
    fields = dict(re.findall(r"^(\w+)=(.*)$", entry.read_text(), re.MULTILINE))
    expect((share.parent / "bin" / fields["Exec"].split()[0]).exists(), "Exec names no program of ours")
    # Two files chosen together are one start of the program, which compares them: %F, not %f.
    expect(fields["Exec"].split()[1:] == ["%F"], "Exec takes one file at a time")
    window = (SOURCE / "ui/window/run_workbench.cpp").read_text()
    expect(f'setDesktopFileName(QStringLiteral("{entry.stem}"))' in window, "the window has another name")
    types = set(fields["MimeType"].strip(";").split(";"))
    known = set(re.findall(r'mime-type type="([^"]+)"', (share / "mime/packages/grainwise.xml").read_text()))
    expect(types and types <= known, f"types that no MIME file describes: {types - known}")


def hold_types(share):
    """Each of our files is known by its name as ours, as JSON too, and has an icon that is installed."""
    must_pass("xmllint", "--noout", "--nonet", share / "mime/packages/grainwise.xml")
    must_pass("update-mime-database", share / "mime")
    globs = (share / "mime/globs2").read_text().splitlines()
    parents = (share / "mime/subclasses").read_text().splitlines()
    icons = dict(line.split(":") for line in (share / "mime/icons").read_text().splitlines())
    for name in FORMATS:
        kind = f"application/vnd.grainwise.{name}+json"
        expect(f"60:{kind}:*.{name}.json" in globs, f"no pattern for {name} files: {globs}")
        expect(f"{kind} application/json" in parents, f"{kind} is no JSON")
        icon = share / f"icons/hicolor/scalable/mimetypes/{icons.get(kind)}.svg"
        expect(icon.is_file(), f"{kind} has no icon at {icon}")
        expect(list((SOURCE / "sample-rigs").glob(f"*.{name}.json")) or name == "shelf",
               f"no sample has the suffix {name}")


def hold_man_page(share, program):
    page = gzip.decompress((share / "man/man1/grainwise.1.gz").read_bytes()).decode()
    with tempfile.TemporaryDirectory() as name:
        plain = pathlib.Path(name) / "grainwise.1"
        plain.write_text(page)
        got = run("man", "--warnings", "-E", "UTF-8", "-l", "-Tutf8", "-Z", plain,
                  env={**os.environ, "MANROFFSEQ": "", "LC_ALL": "C.UTF-8", "MANWIDTH": "100"})
        expect(got.returncode == 0 and not got.stderr, f"man: {got.stderr}")
    plain = re.sub(r"\\f.", "", page).replace("\\-", "-")
    help_text = run(program, "--help").stdout
    for option in set(re.findall(r"(?<![\w-])--?[a-z][\w-]*", help_text)):
        expect(option in plain, f"the man page does not explain {option}")
    for command in set(re.findall(r"^ +grainwise ([a-z]+) ", help_text, re.MULTILINE)):
        expect(re.search(rf"\b{command}\b", plain), f"the man page does not explain {command}")
    expect(version() in page, "the man page has another version")


def hold_program(program, sample):
    bare = {"PATH": "/usr/bin:/bin"}
    got = run(program, "--version", env=bare)
    expect(got.stdout.splitlines()[:1] == [f"grainwise {version()}"], f"--version: {got.stdout}{got.stderr}")
    expect(run(program, "--help", env=bare).stdout.startswith("Usage: grainwise"), "--help")
    expect(run(program, "report", sample, env=bare).returncode == 0, "report on an installed sample")
    hold_window(program, sample)


def hold_window(program, sample):
    """It opens, draws and tells the parts of the sample; any Qt warning ends it."""
    env = {**os.environ, "GRAINWISE_TRACE": "1", "QT_FATAL_WARNINGS": "1"}
    with tempfile.TemporaryFile("w+") as log, tempfile.TemporaryFile("w+") as said:
        process = subprocess.Popen([str(program), str(sample)], env=env, stdout=log, stderr=said, cwd="/")
        end = time.time() + START_S
        text = ""
        while time.time() < end and process.poll() is None and "settled" not in text:
            time.sleep(0.1)
            log.seek(0)
            text = log.read()
        said.seek(0)
        expect("settled" in text and " fly" in text, f"the window did not open: {text}{said.read()}")
        process.terminate()
        process.wait(START_S)


def main():
    make = {"install": installed, "deb": unpacked}[sys.argv[3]]
    root = pathlib.Path(tempfile.mkdtemp())
    try:
        root.chmod(0o755)
        make(root)
        share = root / PREFIX / "share"
        hold_files(root)
        program = root / PREFIX / "bin/grainwise"
        if not faults:
            hold_desktop(share)
            hold_types(share)
            hold_man_page(share, program)
            hold_program(program, share / "grainwise/sample-rigs/01-plain-winter.rig.json")
    finally:
        shutil.rmtree(root)
    print("\n".join(faults) if faults else f"{sys.argv[3]}: whole")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
