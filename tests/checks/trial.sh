#!/usr/bin/env bash
# A trial of one moved figure over invented jobs: its counts against two plain batches,
# and parts of it, on several "hosts" and in any order, against the whole.
#
# usage: trial.sh PROGRAM SOURCE
set -u
program=$1
source=$2
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
failures=0
mkdir "$folder/temporary"
export TMPDIR=$folder/temporary # what is left there is ours
fail() { echo "FAILED: $*"; failures=$((failures + 1)); }

mkdir "$folder/home" "$folder/tmp"
export TMPDIR=$folder/tmp # what is left behind there is ours
cp -r "$source/rules" "$source/jurisdictions" "$folder/home/"
place() { # lap of the drip edge, inches
  cat <<LUA
jurisdiction "example/walk" {
  title = "Walk County",
  invented = true,
  follows = "model/irc-2021",
  from = "2026-01-01",
  code = "Walk County Code",
  figures = {
    ["drip_edge.lap_least"] = { $1, cite = "15.02.010", status = "invented",
      source = "Walk County" },
  },
}
LUA
}
place 2 >"$folder/home/jurisdictions/example/walk.lua"
place 3 >"$folder/draft.lua"
node "$source/tests/checks/trial_jobs.mjs" "$source" 1000 >"$folder/jobs.ndjson"
cd "$folder" || exit 1

try=("$program" trial --home home --before example/walk --after draft.lua)
"${try[@]}" jobs.ndjson >whole.txt
[ $? -eq 1 ] || fail "a moved figure must give exit status 1"
"${try[@]}" --form json jobs.ndjson >whole.json

# A draft whose own file is at fault judges nothing, which is not the same as moving nothing:
# status 3, with file and line.
broken() { # WORDS: of draft.lua on standard input
  cat >faulty.lua
  "$program" trial --home home --before example/walk --after faulty.lua jobs.ndjson >faulty.txt 2>&1
  local got=$?
  [ $got -eq 3 ] || fail "a faulty draft gives $got, not 3: $1"
  ! grep -qF "No finding" faulty.txt || fail "a faulty draft moves nothing: $1"
  grep -qF -- "$1" <(tr -s ' \n' ' ' <faulty.txt) || fail "a faulty draft does not say: $1"
}
place 3 | sed 's|  figures = {|  facts = { ["site.wind_vult_mph"] = { 9000, unit = "mph", cite = "1" } },\n&|' |
  broken 'example/walk.lua:7: fact "site.wind_vult_mph" says 9,000 mph, which no job can'
place 3 | sed 's|  title|  titel|' | broken 'example/walk.lua:1: unknown key "titel"'

# The same figure moved in the home itself, and both batches counted without the trial.
cp -r home other
place 3 >other/jurisdictions/example/walk.lua
"$program" check --lines --home home jobs.ndjson >before.ndjson
"$program" check --lines --home other jobs.ndjson >after.ndjson
node - <<'JS' || fail "the counts are not those of two batches"
const { readFileSync } = require("node:fs");
const batch = (name) => readFileSync(name, "utf8").trim().split("\n").map(JSON.parse);
const before = batch("before.ndjson"), after = batch("after.ndjson");
const trial = JSON.parse(readFileSync("whole.json"));
const outcome = (f) => f === undefined || f.outcome === "not_applicable" ? "not_applicable"
  : f.outcome === "warn" ? (f.met === false ? "not_met" : "met_unconfirmed") : f.outcome;
