#!/bin/sh
# Prints the bill of materials of the program: every library that is in it, with its version, licence, checksum and what it needs itself, as CycloneDX 1.5
# (JSON). All of it stands in Cargo.lock, so the same sources give the same text.
set -eu
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# Name, version and licence of what is in the program; what only builds it is not.
cargo tree --locked --offline --edges normal,no-proc-macro --prefix none --format '{p}|{l}' |
    sed 's/ (\*)$//; s/ (proc-macro)//' | sed -n 's/^\([^ ]*\) v\([^ |]*\)[^|]*|\(.*\)$/\1|\2|\3/p' | sort -u >"$work/inside"
# What the program itself needs; Cargo.lock does not tell that from what only its tests need.
cargo tree --locked --offline --edges normal,no-proc-macro --depth 1 --prefix none --format '{p}' |
    sed -n '1d; s/^\([^ ]*\) v\([^ ]*\).*$/\1@\2/p' | sort -u | tr '\n' ' ' >"$work/own"

# One line a package: name|version|checksum|what it needs, with spaces; a version stands behind a name only where there are two.
awk -F'"' '
    function end() { if (name != "") print name "|" version "|" sum "|" needs; name = version = sum = needs = ""; inside = 0 }
    /^\[\[package\]\]/ { end() }
    /^name = / { name = $2 }
    /^version = / && name != "" { version = $2 }
    /^checksum = / { sum = $2 }
    /^dependencies = \[/ { inside = 1; next }
    /^\]/ { inside = 0 }
    inside { split($2, part, " "); needs = needs (needs == "" ? "" : " ") part[1] (part[2] == "" ? "" : "@" part[2]) }
    END { end() }
' Cargo.lock >"$work/locked"

awk -F'|' -v own_needs="$(cat "$work/own")" '
    function reference(name, version) { return "pkg:cargo/" name "@" version }
    # It names its licence by the text alone, which is that of Apache 2.0; a test reads it.
    FILENAME ~ /inside$/ && $1 == "ical" && $3 == "" { licence[$1 "@" $2] = "Apache-2.0"; versions[$1] = $2; next }
    FILENAME ~ /inside$/ { licence[$1 "@" $2] = $3; versions[$1] = versions[$1] " " $2; next }
    !(($1 "@" $2) in licence) { next }
    $1 == "vatsketch" { own = $2; next }
    { order[++count] = $1 "@" $2; sum[$1 "@" $2] = $3; needs[$1 "@" $2] = $4 }
    # What is needed and in the program, as references with commas.
    function inside(list,    at, n, part, name, version, known, found, one) {
        n = split(list, part, " ")
        for (at = 1; at <= n; at++) {
            split(part[at], one, "@"); name = one[1]; version = one[2]
            if (version == "") { split(versions[name], known, " "); version = known[1] }
            if ((name "@" version) in licence) found = found (found == "" ? "" : ", ") "\"" reference(name, version) "\""
        }
        return found
    }
    END {
        own_reference = reference("vatsketch", own)
        printf "{\n  \"bomFormat\": \"CycloneDX\",\n  \"specVersion\": \"1.5\",\n  \"version\": 1,\n"
        printf "  \"metadata\": { \"component\": { \"type\": \"application\", \"bom-ref\": \"%s\", \"name\": \"vatsketch\", \"version\": \"%s\", ", own_reference, own
        printf "\"purl\": \"%s\", \"licenses\": [{ \"expression\": \"%s\" }] } },\n  \"components\": [\n", own_reference, licence["vatsketch@" own]
        for (at = 1; at <= count; at++) {
            key = order[at]; split(key, one, "@"); words = licence[key]
            # An older way to write "or".
            gsub(/ *\/ */, " OR ", words)
            printf "    { \"type\": \"library\", \"bom-ref\": \"%s\", \"name\": \"%s\", \"version\": \"%s\", ", reference(one[1], one[2]), one[1], one[2]
            printf "\"purl\": \"%s\", ", reference(one[1], one[2])
            printf "\"licenses\": [{ \"expression\": \"%s\" }], \"hashes\": [{ \"alg\": \"SHA-256\", \"content\": \"%s\" }] }%s\n", words, sum[key], at < count ? "," : ""
        }
        printf "  ],\n  \"dependencies\": [\n    { \"ref\": \"%s\", \"dependsOn\": [%s] }%s\n", own_reference, inside(own_needs), count ? "," : ""
        for (at = 1; at <= count; at++) {
            key = order[at]; split(key, one, "@")
            printf "    { \"ref\": \"%s\", \"dependsOn\": [%s] }%s\n", reference(one[1], one[2]), inside(needs[key]), at < count ? "," : ""
        }
        printf "  ]\n}\n"
    }
' "$work/inside" "$work/locked"
