// The page in a browser, at work; what it asks for and complains of is kept.
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
