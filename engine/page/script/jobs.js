// The jobs in this browser, a new one, and files.
import { button, card, fileName, h, newId, openFiles, saveFile } from "./dom.js";
import { getAt } from "./pointer.js";
import { store } from "./store.js";

const MOST_PLACES = 8;

// A place found by its words; chosen is told its id and title.
function placeSearch(app, chosen) {
  const list = h("ul", { class: "found", "aria-live": "polite" }), id = newId();
  const look = (words) => {
    if (words.trim() === "") {
      list.replaceChildren(h("li", { class: "hint" }, "Type a part of its name."));
      return;
    }
    const answer = app.engine.call("places", { words });
    const places = answer.status === 0 ? JSON.parse(answer.report).places : [];
    list.replaceChildren(...places.slice(0, MOST_PLACES).map((place) => h("li", null,
      button(place.title + (place.invented ? " (invented)" : ""), () => chosen(place)))));
    if (places.length === 0) list.append(h("li", null, "No place of that name here."));
    if (places.length > MOST_PLACES)
      list.append(h("li", null, `and ${places.length - MOST_PLACES} more: say more of its name`));
  };
  const input = h("input", { id, type: "search", autocomplete: "off", input: () => look(input.value) });
  look("");
  return h("div", { class: "field" }, h("label", { for: id, class: "asks" },
    "Which building department? City or county"), input, list);
}

// The place that was chosen, or the search for one.
function placePart(app, draft) {
  const part = h("div", null);
  const search = () => part.replaceChildren(placeSearch(app, (found) => {
    Object.assign(draft, { place: found.jurisdiction, title: found.title });
    shown();
    part.querySelector("button").focus();
  }));
  const shown = () => part.replaceChildren(h("div", { class: "field" },
    h("p", { class: "asks" }, "Building department"),
    h("p", { class: "chosen" }, draft.title),
    button("Choose another", () => {
      draft.place = null;
      search();
      part.querySelector("input").focus();
    })));
  if (draft.place) shown();
  else search();
  return part;
}

function shopPart(draft) {
  const names = Object.keys(store.shops()), label = newId();
  if (names.length === 0) return null;
  const group = h("div", { class: "choices", role: "group", "aria-labelledby": label });
  const pick = (name) => {
    draft.shop = name;
    group.replaceChildren(...[null, ...names].map((one) => button(one ?? "None", () => pick(one),
      { "aria-pressed": String(one === draft.shop) })));
  };
  pick(null);
  return h("div", { class: "field" }, h("p", { id: label, class: "asks" }, "Materials from which shop sheet?"), group);
}

function begin(app) {
  const draft = { place: app.county?.place ?? null, title: app.county?.title, shop: null };
  const title = h("input", { id: newId(), type: "text", autocomplete: "off", required: true });
  const day = h("input", { id: newId(), type: "date", value: new Date().toISOString().slice(0, 10), required: true });
  const problem = h("p", { class: "error", role: "alert" });
  return h("form", { class: "card", submit: (event) => {
    event.preventDefault();
    problem.textContent = draft.place === null ? "Choose a building department first."
      : app.begin(title.value, draft.place, day.value, draft.shop) ?? "";
  } }, h("h2", null, "A new job"),
  store.jobs().length === 0 && h("p", null, "Checks a reroof against the building code of its place before "
    + "the permit: say the place and the plan of the house, then answer what is asked."),
  h("div", { class: "field" }, h("label", { for: title.id, class: "asks" }, "What do you call this job?"), title),
  placePart(app, draft),
  h("div", { class: "field" }, h("label", { for: day.id, class: "asks" }, "Day of the permit application"), day),
  shopPart(draft), problem, h("button", { type: "submit", class: "main" }, "Begin"));
}

// A button that has to be pressed twice.
const removeButton = (what, remove) => button("Remove", (event) => {
  if (event.target.dataset.sure) remove();
  event.target.dataset.sure = "1";
  event.target.textContent = "Remove for good?";
  event.target.setAttribute("aria-label", `Remove ${what} for good?`);
}, { "aria-label": `Remove ${what}` });

function jobRow(app, id) {
  const job = store.job(id);
  if (!job) return null;
  const title = app.titleOf(job.text);
  return h("li", { class: "row" }, button(h("bdi", null, title), () => app.choose(id), {
    "aria-current": id === app.kept?.id ? "true" : undefined }),
  h("span", { class: "of" }, id === app.kept?.id && "open now, ", job.text === job.saved ? "as in its file" : "not saved to a file"),
  removeButton(title, () => app.remove(id)));
}

function shopRow(app, [name, text]) {
  return h("li", { class: "row" }, h("span", null, name),
    button("Save", () => saveFile(name, text), { "aria-label": `Save ${name}` }),
    removeButton(name, () => { store.removeShop(name); app.show(); }));
}

function shopCard(app) {
  const shops = Object.entries(store.shops());
  return card("Shop sheets", h("p", null, "The habits of a shop, said once for all its jobs."),
    shops.length > 0 && h("ul", { class: "rows" }, shops.map((shop) => shopRow(app, shop))),
    openFiles("Open a shop sheet", ".json", (name, text) => app.openShop(name, text)),
    app.kept && !app.wrong && button("Make one of this job's habits", () => app.liftShop()),
    app.lifted && h("p", { class: "error", role: "alert" }, app.lifted));
}

// Who made this page for its applicants.
function countyCard(app) {
  const { title, notice, telephone } = app.county ?? {};
  return (notice || telephone) && card(title, notice && h("p", null, notice),
    telephone && h("p", null, "Telephone ", h("a", { href: `tel:${telephone.replace(/[^0-9+]/g, "")}` }, telephone)));
}

export function jobsView(app) {
  const jobs = store.jobs();
  return [countyCard(app),
    jobs.length > 0 && card("Jobs in this browser",
      h("ul", { class: "rows" }, jobs.map((id) => jobRow(app, id)))),
    begin(app),
    card("Job files", h("p", null, "The same files that the eavemark program reads."),
      openFiles("Open job files", ".json", (name, text) => app.open(text))),
    shopCard(app)];
}

// A job that names a shop sheet which is not here.
export function missingShop(app) {
  const named = getAt(app.job, app.facts.head.shop);
  return typeof named === "string" && store.shop(named) === undefined
    && card("Its shop sheet is not here", h("p", null, `This job takes habits from ${named}.`),
      openFiles(`Open ${named}`, ".json", (name, text) => app.openShop(named, text)));
}

export const saveJob = (app) => {
  saveFile(fileName(app.title(), ".json"), app.kept.text);
  store.saved();
  app.show();
};
