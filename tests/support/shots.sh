#!/usr/bin/env bash
# shots.sh ROOT FOLDER [SIZE...]: pictures of every face, every page of the drawer and every task of
# Make, at three sizes (or those named), light and dark, into FOLDER. A picture is taken when the window
# has stopped changing.
set -u
root=$1 folder=$(cd "$2" && pwd)
shift 2
sizes=${*:-1366x768 1920x1080 1280x720}
export root folder

# start FILE...: the workbench on these files, once it has settled.
start() {
  GRAINWISE_TRACE=1 "$root/build/app/grainwise" "$@" >"$XDG_RUNTIME_DIR/trace" &
  program=$!
  for _ in $(seq 200); do
    grep -q settled "$XDG_RUNTIME_DIR/trace" && break
    sleep 0.1
  done
}
leave() {
  kill "$program" 2>/dev/null
  wait "$program" 2>/dev/null || true
}
# still NAME: a picture of what stands still, after six seconds of what does not.
still() {
  local file="$folder/$1-$size-$tone.png" before="" now=""
  for _ in $(seq 20); do
    sleep 0.3
    import -window root "$file"
    now=$(convert "$file" rgb:- | cksum)
    [ "$now" = "$before" ] && return
    before=$now
  done
}
# page NAME KEYS...: these keys, then a picture.
page() {
  local name=$1
  shift
  xdotool key "$@"
  still "$name"
}
# click NAME [DOWN]: the widget of that name, DOWN pixels below its top (its middle without).
click() {
  local x y w h
  read -r x y w h < <(awk -v name="$1" '$1 == "at" && $2 == name {at = $3 " " $4 " " $5 " " $6} END {print at}' \
    "$XDG_RUNTIME_DIR/trace")
  [ -n "${h:-}" ] || { echo "shots: $1 is not in the window" >&2; return; }
  xdotool mousemove $((x + (w < 60 ? w / 2 : 30))) $((y + ${2:-$((h / 2))})) click 1
}

bench_pages() {
  start "$root/sample-rigs/01-plain-winter.rig.json"
  page bench-shelf F2
  # The tip, where plain winter has it at every size; then the head with its taper.
  xdotool mousemove $((${size%x*} * 73 / 100)) 130 click 1
  page bench-part F3
  xdotool mousemove $((${size%x*} * 30 / 100)) 130 click 1
  still bench-part-head
  page bench-cast F4
  page bench-river F5
  page bench-fixes F6
  page bench-tips F8
  page bench-pools ctrl+shift+l
  page bench-depths ctrl+shift+d
  page bench-rod ctrl+r
  page bench-water ctrl+w
  page bench-name F9
  for tile in 1 2 3 4 5; do page "bench-why-$tile" "alt+$tile"; done
  # Where the list of tasks lies is told after a change of the look; it is gone through by keyboard.
  xdotool key F7
  sleep 0.5
  xdotool key ctrl+plus ctrl+minus
  for _ in $(seq 100); do
    grep -q '^at makeTasks' "$XDG_RUNTIME_DIR/trace" && break
    sleep 0.1
  done
  click makeTasks 14
  xdotool key Home
  for task in cut spools weigh leader fly tips measure parts list; do
    still "make-$task"
    xdotool key Down
  done
  page wallet ctrl+shift+p
  xdotool key alt+F4
  page help F1
  leave
}
other_pages() {
  start
  page empty F2
  leave
  start "$root/sample-rigs/wrong-hinge.rig.json"
  page hinge alt+2
  leave
  start "$root/sample-rigs/01-plain-winter.rig.json" "$root/sample-rigs/03-thin-tail.rig.json"
  still compare
  leave
  start "$root/sample-rigs/how-deep-was-i.deck.json"
  still clinic
  page clinic-show F11
  leave
}
all_pages() {
  size=$1
  for tone in light dark; do
    printf '[look]\nscheme=%s\nfollows_system=false\nreduce_motion=true\n' "$tone" >"$XDG_CONFIG_HOME/grainwise/grainwise.conf"
    bench_pages
    other_pages
  done
}
export -f start leave still page click bench_pages other_pages all_pages
for size in $sizes; do
  bash "$root/tests/support/with_screen.sh" "$size" bash -c "all_pages $size" || exit 1
done
# Every page once at each size, light and dark.
wrong=0
for size in $sizes; do
  for tone in light dark; do
    taken=$(ls "$folder"/*-"$size-$tone.png" | wc -l)
    [ "$taken" = 33 ] || { echo "shots: $taken pictures at $size, $tone, not 33" >&2; wrong=1; }
  done
done
echo "pictures in $folder"
exit $wrong
