// What each tab shows. app: see app.js.
import { button, drawingsOf, h, newId, openFile, pageFrame, saveFile, spoken } from "./dom.js";
import { askedOf, field } from "./field.js";
import { entryAt, getAt, leavesOf, setAt } from "./pointer.js";
import { questionsOf, screen } from "./screen.js";
import { store } from "./store.js";

const fileName = (title, ending) =>
  `${title.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "job"}${ending}`;

// A place found by its words.
function placeSearch(app, chosen, now) {
  const list = h("ul", { class: "found", "aria-live": "polite" });
  const id = newId();
  const look = (words) => {
    const asked = words.trim() || app.first;
    if (!asked) {
      list.replaceChildren(h("li", null, "Type a part of its name."));
      return;
    }
    const answer = app.engine.call("places", { words: asked });
    const places = answer.status === 0 ? JSON.parse(answer.report).places : [];
    list.replaceChildren(...places.slice(0, 12).map((place) => h("li", null,
      button(h("span", null, place.title, place.invented && " (invented)"),
        () => chosen(place.jurisdiction), { "aria-pressed": String(place.jurisdiction === now()) }))));
    if (places.length === 0) list.append(h("li", null, "No place of that name here."));
    if (places.length > 12) list.append(h("li", null, `and ${places.length - 12} more: say more of its name`));
  };
  const input = h("input", { id, type: "search", autocomplete: "off", input: () => look(input.value) });
  look("");
  return h("div", { class: "field" }, h("label", { for: id, class: "asks" },
    "Which building department? City or county"), input, list);
}

function begin(app) {
  const draft = { place: app.first ?? null, day: new Date().toISOString().slice(0, 10) };
  const title = h("input", { id: newId(), type: "text", autocomplete: "off", required: true });
  const day = h("input", { id: newId(), type: "date", value: draft.day, required: true });
  const search = h("div", null);
  const show = () => search.replaceChildren(placeSearch(app, (place) => {
    draft.place = place;
    for (const choice of search.querySelectorAll("button")) choice.setAttribute("aria-pressed", "false");
    chosen.textContent = `Place: ${place}`;
  }, () => draft.place));
  const chosen = h("p", { class: "chosen", "aria-live": "polite" }, draft.place ? `Place: ${draft.place}` : "");
  show();
  const problem = h("p", { class: "error", role: "alert" });
  return h("form", { class: "card", submit: (event) => {
    event.preventDefault();
    const why = draft.place === null ? "Choose a place first." : app.begin(title.value, draft.place, day.value);
    if (why) problem.textContent = why;
  } }, h("h2", null, "A new job"),
  h("div", { class: "field" }, h("label", { for: title.id, class: "asks" }, "What do you call this job?"), title),
  search, chosen,
  h("div", { class: "field" }, h("label", { for: day.id, class: "asks" }, "Day of the permit application"), day),
  problem, h("button", { type: "submit", class: "main" }, "Begin"));
}

function jobRow(app, id) {
  const job = store.job(id);
  if (!job) return null;
  const title = app.titleOf(job.text);
  return h("li", { class: "row" }, button(title, () => app.choose(id), {
    "aria-current": id === app.kept?.id ? "true" : undefined }),
  h("span", { class: "of" }, job.text === job.saved ? "saved" : "not saved to a file"),
  button("Remove", (event) => {
    if (event.target.dataset.sure) app.remove(id);
    event.target.dataset.sure = "1";
    event.target.textContent = "Remove for good?";
  }, { "aria-label": `Remove ${title}` }));
}

export function jobsView(app) {
  const jobs = store.jobs();
  return [jobs.length > 0 && h("section", { class: "card" }, h("h2", null, "Jobs in this browser"),
    h("ul", { class: "rows" }, jobs.map((id) => jobRow(app, id)))),
  begin(app),
  h("section", { class: "card" }, h("h2", null, "Files"),
    h("p", null, "Job files are the same that the eavemark program reads. Nothing leaves this page."),
    h("label", { class: "file" }, "Open job files", openFile(".json", (name, text) => app.open(name, text))),
    h("label", { class: "file" }, "Open a shop sheet", openFile(".json", (name, text) => app.openShop(name, text))),
    h("ul", null, Object.keys(store.shops()).map((name) => h("li", null, name)))),
  h("section", { class: "card" }, h("h2", null, "For a county: try a figure"),
    h("p", null, "Open the place's own file, changed; the jobs here are then judged by it, until it is put back."),
    h("label", { class: "file" }, "Open a place's .lua file", openFile(".lua", (name, text) => app.openCounty(name, text))),
    app.tried && h("pre", { class: "said", tabindex: "0" }, app.tried),
    Object.keys(store.county()).length > 0 && button("Put the built-in figures back", () => app.dropCounty()))];
}

// Only the planes of a drawing: no words, measures or legend.
function trim(svg) {
  const corners = [...svg.querySelectorAll("polygon")]
    .map((shape) => shape.getAttribute("points").split(" ").map((point) => point.split(",").map(Number)))
    .filter((points) => points.length > 3).flat();
  const [left, right] = [Math.min, Math.max].map((pick) => pick(...corners.map(([x]) => x)));
  const [top, bottom] = [Math.min, Math.max].map((pick) => pick(...corners.map(([, y]) => y)));
  svg.setAttribute("viewBox", `${left - 3} ${top - 3} ${right - left + 6} ${bottom - top + 6}`);
  svg.querySelectorAll("text, title, desc").forEach((words) => words.remove());
  for (const name of ["role", "aria-labelledby", "width", "height"]) svg.removeAttribute(name);
}

