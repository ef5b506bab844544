#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""texts.py update|check|todo LANG|fill LANG FILE|pseudo FOLDER: keeps the window's translations, grainwise_LANG.ts.

update  brings new and changed texts of the source into every .ts (`ninja -C build texts`)
check   does so in a copy, and fails on a text without a translation, on a translation that lost or gained
        a %1, a tag, a line, a mnemonic or the mark at its end, and on a text that no translator can find
todo    prints what LANG lacks as JSON: [{"context", "source", "comment", "plural", "translation": ""}]
fill    puts such a list, filled in, into the .ts of LANG
pseudo  writes FOLDER/grainwise_pseudo.qm: every text of the source in brackets, without a plain letter and two
        fifths longer, so that what escapes translation, or has no room for it, is seen
--lupdate PATH  the lupdate of Qt 6, when it is not where Debian puts it"""
import argparse
import collections
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent
LANGUAGES = ("de", "es", "nb")
DEBIANS_LUPDATE = "/usr/lib/qt6/bin/lupdate"
FORMS = 2  # singular and plural, in each of our languages
MARKS = {
    "place": re.compile(r"%L?\d+|%n"),
    "tag": re.compile(r"</?[a-zA-Z][^<>]*>"),
    "pattern": re.compile(r"\*\.[\w.*]+|\[\*\]|;;"),
    "line": re.compile(r"[\n\t]"),
    "mnemonic": re.compile(r"&(?=[^\s&;]+(?!;)\b)"),
}
ENDS = re.compile(r"(…|:|[.!]|\?|;|,|\s+)$")
# Contexts that no tr() of the program asks for: lupdate did not see whose text it is.
LOST = re.compile(r"^$|^std$|^grainwise::ui$|^grainwise$|^QObject$")


def lupdate(program, files, plurals_only=False):
    words = [program, "core", "ui", "app", "-I", ".", "-extensions", "h,cpp", "-no-obsolete", "-locations",
             "none", "-silent", "-source-language", "en"]
    for heuristic in ("sametext", "similartext", "number"):
        words += ["-disable-heuristic", heuristic]
    words += ["-pluralonly"] if plurals_only else []
    subprocess.run(words + ["-ts", *map(str, files)], cwd=ROOT, check=True, stderr=subprocess.DEVNULL)


def update(program, folder):
    lupdate(program, [folder / f"grainwise_{one}.ts" for one in LANGUAGES])
    lupdate(program, [folder / "grainwise_en.ts"], plurals_only=True)


def messages(file):
    """(context, source, comment) -> the message's element."""
    found = {}
    for context in xml.parse(file).getroot().findall("context"):
        for one in context.findall("message"):
            found[(context.findtext("name") or "", one.findtext("source"), one.findtext("comment") or "")] = one
    return found


def forms(message):
    """Every form of the translation; empty where it is not finished."""
    translation = message.find("translation")
    if translation.get("type") is not None:
        return []
    if message.get("numerus") != "yes":
        return [translation.text or ""]
    return [form.text or "" for form in translation.findall("numerusform")]


def end_of(text):
    found = ENDS.search(text)
    return found.group(1) if found else ""


def faults_of(source, translation, plural=False):
    """What a translation lost or gained, as words."""
    if not translation.strip() and source.strip():
        return ["is empty"]
    found = []
    for name, mark in MARKS.items():
        was = collections.Counter(mark.findall(source))
        now = collections.Counter(mark.findall(translation))
        if plural:
            was.pop("%n", None), now.pop("%n", None)
        if was != now:
            found.append(f"{name}: {sorted(was.elements())} became {sorted(now.elements())}")
    if end_of(source) != end_of(translation):
        found.append(f"ends with {end_of(translation)!r} instead of {end_of(source)!r}")
    if source[:1].isspace() != translation[:1].isspace():
        found.append("begins with another space")
    return found


def faults_in(name, wanted, have):
    found = []
    for (context, source, comment), message in wanted.items():
        where = f"{name}: {context}: {source!r}{f' ({comment})' if comment else ''}"
        plural = message.get("numerus") == "yes"
        if LOST.match(context):
            found.append(f"{where}: nobody's text; qualify its tr() with a class (ui/text/contexts.h)")
        mine = have.get((context, source, comment))
        if mine is None:
            found.append(f"{where}: is missing; run `ninja -C build texts` and translate it")
            continue
        texts = forms(mine)
        if len(texts) != (FORMS if plural else 1):
            found.append(f"{where}: is not translated")
        for text in texts:
            found += [f"{where}: {what} in {text!r}" for what in faults_of(source, text, plural)]
    return found


