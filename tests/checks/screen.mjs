// The one screen of `check`, held against the findings themselves: the examples in
// their own invented place, and in some real ones, at every stage.
//
//   node screen.mjs PROGRAM HOME
//
// Exit status 1 when anything is wrong.
import { spawnSync } from "node:child_process";
import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const [program, home] = process.argv.slice(2);
const PLACES = ["us-ca/palo-alto", "us-fl/pasco-county", "us-mn/minneapolis", "us-tx/garland"];
const PARTS = ["BROKEN", "FIX", "LOOK", "ANSWER", "NOT KNOWN HERE", "LATER", "MET", "CONFIRM", "CARE"];
const LINES_MOST = 60, COLUMNS_MOST = 80;

let wrong = 0, screens = 0;

function check(args) {
  const done = spawnSync(program, ["check", "--home", home, ...args], { encoding: "utf8" });
  if (done.status > 1) throw new Error(`${args.join(" ")}: ${done.status}: ${done.stderr}`);
  return done.stdout;
}

// The lines of each part, without its heading; "" holds what stands above them all.
function partsOf(screen) {
  const parts = new Map([["", []]]);
  let part = "";
  for (const line of screen.split("\n")) {
    const found = PARTS.find((name) => line.startsWith(`${name}  `));
    if (found !== undefined) parts.set(part = found, []);
    else parts.get(part).push(line);
  }
  return parts;
}

const flat = (lines) => lines.map((line) => line.trim()).join(" ");

// Each finding of this part is named there, its place too.
function mustName(say, parts, part, findings) {
  const words = flat(parts.get(part) ?? []);
  for (const finding of findings) {
    if (!words.includes(`[${finding.rule}]`)) say(`${finding.rule} is not in ${part}`);
    if (finding.where !== null && !words.includes(finding.where.replace(/ +/g, " ")))
      say(`${finding.rule} in ${finding.where} is not in ${part}`);
  }
}

function checkCounts(say, parts, report) {
  const words = flat(parts.get("")).match(/Count (.*)/)?.[1] ?? "";
  const count = (what) => Number(words.match(new RegExp(`(\\d+) ${what}`))?.[1] ?? 0);
  const { summary } = report;
  if (count("fail") !== summary.fail) say(`${count("fail")} fail, not ${summary.fail}`);
  if (count("to answer") + count("later") + count("not known here") !== summary.open)
    say(`not ${summary.open} open: ${words}`);
  if (count("to look at") + count("met") !== summary.warn + summary.pass)
    say(`not ${summary.warn + summary.pass} met or to look at: ${words}`);
}

// The page names what the screen names.
function checkPage(say, page, findings) {
  const words = page.replace(/<[^>]*>/g, "");
  for (const { rule } of findings)
    if (!words.includes(`[${rule}]`)) say(`${rule} is not on the page`);
}

function checkScreen(name, args, most) {
  const screen = check(args);
  const report = JSON.parse(check([...args, "--form", "json"]));
  const fails = report.findings.filter(({ outcome }) => outcome === "fail");
  const looks = report.findings.filter(({ outcome, met, why }) => outcome === "warn"
    && (met === false || why.includes("disputed") || why.includes("advice")));
  const say = (what) => { wrong++; console.log(`WRONG  ${name}: ${what}`); };
  const lines = screen.split("\n").slice(0, -1);
  const parts = partsOf(screen);
  screens++;
  if (lines.length > most) say(`${lines.length} lines`);
  for (const line of lines)
    if ([...line].length > COLUMNS_MOST) say(`${[...line].length} columns: ${line}`);
  const order = [...parts.keys()].slice(1).map((part) => PARTS.indexOf(part));
  if (order.some((at, i) => i > 0 && at <= order[i - 1])) say(`in the order ${[...parts.keys()]}`);
  if (/\b(memory|parallel)\b/.test(screen)) say("a status on a line");
  mustName(say, parts, "FIX", fails);
  mustName(say, parts, "LOOK", looks);
  checkPage(say, check([...args, "--form", "html"]), [...fails, ...looks]);
  checkCounts(say, parts, report);
  const cautions = report.caution.split("\n").length - 1;
  const care = (parts.get("CARE") ?? []).findIndex((line) => line === "");
  if (Math.max(care, 0) !== cautions) say(`${care} lines for ${cautions} cautions`);
  return lines.length;
}

for (const folder of readdirSync(join(home, "examples"))) {
  const path = join(home, "examples", folder);
  if (!statSync(path).isDirectory()) continue;
  for (const file of readdirSync(path).filter((name) => /^job.*\.json$/.test(name))) {
    const job = join(path, file), name = `${folder}/${file}`;
    const lines = checkScreen(name, [job], LINES_MOST);
    if (file === "job.json") console.log(`${folder}: ${lines} lines`);
    for (const place of file === "job.json" ? PLACES : [])
      checkScreen(`${name} in ${place}`, ["--jurisdiction", place, "--date", "2026-03-02", job],
        Infinity);
  }
}
if (screens < 20) wrong++;
console.log(`${screens} screens looked at, ${wrong} things wrong`);
process.exitCode = wrong === 0 ? 0 : 1;