// Pictures of the forms a house may have, drawn by the engine from a sample of each.
function pictures(app) {
  const { at, picture, forms } = app.facts.plan, pointer = `${at}/${picture}`;
  const now = getAt(app.job, pointer);
  return h("div", { class: "pictures", role: "group", "aria-label": "Form of the roof" },
    Object.entries(forms).map(([form, sample]) => {
      const drawn = app.sample(form, setAt(app.bare(), at, { [picture]: form, ...sample }));
      if (drawn) trim(drawn);
      return button(h("span", { class: "picture" }, h("span", { "aria-hidden": "true" }, drawn ?? ""), spoken(form)),
        () => app.say(pointer, form), { "aria-pressed": String(form === now) });
    }));
}

// The numbers of the plan that the form needs.
function numbers(app) {
  const { at, picture, forms } = app.facts.plan;
  const sample = forms[getAt(app.job, `${at}/${picture}`)];
  return leavesOf(sample ?? {}, at).map(([pointer]) => {
    const entry = entryAt(app.schema, pointer);
    return field(askedOf(pointer, entry), entry, getAt(app.job, pointer),
      (said) => app.say(pointer, said),
      { error: app.refused?.at === pointer && app.refused.why, draft: app.kept.drafts[pointer],
        drafted: (words) => app.draft(pointer, words) });
  });
}

// Everything the job says, to be changed.
function saidSoFar(app) {
  const parts = new Map();
  for (const [pointer, value] of leavesOf(app.job)) {
    const part = pointer.split("/")[1];
    parts.set(part, [...(parts.get(part) ?? []), [pointer, value]]);
  }
  return [...parts].map(([part, facts]) => h("details", null,
    h("summary", null, `${spoken(part)} (${facts.length})`),
    facts.map(([pointer, value]) => {
      const entry = entryAt(app.schema, pointer);
      return h("div", { class: "fact" }, field(askedOf(pointer, entry,
        pointer.split("/").slice(1, -1).map(spoken).join(" ")), entry, value,
      (said) => app.say(pointer, said),
      { error: app.refused?.at === pointer && app.refused.why }),
      entry?.type !== "string" && button("Take back", () => app.say(pointer, undefined)));
    })));
}

export function houseView(app) {
  const drawing = drawingsOf(app.all())[0];
  const of = app.questions.filter((question) => question.pointer.startsWith(`/${app.facts.plan.at.split("/")[1]}/`));
  return [h("section", { class: "card" }, h("h2", null, "Plan of the house"), pictures(app),
    h("div", { class: "beside" }, h("div", null, numbers(app)),
      h("div", { class: "drawing", "aria-live": "polite" }, drawing ?? h("p", { class: "hint" },
        "The roof is drawn here when its numbers are in.")))),
  of.length > 0 && h("section", { class: "card" }, h("h2", null, "What is on it"), questionsOf(of, app)),
  h("section", { class: "card" }, h("h2", null, "Said so far"), saidSoFar(app))];
}

export function checkView(app) {
  return [h("div", { class: "tools" }, app.changes !== null && button("What changed since the last save",
    () => app.showChanges())),
  app.changesText && h("pre", { class: "said", tabindex: "0" }, app.changesText),
  ...screen(app),
  h("details", { ontoggle: undefined, toggle: (event) => {
    if (event.target.open && event.target.children.length === 1)
      event.target.append(button("Print", () => event.target.querySelector("iframe").contentWindow.print()),
        pageFrame(app.all(), "Every finding, with sources and drawings"));
  } }, h("summary", null, "Every finding in full, and drawings"))];
}

export function roofView(app) {
  const stages = entryAt(app.schema, app.facts.head.stage).enum, stage = app.stage();
  const blanks = app.questions.filter((question) => question.stage === stage && stage !== stages[0]);
  const card = app.engine.call("card", { ...app.request(), stage }, "html");
  const frame = card.report && pageFrame(card.report, `Card for ${stage}`);
  return [h("section", { class: "card" }, h("h2", null, "How far has the work come?"),
    h("div", { class: "choices", role: "group", "aria-label": "Stage" }, stages.map((word) =>
      button(spoken(word), () => app.say(app.facts.head.stage, word), { "aria-pressed": String(word === stage) })))),
  blanks.length > 0 && h("section", { class: "card" }, h("h2", null, "Measured or seen on the roof"),
    questionsOf(blanks, app)),
  h("section", null, h("h2", null, "The card"),
    frame && button("Print the card", () => frame.contentWindow.print(), { class: "main" }), frame,
    card.problems && h("p", { class: "error" }, card.problems))];
}

export function orderView(app) {
  const list = app.engine.call("order", app.request(), "text");
  return [h("h2", null, "Order list"), button("Print the list", () => print(), { class: "main" }),
    button("Save as text", () => saveFile(fileName(app.title(), "-order.txt"), list.report ?? "", "text/plain")),
    h("pre", { class: "list", tabindex: "0" }, list.report ?? list.problems)];
}

export const saveJob = (app) => {
  saveFile(fileName(app.title(), ".json"), app.kept.text);
  store.saved();
  app.show();
};
