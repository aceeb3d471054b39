// What goes in and out of the page as files: every example as it was, jobs with a shop
// sheet, and a page that the program made for a county.
//
//   node files.mjs BUILD_FOLDER SOURCE_FOLDER
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deepStrictEqual } from "node:assert";
import { examplesOf, finish, need, openBrowser, openJob, openPage, ready, run, temporaryFolder } from "./open.mjs";

const [build, source] = process.argv.slice(2);
const HOSTILE = "<img src=x onerror=\"document.title='taken'\"></script><script>document.title='taken'</script>\u202Eevil";

const examples = examplesOf(source);
const go = (tab, name) => tab.locator("#tabs button", { hasText: name }).click();
const kept = (tab) => tab.evaluate(() => globalThis.eavemark.kept?.text);
const fileInput = (tab, words) => tab.locator("label.file", { hasText: words }).locator("input");

async function saved(tab, button) {
  const saving = tab.waitForEvent("download");
  await button.click();
  return readFileSync(await (await saving).path(), "utf8");
}

// To the byte as it was opened; after an answer with all else that it said.
async function keepsEveryExample(tab) {
  for (const path of examples) {
    const text = readFileSync(path, "utf8");
    await openJob(tab, path);
    need(await saved(tab, tab.locator("#tools button", { hasText: "Save" })) === text, `${path}: saved as another file`);
    await tab.evaluate(() => globalThis.eavemark.say("/notes", "said in the page"));
    try {
      deepStrictEqual(JSON.parse(await kept(tab)), { ...JSON.parse(text), notes: "said in the page" });
    } catch (error) {
      need(false, `${path}: an answer changed something else: ${error.message.slice(0, 300)}`);
    }
    await tab.locator("#tools button", { hasText: "Undo" }).click();
    need(await kept(tab) === text, `${path}: undone it is another file`);
  }
}

// Habits of one job on a sheet, the sheet chosen for a new one, saved, lost and brought back.
async function goesByAShopSheet(tab, folder) {
  await openJob(tab, join(source, "examples/porch-tear-off/job.json"));
  await go(tab, "Jobs");
  await tab.locator("button", { hasText: "Make one of this job's habits" }).click();
  const name = await tab.evaluate(() => Object.keys(JSON.parse(localStorage.getItem("eavemark.shops"))).at(-1));
  const row = tab.locator("li.row", { hasText: name });
  await row.waitFor();
  const sheet = await saved(tab, row.locator("button", { hasText: "Save" }));
  const lifted = run(join(build, "eavemark"), ["shop", "--home", source, join(source, "examples/porch-tear-off/job.json")]);
  need(sheet === lifted.stdout.toString(), "the sheet is not that of the program");
  await tab.locator("form input[type=text]").first().fill("With a sheet, invented");
  await tab.fill("input[type=search]", "dunmarrow");
  await tab.locator(".found button").first().click();
  await tab.locator("form .choices button", { hasText: name }).click();
  await tab.locator("button.main").click();
  const job = await kept(tab);
  need(JSON.parse(job).shop === name, "the job does not name its sheet");
  const facts = await tab.evaluate(() => {
    const { engine } = globalThis.eavemark;
    return JSON.parse(engine.call("check", globalThis.eavemark.request(), "json").report).facts;
  });
  need(facts.shop > 0, `a sheet says nothing of a job: ${JSON.stringify(facts)}`);
  await go(tab, "Jobs");
  for (let i = 0; i < 2; i++) await row.locator("button", { hasText: "Remove" }).click();
  await go(tab, "Check");
  writeFileSync(join(folder, "brought-back.json"), sheet);
  await fileInput(tab, `Open ${name}`).setInputFiles(join(folder, "brought-back.json"));
  await tab.locator("#answer").waitFor();
  need(await kept(tab) === job, "a sheet brought back changed the job");
}

// Where the browser keeps no more, that is said, and nothing is lost while the tab lives.
async function tellsWhenItIsFull(tab) {
  await openJob(tab, examples[0]);
  await tab.evaluate(() => {
    for (let size = 1 << 21; size > 0; size >>= 1)
      try { while (true) localStorage.setItem(`filling ${Math.random()}`, "x".repeat(size)); } catch { /* full */ }
    globalThis.eavemark.say("/notes", "said when it was full");
  });
  need(JSON.parse(await kept(tab)).notes === "said when it was full", "an answer is lost where there is no room");
  need(await tab.locator(".strip", { hasText: "no room" }).count() === 1, "nothing tells that there is no room");
  await tab.evaluate(() => {
    for (const key of Object.keys(localStorage)) if (key.startsWith("filling")) localStorage.removeItem(key);
    globalThis.eavemark.say("/notes", "said again");
  });
  need(await tab.locator(".strip").count() === 0, "what was kept after all is still told as lost");
  await tab.reload();
  await ready(tab);
  need(JSON.parse(await kept(tab)).notes === "said again", "what was said when there was no room is gone");
}

async function servesACounty(browser, folder) {
  const path = join(folder, "county.html");
  const done = run(join(build, "eavemark"), ["page", "-o", path, "--home", source, "--place", "example/frostmere",
    "--notice", HOSTILE, "--telephone", "555-0142"]);
  need(done.status === 0, `no page of a county: ${done.stderr}`);
  const tab = await openPage(browser, path);
  await go(tab, "Jobs");
  const card = tab.locator("main > section").first();
  need((await card.innerText()).startsWith("Frostmere County"), "the county does not come first");
  need((await card.textContent()).includes(HOSTILE), "the notice is not its own words");
  need(await card.locator("a").getAttribute("href") === "tel:5550142", "the telephone is no link to call");
  need(await tab.locator("main img, main script").count() === 0, "markup of a notice became an element");
  await tab.locator("form input[type=text]").first().fill("Of this county, invented");
  await tab.locator("button.main").click();
  need(JSON.parse(await kept(tab)).jurisdiction === "example/frostmere", "the county is not the place of a new job");
  await tab.close();
}

const browser = await openBrowser();
try {
  const folder = temporaryFolder(), tab = await openPage(browser, join(build, "roof.html"));
  await keepsEveryExample(tab);
  await goesByAShopSheet(tab, folder);
  await tellsWhenItIsFull(tab);
  await tab.close();
  await servesACounty(browser, folder);
  finish(`files: ${examples.length} examples in and out of the page`);
} finally {
  await browser.close();
}
