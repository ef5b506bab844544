#!/usr/bin/env bash
# clean_root.sh CHECKOUT DEB: two bare Debian 12 systems in folders of their own. In the first the package is
# installed with what it names and nothing else; in the second a fresh clone of the checkout starts by
# `app/run`, where nothing is installed. In both the commands answer without a display and the window opens
# on the screen of the caller (with_screen.sh). Needs root and the network; prints each fault; exits 1.
set -u
checkout=$1 deb=$2
[ "$(id -u)" = 0 ] || { echo "clean_root: a system in a folder needs root" >&2; exit 1; }
work=$(mktemp -d)
chmod 755 "$work"
trap 'rm -rf --one-file-system "$work"' EXIT
faults=0
fault() {
  echo "clean_root: $*" >&2
  faults=$((faults + 1))
}

# within ROOT COMMAND...: the command in the bare system, with processes and terminals, seeing nothing else.
within() {
  local system=$1
  shift
  unshare --mount --pid --fork bash -c '
    mount -t proc proc "$0/proc" && mount --rbind /dev "$0/dev" && exec chroot "$0" /usr/bin/env -i \
      PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root DEBIAN_FRONTEND=noninteractive "$@"' \
    "$system" "$@"
}
# opens ROOT PROGRAM...: its window draws the sample within 20 s, and no Qt warning is said.
opens() {
  local system=$1 log=$work/window end
  shift
  within "$system" env DISPLAY="$DISPLAY" GRAINWISE_TRACE=1 QT_FATAL_WARNINGS=1 XDG_RUNTIME_DIR=/run/own timeout 20 "$@" \
    >"$log" 2>&1 &
  local program=$!
  end=$((SECONDS + 20))
  while [ $SECONDS -lt $end ] && ! grep -q settled "$log" && kill -0 $program 2>/dev/null; do sleep 0.2; done
  grep -q settled "$log" || fault "no window by $*: $(tail -n 3 "$log")"
  kill $program 2>/dev/null
  wait $program 2>/dev/null
}
answers() {
  local system=$1
  shift
  within "$system" "$@" --version >/dev/null || fault "$* --version"
  within "$system" "$@" --help >/dev/null || fault "$* --help"
}
bare() {
  cp -a "$work/bare" "$1"
  cp /etc/resolv.conf "$1/etc/resolv.conf"
  mkdir -m 700 "$1/run/own"
}

debootstrap --variant=minbase bookworm "$work/bare" >"$work/log" 2>&1 ||
  { tail -n 3 "$work/log" >&2; echo "clean_root: no bare system to be had" >&2; exit 1; }

packed=$work/packed
bare "$packed"
cp "$deb" "$packed/tmp/grainwise.deb"
within "$packed" apt-get install -y --no-install-recommends /tmp/grainwise.deb >"$work/log" 2>&1 ||
  fault "the package does not install: $(tail -n 3 "$work/log")"
sample=/usr/share/grainwise/sample-rigs/01-plain-winter.rig.json
answers "$packed" grainwise
within "$packed" grainwise report $sample >/dev/null || fault "report of an installed sample"
opens "$packed" grainwise $sample
within "$packed" apt-get purge -y grainwise >/dev/null 2>&1 || fault "the package does not go"
[ ! -e "$packed/usr/share/grainwise" ] || fault "the package leaves files behind"
rm -rf --one-file-system "$packed"

cloned=$work/cloned
bare "$cloned"
git clone -q "$checkout" "$cloned/srv/grainwise" || fault "no clone"
begun=$SECONDS
answers "$cloned" /srv/grainwise/app/run
echo "clean_root: app/run from nothing took $((SECONDS - begun)) s"
begun=$(date +%s%N)
within "$cloned" /srv/grainwise/app/run --version >"$work/log" 2>&1
echo "clean_root: a second call takes $((($(date +%s%N) - begun) / 1000000)) ms"
[ "$(wc -l <"$work/log")" -le 3 ] && ! grep -q "^grainwise: " "$work/log" || fault "a second call works: $(cat "$work/log")"
opens "$cloned" /srv/grainwise/app/run /srv/grainwise/sample-rigs/01-plain-winter.rig.json
[ $faults = 0 ] && echo "clean_root: installed, cloned and opened"
exit $((faults > 0))
