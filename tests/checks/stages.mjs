// What failed before the stage asked for fails at it too: each roof below is spoiled in a
// way that only rules of an earlier stage judge, and no `--stage` may clear it.
//
// usage: node stages.mjs PROGRAM SOURCE
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [program, source] = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), "stages-"));
const SPOILED = [
  ["shingles on spaced boards", "deck.solid", (job) =>
    Object.assign(job.decks[1], { kind: "spaced_board", board_gap_in: 3, board_width_in: 3.5 })],
  ["20/0 panels on rafters at 24 in", "deck.panel_span", (job) =>
    Object.assign(job.decks[1], { span_rating: "20/0", support_spacing_in: 24 })],
  ["one ply at 2.5:12", "slope.double_underlayment", (job) => { job.underlayments[1].plies = 1; }],
  ["staples", "fasteners.kind", (job) => { job.fasteners.kind = "staple"; }],
  ["plain steel", "fasteners.metal", (job) => { job.fasteners.metal = "plain_steel"; }],
  ["3/4 in nails", "fasteners.penetration", (job) => { job.fasteners.length_in = 0.75; }],
  ["no wind class", "shingle.wind_class", (job) =>
    Object.assign(job.covering, { D7158_class: "none", D3161_class: "none" })],
];

let failures = 0, tried = 0;
const flunk = (words) => { failures++; console.log(`FAILED: ${words}`); };

function check(job, stage) {
  const file = join(folder, "job.json");
  writeFileSync(file, JSON.stringify(job));
  const run = spawnSync(program, ["check", "--home", source, "--form", "json", "--stage", stage,
    file], { encoding: "utf8", maxBuffer: 1 << 26 });
  return { status: run.status, report: run.stdout === "" ? null : JSON.parse(run.stdout),
    said: run.stderr };
}

for (const stage of ["deck", "dry-in", "final"]) {
  const sound = JSON.parse(readFileSync(join(source, "tests/houses/porch-tear-off",
    `job-${stage}.json`)));
  for (const [what, rule, spoil] of SPOILED) {
    const job = structuredClone(sound);
    spoil(job);
    const { status, report, said } = check(job, stage);
    tried++;
    if (status !== 1)
      flunk(`${what} at ${stage}: exit status ${status} ${said}`);
    else if (!report.findings.some((f) => f.rule === rule && f.outcome === "fail"))
      flunk(`${what} at ${stage}: ${rule} does not fail`);
  }
  const { report } = check(sound, stage);
  if (report.findings.some((f) => f.stage !== stage && f.outcome === "pass"))
    flunk(`${stage}: what is met of earlier stages is told again`);
}
rmSync(folder, { recursive: true });
console.log(`${tried} spoiled roofs tried, ${failures} cleared`);
process.exit(failures > 0 ? 1 : 0);
