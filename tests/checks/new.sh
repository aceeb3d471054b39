#!/bin/bash
# eavemark new, through pipes: a whole job from nothing under an invented county
# until nothing is open; one stopped and gone on with; answers not taken, and
# why; files that are left alone. Answers are in new.answers, by place. Then the
# permit stage of a gable and of a hip roof torn off, counted, with a shop sheet and
# without (tear_off.answers).
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
answers=$source/tests/checks/new.answers
flunk() { failures=$((failures + 1)); echo "FAILED: $*"; }
has() { grep -qF -- "$2" "$1" || { flunk "$1 lacks: $2"; tail -5 "$1"; }; }
lacks() { ! grep -qF -- "$2" "$1" || flunk "$1 holds: $2"; }

# The answer for a place, by the first line of the table that fits.
answer() {
    local place said
    if [ "$1" = /another ]; then # of a shop: what the file says, a line each time, then no
        { head -1 another 2>/dev/null | grep . || echo n; } && sed -i 1d another 2>/dev/null
        return 0
    fi
    while IFS=$'\t' read -r place said; do
        # shellcheck disable=SC2053 # the place is a pattern
        [[ $place == /* && $1 == $place ]] && { printf '%s' "$said"; return 0; }
    done <"$answers"
    return 1
}

# prompt: reads up to the next "> " into $shown; fails at the end.
prompt() { IFS= read -r -d '>' -t 60 shown <&"$from"; }

# interview MOST ARGUMENT...: of `new`, or of $command; answers up to MOST questions, each once its help
# has told its place, then says stop; the places go to asked, the talk to talk.
interview() {
    local most=$1 count=0 last="" place place_beside said
    shift
    : >talk
    coproc new { "$program" "${command:-new}" "$@" 2>&1; }
    local child=$new_PID
    exec {from}<&"${new[0]}" {to}>&"${new[1]}"
    while prompt; do
        printf '%s' "$shown" >>talk
        [ "$count" -lt "$most" ] || break
        echo '?' >&"$to"
        prompt || break
        place=$(sed -n 's/.*This is \(\/[^ ]*\).*/\1/p' <<<"$shown")
        said=$(answer "$place") || { flunk "new.answers has no line for $place"; said=""; }
        # Facts asked for in one line have an answer each, or that of the first is the line's.
        if [[ $said != *,* ]]; then
            for place_beside in $(sed -n 's/^With it //p' <<<"$shown"); do
                said="$said; $(answer "$place_beside" || echo -)"
            done
        fi
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
interview 500 --ahead --jurisdiction example/hollowferry --date 2026-04-13 -o whole.json
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
[ "$order" = "/roof/slopes /scope/method /existing/layers /decks /attics " ] || flunk "order: $order"
before=$(wc -l <asked)

# Stopped, and gone on with ------------------------------------------------------
: >asked
interview 30 --ahead --jurisdiction example/hollowferry --date 2026-04-13 -o part.json
has talk "30 answered"
has talk "stopped before the end"
interview 500 --ahead --fill part.json
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
try 2026-13-01 tomorrow
has talk 'not taken: "2026-13-01" is not a day such as 2026-03-31'
has talk "nothing is written"
[ ! -s out ] || flunk "half a job was written"
try 2024-12-31
has talk "no edition of example/hollowferry covers 2024-12-31"
try 2026-04-13 Bad gabel gable fast "400 ft" "12 mph" "59'6\""
has talk "not taken: \"gabel\" is none of the choices; answer with one of them or a number from 1 to 5 (did you mean gable?)"
has talk 'not taken: "fast" has no figure'
has talk "not taken: 400 is out of range; 6 to 300 ft expected"
has talk 'not taken: "12 mph" has "mph" after the number; it is asked for in ft'
has out '"length_ft": 59.5'
has out '"stage": "permit"'
try 2026-04-13 Bad gable '<' 2
has out '"form": "hip"'
printf 'Nowhere\nexample/hollowfery\nriver\n' | "$program" new >out 2>talk && flunk "no place, and status 0"
has talk 'no place is named "example/hollowfery" (did you mean example/hollowferry?)'

# What cannot be is told, with its place: one layer listed where two were counted.
printf '%s' '{"eavemark_job": 1, "job": "Two", "jurisdiction": "example/hollowferry", "date": "2026-04-13",
  "stage": "permit", "existing": {"layers": 2, "layers_removed": 0}, "scope": {"method": "overlay"}}' >two.json
: >asked
coproc_answers() { answer "$1"; }
"$program" new --fill two.json --list >out 2>talk || flunk "--list: $(cat talk)"
has out "Will this layer be taken off?"
"$program" new --fill two.json --list --form json >out 2>talk || flunk "--list: $(cat talk)"
has out '"pointer": "/existing/coverings/0/removed"'
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

# How many questions a permit takes ------------------------------------------------
# At most 45, or 30 with a shop sheet; after them nothing of the stage is open but what only
# the department can say.
answers=$source/tests/checks/tear_off.answers
cp "$source/tests/checks/tear_off.shop.json" shop.json
extra=
budget() { # MOST FORM PLACE OPTION...
    local most=$1 form=$2 place=$3 out="$2-$3-$1.json"
    shift 3
    : >asked
    grep -v '^/roof/footprint/form' "$source/tests/checks/tear_off.answers" >table
    printf "$extra/roof/footprint/form\t%s\n/jurisdiction\t%s\n" "$form" "$place" |
        cat - table "$source/tests/checks/new.answers" >turned
    mv turned table
    answers=$work/table
    interview 100 "$@" -o "$out"
    has talk "nothing else is asked here"
    has talk " 0 to answer"
    lacks talk "not taken"
    local count
    count=$(wc -l <asked)
    [ "$count" -le "$most" ] || flunk "$form in $place: $count questions, $most at most"
    [ "$count" -ge 15 ] || flunk "$form in $place: only $count questions"
    "$program" check --stage permit --form json "$out" >report.json 2>err
    [ $? -le 1 ] || flunk "$form in $place: $(cat err)"
    grep -q '"ask": "job"' report.json && flunk "$form in $place: the job still lacks something"
    [ "$(head -3 asked | tr '\n' ' ')" = "/jurisdiction /date /job " ] || flunk "it begins with $(head -3 asked)"
    [ "$(sed -n 4p asked)" = /roof/footprint/form ] || flunk "the plan does not come first"
    counts="$counts $form $count"
}
counts=""
for place in dunmarrow "example/tamarack"; do
    place_id=${place##*/}
    budget 45 gable "$place_id"
    budget 45 hip "$place_id"
    budget 30 gable "$place_id" --shop shop.json
    has talk 'Go by the shop sheet'
    has "gable-$place_id-30.json" '"shop": "shop.json"'
    lacks "gable-$place_id-30.json" '"made_to"'
    budget 30 hip "$place_id" --shop shop.json
done

# A job like another: habits, and nothing of its house. A later stage asks for what is measured.
: >asked
answers=$work/like.table
printf '/permit/status\tapplied\n' | cat - table >"$answers"
interview 100 --like gable-tamarack-45.json --jurisdiction example/tamarack --date 2026-05-04 -o like.json
grep -qxE '/covering/made_to|/fasteners/kind|/inspection/called_by' asked && flunk "a habit is asked again"
for own in /job /roof/footprint/form /existing/layers /decks /attics; do
    grep -qx "$own" asked || flunk "$own is taken over from another house"
done
has like.json '"made_to": "D3462"'
cp gable-tamarack-45.json later.json
printf '.\n' | "$program" new --fill later.json --stage deck 2>talk || flunk "$(cat talk)"
has later.json '"stage": "deck"'
"$program" new --fill later.json --stage nowhere 2>talk </dev/null && flunk "no stage, and status 0"
"$program" new --like later.json --fill later.json 2>talk </dev/null && flunk "like and fill"

# A sheet turned down is not gone by; a fact that is not known stays open, and is said.
answers=$work/table
printf '/shop\tn\n' | cat - table >turned && mv turned table
: >asked
interview 100 --shop shop.json --jurisdiction example/tamarack --date 2026-05-04 -o turned-down.json
grep -qx /covering/kind asked || flunk "a sheet turned down is gone by"
lacks turned-down.json '"shop"'
printf "Unsure\ndon't know\nunknown\n.\n" | "$program" new --jurisdiction example/tamarack --date 2026-05-04 >out 2>talk
has talk "1 answered, 2 left open"

# What fails is told as soon as it is known, and where the roof has no plan that fits.
printf 'Low\ngable\n40\n26\n1:12\n12\n12\ntear-off\nreroof\n1\nasphalt_shingle\n.\n' \
    | "$program" new --jurisdiction example/tamarack --date 2026-05-04 >out 2>talk
has talk '  fails '
has talk 'demanded at least 2:12'
has talk 'So far: '
printf 'Odd\nplanes\n2\n.\n' | "$program" new --jurisdiction example/tamarack --date 2026-05-04 >out 2>talk
has out '"slopes"'

# A shop sheet by questions: habits, and nothing of a house. With it a permit takes few.
: >asked
answers=$source/tests/checks/shop.answers
command=shop
interview 100 --jurisdiction example/dunmarrow -o begun.json
has talk "nothing else is asked here"
lacks talk "not taken"
lacks talk "fails"
[ "$(wc -l <asked)" -le 50 ] || flunk "a sheet takes $(wc -l <asked) questions"
sort asked >sorted && grep -vE '^/(date|another|covering|fasteners|underlayments|ice_barrier|drip_edge|flashing|permit|inspection|roof/(footprint/(eaves|rakes)|valleys)|decks/0/(nails|panel_gap_in)|attics/0/vents)(/|$)' sorted &&
    flunk "no habit is asked for there"
has begun.json '"eavemark_shop": 1'
for habit in '"made_to": "D3462"' '"kind": "common_8d"' '"called_by": "contractor"' '"lining": "metal"' '"head_lap_in": 4'; do
    has begun.json "$habit"
done
for other in '"pitch"' '"form"' '"jurisdiction"' '"date"' '"layers"' '"span_rating"' '"length_ft"' '"site"'; do
    lacks begun.json "$other"
done
sheet_asked=$(wc -l <asked)

# Another of a kind: a list gets one more, a thing that a job has once is asked anew; both
# are on the sheet by their names, and a job picks one. Two of a name are not taken, nor a
# kind that there is not; a sitting that ends in between has lost nothing.
printf 'underlayments: felt, peel and stick\ncovering: laminated, three tab\n' >another
: >asked
interview 100 --jurisdiction example/dunmarrow -o several.json
lacks talk "not taken"
for told in /underlayments/1/kind /covering/kind /covering/made_to; do
    grep -qx "$told" asked || flunk "another is not asked for $told"
done
[ "$(grep -cx /covering/kind asked)" -eq 2 ] || flunk "another covering is not asked for anew"
[ "$(grep -cx /underlayments/0/kind asked)" -eq 1 ] || flunk "the first sheet is asked for again"
for said in '"name": "felt"' '"name": "peel and stick"' '"name": "laminated"' '"name": "three tab"'; do
    has several.json "$said"
done
printf 'Two\ngable\n40\n26\n6:12\n12\n12\ntear-off, reroof\n1\ny\nthree tab\n.\n' |
    "$program" new --jurisdiction example/dunmarrow --date 2026-05-04 --shop several.json \
        -o picks.json 2>talk || flunk "$(cat talk)"
has picks.json '"name": "three tab"'
"$program" check --shop several.json picks.json >out 2>talk
[ $? -le 1 ] || flunk "a sheet of several: $(cat talk)"
printf 'covering: laminated, three tab\nstop\n' >another
: >asked
interview "$((sheet_asked + 1))" --jurisdiction example/dunmarrow -o ended.json
has ended.json '"name": "laminated"'
grep -qE 'eavemark_others' ended.json && flunk "the draft's own word is on the sheet"
rm -f another
command=new
cp begun.json shop.json
rm gable-dunmarrow-30.json
extra='/permit/status\tapplied\n' # who takes it out is on this sheet
budget 30 gable dunmarrow --shop shop.json
lacks gable-dunmarrow-30.json '"made_to"'
printf 'dunmarrow\n2026-05-04\n1\n.\n' | "$program" shop -o begun.json 2>talk && flunk "shop overwrote a sheet"
has talk "begun.json is there already"
printf 'dunmarrow\n.\n' | "$program" shop -o none.json 2>talk && flunk "a sheet without a day"
has talk "it is no sheet yet"
[ ! -e none.json ] || flunk "none.json was written"
# No invented county takes more, nor one with the sheet that it has a shop begin; only the two
# that ask for every paper there is may take ten more.
for file in "$source"/jurisdictions/example/*.lua; do
    county=$(basename "$file" .lua)
    [[ $county != *.* && $county != dunmarrow && $county != walk ]] || continue
    extra='' most=30
    case $county in gullhaven | saltmarsh) extra='/site/exposure\tC\n' ;; esac
    case $county in quillbank | stillbend) most=40 ;; esac
    [ -e "gable-$county-45.json" ] || budget 45 gable "$county"
    case $county in lindenholt | mosslane | quillbank | quillrun | reedlock | stillbend) ;; *) continue ;; esac
    : >asked
    grep '^/covering/\|^/contractor/\|^/inspection/' "$source/tests/checks/tear_off.answers" |
        grep -v /made_to | cat - "$source/tests/checks/shop.answers" >sheet.table
    answers=$work/sheet.table command=shop
    rm -f "$county.json"
    interview 100 --jurisdiction "example/$county" -o "$county.json"
    lacks talk "not taken"
    command=new
    extra="/permit/status\tapplied\n"
    budget $most gable "$county" --shop "$county.json"
done
"$program" shop --date 2026-05-04 begun.json 2>talk </dev/null && flunk "a day for a job that is lifted from"

# Places by their words; several that fit are named.
printf 'redwood city\n.\n' | "$program" new --date 2026-05-04 2>talk >out
lacks talk "not taken"
printf 'florida\n.\n' | "$program" new --date 2026-05-04 2>talk >out
has talk 'fits several: '
has talk 'us-fl/jacksonville'

[ $failures -eq 0 ] && echo "new: all well ($before questions;$counts; sheet $sheet_asked)"
exit $((failures > 0))
