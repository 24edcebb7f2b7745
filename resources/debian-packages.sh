#!/bin/sh
# Says which of the Debian packages that Vatsketch needs are missing; with --install it installs them (as root).
#   build: a linker and C headers, which Rust itself needs
#   run:   what the window loads when it starts (X11 or Wayland, and OpenGL; the software driver will do)
set -eu
build="gcc libc6-dev"
run="libgl1 libegl1 libgl1-mesa-dri libxkbcommon0 libxkbcommon-x11-0 libx11-6 libx11-xcb1 libxcursor1 libxi6 libxrandr2"
wanted=$build
[ "${1:-}" = --build-only ] || [ "${2:-}" = --build-only ] || wanted="$build $run"
missing=""
for package in $wanted; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing="$missing $package"
done
command -v cargo >/dev/null 2>&1 || echo "missing: cargo and rustc 1.95 or newer (Debian's own are older; install Rust's toolchain first)" >&2
if [ -z "$missing" ]; then
    echo "nothing is missing"
elif [ "${1:-}" = --install ]; then
    apt-get update
    # shellcheck disable=SC2086 # a list of names on purpose
    DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing
else
    echo "missing:$missing" >&2
    echo "install them with: sudo $0 --install" >&2
    exit 1
fi
