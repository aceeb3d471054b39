// The one screen, as the engine writes it; its questions answered in place, its rules
// explained on demand.
import { button, h, newId } from "./dom.js";
import { field } from "./field.js";
import { entryAt, getAt } from "./pointer.js";

// A question with what was said, half said, or refused.
function answerable(question, app) {
  const count = question.rules?.length ?? 0;
  // The name of a thing is the user's: written from right to left it turns nothing else.
  const where = [question.where && ["of ", h("bdi", null, question.where), " "], count > 0 && `(decides ${count})`];
  return field({ ...question, where },
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

// A report of the program's, 80 columns wide; on a narrow screen each of its lines is
// broken anew, what was gone on with in the next line put back.
export function told(report) {
  const text = report.trim().replace(/^ {2}/gm, "");
  const wide = matchMedia("(min-width: 48rem)").matches;
  return h("pre", { class: wide ? "said" : "said narrow", tabindex: "0" }, wide ? text : text.replace(/(\S)\n {8,}(?=\S)/g, "$1 ").replace(/(\S) {2,}(?=\S)/g, "$1  "));
}

// A report in parts, "-- of which each has a heading": how this job was judged, the last
// of them, stands open.
function explained(report) {
  const [about, ...parts] = report.split(/^-- /m);
  return [h("p", null, about.split("\n\n")[0]), ...parts.reverse().map((part, i) => {
    const [heading, ...lines] = part.split("\n");
    return h("details", { open: i === 0 }, h("summary", null, heading),
      told(lines.join("\n")));
  })];
}

// Takes the place of a rule's name in brackets.
function whyButton(mark, app) {
  const name = mark.textContent.replace(/^\[|\]$/g, ""), id = newId();
  const panel = h("div", { id, class: "why", hidden: true });
  const opener = button("Why?", () => {
    if (panel.childElementCount === 0) {
      const answer = app.engine.call("explain", { ...app.request(), words: name }, "text");
      panel.replaceChildren(...explained(answer.report ?? answer.problems));
    }
    panel.hidden = !panel.hidden;
    opener.setAttribute("aria-expanded", String(!panel.hidden));
  }, { "aria-expanded": "false", "aria-controls": id, "aria-label": `Why? ${name}` });
  mark.after(opener);
  mark.closest("li").append(panel);
}

// The parts of the engine's page, its questions replaced by such as can be answered.
export function screen(app) {
  const parts = [...app.page.querySelectorAll("main > section")].map((part) => {
    const own = document.importNode(part, true);
    const heading = own.querySelector("h2");
    if (heading.id === "answer") own.replaceChildren(heading, ...questionsOf(app.questions, app));
    for (const mark of own.querySelectorAll("li .rule")) whyButton(mark, app);
    return own;
  });
  return [h("p", { class: "count" }, app.count), ...parts,
    ...[...app.page.querySelectorAll("footer p")].map((line) => document.importNode(line, true))];
}
