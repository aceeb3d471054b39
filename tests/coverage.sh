#!/usr/bin/env bash
# Runs the tests on a build that counts lines and prints the line coverage of
# engine/, file by file.
set -euo pipefail
cd "$(dirname "$0")/.."
bash .ci/packages.sh gcc make cmake pkg-config liblua5.4-dev libcjson-dev libmd-dev libcmocka-dev gcovr
cmake -S . -B build-coverage -DCMAKE_BUILD_TYPE=Debug -DEAVEMARK_COVERAGE=ON >/dev/null
cmake --build build-coverage --parallel >/dev/null
find build-coverage -name '*.gcda' -delete
ctest --test-dir build-coverage --parallel 2 --output-on-failure >/dev/null
gcovr --root . --filter 'engine/' --object-directory build-coverage
