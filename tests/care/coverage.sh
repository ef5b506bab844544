#!/usr/bin/env bash
# coverage.sh BUILD: runs the core tests in BUILD (built with GRAINWISE_COVERAGE), writes a report a folder and a
# page a file to BUILD/coverage/, and fails when less of core's lines was run than promised.
set -eu
build=$1
least=95
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
find "$build" -name '*.gcda' -delete
# On one core: threads that count in the same lines of memory wait for each other, and take ten times as long.
one=$(taskset -cp $$ | sed 's/.*: *//; s/[,-].*//')
taskset -c "$one" "$build/tests/core_tests" >/dev/null
mkdir -p "$build/coverage"
# Lines that hold only a closing brace or an assertion that cannot fail are no lines to run.
gcovr --root "$root" --filter "$root/core/" --exclude-throw-branches --exclude-unreachable-branches \
  --exclude-lines-by-pattern '.*\b(assert|throw std::logic_error)\b.*' --fail-under-line "$least" \
  --txt "$build/coverage/summary.txt" --html-details "$build/coverage/index.html" \
  --object-directory "$build" -j "$(nproc)" "$build/core" || code=$?
awk '/^core/ || /^TOTAL/' "$build/coverage/summary.txt"
[ "${code:-0}" = 0 ] || echo "coverage: less than $least % of the lines of core were run" >&2
exit "${code:-0}"
