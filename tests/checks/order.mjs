// The order agrees with the check of the same job: no duty without its material, no
// material without a duty or a habit, over the examples and over laid-out houses of each
// form in several places. And what is of one kind stands on one line.
//
// usage: node order.mjs PROGRAM SOURCE
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

const [program, source] = process.argv.slice(2);
const work = mkdtempSync(join(tmpdir(), "order-"));
let failures = 0, tried = 0, met = 0;
const flunk = (what) => { failures++; console.log(`FAILED: ${what}`); };

// What each duty takes; here by hand, not from the quantities' own word.
const DUTIES = {
  "drip_edge.eave": ["drip_edge_eave"], "drip_edge.rake": ["drip_edge_rake"],
  "ice_barrier.reach": ["ice_barrier_rolls", "ice_barrier_plies"],
  "ice_barrier.kind": ["ice_barrier_rolls", "ice_barrier_plies"],
  "underlayment.kind": ["underlayment_rolls"], "underlayment.plies": ["underlayment_rolls"],
  "slope.double_underlayment": ["underlayment_rolls"], "underlayment.cap": ["underlayment_caps"],
  "fasteners.kind": ["shingle_nails"], "fasteners.count": ["shingle_nails"],
  "valley.lining": ["valley_lining"], "flashing.walls": ["step_flashing", "wall_flashing"],
  "flashing.kickout": ["kickout"], "flashing.chimneys": ["chimney_flashing"],
  "flashing.penetrations": ["pipe_flashing"], "deck.nail_edges": ["deck_nails"],
  "deck.nail_field": ["deck_nails"], "deck.ridge_slot": ["ridge_slot_fill"],
  "wood.replaced": ["lumber"],
};

// A duty that what is there already meets: nothing is bought for it.
const THERE_ALREADY = /used again|counted with others|no panel is replaced|board/;

function run(args, job) {
  const shown = spawnSync(program, [...args, "--home", source, job], { encoding: "utf8",
    maxBuffer: 1 << 26 });
  if (shown.status > 1) throw new Error(`${args[0]} of ${job}: ${shown.status} ${shown.stderr} `
    + (shown.stdout.match(/[^{}]*erred[^{}]*/) ?? ""));
  return shown.stdout;
}

const speaks = (finding) => ["pass", "warn", "fail"].includes(finding.outcome);
const is_given = (line) => line.outcome === "given" && line.buy && line.buy.value > 0;

function agrees(name, file) {
  const findings = JSON.parse(run(["check", "--form", "json", "--all"], file)).findings;
  const takeoff = JSON.parse(run(["takeoff", "--form", "json"], file));
  const lines = takeoff.quantities, due = findings.filter(speaks);
  for (const finding of due) {
    const wanted = DUTIES[finding.rule];
    if (!wanted) continue;
    met++;
    const here = lines.filter((line) => wanted.includes(line.name));
    if (here.some((line) => is_given(line) || line.outcome === "open")) continue;
    if (here.some((line) => THERE_ALREADY.test(line.says))) continue;
    flunk(`${name}: ${finding.rule} at ${finding.where} has no material: `
      + here.map((line) => `${line.name} ${line.says}`).join("; "));
  }
  const asked = findings.filter((finding) => finding.outcome !== "not_applicable");
  const rules = new Set(findings.map((finding) => finding.rule));
  for (const line of lines.filter((one) => one.heading !== null)) {
    for (const rule of line.serves)
      if (!rules.has(rule)) flunk(`${name}: ${line.name} serves ${rule}, which is no rule`);
    if (!is_given(line) || line.habit !== null) continue;
    if (!asked.some((finding) => line.serves.includes(finding.rule)))
      flunk(`${name}: ${line.name} is bought for no duty and no habit`);
  }
  const kinds = takeoff.order.map((line) => `${line.heading}/${line.item}`);
  if (new Set(kinds).size !== kinds.length) flunk(`${name}: one kind stands on two lines`);
  for (const line of takeoff.order) {
    if (!(line.count > 0 && Number.isInteger(line.count)))
      flunk(`${name}: ${line.count} ${line.unit} of ${line.item}`);
    const parts = lines.filter((one) => one.name === line.quantity);
    if (parts.length === 0) flunk(`${name}: ${line.item} comes from no quantity`);
  }
  const text = run(["takeoff"], file).split("\n");
  if (text.length > 66) flunk(`${name}: the order takes ${text.length} lines, more than a page`);
  if (text.some((line) => line.length > 80)) flunk(`${name}: the order is wider than a page`);
  tried++;
}

