#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""save_test.py SAVE_TOOL GRAINWISE SOURCE [KILLS]: saving, ended from outside at random moments (kill -9),
on a disk that is full, into a folder that is read only: the file on the disk is always the old or the new
one, whole, and opens. Work that was not saved is found again after a kill. Prints each fault; exits 1."""
import json
import os
import pathlib
import random
import signal
import subprocess
import sys
import tempfile
import time

TOOL, PROGRAM, SOURCE = sys.argv[1], sys.argv[2], pathlib.Path(sys.argv[3])
KILLS = int(sys.argv[4]) if len(sys.argv) > 4 else 500
SEED = 20260302
LONGEST_S = 0.02       # for a kill at any moment
IN_SAVE_S = 0.005      # and for one after a save was seen to begin
DISK_KIB = 512
NOBODY = 65534
ONE = SOURCE / "sample-rigs/01-plain-winter.rig.json"
faults = []


def expect(holds, what):
    if not holds:
        faults.append(what)


def large_rig(folder):
    """A sound rig of many pages, so that a disk can be full in the middle of it."""
    rig = json.loads(ONE.read_text(encoding="utf-8"))
    tip = next(part for part in rig["parts"] if part["kind"] == "tip")
    tip = {"kind": "tip", "notes": "n" * 1000, "sections": (tip["sections"] * 20)[:20]}
    at = next(i for i, part in enumerate(rig["parts"]) if part["kind"] == "tip")
    rig["parts"][at:at] = [tip] * 50
    path = folder / "large.rig.json"
    path.write_text(json.dumps(rig), encoding="utf-8")
    return path


def canonical(folder, rig):
    """The rig's bytes as the tool writes them."""
    target = folder / "canonical.rig.json"
    subprocess.run([TOOL, "once", target, rig], check=True, timeout=30)
    data = target.read_bytes()
    target.unlink()
    return data


def opens(path):
    return subprocess.run([PROGRAM, "check", path], capture_output=True, timeout=30).returncode == 0


def is_saving(process, folder):
    """Whether it holds a file open below `folder`: the half-written one, which has no name yet or one of
    its own."""
    held = pathlib.Path(f"/proc/{process.pid}/fd")
    for name in os.listdir(held):
        try:
            if os.readlink(held / name).startswith(str(folder)):
                return True
        except OSError:
            pass  # closed meanwhile
    return False


def wait_for_a_save(process, folder, chance):
    """Until a save was seen to begin, and a random moment longer."""
    end = time.time() + 5
    while time.time() < end and not is_saving(process, folder):
        pass
    moment = time.perf_counter() + chance.uniform(0, IN_SAVE_S)
    while time.perf_counter() < moment:
        pass


