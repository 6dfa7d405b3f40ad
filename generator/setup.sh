# setup.sh: what first-sheet and tests/run share; sourced, not run. $root is the checkout.

# One checkout finds what another has compiled: paths below the checkout do not count.
export CCACHE_BASEDIR="$root" CCACHE_NOHASHDIR=true
export CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime

# Names of the packages in the given lists that are not installed.
missing_packages() {
  wanted=$(grep -hv '^#' "$@")
  have=$(dpkg-query -W -f '${db:Status-Abbrev}${binary:Package}\n' $wanted 2>/dev/null |
    sed -n 's/^ii *\([^:]*\).*/\1/p')
  for package in $wanted; do
    echo "$have" | grep -qx "$package" || echo "$package"
  done
}

# Installs what is missing, or prints the line that would and stops.
need_packages() {
  if ! command -v dpkg-query >/dev/null; then
    echo "error: packages are installed through apt, and this is no Debian system" >&2
    exit 3
  fi
  missing=$(missing_packages "$@" | tr '\n' ' ')
  [ -z "$missing" ] && return
  install="apt-get update && apt-get install -y --no-install-recommends $missing"
  if [ "$(id -u)" = 0 ]; then
    as_root="sh -c"
  elif command -v sudo >/dev/null && sudo -n true 2>/dev/null; then
    as_root="sudo sh -c"
  else
    echo "error: packages are missing; as root, run:" >&2
    echo "  $install" >&2
    exit 3
  fi
  echo "installing: $missing" >&2
  export DEBIAN_FRONTEND=noninteractive
  if ! $as_root "$install" >"${TMPDIR:-/tmp}/loamsheet-apt.log" 2>&1; then
    cat "${TMPDIR:-/tmp}/loamsheet-apt.log" >&2
    exit 3
  fi
}

# configure FOLDER OPTION...: a build folder, made ready once; ninja keeps it so.
configure() {
  folder=$1
  shift
  [ -f "$folder/build.ninja" ] && grep -qx "$*" "$folder/options" 2>/dev/null && return
  mkdir -p "$folder"
  cmake -S "$root" -B "$folder" -G Ninja "$@" >"$folder/configure.log" 2>&1 ||
    { cat "$folder/configure.log" >&2; exit 3; }
  echo "$*" >"$folder/options"
}

# build FOLDER TARGET...: on a terminal with Ninja's counter, elsewhere quiet unless something fails.
build() {
  folder=$1
  shift
  if [ -t 2 ]; then
    NINJA_STATUS='compiling %f of %t: ' ninja -C "$folder" "$@" >&2 || exit 3
    return
  fi
  ninja -C "$folder" "$@" >"$folder/build.log" 2>&1 || { tail -n 60 "$folder/build.log" >&2; exit 3; }
}
