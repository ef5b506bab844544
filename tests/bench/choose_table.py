#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""choose_table.py CHOOSE_BENCH: choosing, packing, mending and cutting beside their aims; the exact cuts
beside every other way to cut. Wall time; judges nothing."""
import sys

from bench_rows import rows_of


def main():
    rows = rows_of(sys.argv[1])
    print("tips judged in one pool (aim: 300 in 250 ms, linear)")
    for count in (300, 600, 1250, 2500, 5000):
        row = rows[f"tipsInAPool/{count}"]
        print(f'  {count:5} tips {row["ms"]:8.1f} ms {1e3 * row["ms"] / count:7.1f} us a tip')
    stop = rows["stopping"]
    print(f'stopping among 5,000 tips: mean {stop["ms"]:.2f} ms, worst of 40 {stop["worst_ms"]:.2f} ms (aim 50)')
    row = rows["wallet"]
    print(f'wallet of {row["tips"]:.0f} tips x {row["pools"]:.0f} pools x {row["flies"]:.0f} flies: {row["ms"]:.0f} ms, '
          f'{row["packed"]:.0f} packed, {"proven" if row["proven"] else "not proven"} (aim 2000, proven)')
    for at in range(4):
        row = rows[f"fixes/{at}"]
        print(f'fixes of {row["label"]:14} {row["ms"]:6.1f} ms, {row["tried"]:.0f} changes tried, '
              f'{row["found"]:.0f} kept (aim 300)')
    for count in (50, 100, 200, 400):
        row = rows[f"cutsInBulk/{count}"]
        print(f'{count:4} cuts {row["ms"]:8.2f} ms, {row["opened"]:.0f} spools opened, at least '
              f'{row["bound"]:.0f} needed{" (aim 1000)" if count == 200 else ""}')
    print(f'12 cuts from 40 spools, exactly {rows["exactCuts"]["ms"]:.1f} ms')
    ours, peer = rows["twelveCuts"], rows["twelveCutsByTrying"]
    same = ours["placed"] == peer["placed"] and abs(ours["left_ft"] - peer["left_ft"]) < 1e-6
    print(f'12 cuts from 2 spools {ours["ms"]:.2f} ms; every way tried {peer["ms"]:.0f} ms, '
          f'{peer["ms"] / ours["ms"]:.0f} x; {"equally good" if same else "NOT equally good"}')


if __name__ == "__main__":
    main()