const key = (f, seen) => {
  const base = `${f.rule} ${f.where}`, n = (seen[base] ?? 0);
  seen[base] = n + 1;
  return `${f.rule}\u0000${base} ${n}`;
};
const table = (report) => {
  const seen = {};
  return Object.fromEntries(report.findings.map((f) => [key(f, seen), f]));
};
const moves = {}, counts = { jobs: 0, changed: 0, newly_fail: 0, fail_no_more: 0 };
before.forEach((was, n) => {
  const now = after[n], one = table(was), other = table(now), moved = {};
  counts.jobs++;
  for (const at of new Set([...Object.keys(one), ...Object.keys(other)])) {
    const from = outcome(one[at]), to = outcome(other[at]);
    if (from !== to)
      (moved[`${at.split("\u0000")[0]} ${from} ${to}`] ??= []).push(at);
  }
  for (const [move, list] of Object.entries(moved)) {
    moves[move] ??= [0, 0];
    moves[move][0]++;
    moves[move][1] += list.length;
  }
  counts.changed += Object.keys(moved).length > 0;
  counts.newly_fail += was.summary.fail === 0 && now.summary.fail > 0;
  counts.fail_no_more += was.summary.fail > 0 && now.summary.fail === 0;
});
const told = Object.fromEntries(trial.moves.map((m) =>
  [`${m.rule} ${m.from} ${m.to}`, [m.jobs, m.findings]]));
const same = (a, b) => JSON.stringify(Object.entries(a).sort()) === JSON.stringify(Object.entries(b).sort());
if (!same(told, moves) || counts.changed === 0 || counts.newly_fail === 0
  || Object.keys(counts).some((name) => counts[name] !== trial[name])) {
  console.log(JSON.stringify({ told, moves, counts, trial: { ...trial, moves: undefined } }));
  process.exit(1);
}
const moved = (m) => m.figures.find((f) => f.figure === "drip_edge.lap_least")?.findings;
if (trial.moves.some((m) => moved(m) !== m.findings))
  process.exit(1);
JS

# One process or three, a file or a pipe, a folder of single jobs: the same to the byte.
"${try[@]}" --jobs 1 jobs.ndjson | cmp - whole.txt || fail "one process counts otherwise"
"${try[@]}" --jobs 3 jobs.ndjson | cmp - whole.txt || fail "three processes count otherwise"
"${try[@]}" - <jobs.ndjson | cmp - whole.txt || fail "a pipe is counted otherwise"
mkdir -p permits/old
head -n 40 jobs.ndjson | split -l 1 -a 3 --additional-suffix=.json - permits/job
mv permits/joba[ab]?.json permits/old/ 2>/dev/null
head -n 40 jobs.ndjson >forty.ndjson
"${try[@]}" forty.ndjson >forty.txt
"${try[@]}" permits | cmp - forty.txt || fail "a folder is counted otherwise"

mkdir -p some/of
cp forty.ndjson some/of/ && ln -s nowhere some/lost.json
"${try[@]}" some >some.txt
grep -q "40 jobs judged under both, 1 not" some.txt && grep -q "some/lost.json" some.txt \
  || fail "a file that leads nowhere is passed over: $(head -20 some.txt)"

# Parts, merged in any order.
split -n l/7 jobs.ndjson part-
for part in part-*; do
  "${try[@]}" --part "$part" >"counts-$part"
done
"$program" trial --merge counts-part-* | cmp - whole.txt || fail "merged parts count otherwise"
ls -r counts-part-* | xargs cat | "$program" trial --merge --form json - | cmp - whole.json \
  || fail "parts merged backwards count otherwise"

# A pipe over files on several hosts, each a folder of its own with the program, home and
# draft it was sent.
if command -v parallel >/dev/null; then
  for host in a b c; do
    mkdir "host-$host"
    cp -r home draft.lua "host-$host/"
  done
  ls part-* | parallel --will-cite -j 3 --line-buffer \
    "cd host-\$(echo a b c | cut -d' ' -f\$((1 + {#} % 3))) && '$program' trial --home home \
      --before example/walk --after draft.lua --part ../{}" \
    | "$program" trial --merge - | cmp - whole.txt || fail "spread over hosts it counts otherwise"
  # The lines of a batch likewise, each part by the host whose turn it is, in their order.
  ls part-* | parallel --will-cite -k -j 3 \
    "cd host-\$(echo a b c | cut -d' ' -f\$((1 + {#} % 3))) && '$program' check --lines \
      --home home ../{}" | cmp - before.ndjson || fail "a batch spread over hosts is another"
  "$program" check --lines --brief --home home jobs.ndjson >brief.ndjson
  ls part-* | parallel --will-cite -k -j 3 "'$program' check --lines --brief --home home {}" \
    | cmp - brief.ndjson || fail "the brief lines of a batch spread out are others"
  parallel --will-cite --pipepart -a jobs.ndjson --block 1M -k -j 3 \
    "'$program' check --lines --home home -" | cmp - before.ndjson \
    || fail "a batch spread over processes is another"
