#!/bin/bash
# `eavemark watch`, run in the background while files are saved in the ways
# editors save them. Every wait is bounded; depends on no rule of the tree.
#
# usage: watch.sh PROGRAM
set -u
program=$(realpath "$1") || exit 2
work=$(mktemp -d) || exit 2
watcher=
trap '[ -z "$watcher" ] || kill -KILL "$watcher" 2>/dev/null; rm -rf "$work"' EXIT
cd "$work" || exit 2
unset EAVEMARK_HOME
# A sanitizer's own exit status is 1, which here means that something failed.
export ASAN_OPTIONS=exitcode=99 UBSAN_OPTIONS=exitcode=99
failures=0

flunk() {
    failures=$((failures + 1))
    echo "FAILED: $*"
    sed 's/^/    out: /' out 2>/dev/null | tail -12
    sed 's/^/    err: /' err 2>/dev/null | tail -5
}

# A home of one rule ----------------------------------------------------------

mkdir -p home/rules home/jurisdictions/model jobs
cat >home/rules/fields.lua <<'END'
field "eavemark_job" { type = "integer", required = true, stage = "permit", ask = "Version?" }
field "job" { type = "text", required = true, stage = "permit", ask = "Name?" }
field "jurisdiction" { type = "text", required = true, stage = "permit", ask = "Where?" }
field "date" { type = "date", required = true, stage = "permit", ask = "When?" }
field "stage" { type = "choice", choices = { "permit", "deck", "dry-in", "final" },
  required = true, stage = "permit", ask = "How far?" }
field "layers" { type = "integer", unit = "layers", stage = "permit", ask = "How many layers?" }
END
cat >home/rules/one.lua <<'END'
rule "one.layers" {
  title = "Layers here", stage = "permit",
  reads = { facts = { "layers" }, figures = { "one.most" } },
  judge = function(job, figure) return at_most(job.layers, figure "one.most", "layers") end,
  mend = "Take one off.",
}
END
cat >home/jurisdictions/model/one.lua <<'END'
jurisdiction "model/one" { title = "One", model = true, edition = "ONE", figures = {
  ["one.most"] = { 2, unit = "layers", sense = "at_most", cite = "1", status = "seen", source = "a page" } } }
END
job() {
    printf '{ "eavemark_job": 1, "job": "Invented", "jurisdiction": "model/one",\n'
    printf '  "date": "2026-01-02", "stage": "permit", "layers": %s }\n' "$1"
}
job 1 >jobs/job.json

# Waits until check number $1 was printed and ends in the words $2.
header() {
    for _ in $(seq 200); do
        if grep -q "^== check $1[,:]" out 2>/dev/null; then
            # The report follows in the same breath.
            sleep 0.2
            grep -qE "^== check $1(, after a change of .*)?: $2 ==\$" out || flunk "check $1 is not: $2"
            return
        fi
        sleep 0.1
    done
    flunk "check $1 never came ($2)"
}
# Nothing further is checked within a while: the one save was one check.
no_more() {
    sleep 1
    [ "$(grep -c '^== check ' out)" -eq "$1" ] || flunk "more than $1 checks"
}
# The output from check number $1 on.
from() { sed -n "/^== check $1[,:]/,\$p" out; }
start() {
    "$program" watch --home home "$@" >out 2>err </dev/null &
    watcher=$!
}
# stop SIGNAL: the watcher ends by itself, with status 0.
stop() {
    kill -"$1" "$watcher"
    for _ in $(seq 100); do
        kill -0 "$watcher" 2>/dev/null || break
        sleep 0.1
    done
    kill -0 "$watcher" 2>/dev/null && flunk "does not end on $1" && kill -KILL "$watcher"
    wait "$watcher"
    local status=$?
    watcher=
    [ $status -eq 0 ] || flunk "exit $status after $1"
    [ ! -s err ] || flunk "standard error is not empty"
}

# The job, saved in each way ----------------------------------------------------

# bash starts a background command with Ctrl-C ignored; watch must heed it all
# the same.
start jobs/job.json
header 1 'nothing failed'
grep -q '^MET  1, by topic' out || flunk "the first report is missing"
grep -qE '[0-9]{2}:[0-9]{2}:[0-9]{2}' out && flunk "the time is printed"

job 3 >jobs/job.json
header 2 'something failed'
from 2 | grep -q '^== check 2, after a change of job.json: ' || flunk "what changed is not named"
from 2 | grep -q '^FIX (was MET)$' || flunk "what fails now is missing"
from 2 | grep -q '^      found 3 layers; demanded at most 2 layers' || flunk "what was found is missing"
from 2 | grep -q '^    mend    Take one off.' || flunk "the mend is missing"
from 2 | grep -q '^Count    1 fail, ' || flunk "the count is missing"
from 2 | grep -q '^Place' && flunk "the whole report comes again"
no_more 2

job 2 >jobs/new && mv jobs/new jobs/job.json            # renamed into place
header 3 'nothing failed'
from 3 | grep -q '^MET (was FIX)$' || flunk "what is met now is missing"
no_more 3

mv jobs/job.json jobs/job.json~; job 4 >jobs/job.json   # the old one moved away first
header 4 'something failed'
no_more 4

job 1 >jobs/job.json; job 1 >jobs/job.json; touch jobs/job.json  # saved twice
header 5 'nothing failed'
no_more 5
job 2 >jobs/job.json                                     # nothing to tell of it
header 6 'nothing failed'
from 6 | grep -q '^Nothing changed that was judged' || flunk "something is said to have changed"

