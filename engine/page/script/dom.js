// Elements made of data: text is only ever text.
export function h(tag, settings, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(settings ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (typeof value === "function") element.addEventListener(name, value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.flat(3).filter((child) => child != null && child !== false));
  return element;
}

export const button = (words, click, settings) =>
  h("button", { type: "button", click, ...settings }, words);

export const card = (heading, ...children) =>
  h("section", { class: "card" }, h("h2", null, heading), ...children);

// "asphalt_shingle" as it is spoken.
export const spoken = (word) => String(word).replace(/_/g, " ");

// Numbers labels and what they belong to.
let last = 0;
export const newId = () => `e${++last}`;

// The drawing of that name among those that the engine wrote, as a node of this page.
export function drawingOf(html, name) {
  const page = new DOMParser().parseFromString(html ?? "", "text/html");
  const svg = page.querySelector(`figure[data-drawing="${name}"] svg`);
  return svg && document.importNode(svg, true);
}

// Fills a page of the engine's, which prints by itself.
export function pageFrame(html, title) {
  return h("iframe", { class: "sheet", title, sandbox: "allow-same-origin allow-modals",
    srcdoc: html, load: (event) => {
      const body = event.target.contentDocument?.documentElement;
      if (body) event.target.height = body.scrollHeight + 24;
    } });
}

// "Elm house, invented" as the name of a file.
export const fileName = (title, ending) =>
  `${title.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "job"}${ending}`;

export function saveFile(name, text, type = "application/json") {
  const link = h("a", { download: name, href: URL.createObjectURL(new Blob([text], { type })) });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

// Only where the browser can hand a file on.
export function shareButton(name, text, type) {
  const file = new File([text], name, { type });
  return navigator.canShare?.({ files: [file] })
    && button("Share", () => navigator.share({ files: [file], title: name }).catch(() => {}));
}

// A button that opens files.
export function openFiles(words, accept, taken) {
  return h("label", { class: "file" }, h("span", null, words),
    h("input", { type: "file", accept, multiple: true, change: async (event) => {
      for (const file of event.target.files) taken(file.name, await file.text());
    } }));
}

// Done when the browser has nothing more urgent to do.
export const later = (work) =>
  (globalThis.requestIdleCallback ?? ((run) => setTimeout(run, 30)))(work);
