#!/usr/bin/env bash
# no_display.sh GRAINWISE: without a display the workbench says so in one line and exits 1; commands work.
set -u
said=$(env -i PATH="$PATH" "$1" 2>&1 >/dev/null)
code=$?
[ $code = 1 ] || { echo "exit code $code, not 1"; exit 1; }
[ "$(printf '%s\n' "$said" | wc -l)" = 1 ] || { echo "not one line: $said"; exit 1; }
case $said in *display*) ;; *) echo "says nothing of a display: $said"; exit 1 ;; esac
env -i PATH="$PATH" "$1" --version | grep -q . || { echo "--version needs a display"; exit 1; }
