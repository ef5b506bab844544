#!/usr/bin/env bash
# run.sh TARGETS SECONDS [INPUTS]: every fuzz target for so many seconds, and at least so many inputs, from
# the small corpus and the samples on; what it grows goes to a folder of its own and is thrown away. A crash,
# more than a second of processor time for one input, or 256 MB held beside the sanitizers' own is a find.
# Ends with a line a target; a find is kept beside the targets, and its bytes belong into
# tests/robustness/corpus once mended.
set -u
targets=$1 seconds=$2 inputs=${3:-0}
# The quarantine of freed memory is the sanitizer's, not the reader's; a short trace of every allocation
# and plain scheduling of the corpus leave more of the time to the reader.
export ASAN_OPTIONS=quarantine_size_mb=16:malloc_context_size=5
held_mb=256 own_mb=192
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
finds=0
# fuzz FORMAT LIMIT: one run of a target. A line of a scale is short: 512 bytes hold twenty, and long logs are only
# slow, a tenth as many inputs in the same time.
fuzz() {
  local longest=4096
  [ "$1" != scale ] || longest=512
  "$targets/fuzz_$1" "$2" -max_len=$longest -entropic=0 -timeout=10 -rss_limit_mb=$((held_mb + own_mb)) \
    -malloc_limit_mb=$held_mb -print_final_stats=1 -dict="$here/keys.dict" \
    -artifact_prefix="$targets/find-$1-" \
    "$work/$1" "$root/tests/robustness/corpus/$1" "$work/samples-$1" >"$work/log" 2>&1
  local code=$?
  [ $code = 0 ] || { finds=$((finds + 1)); tail -n 40 "$work/log"; }
  grep -E "inputs, .* accepted|SUMMARY" "$work/log"
  local inputs_now
  inputs_now=$(sed -n 's/.*: \([0-9]*\) inputs, .*/\1/p' "$work/log")
  done_inputs=$((done_inputs + ${inputs_now:-0}))
  peak=$(sed -n 's/stat::peak_rss_mb: *//p' "$work/log")
  return $code
}
for format in rig shelf pools spools deck part scale; do
  mkdir -p "$work/$format" "$work/samples-$format"
  cp "$root"/sample-rigs/*."$format".json "$work/samples-$format/" 2>/dev/null
  done_inputs=0
  fuzz $format -max_total_time="$seconds" || continue
  [ $done_inputs -ge "$inputs" ] || fuzz $format -runs=$((inputs - done_inputs)) || continue
  echo "$format: $done_inputs inputs in all, at most $peak MB held, the sanitizers' own included"
done
[ $finds = 0 ] || { echo "fuzz: $finds targets found something" >&2; exit 1; }
