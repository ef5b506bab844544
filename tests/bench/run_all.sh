#!/usr/bin/env bash
# run_all.sh BUILD: every benchmark in BUILD, each beside its peer, after a line about the machine.
set -u
build=$1
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
rig=$here/../../sample-rigs/01-plain-winter.rig.json
echo "machine: $(nproc) x $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1)"
screen="bash $here/../support/with_screen.sh 1920x1080"
$screen "$build/tests/bench/bench_face_bench"
$screen python3 "$here/start_up.py" "$build/tests/bench/bare_window" "$build/app/grainwise" "$rig"
python3 "$here/air_peers.py" "$build/tests/bench/air_bench" "$build/tests/reference/air_model"
