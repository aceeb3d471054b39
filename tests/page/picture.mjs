// Draws two screens of the page as one SVG, for the README: boxes, words and drawings as
// the browser laid them out, and nothing else of it.
//
//   node picture.mjs BUILD_FOLDER SOURCE_FOLDER OUT
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { finish, need, openBrowser, openJob, openPage } from "./open.mjs";

const [build, source, out] = process.argv.slice(2);
const WIDTH = 360, HEIGHT = 740, GAP = 24, LARGEST = 100 * 1000;

// In the page: what is seen of it, as SVG.
function drawn(height) {
  const parts = [], escape = (text) => text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);
  const short = (number) => String(Math.round(number * 10) / 10);
  const seen = (box) => box.width > 0 && box.height > 0 && box.top < height && box.bottom > 0;
  const fill = (style) => /, 0\)$/.test(style.backgroundColor) ? "none" : style.backgroundColor;
  const boxOf = (element, style) => {
    const box = element.getBoundingClientRect(), edge = parseFloat(style.borderTopWidth), left = parseFloat(style.borderLeftWidth);
    if (!seen(box) || (fill(style) === "none" && edge + left + parseFloat(style.borderBottomWidth) === 0)) return;
    const clear = /, 0\)$/.test(style.borderTopColor);
    parts.push(`<rect x="${short(box.left + edge / 2)}" y="${short(box.top + edge / 2)}" width="${short(box.width - edge)}" `
      + `height="${short(box.height - edge)}" fill="${fill(style)}"${edge > 0 && !clear ? ` stroke="${style.borderTopColor}" stroke-width="${edge}"` : ""}/>`);
    if (left > edge) parts.push(`<rect x="${short(box.left)}" y="${short(box.top)}" width="${left}" height="${short(box.height)}" fill="${style.borderLeftColor}"/>`);
    const under = parseFloat(style.borderBottomWidth);
    if (under > edge && !/, 0\)$/.test(style.borderBottomColor))
      parts.push(`<rect x="${short(box.left)}" y="${short(box.bottom - under)}" width="${short(box.width)}" height="${under}" fill="${style.borderBottomColor}"/>`);
  };
  // Each line of a text by itself, as wide as it was; a line may end at a hyphen.
  const linesOf = (node, style) => {
    const range = document.createRange(), lines = [], { data } = node;
    const end = style.textOverflow === "ellipsis" ? node.parentElement.getBoundingClientRect().right : Infinity;
    for (const { 0: word, index } of data.matchAll(/[^\s-]*-|[^\s-]+/g)) {
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const { left, right, top, bottom, width, height } = range.getBoundingClientRect(), last = lines.at(-1);
      if (right > end) {
        last.words += " ...";
        last.right = null;
        break;
      }
      if (last && Math.abs(last.top - top) < 3) {
        last.words += (/\s/.test(data[index - 1] ?? "x") ? " " : "") + word;
        last.right = right;
      } else lines.push({ words: word, left, right, top, bottom, width, height });
    }
    for (const line of lines.filter(seen)) {
      const size = parseFloat(style.fontSize), words = style.textTransform === "uppercase" ? line.words.toUpperCase() : line.words;
      parts.push(`<text x="${short(line.left)}" y="${short((line.top + line.bottom) / 2 + size * 0.36)}" font-size="${short(size)}"`
        + `${Number(style.fontWeight) > 500 ? ' font-weight="700"' : ""} fill="${style.color}"${line.right === null ? "" : ` textLength="${short(line.right - line.left)}"`}>${escape(words)}</text>`);
    }
  };
  const walk = (element) => {
    const style = getComputedStyle(element);
    if (style.visibility === "hidden" || style.display === "none" || element.closest(".unseen, .skip")) return;
    if (element.localName === "svg") {
      const box = element.getBoundingClientRect();
      if (!seen(box)) return;
      const copy = element.cloneNode(true);
      copy.querySelectorAll("title, desc, defs").forEach((other) => other.remove());
      for (const name of ["class", "role", "aria-labelledby"]) copy.removeAttribute(name);
      for (const [name, value] of [["x", box.left], ["y", box.top], ["width", box.width], ["height", box.height]]) copy.setAttribute(name, short(value));
      parts.push(copy.outerHTML);
      return;
    }
    boxOf(element, style);
    if (element.localName === "input" && element.value) {
      const box = element.getBoundingClientRect();
      if (seen(box)) parts.push(`<text x="${short(box.left + 12)}" y="${short(box.top + box.height / 2 + 6)}" font-size="17" fill="${style.color}">${escape(element.value)}</text>`);
    }
    for (const child of element.childNodes)
      if (child.nodeType === 1) walk(child);
      else if (child.nodeType === 3) linesOf(child, style);
  };
  const bar = document.querySelector(".bar");
  for (const element of document.body.children) if (element !== bar) walk(element);
  walk(bar);
  return parts.join("\n");
}

const screen = async (tab, at) => `<svg x="${at}" y="0" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}">\n`
  + `<rect width="${WIDTH}" height="${HEIGHT}" fill="#efe9df"/>\n${await tab.evaluate(drawn, HEIGHT)}\n`
  + `<rect x="1" y="1" width="${WIDTH - 2}" height="${HEIGHT - 2}" fill="none" stroke="#544e46" stroke-width="2"/></svg>`;
const settled = (tab) => tab.evaluate(() => new Promise((done) => setTimeout(done, 800)));

const browser = await openBrowser();
try {
  const tab = await openPage(browser, join(build, "roof.html"), { width: WIDTH, height: HEIGHT });
  await openJob(tab, join(source, "examples/porch-tear-off/job.json"));
  await tab.locator("#fix").waitFor();
  await settled(tab);
  const check = await screen(tab, WIDTH + GAP);
  await tab.locator("#tabs button", { hasText: "Jobs" }).click();
  await tab.locator("form input[type=text]").first().fill("Elm house, invented");
  await tab.fill("input[type=search]", "dunmarrow");
  await tab.locator(".found button").first().click();
  await tab.locator("button.main").click();
  await tab.locator(".pictures button", { hasText: /^hip$/ }).click();
  for (const [index, words] of ["42", "28", "6:12", "12"].entries()) {
    await tab.locator("form.typed input").nth(index).fill(words);
    await tab.locator("form.typed input").nth(index).press("Tab");
  }
  await tab.locator(".drawing svg").waitFor();
  await settled(tab);
  await tab.evaluate(() => scrollTo(0, document.querySelector(".drawing").getBoundingClientRect().top + scrollY - 420));
  await settled(tab);
  const house = await screen(tab, 0);
  const picture = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${2 * WIDTH + GAP} ${HEIGHT}" width="${2 * WIDTH + GAP}" height="${HEIGHT}" `
    + `font-family="DejaVu Sans,Verdana,sans-serif" role="img"><title>Two screens of the page: the plan of a house, and what is to be mended</title>\n${house}\n${check}\n</svg>\n`;
  need(picture.length <= LARGEST, `the picture has ${picture.length} bytes`);
  writeFileSync(out, picture);
  finish(`picture: ${picture.length} bytes`);
} finally {
  await browser.close();
}
