// Opens the drawings of all jobs of examples/ and tests/houses/, and of many made at random, in a
// browser as wide as a telephone, and measures their words: none may lie on
// others, leave its drawing, or be too small to read.
//
//   node drawings.mjs EAVEMARK HOME [JOBS [SEED]]
//
// Exit status 1 when anything is wrong, 77 (skipped) when EAVEMARK_NO_BROWSER=1.
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { spawnSync } from "node:child_process";
import { pathToFileURL } from "node:url";
import { PHONE, STAGES, openBrowser, run, temporaryFolder } from "./pages.mjs";

const LEAST_LETTERS = 11; // CSS px on a telephone
const SLACK = 0.75;       // px by which boxes of letters may touch
const DRAWINGS = ["plan", "zones", "panel", "eave", "courses", "attic"];
const TITLES = [/^Roof plan/, /^Nailing zones/, /^A panel/, /^Cut through/, /^Courses/, /^Air/];

let wrong = 0;
function say(what) {
  wrong++;
  if (wrong <= 60) console.log(`WRONG  ${what}`);
}

// A small generator of its own, so that a seed gives the same jobs everywhere
// (mulberry32).
function dice(seed) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const real = (low, high) => Math.round((low + (high - low) * next()) * 100) / 100;
  const whole = (low, high) => Math.floor(low + (high - low + 1) * next());
  const pick = (list) => list[whole(0, list.length - 1)];
  return { next, real, whole, pick, chance: (share) => next() < share };
}

const NAMES = ["front", "back", "main front over the kitchen and the long porch", "W".repeat(60),
  "<b>&\"'</b>", "屋根の北側", "a", "ñandú é", "i".repeat(60), "x y".repeat(15), "🏠🏠🏠",
  "rear of \u202ethe wing"];

const name = (d, n) => `${d.pick(NAMES)}`.slice(0, 56) + ` ${n}`;
const maybe = (d, object, key) => { if (d.chance(0.12)) delete object[key]; };

function randomPlanes(d) {
  const shape = d.pick(["gable", "hip", "many", "few", "extreme"]);
  const pitch = () => `${d.pick([0.25, 2, 2.5, 4, 6, 9, 12, 18, 24])}:12`;
  const steep = pitch();
  const plane = (eave, ridge, runs, slope) => ({ pitch: slope, eave_ft: eave, ridge_ft: ridge,
    run_ft: runs });
  if (shape === "gable") {
    const eave = d.real(6, 200), runs = d.real(2, 60);
    return [[plane(eave, eave, runs, steep), plane(eave, eave, runs, steep)], eave];
  }
  if (shape === "hip") {
    const runs = d.real(4, 40), ridge = d.pick([0, d.real(1, 120)]);
    const side = plane(Math.round((ridge + 2 * runs) * 100) / 100, ridge, runs, steep);
    const end = plane(Math.round(2 * runs * 100) / 100, 0, runs, steep);
    return [[{ ...side }, { ...side }, { ...end }, { ...end }], ridge];
  }
  const most = shape === "many" ? 60 : 8;
  const high = shape === "extreme" ? 1000 : 80;
  const planes = Array.from({ length: d.whole(1, most) }, () =>
    plane(d.real(1, high), d.pick([0, d.real(0, high)]), d.real(0.5, high / 5), pitch()));
  const upper = planes.reduce((sum, one) => sum + one.ridge_ft, 0);
  return [planes, Math.floor(upper / 2)];
}