const FORMS = {
  gable: {}, hip: { rake_overhang_in: undefined }, shed: {},
  gable_porch: { porch: { length_ft: 12, depth_ft: 6, pitch: "3:12" } },
  cross_gable: { wing: { width_ft: 14, out_ft: 8, left_ft: 12 } },
};
const PLACES = ["us-ca", "us-mn", "us-fl", "example/frostmere", "example/saltmarsh"];

// A house by its plan, from the sound one of California.
function laid_out(form, place) {
  const job = JSON.parse(readFileSync(join(source, "tests/sound/us-ca.json")));
  job.jurisdiction = place;
  if (place === "example/saltmarsh") job.site.exposure = "C";
  // What the other place is like is that place's to say.
  if (place !== "us-ca")
    for (const fact of ["state_climate_zone", "climate_zone", "wind_vult_mph", "hail_exposure",
      "wind_design_required", "january_mean_F", "seismic_category", "fire_zone",
      "state_fire_area", "high_velocity_hurricane_zone", "ice_barrier_in_table"])
      delete job.site[fact];
  Object.assign(job.roof.footprint, { form }, FORMS[form]);
  if (form === "hip") delete job.roof.footprint.rakes;
  for (const key of ["form", "ridge_ft", "hip_ft", "valley_ft"]) delete job.roof[key];
  job.scope.area_sqft = undefined;
  // A house of one place tried in many: what the place states otherwise is meant.
  job.as_meant = ["exposure", "climate_zone", "wind_vult_mph"].map((fact) =>
    ({ at: `/site/${fact}` }));
  job.roof.valleys = form !== "cross_gable" ? [] : ["left valley", "right valley"].map((name) =>
    ({ name, kind: "open", lining: "metal", width_in: 24, metal: "galvanized",
      thickness_in: 0.019 }));
  job.attics.forEach((attic) => { attic.vents = attic.vents.filter((v) => v.kind !== "ridge"); });
  job.roof.walls = [{ name: "chimney wall", kind: "sidewall", flashing_is: "new",
    flashing: "step", length_ft: 8, eave_ends_here: true, kickout: true, up_in: 4, out_in: 4 }];
  job.rot = [{ name: "tail 1", member: "rafter_tail", length_ft: 2, repair: "sistered",
    rot_cut_off: true, sister_past_ft: 4, stock: "2x6", size_matches: true,
    species_matches: true, primed_all_faces: true, reaches_wall: false }];
  return job;
}

for (const houses of ["examples", "tests/houses"])
  for (const house of readdirSync(join(source, houses)))
    for (const file of house.includes(".") ? [] : readdirSync(join(source, houses, house)))
      if (/^job.*\.json$/.test(file))
        agrees(`${houses}/${house}/${file}`, join(source, houses, house, file));
for (const form of Object.keys(FORMS))
  for (const place of PLACES) {
    const file = join(work, "job.json");
    writeFileSync(file, JSON.stringify(laid_out(form, place)));
    agrees(`${form} in ${place}`, file);
  }
rmSync(work, { recursive: true });
if (tried < 30 || met < 300) flunk(`only ${tried} jobs and ${met} duties`);
if (failures === 0) console.log(`order: ${tried} jobs, ${met} duties, each with its material`);
process.exit(failures > 0 ? 1 : 0);
