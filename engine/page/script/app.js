// The page: what is shown, and what happens to an answer.
import { checkView } from "./check.js";
import { countyView, trialStrip } from "./county.js";
import { button, card, h, later } from "./dom.js";
import { ALL, DRAWINGS, Engine } from "./engine.js";
import { houseView } from "./house.js";
import { jobsView, missingShop, saveJob } from "./jobs.js";
import { orderView } from "./order.js";
import { entryAt, getAt, setAt } from "./pointer.js";
import { roofView } from "./roof.js";
import { store } from "./store.js";

const TABS = { Jobs: jobsView, House: houseView, Check: checkView, Roof: roofView, Order: orderView };
const VIEWS = { ...TABS, County: countyView };
const MOST_LAWS = 4; // that the engine's memory holds at once
const place = (id) => document.getElementById(id);

async function unpacked(id) {
  const letters = atob(place(id).textContent.trim()), packed = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) packed[i] = letters.charCodeAt(i);
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

const written = (job) => `${JSON.stringify(job, null, 2)}\n`;

class App {
  view = "Jobs";
  samples = {};
  schemas = new Map();

  // What the catalogue says at the job's place and day.
  learn() {
    const law = { place: getAt(this.job, this.facts.head.place), day: getAt(this.job, this.facts.head.day) };
    const key = JSON.stringify(law);
    if (!this.schemas.has(key)) {
      if (this.schemas.size === MOST_LAWS) this.forgetLaw();
      const answer = this.engine.call("schema", law);
      this.schemas.set(key, JSON.parse(answer.status === 0 ? answer.report : this.engine.call("schema", {}).report));
    }
    this.schema = this.schemas.get(key);
  }

  forgetLaw() {
    this.schemas.clear();
    this.last = null;
    this.engine.wasm.page_open();
  }

  // The engine's answer to a job's text; the last one is not asked for again.
  answerTo(text) {
    const request = this.requestOf(text), key = JSON.stringify(request);
    if (this.last?.key !== key) this.last = { key, answer: this.engine.call("screen", request) };
    return this.last.answer;
  }

  // What the engine makes of the job as it now is.
  judge() {
    this.kept = store.current();
    this.changesText = null;
    if (!this.kept) return;
    this.job = this.parsed(this.kept.text);
    this.learn();
    const answer = this.answerTo(this.kept.text);
    if (answer === this.judged) return;
    this.judged = answer;
    this.wrong = answer.report === null ? answer.problems : null;
    this.page = this.wrong ? null : new DOMParser().parseFromString(answer.report, "text/html");
    this.count = this.page && [...this.page.querySelectorAll("header dd")].at(-1)?.textContent;
    this.questions = this.wrong ? [] : JSON.parse(answer.questions).questions;
  }

  parsed(text) {
    try {
      const job = JSON.parse(text);
      return typeof job === "object" && job !== null ? job : {};
    } catch {
      return {};
    }
  }

  requestOf(text) {
    const named = getAt(this.parsed(text), this.facts.head.shop);
    return { job: text, name: "job", shop: named ? store.shop(named) : null };
  }

  request = () => this.requestOf(this.kept.text);
  all = () => this.engine.call("check", this.request(), "html", ALL).report;
  drawn = (job) => this.engine.call("check", this.requestOf(written(job)), "html", DRAWINGS).report;
  titleOf = (text) => String(getAt(this.parsed(text), this.facts.head.title) ?? "Job");
  title = () => this.titleOf(this.kept.text);
  stage = () => getAt(this.job, this.facts.head.stage);

  // A job that says nothing but what every one must: of this place and day.
  bare(title = "Job", where = null, day = null) {
    const { head } = this.facts;
    const schema = this.schema ?? JSON.parse(this.engine.call("schema", { place: where, day }).report);
    let job = {};
    for (const name of schema.required) {
      const entry = schema.properties[name];
      if (entry.minimum !== undefined && entry.minimum === entry.maximum) job[name] = entry.minimum;
      if (entry.enum) job[name] = entry.enum[0];
      if (entry.const !== undefined) job[name] = entry.const;
    }
    for (const [pointer, value] of [[head.title, title],
      [head.place, where ?? getAt(this.job, head.place)], [head.day, day ?? getAt(this.job, head.day)]])
      job = setAt(job, pointer, value);
    return job;
  }

  // null, or why no job begins so.
  begin(title, where, day, shop) {
    this.job = {};
    let job = this.bare(title.trim(), where, day);
    if (shop) job = setAt(job, this.facts.head.shop, shop);
    const answer = this.answerTo(written(job));
    if (answer.report === null) return answer.problems;
    store.add(written(job), null);
    this.go("House");
    return null;
  }

  // An answer: taken if the engine takes the job with it, else why not.
  sayQuietly(pointer, value) {
    const text = written(setAt(this.job, pointer, value)), answer = this.answerTo(text);
    if (answer.report === null && !this.wrong) return answer.problems.replace(/^[^:]*: /gm, "");
    store.change(text);
    this.judge();
    this.drawHead();
    return null;
  }

  say(pointer, value) {
    const why = this.sayQuietly(pointer, value);
    this.refused = why === null ? null : { at: pointer, why };
    this.show(pointer);
  }

