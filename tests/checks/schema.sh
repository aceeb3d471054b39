#!/usr/bin/env bash
# schema.sh PROGRAM SOURCE_DIR: the JSON Schema that `eavemark fields --schema`
# prints, held by another validator against every example job (under its own
# place and date, whose fields may be its own) and against a set of bad jobs; and
# the one of reports, held against what `eavemark check` says of them.
set -euo pipefail
program=$1 source=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$source/tests/schema"

# Without a place the schema knows the fields of all of them.
"$program" fields --schema --home "$source" >"$work/common.json"
node check.mjs "$work/common.json" minimal.json "$source"/examples/*/job*.json "$source"/tests/houses/*/job*.json \
  "$source"/tests/fuzz/seeds/job/*.json --bad bad

jobs=0
for job in "$source"/examples/*/job*.json "$source"/tests/houses/*/job*.json; do
  place=$(node -p 'JSON.parse(require("fs").readFileSync(process.argv[1])).jurisdiction' "$job")
  date=$(node -p 'JSON.parse(require("fs").readFileSync(process.argv[1])).date' "$job")
  "$program" fields --schema --jurisdiction "$place" --date "$date" --home "$source" \
    >"$work/place.json"
  node check.mjs "$work/place.json" "$job" --bad bad >"$work/said" || { cat "$work/said" >&2; exit 1; }
  jobs=$((jobs + 1))
done
[ "$jobs" -ge 4 ] || { echo "only $jobs example jobs were found" >&2; exit 1; }
echo "$jobs example jobs agree with the schema of their place"

# Reports: of the examples, of a job that leaves most things open, with what does not
# apply, and as lines of many.
mkdir "$work/reports"
report() { "$program" check --form json --home "$source" "$@" || [ $? -eq 1 ]; }
oneline() { node -p 'JSON.stringify(JSON.parse(require("fs").readFileSync(process.argv[1])))' "$1"; }
for job in minimal.json "$source"/examples/*/job*.json "$source"/tests/houses/*/job*.json; do
  report "$job" >"$work/reports/$(basename "$(dirname "$job")")-$(basename "$job")"
done
for job in minimal.json "$source"/tests/houses/*/job*.json; do oneline "$job"; done >"$work/jobs"
for job in "$source"/examples/*/job*.json; do oneline "$job"; done >"$work/short"
report --all minimal.json >"$work/reports/all.json"
report --lines "$work/jobs" >"$work/lines"
report --lines --shop "$source/examples/shop.json" "$work/short" >>"$work/lines"
split -l 1 --additional-suffix=.json "$work/lines" "$work/reports/line-"
node report.mjs "$source/engine/report/report.schema.json" report.json "$work/reports"
