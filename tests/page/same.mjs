// The page's engine says to the byte what the program says: of every job and of 200
// random jobs, among them such as cannot be used.
//
//   node same.mjs BUILD_FOLDER SOURCE_FOLDER
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { examplesOf, finish, flunk, jobsBelow, need, openBrowser, openPage, run, sheetOf, temporaryFolder } from "./open.mjs";

const [build, source] = process.argv.slice(2).map((path) => resolve(path));
const RANDOM = 200;

const jobs = [...examplesOf(source), ...jobsBelow(join(source, "tests/houses"))];

// The same jobs each time (a linear congruential generator, as C's manual shows).
let state = 20261129;
const random = (below) => {
  state = (Math.imul(state, 1103515245) + 12345) >>> 0;
  return Math.floor(state / 4294967296 * below);
};

function leaves(node, out = []) {
  for (const key of Object.keys(node ?? {}))
    if (typeof node[key] === "object" && node[key] !== null) leaves(node[key], out);
    else out.push([node, key]);
  return out;
}

// A whole job with some facts taken away, moved or made nonsense of.
function randomJob() {
  const job = JSON.parse(readFileSync(jobs[random(jobs.length)], "utf8"));
  for (let i = random(6); i >= 0; i--) {
    const all = leaves(job), [owner, key] = all[random(all.length)], was = owner[key];
    const kind = random(10);
    if (kind < 5 && !Array.isArray(owner)) delete owner[key];
    else if (typeof was === "number") owner[key] = kind < 9 ? Math.round(was * (random(30) + 1)) / 10 : -1;
    else if (typeof was === "boolean") owner[key] = !was;
    else if (kind === 9 && key !== "shop") owner[key] = "no such word";
  }
  return JSON.stringify(job);
}

async function compare(tab, path, what) {
  const native = run(join(build, "eavemark"),
    ["check", "--all", "--form", "json", "--home", source, basename(path)], dirname(path));
  const sheet = sheetOf(path);
  const page = await tab.evaluate(([job, shop, name]) =>
    globalThis.eavemark.engine.call("check", { job, shop, name }, "json", 2),
  [readFileSync(path, "utf8"), sheet && readFileSync(sheet, "utf8"), basename(path)]);
  need(page.status === native.status, `${what}: status ${page.status}, the program's ${native.status}`);
  need((page.report ?? "") === native.stdout.toString(), `${what}: another report`);
  need(page.problems === native.stderr.toString(), `${what}: other problems: ${page.problems}`);
  return page.report !== null;
}

const browser = await openBrowser();
try {
  const tab = await openPage(browser, join(build, "roof.html"));
  for (const path of jobs) need(await compare(tab, path, path), `${path}: no report`);
  const folder = temporaryFolder(), [sheet] = jobs.map(sheetOf).filter(Boolean);
  if (sheet) copyFileSync(sheet, join(folder, "shop.json"));
  let judged = 0;
  for (let i = 0; i < RANDOM; i++) {
    const path = join(folder, `random-${i}.json`);
    writeFileSync(path, randomJob());
    judged += await compare(tab, path, `random job ${i}`);
  }
  if (judged < RANDOM / 3 || judged === RANDOM) flunk(`${judged} of the random jobs were judged`);
  finish(`page: ${jobs.length} jobs and ${RANDOM} random jobs (${judged} judged) as the program`);
} finally {
  await browser.close();
}