function randomEdges(d, slopes) {
  const edges = [];
  for (const slope of slopes) {
    if (d.chance(0.1)) continue;
    const up = slope.run_ft; // never longer than the plane is up its slope
    const pieces = d.pick([1, 1, 1, 2]);
    for (let i = 0; i < pieces; i++)
      edges.push({ name: name(d, edges.length), kind: "eave", slope: slope.name,
        length_ft: Math.max(0.1, Math.floor(slope.eave_ft / pieces * 100) / 100),
        drip_edge: d.chance(0.8), underlayment_lies: d.pick(["over_metal", "under_metal"]),
        flange_sealed: false, overhang_in: d.pick([0, d.real(4, 96), 16]),
        wall_thickness_in: d.real(3, 24), over_heated_space: d.chance(0.8),
        ice_barrier_reach_in: d.pick([0, d.real(0, 600), 36, 60]) });
    for (let i = 0; i < 2; i++) {
      // A hip takes from the upper edge.
      const kind = d.pick(["rake", "rake", slope.ridge_ft < slope.eave_ft ? "hip" : "rake",
        "valley", "sidewall"]);
      edges.push({ name: name(d, edges.length), kind, slope: slope.name,
        length_ft: Math.max(0.1, up), drip_edge: d.chance(0.7), underlayment_lies: "under_metal" });
    }
  }
  for (const edge of edges)
    for (const key of ["overhang_in", "wall_thickness_in", "ice_barrier_reach_in",
      "underlayment_lies", "drip_edge"])
      if (key in edge) maybe(d, edge, key);
  return edges.filter((edge) => edge.kind !== "eave" || edge.length_ft > 0.1).slice(0, 200);
}

function changeDecks(d, job) {
  for (const deck of job.decks) {
    deck.work = d.pick(["kept", "replaced", "partly_replaced"]);
    deck.renailed = d.chance(0.8);
    deck.replaced_sqft = 0;
    deck.support_spacing_in = d.pick([12, 16, 19.2, 24, 48, 72, d.real(8, 72)]);
    deck.nails = { ...deck.nails, edge_spacing_in: d.real(0.5, 48),
      field_spacing_in: d.real(0.5, 48), band_width_in: d.pick([0, 48, d.real(0, 240)]),
      band_spacing_in: d.real(0.5, 48), edge_distance_in: d.real(0, 3) };
    for (const key of ["edge_spacing_in", "field_spacing_in", "gable_spacing_in",
      "band_spacing_in", "band_width_in", "edge_distance_in"]) maybe(d, deck.nails, key);
    for (const key of ["support_spacing_in", "nails", "panel_gap_in"]) maybe(d, deck, key);
  }
}

function changeRest(d, job) {
  Object.assign(job.covering, { strip_length_in: d.real(6, 60), exposure_printed_in: d.real(2, 12),
    offset_printed_in: d.real(1, 20) });
  job.fasteners.per_shingle = d.whole(0, 12);
  for (const key of ["strip_length_in", "exposure_printed_in", "offset_printed_in"])
    maybe(d, job.covering, key);
  for (const sheet of job.underlayments) {
    const width = d.real(6, 144);
    Object.assign(sheet, { roll_width_in: width,
      head_lap_in: d.real(0, Math.min(36, width - 3)) });
    for (const key of ["roll_width_in", "head_lap_in", "starter_width_in"]) maybe(d, sheet, key);
  }
  Object.assign(job.drip_edge, { down_in: d.real(0, 12), back_in: d.real(0, 24) });
  for (const attic of job.attics) {
    attic.name = name(d, 0);
    attic.vents = attic.vents.map((vent) => ({ ...vent,
      length_ft: vent.kind === "ridge" ? Math.min(d.real(0, 60), job.roof.ridge_ft)
        : d.real(0, 300) }));
    if (job.roof.ridge_ft === 0) attic.vents = attic.vents.filter((vent) => vent.kind !== "ridge");
    for (const vent of attic.vents) { maybe(d, vent, "place"); maybe(d, vent, "length_ft"); }
  }
}

