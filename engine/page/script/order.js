// What is bought, to hand to the supplier.
import { button, fileName, h, saveFile, shareButton } from "./dom.js";

// Lines under the headings they come with.
function byHeading(lines) {
  const groups = new Map();
  for (const line of lines) groups.set(line.heading, [...(groups.get(line.heading) ?? []), line]);
  return [...groups];
}

const row = (line) => h("tr", null, h("td", { class: "amount" }, String(line.count)), h("td", null, line.unit),
  h("td", null, line.item, line.for && h("span", { class: "of" }, ` ${line.for}`)));

export function orderView(app) {
  const answer = app.engine.call("order", app.request(), "json");
  if (answer.report === null) return [h("p", { class: "error" }, answer.problems)];
  const list = JSON.parse(answer.report), text = app.engine.call("order", app.request(), "text").report;
  const uncounted = list.quantities.filter((one) => one.heading && one.outcome === "open");
  const name = fileName(app.title(), "-order");
  return [h("section", { class: "card order" }, h("h2", null, "Order list"),
    h("p", null, h("bdi", null, list.job), `. ${list.jurisdiction.title}, ${list.date}.`),
    h("div", { class: "tools" }, button("Print the list", () => print(), { class: "main" }),
      button("Save as text", () => saveFile(`${name}.txt`, text, "text/plain")),
      button("Save as CSV", () => saveFile(`${name}.csv`,
        app.engine.call("order", app.request(), "csv").report, "text/csv")),
      shareButton(`${name}.txt`, text, "text/plain")),
    list.order.length === 0 && h("p", null, "Nothing can be counted yet."),
    h("table", { class: "list" }, byHeading(list.order).map(([heading, lines]) => h("tbody", null,
      h("tr", null, h("th", { colspan: "3", scope: "rowgroup" }, heading)), lines.map(row)))),
    uncounted.length > 0 && [h("h3", null, "Not counted yet, and nothing is guessed"),
      h("ul", { class: "lines" }, uncounted.map((one) =>
        h("li", null, `${one.title}${one.where ? `, ${one.where}` : ""}: ${one.says}`)))],
    h("p", { class: "gloss" }, list.caution))];
}
