// Opens every page in a browser and looks at it as people, screen readers and
// printers do; then feeds hostile texts through every form.
//
//   node check.mjs EAVEMARK HOME
//
// Exit status 1 when anything is wrong, 77 (skipped) when EAVEMARK_NO_BROWSER=1.
import { readFileSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { checkHostile } from "./hostile.mjs";
import { DESKTOP, PAPER, PHONE, makePages, openBrowser, temporaryFolder } from "./pages.mjs";

// WCAG 2.2 level AA, and what axe-core calls best practice (landmarks, headings).
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const SHEETS_MOST = { report: 2, full: Infinity };
// A card's front is one side of a sheet and its back another.
const CARD_SHEETS_MOST = 2;
const FRONT_POINTS_LEAST = 11;

let wrong = 0;
export function say(page, what) {
  wrong++;
  console.log(`WRONG  ${page}: ${what}`);
}

// Every job of the examples, and those that rule cases start from.
function jobsOf(home) {
  const cases = readdirSync(join(home, "rules/cases"))
    .filter((name) => name.endsWith(".json")).map((name) => join(home, "rules/cases", name));
  const examples = readdirSync(join(home, "examples"))
    .map((name) => join(home, "examples", name)).filter((path) => statSync(path).isDirectory())
    .flatMap((path) => readdirSync(path).filter((name) => /^job.*\.json$/.test(name))
      .map((name) => join(path, name)));
  return [...cases, ...examples].sort();
}

async function axe(tab, page, width) {
  await tab.evaluate(AXE);
  const found = await tab.evaluate((tags) => globalThis.axe.run(document,
    { runOnly: { type: "tag", values: tags }, resultTypes: ["violations"] }), TAGS);
  for (const violation of found.violations)
    say(page.name, `axe at ${width}: ${violation.id}: ${violation.nodes[0].html} `
      + `(${violation.nodes.length} of them): ${violation.nodes[0].failureSummary}`);
  if (found.violations.length === 0 && found.passes.length === 0)
    say(page.name, `axe at ${width} looked at nothing`);
}

// Runs in the page: what a screen reader's user steers by.
function structure() {
  const faults = [];
  const need = (good, what) => good || faults.push(what);
  const all = (selector) => [...document.querySelectorAll(selector)];
  need(document.documentElement.lang === "en", "no language");
  need(document.title.trim() !== "", "no title");
  need(all("h1").length === 1, "not one h1");
  need(all("main").length === 1 && all("body > header").length === 1
    && all("body > footer").length === 1, "a landmark is missing");
  const levels = all("h1,h2,h3,h4,h5,h6").map((heading) => Number(heading.tagName[1]));
  need(levels.every((level, i) => i === 0 ? level === 1 : level <= levels[i - 1] + 1),
    "headings skip a level");
  const skip = document.querySelector("body > a");
  need(skip?.getAttribute("href") === "#main" && document.querySelector("#main")?.tagName === "MAIN",
    "the first link does not lead to main");
  all("a").forEach((link) => need(document.querySelector(link.getAttribute("href")),
    `nothing at ${link.getAttribute("href")}`));
  need(all("table").every((table) => table.caption?.textContent.trim()), "a table without caption");
  need(all("th").every((th) => ["col", "row", "rowgroup"].includes(th.scope)), "a th without scope");
  need(all("tbody tr").every((row) => row.querySelector("th")), "a row without a header");
  need(document.scripts.length === 0, "a script");
  need(all("details:not([open])").length === 0, "something folded away that would not print");
  const words = ["pass", "WARN", "FAIL", "OPEN", "n/a", "BROKEN"];
  need(all(".mark").every((mark) => words.includes(mark.textContent)), "an outcome without a word");
  return faults;
}

// Runs in the page, laid out for print: anything but greys, or too pale.
function colors() {
  const faults = new Set();
  const parts = (color) => color.match(/[\d.]+/g).map(Number);
  for (const element of document.querySelectorAll("body, body *")) {
    const style = getComputedStyle(element);
    const sides = ["Top", "Right", "Bottom", "Left"];
    const seen = [style.color, style.backgroundColor,
      ...sides.filter((side) => parseFloat(style[`border${side}Width`]) > 0)
        .map((side) => style[`border${side}Color`])];
    for (const [r, g, b, a] of seen.map(parts))
      if (a !== 0 && !(r === g && g === b)) faults.add(`${element.tagName} ${r},${g},${b}`);
    if (parts(style.color)[0] > 0x59) faults.add(`${element.tagName} too pale to read`); // 7:1
  }
  return [...faults];
}

// Runs in the page, laid out for print: words of a card's front that are set smaller, and
// how far down the sheet it reaches.
function front(least) {
  const small = new Set();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let words = 0;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (node.data.trim() === "" || !element.closest("header, .front")
      || element.closest(".unseen, caption, thead, style") || element.getClientRects().length === 0)
      continue;
    const points = parseFloat(getComputedStyle(element).fontSize) * 72 / 96;
    words++;
    if (points < least - 0.01) small.add(`${points} pt: ${node.data.trim().slice(0, 30)}`);
  }
  const back = document.querySelector(".back");
  return { small: [...small], words, end: document.querySelector(".front").getBoundingClientRect().bottom,
    apart: back !== null && getComputedStyle(back).breakBefore === "page" };
}

