// Prints a report and tells on which page each thing of it came to lie. Small marks at the start and
// the end of each thing that must stay whole go along into the print; poppler finds them there.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { skip as noBrowser } from "./browser.js";

const poppler = spawnSync("pdftotext", ["-v"]).error === undefined;
if (!poppler && process.env.CI) throw new Error("pdftotext is missing: install poppler-utils");

/** Why nothing can be printed on this machine; false where it can. */
export const skip = noBrowser || (poppler ? false : "no pdftotext here: install poppler-utils");

const folder = mkdtempSync(join(tmpdir(), "strikeoff-print-"));

export function clear() {
  rmSync(folder, { recursive: true });
}

const WHOLE = [
  ".ticket .figures > div", ".finding > p", ".quote", "tbody tr", ".jobs > li", ".jobs label",
  ".sheet", ".cards > div", ".cautions > li", ".legend",
].join(", ");

/** Puts a mark at both ends of each thing that must not be cut; says how many things those are. */
function mark(whole) {
  const things = [...document.querySelectorAll(whole)].filter((e) => e.getClientRects().length);
  const put = (thing, text, edge) => {
    const mark = document.createElement("i");
    mark.textContent = text;
    Object.assign(mark.style, {
      position: "absolute", font: "2px/1 monospace", whiteSpace: "nowrap", [edge]: "0", left: "0",
    });
    // A row's mark stands in its first cell.
    const home = thing.matches("tr") ? thing.cells[0] : thing;
    if (getComputedStyle(home).position === "static") home.style.position = "relative";
    home.append(mark);
  };
  things.forEach((thing, i) => {
    put(thing, `qq${i}aqq`, "top");
    put(thing, `qq${i}zqq`, "bottom");
  });
  return things.map((e) => `${e.tagName}.${e.className} ${e.textContent.trim().slice(0, 40)}`);
}

/**
 * Prints an opened report.
 *
 * @returns the text of each page, and each thing that must stay whole with its first and last page;
 *   those pages are undefined for a thing that the print leaves out
 */
export async function printed(page, name, format) {
  await page.emulateMedia({ media: "print" });
  const words = await page.evaluate(mark, WHOLE);
  const file = join(folder, `${name}-${format}.pdf`);
  await page.pdf({ path: file, format });
  const pages = execFileSync("pdftotext", ["-layout", file, "-"], { maxBuffer: 1 << 28 })
    .toString().split("\f").slice(0, -1);
  const where = new Map();
  pages.forEach((text, number) => {
    for (const [, at] of text.matchAll(/qq(\d+[az])qq/g)) where.set(at, number + 1);
  });
  const things = words.map((thing, i) => ({
    thing,
    first: where.get(`${i}a`),
    last: where.get(`${i}z`),
  }));
  return { pages: pages.map((text) => text.replace(/qq\d+[az]qq/g, "").trim()), things };
}
