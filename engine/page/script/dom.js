// Elements made of data: text is only ever text.
export function h(tag, settings, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(settings ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (typeof value === "function") element.addEventListener(name, value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.flat().filter((child) => child != null && child !== false));
  return element;
}

export const button = (words, click, settings) =>
  h("button", { type: "button", click, ...settings }, words);

// "asphalt_shingle" as it is spoken.
export const spoken = (word) => String(word).replace(/_/g, " ");

// Numbers labels and what they belong to.
let last = 0;
export const newId = () => `e${++last}`;

// Every match in a page that the engine wrote, as nodes of this one.
export function drawingsOf(html) {
  const page = new DOMParser().parseFromString(html ?? "", "text/html");
  return [...page.querySelectorAll("figure svg")].map((svg) => document.importNode(svg, true));
}

// Fills a page of the engine's, which prints by itself.
export function pageFrame(html, title) {
  return h("iframe", { class: "sheet", title, sandbox: "allow-same-origin allow-modals",
    srcdoc: html, load: (event) => {
      const body = event.target.contentDocument?.documentElement;
      if (body) event.target.height = body.scrollHeight + 24;
    } });
}

export function saveFile(name, text, type = "application/json") {
  const link = h("a", { download: name, href: URL.createObjectURL(new Blob([text], { type })) });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

export function openFile(accept, taken) {
  const input = h("input", { type: "file", accept, multiple: true, change: async () => {
    for (const file of input.files) taken(file.name, await file.text());
  } });
  return input;
}