# What is not the job is nothing to watch ---------------------------------------

job 5 >jobs/other.json; echo x >jobs/job.json.swp; echo x >home/rules/.one.lua.swp
mkdir home/rules/cases; echo x >home/rules/cases/one.lua; echo x >home/jurisdictions/a.cases.lua
no_more 6
rm home/jurisdictions/a.cases.lua

# The last good report stays above, and is what the next is held against ----------

echo '{ "eavemark_job": 1,' >jobs/job.json
header 7 'the job cannot be used'
from 7 >after
grep -q '^jobs/job.json:2:' after || flunk "the error is not told"
tail -1 after | grep -q '^The last report is above' || flunk "what still stands is not told"
grep -q 'Layers here' after && flunk "an old report is printed as if it were new"

rm jobs/job.json
header 8 'the job cannot be used'
job 3 >jobs/job.json                                     # deleted and recreated
header 9 'something failed'
from 9 | grep -q '^FIX (was MET)$' || flunk "it is not held against the last good report"

# Rules and profiles --------------------------------------------------------------

sed 's/Layers here/Layers of it/' home/rules/one.lua >new && mv new home/rules/one.lua
header 10 'something failed'
from 10 | grep -q '^FIX (still)$' || flunk "what fails otherwise is not told"
from 10 | grep -q 'Layers of it' || flunk "the changed rule is not used"

sed -i 's/{ 2, unit/{ 3, unit/' home/jurisdictions/model/one.lua
header 11 'nothing failed'
from 11 | grep -q 'Layers of it' || flunk "what changed with the profile"

cp home/rules/one.lua keep; echo 'rule "one.layers" {' >home/rules/one.lua
header 12 'a rule or profile is broken'
from 12 | grep -q '^rules/one.lua:' || flunk "the broken rule is not named"
cp keep home/rules/one.lua
header 13 'nothing failed'

mkdir home/jurisdictions/example                         # a folder made meanwhile
sleep 1.5
checks=$(grep -c '^== check ' out)
sed 's|model/one|example/two|; s/model = true,//' home/jurisdictions/model/one.lua \
    >home/jurisdictions/example/two.lua
header $((checks + 1)) 'nothing failed'
checks=$(grep -c '^== check ' out)
job 3 | sed 's|model/one|example/two|' >jobs/job.json    # another place: all is new
header $((checks + 1)) 'nothing failed'
from $((checks + 1)) | grep -q '^Place    One (example/two)' || flunk "no whole report of another place"
stop INT

# Other ways in and out -------------------------------------------------------------

job 4 >jobs/job.json
start --strict -o report jobs/job.json
header 1 'something failed'
grep -q '^FIX  1 fail$' report || flunk "-o writes no report"
grep -q '^FIX' out && flunk "-o prints the report too"
cp report before; echo '{' >jobs/job.json
header 2 'the job cannot be used'
cmp -s report before || flunk "a job that cannot be used spoils the report"
stop TERM

ln -s ../jobs/real.json home/link.json; job 1 >jobs/real.json   # a link to the job
start home/link.json
header 1 'nothing failed'
job 4 >jobs/real.json
header 2 'something failed'
stop INT

start missing.json                                       # not there yet
header 1 'the job cannot be used'
job 1 >missing.json
header 2 'nothing failed'
stop INT

for bad in '' '-' 'nowhere/job.json'; do
    # shellcheck disable=SC2086
    timeout 20 "$program" watch --home nowhere $bad >out 2>err </dev/null
    [ $? -eq 2 ] || flunk "watch '$bad' does not end with 2"
    [ -s err ] || flunk "watch '$bad' does not say why"
done

# The shop sheet: handed over, or named by the job, below it or behind a link ------------

cat >>home/rules/fields.lua <<'END'
field "shop" { type = "text", range = { 1, 200 }, stage = "permit", ask = "Which sheet?" }
field "felt" { type = "group", stage = "permit", ask = "Felt" }
field "felt.plies" { type = "integer", unit = "layers", habit = "product", stage = "permit", ask = "How many?" }
END
cat >home/rules/one.lua <<'END'
rule "one.layers" {
  title = "Layers here", stage = "permit",
  reads = { facts = { "felt.plies" }, figures = { "one.most" } },
  judge = function(job, figure) return at_most(job.felt.plies, figure "one.most", "layers") end,
  mend = "Take one off.",
}
END
sheet() { printf '{ "eavemark_shop": 1, "felt": { "plies": %s } }\n' "$1"; }
mkdir -p shops jobs/own
job 1 >jobs/plain.json
job 1 | sed 's/"stage"/"shop": "own\/felt.json", "stage"/' >jobs/with.json
for turn in handed named linked; do
    file=shops/felt.json which=(jobs/with.json)
    case $turn in
    handed) which=(--shop shops/felt.json jobs/plain.json) ;;
    named) file=jobs/own/felt.json ;;
    linked) ln -sf ../../shops/felt.json jobs/own/felt.json ;;
    esac
    sheet 1 >$file
    start "${which[@]}"
    header 1 'nothing failed'
    sheet 9 >$file
    header 2 'something failed'
    from 2 | grep -q '^== check 2, after a change of felt.json: ' || flunk "$turn: the sheet is not named"
    echo x >shops/other.json; echo x >jobs/own/other.json
    no_more 2
    stop INT
done

[ $failures -eq 0 ] && echo "watch: all well"
exit $((failures > 0))
