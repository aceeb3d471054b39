// A gable tear-off by taps on a phone's screen, from nothing to a printed card, in a page
// that asks for nothing; what is kept when it is closed; hostile texts; what a screen
// reader meets.
//
//   node taps.mjs BUILD_FOLDER SOURCE_FOLDER
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { axePath, finish, need, openBrowser, openJob, openPage, ready, temporaryFolder } from "./open.mjs";

const [build, source] = process.argv.slice(2);
const AXE = readFileSync(axePath, "utf8");
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const TABS = ["Jobs", "House", "Check", "Roof", "Order"];
const MOST_TAPS = 400;

const go = (tab, name) => tab.locator("#tabs button", { hasText: name }).click();
const jobOf = (tab) => tab.evaluate(() => JSON.parse(globalThis.eavemark.kept.text));
const asked = (tab) => tab.evaluate(() => globalThis.eavemark.questions);

async function begin(tab, title) {
  await tab.locator("form input[type=text]").first().fill(title);
  await tab.fill("input[type=search]", "dunmarrow");
  await tab.locator(".found button").first().click();
  await tab.fill("input[type=date]", "2026-05-04");
  await tab.locator("button.main").click();
}

async function open(tab, words, path) {
  await go(tab, "Jobs");
  await tab.locator("label.file", { hasText: words }).locator("input").setInputFiles(path);
}

// Takes a typed answer.
async function type(tab, pointer, words) {
  const field = tab.locator(`.field[data-at="${pointer}"]`).first();
  await field.locator("input").fill(words);
  await field.locator("button").click();
}

// The answers a house gives: by the end of a pointer; else no, the first choice, or the
// least there may be. Only what the page offers is tapped.
const HOUSE = { length_ft: "42", width_ft: "28", pitch: "6:12", eave_overhang_in: "12",
  rake_overhang_in: "6", method: "tear-off", layers: "1", layers_removed: "1", coverings: "One",
  decks: "One", attics: "One", weight_lb_per_square: "240", shank_in: "0.12", wind_vult_mph: "115" };

async function answerOne(tab, question) {
  const field = tab.locator(`.field[data-at="${question.pointer}"]`).first();
  const last = question.pointer.split("/").pop();
  const boxes = await field.locator("input[type=checkbox]").count();
  if (boxes > 0) {
    await field.locator("input[type=checkbox]").first().check();
    return field.locator("button.take").click();
  }
  if (await field.locator("form").count() > 0) {
    const words = HOUSE[last] ?? (question.type === "date" ? "2026-05-01"
      : question.type === "slope" ? "6:12" : question.least != null ? String(Math.ceil(question.least)) : "one");
    await field.locator("input").fill(words);
    return field.locator("button").click();
  }
  const wanted = HOUSE[last];
  const choice = wanted ? field.locator("button", { hasText: new RegExp(`^${wanted}$`) })
    : question.type === "yes or no" ? field.locator("button", { hasText: "No" }) : field.locator("button");
  return choice.first().click();
}

async function tearOff(tab) {
  await begin(tab, "Elm house, invented");
  await tab.locator(".pictures button").first().click();
  for (const name of ["length_ft", "width_ft", "pitch", "eave_overhang_in", "rake_overhang_in"])
    await type(tab, `/roof/footprint/${name}`, HOUSE[name]);
  need(await tab.locator(".drawing svg").count() === 1, "the roof is not drawn");
  await go(tab, "Check");
  const before = (await asked(tab)).length, refused = new Set();
  let taps = 0;
  for (; taps < MOST_TAPS; taps++) {
    const left = (await asked(tab)).filter((question) => !refused.has(question.pointer));
    if (left.length === 0) break;
    await answerOne(tab, left[0]);
    const error = await tab.locator(`.field[data-at="${left[0].pointer}"] .error`).count();
    if (error > 0 || (await asked(tab)).some((question) => question.pointer === left[0].pointer))
      refused.add(left[0].pointer);
  }
  const after = (await asked(tab)).length;
  need(before > 10 && taps < MOST_TAPS && after < 6, `${before} questions, after ${taps} answers ${after}`);
  need(await tab.locator("#fix").count() + await tab.locator("#met").count() > 0, "no screen of findings");
  console.log(`gable tear-off: ${taps} answers, ${after} questions left: ${[...refused].join(" ")}`);
}

