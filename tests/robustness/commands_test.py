#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""commands_test.py GRAINWISE SAMPLE: exit codes and streams of the built program, run without a
display and with an all but empty environment. Exits 1 when any row of the table does not hold."""
import json
import os
import pathlib
import resource
import subprocess
import sys
import tempfile

PROGRAM, SAMPLE = sys.argv[1], sys.argv[2]
ENVIRONMENT = {"PATH": os.environ["PATH"]}
# A sanitizer's options are the build's business, not the program's.
ENVIRONMENT |= {k: v for k, v in os.environ.items() if k.endswith("SAN_OPTIONS")}
GOOD, BAD_INPUT, WRONG_USAGE = 0, 1, 2
faults = []


def run(*words, **options):
    return subprocess.run([PROGRAM, *words], env=options.pop("env", ENVIRONMENT), timeout=60,
                          stdin=subprocess.DEVNULL, capture_output=True, **options)


def expect(holds, what):
    if not holds:
        faults.append(what)


def expect_row(words, code, out, err, **options):
    """`out`, `err`: a text that must occur, "" for a stream that must stay empty, None for any."""
    got = run(*words, **options)
    what = " ".join(["grainwise", *words])
    expect(got.returncode == code, f"{what}: exit {got.returncode}, wanted {code}: {got.stderr!r}")
    for name, stream, wanted in (("stdout", got.stdout, out), ("stderr", got.stderr, err)):
        text = stream.decode("utf-8")
        if wanted == "":
            expect(text == "", f"{what}: {name} should be empty, is {text!r}")
        elif wanted is not None:
            expect(wanted in text, f"{what}: {name} lacks {wanted!r}: {text!r}")
    return got


def usage_rows():
    expect_row(["--help"], GOOD, "Usage: grainwise [FILE]", "")
    expect_row(["report", "--help"], GOOD, "Usage: grainwise", "")
    expect_row(["--version"], GOOD, "grainwise ", "")
    expect_row(["report"], WRONG_USAGE, "", "FILE is missing")
    expect_row(["check"], WRONG_USAGE, "", "FILE is missing")
    expect_row(["report", SAMPLE, SAMPLE], WRONG_USAGE, "", "one FILE")
    expect_row(["report", SAMPLE, "--json", "--csv"], WRONG_USAGE, "", "not both")
    expect_row(["report", SAMPLE, "--xml"], WRONG_USAGE, "", "unknown option '--xml'")
    expect_row(["check", "-q", SAMPLE], WRONG_USAGE, "", "unknown option '-q'")
    expect_row(["--frobnicate"], WRONG_USAGE, "", "unknown option '--frobnicate'")
    expect_row(["ponder", SAMPLE], WRONG_USAGE, "", "'ponder' is no command")
    expect_row(["no-such-command", SAMPLE, SAMPLE], WRONG_USAGE, "", "two to compare")
    expect_row(["report", "--", "--json"], BAD_INPUT, "", "--json")


def report_rows(folder):
    name = json.loads(pathlib.Path(SAMPLE).read_text(encoding="utf-8"))["name"]
    expect_row(["report", SAMPLE], GOOD, name + "\n", "")
    expect_row(["report", SAMPLE, "--csv"], GOOD, "at_ft,gr_per_ft,cumulative_gr\r\n", "")
    got = expect_row(["report", "--json", SAMPLE], GOOD, '"grainwise-report"', "")
    expect(json.loads(got.stdout)["name"] == name, "report --json: the name")
    expect("swing" not in json.loads(got.stdout), "report --json: a swing only when asked for")
    expect("cast" not in json.loads(got.stdout), "report --json: a cast only when asked for")
    got = expect_row(["report", "--json", "--cast", SAMPLE], GOOD, '"fly_speed_m_per_s"', "")
    cast = json.loads(got.stdout)["cast"]
    expect(0.5 < cast["time_s"] < 2.0, "report --cast: a time to turn over")
    got = expect_row(["report", "--json", "--swing", SAMPLE], GOOD, '"after_mend_ft"', "")
    expect(got.stdout.endswith(b"}\n") and not got.stdout.endswith(b"\n\n"), "one trailing newline")
    expect_row(["report", str(folder / "absent.rig.json")], BAD_INPUT, "", "absent.rig.json")
    expect_row(["report", str(folder)], BAD_INPUT, "", None)
    broken = folder / "broken.rig.json"
    broken.write_text('{ "format": "grainwise-rig", "version": 1,\n "name": "x", "parts": 3 }\n')
    expect_row(["report", "--json", str(broken)], BAD_INPUT, "", "broken.rig.json:2: /parts")
    expect_row(["check", str(broken)], BAD_INPUT, "", "broken.rig.json:2: /parts")
    got = expect_row(["check", SAMPLE, str(broken)], BAD_INPUT, SAMPLE + ": ok\n", "/parts")
    expect(got.stdout.decode().count("\n") == 1, "check: one ok line a sound file")
    expect_row(["check", SAMPLE, SAMPLE], GOOD, SAMPLE + ": ok\n", "")


def cut_rows():
    samples = pathlib.Path(SAMPLE).parent
    spools, family = str(samples / "bench.spools.json"), str(samples / "five-tip-family.shelf.json")
    expect_row(["cut", SAMPLE, "--spools", spools], GOOD, "10 ft 5 in", "")
    expect_row(["cut", "--spools", spools, family], GOOD, "1.29 ft short", "")
    got = expect_row(["cut", SAMPLE, family, "--spools", spools, "--json"], GOOD,
                     '"grainwise-cut-sheet"', "")
    expect(len(json.loads(got.stdout)["labels"]) == 7,
           "cut --json: the rig's three, and of the five tips the four that can be cut")
    cut = ["cut", SAMPLE, "--spools", spools]
    expect_row(cut + ["--loop", "sleeved"], GOOD, "10 ft 6 in", "")
    expect_row(cut + ["--loop", "sleeved", "--loop-in", "4"], GOOD, "10 ft 8 in", "")
    expect_row(cut + ["--loop", "glued"], WRONG_USAGE, "", "--loop wants welded, sleeved, tied or none")
    expect_row(cut + ["--loop", "none", "--loop-in", "4"], WRONG_USAGE, "", "does not go with --loop none")
    expect_row(cut + ["--splice-in", "30"], WRONG_USAGE, "", "--splice-in wants 0 to 24 in")
    expect_row(cut + ["--knot-in", "x"], WRONG_USAGE, "", "--knot-in wants 0 to 24 in")
    expect_row(["cut"], WRONG_USAGE, "", "FILE is missing")
    expect_row(["cut", SAMPLE], WRONG_USAGE, "", "--spools FILE is missing")
    expect_row(["cut", SAMPLE, "--spools"], WRONG_USAGE, "", "--spools wants a FILE")
    expect_row(["cut", spools, "--spools", spools], BAD_INPUT, "", "not a rig")
    expect_row(["cut", SAMPLE, "--spools", SAMPLE], BAD_INPUT, "", "not a list of spools")


def compare_rows(folder):
    expect_row(["compare"], WRONG_USAGE, "", "two FILEs")
    expect_row(["compare", SAMPLE], WRONG_USAGE, "", "two FILEs")
    expect_row(["compare", SAMPLE, SAMPLE, "--csv"], WRONG_USAGE, "", "unknown option '--csv'")
    expect_row(["compare", SAMPLE, str(folder / "absent.rig.json")], BAD_INPUT, "", "absent.rig")
    expect_row(["compare", SAMPLE, SAMPLE], GOOD, "No difference.", "")
    other = json.loads(pathlib.Path(SAMPLE).read_text(encoding="utf-8"))
    other["parts"] = [part for part in other["parts"] if part["kind"] != "tip"]
    path = folder / "other.rig.json"
    path.write_text(json.dumps(other), encoding="utf-8")
    expect_row(["compare", SAMPLE, str(path)], GOOD, "only in A", "")
    got = expect_row(["compare", "--json", SAMPLE, str(path)], GOOD, '"grainwise-compare"', "")
    expect(json.loads(got.stdout)["differences"][0]["what"] == "only in A", "compare --json")
    got = expect_row(["compare", "--json", "--swing", SAMPLE, str(path)], GOOD, '"overall"', "")
    depths = [c for c in json.loads(got.stdout)["overall"] if c["reading"] == "swing_ft"]
    expect(depths and depths[0]["from_runs"], "compare --swing: depths from real swings")


def lacking_rows(folder, pools):
    """What lacks a pool, a tip or a fly is at fault, and never an answer that sounds whole."""
    def written(name, value):
        (folder / name).write_text(json.dumps(value), encoding="utf-8")
        return str(folder / name)

    no_pools = written("none.pools.json", {"format": "grainwise-pools", "version": 1, "pools": []})
    no_tips = written("none.shelf.json", {"format": "grainwise-shelf", "version": 1, "parts": []})
    rig = json.loads(pathlib.Path(SAMPLE).read_text(encoding="utf-8"))
    rig["parts"] = [part for part in rig["parts"] if part["kind"] != "fly"]
    no_fly = written("no-fly.rig.json", rig)
    got = expect_row(["wallet", SAMPLE, "--pools", no_pools], BAD_INPUT, "nothing packed", "no pool")
    expect(b"fewer will not do" not in got.stdout, "wallet without pools: no claim")
    got = expect_row(["wallet", SAMPLE, "--pools", pools, "--shelf", no_tips, "--json"], BAD_INPUT,
                     '"need": "shelf"', "none.shelf.json: the shelf has no tip")
    expect(json.loads(got.stdout)["proven"] is False, "wallet without tips: no proof")
    expect_row(["choose", SAMPLE, "--pools", pools, "--shelf", no_tips], BAD_INPUT, "Next: ",
               "none.shelf.json: the shelf has no tip")
    expect_row(["choose", no_fly, "--pools", pools], BAD_INPUT, "Next: ", "there is no fly")
    expect_row(["choose", SAMPLE, "--pools", no_pools], BAD_INPUT, "", "no pools; add a pool to it")
    rig = json.loads(pathlib.Path(SAMPLE).read_text(encoding="utf-8"))
    for part in rig["parts"]:
        if part["kind"] == "fly":
            part["wet_gr"] = 400
    too_heavy = written("too-heavy.rig.json", rig)
    expect_row(["choose", too_heavy, "--pools", pools, "--pool", "Mill Run"], GOOD,
               "Next: nothing on the shelf will do", "")
    expect_row(["wallet", too_heavy, "--pools", pools], GOOD, "Next: nothing on the shelf serves", "")
    got = expect_row(["fix", no_fly], BAD_INPUT, "there is no fly", "there is no fly")
    expect(b": nothing is wrong" not in got.stdout.splitlines()[0], "fix without a fly: no praise")
    got = expect_row(["fix", no_fly, "--json"], BAD_INPUT, '"need": "fly"', "there is no fly")


def choose_rows(folder):
    samples = pathlib.Path(SAMPLE).parent
    pools, hinge = str(samples / "corrow.pools.json"), str(samples / "wrong-hinge.rig.json")
    family = str(samples / "five-tip-family.shelf.json")
    expect_row(["choose", SAMPLE, "--pools", pools, "--pool", "Mill Run"], GOOD, "Refused", "")
    got = expect_row(["choose", SAMPLE, "--pools", pools, "--json"], GOOD, '"grainwise-choice"', "")
    answer = json.loads(got.stdout)
    expect(len(answer["pools"]) == 6, "choose --json: every pool")
    best = answer["pools"][0]["tips"][0]
    expect(best["standing"] == "fits" and best["criteria"], "choose --json: the best one's grades")
    got = expect_row(["choose", SAMPLE, "--pools", pools, "--shelf", family, "--json"], GOOD,
                     '"grainwise-choice"', "")
    tips = json.loads(got.stdout)["pools"][0]["tips"]
    expect(len(tips) == 6, "choose --shelf: the shelf's five tips, and none")
    expect_row(["choose"], WRONG_USAGE, "", "FILE is missing")
    expect_row(["choose", SAMPLE], WRONG_USAGE, "", "--pools FILE is missing")
    expect_row(["choose", SAMPLE, "--pools"], WRONG_USAGE, "", "--pools wants a FILE")
    expect_row(["choose", SAMPLE, "--pools", pools, "--pool", "Nowhere"], BAD_INPUT, "",
               "no pool 'Nowhere'; there are Mill Run")
    expect_row(["choose", SAMPLE, "--pools", SAMPLE], BAD_INPUT, "", "pools")
    expect_row(["wallet", SAMPLE, hinge, "--pools", pools], GOOD, "fewer will not do", "")
    got = expect_row(["wallet", SAMPLE, "--pools", pools, "--most", "1", "--json"], GOOD,
                     '"grainwise-wallet"', "")
    wallet = json.loads(got.stdout)
    expect(len(wallet["tips"]) == 1 and wallet["proven"], "wallet --most: one tip, proven")
    expect(any(not use["served"] and use["reason"] for use in wallet["uses"]),
           "wallet --most: what is not served says why")
    got = expect_row(["wallet", SAMPLE, "--pools", pools, "--one-length", "--json"], GOOD,
                     '"length_ft"', "")
    expect_row(["wallet", SAMPLE, "--pools", pools, "--most", "few"], WRONG_USAGE, "", "whole number")
    expect_row(["wallet", "--pools", pools], WRONG_USAGE, "", "FILE is missing")
    expect_row(["fix", hinge], GOOD, "repairs the joint", "")
    got = expect_row(["fix", hinge, "--wallet", family, "--json"], GOOD, '"grainwise-fixes"', "")
    fixes = json.loads(got.stdout)
    expect(fixes["faults"] == ["junction"] and fixes["later"], "fix --json: the fault and its mending")
    expect_row(["fix", SAMPLE], GOOD, "nothing is wrong", "")
    expect_row(["fix"], WRONG_USAGE, "", "FILE is missing")
    lacking_rows(folder, pools)
    expect_row(["fix", hinge, "--wallet", pools], BAD_INPUT, "", "shelf")


def print_rows(folder):
    """Paper without a display; what is written is what its name says."""
    out = str(folder / "out.pdf")
    expect_row(["print", SAMPLE], WRONG_USAGE, "", "-o OUT is missing")
    expect_row(["print", SAMPLE, "-o"], WRONG_USAGE, "", "-o OUT is missing")
    expect_row(["print", "-o", out], WRONG_USAGE, "", "FILE is missing")
    expect_row(["print", SAMPLE, "-o", str(folder / "out.txt")], WRONG_USAGE, "", ".pdf, .png or .svg")
    expect_row(["print", SAMPLE, "-o", out, "--paper", "a3"], WRONG_USAGE, "", "a4 or letter")
    expect_row(["print", SAMPLE, "-o", out, "--four"], WRONG_USAGE, "", "goes with a deck")
    expect_row(["print", SAMPLE, "-o", str(folder / "none" / "out.pdf")], BAD_INPUT, "", "out.pdf")
    expect_row(["print", str(folder / "absent.rig.json"), "-o", out], BAD_INPUT, "", "absent.rig.json")
    expect(not os.path.exists(out), "print: a file in spite of a wrong line")
    for ending, begins in ((".pdf", b"%PDF-"), (".png", b"\x89PNG"), (".svg", b"<?xml")):
        out = folder / ("out" + ending)
        expect_row(["print", SAMPLE, "-o", str(out)], GOOD, "", "")
        expect(out.read_bytes().startswith(begins), f"print: {out.name} is no {ending}")
    expect((folder / "out-2.png").exists(), "print: the second side as out-2.png")
    deck = folder / "gap.deck.json"
    deck.write_text('{ "format": "grainwise-deck", "version": 1, "title": "t", "cards": [\n'
                    '  { "title": "c", "show": "strip", "rig": "gone.rig.json" } ] }\n')
    expect_row(["print", str(deck), "-o", str(folder / "gap.pdf")], BAD_INPUT, "", "gone.rig.json")
    expect((folder / "gap.pdf").exists(), "print: the rest of a deck with a gap")


def same_everywhere():
    """Output knows no locale, display or repeated run."""
    plain = [run("report", SAMPLE, flag).stdout for flag in ("--json", "--csv")]
    comma = ENVIRONMENT | {"LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8", "DISPLAY": ":no-such"}
    again = [run("report", SAMPLE, flag, env=comma).stdout for flag in ("--json", "--csv")]
    expect(plain == again, "the report depends on its environment")


def output_that_cannot_be_written():
    if not os.path.exists("/dev/full"):
        faults.append("there is no /dev/full to write to")
        return
    with open("/dev/full", "wb") as full:
        got = subprocess.run([PROGRAM, "report", SAMPLE], env=ENVIRONMENT, stdout=full,
                             stderr=subprocess.PIPE, timeout=60)
    expect(got.returncode == BAD_INPUT, f"a full disk: exit {got.returncode}")
    expect(b"cannot write" in got.stderr, "a full disk is not told")


def main():
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    with tempfile.TemporaryDirectory() as name:
        usage_rows()
        report_rows(pathlib.Path(name))
        compare_rows(pathlib.Path(name))
        print_rows(pathlib.Path(name))
        cut_rows()
        choose_rows(pathlib.Path(name))
        same_everywhere()
        output_that_cannot_be_written()
    print("\n".join(faults) if faults else "every command kept its word")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
