#!/bin/bash
# What a place's own words, a full disk, a bad day and another prefix do to the program.
#
# usage: edges.sh PROGRAM SOURCE_FOLDER BUILD_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
build=$(realpath "$3") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
export EAVEMARK_HOME="$source" ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }
has() { grep -qF -- "$2" "$1" || { flunk "$1 lacks: $2"; tail -5 "$1"; }; }
job=$source/tests/houses/porch-tear-off/job.json

# A disk that is full is called full.
for command in "check $job" "check --all $job" fields "takeoff $job" "figures deck" \
    "explain slope.least" manual "card --stage deck $job"; do
    # shellcheck disable=SC2086
    "$program" $command >/dev/full 2>said && flunk "$command: nothing was said of a full disk"
    has said "standard output: cannot be written: No space left on device"
done

# A day that is none is blamed once, and on whoever gave it.
for command in "check $job" "takeoff $job" "card --stage deck $job" "compare $job $job"; do
    # shellcheck disable=SC2086
    "$program" $command --date 2026-13-01 >/dev/null 2>said
    [ $? = 2 ] || flunk "$command: another status than 2"
    [ "$(cat said)" = '--date: "2026-13-01" is not a date (YYYY-MM-DD)' ] || flunk "$command: $(cat said)"
done

# A county's words do not steer the terminal, and its figures are figures.
mkdir home
cp -r "$source/rules" "$source/jurisdictions" home
printf 'field "existing.moss" { type = "yes_no", stage = "permit", ask = "Moss \\27[31m \\xe2\\x80\\xae red?" }\n' \
    >home/jurisdictions/example/edge.rules.lua
edge() {
    printf 'jurisdiction "example/edge" { title = "Edge", invented = true, follows = "model/irc-2021",\n rules = "edge.rules.lua", figures = { %s } }\n' "$1" \
        >home/jurisdictions/example/edge.lua
}
edge ''
"$program" fields existing --home home --jurisdiction example/edge --date 2026-01-01 >said 2>&1 \
    || flunk "fields: $(cat said)"
has said 'Moss \x1b[31m \u{202e} red?'
refused() { # FIGURE WORDS
    edge "$1"
    "$program" check --home home --jurisdiction example/edge --date 2026-01-01 "$job" >out 2>said
    [ $? = 3 ] || flunk "$1: not refused"
    has said "$2"
}
refused '["layers.most"] = { 1e308, cite = "1" }' "is out of range"
refused '["layers.most"] = { 1e10, cite = "1" }' "is out of range"
for day in 20260230 99999999 1 -20260101 20260101.5; do
    refused "[\"shingle.hail_early_most\"] = { $day, cite = \"1\" }" "is no day"
done
refused '["layers.overlay_over_tile_banned"] = { { "a\0b" }, cite = "1" }' "a member of a set holds a zero byte"
edge '["shingle.hail_early_most"] = { 20260228, cite = "1" }'
"$program" check --home home --jurisdiction example/edge --date 2026-01-01 "$job" >out 2>said
[ $? -le 1 ] || flunk "a good day: $(cat said)"

# An installation finds its own data, under whatever prefix.
cmake --install "$build" --prefix "$work/elsewhere" >said 2>&1 || flunk "install: $(cat said)"
printf 'rule "edge.marker" { title = "Marked", stage = "permit", mend = "x", judge = function() end }\n' \
    >"$work/elsewhere/share/eavemark/rules/edge.lua"
unset EAVEMARK_HOME
"$work/elsewhere/bin/eavemark" explain edge. >said 2>&1
has said "edge.marker"

# A program in its build folder goes by the tree around it as it is now, not as it was packed.
mkdir -p "$work/tree/build"
cp -r "$work/elsewhere/share/eavemark/rules" "$work/elsewhere/share/eavemark/jurisdictions" "$work/tree/"
cp "$work/elsewhere/bin/eavemark" "$work/tree/build/"
"$work/tree/build/eavemark" explain edge. >said 2>&1
has said "edge.marker"
# Alone it has what was packed into it.
cp "$work/elsewhere/bin/eavemark" "$work/alone"
"$work/alone" explain slope.least >said 2>&1
has said "slope.least"

[ $failures -eq 0 ] && echo "edges: all well"
exit $((failures > 0))
