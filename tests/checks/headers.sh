#!/bin/sh
# headers.sh SOURCE_DIR - every header of the engine compiles alone, and twice.
set -eu
cd "$1"
flags=$(pkg-config --cflags lua5.4 libcjson libmd)
status=0
for header in $(find engine -name '*.h' | sort); do
    name=${header#engine/}
    # shellcheck disable=SC2086
    if ! printf '#include "%s"\n#include "%s"\nextern int some_name;\n' "$name" "$name" \
        | ${CC:-cc} -std=c11 -D_DEFAULT_SOURCE -Wall -Wextra -Wpedantic -Wstrict-prototypes -Wundef \
            -Werror -Iengine $flags -fsyntax-only -x c -; then
        echo "$header does not compile alone"
        status=1
    fi
done
exit $status
