#!/usr/bin/env bash
# run_all.sh BUILD: every benchmark in BUILD, each beside its peer, after the machine they ran on.
set -u
build=$1
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
rig=$here/../../sample-rigs/01-plain-winter.rig.json
# Debian's: another Python of the path may lack SciPy.
python=/usr/bin/python3
value() { sed -n "s/^$2[^:]*: *//p" "$1" 2>/dev/null | head -1; }
cat <<MACHINE
machine   $(nproc) x $(value /proc/cpuinfo 'model name'), $(value /proc/meminfo MemTotal)
system    $(. /etc/os-release && echo "$PRETTY_NAME"), Linux $(uname -r), load $(cut -d' ' -f1-3 /proc/loadavg)
built by  $(c++ --version | head -1), Qt $(dpkg-query -W -f '${Version}' qt6-base-dev), Release
peers     $($python -c 'import scipy, numpy; print("SciPy", scipy.__version__, "NumPy", numpy.__version__)'), MuJoCo $(dpkg-query -W -f '${Version}' libmujoco-dev)
when      $(date -u +%Y-%m-%d)
MACHINE
failed=0
bench() {
  echo
  echo "== $1"
  shift
  "$@" || { failed=$((failed + 1)); echo "this benchmark failed" >&2; }
}
screen="bash $here/../support/with_screen.sh 1920x1080"
programs=$build/tests/bench
bench "reading files: ours beside the plain parser under it" $python "$here/io_peers.py" "$programs/io_bench"
bench "all readings after an edit" $python "$here/readings_table.py" "$programs/readings_bench"
bench "a new picture of the window, beside a bare window that fills itself" \
  $screen "$programs/bench_face_bench"
bench "how long one event holds the window while heavy runs go on (a frame is 16.7 ms)" \
  $screen "$programs/window_thread_bench"
bench "start: the workbench beside a bare window" \
  $screen $python "$here/start_up.py" "$programs/bare_window" "$build/app/grainwise" "$rig"
bench "choosing, packing, mending, cutting" $python "$here/choose_table.py" "$programs/choose_bench"
bench "the line in the water: ours beside SciPy" \
  $python "$here/water_peers.py" "$programs/water_bench" "$build/tests/reference/water_model"
bench "the line in the air: ours beside SciPy and MuJoCo" \
  $python "$here/air_peers.py" "$programs/air_bench" "$build/tests/reference/air_model"
[ $failed = 0 ]
