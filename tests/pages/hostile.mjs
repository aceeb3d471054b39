// Texts that try to be more than text, fed through every form: whatever comes
// out must be harmless to a terminal and make no element of its own in a page.
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PHONE, STAGES, run, temporaryFolder } from "./pages.mjs";

const MARKUP = "<img src=x onerror=alert(1)><script>alert(2)</script>\"'&amp;";
const STEERING = "\u001b[31m\u009b31m\u0007\u202e\u2066\u200f\ufeff\u0085";
const NASTY = `${MARKUP}${STEERING}</title></style><marquee>`;
const LONG = "W".repeat(10000);
// What must not reach a terminal: C0 but the newline, DEL, C1, and the marks
// that reorder or hide (Unicode standard annex 9; general category Cf).
const HARMFUL = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/u;
// All that the templates make.
const ELEMENTS = ["HTML", "HEAD", "META", "TITLE", "STYLE", "BODY", "A", "HEADER", "P", "H1", "H2",
  "H3", "STRONG", "DL", "DIV", "DT", "DD", "NAV", "UL", "OL", "LI", "MAIN", "SECTION", "TABLE",
  "CAPTION", "COLGROUP", "COL", "THEAD", "TBODY", "TR", "TH", "TD", "SPAN", "ARTICLE", "BR",
  "FOOTER", "FIGURE", "FIGCAPTION", "svg", "title", "desc", "defs", "pattern", "path", "rect",
  "line", "polygon", "circle", "g", "text"];
const ATTRIBUTES = ["lang", "charset", "http-equiv", "content", "name", "class", "href", "id",
  "tabindex", "aria-label", "aria-labelledby", "scope", "role", "colspan", "data-label", "data-drawing", "xmlns", "viewBox",
  "width", "height", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "d", "points", "fill",
  "stroke", "stroke-width", "stroke-dasharray", "stroke-linejoin", "paint-order", "font-family",
  "font-size", "text-anchor", "textLength", "lengthAdjust", "patternUnits"];

// Written byte by byte, so that the file itself holds nothing but ASCII.
const luaText = (text) => `"${[...Buffer.from(text, "utf8")].map((byte) =>
  `\\${String(byte).padStart(3, "0")}`).join("")}"`;

// A home whose county, rule, caution, quantity and card say nasty things.
function hostileHome(home) {
  const folder = temporaryFolder();
  for (const part of ["rules", "jurisdictions"])
    cpSync(join(home, part), join(folder, part), { recursive: true });
  const nasty = luaText(NASTY);
  writeFileSync(join(folder, "jurisdictions/example/nasty.lua"), `
jurisdiction "example/nasty" {
  title = ${nasty}, invented = true, follows = "model/irc-2021", from = "2020-01-01",
  figures = { ["layers.most"] = { 1, cite = ${nasty} } },
  drop = { ["deck.panel_gap"] = ${nasty} },
  rules = "nasty.rules.lua",
}`);
  const rule = (name, stage, judge) => `
rule "nasty.${name}" {
  title = ${nasty}, stage = "${stage}", per = "roof.slopes",
  reads = { facts = { "roof.slopes[].pitch" }, figures = { "layers.most" } },
  judge = function(job, figure, slope) ${judge} end,
  mend = ${nasty}, caution = ${nasty},
}`;
  writeFileSync(join(folder, "jurisdictions/example/nasty.rules.lua"), [
    ...STAGES.flatMap((stage) => [
      rule(`fails_${stage.replace("-", "_")}`, stage,
        `work(${nasty}) return at_most(9, figure "layers.most", "layers"):say(${nasty})`),
      rule(`asks_${stage.replace("-", "_")}`, stage,
        `figure "layers.most" return cannot_tell(${nasty})`),
    ]),
    rule("breaks", "deck", `error(${nasty})`),
    rule("long", "deck", `return at_most(0, figure "layers.most", "layers"):warn(${luaText(LONG)})`),
    `caution "nasty" { stages = { "permit", "deck", "dry-in", "final" }, says = ${nasty},
      cite = { code = ${nasty}, section = ${nasty}, status = "seen", source = ${nasty} } }`,
    `about(${nasty}) { says = function() return ${nasty} end }`,
    `quantity(${nasty}) { title = ${nasty}, amount = function() return amount {
      exact = 1, unit = "ft", buy = ${nasty}, one = ${nasty}, note = ${nasty} } end }`,
  ].join("\n"));
  return folder;
}

// The base job with nasty names, as far as names may be long.
function hostileJob(home, folder) {
  const job = JSON.parse(readFileSync(join(home, "rules/cases/base.json"), "utf8"));
  job.jurisdiction = "example/nasty";
  job.job = `${MARKUP}${STEERING}`;
  const slope = job.roof.slopes[0];
  const name = "<b onclick=alert(3)>\u202e\u001b[2J\"'&";
  for (const edge of job.roof.edges) if (edge.slope === slope.name) edge.slope = name;
  slope.name = name;
  const path = join(folder, "nasty.json");
  writeFileSync(path, JSON.stringify(job));
  return path;
}

