// On the roof: how far the work has come, what is measured there, and the card.
import { button, card, fileName, h, pageFrame, saveFile, shareButton, spoken } from "./dom.js";
import { entryAt } from "./pointer.js";
import { questionsOf } from "./screen.js";

export function roofView(app) {
  const stages = entryAt(app.schema, app.facts.head.stage).enum, stage = app.stage();
  const blanks = app.questions.filter((question) => question.stage === stage && stage !== stages[0]);
  const paper = app.engine.call("card", { ...app.request(), stage }, "html");
  const frame = paper.report && pageFrame(paper.report, `Card for ${stage}`);
  const name = fileName(app.title(), `-card-${stage}.html`);
  return [card("How far has the work come?",
    h("div", { class: "choices", role: "group", "aria-label": "Stage" }, stages.map((word) =>
      button(spoken(word), () => app.say(app.facts.head.stage, word), { "aria-pressed": String(word === stage) })))),
  blanks.length > 0 && card("Measured or seen on the roof", ...questionsOf(blanks, app)),
  card("The card to take up", frame && h("div", { class: "tools" },
    button("Print the card", () => frame.contentWindow.print(), { class: "main" }),
    button("Save as a page", () => saveFile(name, paper.report, "text/html")),
    shareButton(name, paper.report, "text/html")), frame,
  paper.problems && h("p", { class: "error" }, paper.problems))];
}