async function printCard(tab) {
  await go(tab, "Roof");
  await tab.locator("button", { hasText: "deck" }).click();
  need((await jobOf(tab)).stage === "deck", "the stage is not that tapped");
  const frame = tab.frameLocator("iframe.sheet");
  await frame.locator("h1").waitFor();
  need((await frame.locator("h1").textContent()).includes("Elm house"), "the card is not of the job");
  need(await frame.locator("body").evaluate((body) => getComputedStyle(body).maxWidth !== "none"), "the card has no style");
  await tab.evaluate(() => {
    const { contentWindow } = document.querySelector("iframe.sheet");
    contentWindow.print = () => { globalThis.printed = (globalThis.printed ?? 0) + 1; };
  });
  await tab.locator("button", { hasText: "Print the card" }).click();
  need(await tab.evaluate(() => globalThis.printed) === 1, "the card was not printed");
}

async function keeps(browser, path, tab) {
  const text = await tab.evaluate(() => globalThis.eavemark.kept.text);
  await tab.reload();
  await ready(tab);
  need(await tab.evaluate(() => globalThis.eavemark.kept.text) === text, "a reload lost something");
  // Half an answer, and the tab dies.
  await go(tab, "House");
  const input = tab.locator(".field form.typed input").first();
  await input.fill("41");
  const at = await input.evaluate((one) => one.closest(".field").dataset.at);
  const crashed = tab.waitForEvent("crash");
  (await browser.newCDPSession(tab)).send("Page.crash").catch(() => {});
  await crashed;
  await tab.close();
  const again = await openPage(browser, path);
  need(await again.evaluate(() => globalThis.eavemark.kept.text) === text, "a killed tab lost something");
  await go(again, "House");
  need(await again.locator(`.field[data-at="${at}"] input`).first().inputValue() === "41", "half an answer was lost");
  return again;
}

async function undoes(tab) {
  const text = () => tab.evaluate(() => globalThis.eavemark.kept.text);
  const before = await text();
  await go(tab, "Roof");
  await tab.locator("button", { hasText: "final" }).click();
  need(await text() !== before, "nothing was said");
  await tab.locator("#tools button", { hasText: "Undo" }).click();
  need(await text() === before, "undo gives another job");
}

async function opensAndSaves(tab) {
  const path = join(source, "tests/houses/cross-gable/job.json"), text = readFileSync(path, "utf8");
  await openJob(tab, path);
  await tab.locator("#tabs [aria-current=page]", { hasText: "Check" }).waitFor();
  const saving = tab.waitForEvent("download");
  await tab.locator("#tools button", { hasText: "Save" }).click();
  need(readFileSync(await (await saving).path(), "utf8") === text, "a job opened and saved is another file");
  await go(tab, "Roof");
  await tab.locator("button", { hasText: "final" }).click();
  await go(tab, "Check");
  await tab.locator("button", { hasText: "What changed" }).click();
  need((await tab.locator("pre.said").textContent()).length > 20, "what changed is not told");
}

const HOSTILE = "<img src=x onerror=\"document.title='taken'\"><script>document.title='taken'</script>\u202Eevil";

async function standsHostileTexts(tab, folder) {
  const job = JSON.parse(readFileSync(join(source, "tests/houses/porch-tear-off/job.json"), "utf8"));
  job.job = HOSTILE;
  job.roof.chimneys = [{ name: "<img src=x onerror=alert(1)>\u202Eevil" }];
  const path = join(folder, `hostile.json`);
  writeFileSync(path, JSON.stringify(job));
  await open(tab, "Open job files", path);
  for (const name of TABS) {
    await tab.locator("#tabs button", { hasText: name }).click();
    await tab.waitForTimeout(100);
    need(await tab.locator("li.error").count() === 0, "the hostile job is refused, not shown");
    need(await tab.locator("main img").count() === 0, `${name}: markup of a job became an element`);
    // What turns the direction of letters must not turn the page's own words after it.
    const turned = await tab.evaluate(() => [...document.querySelectorAll(".asks, .row, .order p")].flatMap((part) => {
      const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT), found = [];
      while (walker.nextNode())
        if (walker.currentNode.data.includes("\u202E") && !walker.currentNode.parentElement.closest("bdi"))
          found.push(part.outerHTML.slice(0, 200));
      return found;
    }));
    need(turned.length === 0, `${name}: a job's letters turn others: ${turned[0]}`);
  }
  need((await tab.title()).startsWith("Eavemark"), "a text of a job ran");
}