function checkBytes(what, bytes, say) {
  const text = bytes.toString("utf8");
  if (!Buffer.from(text, "utf8").equals(bytes)) say(what, "is not UTF-8");
  const found = text.match(HARMFUL);
  if (found) say(what, `lets U+${found[0].codePointAt(0).toString(16)} out: `
    + JSON.stringify(text.slice(Math.max(0, found.index - 40), found.index + 10)));
  return text;
}

function checkForms(program, home, job, say) {
  const clean = join(home, "rules/cases/base.json");
  const forms = [
    ...["text", "json"].flatMap((form) => [
      ["check", "--form", form, job], ["check", "--all", "--form", form, job], ["takeoff", "--form", form, job],
      ["explain", "--form", form, "nasty.fails_deck", job],
      ["explain", "--form", form, "nasty.fails_deck", "--jurisdiction", "example/nasty"],
      ["compare", "--form", form, clean, job], ["proof", "--form", form, "example/nasty"],
    ]),
    ...STAGES.map((stage) => ["card", "--stage", stage, job]),
    ["fields", "--jurisdiction", "example/nasty", "--date", "2026-01-01"],
  ];
  for (const args of forms) {
    const done = run(program, [...args, "--home", home]);
    const name = `hostile ${args.slice(0, 4).join(" ")}`;
    const text = checkBytes(name, Buffer.concat([done.stdout, done.stderr]), say);
    if (args[0] !== "fields" && args[0] !== "proof" && !text.includes("alert(1)"))
      say(name, "does not show the nasty text at all");
    if (args.includes("json") && done.stdout.length > 0) JSON.parse(done.stdout.toString("utf8"));
  }
}

async function checkHostilePage(browser, page, say) {
  const tab = await browser.newPage();
  const asked = [];
  tab.on("request", (request) => asked.push(request.url()));
  tab.on("dialog", (dialog) => { say(page.name, "a dialog opened"); dialog.dismiss(); });
  tab.on("console", (message) => say(page.name, `the browser says: ${message.text()}`));
  await tab.setViewportSize(PHONE);
  await tab.goto(page.url);
  const found = await tab.evaluate(({ elements, attributes }) => {
    const all = [...document.querySelectorAll("*")];
    return {
      elements: all.map((e) => e.tagName).filter((tag) => !elements.includes(tag)),
      attributes: all.flatMap((e) => e.getAttributeNames())
        .filter((name) => !attributes.includes(name)),
      links: all.filter((e) => e.hasAttribute("href")).map((e) => e.getAttribute("href"))
        .filter((href) => !/^#[a-z]+$/.test(href)),
      text: document.body.textContent,
      width: document.documentElement.scrollWidth,
    };
  }, { elements: ELEMENTS, attributes: ATTRIBUTES });
  for (const kind of ["elements", "attributes", "links"])
    for (const one of found[kind]) say(page.name, `has ${kind} not of the template: ${one}`);
  for (const wanted of [MARKUP, "<marquee>", "<b onclick=alert(3)>"])
    if (!found.text.includes(wanted)) say(page.name, `does not show ${wanted} as text`);
  if (found.width > PHONE.width) say(page.name, `${found.width} px wide on a phone`);
  for (const url of asked) if (url !== page.url) say(page.name, `asked for ${url}`);
  await tab.close();
}

// What is refused must be refused in words as harmless.
function checkRefused(program, home, folder, say) {
  const good = JSON.parse(readFileSync(join(home, "rules/cases/base.json"), "utf8"));
  const bad = {
    nul: JSON.stringify({ ...good, job: "a" }).replace('"a"', '"a\\u0000<b>"'),
    long: JSON.stringify({ ...good, job: LONG }),
    key: JSON.stringify({ ...good, [NASTY]: 1 }),
    place: JSON.stringify({ ...good, jurisdiction: NASTY }),
    choice: JSON.stringify({ ...good, scope: { ...good.scope, method: NASTY } }),
  };
  for (const [name, text] of Object.entries(bad)) {
    const path = join(folder, `${name}.json`);
    writeFileSync(path, text);
    for (const args of [["check"], ["check", "--form", "html"], ["card", "--stage", "deck"],
      ["card", "--stage", "deck", "--form", "html"], ["takeoff"]]) {
      const done = run(program, [...args, path, "--home", home]);
      const what = `refused ${name}, ${args.join(" ")}`;
      checkBytes(what, Buffer.concat([done.stdout, done.stderr]), say);
      if (done.status !== 2) say(what, `status ${done.status}`);
      if (done.stdout.length > 0) say(what, "printed something all the same");
    }
  }
}

export async function checkHostile(browser, program, home, say) {
  const folder = hostileHome(home);
  const job = hostileJob(home, folder);
  checkForms(program, folder, job, say);
  checkRefused(program, folder, folder, say);
  for (const [name, args] of [["report", ["check", job]], ["full", ["check", "--all", job]],
    ...STAGES.map((stage) => [`card-${stage}`, ["card", "--stage", stage, job]])]) {
    const path = join(folder, `hostile-${name}.html`);
    const done = run(program, [...args, "--form", "html", "--home", folder, "-o", path]);
    if (done.status > 3) say(name, `status ${done.status}`);
    checkBytes(`hostile ${name}`, readFileSync(path), say);
    await checkHostilePage(browser,
      { name: `hostile ${name}`, url: new URL(`file://${path}`).href }, say);
  }
}
