#!/usr/bin/env bash
# run.sh TARGETS SECONDS: every fuzz target for so many seconds, from the small corpus and the samples on;
# what it grows goes to a folder of its own and is thrown away. Ends with a line a target; a find is kept
# beside the targets, and its bytes belong into tests/robustness/corpus once mended.
set -u
targets=$1 seconds=$2
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
finds=0
for format in rig shelf pools spools deck part scale; do
  mkdir -p "$work/$format" "$work/samples-$format"
  cp "$root"/sample-rigs/*."$format".json "$work/samples-$format/" 2>/dev/null
  nice "$targets/fuzz_$format" -max_total_time="$seconds" -max_len=8192 -timeout=10 -rss_limit_mb=4096 \
    -print_final_stats=1 -dict="$here/keys.dict" -artifact_prefix="$targets/find-$format-" \
    "$work/$format" "$root/tests/robustness/corpus/$format" "$work/samples-$format" \
    >"$work/log" 2>&1 || { finds=$((finds + 1)); tail -n 40 "$work/log"; }
  grep -E "inputs, .* accepted|SUMMARY" "$work/log"
done
[ $finds = 0 ] || { echo "fuzz: $finds targets found something" >&2; exit 1; }
