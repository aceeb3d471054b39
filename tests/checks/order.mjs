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
const declared = new Set(), given = new Set(), open = new Set();
const flunk = (what) => { failures++; console.log(`FAILED: ${what}`); };

// What each duty takes; here by hand, not from the quantities' own word.
const ICE = ["ice_barrier_rolls", "ice_barrier_plies"], SHEET = ["underlayment_rolls"];
const HELD = ["underlayment_caps"], DECK_NAILS = ["deck_nails"];
const DUTIES = {
  "drip_edge.eave": ["drip_edge_eave"], "drip_edge.rake": ["drip_edge_rake"],
  "drip_edge.cement": ["flange_cement"],
  "ice_barrier.reach": ICE, "ice_barrier.kind": ICE, "ice_barrier.rakes": ICE,
  "ice_barrier.valleys": ICE,
  "underlayment.kind": SHEET, "underlayment.plies": SHEET, "underlayment.head_lap": SHEET,
  "slope.double_underlayment": SHEET, "underlayment.starter": SHEET,
  "underlayment.cap": HELD, "underlayment.fasteners": HELD, "underlayment.lap_spacing": HELD,
  "underlayment.field_spacing": HELD,
  "underlayment.sealed_deck": ["deck_tape", "underlayment_rolls"], "underlayment.tape": ["deck_tape"],
  "fasteners.kind": ["shingle_nails"], "fasteners.count": ["shingle_nails"],
  "shingle.exposure": ["shingle_bundles"], "slope.least": ["shingle_bundles", "covering_squares"],
  "slope.other_covering": ["other_covering", "stripped_beside"],
  "valley.lining": ["valley_lining"], "flashing.walls": ["step_flashing", "wall_flashing"],
  "flashing.sidewall_size": ["step_flashing"],
  "flashing.kickout": ["kickout"], "flashing.chimneys": ["chimney_flashing"],
  "flashing.counterflashing": ["chimney_flashing"],
  "flashing.penetrations": ["pipe_flashing"], "flashing.cricket": ["cricket"],
  "flashing.cricket_other": ["cricket_other"],
  "deck.nail_edges": DECK_NAILS, "deck.nail_field": DECK_NAILS, "deck.nail_kind": DECK_NAILS,
  "deck.renailed": DECK_NAILS,
  "deck.panel_edges": ["panel_clips"],
  "deck.sound": ["deck_panels", "deck_boards"], "deck.ridge_slot": ["ridge_slot_fill"],
  "ventilation.net_free_area": ["ridge_vent", "vents", "vents_to_choose"],
  "wood.replaced": ["lumber"], "wood.matched": ["lumber"], "wood.sister_cut": ["lumber"],
};

// Nobody can count these: it is said, with what is known.
const NEVER_GIVEN = ["covering_trim", "other_trim", "stripped_beside", "flange_cement", "cricket",
  "cricket_other", "vents_to_choose"];

