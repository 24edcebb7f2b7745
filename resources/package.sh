#!/bin/sh
# Makes the Debian package target/debian/vatsketch_*.deb. Needs what a build needs, and:
#   cargo install cargo-deb --locked
#   apt-get install dpkg-dev       (it reads off which version of the C library the program needs)
# --no-build packs the release program that is there. The checkers of desktop entries, AppStream and Debian run at the end where installed.
set -eu
cd "$(dirname "$0")/.."
case ${1:-} in
    "") cargo build --release --locked ;;
    --no-build) ;;
    *)
        echo "unknown option $1; there is --no-build" >&2
        exit 2
        ;;
esac
program=target/release/vatsketch
made=target/package
[ -x "$program" ] || {
    echo "there is no $program; build it with: cargo build --release" >&2
    exit 1
}

rm -rf "$made"
mkdir -p "$made/man"
"$program" man >"$made/man/vatsketch.1"
# The page of the program names a page of each command.
sed -n 's/^vatsketch\\-\([a-z]*\)(1)$/\1/p' "$made/man/vatsketch.1" | while read -r command; do
    [ "$command" = help ] || "$program" man "$command" >"$made/man/vatsketch-$command.1"
done
for shell in bash zsh fish; do
    "$program" completions "$shell" >"$made/vatsketch.$shell"
done

# Debian's form of a licence: every line indented, an empty line as a full stop.
indented() { sed 's/[[:space:]]*$//; s/^$/./; s/^/ /' "$1"; }
{
    cat <<'END'
Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/
Upstream-Name: vatsketch
Comment: The program contains libraries in Rust with permissive licences of
 their own. Their names and licences are in third-party-licences.gz, next to
 this file.

Files: *
Copyright: 2026 the Vatsketch authors
License: MIT or Apache-2.0

Files: resources/fonts/NotoSans-*.ttf
Copyright: 2015 Google LLC
License: OFL-1.1

Files: resources/fonts/DejaVuSans.ttf
Copyright: 2003 Bitstream, Inc.
 2006 Tavmjong Bah
License: Bitstream-Vera

License: MIT
END
    indented LICENSE-MIT
    cat <<'END'

License: Apache-2.0
 On Debian systems the Apache License, version 2.0, is in
 /usr/share/common-licenses/Apache-2.0.

License: OFL-1.1
END
    indented resources/fonts/OFL.txt
    printf '\nLicense: Bitstream-Vera\n'
    indented resources/fonts/DEJAVU-LICENCE.txt
} >"$made/copyright"
resources/third-party-licences.sh | gzip -9n >"$made/third-party-licences.gz"
resources/bill-of-materials.sh >"$made/vatsketch.cdx.json"

cargo deb --no-build --locked

checked() { if command -v "$1" >/dev/null 2>&1; then "$@"; else echo "not checked: $1 is not installed" >&2; fi; }
checked desktop-file-validate resources/desktop/vatsketch.desktop
checked appstreamcli validate --no-net resources/desktop/vatsketch.metainfo.xml
checked lintian --fail-on error,warning target/debian/vatsketch_*.deb
