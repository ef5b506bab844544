#!/usr/bin/env bash
# tidy.sh BUILD FOLDER...: clang-tidy with the list of .clang-tidy over every file below the folders that BUILD
# compiles. A file that passed is not looked at again until it, a header of ours or the list changes. Ends
# with the finds.
set -u
build=$1
shift
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
cd "$root" || exit 1
passed=$build/tidy
mkdir -p "$passed"
# clang reads no headers that g++ has read before.
sed -E 's/-Winvalid-pch//; s/-include [^ ]*cmake_pch\.hxx//' "$build/compile_commands.json" >"$passed/compile_commands.json"
headers=$(cat .clang-tidy $(find core ui app -name '*.h' | sort) | sha256sum | cut -c1-16)
export build passed headers
look() {
  local stamp
  stamp=$passed/$(echo "$headers $(sha256sum "$1")" | sha256sum | cut -c1-32)
  [ -e "$stamp" ] && return 0
  if clang-tidy -p "$passed" --quiet "$1" >"$stamp.log" 2>/dev/null; then
    rm -f "$stamp.log"
    touch "$stamp"
  else
    grep -E "error:|warning:" "$stamp.log" | sed "s|$PWD/||" | sort -u
    rm -f "$stamp.log"
    return 1
  fi
}
export -f look
files=$(find "$@" -name '*.cpp' | sort)
[ -n "$files" ] || { echo "tidy: no files below $*"; exit 1; }
echo "$files" | xargs -P "$(nproc)" -I{} bash -c 'look {}' || exit 1
echo "tidy: $(echo "$files" | wc -l) files clean"
