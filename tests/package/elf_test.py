#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""elf_test.py GRAINWISE [--hardened]: the built program links no network library, neither itself nor
through what it links, and imports no call that opens a connection; with --hardened, its code stands at
random addresses, its tables of addresses are read-only once it runs, its stack holds no code and is
guarded, and its copies are checked. Prints each fault and exits 1."""
import re
import subprocess
import sys

NETWORK = re.compile(r"network|websocket|curl|ssl|gnutls|soup|webengine", re.IGNORECASE)
CALLS = {"socket", "connect", "bind", "listen", "accept", "getaddrinfo", "gethostbyname", "sendto",
         "recvfrom"}


def out(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


def faults(needed, imported):
    found = [f"it links {name}" for name in needed if NETWORK.search(name)]
    return found + [f"it imports {name}()" for name in imported if name in CALLS]


def soft_spots(program, imported):
    header, segments, dynamic = (out("readelf", "-W", flag, program) for flag in ("-h", "-l", "-d"))
    holds = {
        "its code stands at fixed addresses": "DYN (Position-Independent" in header and "PIE" in dynamic,
        "its addresses stay writable": "GNU_RELRO" in segments and "NOW" in dynamic,
        "its stack holds code": re.search(r"GNU_STACK .* RW +0x", segments),
        "its stack is unguarded": "__stack_chk_fail" in imported,
        "its copies are unchecked": any(name.endswith("_chk") for name in imported),
    }
    return [what for what, held in holds.items() if not held]


def main():
    if len(faults(["libQt6Network.so.6", "libc.so.6"], {"connect", "read"})) != 2:
        print("selftest: a program on the network should have been refused twice")
        return 1
    program = sys.argv[1]
    needed = [line.split()[0] for line in out("ldd", program).splitlines() if "=>" in line]
    imported = {line.split()[-1].partition("@")[0]
                for line in out("nm", "-D", "--undefined-only", program).splitlines()}
    if not any(name.startswith("libQt6Core") for name in needed) or not imported:
        print("nothing could be read from the program")
        return 1
    found = faults(needed, imported)
    if "--hardened" in sys.argv:
        found += soft_spots(program, imported)
    print("\n".join(found) if found else f"{len(needed)} libraries, none of a network")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