def killed_while_saving(folder, two):
    """`KILLS` kills; between them both rigs must have been found, or nothing was ever in motion."""
    both = {canonical(folder, ONE), canonical(folder, two)}
    folder = folder / "saves"
    folder.mkdir()
    target = folder / "target.rig.json"
    target.write_bytes(min(both))
    chance = random.Random(SEED)
    seen, in_motion = set(), 0
    for number in range(KILLS):
        process = subprocess.Popen([TOOL, "loop", target, ONE, two], stdout=subprocess.PIPE)
        process.stdout.readline()
        if number % 2:
            wait_for_a_save(process, folder, chance)
        else:
            time.sleep(chance.uniform(0, LONGEST_S))
        process.send_signal(signal.SIGSTOP)  # only to look; it never goes on
        in_motion += is_saving(process, folder)
        process.send_signal(signal.SIGKILL)
        code = process.wait(30)
        expect(code == -signal.SIGKILL, f"kill {number}: the tool had ended by itself with {code}")
        now = target.read_bytes()
        expect(now in both, f"kill {number}: {len(now)} bytes that are neither rig")
        seen.add(now)
        for half in folder.iterdir():
            if half != target:
                half.unlink()
    expect(opens(target), "after the kills the file does not open")
    expect(seen == both, "only one of the two rigs was ever seen")
    expect(in_motion > KILLS // 3, f"only {in_motion} of {KILLS} kills fell into a save")
    return f"{KILLS} kills, {in_motion} of them in mid-save: always old or new, whole"


def full_disk(folder, two):
    """A file system of its own, filled up to a few bytes: every amount of room below the rig's size."""
    disk = folder / "disk"
    disk.mkdir()
    script = f"""
mount -t tmpfs -o size={DISK_KIB}k none "$1" || exit 77
cp "$2" "$1/r.rig.json"
refused=0
for leave in 0 1 2 3 5 8 13; do
  rm -f "$1/ballast"
  dd if=/dev/zero of="$1/ballast" bs=4096 count={DISK_KIB} 2>/dev/null
  truncate -s -$((leave * 4096)) "$1/ballast"
  "$3" once "$1/r.rig.json" "$4" 2>"$1/../said"
  if [ $? = 1 ]; then
    refused=$((refused + 1))
    cmp -s "$2" "$1/r.rig.json" || {{ echo "torn with $leave pages left"; exit 1; }}
    grep -q "not saved: .*kept as it was" "$1/../said" || {{ echo "not told"; exit 1; }}
    [ "$(ls "$1")" = "ballast
r.rig.json" ] || {{ echo "litter: $(ls "$1")"; exit 1; }}
  fi
done
[ $refused -ge 4 ] || {{ echo "the disk was full $refused times only"; exit 1; }}
rm "$1/ballast"
"$3" once "$1/r.rig.json" "$4" || {{ echo "not saved with room"; exit 1; }}
cmp -s "$2" "$1/r.rig.json" && {{ echo "nothing was saved"; exit 1; }}
echo "refused $refused times"
"""
    old = folder / "old.rig.json"
    old.write_bytes(canonical(folder, ONE))
    as_root = [] if os.geteuid() == 0 else ["-r"]
    got = subprocess.run(["unshare", *as_root, "-m", "bash", "-c", script, "-", disk, old, TOOL, two],
                         capture_output=True, text=True, timeout=60)
    if got.returncode == 77 or "unshare failed" in got.stderr:
        return "full disk: no file system of our own may be mounted here; the ui tests limit file sizes instead"
    expect(got.returncode == 0, f"full disk: {got.stdout}{got.stderr}")
    return f"full disk: {got.stdout.strip()}"


def read_only_folder(folder, two):
    shut = folder / "shut"
    shut.mkdir()
    target = shut / "r.rig.json"
    target.write_bytes(canonical(folder, ONE))
    before = target.read_bytes()
    os.chmod(folder, 0o755)
    os.chmod(shut, 0o555)
    os.chmod(target, 0o444)
    options = {"user": NOBODY} if os.geteuid() == 0 else {}
    got = subprocess.run([TOOL, "once", target, two], capture_output=True, text=True, timeout=30,
                         env={**os.environ, "HOME": "/"}, **options)
    expect(got.returncode == 1 and "not saved" in got.stderr, f"read only: {got}")
    expect(target.read_bytes() == before, "read only: the file has changed")
    os.chmod(shut, 0o755)
    return "read-only folder: refused, the file kept"


def found_after_a_kill(folder, two):
    target = folder / "edited.rig.json"
    target.write_bytes(canonical(folder, ONE))
    before = target.read_bytes()
    data = folder / "data"
    env = {**os.environ, "XDG_DATA_HOME": str(data)}
    process = subprocess.Popen([TOOL, "edit", target, two], stdout=subprocess.PIPE, env=env)
    expect(process.stdout.readline() == b"kept\n", "no copy of unsaved work was kept")
    process.send_signal(signal.SIGKILL)
    process.wait(30)
    expect(target.read_bytes() == before, "the copy was written over the user's file")
    copies = list(data.rglob("*.rig.json"))
    expect(len(copies) == 1, f"copies after the kill: {copies}")
    expect(copies and copies[0].read_bytes() == canonical(folder, two), "the copy is not the work")
    return "unsaved work outlives a kill, beside the file that stays as it was"


def main():
    with tempfile.TemporaryDirectory() as name:
        for part in (killed_while_saving, full_disk, read_only_folder, found_after_a_kill):
            folder = pathlib.Path(name) / part.__name__
            folder.mkdir()
            os.chmod(name, 0o755)
            print(part(folder, large_rig(pathlib.Path(name))), flush=True)
    print("\n".join(faults))
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
