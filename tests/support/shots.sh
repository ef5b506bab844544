#!/usr/bin/env bash
# shots.sh ROOT FOLDER: pictures of the Bench at the three sizes, light and dark, into FOLDER.
set -u
root=$1 folder=$(cd "$2" && pwd)
export root folder
one_shot() {
  # size scheme-number name: started on a sample, a picture once the window has settled
  printf '[look]\nscheme=%s\nreduce_motion=true\n' "$2" >"$XDG_CONFIG_HOME/grainwise/grainwise.conf"
  GRAINWISE_TRACE=1 "$root/build/app/grainwise" "$root/sample-rigs/$4" >"$XDG_RUNTIME_DIR/trace" &
  local program=$!
  for _ in $(seq 100); do
    grep -q settled "$XDG_RUNTIME_DIR/trace" && break
    sleep 0.1
  done
  [ -z "${5:-}" ] || { xdotool key $5; sleep 0.6; }
  sleep 0.3
  import -window root "$folder/$3-$1-$([ "$2" = 0 ] && echo light || echo dark).png"
  kill "$program" 2>/dev/null
  wait "$program" 2>/dev/null
}
export -f one_shot
for size in 1366x768 1920x1080 1280x720; do
  for scheme in 0 1; do
    bash "$root/tests/support/with_screen.sh" "$size" \
      bash -c "one_shot $size $scheme bench 01-plain-winter.rig.json F2" || exit 1
    bash "$root/tests/support/with_screen.sh" "$size" \
      bash -c "one_shot $size $scheme part 01-plain-winter.rig.json F3" || exit 1
    bash "$root/tests/support/with_screen.sh" "$size" \
      bash -c "one_shot $size $scheme hinge wrong-hinge.rig.json alt+2" || exit 1
  done
done
echo "pictures in $folder"