def selftest():
    bad = [("Save", ""), ("%1 of %2", "%1 von %1"), ("a <b>b</b>", "a b"), ("&File", "Datei"),
           ("Open…", "Öffnen"), ("one\ntwo", "eins zwei"), ("A (*.json);;B (*)", "A (*.jsn);;B (*)"), (" x", "x")]
    good = [("Save", "Sichern"), ("%1 of %2", "%2: %1"), ("C&linic", "&Kurs"), ("Q & A", "F und A")]
    blind = [one for one in bad if not faults_of(*one)] + [one for one in good if faults_of(*one)]
    lost = xml.fromstring("<message><source>x</source><translation>y</translation></message>")
    raw = xml.fromstring("<message><source>x</source><translation type='unfinished'>y</translation></message>")
    cases = [("", lost), ("std", lost), ("A", raw)]
    blind += [c for c, m in cases if not faults_in("t", {(c, "x", ""): m}, {(c, "x", ""): m})]
    blind += [] if faults_in("t", {("A", "x", ""): lost}, {}) else ["missing"]
    blind += faults_in("t", {("A", "x", ""): lost}, {("A", "x", ""): lost})
    return blind


def check(program):
    blind = selftest()
    if blind:
        return [f"selftest: {one}" for one in blind]
    found = []
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        update(program, folder)
        for one in (*LANGUAGES, "en"):
            file = HERE / f"grainwise_{one}.ts"
            found += faults_in(file.name, messages(folder / file.name), messages(file))
    return found


def todo(language):
    rows = []
    for (context, source, comment), message in messages(HERE / f"grainwise_{language}.ts").items():
        if not any(forms(message)):
            rows.append({"context": context, "source": source, "comment": comment,
                         "plural": message.get("numerus") == "yes", "translation": ""})
    return rows


def fill(program, language, rows):
    """Puts the rows' translations into the .ts; a plural's is a list. Returns what did not fit."""
    file = HERE / f"grainwise_{language}.ts"
    tree = xml.parse(file)
    wanted = {(row["context"], row["source"], row["comment"]): row["translation"] for row in rows}
    for context in tree.getroot().findall("context"):
        for message in context.findall("message"):
            key = (context.findtext("name") or "", message.findtext("source"), message.findtext("comment") or "")
            text = wanted.pop(key, "")
            if not text:
                continue
            translation = message.find("translation")
            translation.attrib.pop("type", None)
            for old in list(translation):
                translation.remove(old)
            translation.text = text if isinstance(text, str) else None
            for form in [] if isinstance(text, str) else text:
                xml.SubElement(translation, "numerusform").text = form
    tree.write(file, encoding="utf-8", xml_declaration=True)
    update(program, HERE)  # writes it anew in lupdate's own manner
    return [key for key, text in wanted.items() if text]


PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
OTHER = "ȧƀċḋėḟġḣïĵķĺṁṅöṗʠṙṡṫüṽẇẋẏżȦɃĊḊĖḞĠḢÏĴĶĹṀṄÖṖɊṘṠṪÜṼẆẊẎŻ"
KEPT = re.compile(r"(%L?\d+|%n|</?[a-zA-Z][^<>]*>|\*\.[\w.*]+|\[\*\]|[\n\t]|&(?=\w))")
LONGER = 0.4


def pseudo_of(text):
    """The text as no language has it: its marks kept, its letters changed, longer, in brackets."""
    if not re.search("[A-Za-z]", KEPT.sub("", text)):
        return text
    table = str.maketrans(PLAIN, OTHER)
    pieces = [one if KEPT.fullmatch(one) else one.translate(table) for one in KEPT.split(text)]
    letters = len(re.findall("[A-Za-z]", KEPT.sub("", text)))
    more = max(1, round(letters * LONGER))
    # One word grows as a compound does; a sentence gets more words.
    words = ["ö" * min(6, more - at) for at in range(0, more, 6)]
    body = "".join(pieces)
    return "‹" + body + ("".join(words) if " " not in text else " " + " ".join(words)) + "›"


def pseudo(program, folder):
    file = folder / "grainwise_pseudo.ts"
    lupdate(program, [file])
    tree = xml.parse(file)
    for message in tree.getroot().iter("message"):
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        text = pseudo_of(message.findtext("source"))
        numerus = message.get("numerus") == "yes"
        for form in list(translation):
            translation.remove(form)
        translation.text = None if numerus else text
        for _ in range(FORMS if numerus else 0):
            xml.SubElement(translation, "numerusform").text = text
    tree.getroot().set("language", "en")
    tree.write(file, encoding="utf-8", xml_declaration=True)
    lrelease = pathlib.Path(program).with_name("lrelease")
    subprocess.run([lrelease, "-silent", file], check=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("command", choices=("update", "check", "todo", "fill", "pseudo"))
    parser.add_argument("language", nargs="?", metavar="LANG|FOLDER")
    parser.add_argument("file", nargs="?")
    parser.add_argument("--lupdate", default=DEBIANS_LUPDATE)
    said = parser.parse_args()
    if said.command == "update":
        update(said.lupdate, HERE)
    elif said.command == "check":
        found = check(said.lupdate)
        print("\n".join(found) if found else "texts: every text is translated")
        return 1 if found else 0
    elif said.command == "pseudo":
        pseudo(said.lupdate, pathlib.Path(said.language))
    elif said.command == "todo":
        print(json.dumps(todo(said.language), ensure_ascii=False, indent=1))
    else:
        left = fill(said.lupdate, said.language, json.loads(pathlib.Path(said.file).read_text("utf-8")))
        print("\n".join(f"not in the source: {one}" for one in left))
        return 1 if left else 0
    return 0


if __name__ == "__main__":
    sys.exit(main())
