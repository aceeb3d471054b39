// For a building department: its own file, changed, and what that does to the jobs here.
import { button, card, h, openFiles } from "./dom.js";
import { told } from "./screen.js";
import { store } from "./store.js";

// What of a job comes out how: [finding, outcome] by rule and place in the job.
function outcomes(app, job) {
  const answer = app.engine.call("check", app.requestOf(job), "json");
  const found = answer.report ? JSON.parse(answer.report).findings : [];
  return new Map(found.map((one) => [`${one.title}${one.where ? `: ${one.where}` : ""} [${one.rule}]`, one.outcome]));
}

function movedOf(before, after) {
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((one) => before.get(one) !== after.get(one))
    .map((one) => `${one}: ${before.get(one) ?? "does not apply"}, now ${after.get(one) ?? "does not apply"}`);
}

// The file is laid over the one of its name; the jobs are judged before and after.
export function tryFile(app, name, text) {
  const id = /^\s*jurisdiction\s+"([^"]+)"/m.exec(text)?.[1];
  if (!id) {
    app.tried = { wrong: `${name} names no place: it has no line that begins with jurisdiction "..."` };
    return;
  }
  const jobs = store.jobs().map((one) => store.job(one)?.text).filter(Boolean);
  const before = jobs.map((job) => outcomes(app, job));
  store.setCounty({ ...store.county(), [`jurisdictions/${id}.lua`]: text });
  app.layCounty();
  const after = jobs.map((job) => outcomes(app, job));
  const proof = app.engine.call("proof", { words: id }, "text");
  app.tried = { id, proof: `${proof.report ?? ""}${proof.problems}`, wrong: null,
    effects: jobs.map((job, i) => [app.titleOf(job), movedOf(before[i], after[i])]) };
}

export function countyView(app) {
  const tried = app.tried;
  return [card("Try a figure", h("p", null, "Open your place's own file, changed. The jobs here are then "
    + "judged by it, until the built-in figures are put back; nothing is sent anywhere."),
  openFiles("Open a place's .lua file", ".lua", (name, text) => {
    tryFile(app, name, text);
    app.forgetLaw();
    app.show();
  }),
  tried?.wrong && h("p", { class: "error", role: "alert" }, tried.wrong)),
  tried?.effects && card("The jobs here", tried.effects.length === 0 && h("p", null, "There are none yet."),
    tried.effects.map(([title, moved]) => [h("h3", null, h("bdi", null, title)), moved.length === 0
      ? h("p", null, "Comes out as before.")
      : h("ul", { class: "lines" }, moved.map((line) => h("li", null, line)))])),
  tried?.proof && card(`Proof of ${tried.id}`, h("p", null, /^\d+ errors?,.*$/m.exec(tried.proof)?.[0]),
    h("details", { open: !/^0 errors,/m.test(tried.proof) }, h("summary", null, "How it differs from what it follows"),
      told(tried.proof)))];
}

// So that no one takes a trial for the law: on every screen.
export function trialStrip(app) {
  const files = Object.keys(store.county());
  return files.length > 0 && h("div", { class: "strip", role: "note" },
    h("span", null, `Judged by changed figures opened here: ${files.join(", ")}`),
    button("Put the built-in figures back", () => app.dropCounty()));
}
