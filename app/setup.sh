# Sourced by app/run and tests/run: says what is happening, installs what is missing, builds.
# Needs `root` (the checkout). Every failure ends with one plain line.

say() { printf 'grainwise: %s\n' "$*" >&2; }
stop() {
  say "$*"
  exit 1
}

packages_to_build="g++ cmake ninja-build ccache nlohmann-json3-dev libexpected-dev qt6-base-dev
  qt6-charts-dev libqt6opengl6-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools
  qt6-l10n-tools fonts-noto-core"

missing_packages() {
  local name
  for name in "$@"; do
    [ "$(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null)" = installed ] ||
      printf '%s ' "$name"
  done
}

# need_packages NAME...: installs those that are not there yet; costs nothing when all are.
need_packages() {
  local missing as_root="" log
  command -v dpkg-query >/dev/null && command -v apt-get >/dev/null ||
    stop "this needs Debian 12 or later (or a relative with apt); there is no apt here. Packages: $*"
  missing=$(missing_packages "$@")
  [ -n "$missing" ] || return 0
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null ||
      stop "packages are missing and there is no sudo. As root: apt-get install $missing"
    as_root=sudo
  fi
  log=$(mktemp)
  say "installing $(echo "$missing" | wc -w) packages: $missing"
  if ! $as_root apt-get install -y --no-install-recommends $missing >"$log" 2>&1; then
    say "refreshing the package lists first"
    if ! { $as_root apt-get update && DEBIAN_FRONTEND=noninteractive \
      $as_root apt-get install -y --no-install-recommends $missing; } >"$log" 2>&1; then
      tail -n 5 "$log" >&2
      rm -f "$log"
      stop "the packages could not be installed (no network, or the lines above say why)"
    fi
  fi
  rm -f "$log"
}

# build FOLDER TARGETS OPTIONS...: configures once, then builds what has changed.
build() {
  local folder=$1 targets=$2 log teller failed=0
  shift 2
  log=$(mktemp)
  if [ ! -f "$folder/build.ninja" ]; then
    say "preparing the build in $(basename "$folder")"
    cmake -S "$root" -B "$folder" -G Ninja "$@" >"$log" 2>&1 || {
      cat "$log" >&2
      rm -f "$log"
      stop "the build could not be prepared"
    }
  fi
  # Says so when it takes a moment: with nothing to do there is nothing to say.
  (sleep 1 && say "building (the first time takes a few minutes)") &
  teller=$!
  ninja -C "$folder" $targets >"$log" 2>&1 || failed=1
  kill "$teller" 2>/dev/null && wait "$teller" 2>/dev/null
  if [ "$failed" = 1 ]; then
    grep -E -A12 'FAILED|error' "$log" | head -60 >&2
    rm -f "$log"
    stop "the build failed"
  fi
  rm -f "$log"
}
