#!/usr/bin/env bash
# setup_test.sh ROOT: app/run on machines that lack something. Each is a PATH of its own with the plain
# tools, and made-up dpkg-query, apt-get, sudo, id, cmake and ninja. Every failure must end with exit
# code 1 and one plain last line that says what to do; nothing may be installed or built by it.
set -u
root=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/house/app" "$work/tools" "$work/tmp"
cp "$root/app/run" "$root/app/setup.sh" "$work/house/app/"
for tool in bash env mktemp grep head tail wc cat dirname basename rm sleep sed mkdir touch chmod; do
  ln -s "$(command -v "$tool")" "$work/tools/$tool"
done
wrong=0

# fake NAME SCRIPT: a command of that name on this machine.
fake() {
  printf '#!/usr/bin/env bash\n%s\n' "$2" >"$work/machine/$1"
  chmod +x "$work/machine/$1"
}
# machine: a new one; everything is there and works, and what is called is written down.
machine() {
  rm -rf "$work/machine" "$work/house/build" "$work/called"
  mkdir "$work/machine"
  touch "$work/called"
  fake dpkg-query 'echo installed'
  fake apt-get "echo apt-get \"\$@\" >>'$work/called'"
  fake sudo "echo sudo \"\$@\" >>'$work/called'; exec \"\$@\""
  fake id 'echo 1000'
  fake cmake "echo cmake >>'$work/called'; mkdir -p '$work/house/build'; touch '$work/house/build/build.ninja'"
  fake ninja "echo ninja >>'$work/called'
mkdir -p '$work/house/build/app'
printf '#!/usr/bin/env bash\necho started \"\$@\"\n' >'$work/house/build/app/grainwise'
chmod +x '$work/house/build/app/grainwise'"
}
# go WORDS...: app/run there; $code, $out, $err and $last are what it left.
go() {
  env -i PATH="$work/machine:$work/tools" HOME="$work" TMPDIR="$work/tmp" \
    bash "$work/house/app/run" "$@" >"$work/out" 2>"$work/err"
  code=$?
  out=$(cat "$work/out")
  err=$(cat "$work/err")
  last=$(tail -n 1 "$work/err")
}
# fails CASE WORDS: the run failed with WORDS in a last line of ours.
fails() {
  [ "$code" = 1 ] || complain "$1: exit code $code, not 1"
  case $last in "grainwise: "*"$2"*) ;; *) complain "$1: ends with '$last', not with '$2'" ;; esac
  [ -z "$out" ] || complain "$1: writes '$out' to stdout"
}
complain() {
  echo "$1"
  wrong=1
}
called() { grep -qE "$1" "$work/called"; }

machine
rm "$work/machine/dpkg-query" "$work/machine/apt-get"
go
fails "no apt" "there is no apt here. Packages: g++ cmake"

machine
fake dpkg-query 'echo not-installed'
rm "$work/machine/sudo"
go
fails "no sudo" "there is no sudo. As root: apt-get install g++"
called "^apt-get" && complain "no sudo: apt-get was called all the same"

machine
fake dpkg-query 'echo not-installed'
fake apt-get "echo apt-get \"\$@\" >>'$work/called'; echo 'E: Temporary failure resolving' >&2; exit 100"
go
fails "no network" "no network"
case $err in *"Temporary failure resolving"*) ;; *) complain "no network: apt's own words are not shown" ;; esac
called "^cmake" && complain "no network: it went on to build"

machine
fake dpkg-query 'echo not-installed'
fake apt-get "echo apt-get \"\$@\" >>'$work/called'
case \"\$*\" in update) touch '$work/machine/fresh' ;; *) [ -e '$work/machine/fresh' ] ;; esac"
go report
[ "$code" = 0 ] || complain "old package lists: exit code $code"
[ "$out" = "started report" ] || complain "old package lists: '$out', not started"
called "sudo apt-get update" || complain "old package lists: they were not refreshed"

machine
fake cmake 'echo "CMake Error: no such generator" >&2; exit 1'
go
fails "cmake fails" "the build could not be prepared"
case $err in *"no such generator"*) ;; *) complain "cmake fails: its own words are not shown" ;; esac
called "^ninja" && complain "cmake fails: ninja was called all the same"

machine
fake ninja 'echo "FAILED: core/units.o"; echo "units.cpp:3: error: no such thing"; exit 1'
go
fails "build fails" "the build failed"
case $err in *"units.cpp:3: error"*) ;; *) complain "build fails: the error is not shown" ;; esac

machine
go "two words" --json
[ "$code" = 0 ] || complain "all is there: exit code $code"
[ "$out" = "started two words --json" ] || complain "all is there: '$out'"
called "^apt-get" && complain "all is there: apt-get was called"
go
called "^cmake" || complain "all is there: cmake never called"
[ "$(grep -c "^cmake" "$work/called")" = 1 ] || complain "the second time: prepared once more"
[ -z "$err" ] || complain "the second time: says '$err'"

machine
fake id 'echo 0'
fake dpkg-query '[ "${@: -1}" = ccache ] && echo not-installed || echo installed'
go
[ "$code" = 0 ] || complain "as root: exit code $code"
called "^apt-get install -y --no-install-recommends ccache\$" || complain "as root: '$(cat "$work/called")'"
called "^sudo" && complain "as root: sudo was called"

left=$(ls -A "$work/tmp")
[ -z "$left" ] || complain "left behind in the folder for temporary files: $left"
exit $wrong
