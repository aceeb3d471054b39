// The page: what is shown, and what happens to an answer.
import { Engine, ALL } from "./engine.js";
import { button, drawingsOf, h } from "./dom.js";
import { entryAt, getAt, setAt } from "./pointer.js";
import { store } from "./store.js";
import { checkView, houseView, jobsView, orderView, roofView, saveJob } from "./views.js";

const VIEWS = { Jobs: jobsView, House: houseView, Check: checkView, Roof: roofView, Order: orderView };
const place = (id) => document.getElementById(id);

async function unpacked(id) {
  const packed = Uint8Array.from(atob(place(id).textContent.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

class App {
  view = "Jobs";
  samples = {};

  // What the engine makes of the job as it now is.
  judge() {
    this.kept = store.current();
    this.changesText = null;
    if (!this.kept) return;
    try {
      this.job = JSON.parse(this.kept.text);
    } catch (error) {
      this.wrong = String(error.message);
      return;
    }
    const { place: where, day } = this.facts.head;
    const law = `${getAt(this.job, where)} ${getAt(this.job, day)} ${Object.keys(store.county())}`;
    if (law !== this.law) {
      this.law = law;
      this.engine.wasm.page_open();
      const answer = this.engine.call("schema", { place: getAt(this.job, where), day: getAt(this.job, day) });
      this.schema = JSON.parse(answer.status === 0 ? answer.report : this.engine.call("schema", {}).report);
    }
    const checked = this.engine.call("check", this.request(), "html");
    this.page = checked.report;
    this.wrong = checked.report === null ? checked.problems : null;
    this.questions = this.wrong ? []
      : JSON.parse(this.engine.call("questions", this.request()).report).questions;
    this.full = null;
  }

  request(text = this.kept.text) {
    const named = getAt(JSON.parse(text), this.facts.head.shop);
    return { job: text, name: "job", shop: named ? store.shops()[named] : null };
  }

  all = () => (this.full ??= this.engine.call("check", this.request(), "html", ALL).report);
  titleOf(text) {
    try {
      return getAt(JSON.parse(text), this.facts.head.title) ?? "Job";
    } catch {
      return "Job";
    }
  }

  title = () => this.titleOf(this.kept.text);
  stage = () => getAt(this.job, this.facts.head.stage);

  // A job that says nothing but what every one must: of this place and day.
  bare(title = "Job", where = null, day = null) {
    const { head } = this.facts;
    const schema = this.schema ?? JSON.parse(this.engine.call("schema", {}).report);
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

  // A picture of a sample house; drawn once.
  sample(form, job) {
    const key = `${form} ${this.law}`;
    this.samples[key] ??= drawingsOf(this.engine.call("check", { job: JSON.stringify(job) }, "html", ALL)
      .report)[0];
    return this.samples[key]?.cloneNode(true);
  }

  begin(title, where, day) {
    const text = `${JSON.stringify(this.bare(title.trim(), where, day), null, 2)}\n`;
    const checked = this.engine.call("check", { job: text, name: "job" }, "html");
    if (checked.report === null) return checked.problems;
    store.add(text, null);
    this.go("House");
    return null;
  }

  // An answer: taken if the engine takes the job with it, else refused where it was given.
  say(pointer, value) {
    const job = setAt(this.job, pointer, value);
    const text = `${JSON.stringify(job, null, 2)}\n`;
    const checked = this.engine.call("check", { ...this.request(text) }, "html");
    this.refused = checked.report === null ? { at: pointer, why: checked.problems.replace(/^[^:]*: /gm, "") } : null;
    if (this.refused === null || this.wrong) store.change(text);
    this.show(pointer);
  }

  draft = (pointer, words) => store.draft(pointer, words);

  open(name, text) {
    store.add(text, text);
    this.go("Check");
  }

  openShop(name, text) {
    store.addShop(name, text);
    if (this.kept) this.say(this.facts.head.shop, name);
    else this.show();
  }

  choose(id) {
    store.choose(id);
    this.go("Check");
  }

  remove(id) {
    store.remove(id);
    this.show();
  }

  // A county's file is laid over the one of its name; the jobs are judged before and after.
  openCounty(name, text) {
    const id = /jurisdiction\s+"([^"]+)"/.exec(text)?.[1];
    if (!id) {
      this.tried = `${name}: names no place`;
      this.show();
      return;
    }
    const jobs = store.jobs().map((job) => store.job(job)?.text).filter(Boolean);
    const brief = () => jobs.map((job) => this.engine.call("check", { job, name: "job" }, "text").report);
    const before = brief();
    store.setCounty({ ...store.county(), [`jurisdictions/${id}.lua`]: text });
    this.layCounty();
    const after = brief();
    const moved = jobs.filter((_, i) => before[i] !== after[i]).map((job) => this.titleOf(job));
    const proof = this.engine.call("proof", { words: id }, "text");
    this.tried = `${proof.report ?? ""}${proof.problems}\n`
      + `Jobs here that come out otherwise: ${moved.length === 0 ? "none" : moved.join("; ")}\n`;
    this.law = null;
    this.show();
  }

  layCounty() {
    for (const [path, text] of Object.entries(store.county())) this.engine.layOver(path, text);
  }

  dropCounty() {
    store.setCounty({});
    location.reload();
  }

  showChanges() {
    const changes = this.engine.call("changes", { ...this.request(), before: this.kept.saved ?? JSON.stringify(this.bare(this.title())) }, "text");
    const text = changes.report ?? changes.problems;
    this.show();
    this.changesText = text;
    this.draw();
  }

  go(view) {
    this.view = view;
    this.refused = null;
    this.show();
    place("view").focus();
    scrollTo(0, 0);
  }

  // at: what was just answered; the focus goes to what is asked there now.
  show(at) {
    this.judge();
    this.draw();
    if (at === undefined) return;
    const fields = [...document.querySelectorAll("#view .field")];
    const again = fields.find((one) => one.dataset.at === at);
    (again ?? place("view")).querySelector("input, button")?.focus({ preventScroll: again === undefined });
  }

  draw() {
    const main = place("view"), view = this.kept ? this.view : "Jobs";
    place("title").textContent = this.kept ? this.title() : "Eavemark";
    place("tabs").replaceChildren(...Object.keys(VIEWS).map((name) => button(name, () => this.go(name),
      { "aria-current": name === view ? "page" : undefined, disabled: !this.kept && name !== "Jobs" })));
    place("tools").replaceChildren(...(this.kept ? [
      button("Undo", () => { store.undo(); this.refused = null; this.show(); }, { disabled: this.kept.undo.length === 0 }),
      button("Save file", () => saveJob(this))] : []));
    if (this.wrong && view !== "Jobs") main.replaceChildren(this.mistakes());
    else main.replaceChildren(...VIEWS[view](this).flat(3).filter(Boolean));
  }

  // A job file that cannot be used: each mistake at its place.
  mistakes() {
    return h("section", { class: "card" }, h("h2", null, "This job cannot be used yet"),
      h("ul", { class: "rows" }, this.wrong.trim().split("\n").map((line) => {
        const [, pointer] = /: (\/[^:]*):/.exec(line) ?? [];
        const entry = pointer && this.schema ? entryAt(this.schema, pointer) : null;
        const now = pointer && this.job ? getAt(this.job, pointer) : undefined;
        return h("li", { class: "error" }, entry && h("strong", null, `${entry.title} `), line.replace(/^[^:]*: /, ""),
          now !== undefined && [" It says: ", h("code", null, JSON.stringify(now)),
            button("Take it out", () => this.say(pointer, undefined))]);
      })));
  }
}

async function start() {
  const app = new App();
  app.facts = JSON.parse(place("facts").textContent);
  app.first = document.querySelector("meta[name=eavemark-place]")?.content || null;
  app.engine = await Engine.load(await unpacked("engine"), await unpacked("home"));
  app.layCounty();
  if (store.current()) app.view = "Check";
  app.show();
  document.documentElement.dataset.ready = "1";
  globalThis.eavemark = app;
}
start().catch((error) => {
  place("view").textContent = `The page cannot start in this browser: ${error.message}`;
});
