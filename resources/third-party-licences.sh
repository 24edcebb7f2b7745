#!/bin/sh
# Prints the libraries that the program contains, each with its licence, and every text of a licence once. Their licences ask for that where
# the program is handed on without its source. It reads what cargo has downloaded, so it runs after a build.
set -eu
cd "$(dirname "$0")/.."
downloaded=${CARGO_HOME:-$HOME/.cargo}/registry/src
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cargo tree --locked --offline --edges normal,no-proc-macro --prefix none --format '{p}|{l}' |
    sed 's/ (\*)$//; s/ (proc-macro)//' | sed -n 's/^\([^ ]*\) v\([^ |]*\)[^|]*|/\1 \2 /p' | sort -u >"$work/libraries"
while read -r name version licence; do
    [ "$name" != vatsketch ] || continue
    echo "$name $version: $licence"
    for text in "$downloaded"/*/"$name-$version"/[Ll][Ii][Cc][Ee][Nn][CcSs][Ee]* "$downloaded"/*/"$name-$version"/COPYING* \
        "$downloaded"/*/"$name-$version"/NOTICE* "$downloaded"/*/"$name-$version"/UNLICENSE*; do
        [ -f "$text" ] || continue
        sum=$(tr -d '[:space:]' <"$text" | cksum | tr ' ' -)
        [ -f "$work/$sum.text" ] || cp "$text" "$work/$sum.text"
        echo "$name $version" >>"$work/$sum.names"
    done
done <"$work/libraries"

for names in "$work"/*.names; do
    printf '\n%s\n' "----------------------------------------------------------------------------"
    tr '\n' ',' <"$names" | sed 's/,$//; s/,/, /g' | fold -s -w 76
    printf ':\n\n'
    tr -d '\r' <"${names%.names}.text"
done
