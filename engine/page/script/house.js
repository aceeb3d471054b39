// The house by its plan, the roof drawn from the numbers, and all that the job says.
import { button, card, drawingOf, h, later, spoken } from "./dom.js";
import { askedOf, field } from "./field.js";
import { entryAt, getAt, leavesOf, setAt } from "./pointer.js";
import { questionsOf } from "./screen.js";
import { store } from "./store.js";

// Only the planes of a drawing and their edges: no words, measures or legend.
function trimmed(svg) {
  const planes = [...svg?.querySelectorAll("polygon[stroke=none][fill='#fff']") ?? []];
  if (planes.length === 0) return h("span", null);
  const corners = planes.flatMap((plane) => [...plane.points]);
  const isCorner = (x, y) => corners.some((corner) => Math.hypot(corner.x - x, corner.y - y) < 1);
  for (const shape of svg.querySelectorAll("text, title, desc, defs, rect, polygon, line")) {
    const [x1, y1, x2, y2] = ["x1", "y1", "x2", "y2"].map((name) => Number(shape.getAttribute(name)));
    const edge = shape.localName === "line" && isCorner(x1, y1) && isCorner(x2, y2);
    if (!edge && !planes.includes(shape)) shape.remove();
  }
  const xs = corners.map((corner) => corner.x), ys = corners.map((corner) => corner.y);
  const left = Math.min(...xs), top = Math.min(...ys);
  svg.setAttribute("viewBox", `${left - 4} ${top - 4} ${Math.max(...xs) - left + 8} ${Math.max(...ys) - top + 8}`);
  for (const name of ["role", "aria-labelledby", "width", "height"]) svg.removeAttribute(name);
  return svg;
}

// Pictures of the forms a house may have, drawn by the engine from a sample of each when
// there is time for it.
function pictures(app) {
  const { at, picture, forms, drawing } = app.facts.plan, pointer = `${at}/${picture}`;
  const now = getAt(app.job, pointer);
  return h("div", { class: "pictures", "data-at": pointer, role: "group", "aria-label": "Form of the roof" },
    Object.entries(forms).map(([form, sample]) => {
      const frame = h("span", { class: "frame", "aria-hidden": "true" });
      const draw = () => {
        app.samples[form] ??= trimmed(drawingOf(app.drawn(setAt(app.bare(), at,
          { [picture]: form, ...sample })), drawing));
        frame.replaceChildren(app.samples[form].cloneNode(true));
      };
      if (app.samples[form]) draw();
      else later(() => frame.isConnected && draw());
      return button(h("span", { class: "picture" }, frame, spoken(form)),
        () => app.say(pointer, form), { "aria-pressed": String(form === now) });
    }));
}

// The roof of the job with these facts as well, or why it is not drawn.
function redraw(app, place, facts) {
  let job = app.job;
  for (const [pointer, value] of facts) job = setAt(job, pointer, value);
  place.replaceChildren(drawingOf(app.drawn(job), app.facts.plan.drawing) ?? h("p", { class: "hint" },
    "The roof is drawn here when its numbers are in."));
}

// The numbers of the plan that the form needs. Each letter draws the roof anew; a number
// counts when its field is left.
function numbers(app, drawing) {
  const { at, picture, forms } = app.facts.plan;
  const sample = forms[getAt(app.job, `${at}/${picture}`)], typing = new Map();
  let timer;
  return leavesOf(sample ?? {}, at).map(([pointer]) => {
    const entry = entryAt(app.schema, pointer);
    const one = field(askedOf(pointer, entry), entry, getAt(app.job, pointer),
      (said) => app.say(pointer, said),
      { error: app.refused?.at === pointer && app.refused.why, draft: app.kept.drafts[pointer],
        drafted: (words, value) => {
          app.draft(pointer, words);
          typing.set(pointer, value);
          clearTimeout(timer);
          timer = setTimeout(() => redraw(app, drawing, typing), 150);
        },
        left: (value) => {
          one.querySelector(".error").textContent = app.sayQuietly(pointer, value) ?? "";
        } });
    return one;
  });
}

function plan(app) {
  const { at, picture, planes } = app.facts.plan;
  const stated = getAt(app.job, `${at}/${picture}`) !== undefined;
  const drawing = h("div", { class: "drawing" });
  if (stated || getAt(app.job, planes)) redraw(app, drawing, []);
  if (!stated && getAt(app.job, planes))
    return card("The roof", h("p", null, "This job states its planes one by one."), drawing);
  return card("Plan of the house", pictures(app), stated
    && h("div", { class: "beside" }, h("div", null, numbers(app, drawing)), drawing));
}

function shopChoice(app) {
  const names = Object.keys(store.shops()), pointer = app.facts.head.shop;
  const now = getAt(app.job, pointer);
  if (names.length === 0) return null;
  return card("Materials from the shop sheet", h("div", { class: "choices", role: "group", "aria-label": "Shop sheet" },
    [undefined, ...names].map((name) => button(name ?? "None", () => app.say(pointer, name),
      { "aria-pressed": String(name === now) }))));
}

// Everything the job says, to be changed. Only its head may not be taken back.
function saidSoFar(app) {
  const parts = new Map();
  for (const [pointer, value] of leavesOf(app.job)) {
    const part = pointer.split("/")[1], entry = app.schema.properties[part];
    if (entry?.minimum !== undefined && entry.minimum === entry.maximum) continue;
    const called = typeof app.job[part] === "object" ? entry?.title ?? spoken(part) : "The job itself";
    parts.set(called, [...(parts.get(called) ?? []), [pointer, value]]);
  }
  const one = ([pointer, value]) => {
    const entry = entryAt(app.schema, pointer);
    const where = pointer.split("/").slice(2, -1).map((word) => /^\d+$/.test(word) ? Number(word) + 1 : spoken(word));
    return h("div", { class: "fact" }, field(askedOf(pointer, entry, where.length > 0 && `(${where.join(" ")})`), entry, value,
      (said) => app.say(pointer, said), { error: app.refused?.at === pointer && app.refused.why }),
    !app.schema.required.includes(pointer.slice(1))
      && button("Take back", () => app.say(pointer, undefined), { "aria-label": `Take back: ${entry?.title ?? pointer}` }));
  };
  return [...parts].map(([called, facts]) => h("details", { "data-part": called, toggle: (event) => {
    if (event.target.open && event.target.children.length === 1) event.target.append(...facts.map(one));
  } }, h("summary", null, `${called} (${facts.length})`)));
}

export function houseView(app) {
  const { at, picture, planes } = app.facts.plan, part = `/${at.split("/")[1]}/`;
  const begun = getAt(app.job, `${at}/${picture}`) !== undefined || getAt(app.job, planes);
  const of = begun ? app.questions.filter((question) => question.pointer.startsWith(part)) : [];
  return [plan(app), of.length > 0 && card("What is on it", ...questionsOf(of, app)), shopChoice(app),
    button("On to the check", () => app.go("Check"), { class: "main" }),
    card("Said so far", ...saidSoFar(app))];
}