  draft(pointer, words) {
    store.draft(pointer, words);
    this.kept = store.current();
  }

  open(text) {
    store.add(text, text);
    this.go("Check");
  }

  openShop(name, text) {
    store.addShop(name, text);
    if (this.kept && getAt(this.job, this.facts.head.shop) === undefined && !this.wrong)
      this.say(this.facts.head.shop, name);
    else this.show();
  }

  liftShop() {
    const answer = this.engine.call("shop", this.request());
    this.lifted = answer.report === null ? answer.problems : null;
    let name = "shop.json";
    for (let i = 2; name in store.shops(); i++) name = `shop-${i}.json`;
    if (answer.report !== null) store.addShop(name, answer.report);
    this.show();
  }

  choose(id) {
    store.choose(id);
    this.go("Check");
  }

  remove(id) {
    store.remove(id);
    this.show();
  }

  layCounty() {
    for (const [path, text] of Object.entries({ ...this.county?.files, ...store.county() }))
      this.engine.layOver(path, text);
  }

  dropCounty() {
    store.setCounty({});
    location.reload();
  }

  showChanges() {
    const before = this.kept.saved ?? written(this.bare(this.title()));
    const changes = this.engine.call("changes", { ...this.request(), before }, "text");
    this.changesText = changes.report ?? changes.problems;
    this.draw();
    place("view").querySelector(".said").focus();
  }

  go(view) {
    this.view = view;
    this.refused = null;
    this.show();
    place("view").focus();
    scrollTo(0, 0);
  }

  // at: what was just answered. The focus goes to what is asked there now, or next.
  show(at) {
    const fields = () => [...document.querySelectorAll("#view [data-at]")];
    const before = fields().map((one) => one.dataset.at);
    this.judge();
    this.draw();
    if (at === undefined) return;
    const after = fields(), wanted = [at, ...before.slice(before.indexOf(at) + 1)];
    const next = wanted.map((one) => after.find((field) => field.dataset.at === one)).find(Boolean);
    const control = next?.querySelector("[aria-pressed=true]") ?? next?.querySelector("input, button");
    if (control) control.focus();
    else place("view").focus();
    place("said").textContent = this.refused ? "" : `Taken. ${this.count ?? ""}`;
  }

  drawHead() {
    const view = this.kept ? this.view : this.view === "County" ? "County" : "Jobs";
    place("title").textContent = this.kept ? this.title() : "Eavemark";
    document.title = `Eavemark: ${view}${this.kept ? `, ${this.title()}` : ""}`;
    place("tabs").replaceChildren(...Object.keys(TABS).map((name) => button(name, () => this.go(name),
      { "aria-current": name === view ? "page" : undefined, disabled: !this.kept && name !== "Jobs" })));
    place("tools").replaceChildren(...(this.kept ? [
      button("Undo", () => { store.undo(); this.refused = null; this.show(); }, { disabled: this.kept.undo.length === 0 }),
      button("Save", () => saveJob(this), { "aria-label": "Save this job as a file" })] : []));
    place("strips").replaceChildren(...[trialStrip(this), store.full() && h("p", { class: "strip", role: "alert" },
      "This browser has no room left to keep what you say: save the job as a file.")].filter(Boolean));
    return view;
  }

  draw() {
    const view = this.drawHead();
    const shown = this.wrong && view !== "Jobs" && view !== "County" ? [missingShop(this), this.mistakes()]
      : VIEWS[view](this);
    place("view").replaceChildren(...shown.flat(3).filter(Boolean));
  }

  // A job file that cannot be used: each mistake at its place.
  mistakes() {
    return card("This job cannot be used yet",
      h("ul", { class: "rows" }, this.wrong.trim().split("\n").map((line) => {
        const [, pointer] = /: (\/[^:]*):/.exec(line) ?? [];
        const entry = pointer && entryAt(this.schema, pointer);
        const now = pointer && getAt(this.job, pointer);
        return h("li", { class: "error" }, entry && h("strong", null, `${entry.title} `), line.replace(/^[^:]*: /, ""),
          now !== undefined && [" It says: ", h("code", null, JSON.stringify(now)), " ",
            button("Take it out", () => this.say(pointer, undefined))]);
      })));
  }
}

async function start() {
  const app = new App();
  app.facts = JSON.parse(place("facts").textContent);
  app.county = JSON.parse(place("county").textContent);
  if (app.county?.place)
    app.county.title = app.county.places.places.find((one) => one.jurisdiction === app.county.place)?.title;
  app.engine = await Engine.load(await unpacked("engine"), await unpacked("home"),
    await unpacked("made"));
  app.layCounty();
  if (store.current()) app.view = "Check";
  app.show();
  place("office").addEventListener("click", () => app.go("County"));
  addEventListener("storage", () => app.show()); // said in another tab
  // The first search reads every place: done while a name is being thought of.
  if (!store.current()) later(() => app.engine.call("places", { words: "a" }));
  document.documentElement.dataset.ready = "1";
  globalThis.eavemark = app;
}
start().catch((error) => {
  place("view").textContent = `The page cannot start in this browser: ${error.message}`;
});
