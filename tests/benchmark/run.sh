#!/usr/bin/env bash
# run.sh [RUNS] - builds, and prints what checks cost (benchmark.c); each figure is the
# median of so many runs (5).
set -eu
source=$(cd "$(dirname "$0")/../.." && pwd)
build=$source/build-benchmark
cmake -S "$source" -B "$build" -DCMAKE_BUILD_TYPE=RelWithDebInfo >/dev/null
cmake --build "$build" -j "$(nproc)" --target eavemark benchmark >/dev/null
"$build/tests/benchmark" "$build/eavemark" "$source" "${1:-5}"
