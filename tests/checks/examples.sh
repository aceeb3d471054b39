#!/bin/bash
# The example houses: each job's report is kept beside it (job.json is the permit
# stage) and must come out again byte for byte: expected-STAGE.txt is the text, but
# for the fingerprint, which moves with every edit of a rule; expected-STAGE.findings
# the findings of the JSON that apply, a line each (findings.mjs): of a later stage's job
# those that differ from the permit's, "-" as planned and "+" now. schema.sh holds the
# JSON as a whole. --accept writes both anew: read the difference before keeping it.
#
# usage: examples.sh [--accept] [PROGRAM]     (without PROGRAM: build/eavemark)
set -u
source=$(cd "$(dirname "$0")/../.." && pwd) || exit 2
accept=false
[ "${1:-}" = --accept ] && { accept=true; shift; }
program=$(realpath "${1:-$source/build/eavemark}") || exit 2
[ -x "$program" ] || { echo "there is no program $program"; exit 2; }
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$source" || exit 2
unset EAVEMARK_HOME NO_COLOR
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0 jobs=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }

mask() { sed -E 's/^(Rules and figures used: )[0-9a-f]+$/\1masked/'; }
count() { sed -nE "s/.*\"summary\": \{.*\"$1\": ([0-9]+).*/\1/p" "$work/json" | head -1; }

# report JOB: both forms into $work/txt and $work/json, and the latter's findings.
report() {
    local form all status
    for form in txt json; do
        all=; [ $form = txt ] || all=--all
        "$program" check $all --home . --form "${form/txt/text}" "$1" 2>"$work/err" | mask >"$work/$form"
        status=${PIPESTATUS[0]}
        [ ! -s "$work/err" ] || flunk "$1: $(head -3 "$work/err")"
        [ "$status" -le 1 ] || flunk "$1: exit status $status"
    done
    tr '\n' ' ' <"$work/json" | sed -E 's/ +/ /g' >"$work/flat"
    mv "$work/json" "$work/kept" && mv "$work/flat" "$work/json"
    if [ "$(count fail)" = 0 ]; then wanted=0; else wanted=1; fi
    [ "$status" -eq "$wanted" ] || flunk "$1: exit status $status with $(count fail) failed"
    # An example leaves nothing untold of its stage, and no rule errs on it.
    untold=$(grep -oE '"ask": "(job|place)"' "$work/json" | wc -l)
    [ "$untold" = 0 ] || flunk "$1: $untold open at its stage"
    [ "$(count broken)" = 0 ] || flunk "$1: $(count broken) broken"
    mv "$work/kept" "$work/json"
    node tests/checks/findings.mjs <"$work/json" >"$work/findings" || flunk "$1: no findings"
}

# keep NAME FILE: compares, or with --accept replaces.
keep() {
    if $accept; then
        [ $failures -eq "$before" ] && [ -s "$2" ] && cp "$2" "$1"
        return
    fi
    [ -f "$1" ] || { flunk "$1 is missing (write it with --accept)"; return; }
    cmp -s "$1" "$2" && return
    flunk "$1 differs (if that is meant: tests/checks/examples.sh --accept)"
    diff "$1" "$2" | head -10
}

# What the visit moved: lines of the permit's findings, and those in their place.
moved() {
    diff --old-line-format='- %L' --new-line-format='+ %L' --unchanged-line-format= "$1" "$2"
}

for job in examples/*/job.json examples/*/job-*.json; do
    jobs=$((jobs + 1)) before=$failures
    folder=$(dirname "$job")
    stage=$(basename "$job" .json)
    stage=${stage#job}; stage=${stage#-}; stage=${stage:-permit}
    report "$job"
    [ "$stage" = mended ] && grep -q '"outcome": "fail"' "$work/json" && flunk "$job: something fails"
    keep "$folder/expected-$stage.txt" "$work/txt"
    case $stage in
    permit) cp "$work/findings" "$work/$(basename "$folder").permit" ;;
    deck | dry-in | final)
        moved "$work/$(basename "$folder").permit" "$work/findings" >"$work/moved"
        mv "$work/moved" "$work/findings"
        ;;
    esac
    keep "$folder/expected-$stage.findings" "$work/findings"
    grep -q "$(basename "$job")\|job.json. and its stages" "$folder/README.md" 2>/dev/null \
        || flunk "$folder/README.md does not tell of $(basename "$job")"
    grep -q '"invented": true' "$work/json" || flunk "$job: the place is not an invented one"
done

# The short job and the long one of the same house say the same: what is met, missed or left
# off by the one is so by the other.
long=examples/porch-tear-off/expected-long.findings
outcomes() { grep ' | ' "$1" | grep -v ' | open' | cut -d'|' -f1-3; }
said=$(outcomes "${long/long/permit}" | grep -vxFf <(outcomes "$long"))
[ -z "$said" ] || flunk "${long/long/permit}: $(wc -l <<<"$said") lines are not in $long: $said"

# No report is kept of a job that is gone, nor in another form.
for kept in examples/*/expected-*; do
    [ -e "$kept" ] || continue
    stage=$(basename "$kept"); stage=${stage#expected-}; stage=-${stage%.*}; stage=${stage/#-permit/}
    case $kept in *.txt | *.findings) ;; *) stage=.other ;; esac
    [ -f "$(dirname "$kept")/job$stage.json" ] && continue
    if $accept; then rm "$kept"; else flunk "$kept is the report of no job, or of another form"; fi
done

[ "$jobs" -ge 16 ] || flunk "only $jobs jobs"
[ $failures -eq 0 ] && echo "examples: $jobs jobs, all as expected"
exit $((failures > 0))
