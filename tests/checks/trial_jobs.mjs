// Invented jobs, a line each, for trials: sound houses and example houses with other laps
// and nails, and facts missing, drawn by a fixed sequence.
//
// usage: node trial_jobs.mjs SOURCE COUNT
import { readFileSync } from "node:fs";
import { join } from "node:path";

const [source, count] = process.argv.slice(2);
const HOUSES = ["tests/houses/coastal-hip/job", "tests/houses/overlay-gable/job", "tests/sound/us-co",
  "tests/sound/us-mn", "tests/sound/us-tx"];
const jobs = HOUSES.map((house) => JSON.parse(readFileSync(join(source, `${house}.json`))));

// Numerical Recipes' linear congruence: the same on every machine.
let drawn = 2463534242;
function draw(below) {
  drawn = (Math.imul(drawn, 1664525) + 1013904223) >>> 0;
  return (drawn >>> 8) % below;
}

// Facts that only the place of their example asks for.
const LOCAL = new Set(["pictures_before_cover", "hail_class", "hail_wrapper_kept"]);
function drop_local(group) {
  for (const key of Object.keys(group))
    if (LOCAL.has(key))
      delete group[key];
    else if (typeof group[key] === "object" && group[key] !== null)
      drop_local(group[key]);
}

function changed(job) {
  job.jurisdiction = "example/walk";
  job.date = "2026-05-04";
  drop_local(job);
  if (draw(3) === 0)
    job.drip_edge.lap_in = [1, 2, 2.5, 3][draw(4)];
  if (draw(4) === 0)
    job.fasteners.per_shingle = [4, 5, 6][draw(3)];
  if (draw(6) === 0)
    delete job.drip_edge.fastener_spacing_in;
  return job;
}

for (let n = 1; n <= Number(count); n++) {
  const job = changed(structuredClone(jobs[draw(jobs.length)]));
  job.job = `Invented job ${String(n).padStart(6, "0")}`;
  console.log(JSON.stringify(job));
}
