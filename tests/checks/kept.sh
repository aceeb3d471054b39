#!/bin/bash
# What `eavemark new` was told is kept as it is given: whatever ends the program, the next
# goes on from there; and a file that changed meanwhile is not written over.
#
# usage: kept.sh PROGRAM SOURCE_FOLDER
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

# begin ARGUMENT...: starts one, and waits for its first question.
begin() {
    coproc new { exec "$program" new "$@" 2>&1; }
    child=$new_PID
    exec {from}<&"${new[0]}" {to}>&"${new[1]}"
    eval "exec ${new[0]}<&- ${new[1]}>&-" # what is closed below shall be closed
    : >talk
    prompt
}
prompt() {
    local shown
    IFS= read -r -d '>' -t 60 shown <&"$from"
    local got=$?
    printf '%s' "$shown" >>talk
    return $got
}
# say ANSWER...: each once it was asked for.
say() {
    for words in "$@"; do
        printf '%s\n' "$words" >&"$to"
        prompt || break
    done
}
# finish: closes the talk; the exit status goes to $ended.
finish() {
    exec {to}>&-
    cat <&"$from" >>talk
    exec {from}<&-
    wait "$child"
    ended=$?
}

place=(--jurisdiction example/hollowferry --date 2026-04-13)

# Ended by each signal --------------------------------------------------------------
for signal in INT TERM HUP KILL; do
    begin "${place[@]}" -o "$signal.json"
    say "House $signal" gable
    kill -s "$signal" "$child"
    finish 2>/dev/null
    [ "$ended" = $((128 + $(kill -l "$signal"))) ] || flunk "$signal: status $ended"
    [ ! -e "$signal.json" ] || flunk "$signal: a job was written"
    if [ "$signal" != KILL ]; then
        has talk "what was answered is kept in $signal.json.draft"
        has talk "go on with: eavemark new -o $signal.json"
    fi
    begin "${place[@]}" -o "$signal.json"
    has talk "going on from $signal.json.draft"
    lacks talk "Name of the job"
    say stop
    finish
    [ "$ended" = 0 ] || flunk "$signal: going on ended with $ended: $(tail -3 talk)"
    has "$signal.json" "\"job\": \"House $signal\""
    has "$signal.json" '"stage": "permit"'
    [ ! -e "$signal.json.draft" ] || flunk "$signal: the draft is left"
done

# Without an answer nothing is left, and it is said.
begin "${place[@]}" -o none.json
kill -s TERM "$child"
finish 2>/dev/null
has talk "nothing was answered yet"
begin "${place[@]}" -o none.json
lacks talk "going on from"
finish
[ -z "$(ls none* 2>/dev/null)" ] || flunk "left: $(ls none*)"

# Without a file nothing is kept, and that is said.
begin "${place[@]}"
say "Nowhere"
kill -s INT "$child"
finish 2>/dev/null
has talk "kept only with -o FILE"

# Under nohup a hangup ends nothing.
(trap '' HUP; exec "$program" new "${place[@]}" -o nohup.json) <<<'stop' 2>talk &
wait $!
begin "${place[@]}" -o nohup.json
finish

# A half written line, as a machine that stopped leaves it, is passed over.
begin "${place[@]}" -o half.json
say "Half a house" gable
kill -s KILL "$child"
finish 2>/dev/null
printf '{"eavemark_job":1,"job":"Wro' >>half.json.draft
begin "${place[@]}" -o half.json
has talk "going on from"
say 1 stop
finish
has half.json '"job": "Half a house"'

# Two at once ------------------------------------------------------------------------
begin "${place[@]}" -o two.json
say "First"
"$program" new "${place[@]}" -o two.json </dev/null 2>second && flunk "two at once"
has second "another program is asking for the same job"
say gable stop
finish
has two.json '"job": "First"'

# What is no draft of this is left alone.
echo "my notes" >notes.json.draft
"$program" new "${place[@]}" -o notes.json </dev/null 2>talk && flunk "went on from notes"
has talk "notes.json.draft is in the way"
[ "$(cat notes.json.draft)" = "my notes" ] || flunk "notes.json.draft changed"

# Filling in -----------------------------------------------------------------------
job='{"eavemark_job": 1, "job": "Filled", "jurisdiction": "example/hollowferry", "date": "2026-04-13", "stage": "permit"}'
echo "$job" >fill.json
begin --fill fill.json
say gable
kill -s TERM "$child"
finish 2>/dev/null
has talk "go on with: eavemark new --fill fill.json"
[ "$(cat fill.json)" = "$job" ] || flunk "fill.json changed"
begin --fill fill.json
has talk "going on from fill.json.draft"
say stop
finish
has fill.json '"form": "gable"'

# Edited while it is filled in: it stays as it was edited, and the answers too.
echo "$job" >edited.json
begin --fill edited.json
say gable
echo "${job/Filled/Edited}" >edited.json
say stop
finish
[ "$ended" = 2 ] || flunk "edited: status $ended"
has talk "edited.json changed since it was read, and is left as it is now"
[ "$(cat edited.json)" = "${job/Filled/Edited}" ] || flunk "edited.json was written over"
tail -n 1 edited.json.draft >answered.json
has answered.json '"form":"gable"'
"$program" new --fill edited.json </dev/null 2>talk && flunk "went on after an edit"
has talk "the job changed since edited.json.draft was begun"
# With nothing answered no draft is left, nor told of.
echo "$job" >idle.json
begin --fill idle.json
echo "${job/Filled/Edited}" >idle.json
say stop
finish
has talk "idle.json changed since it was read, and is left as it is now"
grep -q 'idle.json.draft' talk && flunk "tells of a draft that is not there"

# No room ---------------------------------------------------------------------------
# A limit on the size of files stands for a disk that is full.
name=$(printf 'x%.0s' {1..200})
(
    trap '' XFSZ
    ulimit -f 1
    printf '%s\n' "$name" gable 40 26 6:12 stop | "$program" new "${place[@]}" -o full.json 2>talk
)
has talk "full.json.draft: cannot be written: File too large; this answer is not kept"
has full.json "\"job\": \"$name\""
has full.json '"form": "gable"'
[ ! -e full.json.draft ] || flunk "full.json.draft is left"

[ $failures -eq 0 ] && echo "kept: all well"
exit $((failures > 0))
