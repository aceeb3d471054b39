#!/usr/bin/env bash
# Installs what Eavemark needs (Debian 12), builds it, and checks an example
# house. Another job can be named: examples/run.sh JOB.json
set -euo pipefail
cd "$(dirname "$0")/.."

bash .ci/packages.sh gcc make cmake pkg-config liblua5.4-dev libcjson-dev libmd-dev
cmake -S . -B build -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF >/dev/null
cmake --build build --parallel >/dev/null

job=${1:-examples/porch-tear-off/job.json}
echo "\$ eavemark check $job"
status=0
build/eavemark check --home . "$job" || status=$?
echo
echo "exit status $status (0 nothing failed, 1 something did, 2 unusable job, 3 broken rule)"
[ "$status" -le 1 ]
