#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""make_shelf.py [--check]: writes generic.shelf.json from shelf_table.json.

Each group of the table names a rule; the rule turns a row into parts with a stable id, the group
and a plain name. All arithmetic is exact (Fraction), so a head's sections sum exactly to its label.
With --check nothing is written: differences between the file and what the table gives are printed
and the exit status is 1. The shapes are ours, after common practice, no source."""
import difflib
import json
import pathlib
import sys
from fractions import Fraction

HERE = pathlib.Path(__file__).resolve().parent
TABLE = HERE / "shelf_table.json"
SHELF = HERE / "generic.shelf.json"


# ---- numbers and text -------------------------------------------------------------------------

def digits(number):
    """The shortest decimal text of an exact number; refuses one that does not end."""
    whole = Fraction(number)
    for places in range(8):
        scaled = whole * 10**places
        if scaled.denominator == 1:
            text = str(abs(scaled.numerator)).rjust(places + 1, "0")
            text = text if not places else text[:-places] + "." + text[-places:]
            return ("-" if whole < 0 else "") + text
    raise ValueError(f"{whole} has no short decimal form")


def slug(number):
    """A number inside an id: 7.5 -> 7-5, 0.024 -> 0-024."""
    return digits(number).replace(".", "-")


def inches(diameter):
    """A diameter in a name, to the thousandth as the trade writes it: 0.020."""
    text = digits(diameter)
    return text + "0" * (5 - len(text))


def text_of(value):
    """One line of JSON."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    if isinstance(value, (list, tuple)):
        return "[" + ", ".join(text_of(v) for v in value) + "]"
    if isinstance(value, dict):
        return "{ " + ", ".join(f'"{k}": {text_of(v)}' for k, v in value.items()) + " }"
    return digits(value)


def part_lines(part):
    """A part as the program itself writes it: a line a member, and a line a section."""
    lines = []
    for key, value in part.items():
        if key == "sections":
            rows = ",\n".join("        " + text_of(section) for section in value)
            lines.append(f'      "sections": [\n{rows}\n      ]')
        else:
            lines.append(f'      "{key}": {text_of(value)}')
    return "    {\n" + ",\n".join(lines) + "\n    }"


def document(parts):
    return ('{\n  "format": "grainwise-shelf",\n  "version": 1,\n  "parts": [\n'
            + ",\n".join(part_lines(part) for part in parts) + "\n  ]\n}\n")


# ---- parts and sections -----------------------------------------------------------------------

def level_or_taper(a, b):
    return a if a == b else [a, b]


def floating(length, a, b=None):
    mass = a if b is None else level_or_taper(a, b)
    return {"length_ft": length, "gr_per_ft": mass, "floats": True}


def sinking(length, mass, rate):
    return {"length_ft": length, "gr_per_ft": mass, "sink_in_per_s": rate}


def strand(length, diameter, material):
    return {"length_ft": length, "diameter_in": diameter, "material": material}


def part(kind, ident, name, sections=None, style=None, label=None):
    made = {"id": ident, "kind": kind}
    if style:
        made["style"] = style
    made["name"] = name
    if label is not None:
        made["label_gr"] = label
    if sections is not None:
        made["sections"] = sections
    return made


def grains(section):
    mass = section["gr_per_ft"]
    a, b = mass if isinstance(mass, list) else (mass, mass)
    return section["length_ft"] * (a + b) / 2


def head(ident, name, style, label, sections):
    total = sum(grains(s) for s in sections)
    if total != label:
        raise ValueError(f"{name}: the sections weigh {total} gr")
    return part("head", ident, name, sections, style, label)


def body_mass(label, rear, body, front, rear_end, front_end):
    """gr/ft of a level body between two linear tapers that makes the head weigh its label."""
    return (label - rear * rear_end / 2 - front * front_end / 2) / (rear / 2 + body + front / 2)


def three_part(ident, name, style, label, lengths, rear_end, front_end):
    rear, body, front = lengths
    mass = body_mass(label, rear, body, front, rear_end, front_end)
    return head(ident, name, style, label,
                [floating(rear, rear_end, mass), floating(body, mass),
                 floating(front, mass, front_end)])


# ---- one rule a group -------------------------------------------------------------------------

