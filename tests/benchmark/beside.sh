#!/usr/bin/env bash
# beside.sh [RUNS [JOBS]] - twelve thresholds over the same jobs by general-purpose engines
# side by side: JSON Schema (ajv), JSON logic (json-logic-js), CLIPS, jq, Lua alone, Eavemark.
#
# Installs what it needs (Debian packages, and two npm packages below build-benchmark), builds,
# compares what each says of every complete job, shows what each says of a job that lacks a
# fact, and prints what a job costs: processor time, the median of RUNS (5), over JOBS (2000)
# less what starting up with one job costs. No test: nothing is held against a time.
set -eu
runs=${1:-5} count=${2:-2000}
source=$(cd "$(dirname "$0")/../.." && pwd)
beside=$source/tests/benchmark/beside
build=$source/build-benchmark
modules=$build/beside
bash "$source/.ci/packages.sh" clips jq lua5.4
command -v npm >/dev/null || bash "$source/.ci/packages.sh" nodejs npm
cmake -S "$source" -B "$build" -DCMAKE_BUILD_TYPE=RelWithDebInfo >/dev/null
cmake --build "$build" -j "$(nproc)" --target eavemark benchmark >/dev/null
mkdir -p "$modules"
[ -e "$modules/package.json" ] || echo '{ "private": true }' >"$modules/package.json"
[ -e "$modules/node_modules/json-logic-js" ] ||
    npm install --silent --no-fund --no-audit --prefix "$modules" ajv@8 json-logic-js@2 >/dev/null
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
node "$beside/write.mjs" "$source" "$folder" "$count"
cd "$folder"

# The command of an engine for a file of jobs.
command_of() { # ENGINE JOBS
    case $1 in
    eavemark) command=("$build/eavemark" check --lines --jobs 1 --home home "$2") ;;
    eavemark-brief) command=("$build/eavemark" check --lines --brief --jobs 1 --home home "$2") ;;
    ajv | json-logic) command=(node "$beside/judge.mjs" "$1" "$modules" "$folder" "$2") ;;
    jq) command=(jq -r -f twelve.jq "$2") ;;
    clips) command=(clips -f2 "$2.clips") ;;
    lua) command=(lua5.4 twelve.lua "$2") ;;
    esac
}

# What it says of each job: 1 met, 0 not met, ? open, e an error, - nothing.
bits_of() { # ENGINE JOBS
    command_of "$1" "$2"
    case $1 in
    eavemark) { "${command[@]}" || [ $? -eq 1 ]; } | node "$beside/bits.mjs" ;;
    clips) "${command[@]}" | grep -xE '[-01]{12}' ;;
    *) "${command[@]}" ;;
    esac
}

engines=(eavemark ajv json-logic clips jq lua)
for engine in "${engines[@]}"; do
    bits_of "$engine" jobs >"$engine.bits"
    if ! cmp -s expected "$engine.bits"; then
        echo "$engine says otherwise of complete jobs:"
        diff expected "$engine.bits" | head -4
        exit 1
    fi
done
met=$(tr -d '\n0' <expected | wc -c)
echo "$count complete jobs of $(($(wc -c <jobs) / count)) bytes, $((count * 12)) verdicts" \
    "($met met): all ${#engines[@]} agree."

seconds_of() { # ENGINE JOBS
    command_of "$1" "$2"
    command[0]=$(command -v "${command[0]}")
    "$build/tests/benchmark" --cost "$runs" /dev/null "${command[@]}" || [ $? -eq 1 ]
}
parse=$("$build/tests/benchmark" --parse "$runs" jobs)
echo
printf '%-26s %12s %10s %10s %8s\n' "" "us a job" "x parse" "start ms" "MB"
row() { # NAME ENGINE
    local all one megabytes whole first
    whole=$(seconds_of "$2" jobs)
    first=$(seconds_of "$2" one)
    read -r all megabytes <<<"$whole"
    read -r one _ <<<"$first"
    awk -v name="$1" -v all="$all" -v one="$one" -v n="$count" -v parse="$parse" -v mb="$megabytes" \
        'BEGIN { each = (all - one) / (n - 1); printf "%-26s %12.1f %10.1f %10.1f %8.1f\n",
            name, 1e6 * each, each / (parse / n), 1e3 * one, mb }'
}
awk -v parse="$parse" -v n="$count" \
    'BEGIN { printf "%-26s %12.1f %10.1f\n", "cJSON_Parse", 1e6 * parse / n, 1 }'
row "Eavemark, whole findings" eavemark
row "Eavemark, --brief" eavemark-brief
row "ajv, all errors" ajv
row "json-logic-js" json-logic
row "CLIPS, without any JSON" clips
row "jq" jq
row "Lua alone" lua

echo
echo "A job at its limits that lacks the 8th fact (at least), and one that lacks the 11th (at most):"
for engine in "${engines[@]}"; do
    printf '%-26s %s  %s\n' "$engine" "$(bits_of "$engine" lacking-lap)" \
        "$(bits_of "$engine" lacking-spacing)"
done
cat <<'TEXT'
    (1 met, 0 not met, ? open, e an error, - nothing said)

What is comparable: the verdicts on complete jobs, from the same bytes, and the time of reading
and judging. What is not:
             checks the    facts and    fact missing    section and      bounds carry
             job's names   arithmetic   is              source cited     units
  Eavemark   yes           yes          open, asked     yes              yes, checked
  ajv        no            path, rule   told apart      no               no
  JSON logic no            no           taken as zero   no               no
  CLIPS      no            no           silence         no               no
  jq         no            no           less than all   no               no
  Lua        no            no           an error        no               no
CLIPS reads facts written in its own form beforehand: its time holds no JSON. Lua's time is
mostly its reader of JSON, in Lua. ajv and JSON logic are given no more than the twelve facts'
names: they say nothing of a field that is misspelled elsewhere. Eavemark holds the whole job
against its catalogue (types, ranges, choices, references) and writes every finding with trace;
--brief writes counts and what failed.
TEXT
