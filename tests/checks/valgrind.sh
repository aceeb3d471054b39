#!/usr/bin/env bash
# valgrind.sh PROGRAM SOURCE_DIR: the program under Valgrind's memory checker.
set -uo pipefail
program=$1 source=$2
failed=0

# try EXPECTED_STATUS ARGUMENT...
try() {
  local expected=$1
  shift
  valgrind --quiet --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=definite,possible \
    "$program" "$@" >/dev/null 2>"$log"
  local status=$?
  if [ "$status" -ne "$expected" ]; then
    echo "valgrind: eavemark $*: exit status $status, expected $expected" >&2
    head -n 40 "$log" >&2
    failed=1
  fi
}

log=$(mktemp)
trap 'rm -f "$log"' EXIT
try 1 check --home "$source" "$source/tests/houses/porch-tear-off/job.json"
try 1 check --home "$source" --form json "$source/tests/houses/overlay-gable/job.json"
try 2 check --home "$source" "$source/tests/schema/bad/unknown_field_at_the_top.json"
try 0 fields --home "$source" --schema
try 0 proof --home "$source" slope
[ "$failed" -eq 0 ] && echo "valgrind: clean"
exit "$failed"
