// The pages under test, and the browser that opens them.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const PHONE = { width: 360, height: 740 };
export const DESKTOP = { width: 1280, height: 900 };
export const PAPER = { width: 720, height: 969 }; // Letter less its margins, in CSS px
export const STAGES = ["permit", "deck", "dry-in", "final"];

const FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

export function temporaryFolder() {
  const path = mkdtempSync(join(process.env.TMPDIR ?? tmpdir(), "eavemark-pages-"));
  process.on("exit", () => rmSync(path, { recursive: true, force: true }));
  return path;
}

// With a profile of its own each time: nothing of an earlier run is left.
export async function openBrowser() {
  return chromium.launchPersistentContext(temporaryFolder(), {
    executablePath: process.env.EAVEMARK_BROWSER ?? "/usr/bin/chromium",
    args: FLAGS, headless: true,
  });
}

// Runs the program; its output is bytes, so that none of them is mended on the way.
export function run(program, args, folder) {
  const done = spawnSync(program, args, { maxBuffer: 1 << 28, cwd: folder });
  if (done.error) throw done.error;
  return done;
}

// "tests/houses/overlay-gable/job.json" is called "overlay-gable".
function jobName(path) {
  const file = basename(path, ".json");
  const folder = basename(dirname(resolve(path)));
  return file === "job" ? folder : `${folder}-${file}`;
}

// A page of its own file; throws when the program did not write one.
export function makePage(program, home, path, args) {
  const done = run(program, [...args, "--form", "html", "--home", home, "-o", path]);
  if (done.status > 1) throw new Error(`${args.join(" ")}: status ${done.status}: ${done.stderr}`);
  return { name: basename(path, ".html"), path, url: pathToFileURL(path).href };
}

// "job-dry-in.json" is taken up for its own stage, other jobs for each.
function stagesOf(path) {
  const own = STAGES.filter((stage) => basename(path) === `job-${stage}.json`);
  return own.length > 0 ? own : STAGES;
}

// What two editions of a county do to the jobs.
function makeTrial(program, home, folder, jobs) {
  return { kind: "full", ...makePage(program, home, join(folder, "trial.html"),
    ["trial", "--before", "example/dunmarrow@2026-02-01", "--after", "example/dunmarrow@2026-05-04",
      ...jobs]) };
}

// A report of each job, one with every finding in full, and its cards.
export function makePages(program, home, folder, jobs) {
  return [makeTrial(program, home, folder, jobs), ...jobs.flatMap((job) => [
    { kind: "report",
      ...makePage(program, home, join(folder, `${jobName(job)}-report.html`), ["check", job]) },
    { kind: "full",
      ...makePage(program, home, join(folder, `${jobName(job)}-full.html`),
        ["check", "--all", job]) },
    ...stagesOf(job).map((stage) => ({ kind: "card",
      ...makePage(program, home, join(folder, `${jobName(job)}-card-${stage}.html`),
        ["card", "--stage", stage, job]) })),
  ])];
}
