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

# card EXAMPLE STAGE [JOB]: the card of that example's job of that stage, in one line.
job_of() { [ "$2" = permit ] && echo "$1/job.json" || echo "$1/job-$2.json"; }
card() {
    "$program" card --home "$source" --stage "$2" \
        "$source/tests/houses/${3:-$(job_of "$1" "$2")}" | tr -s ' \n' ' '
}
says()     { [[ $words == *"$1"* ]] || flunk "$what: not said: $1"; }
says_not() { [[ $words != *"$1"* ]] || flunk "$what: said: $1"; }
# before A B: both are said, A first.
before() {
    says "$1"; says "$2"
    [[ ${words%%"$2"*} == *"$1"* ]] || flunk "$what: \"$1\" does not stand before \"$2\""
}

# IRC R905.2.2: under 4:12 two plies. The porch of this house has 2.5:12; the planes
# of the other have 5:12.
what="dry-in of a low porch" words=$(card porch-tear-off dry-in)
says "Call 555-0110" # the department's, which the place states
says '2 plies or more'
says '1 ply or more'
what="dry-in of steep planes" words=$(card cross-gable dry-in)
says '1 ply or more'
says_not '2 plies or more'

# One ply is planned on it: that is wrong before any visit, and stays so at the final.
for stage in permit dry-in final; do
    what="$stage of one ply on a low porch" words=$(card porch-tear-off $stage porch-tear-off/job.json)
    before '== Put right first [ ] 1 Double underlayment on a low' '2 plies or more'
    before '2 plies or more' 'FAIL: Planned 1 ply. Lay two plies'
    before 'FAIL: Planned 1 ply.' '-- '
done
# Two layers already: a fail of the permit stage is one at every visit.
for stage in deck dry-in final; do
    what="$stage over too many layers" words=$(card overlay-gable $stage)
    before 'Put right first [ ] 1 Layers of covering, old and new' 'FAIL: '
done
# Nothing of the deck was ever measured: it is asked for at the final too.
what="a final without a look at the deck" words=$(card porch-tear-off final porch-tear-off/job.json)
before 'Left open at earlier stages: ' '= the back ='
before '= the back =' 'Nail spacing along panel edges 6 in or less'

# A porch that gets another covering: what is said of the other planes, and what is not.
what="planes that differ"
differing=$(sed 's/"name": "porch",/& "gets": "modified_bitumen",/; s/"name": "main front",/& "gets": "new_covering",/' \
    "$source/rules/cases/base.json")
words=$("$program" card --home "$source" --stage permit - <<< "$differing" | tr -s ' \n' ' ')
says "Planes porch gets modified bitumen; taken for the job's covering, nothing else being said: main back"
what="planes that do not" words=$("$program" card --home "$source" --stage permit \
    "$source/rules/cases/base.json" | tr -s ' \n' ' ')
says_not "Planes "

# A job that leaves dozens of questions open, in a place that asks for every paper: all of
# it fits two sides. A paper the job says is there is ticked by its title; of many
# questions the number of rules that wait is told; of a place of which nothing was read,
# how much there is to ask.
words_of() { "$program" card --home "$source" --stage "$2" "$source/rules/cases/$1.json" \
    | tr -s ' \n' ' '; }
what="papers that are there" words=$(words_of paperwork permit)
says 'Leave for the debris bin ['
says_not 'a permit for the debris bin'
says_not 'an issued permit, because'
what="many questions" words=$(words_of paperwork final)
says 'Each valley of the roof (an empty list if there is none) ____________ (waiting: 8 rules)'
what="a place of which nothing was read" words=$(words_of base dry-in)
says 'papers 34: the report names them'
says_not 'Notice to the association;'

# Gaps of panels have two bounds (common practice; R803.2.3 gives none).
what="gaps of panels" words=$(card porch-tear-off deck)
says '1/8 in to 1/4 in'

for example in cross-gable coastal-hip overlay-gable porch-tear-off; do
    for stage in permit deck dry-in final; do
        what="$stage of $example" words=$(card $example $stage)
        says 'Address '
        says 'Permit '
        before 'Who calls the inspector' 'Looked over by'
        before 'Looked over by' '= the back ='
        before '= the back =' '-- At this stage, take care'
        before '= the back =' ' (seen)'
        rest=${words#*Who calls the inspector}
        [[ ${rest%%Looked over by*} != *'or more'* ]] || flunk "$what: who calls is not last"
        for job in "$(job_of $example $stage)" $example/job.json; do
            lines=$("$program" card --home "$source" --stage $stage "$source/tests/houses/$job" |
                sed '/= the back =/q' | wc -l)
            [ "$lines" -le 66 ] || flunk "$stage of $job: $lines lines on the front"
        done
    done
done

[ $failures -eq 0 ] || exit 1
echo "cards: all as wanted"