function randomJob(d, whole) {
  const job = structuredClone(d.pick(whole));
  const [planes, ridge] = randomPlanes(d);
  const old = job.roof.slopes[0];
  job.scope.roof_share_percent ??= 100;
  job.roof.slopes = planes.map((plane, i) => ({ ...old, ...plane, name: name(d, i),
    deck: d.pick(job.decks).name, underlayment: d.pick(job.underlayments).name }));
  job.roof.ridge_ft = ridge;
  delete job.roof.hip_ft;
  delete job.roof.valley_ft;
  delete job.roof.form;
  job.roof.chimneys = [];
  job.house.solid_fuel_chimney = false;
  job.roof.walls = [];
  job.roof.valleys = [];
  if (d.chance(0.1)) delete job.roof.ridge_ft;
  job.roof.edges = randomEdges(d, job.roof.slopes);
  job.roof.slopes.forEach((slope) => { maybe(d, slope, "pitch"); });
  if (d.chance(0.1)) delete d.pick(job.roof.slopes).run_ft;
  delete job.scope.area_sqft; // another job's roof
  if ("ridge_ft" in job.roof) changeRest(d, job);
  // The attics together are about what the roof covers.
  const over = planes.reduce((sum, p) => sum + p.run_ft * (p.eave_ft + p.ridge_ft) / 2, 0);
  for (const attic of job.attics)
    attic.area_sqft = Math.max(1, Math.floor(d.real(0.8, 0.95) * over / job.attics.length));
  changeDecks(d, job);
  return job;
}

// In the page: what is wrong with its drawings, and which there are.
function measure(least, slack) {
  const faults = [], titles = [];
  for (const svg of document.querySelectorAll("figure svg")) {
    const title = svg.querySelector("title")?.textContent ?? "";
    titles.push(title);
    if (!title || !svg.querySelector("desc")?.textContent) faults.push("no title or description");
    for (const id of (svg.getAttribute("aria-labelledby") ?? "").split(" "))
      if (!svg.querySelector(`[id="${id}"]`)) faults.push(`${title}: labelled by nothing`);
    const frame = svg.getBoundingClientRect();
    const size = parseFloat(getComputedStyle(svg).fontSize) * frame.width
      / svg.viewBox.baseVal.width;
    if (size < least) faults.push(`${title}: letters of ${size.toFixed(1)} px`);
    const boxes = [...svg.querySelectorAll("text")].map((text) => {
      const box = text.getBoundingClientRect();
      return { words: text.textContent, left: box.left, right: box.right, top: box.top,
        bottom: box.bottom };
    });
    boxes.forEach((a, i) => {
      if (a.left < frame.left - slack || a.right > frame.right + slack
        || a.top < frame.top - slack || a.bottom > frame.bottom + slack)
        faults.push(`${title}: "${a.words}" leaves the drawing`);
      for (const b of boxes.slice(i + 1))
        if (a.left + slack < b.right && b.left + slack < a.right
          && a.top + slack < b.bottom && b.top + slack < a.bottom)
          faults.push(`${title}: "${a.words}" lies on "${b.words}"`);
    });
    for (const shape of svg.querySelectorAll("line, polygon, circle")) {
      const box = shape.getBBox();
      if (![box.x, box.y, box.width, box.height].every(Number.isFinite)
        || /nan|inf/i.test(shape.outerHTML)) faults.push(`${title}: a shape that is nowhere`);
      else if (box.x < -1 || box.x + box.width > svg.viewBox.baseVal.width + 1 || box.y < -1
        || box.y + box.height > svg.viewBox.baseVal.height + 1)
        faults.push(`${title}: a ${shape.tagName} leaves the drawing at `
          + `${box.x.toFixed(0)} ${box.y.toFixed(0)} ${box.width.toFixed(0)} ${box.height.toFixed(0)}`);
    }
  }
  const ids = [...document.querySelectorAll("[id]")].map((element) => element.id);
  if (new Set(ids).size !== ids.length) faults.push("an id twice");
  return { faults, titles };
}

