// The largest roof that the fields allow, sixty planes and two hundred edges, is judged: no
// rule, no quantity, nor what cannot be, takes more steps than it may.
//
// usage: node largest.mjs PROGRAM SOURCE
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const PLANES = 60, EDGES = 200;
const [program, source] = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), "largest-"));
const example = join(source, "examples/porch-tear-off");
const job = JSON.parse(readFileSync(join(example, "job-long.json"), "utf8"));
const fields = readFileSync(join(source, "rules/fields.lua"), "utf8");
for (const [field, most] of [["roof.slopes", PLANES], ["roof.edges", EDGES]])
  if (!fields.includes(`field "${field}" { type = "list", range = { 1, ${most} }`))
    throw new Error(`${field} no longer holds ${most} at most: try as many as it does`);

const of = (list, count, more) =>
  Array.from({ length: count }, (_, i) => ({ ...list[i % list.length], ...more(i) }));
const decks = job.decks.map((deck) => deck.name);
job.roof.slopes = of([job.roof.slopes[0]], PLANES, (i) =>
  ({ name: `plane ${i}`, deck: decks[i % decks.length] }));
job.roof.edges = of(job.roof.edges.filter((edge) => edge.kind === "eave").slice(0, 1), EDGES, (i) =>
  ({ name: `edge ${i}`, slope: `plane ${i % PLANES}`,
     ...(i < PLANES ? {} : { kind: ["rake", "sidewall"][Math.floor(i / PLANES) % 2], length_ft: 10 }) }));
for (const value of Object.values(job.roof))
  if (Array.isArray(value))
    for (const item of value)
      if ("slope" in item && !item.name?.startsWith("edge ")) item.slope = "plane 0";
delete job.scope.area_sqft; // that of three planes
job.attics[0].area_sqft = 20000;
job.shop = "shop.json";
writeFileSync(join(folder, "job.json"), JSON.stringify(job));
writeFileSync(join(folder, "shop.json"), readFileSync(join(example, "shop.json")));

let failures = 0;
function fails(words) {
  failures++;
  console.log(`FAILED: ${words}`);
}
const CALLS = [["check", "--all", "--form", "json"], ["card", "--stage", "final"],
  ["takeoff"], ["takeoff", "--work"]];
for (const call of CALLS) {
  const ran = spawnSync(program, [...call, "--home", source, join(folder, "job.json")],
    { encoding: "utf8", maxBuffer: 1 << 28 });
  if (ran.status > 1 || ran.stderr !== "" || /many steps/.test(ran.stdout))
    fails(`${call[0]}: status ${ran.status}: ${ran.stderr.slice(0, 300)}`);
  if (call[0] !== "check" || ran.status > 1) continue;
  const report = JSON.parse(ran.stdout);
  if (report.summary.broken !== 0) fails(`check: ${report.summary.broken} broken`);
  const places = new Set(report.findings.map((finding) => finding.where));
  for (const place of ["plane 0", `plane ${PLANES - 1}`])
    if (![...places].some((where) => where?.includes(place))) fails(`check: nothing of ${place}`);
}
rmSync(folder, { recursive: true });
if (failures === 0) console.log("largest: judged");
process.exit(failures > 0 ? 1 : 0);
