#!/bin/sh
# names.sh SOURCE_DIR - an external function is found by its name: it begins with the name
# of its file (without _lua, without the s of a plural), with a type that the file's own
# header declares, or with what the file's family below goes by. Prints a line per function
# that does not.
set -eu
cd "$1"

# Files, and the beginning of their functions' names. One line for what several files
# share, or for a file that makes one thing of another name; each with its reason.
families() {
    cat <<'FAMILIES'
engine/interface/eavemark_*.c   eavemark_     the interface of the library
engine/interface/*.c            inner_        the same calls behind the door
engine/main.c                   commands_     the table of commands
engine/trade/*.c                trade_        the arithmetic, as one library
engine/draw/draw_*.c            draw_         the sheet, in several files
engine/draw/plan_*.c            plan_         the roof plan, in several files
engine/report/*.c               report_       what writes a whole report
engine/report/card_*.c          card_         the card, in several files
engine/report/text_all_*.c      text_all_     the full report, in several files
engine/report/json_part.c       json_         what JSON forms share
engine/report/takeoff_*.c       takeoff_      what order and sums share
engine/report/value_words.c     value_        values in words
engine/job/validate_*.c         validate_     the parts of validate.c
engine/sandbox/sandbox_*.c      sandbox_      the sandbox, in several files
engine/base/measure_*.c         measure_      the parts of measure.c
engine/job/lay_out_*.c          lay_out_      the parts of lay_out.c
engine/job/scan_*.c             scan_         the parts of scan.c
engine/job/footprint_facts.c    footprint_
engine/ask/interview_*.c         interview_    the interview, in several files
engine/job/shop_*.c             shop_         the shop sheet, in several files
engine/profile/profile_*.c      profile_      the parts of profile.c
engine/profile/place_facts_lua.c place_       the parts of place_lua.c
engine/profile/place_reading_lua.c place_     what those parts share
engine/prove/explain_*.c        explain_      the parts of explain.c
engine/prove/proof_*.c          proof_        the parts of proof.c
engine/judge/bind_*.c           bind_         what rules may call
engine/judge/declare_*.c        declare_      what rule files declare
engine/judge/bind_declare.c     declare_      what the declarations share
engine/judge/bind_job.c         judging_      what the sandbox holds while a rule judges
engine/judge/bind_marks.c       marks_        the marks that values carry in a rule
engine/judge/bind_argument.c    argument      arguments of the bound arithmetic, and these
engine/judge/bind_argument.c    give_number   three, short because many stand on a line
engine/judge/bind_argument.c    in_unit
engine/judge/bind_argument.c    as_factor
engine/judge/quantities_lua.c   takeoff_      what the quantities come to
engine/judge/quantities_lua.c   bind_         amount{}, which rules call
engine/judge/verdict_*.c        verdict_      the parts of verdict.c
engine/judge/walk_lua.c         call_         one call of a rule's function, on the walk
engine/packing/make_home.c      home_         stands in for what it makes
FAMILIES
}

found=$(
    for file in engine/*.c engine/*/*.c; do
        base=$(basename "$file" .c)
        base=${base%_lua}
        header=$(dirname "$file")/$base.h
        prefixes="$base ${base%s}"
        test ! -e "$header" || prefixes="$prefixes $(sed -nE \
            's/^(struct|enum) ([a-z_]+) \{.*/\2_/p' "$header" | tr '\n' ' ')"
        while read -r pattern prefix _; do
            # shellcheck disable=SC2254
            case $file in $pattern) prefixes="$prefixes $prefix" ;; esac
        done <<LIST
$(families)
LIST
        awk -v prefixes="$prefixes" '
            # A definition begins in the first column, and its body with a brace there.
            /^[a-z].*\(/ && !/^(static|typedef|extern)/ { head = $0; open = 1 }
            open && /;[ ]*$/ { open = 0 }
            open && /^\{/ {
                open = 0; seen++
                sub(/\(.*/, "", head); sub(/.*[ *]/, "", head)
                n = split(prefixes, p, " "); fits = head == "main"
                for (i = 1; i <= n; i++)
                    fits = fits || index(head, p[i]) == 1
                if (!fits)
                    print FILENAME ": " head " -- not named for its file (tests/checks/names.sh)"
            }
            END { print "seen", seen + 0 }
        ' "$file"
    done
)
# A check that finds no functions checks nothing.
test "$(printf '%s\n' "$found" | awk '$1 == "seen" { n += $2 } END { print n }')" -gt 400
breaches=$(printf '%s\n' "$found" | grep -v '^seen ' || true)
test -z "$breaches" || { printf '%s\n' "$breaches"; exit 1; }
