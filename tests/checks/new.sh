#!/bin/bash
# eavemark new, through pipes: a whole job from nothing under an invented county
# until nothing is open; one stopped and gone on with; answers not taken, and
# why; files that are left alone. Answers are in new.answers, by place.
#
# usage: new.sh PROGRAM SOURCE_FOLDER
set -u
program=$(realpath "$1") || exit 2
source=$(realpath "$2") || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 2
trap '' PIPE
export EAVEMARK_HOME="$source" ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }
has() { grep -qF -- "$2" "$1" || { flunk "$1 lacks: $2"; tail -5 "$1"; }; }
lacks() { ! grep -qF -- "$2" "$1" || flunk "$1 holds: $2"; }

# The answer for a place, by the first line of the table that fits.
answer() {
    local place said
    while IFS=$'\t' read -r place said; do
        # shellcheck disable=SC2053 # the place is a pattern
        [[ $place == /* && $1 == $place ]] && { printf '%s' "$said"; return 0; }
    done <"$source/tests/checks/new.answers"
    return 1
}

# prompt: reads up to the next "> " into $shown; fails at the end.
prompt() { IFS= read -r -d '>' -t 60 shown <&"$from"; }

# interview MOST ARGUMENT...: answers up to MOST questions, each once its help
# has told its place, then says stop; the places go to asked, the talk to talk.
interview() {
    local most=$1 count=0 last="" place said
    shift
    : >talk
    coproc new { "$program" new "$@" 2>&1; }
    local child=$new_PID
    exec {from}<&"${new[0]}" {to}>&"${new[1]}"
    while prompt; do
        printf '%s' "$shown" >>talk
        [ "$count" -lt "$most" ] || break
        echo '?' >&"$to"
        prompt || break
        place=$(sed -n 's/.*This is \(\/[^ ]*\) in the job.*/\1/p' <<<"$shown")
        said=$(answer "$place") || { flunk "new.answers has no line for $place"; said=""; }
        [ "$place" != "$last" ] || { flunk "stuck at $place"; break; }
        last=$place
        echo "$place" >>asked
        printf '%s\n' "$said" >&"$to"
        count=$((count + 1))
    done
    { echo . >&"$to"; } 2>/dev/null # it may have ended by itself
    printf '%s' "$shown" >>talk
    cat <&"$from" >>talk
    exec {from}<&- {to}>&-
    wait "$child" || flunk "new $* did not end well: $(tail -3 talk)"
}

open_count() { "$program" check --form json "$1" 2>&1 | sed -n 's/.*"open": \([0-9]*\),.*/\1/p'; }

# From nothing ------------------------------------------------------------------
: >asked
interview 500 --jurisdiction example/hollowferry --date 2026-04-13 -o whole.json
has talk "nothing else is asked here"
has talk "0 left open"
lacks talk "not taken"
[ "$(open_count whole.json)" = 0 ] || flunk "the finished job has $(open_count whole.json) open"
[ -z "$(sort asked | uniq -d)" ] || flunk "asked twice: $(sort asked | uniq -d | head -3)"
has whole.json '"pitch": "6/12"'
has whole.json '"mean_roof_height_ft": 13.5'
has whole.json '"thickness_at_nail_in": 0.25'
has whole.json '"head_in": 0.375'
has whole.json '"length_in": 1.75'
has whole.json '"name": "back"'
lacks asked /takeoff
order=$(grep -nxE '/scope/method|/existing/layers|/roof/slopes|/decks|/attics' asked | cut -d: -f2 | tr '\n' ' ')
[ "$order" = "/scope/method /existing/layers /roof/slopes /decks /attics " ] || flunk "order: $order"
before=$(wc -l <asked)

# Stopped, and gone on with ------------------------------------------------------
: >asked
interview 30 --jurisdiction example/hollowferry --date 2026-04-13 -o part.json
has talk "30 answered"
has talk "stopped before the end"
interview 500 --fill part.json
[ "$(wc -l <asked)" -eq "$before" ] || flunk "$(wc -l <asked) questions in two sittings, $before in one"
[ -z "$(sort asked | uniq -d)" ] || flunk "asked in both sittings: $(sort asked | uniq -d | head -3)"
cmp -s whole.json part.json || flunk "two sittings come to another job than one"
[ "$(find . -name '*.part' | wc -l)" -eq 0 ] || flunk "a temporary file is left"

# The order of what is there stays; what is asked for comes after.
printf '{"stage": "permit", "date": "2026-04-13", "job": "Turned", "jurisdiction": "example/hollowferry",\n"eavemark_job": 1, "existing": {"layers_removed": 1, "layers": 1}}' >turned.json
printf '\n\nstop\n' | "$program" new --fill turned.json 2>talk || flunk "turned: $(cat talk)"
tr -d ' \n' <turned.json | grep -qF '{"stage":"permit","date":"2026-04-13","job":"Turned","jurisdiction":"example/hollowferry","eavemark_job":1,"existing":{"layers_removed":1,"layers":1}' \
    || flunk "the order of turned.json is lost: $(cat turned.json)"

# What is not taken ---------------------------------------------------------------
try() { printf '%s\n' "$@" stop | "$program" new --jurisdiction example/hollowferry >out 2>talk; }
try Bad 2026-13-01 tomorrow
has talk 'not taken: "2026-13-01" is not a day such as 2026-03-31'
has talk "nothing is written"
[ ! -s out ] || flunk "half a job was written"
try Bad 2024-12-31
has talk "no edition of example/hollowferry covers 2024-12-31"
try Bad 2026-04-13 prmit permit fast "300 mph" "12 ft" "115 mph"
has talk "not taken: \"prmit\" is none of the choices; answer with one of them or a number from 1 to 4 (did you mean permit?)"
has talk 'not taken: "fast" has no figure'
has talk "not taken: 300 is out of range; 85 to 220 mph expected"
has talk 'not taken: "12 ft" has "ft" after the number; it is asked for in mph'
has out '"wind_vult_mph": 115'
try Bad 2026-04-13 permit '<' 2
has out '"stage": "deck"'
printf 'Nowhere\nexample/hollowfery\nriver\n' | "$program" new >out 2>talk && flunk "no place, and status 0"
has talk 'no place is named "example/hollowfery" (did you mean example/hollowferry?)'

# What cannot be is told, with its place: one layer listed where two were counted.
printf '%s' '{"eavemark_job": 1, "job": "Two", "jurisdiction": "example/hollowferry", "date": "2026-04-13",
  "stage": "permit", "existing": {"layers": 2, "layers_removed": 0}, "scope": {"method": "overlay"}}' >two.json
: >asked
coproc_answers() { answer "$1"; }
"$program" new --fill two.json --list >out 2>talk || flunk "--list: $(cat talk)"
has out "What is each layer now on the roof"
"$program" new --fill two.json --list --form json >out 2>talk || flunk "--list: $(cat talk)"
has out '"pointer": "/existing/coverings"'
lacks two.json coverings

# Files are left alone ---------------------------------------------------------------
echo "not a job" >mine.json
printf 'X\n' | "$program" new -o mine.json 2>talk && flunk "wrote over a file"
has talk "mine.json is there already"
[ "$(cat mine.json)" = "not a job" ] || flunk "mine.json changed"
"$program" new --fill mine.json 2>talk </dev/null && flunk "filled what is no job"
[ "$(cat mine.json)" = "not a job" ] || flunk "mine.json changed"
cp two.json kept.json
"$program" new --fill two.json --jurisdiction example/tamarack 2>talk </dev/null && flunk "moved a job"
has talk '/jurisdiction: says "example/hollowferry", not "example/tamarack"'
cmp -s two.json kept.json || flunk "two.json changed"

[ $failures -eq 0 ] && echo "new: all well ($before questions)"
exit $((failures > 0))