// An unmistakable overlap, a word outside and a small one must all be found.
async function checkTheMeasure(tab) {
  await tab.setContent(`<figure><svg width="340" viewBox="0 0 340 100" font-size="8"
    aria-labelledby="a b"><title id="a">t</title><desc id="b">d</desc><text x="20" y="40">one</text>
    <text x="22" y="42">two</text><text x="330" y="80">outside</text>
    <line x1="0" y1="0" x2="900" y2="1"/></svg></figure>`);
  const { faults } = await tab.evaluate(`(${measure})(${LEAST_LETTERS}, ${SLACK})`);
  for (const part of ["letters of", "lies on", "leaves the drawing", "a line leaves"])
    if (!faults.some((fault) => fault.includes(part))) say(`the measure misses "${part}"`);
}

function jobsBelow(folder) {
  const folders = readdirSync(folder).map((part) => join(folder, part))
    .filter((path) => statSync(path).isDirectory());
  return folders.flatMap((path) => readdirSync(path)
    .filter((file) => /^job.*\.json$/.test(file)).map((file) => join(path, file)));
}

async function main(program, home, jobs, seed) {
  const folder = temporaryFolder(), seen = new Map(DRAWINGS.map((drawing) => [drawing, 0]));
  const page = join(folder, "page.html"), file = join(folder, "job.json");
  const browser = await openBrowser();
  const tab = await browser.newPage();
  await tab.setViewportSize(PHONE);
  const look = async (what) => {
    await tab.goto(pathToFileURL(page).href);
    const { faults, titles } = await tab.evaluate(`(${measure})(${LEAST_LETTERS}, ${SLACK})`);
    for (const fault of faults) say(`${what}: ${fault}`);
    titles.forEach((title) => TITLES.forEach((pattern, i) => {
      if (pattern.test(title)) seen.set(DRAWINGS[i], seen.get(DRAWINGS[i]) + 1);
    }));
    return titles.length;
  };
  try {
    await checkTheMeasure(tab);
    const houses = jobsBelow(join(home, "tests/houses"));
    const paths = [...jobsBelow(join(home, "examples")), ...houses];
    for (const path of paths) {
      run(program, ["check", "--all", "--form", "html", "--home", home, "-o", page, path]);
      if (await look(path) === 0) say(`${path}: no drawings`);
      for (const stage of STAGES) {
        run(program, ["card", "--stage", stage, "--form", "html", "--home", home, "-o", page, path]);
        await look(`${path}, card ${stage}`);
      }
    }
    const d = dice(seed), whole = houses.map((path) => JSON.parse(readFileSync(path, "utf8")));
    let drawn = 0, refused = 0, last = "";
    while (drawn < jobs && refused < 3 * jobs) {
      writeFileSync(file, JSON.stringify(randomJob(d, whole)));
      const done = spawnSync(program, ["check", "--all", "--form", "html", "--home", home, "-o", page, file],
        { encoding: "utf8" });
      if (done.status === 2) { refused++; last = done.stderr; continue; }
      if (![0, 1].includes(done.status) || !existsSync(page))
        say(`random job ${drawn}: exit status ${done.status}: ${done.stderr.slice(0, 500)}`);
      else {
        const before = wrong;
        await look(`random job ${drawn} of seed ${seed}`);
        if (wrong > before && process.env.EAVEMARK_KEEP)
          writeFileSync(join(process.env.EAVEMARK_KEEP, `job-${drawn}.json`), readFileSync(file));
      }
      drawn++;
    }
    if (drawn < jobs) say(`only ${drawn} random jobs were taken: ${last.slice(0, 500)}`);
    for (const [drawing, times] of seen) if (times === 0) say(`${drawing}: never drawn`);
    console.log(`${paths.length} jobs, ${drawn} random ones (${refused} refused): `
      + [...seen].map(([drawing, times]) => `${times} ${drawing}`).join(", ") + `; ${wrong} wrong`);
  } finally {
    await browser.close();
  }
  return wrong === 0 ? 0 : 1;
}

const [program, home, jobs = "200", seed = "7"] = process.argv.slice(2);
if (process.env.EAVEMARK_NO_BROWSER === "1") process.exitCode = 77;
else process.exitCode = await main(program, home, Number(jobs), Number(seed));
