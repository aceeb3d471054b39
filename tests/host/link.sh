#!/usr/bin/env bash
# The installed library exports eavemark_* and nothing else: a host program that has a
# name of its own for each of the engine's links with it, as C and as C++, and prints the
# report that the program prints.
#
# usage: link.sh BUILD_FOLDER SOURCE_FOLDER C_COMPILER
set -euo pipefail
build=$(realpath "$1") source=$(realpath "$2") compiler=$3
folder=$(mktemp -d "${TMPDIR:-/tmp}/eavemark-host-XXXXXX")
trap 'rm -rf "$folder"' EXIT
cd "$folder"
export ASAN_OPTIONS=detect_leaks=1

cmake --install "$build" --prefix "$folder/prefix" >/dev/null
library=$(find prefix -name libeavemark.a)
nm -g --defined-only "$library" | awk 'NF == 3 {print $3}' >exported
grep -q '^eavemark_check$' exported
if grep -v '^eavemark_' exported; then
    echo "FAILED: the library exports these"; exit 1
fi
declared=$(grep -oE '\beavemark_[a-z_]+\(' "$source/engine/include/eavemark.h" | tr -d '(' | sort -u)
diff <(sort -u exported) <(echo "$declared") || { echo "FAILED: not what the header declares"; exit 1; }

# A function of the host's for each name of the engine's own.
nm -g --defined-only "$build/libeavemark_rooms.a" \
    | awk '$2 == "T" && $3 !~ /^eavemark_/ {print "int " $3 "(void); int " $3 "(void) { return 0; }"}' \
    | sort -u >own.c
[ "$(wc -l <own.c)" -gt 100 ] || { echo "FAILED: no names to clash with"; exit 1; }

flags=$(sed -n 's/^EAVEMARK_SANITIZE:BOOL=ON$/-fsanitize=address,undefined/p' "$build/CMakeCache.txt")
read -ra libraries <<<"$(pkg-config --libs lua5.4 libcjson libmd) -lm"
include=$(dirname "$(find prefix -name eavemark.h)")
"$compiler" $flags -fno-builtin -w -c own.c
link() { # link NAME ARGUMENT...: builds the host and compares its report
    local name=$1; shift
    "$compiler" $flags -I"$include" -Wall -Wextra -Werror "$@" -c "$source/tests/host/host.c" -o "$name.o"
    "$compiler" $flags "$name.o" own.o "$library" "${libraries[@]}" -o "$name"
    local status=0 wanted=0 job=$source/tests/houses/cross-gable/job.json
    "./$name" "$source" "$job" >"$name.report" || status=$?
    "$build/eavemark" check --home "$source" "$job" >wanted.report || wanted=$?
    [ "$status" = "$wanted" ] && diff wanted.report "$name.report" || { echo "FAILED: $name"; exit 1; }
}
link as_c -std=c11
link as_cpp -x c++ -std=c++11
echo "host: links, $(wc -l <exported) names exported, $(wc -l <own.c) of the engine's own hidden"
