// The pages under test, and the browser that opens them.
import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const PHONE = { width: 360, height: 740 };
export const DESKTOP = { width: 1280, height: 900 };
export const PAPER = { width: 700, height: 940 }; // Letter less its margins, in CSS px
export const STAGES = ["permit", "deck", "dry-in", "final"];

const FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

// Always a profile of its own, removed with the folder of temporary files.
export async function openBrowser() {
  const profile = mkdtempSync(join(process.env.TMPDIR ?? tmpdir(), "eavemark-browser-"));
  return chromium.launchPersistentContext(profile, {
    executablePath: process.env.EAVEMARK_BROWSER ?? "/usr/bin/chromium",
    args: FLAGS, headless: true,
  });
}

export function run(program, args, good = [0, 1]) {
  const done = spawnSync(program, args, { encoding: "utf8", maxBuffer: 1 << 28 });
  if (done.error) throw done.error;
  if (!good.includes(done.status))
    throw new Error(`${args.join(" ")}: exit status ${done.status}: ${done.stderr}`);
  return done;
}

// "examples/overlay-gable/job.json" is called "overlay-gable".
function jobName(path) {
  const file = basename(path, ".json");
  const folder = basename(dirname(resolve(path)));
  return file === "job" ? folder : `${folder}-${file}`;
}

// Writes a report and a card for each stage of each job. Returns their names,
// kinds and addresses.
export function makePages(program, home, folder, jobs) {
  const pages = [];
  const make = (name, kind, args) => {
    const path = join(folder, `${name}.html`);
    run(program, [...args, "--form", "html", "--home", home, "-o", path]);
    pages.push({ name, kind, path, url: pathToFileURL(path).href });
  };
  for (const job of jobs) {
    make(`${jobName(job)}-report`, "report", ["check", job]);
    for (const stage of STAGES)
      make(`${jobName(job)}-card-${stage}`, "card", ["card", "--stage", stage, job]);
  }
  return pages;
}
