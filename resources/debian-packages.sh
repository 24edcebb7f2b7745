#!/bin/sh
# Says which of the Debian packages that Vatsketch needs are missing; with --install it installs them (as root).
#   build:   a linker and C headers, which Rust itself needs
#   run:     what the program reads or loads when it runs: time zones, and for the window X11 or Wayland and OpenGL (the software driver will do)
# --build-only and --run-only look at one half. What the window loads was seen with strace under both kinds of display.
set -eu
build="gcc libc6-dev"
run="tzdata libgl1 libegl1 libgl1-mesa-dri libxkbcommon0 libxkbcommon-x11-0 libx11-6 libx11-xcb1 libxcursor1 libxi6 libwayland-client0 libwayland-egl1"
wanted="$build $run"
install=false
for option in "$@"; do
    case $option in
        --install) install=true ;;
        --build-only) wanted=$build ;;
        --run-only) wanted=$run ;;
        *)
            echo "unknown option $option; there are --install, --build-only and --run-only" >&2
            exit 2
            ;;
    esac
done
command -v dpkg-query >/dev/null 2>&1 || {
    echo "this is no Debian: there is no dpkg-query. README.md names the packages of other systems" >&2
    exit 2
}
missing=""
for package in $wanted; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing="$missing $package"
done
if [ "$wanted" != "$run" ] && ! command -v cargo >/dev/null 2>&1; then
    echo "missing: cargo and rustc 1.95 or newer (Debian's own are older; README.md says how to get Rust's toolchain)" >&2
fi
if [ -z "$missing" ]; then
    echo "nothing is missing"
elif "$install"; then
    apt-get update
    # shellcheck disable=SC2086 # a list of names on purpose
    DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing
else
    echo "missing:$missing" >&2
    echo "install them with: sudo $0 $* --install" >&2
    exit 1
fi
