#!/usr/bin/env bash
# Seventeen amendments as counties publish them (example/lindenholt, invented): how many need
# Lua of their own, and whether each sentence moves something that cases watch.
#
# usage: amendments.sh PROGRAM SOURCE
set -u
program=$1
cd "$2" || exit 1
file=jurisdictions/example/lindenholt.lua
failures=0
fail() { echo "FAILED: $*"; failures=$((failures + 1)); }

# A sentence needs Lua where a rule file, or a function in the place's own, stands for it.
rules=jurisdictions/example/lindenholt.rules.lua
in_rules=0
[ -e "$rules" ] && in_rules=$(grep -cE '^(rule|demand|field) ' "$rules")
functions=$(grep -cE '\bfunction\b|^ *rules *=' "$file")
sentences=$(grep -cE '^    -- [0-9]+\. ' "$file")
[ "$sentences" -eq 17 ] || fail "$sentences amendments, not 17"
[ $((in_rules + functions)) -le 4 ] || fail "$((in_rules + functions)) of 17 need Lua"

# What stands below each sentence is a difference of the proof, and judged by a case.
proof=$("$program" proof example/lindenholt --home . --form json) || fail "the proof does not hold"
PROOF=$proof FILE=$file node - <<'JS' || fail "a sentence moves nothing, or no case watches it"
const { readFileSync } = require("node:fs");
const block = JSON.parse(process.env.PROOF).places[0].blocks.at(-1);
const moved = new Set(block.differences.map((d) => d.figure ?? d.advice));
let bad = block.moved !== block.judged || block.moved < 17;
const lines = readFileSync(process.env.FILE, "utf8").split("\n");
let sentence = null, found = true;
for (const line of [...lines, "    -- 99. end"]) {
  const begins = line.match(/^    -- (\d+)\. /);
  if (begins && !found) {
    console.log(`amendment ${sentence} moves nothing`);
    bad = true;
  }
  if (begins)
    [sentence, found] = [begins[1], false];
  const figure = line.match(/^    \["([a-z0-9_.]+)"\]/i);
  found ||= figure !== null && moved.has(figure[1]);
}
process.exit(bad ? 1 : 0);
JS
[ $failures -eq 0 ] || exit 1
echo "$sentences amendments, $((in_rules + functions)) with Lua"
