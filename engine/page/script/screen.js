// The one screen, as the engine writes it; its questions answered in place.
import { h } from "./dom.js";
import { field } from "./field.js";
import { entryAt, getAt } from "./pointer.js";

// A question with what was said, half said, or refused.
export function answerable(question, app) {
  const count = question.rules?.length ?? 0;
  const where = [question.where && `of ${question.where}`, count > 0 && `(decides ${count})`];
  return field({ ...question, where: where.filter(Boolean).join(" ") },
    entryAt(app.schema, question.pointer), getAt(app.job, question.pointer),
    (said) => app.say(question.pointer, said),
    { error: app.refused?.at === question.pointer && app.refused.why,
      draft: app.kept.drafts[question.pointer],
      drafted: (words) => app.draft(question.pointer, words) });
}

// Questions in groups by where the answer is found.
export function questionsOf(asked, app) {
  const groups = new Map();
  for (const question of asked)
    groups.set(question.found, [...(groups.get(question.found) ?? []), question]);
  return [...groups].map(([found, inside]) => h("details", { open: true },
    h("summary", null, `${found} (${inside.length})`),
    inside.map((question) => answerable(question, app))));
}

// The parts of the engine's page, its questions replaced by such as can be answered.
export function screen(app) {
  const page = new DOMParser().parseFromString(app.page, "text/html");
  const parts = [...page.querySelectorAll("main > section")].map((part) => {
    const own = document.importNode(part, true);
    const heading = own.querySelector("h2");
    if (heading.id === "answer") own.replaceChildren(heading, ...questionsOf(app.questions, app));
    return own;
  });
  const count = [...page.querySelectorAll("header dd")].at(-1)?.textContent;
  return [h("p", { class: "count" }, count), ...parts,
    ...[...page.querySelectorAll("footer p")].map((line) => document.importNode(line, true))];
}
