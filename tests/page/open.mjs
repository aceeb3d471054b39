// The page in a browser, at work; what it asks for and complains of is kept.
import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const pages = join(dirname(fileURLToPath(import.meta.url)), "../pages");
export const { openBrowser, run, temporaryFolder } = await import(pathToFileURL(join(pages, "pages.mjs")));
export const axePath = createRequire(join(pages, "pages.mjs")).resolve("axe-core/axe.min.js");

let wrong = 0;
export const flunk = (what) => { wrong++; console.log(`WRONG  ${what}`); };
export const need = (good, what) => good || flunk(what);
export const finish = (done) => {
  console.log(`${done}: ${wrong} things wrong`);
  process.exitCode = wrong === 0 ? 0 : 1;
};

export async function openPage(browser, path, viewport = { width: 360, height: 740 }) {
  const tab = await browser.newPage();
  const url = pathToFileURL(path).href;
  tab.on("request", (request) => request.url() === url || /^(blob|data|about):/.test(request.url())
    || flunk(`asked for ${request.url()}`));
  tab.on("console", (message) => flunk(`the browser says: ${message.text()}`));
  tab.on("pageerror", (error) => flunk(`an error: ${error.message}`));
  tab.on("dialog", (dialog) => { flunk("a dialog opened"); dialog.dismiss(); });
  await tab.setViewportSize(viewport);
  await tab.goto(url);
  await ready(tab);
  return tab;
}

export const ready = (tab) =>
  tab.waitForFunction(() => document.documentElement.dataset.ready === "1", null, { timeout: 60000 });

// Each example, and the shop sheet that lies beside it (undefined: its job names none).
export const jobsBelow = (folder) => readdirSync(folder, { recursive: true })
  .filter((name) => /job[^/]*\.json$/.test(name)).sort().map((name) => join(folder, name));
export const examplesOf = (source) => jobsBelow(join(source, "examples"));
export function sheetOf(path) {
  const { shop } = JSON.parse(readFileSync(path, "utf8"));
  return shop && join(dirname(path), shop);
}

export async function openJob(tab, path) {
  const text = readFileSync(path, "utf8"), sheet = sheetOf(path);
  const input = (words) => tab.locator("label.file", { hasText: words }).locator("input");
  await tab.locator("#tabs button", { hasText: "Jobs" }).click();
  if (sheet) await input("Open a shop sheet").setInputFiles(sheet);
  await input("Open job files").setInputFiles(path);
  await tab.waitForFunction((wanted) => globalThis.eavemark.kept?.text === wanted, text);
}
