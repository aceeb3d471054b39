#!/bin/bash
# What the cards of the real rules must not leave out, by the example houses. How a
# card looks is not looked at here: its words are read as one line.
#
# usage: cards.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
unset EAVEMARK_HOME NO_COLOR
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }

# card EXAMPLE STAGE: the card of that example's job of that stage, in one line.
card() {
    "$program" card --home "$source" --stage "$2" "$source/examples/$1/job-$2.json" |
        tr -s ' \n' ' '
}
says()     { [[ $words == *"$1"* ]] || flunk "$what: not said: $1"; }
says_not() { [[ $words != *"$1"* ]] || flunk "$what: said: $1"; }

# IRC R905.2.2: under 4:12 two plies. The porch of this house has 2.5:12; the planes
# of the other have 5:12.
what="dry-in of a low porch" words=$(card porch-tear-off dry-in)
says 'at least 2 plies'
says 'at least 1 ply'
what="dry-in of steep planes" words=$(card cross-gable dry-in)
says 'at least 1 ply'
says_not 'at least 2 plies'

[ $failures -eq 0 ] || exit 1
echo "cards: all as wanted"
