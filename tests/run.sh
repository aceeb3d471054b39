#!/usr/bin/env bash
# Installs what the tests need (Debian 12), builds with the sanitizers and warnings as
# errors, and runs every test but those labelled long; builds without sanitizers, and
# runs those and Valgrind; builds with another compiler; fuzzes each target for a minute.
# Fails when anything of it does.
set -euo pipefail
cd "$(dirname "$0")/.."

bash .ci/packages.sh gcc make cmake pkg-config liblua5.4-dev libcjson-dev libmd-dev libcmocka-dev \
  g++ valgrind clang clang-tidy clang-format parallel lld wasi-libc libclang-rt-14-dev-wasm32 \
  dpkg-dev zsh fish
command -v node >/dev/null && command -v npm >/dev/null || bash .ci/packages.sh nodejs npm
(cd tests/schema && npm ci --silent --no-audit --no-fund)
# The pages are opened in a browser, with fonts that every machine shall share.
if [ "${EAVEMARK_NO_BROWSER:-}" != 1 ]; then
  bash .ci/packages.sh chromium fonts-dejavu-core
  (cd tests/pages && npm ci --silent --no-audit --no-fund)
fi

cmake -S . -B build-test -DEAVEMARK_SANITIZE=ON -DEAVEMARK_WERROR=ON >/dev/null
cmake --build build-test --parallel
ctest --test-dir build-test --output-on-failure --parallel 2 --label-exclude long

cmake -S . -B build-plain -DCMAKE_BUILD_TYPE=RelWithDebInfo -DEAVEMARK_WERROR=ON >/dev/null
cmake --build build-plain --parallel
ctest --test-dir build-plain --output-on-failure --parallel 2 --label-regex long

# Threads with a handle each share nothing.
cmake -S . -B build-threads -DEAVEMARK_THREADS=ON -DEAVEMARK_WERROR=ON >/dev/null
cmake --build build-threads --parallel --target test_threads
build-threads/tests/test_threads

# Under Valgrind a check, a refused job and the rule cases must neither leak nor read
# what was not written.
bash tests/checks/valgrind.sh build-plain/eavemark .

# Laid out as .clang-format says.
find engine tests -name node_modules -prune -o -name '*.[ch]' -print \
  | xargs clang-format --dry-run -Werror

# Another compiler's warnings, and what .clang-tidy asks but for the analyzer's part.
CC=clang cmake -S . -B build-clang -DCMAKE_BUILD_TYPE=Debug -DEAVEMARK_WERROR=ON >/dev/null
cmake --build build-clang --parallel >/dev/null
printf '%s\n' engine/*.c engine/*/*.c \
  | xargs -P2 -n16 clang-tidy -p build-clang --quiet --checks='-clang-analyzer-*' 2>/dev/null

# A minute of made-up input for each target (tests/fuzz); what once broke something is
# played by ctest above.
bash tests/fuzz/run.sh 60
echo "All tests passed."
