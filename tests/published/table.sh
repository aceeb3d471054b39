#!/usr/bin/env bash
# Prints every check against a published figure as one table: kind of source,
# what, where it is printed, the answer printed, ours, difference, tolerance,
# and why it is that wide. Usage: tests/published/table.sh [BUILD_DIR]
# (a folder that tests/run.sh has built)
set -euo pipefail
cd "$(dirname "$0")/../.."
build=${1:-build-test}
echo '| kind | what | source | published | ours | difference | tolerance | why |'
echo '|---|---|---|---|---|---|---|---|'
for test in "$build"/tests/test_published_*; do
  [ -x "$test" ] && EAVEMARK_TABLE=1 "$test" 2>/dev/null | grep -a '^| ' || true
done
