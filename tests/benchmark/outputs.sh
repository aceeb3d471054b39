#!/usr/bin/env bash
# outputs.sh EAVEMARK HOME BENCHMARK - a line "sha256  what" for every form of report on all
# examples and on 1,000 varied jobs, some of them damaged. The same lines before and after a
# change: it changed no output. HOME is the same folder both times.
set -eu
program=$1 home=$2 benchmark=$3
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$home"

# Each stream by itself: where they meet depends on how many processes there are.
told() {
    local status=0
    "$program" "$@" >"$work/out" 2>"$work/err" || status=$?
    printf '%s  %s\n' "$( { cat "$work/out" "$work/err"; echo "status $status"; } | sha256sum | cut -d' ' -f1)" \
        "$(echo "$*" | sed "s|$work/||g; s|$home/||g")"
}

for job in tests/houses/*/job*.json; do
    for form in "" "--all" "--form json" "--form json --all" "--form html" "--form html --all" \
        "--stage deck" "--stage final --form json"; do
        # shellcheck disable=SC2086
        told check --home "$home" $form "$job"
    done
    told takeoff --home "$home" --form json "$job"
    told compare --home "$home" --form json "$job" tests/houses/cross-gable/job.json
done
"$benchmark" --jobs varied 1000 "$home" >"$work/varied.jsonl"
# A slip each: a name, a unit, a comma, a value that cannot be, a key twice.
head -n 200 "$work/varied.jsonl" | sed -e 'n;s/"roof"/"rof"/;n;s/"B"/"b"/;n;s/,"site"/,,"site"/' \
    -e '7~9s/"layers":1/"layers":-1/;8~9s/{"eavemark_job":1/{"eavemark_job":1,"house":{}/' \
    >"$work/damaged.jsonl"
told check --home "$home" --lines "$work/varied.jsonl"
told check --home "$home" --lines --all "$work/varied.jsonl"
told check --home "$home" --lines --stage dry-in "$work/varied.jsonl"
# The folder's name is in the messages.
(cd "$work" && told check --home "$home" --lines damaged.jsonl)
