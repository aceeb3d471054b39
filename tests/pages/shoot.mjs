// Pictures of every page, to be looked at: node shoot.mjs EAVEMARK HOME OUT_DIR JOB...
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { makePages, openBrowser, PHONE, DESKTOP, PAPER } from "./pages.mjs";

const [program, home, folder, ...jobs] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const pages = makePages(program, home, folder, jobs);
const browser = await openBrowser();
for (const page of pages) {
  for (const [name, viewport] of [["phone", PHONE], ["desktop", DESKTOP], ["print", PAPER]]) {
    const tab = await browser.newPage();
    await tab.setViewportSize(viewport);
    await tab.emulateMedia({ media: name === "print" ? "print" : "screen" });
    await tab.goto(page.url);
    await tab.screenshot({ path: join(folder, `${page.name}-${name}.png`), fullPage: true });
    if (name === "print") await tab.pdf({ path: join(folder, `${page.name}.pdf`), preferCSSPageSize: true });
    await tab.close();
  }
}
await browser.close();
