#!/usr/bin/env bash
# with_screen.sh WIDTHxHEIGHT COMMAND...: runs the command on an X screen of its own with a window
# manager, in a home of its own, and ends both afterwards.
set -u
size=$1
shift
own=$(mktemp -d)
chmod 700 "$own"
export XDG_RUNTIME_DIR=$own XDG_CONFIG_HOME=$own/config XDG_DATA_HOME=$own/data
export QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8
mkdir -p "$XDG_CONFIG_HOME/grainwise" "$XDG_CONFIG_HOME/openbox" "$XDG_DATA_HOME"
# Windows fill the screen without a frame, so that pictures have exactly the size asked for.
cat >"$XDG_CONFIG_HOME/openbox/rc.xml" <<'RC'
<?xml version="1.0" encoding="UTF-8"?>
<openbox_config xmlns="http://openbox.org/3.4/rc">
  <applications>
    <application type="normal"><decor>no</decor><maximized>yes</maximized></application>
  </applications>
</openbox_config>
RC
screen="" manager=""
end() {
  [ -n "$manager" ] && kill "$manager" 2>/dev/null
  [ -n "$screen" ] && kill "$screen" 2>/dev/null
  wait 2>/dev/null
  rm -rf "$own"
}
trap end EXIT
exec 9>"$own/display"
Xvfb -displayfd 9 -screen 0 "${size}x24" -dpi 96 -nolisten tcp -noreset 2>/dev/null &
screen=$!
for _ in $(seq 100); do
  [ -s "$own/display" ] && break
  sleep 0.1
done
[ -s "$own/display" ] || { echo "with_screen: Xvfb did not start" >&2; exit 1; }
DISPLAY=:$(tr -d '\n' <"$own/display")
export DISPLAY
openbox --config-file "$XDG_CONFIG_HOME/openbox/rc.xml" 2>/dev/null &
manager=$!
for _ in $(seq 50); do
  xprop -root _NET_SUPPORTING_WM_CHECK 2>/dev/null | grep -q 'window id' && break
  sleep 0.1
done
"$@"
