// The page without a pointer, on paper, and without colours: a job begun and answered by
// keys alone; card and order on Letter; the outcome told in words; a rule explained.
//
//   node manners.mjs BUILD_FOLDER SOURCE_FOLDER
import { join } from "node:path";
import { finish, need, openBrowser, openJob, openPage } from "./open.mjs";

const [build, source] = process.argv.slice(2);
const MOST_KEYS = 60;
const go = (tab, name) => tab.locator("#tabs button", { hasText: name }).click();

// What has the focus: its words, and the fact that it is about.
const focused = (tab) => tab.evaluate(() => {
  const one = document.activeElement;
  return { words: (one.textContent || one.value || "").trim(), at: one.closest(".field")?.dataset.at, tag: one.localName, type: one.type };
});

async function tabTo(tab, wanted, what) {
  for (let i = 0; i < MOST_KEYS; i++) {
    const now = await focused(tab);
    if (wanted(now)) return now;
    await tab.keyboard.press("Tab");
  }
  need(false, `no key leads to ${what}`);
  return {};
}

async function worksByKeys(tab) {
  await tab.keyboard.press("Tab");
  need((await focused(tab)).words === "Skip to the content", "the content cannot be skipped to");
  await tabTo(tab, (one) => one.type === "text", "the name of a job");
  await tab.keyboard.type("By keys, invented");
  await tab.keyboard.press("Tab");
  await tab.keyboard.type("dunmarrow");
  await tabTo(tab, (one) => one.words.startsWith("Dunmarrow"), "a place");
  await tab.keyboard.press("Enter");
  need((await focused(tab)).words === "Choose another", "a place chosen loses the focus");
  await tabTo(tab, (one) => one.words === "Begin", "the beginning");
  await tab.keyboard.press("Enter");
  await tabTo(tab, (one) => one.words === "hip", "a form");
  await tab.keyboard.press("Space");
  need((await focused(tab)).words === "hip", `an answer loses the focus: ${JSON.stringify(await focused(tab))}`);
  await tabTo(tab, (one) => one.type === "text", "a number");
  for (const words of ["42", "28", "6:12", "12"]) {
    await tab.keyboard.type(words);
    await tab.keyboard.press("Tab");
    await tab.keyboard.press("Tab");
  }
  await tab.locator(".drawing svg").waitFor();
  await go(tab, "Check");
  await tabTo(tab, (one) => one.at !== undefined && one.words === "No", "a question");
  const before = await focused(tab);
  await tab.keyboard.press("Enter");
  const after = await focused(tab);
  need(after.at !== undefined && after.at !== before.at, `after ${before.at} the focus is on ${JSON.stringify(after)}`);
  need(/^Taken\. \d+ fail/.test(await tab.locator("#said").textContent()), "an answer is not told to a screen reader");
  // What has the focus is not behind the bar on top.
  const hidden = await tab.evaluate(() => document.activeElement.getBoundingClientRect().top
    < document.querySelector(".bar").getBoundingClientRect().bottom);
  need(!hidden, "the bar hides what has the focus");
}

async function printsOnLetter(tab) {
  await openJob(tab, join(source, "examples/cross-gable/job-deck.json"));
  await tab.locator("#fix, #met").first().waitFor();
  for (const [name, pages] of [["Order", 1], ["Check", 2]]) {
    await go(tab, name);
    const pdf = (await tab.pdf({ preferCSSPageSize: true })).toString("latin1");
    need(/\/MediaBox \[0 0 612 792\]/.test(pdf), `${name} is not printed on Letter`);
    const count = (pdf.match(/\/Type \/Page\b/g) ?? []).length;
    need(count <= pages, `${name} takes ${count} pages`);
  }
  await go(tab, "Roof");
  const html = await tab.locator("iframe.sheet").getAttribute("srcdoc");
  need(/@page\s*{[^}]*letter/.test(html), "the card is not for Letter");
}

// Without colours each part of the screen still says in a word what it is.
async function saysInWords(tab) {
  await go(tab, "Check");
  for (const part of await tab.locator("main section.part").all()) {
    const word = await part.locator(".word").innerText();
    need(/^(fix|look|answer|later|met|care|confirm|not known here|broken)/i.test(word), `a part is called ${word}`);
  }
  for (const pressed of await tab.locator("[aria-pressed=true]").all())
    need(await pressed.evaluate((one) => getComputedStyle(one, "::before").content.includes("\u2713")), "a choice is told by colour alone");
}

async function explains(tab) {
  const why = tab.locator("main .blocks button", { hasText: "Why?" }).first();
  await why.click();
  const panel = tab.locator(`[id="${await why.getAttribute("aria-controls")}"]`);
  need(await panel.isVisible() && await why.getAttribute("aria-expanded") === "true", "no explanation");
  const words = await panel.locator("details[open]").innerText();
  need(words.includes("how this job is judged by it") && /outcome\s+FAIL/.test(words), `explained: ${words.slice(0, 200)}`);
  await why.click();
  need(!await panel.isVisible(), "an explanation does not close");
}

const browser = await openBrowser();
try {
  const tab = await openPage(browser, join(build, "roof.html"));
  await worksByKeys(tab);
  await printsOnLetter(tab);
  await saysInWords(tab);
  await explains(tab);
  finish("manners of the page");
} finally {
  await browser.close();
}
