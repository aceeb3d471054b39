#!/usr/bin/env bash
# The page's script names no field, rule or figure: what it asks and says comes from the
# engine. Names are held against the whole catalogue; of one-word names, which are also
# words of any script, only as facts of a job: "/word", or the quoted word itself.
#
# usage: no_names.sh PROGRAM SOURCE_FOLDER
set -euo pipefail
program=$(realpath "$1") source=$(realpath "$2")
script=$source/engine/page/script
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# Every name along every path of the catalogue, every rule, every figure.
"$program" fields --home "$source" | grep -oE '^  [a-z][A-Za-z0-9_.]+' | tr -d ' ' >"$work/paths"
tr '.' '\n' <"$work/paths" | sed 's/\[\]//' | sort -u | grep . >"$work/names"
"$program" completion rules --home "$source" >"$work/dotted"
"$program" completion figures --home "$source" >>"$work/dotted"
grep '\.' "$work/paths" >>"$work/dotted"
[ "$(wc -l <"$work/names")" -gt 300 ] && [ "$(wc -l <"$work/dotted")" -gt 700 ] \
    || { echo "FAILED: too few names to look for"; exit 1; }
grep _ "$work/names" >"$work/long"
# HTML's own words, and calls of eavemark.h and what goes into them, are also names of facts.
html='pre|form|date|number' calls='takeoff|proof|job|name|shop|stage'
grep -v _ "$work/names" | grep -vxE "$html|$calls" | sed -E 's/.*/"&"\n"\/&/' >"$work/short"
found=0
grep -rnwF -f "$work/long" "$script" && found=1
grep -rnF -f <(sort -u "$work/dotted") "$script" && found=1
grep -rnF -f "$work/short" "$script" && found=1
[ $found = 0 ] || { echo "FAILED: the page's script names these"; exit 1; }
echo "page_script: none of $(wc -l <"$work/names") names of facts, $(sort -u "$work/dotted" | wc -l) of rules, figures and paths"