def running_lines(row, group):
    d = row["diameter_in"]
    if row["make"] == "mono":
        section = strand(group["length_ft"], d, "nylon")
    else:
        section = {"length_ft": group["length_ft"], "diameter_in": d,
                   "density_g_cm3": group["coated_density_g_cm3"]}
    yield part("running-line", f"running-{row['make']}-{inches(d)[2:]}",
               f"{row['make']} running line {inches(d)} in", [section])


def extensions(row, _group):
    length, mass = row["length_ft"], row["gr_per_ft"]
    yield head(f"extension-{slug(length)}-{slug(mass)}",
               f"extension {digits(length)} ft, {digits(mass)} gr/ft", "extension", length * mass,
               [floating(length, mass)])


def short_heads(row, _group):
    label, start, end = row["label_gr"], row["body_start"], row["body_end"]
    rear = floating(row["rear_ft"], row["rear_end"], start)
    body = floating(row["body_ft"], start, end)
    front_end = 2 * (label - grains(rear) - grains(body)) / row["front_ft"] - end
    yield head(f"short-{slug(label)}", f"short head {digits(label)}", "short", label,
               [rear, body, floating(row["front_ft"], end, front_end)])


def three_part_rule(word, name, style):
    def rule(row, _group):
        label = row["label_gr"]
        yield three_part(f"{word}-{slug(label)}", f"{name} {digits(label)}", style, label,
                         (row["rear_ft"], row["body_ft"], row["front_ft"]),
                         row["rear_end"], row["front_end"])
    return rule


def sinking_heads(row, group):
    label, body = row["label_gr"], (row["first_ft"], row["second_ft"], row["third_ft"])
    mass = body_mass(label, row["rear_ft"], sum(body), row["front_ft"],
                     row["rear_end"], row["front_end"])
    for name, *densities in group["densities"]:
        def of(length, a, b, density):
            made = floating(length, a, b)
            if density != "float":
                del made["floats"]
                made["sink_in_per_s"] = group["sink_in_per_s"][density]
            return made
        sections = [of(row["rear_ft"], row["rear_end"], mass, densities[0])]
        sections += [of(length, mass, mass, density) for length, density in zip(body, densities)]
        sections += [of(row["front_ft"], mass, row["front_end"], densities[2])]
        yield head(f"short-{name.replace('/', '-')}-{slug(label)}",
                   f"short head {digits(label)}, {name}", "short", label, sections)


def single_hand_lines(row, group):
    number, lengths = row["line_number"], (group["rear_ft"], group["body_ft"], group["front_ft"])
    yield three_part(f"single-{slug(number)}", f"single-hand line #{digits(number)}", "single-hand",
                     row["label_gr"], lengths, row["rear_end"], row["front_end"])


def level_tips(row, _group):
    mass = row["gr_per_ft"]
    for length in row["lengths_ft"]:
        yield part("tip", f"level-{slug(mass)}-{slug(length)}ft",
                   f"{digits(length)} ft, {digits(mass)} gr/ft",
                   [sinking(length, mass, row["sink_in_per_s"])], "level")


def float_sink_tips(row, group):
    mass, rate = row["gr_per_ft"], row["sink_in_per_s"]

    def tip(length, sunk, word):
        sections = [floating(length - sunk, mass)] if sunk < length else []
        sections += [sinking(sunk, mass, rate)] if sunk else []
        ident = word.replace("/", "-of-").replace(" ft", "ft").replace(".", "-")
        return part("tip", f"float-sink-{slug(mass)}-{slug(length)}ft-{ident}",
                    f"{digits(length)} ft, {word} sinking, {digits(mass)} gr/ft",
                    sections, "float-sink")

    for length in group["lengths_ft"]:
        for share in group["shares"]:
            part_of = {"none": Fraction(0), "all": Fraction(1)}.get(share)
            yield tip(length, length * (Fraction(share) if part_of is None else part_of), share)
    for length, sunk in group["by_feet"]:
        yield tip(length, sunk, f"{digits(sunk)} ft")


def tapered_tips(row, group):
    number = row["line_number"]
    for rate, last in zip(group["rates_in_per_s"], row["fly_end_in_per_s"], strict=True):
        taper = [row["rod_end"], row["fly_end"]]
        yield part("tip", f"tapered-{slug(number)}-{slug(rate)}",
                   f"#{digits(number)}, {digits(rate)} in/s",
                   [sinking(row["length_ft"], taper, level_or_taper(rate, last))], "tapered")