async function checkCard(tab, page, count) {
  const found = await tab.evaluate(front, FRONT_POINTS_LEAST);
  for (const words of found.small) say(page.name, `on the front, ${words}`);
  if (found.words < 20) say(page.name, `only ${found.words} words on the front`);
  if (!found.apart) say(page.name, "the back does not start a side of its own");
  if (found.end > PAPER.height) say(page.name, `the front is ${found.end} px long`);
  if (count > CARD_SHEETS_MOST) say(page.name, `prints on ${count} sheets`);
}

function sheets(pdf) {
  return (pdf.toString("latin1").match(/\/Type\s*\/Page(?![a-zA-Z])/g) ?? []).length;
}

async function checkScreen(tab, page, viewport) {
  await tab.setViewportSize(viewport);
  const width = await tab.evaluate(() => document.documentElement.scrollWidth);
  if (width > viewport.width) say(page.name, `${width} px wide on a screen of ${viewport.width}`);
  await axe(tab, page, viewport.width);
}

async function checkPrint(tab, page) {
  await tab.setViewportSize(PAPER);
  await tab.emulateMedia({ media: "print" });
  for (const fault of await tab.evaluate(colors)) say(page.name, `in print: ${fault}`);
  const wide = await tab.evaluate(() => document.documentElement.scrollWidth);
  if (wide > PAPER.width) say(page.name, `in print ${wide} px wide`);
  const pdf = await tab.pdf({ preferCSSPageSize: true });
  const count = sheets(pdf);
  if (!/\/MediaBox\s*\[0 0 612 792\]/.test(pdf.toString("latin1"))) say(page.name, "not on Letter");
  if (count === 0) say(page.name, "prints on no sheet");
  if (page.kind === "card") await checkCard(tab, page, count);
  else if (count > SHEETS_MOST[page.kind]) say(page.name, `prints on ${count} sheets`);
  return count;
}

export async function checkPage(browser, page) {
  const tab = await browser.newPage();
  const asked = [];
  tab.on("request", (request) => asked.push(request.url()));
  tab.on("console", (message) => say(page.name, `the browser says: ${message.text()}`));
  tab.on("dialog", (dialog) => { say(page.name, "a dialog opened"); dialog.dismiss(); });
  await tab.goto(page.url);
  for (const fault of await tab.evaluate(structure)) say(page.name, fault);
  await checkScreen(tab, page, PHONE);
  await checkScreen(tab, page, DESKTOP);
  const count = await checkPrint(tab, page);
  for (const url of asked) if (url !== page.url) say(page.name, `asked for ${url}`);
  await tab.close();
  return count;
}

async function main(program, home) {
  const browser = await openBrowser();
  try {
    const pages = makePages(program, home, temporaryFolder(), jobsOf(home));
    for (const page of pages) {
      const count = await checkPage(browser, page);
      console.log(`${page.name}: ${statSync(page.path).size} bytes, ${count} sheets`);
    }
    await checkHostile(browser, program, home, say);
    console.log(`${pages.length} pages looked at, ${wrong} things wrong`);
  } finally {
    await browser.close();
  }
  return wrong === 0 ? 0 : 1;
}

if (process.env.EAVEMARK_NO_BROWSER === "1") process.exitCode = 77;
else process.exitCode = await main(process.argv[2], process.argv[3]);
