#!/bin/bash
# The line items of rules/README.md: every row names rules that there are, and
# their stages, or says why nothing is checked.
#
# usage: line_items.sh PROGRAM SOURCE
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }

# Each rule with its stage, as one report has them: a finding for every rule.
"$program" check --home "$source" --form json --all "$source/tests/houses/porch-tear-off/job.json" \
    >"$work/report.json"
[ $? -le 1 ] || { echo "no report"; exit 1; }
tr -d '\n' <"$work/report.json" \
    | grep -oE '"rule": *"[^"]*", *"stage": *"[^"]*"' \
    | sed -E 's/"rule": *"([^"]*)", *"stage": *"([^"]*)"/\1 \2/' | sort -u >"$work/rules"
[ "$(wc -l <"$work/rules")" -gt 200 ] || flunk "only $(wc -l <"$work/rules") rules in the report"

sed '1,/^## Line items$/d' "$source/rules/README.md" | grep '^|' \
    | grep -vE '^\|(---|  *line item )' >"$work/rows"
rows=$(wc -l <"$work/rows")
[ "$rows" -gt 80 ] || flunk "only $rows rows"

unchecked=0
while IFS='|' read -r _ item named stages _; do
    item=$(echo $item) named=$(echo $named) stages=$(echo $stages)
    if [[ $named == "not checked: "?* ]]; then
        unchecked=$((unchecked + 1))
        [ "$stages" = - ] || flunk "$item: not checked, yet at a stage"
        continue
    fi
    names=$(grep -oE '[a-z_]+\.[a-zA-Z0-9_]+' <<<"$named")
    [ -n "$names" ] || flunk "$item: no rule and no reason"
    have=
    for name in $names; do
        grep -q "^$name " "$work/rules" || flunk "$item: there is no rule $name"
    done
    for stage in permit deck dry-in final; do
        for name in $names; do
            grep -qx "$name $stage" "$work/rules" && { have="$have, $stage"; break; }
        done
    done
    [ "${have#, }" = "$stages" ] || flunk "$item: the rules are of ${have#, }, not $stages"
done <"$work/rows"

[ "$failures" = 0 ] || exit 1
echo "line items: $rows rows, $unchecked of them with a reason instead of a rule"