def intermediate_tips(row, group):
    length, mass = row["length_ft"], row["gr_per_ft"]
    yield part("tip", f"intermediate-{slug(mass)}-{slug(length)}ft",
               f"{digits(length)} ft, intermediate, {digits(mass)} gr/ft",
               [sinking(length, mass, group["sink_in_per_s"])], "level")


def floating_fronts(row, _group):
    length, a, b = row["length_ft"], row["rod_end"], row["fly_end"]
    yield part("tip", f"front-{slug(length)}ft-{slug(a)}",
               f"{digits(length)} ft floating front, {digits(a)} to {digits(b)} gr/ft",
               [floating(length, a, b)], "tapered")


def coated_leaders(row, group):
    for length in group["lengths_ft"]:
        for rates in group["butt_and_front_in_per_s"]:
            yield part("leader", f"coated-{row['make']}-{slug(length)}ft-{slug(rates[0])}",
                       f"coated leader {digits(length)} ft, {row['make']}, {digits(rates[0])} in/s",
                       [sinking(length, [row["rod_end"], row["fly_end"]], rates),
                        strand(row["bare_ft"], row["bare_diameter_in"], "nylon")], "coated")


def leaders(row, group):
    sections = [strand(length, level_or_taper(d[0], d[-1]), group["material"])
                for length, *d in row["pieces"]]
    length = sum(s["length_ft"] for s in sections)
    thick, thin = row["pieces"][0][1], row["pieces"][-1][-1]
    run = inches(thick) if thick == thin else f"{inches(thick)} to {inches(thin)}"
    ident = run.replace("0.", "").replace(" ", "-")
    yield part("leader", f"leader-{ident}-{slug(length)}ft",
               f"leader {digits(length)} ft, {run} in {group['material']}", sections, "plain")


def tippets(row, _group):
    material = row["material"]
    for d in row["diameters_in"]:
        for length in row["lengths_ft"]:
            yield part("tippet", f"tippet-{material}-{inches(d)[2:]}-{slug(length)}ft",
                       f"tippet {digits(length)} ft, {inches(d)} in {material}",
                       [strand(length, d, material)])


def flies(row, _group):
    made = part("fly", f"fly-{row['id']}", row["name"])
    for key in ("dry_gr", "wet_gr", "drag_area_cm2", "density_g_cm3", "sinks_head_first", "hook"):
        made[key] = row[key]
    yield made


RULES = {
    "running_lines": running_lines, "extensions": extensions, "short_heads": short_heads,
    "fine_heads": three_part_rule("fine", "fine-taper head", "fine"),
    "long_bellies": three_part_rule("belly", "long belly", "long-belly"),
    "sinking_heads": sinking_heads, "single_hand_lines": single_hand_lines,
    "level_tips": level_tips, "float_sink_tips": float_sink_tips, "tapered_tips": tapered_tips,
    "intermediate_tips": intermediate_tips, "floating_fronts": floating_fronts,
    "coated_leaders": coated_leaders, "leaders": leaders, "tippets": tippets, "flies": flies,
}


def shelf_parts(table):
    parts = []
    for group in table["groups"]:
        for values in group["rows"]:
            row = dict(zip(group["columns"], values, strict=True))
            for made in RULES[group["rule"]](row, group):
                parts.append({"id": made.pop("id"), "group": group["group"], **made})
    for key in ("id", "name"):
        seen = [p[key] for p in parts]
        twice = {s for s in seen if seen.count(s) > 1}
        if twice:
            raise ValueError(f"{key} not unique: {sorted(twice)}")
    return parts


def main():
    table = json.loads(TABLE.read_text(encoding="utf-8"), parse_float=Fraction, parse_int=Fraction)
    text = document(shelf_parts(table))
    if "--check" not in sys.argv[1:]:
        SHELF.write_text(text, encoding="utf-8")
        return 0
    stands = SHELF.read_text(encoding="utf-8")
    diff = list(difflib.unified_diff(stands.splitlines(), text.splitlines(),
                                     SHELF.name, "what the table gives", lineterm="", n=0))
    print("\n".join(diff[:40]) if diff else "shelf: the file is what the table gives")
    return 0 if stands == text else 1


if __name__ == "__main__":
    sys.exit(main())
