#!/bin/sh
# proof.sh PROGRAM HOME - the proof of all rules and places holds, and every figure that a
# place gives otherwise than what it follows is judged by some case: of all places the proof
# only counts them.
set -eu
status=0
said=$("$1" proof --home "$2") || status=$?
echo "$said"
test "$status" -eq 0 || exit "$status"
line=$(echo "$said" | grep '^of .* figures that places give otherwise')
given=$(echo "$line" | sed 's/^of \([0-9]*\) .*/\1/')
judged=$(echo "$line" | sed 's/.* judge by \([0-9]*\)$/\1/')
test "$given" -gt 2000
if test "$given" != "$judged"; then
    echo "$line: proof PLACE names the others"
    exit 1
fi
