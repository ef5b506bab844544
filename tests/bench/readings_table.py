#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""readings_table.py READINGS_BENCH: all readings after an edit, beside the aim; judges nothing."""
import sys

from bench_rows import rows_of


def main():
    rows = rows_of(sys.argv[1])
    print("an edit to a new Analysis, ms (aim 1 at p99)")
    for name, row in rows.items():
        if "p99_ms" in row:
            words = row.get("label") or "64 parts of 16 sections"
            print(f'  {words:26} p50 {row["p50_ms"]:7.3f}  p99 {row["p99_ms"]:7.3f}')
    print(f'1,024 diameters from rated sink rates {rows["ratedSections"]["ms"]:.3f} ms')
    print(f'two rigs that differ in everything, compared {rows["comparison"]["ms"]:.2f} ms (a frame: 16)')


if __name__ == "__main__":
    main()
