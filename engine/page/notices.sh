#!/usr/bin/env bash
# Prints the licence notices of Lua, cJSON and libmd, as their terms ask wherever their
# code is inside: from the copyright files of the packages installed here.
set -euo pipefail
for package in liblua5.4-dev:Lua libcjson-dev:cJSON libmd-dev:libmd; do
    file=/usr/share/doc/${package%%:*}/copyright
    echo "== ${package#*:} =="
    cat "$file"
    echo
done
