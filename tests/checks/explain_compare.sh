#!/bin/bash
# `eavemark explain` and `eavemark compare` as a user meets them: arguments,
# exit status, every rule there is. Depends on no particular rule.
#
# usage: explain_compare.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
export EAVEMARK_HOME="$source"
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() {
    failures=$((failures + 1))
    echo "FAILED: $*"
    sed 's/^/    out: /' out | head -5
    sed 's/^/    err: /' err | head -5
}
run() {
    local wanted=$1 got
    shift
    "$program" "$@" >out 2>err </dev/null
    got=$?
    [ $got -eq "$wanted" ] || flunk "exit $got, not $wanted: eavemark $*"
}
says()   { grep -qF -- "$1" out || flunk "not printed: $1"; }
warns()  { grep -qF -- "$1" err || flunk "not on standard error: $1"; }
silent() { [ ! -s out ] || flunk "standard output is not empty"; }
narrow() {
    [ "$(wc -L <out)" -le 80 ] || flunk "wider than 80 columns"
    ! grep -qiE '(is|are) (approved|compliant)' out || flunk "promises too much"
}

cp "$source/rules/cases/base.json" job.json
place=$("$program" completion jurisdictions | grep '^example/' | head -1)
models=$("$program" completion jurisdictions | grep '^model/.*-' | tail -2)
older=$(head -1 <<<"$models") newer=$(tail -1 <<<"$models")
rule=$("$program" completion rules | head -1)
figure=$("$program" completion figures | head -1)

# explain ----------------------------------------------------------------------

run 0 explain; says "$rule"; narrow
cp out listed
for name in $("$program" completion rules); do
    grep -q "^  $name " listed || flunk "$name is not listed"
done
run 0 explain "$rule"; says "$rule: "; says 'the figures it asks for'; narrow
run 0 explain "$figure"; says "$figure"; narrow
run 0 explain "$rule" job.json; says 'how this job is judged by it'; says '5 outcome'; narrow
run 0 explain "$rule" --jurisdiction "$place" --form json; says '"by_edition"'; says "\"$place\""
run 0 explain "$rule" -o report; silent; [ -s report ] || flunk "-o writes nothing"
run 2 explain "$rule" job.json -o job.json; silent; warns 'overwrite the job'
run 2 explain "${rule}x"; silent; warns "rule $rule"
run 2 explain zzzzzz.zzzzzz; silent; warns 'no rule and no figure'
run 2 explain drip edge; silent; warns 'several words to search for go in quotes'
run 0 explain Staple; says 'with "Staple"'; says 'underlayment.fasteners'; says 'deck.fasteners_barred'
narrow
run 0 explain staple --form json; says '"word"'
run 0 explain papers.liability; says 'all there are'; says 'jurisdictions/model/irc'
run 2 explain slope; silent; warns 'is a topic; name one of its rules: slope.double_underlayment, slope.least'
run 2 explain "$rule" missing.json; silent; warns missing.json
run 2 explain "$rule" --jurisdiction no/where; silent; warns no/where
run 2 explain "$rule" --date soon; silent; warns soon
run 2 explain "$rule" job.json more; silent; warns 'too many words'
run 2 explain "$rule" --form jsn; silent; warns 'did you mean "json"?'
mkdir -p nothing/rules nothing/jurisdictions
run 3 explain "$rule" --home nothing; silent; [ -s err ] || flunk "an empty home is passed over"

# What one edition changed of another ------------------------------------------

run 0 proof model/irc-2021 --beside model/irc-2018; narrow
says 'stricter  deck.nail_field_most.thin: was at most 12 in, now at most 6 in'
says 'beside International Residential Code, 2018'
grep -q 'passed' out && flunk "cases are run, though only differences are wanted"
run 0 proof model/irc-2021 --beside model/irc-2021; says 'no difference'
run 2 proof model/irc-2021 --beside model/irc-2019; silent; warns 'model/irc-2018'
run 2 proof --beside model/irc-2018; silent; warns 'named first'

# compare ----------------------------------------------------------------------

date=$(sed -n 's/.*"date": *"\([0-9-]*\)".*/\1/p' job.json | head -1)
run 0 compare job.json job.json; says '0 differ, '; narrow
run 0 compare job.json --date "$date" --date "$date"; says '0 differ'
sed 's/"kind": *"asphalt_shingle"/"kind": "slate"/' job.json >slate.json
cmp -s job.json slate.json && flunk "the base job has no shingles to change"
run 1 compare job.json slate.json; says 'fact moved'; says 'slate'; narrow
run 1 compare job.json slate.json --form json; says '"changes"'; says '"facts"'
run 1 compare slate.json job.json slate.json; says 'differ in outcome'; narrow
"$program" compare job.json --jurisdiction "$older" --jurisdiction "$newer" >out 2>err
[ $? -le 1 ] || flunk "two editions cannot be compared"
says "($older)"; says "($newer)"; narrow
run 1 compare -o report job.json slate.json; silent; grep -q 'fact moved' report || flunk "-o"
run 2 compare; silent; warns 'which jobs?'
run 2 compare job.json; silent; warns 'with what?'
run 2 compare job.json --jurisdiction "$older"; silent; warns 'with what?'
run 2 compare job.json slate.json --date 2026-01-01 --date 2026-02-01; silent; warns 'one thing'
run 2 compare job.json --jurisdiction "$older" --jurisdiction "$newer" --date 2026-01-01 \
    --date 2026-02-01; silent; warns 'one thing'
run 2 compare job.json missing.json; silent; warns missing.json
run 2 compare job.json --jurisdiction "$older" --jurisdiction no/where; silent; warns no/where
run 2 compare job.json slate.json -o job.json; silent; warns 'overwrite a job'
run 2 compare job.json slate.json --stage dek; silent; warns 'did you mean "deck"?'
[ "$(stat -c %s job.json)" -gt 100 ] || flunk "a job was overwritten"

[ $failures -eq 0 ] && echo "explain, compare: all well"
exit $((failures > 0))
