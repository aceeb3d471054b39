// The one screen, and what it was when the job was last saved.
import { button, h, pageFrame } from "./dom.js";
import { screen, told } from "./screen.js";

export function checkView(app) {
  return [app.kept.text !== app.kept.saved && h("div", { class: "tools" },
    button(app.kept.saved ? "What changed since the last save" : "What changed since the beginning", () => app.showChanges())),
  app.changesText && told(app.changesText),
  ...screen(app),
  h("details", { class: "card", toggle: (event) => {
    if (!event.target.open || event.target.children.length > 1) return;
    const frame = pageFrame(app.all(), "Every finding, with sources and drawings");
    event.target.append(button("Print", () => frame.contentWindow.print()), frame);
  } }, h("summary", null, "Every finding in full, and drawings"))];
}