// A mistake in a file is shown with its place.
async function showsMistakes(tab, folder) {
  const path = join(folder, "wrong.json");
  const job = JSON.parse(readFileSync(join(source, "tests/houses/porch-tear-off/job.json"), "utf8"));
  job.covering.kind = "asfalt";
  writeFileSync(path, JSON.stringify(job));
  await open(tab, "Open job files", path);
  const error = tab.locator("li.error").first();
  await error.waitFor();
  need((await error.textContent()).includes("/covering/kind"), "a mistake is not shown at its place");
  await error.locator("button").click();
  need(await tab.locator("li.error").count() === 0 && await tab.locator(".part").count() > 0, "a mistake taken out leaves the job unusable");
}

// A county's own file, as it is and with a figure changed: nothing moves, then a job does.
async function triesAFigure(tab, folder) {
  const place = readFileSync(join(source, "jurisdictions/example/dunmarrow.lua"), "utf8");
  const path = join(folder, "dunmarrow.lua");
  await tab.locator("#office").click();
  for (const [text, moves] of [[place, false], [place.replace('["ice_barrier.required"] = { true',
    '["ice_barrier.required"] = { false'), true]]) {
    need(!moves || text !== place, "the figure is not in the file");
    writeFileSync(path, text);
    await tab.locator("label.file", { hasText: ".lua" }).locator("input").setInputFiles(path);
    await tab.locator("pre.said", { hasText: "example/dunmarrow" }).waitFor({ state: "attached" });
    await tab.waitForTimeout(300);
    const effects = await tab.locator("main").innerText();
    need(effects.includes("Comes out as before"), "no job comes out as before");
    need(/: pass, now /.test(effects) === moves, `trying a figure, moved ${moves}: ${effects.slice(0, 600)}`);
    need(await tab.locator(".strip").count() === 1, "nothing tells of changed figures");
  }
  await axe(tab, "the county's screen");
  await tab.locator("button", { hasText: "Put the built-in figures back" }).click();
  await ready(tab);
  need(await tab.locator(".strip").count() === 0, "the built-in figures are not back");
}

async function axe(tab, what) {
  await tab.evaluate(AXE);
  const found = await tab.evaluate((tags) => globalThis.axe.run(document,
    { runOnly: { type: "tag", values: tags }, resultTypes: ["violations"], iframes: false }), TAGS);
  for (const violation of found.violations)
    need(false, `${what}: ${violation.id}: ${violation.nodes[0].html.slice(0, 200)}: ${violation.nodes[0].failureSummary}`);
}

async function looks(tab) {
  for (const [width, scheme] of [[360, "light"], [1280, "dark"]]) {
    await tab.setViewportSize({ width, height: 800 });
    await tab.emulateMedia({ colorScheme: scheme });
    for (const name of TABS) {
      await go(tab, name);
      const wide = await tab.evaluate(() => document.documentElement.scrollWidth);
      need(wide <= width, `${name}: ${wide} px wide on a screen of ${width}`);
      if (name === "Order") {
        const order = await tab.locator("table.list").innerText();
        need(/bundles/.test(order) && order.length < 4000,
          `the order is no list to hand over: ${order.length} characters`);
      }
      const small = await tab.evaluate(() => [...document.querySelectorAll("button, summary, input")]
        .filter((one) => one.getClientRects().length > 0 && one.type !== "checkbox"
          && one.getBoundingClientRect().height < 44).map((one) => one.outerHTML.slice(0, 80)));
      need(small.length === 0, `${name}: too small for a thumb: ${small[0]}`);
      await axe(tab, `${name} at ${width}, ${scheme}`);
    }
  }
}

const browser = await openBrowser();
try {
  const path = join(build, "roof.html"), folder = temporaryFolder();
  let tab = await openPage(browser, path);
  await tearOff(tab);
  await printCard(tab);
  tab = await keeps(browser, path, tab);
  await undoes(tab);
  await looks(tab);
  await opensAndSaves(tab);
  await standsHostileTexts(tab, folder);
  await showsMistakes(tab, folder);
  await triesAFigure(tab, folder);
  finish("page by taps");
} finally {
  await browser.close();
}
