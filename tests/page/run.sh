#!/usr/bin/env bash
# Builds the page and tests it in a browser. 77 (skipped) without the packages that its
# build takes, or with EAVEMARK_NO_BROWSER=1.
#
# usage: run.sh BUILD_FOLDER SOURCE_FOLDER
set -euo pipefail
build=$(realpath "$1") source=$(realpath "$2")
[ "${EAVEMARK_NO_BROWSER:-}" != 1 ] || exit 77
for package in clang lld wasi-libc libclang-rt-14-dev-wasm32 dpkg-dev; do
    dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null | grep -q '^installed' \
        || { echo "skipped: $package is not installed"; exit 77; }
done
cmake --build "$build" --target page >"$build/page.log" 2>&1 || { tail -20 "$build/page.log"; exit 1; }
node "$source/tests/page/same.mjs" "$build" "$source"
for part in taps files manners; do
    node "$source/tests/page/$part.mjs" "$build" "$source"
done
