// What the page weighs, and how long it takes to answer under a processor throttled to a
// quarter: no test, nothing is held against a time. Wall time says what a user waits for,
// processor time (of the browser's main thread) what is left of it on a machine with
// nothing else to do.
//
//   node page.mjs BUILD_FOLDER [RATE]
import { readFileSync, statSync } from "node:fs";
import { join, dirname } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";

const [build, rate = "4"] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));
const { openBrowser } = await import(pathToFileURL(join(here, "../pages/pages.mjs")));
const page = join(build, "roof.html"), url = pathToFileURL(page).href;
const NUMBERS = ["42", "28", "6:12", "12", "6"];

for (const [what, path] of [["page", page], ["engine", join(build, "page/engine.wasm")],
  ["rules and places", join(build, "home.pack")]])
  console.log(`${what.padEnd(36)} ${statSync(path).size} bytes, ${gzipSync(readFileSync(path), { level: 9 }).length} gzipped`);

const browser = await openBrowser();
const tab = await browser.newPage();
const session = await browser.newCDPSession(tab);
await tab.setViewportSize({ width: 360, height: 740 });
await session.send("Performance.enable", { timeDomain: "threadTicks" });
await session.send("Emulation.setCPUThrottlingRate", { rate: Number(rate) });

async function processor() {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find((metric) => metric.name === "TaskDuration").value * 1000;
}

// Of something done in the page, until it is painted.
async function timed(what, act) {
  const before = await processor(), wall = await act(), after = await processor();
  // Another document counts from nothing.
  const spent = after < before ? after : after - before;
  console.log(`${what.padEnd(36)} ${wall.toFixed(0).padStart(6)} ms, ${spent.toFixed(0)} of processor`);
}

const within = (act, argument) => tab.evaluate(`(async (argument) => {
  const from = performance.now();
  (${act})(argument);
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  return performance.now() - from;
})(${JSON.stringify(argument ?? null)})`);

async function opened() {
  await tab.goto(url);
  await tab.waitForFunction(() => document.documentElement.dataset.ready === "1", null, { timeout: 120000 });
  return tab.evaluate(() => performance.now());
}
const type = ([selector, words]) => {
  const input = document.querySelector(selector);
  input.value = words;
  input.dispatchEvent(new Event("input"));
};
const click = (selector) => document.querySelector(selector).click();
const tap = (name) => [...document.querySelectorAll("#tabs button")].find((one) => one.textContent === name).click();
const take = ([index, words]) => {
  const form = document.querySelectorAll("#view .field form")[index];
  form.querySelector("input").value = words;
  form.requestSubmit();
};
const answer = (index) => document.querySelectorAll("#view .field .choices")[index].querySelectorAll("button")[1].click();

try {
  await timed("opened, nothing kept", opened);
  await tab.waitForTimeout(4000);
  await timed("a place found", () => within(type, ["input[type=search]", "dunmarrow"]));
  await within(click, ".found button");
  await within(type, ["form input[type=text]", "Elm house"]);
  await timed("a job begun", () => within(click, "button.main"));
  await tab.waitForTimeout(3000);
  await timed("a form of roof", () => within(click, ".pictures button"));
  for (const [i, words] of NUMBERS.entries())
    await timed(`a number of the plan (${words})`, () => within(take, [i, words]));
  for (const name of ["Check", "Roof", "Order", "House", "Check"])
    await timed(`to ${name}`, () => within(tap, name));
  for (let i = 0; i < 8; i++) await timed("an answer", () => within(answer, i));
  await timed("opened again, first findings", opened);
} finally {
  await browser.close();
}
