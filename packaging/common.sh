# What the scripts beside this file share. Sourced, not run.
# shellcheck shell=bash

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# Set by the scripts that source this file.
# shellcheck disable=SC2034
jobs="$(nproc)"

say() { printf '%s\n' "$*"; }
heading() { printf '\n== %s\n' "$*"; }
fail() {
  printf '%s: %s\n' "$(basename "$0")" "$*" >&2
  exit 1
}

# configure FOLDER BUILD_TYPE [-DOPTION=VALUE...]: prints CMake's output only when it fails.
configure() {
  local folder="$1" type="$2" log
  shift 2
  log="$(mktemp)"
  if ! cmake -S "$root" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE="$type" "$@" >"$log" 2>&1; then
    cat "$log" >&2
    rm -f "$log"
    fail "the build could not be configured"
  fi
  rm -f "$log"
}

build() {
  local folder="$1"
  shift
  cmake --build "$folder" --parallel "$jobs" "$@"
}
