// A fault must not be talked away: each choice and each yes or no of a faulty house is
// turned over, one at a time. Where that leaves nothing failed, open or not met, it must
// be one of the turns listed here, each with why it does away with the fault.
//
// usage: node turned.mjs PROGRAM SOURCE
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { TWINS } from "./twins.mjs";

const [program, source] = process.argv.slice(2);
const run = (args, input) => {
  const done = spawnSync(program, [...args, "--home", source],
    { encoding: "utf8", input, maxBuffer: 1 << 30 });
  return done.stdout;
};

const schema = JSON.parse(run(["fields", "--schema"]));
const resolved = (part) => {
  while (part.$ref !== undefined)
    part = part.$ref.replace(/^#\//, "").split("/").reduce((at, key) => at[key], schema);
  return part;
};

// The words that each path of a job may hold: [["covering","kind"], ["asphalt_shingle", ...]].
function words(part, path = [], found = []) {
  part = resolved(part);
  const types = [part.type].flat();
  if (part.enum !== undefined)
    found.push([path, part.enum]);
  else if (types.includes("boolean"))
    found.push([path, [true, false]]);
  for (const [key, inner] of Object.entries(part.properties ?? {}))
    words(inner, [...path, key], found);
  if (part.items !== undefined && typeof part.items === "object")
    words(part.items, [...path, "[]"], found);
  for (const key of ["oneOf", "anyOf", "allOf"])
    for (const inner of part[key] ?? [])
      words(inner, path, found);
  return found;
}

// The places of a path in a job: "[]" stands for each item there is.
function places(job, path, at = []) {
  if (path.length === 0)
    return [at];
  const [key, ...rest] = path;
  if (key !== "[]")
    return typeof job === "object" && job !== null && !Array.isArray(job)
      ? places(job[key] ?? (rest.length > 0 && rest[0] !== "[]" ? {} : undefined), rest, [...at, key])
      : [];
  return Array.isArray(job) && rest.length > 0
    ? job.flatMap((item, n) => places(item, rest, [...at, n])) : [];
}

function turned(job, at, word) {
  const copy = structuredClone(job);
  let group = copy;
  for (const key of at.slice(0, -1))
    group = group[key] ??= {};
  if (group[at.at(-1)] === word)
    return null;
  group[at.at(-1)] = word;
  return copy;
}

// Turns that do away with a fault, and why they may.
const MILD = ["state_1", "state_2", "state_3", "state_5", "state_6", "state_7", "state_16"];
const MENDS = {
  "dark shingles in a zone of cool roofs": [
    ...MILD.map((zone) => `site.state_climate_zone = ${zone}`), // no cool roof is asked for there
    "roof.footprint.planes.under_integrated_solar = true", // three exceptions of the section
    "energy.radiant_barrier = true", "energy.ducts_in_attic = false"],
  "work begun without leave": ["permit.early_start_allowed = true", // the leave itself
    "permit.begun_before = false", // nothing was begun
    "permit.status = issued"], // the permit covers what goes on
  "no permit": ["permit.status = applied", "permit.status = issued"],
  "2:12 with one ply": ["underlayments.0.kind = D1970"], // one adhered sheet is a way
  "metal under the felt at the eaves": ["roof.footprint.eaves.underlayment_lies = under_metal",
    "underlayments.0.kind = D1970"], // an adhered sheet may lie over a primed flange
  "one ply over open joints": ["underlayments.0.kind = D1970",
    "underlayments.0.deck_joints_taped = true"],
  "class A of D3161 alone": ["covering.D7158_class = G", "covering.D7158_class = H",
    "covering.D3161_class = F"],
  "staples": ["fasteners.kind = nail"],
  "no drip edge": ["roof.footprint.eaves.drip_edge = true"],
  "ice barrier of two courses short": ["site.ice_barrier_in_table = false"],
  "no cricket": ["roof.chimneys.0.meets_ridge = true", // no water comes to it from above
    "roof.chimneys.0.cricket = true"],
  "no ice barrier": ["ice_barrier.kind = self_adhered", "ice_barrier.kind = two_cemented_plies"],
  "no drip edge at the rakes": ["roof.footprint.rakes.drip_edge = true"],
};

const FREE = new Set(["jurisdiction", "date", "stage"]); // other law, not another house

const paths = words(schema).filter(([path]) => !FREE.has(path[0]) && path[0] !== "as_meant");
let tried = 0, failures = 0;
const flunk = (text) => { failures++; console.log(`FAILED: ${text}`); };

// What a faulty house is turned into, one line each: [where, word, job].
function turns_of(job) {
  return paths.flatMap(([path, choices]) => places(job, path).flatMap((at) =>
    choices.map((word) => [`${at.join(".")} = ${word}`, turned(job, at, word)])
      .filter(([, other]) => other !== null)));
}

function says_something(report) {
  return report.findings === undefined // refused
    || report.findings.some((f) => f.met === false || f.outcome === "broken"
      || (f.outcome === "open" && f.ask === "job"));
}

for (const [place, twins] of Object.entries(TWINS)) {
  const planned = JSON.parse(readFileSync(join(source, `tests/sound/${place}.json`)));
  for (const [what, , spoil] of twins.filter((twin) => twin[3] === undefined)) {
    const job = structuredClone(planned);
    spoil(job);
    const turns = turns_of(job);
    const lines = run(["check", "--lines", "--form", "json", "-"],
      turns.map((turn) => JSON.stringify(turn[1])).join("\n") + "\n").trimEnd().split("\n");
    if (lines.length !== turns.length)
      flunk(`${place}, ${what}: ${turns.length} jobs, ${lines.length} answers`);
    tried += turns.length;
    const silent = turns.map((turn) => turn[0])
      .filter((_, n) => !says_something(JSON.parse(lines[n])));
    const may = MENDS[what] ?? [];
    for (const turn of silent.filter((turn) => !may.includes(turn)))
      flunk(`${place}, ${what}: with ${turn} nothing is said any more`);
    for (const turn of may.filter((turn) => !silent.includes(turn)))
      flunk(`${place}, ${what}: ${turn} is listed, but something is still said`);
  }
}
console.log(`${tried} turns of faulty houses, ${failures} wrong`);
process.exit(failures === 0 ? 0 : 1);