else
  [ -z "${CI:-}" ] || fail "GNU parallel is not installed"
fi

# A sheet that a job names lies beside it, by itself or among lines.
mkdir kept && cp "$source/examples/cross-gable/"{job,shop}.json kept/
tr '\n' ' ' <kept/job.json >kept/jobs.ndjson
"${try[@]}" kept/job.json kept/jobs.ndjson | grep -q "2 jobs judged under both, 0 not" || fail "a sheet beside a job is not read"
head -n 1 jobs.ndjson >kept/bare.json
"${try[@]}" --jobs 2 kept/{bare,job}.json | grep -q "2 jobs judged under both, 0 not" \
  || fail "jobs with a sheet and without one are taken for jobs of two laws"

# What cannot be judged is counted and named; what is no part is refused.
{ echo '{"job":'; head -n 3 jobs.ndjson; } >torn.ndjson
"${try[@]}" torn.ndjson >torn.txt
grep -q "3 jobs judged under both, 1 not" torn.txt && grep -q "torn.ndjson:1" torn.txt \
  || fail "a torn job is not named: $(cat torn.txt)"
# A folder may hold anything: nothing is waited for, and nothing read twice.
mkdir -p mixed/inner
head -n 1 jobs.ndjson >mixed/inner/one.json
mkfifo mixed/pipe.json
ln -s . mixed/round
ln -s ../mixed mixed/inner/back
ln -s nowhere mixed/gone.json
timeout 60 "${try[@]}" mixed >mixed.txt || [ $? -eq 1 ] || fail "a mixed folder is not got through"
grep -q "1 job judged under both, 4 not" mixed.txt || fail "a mixed folder: $(cat mixed.txt)"
for words in "mixed/pipe.json: is not a file" "mixed/round: is a link to a folder"; do
  tr -s " \n" " " <mixed.txt | grep -qF "$words" || fail "a mixed folder does not say '$words'"
done
refused() { # words that must be said, then the command
  local words=$1; shift
  "$@" >out.txt 2>err.txt
  local status=$?
  [ $status -eq 2 ] || fail "$*: exit status $status"
  grep -qF "$words" err.txt || fail "$*: says $(cat err.txt)"
}
echo '{"format":"trial 1"}' >bad.part
refused "is no part of a trial" "$program" trial --merge bad.part
"$program" trial --home home --before example/walk --after model/irc-2024 --part part-aa >other.part
refused "is of another trial" "$program" trial --merge counts-part-aa other.part
sed 's/15.02.010/15.02.020/' draft.lua >draft2.lua && mv draft2.lua draft.lua
"${try[@]}" --part part-ab >moved.part
refused "was judged by other files" "$program" trial --merge counts-part-aa moved.part
refused "nowhere" "$program" trial --home home --before nowhere --after draft.lua part-aa
refused "which laws" "$program" trial part-aa
refused "cannot be read" "${try[@]}" no-such-file.json
echo "-- nothing" >bad.lua
# A draft comes from somebody else: it must not say where its copy is written.
sed 's#"example/walk"#"../../escaped"#' draft.lua >climbing.lua
refused "is no id of a place" "$program" trial --home home --before example/walk \
  --after climbing.lua part-aa
refused "is no id of a place" "$program" trial --home home --before example/walk \
  --after ../../escaped=draft.lua part-aa
[ ! -e "$TMPDIR/escaped.lua" ] || fail "a draft was written outside of the copied home"
refused "states no jurisdiction" "$program" trial --before example/walk --after bad.lua - </dev/null
[ -z "$(ls "$TMPDIR")" ] || fail "a copied home was left behind"

# Twice the jobs do not make the report, or what is kept, any longer than names need.
[ "$(wc -c <counts-part-aa)" -lt 20000 ] || fail "the counts of a part are long"
[ $failures -eq 0 ] && echo "trial: 1,000 jobs, all counts alike"
exit $((failures > 0))