// A duty that what is there already meets, or that a job of its own orders: nothing is bought.
const THERE_ALREADY = new RegExp(["used again", "counted with others", "no panel is replaced", "not held by clips",
  "board", "0 sq ft", "it was there before", "low vents stay", "job of its own",
  "no plane that gets the covering", "leaves it where it is", "no new wood goes in",
  "an overlay strips nothing", "the vents listed do", "there are none"].join("|"));

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
  for (const line of lines.filter((one) => one.heading !== null)) {
    declared.add(line.name);
    if (is_given(line)) given.add(line.name);
    if (line.outcome === "open") open.add(line.name);
  }
  for (const finding of due) {
    const wanted = DUTIES[finding.rule];
    if (!wanted) continue;
    met++;
    const here = lines.filter((line) => wanted.includes(line.name));
    if (here.some((line) => is_given(line) || line.outcome === "open")) continue;
    if (here.some((line) => THERE_ALREADY.test(`${line.says} ${line.item ?? ""}`))) continue;
    if (here.some((line) => line.outcome === "given" && line.exact.value === 0)) continue;
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

// Houses that are built, or covered, otherwise: each changes a sound one.
const OTHERWISE = {
  "an overlay": (job) => {
    job.scope.method = "overlay";
    job.existing.layers_removed = 0;
    job.existing.coverings.forEach((layer) => { layer.removed = false; });
    job.decks.forEach((deck) => Object.assign(deck, { work: "kept", replaced_sqft: 0 }));
  },
  "panels over boards": (job) => Object.assign(job.decks[0], { kind: "spaced_board",
    work: "paneled_over", over_panel_thickness_in: 0.46875, board_width_in: 5.5 }),
  "a whole new deck": (job) => { job.decks[0].work = "replaced"; },
  "kept panels nailed again": (job) => Object.assign(job.decks[0], { renailed: true,
    replaced_sqft: 0 }),
  "starter up the rakes": (job) => { job.takeoff = { rake_starter: true, waste_percent: 10 }; },
  "three-tab shingles": (job) => { job.covering.grade = "three_tab"; },
  "felt held by nails": (job) => { job.underlayments[0].fastener = "nail"; },
  "a self-adhered sheet": (job) => Object.assign(job.underlayments[0], { kind: "D1970",
    fastener: "adhered" }),
  "a taped deck": (job) => Object.assign(job.underlayments[0], { deck_joints_taped: true,
    tape_width_in: 4, tape_is: "D1970" }),
  "two plies at the eaves": (job) => { job.ice_barrier = { kind: "two_cemented_plies" }; },
  "a slot closed": (job) => Object.assign(job.roof, { ridge_slot: "closed", ridge_slot_ft: 20,
    ridge_slot_in: 2, ridge_slot_filled: "panel" }),
  "a wide chimney": (job) => { job.roof.chimneys = [{ name: "stack", slope: "front", width_in: 40,
    masonry: true, meets_ridge: false, flashing_is: "new", counterflashed: true, cricket: true,
    cricket_cover: "sheet_metal", cricket_height_in: 9 }]; },
  "a wide skylight": (job) => job.roof.penetrations.push({ name: "skylight", kind: "skylight",
    width_in: 44, flashing_is: "new", per_instructions: false, cricket: true }),
  "a headwall": (job) => job.roof.walls.push({ name: "dormer front", kind: "headwall",
    flashing_is: "new", flashing: "continuous", length_ft: 6, up_in: 4, out_in: 4 }),
  "vents renewed": (job) => job.attics.forEach((attic) => {
    attic.vents.forEach((vent) => { vent.left_as_is = false; });
    attic.vents.push({ name: "ridge vent", kind: "ridge", place: "high", length_ft: 20,
      nfa_sqin_per_ft: 18, opens_outdoors: true, opening_in: 0.125 });
  }),
  "metal panels": (job) => { job.covering.kind = "metal_panel"; },
  "slate": (job) => { job.covering.kind = "slate"; },
  "wood shakes": (job) => { job.covering.kind = "wood_shake"; },
  "modified bitumen": (job) => { job.covering.kind = "modified_bitumen"; },
  "a coating": (job) => { job.covering.kind = "coating"; },
};

const TRIED_IN = { "a taped deck": "us-fl", "two plies at the eaves": "example/frostmere" };

// A low porch of its own planes: one plane gets another covering than the rest, or keeps its own.
function porch_house() {
  return JSON.parse(readFileSync(join(source, "tests/houses/porch-tear-off/job.json")));
}

function boards_at_the_eaves() {
  const job = with_porch({});
  job.decks.push({ name: "eave boards", kind: "board", thickness_in: 0.75, board_width_in: 5.5,
    work: "partly_replaced", renailed: false, replaced_sqft: 40, support_spacing_in: 24 });
  job.roof.edges.filter((edge) => edge.kind === "eave" && edge.slope !== "porch")
    .forEach((edge) => Object.assign(edge, { deck: "eave boards", deck_in: 18 }));
  return job;
}

const PORCH = {
  "metal on the porch": { gets: "metal_panel" },
  "metal on the porch, a job of its own": { gets: "metal_panel", other_checked: true },
  "bitumen on the porch": { gets: "modified_bitumen" },
  "the porch kept": { gets: "old_stays" },
};

function with_porch(change) {
  const job = porch_house();
  const porch = job.roof.slopes.find((slope) => slope.name === "porch");
  Object.assign(porch, change);
  job.roof.walls.forEach((wall) => { wall.length_ft = 20; });
  if (change.gets === "old_stays") {
    delete porch.replaced_percent;
    delete job.scope.roof_share_percent;
  }
  return job;
}

// The same house as if the porch were not there.
function without_porch() {
  const job = with_porch({});
  job.roof.slopes = job.roof.slopes.filter((slope) => slope.name !== "porch");
  job.roof.edges = job.roof.edges.filter((edge) => edge.slope !== "porch");
  job.decks = job.decks.filter((deck) =>
    job.roof.slopes.some((slope) => slope.deck === deck.name));
  job.underlayments = job.underlayments.filter((one) =>
    job.roof.slopes.some((slope) => slope.underlayment === one.name));
  return job;
}

const OF_PLANES = /^(shingle|starter|ridge_cap|underlayment|ice_barrier|drip_edge|deck|crew_days|tear_off)/;
const of_planes = (file) => JSON.stringify(JSON.parse(run(["takeoff", "--form", "json"], file))
  .quantities.filter((line) => OF_PLANES.test(line.name) && line.outcome === "given"
    && line.exact.value > 0).map((line) => [line.name, line.exact, line.buy]));

// One rafter tail, one plane, one deck at a time: whatever plane gets another covering, the
// rest are counted as if it were not there.
function stands_for_the_rest() {
  const file = join(work, "job.json");
  writeFileSync(file, JSON.stringify(without_porch()));
  const alone = of_planes(file);
  for (const [name, change] of Object.entries(PORCH)) {
    writeFileSync(file, JSON.stringify(with_porch(change)));
    const beside = of_planes(file);
    if (beside !== alone) flunk(`${name}: the rest is counted otherwise\n${alone}\n${beside}`);
  }
}

for (const houses of ["examples", "tests/houses"])
  for (const house of readdirSync(join(source, houses)))
    for (const file of house.includes(".") ? [] : readdirSync(join(source, houses, house)))
      if (/^job.*\.json$/.test(file))
        agrees(`${houses}/${house}/${file}`, join(source, houses, house, file));

function tries(name, job) {
  const file = join(work, "job.json");
  writeFileSync(file, JSON.stringify(job));
  try {
    agrees(name, file);
  } catch (error) {
    flunk(`${name}: ${error.message}`);
  }
}
for (const form of Object.keys(FORMS))
  for (const place of PLACES) tries(`${form} in ${place}`, laid_out(form, place));
for (const [name, change] of Object.entries(OTHERWISE)) {
  const job = laid_out("gable", TRIED_IN[name] ?? "us-ca");
  change(job);
  tries(name, job);
}
tries("boards at the eaves", boards_at_the_eaves());
{
  const job = with_porch({ old_layers: 1, old_layers_removed: 1 });
  OTHERWISE["an overlay"](job);
  tries("a porch stripped beside an overlay", job);
}
for (const [name, change] of Object.entries(PORCH)) tries(name, with_porch(change));
{
  const job = with_porch({ gets: "metal_panel" });
  job.roof.slopes.find((slope) => slope.name === "main back").gets = "metal_panel";
  tries("shingles in front, metal behind", job);
  const caps = JSON.parse(run(["takeoff", "--form", "json"], join(work, "job.json"))).quantities
    .find((line) => line.name === "ridge_cap");
  if (caps.outcome !== "open" || !caps.says.includes("/takeoff/cap_ft"))
    flunk(`caps of a ridge between two coverings: ${caps.says}`);
  job.takeoff = { ...job.takeoff, cap_ft: 44 };
  tries("and the caps said", job);
}
stands_for_the_rest();

for (const name of declared)
  if (!given.has(name) && !(NEVER_GIVEN.includes(name) && open.has(name)))
    flunk(`no house tried takes ${name}`);
for (const name of Object.values(DUTIES).flat())
  if (!declared.has(name)) flunk(`a duty takes ${name}, which is on no order`);
rmSync(work, { recursive: true });
if (tried < 85 || met < 2000) flunk(`only ${tried} jobs and ${met} duties`);
if (failures === 0) console.log(`order: ${tried} jobs, ${met} duties, each with its material`);
process.exit(failures > 0 ? 1 : 0);
