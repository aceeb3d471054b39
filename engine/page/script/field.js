// One fact to be said: its question, unit and choices as the engine gives them.
import { button, h, newId, spoken } from "./dom.js";

const has = (entry, type) => [entry?.type].flat().includes(type);

// What an answer becomes in a job: a number if it is one, else as it was spoken.
const worth = (words, numeric) =>
  numeric && /^-?\d+(\.\d+)?$/.test(words.trim()) ? Number(words) : words.trim();

function choose(choices, now, said, group) {
  return h("div", { class: "choices", role: "group", "aria-labelledby": group },
    choices.map(([words, value]) => button(words, () => said(value),
      { "aria-pressed": String(JSON.stringify(value) === JSON.stringify(now)) })));
}

function several(choices, now, said, group) {
  const boxes = choices.map((choice) => h("input", { type: "checkbox", value: choice,
    checked: (now ?? []).includes(choice) }));
  return h("div", { role: "group", "aria-labelledby": group },
    h("div", { class: "choices" }, boxes.map((box, i) =>
      h("label", { class: "box" }, box, spoken(choices[i])))),
    button("OK", () => said(boxes.filter((box) => box.checked).map((box) => box.value)),
      { class: "take", "aria-describedby": group }));
}

function listOf(now, said, group) {
  const count = (now ?? []).length;
  return h("div", { class: "choices", role: "group", "aria-labelledby": group },
    count === 0 && button("None", () => said([])),
    button(count === 0 ? "One" : "One more", () => said([...(now ?? []), {}])),
    count === 0 && button("Two", () => said([{}, {}])));
}

// asked.drafted hears each letter, asked.left what stands there when the field is left.
function typed(asked, now, said, id) {
  const { whole, numeric } = asked;
  const value = () => worth(input.value, numeric || whole);
  const input = h("input", { id, type: asked.day ? "date" : "text", autocomplete: "off",
    autocapitalize: "off", spellcheck: "false", value: asked.draft ?? now ?? "",
    "aria-describedby": `${id}-hint`, inputmode: whole ? "numeric" : undefined,
    input: () => asked.drafted?.(input.value, value()),
    change: () => input.value.trim() !== "" && asked.left?.(value()) });
  return h("form", { class: "typed", submit: (event) => {
    event.preventDefault();
    if (input.value.trim() !== "") said(value());
  } }, input, asked.unit && h("span", { class: "unit" }, spoken(asked.unit)),
  h("button", { type: "submit", class: "take", "aria-describedby": `${id}-label` }, "OK"));
}

// asked: { question, where, unit, least, most, choices, type } of the engine's, entry: of
// the catalogue's schema, now: what is said already; extra: error, draft, drafted, left.
export function field(asked, entry, now, said, extra = {}) {
  const id = newId(), label = `${id}-label`;
  const choices = asked.choices?.length ? asked.choices
    : (entry?.enum ?? []).filter((choice) => choice !== null);
  const many = entry?.items?.enum?.filter((choice) => choice !== null);
  const whole = has(entry, "integer"), numeric = whole || has(entry, "number");
  let control;
  if (has(entry, "boolean"))
    control = choose([["Yes", true], ["No", false]], now, said, label);
  else if (many) control = several(many, now, said, label);
  else if (has(entry, "array")) control = listOf(now, said, label);
  else if (choices.length > 0)
    control = choose(choices.map((choice) => [spoken(choice), choice]), now, said, label);
  else
    control = typed({ ...asked, ...extra, numeric, whole, day: asked.type === "date" }, now, said, id);
  const alone = control.tagName === "FORM";
  const range = numeric && asked.least != null && asked.most != null
    ? `${asked.least} to ${asked.most}` : "";
  // A list is not written here, but counted.
  const question = asked.question.replace(/ \(an empty list [^)]*\)/, "");
  return h("div", { class: "field", "data-at": asked.pointer },
    h(alone ? "label" : "p", { id: label, for: alone && id, class: "asks" },
      question, asked.where && h("span", { class: "of" }, " ", asked.where)),
    control, h("p", { id: `${id}-hint`, class: "hint" }, range),
    h("p", { class: "error", role: "alert" }, extra.error || null));
}

// The catalogue's entry as a question.
export const askedOf = (pointer, entry, where) => ({ pointer, where, question: entry?.title ?? pointer,
  unit: /^In ([^.]+)\./.exec(entry?.description ?? "")?.[1] ?? null,
  least: entry?.minimum, most: entry?.maximum, choices: [] });
