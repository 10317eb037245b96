// Prints each report and looks where everything came to lie. Small marks at the start and the end
// of each thing that must stay whole go along into the print; poppler says on which page they are.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, names, on, skip as noBrowser } from "./browser.js";

const poppler = spawnSync("pdftotext", ["-v"]).error === undefined;
if (!poppler && process.env.CI) throw new Error("pdftotext is missing: install poppler-utils");
const skip = noBrowser || (poppler ? false : "no pdftotext here: install poppler-utils");

const folder = mkdtempSync(join(tmpdir(), "strikeoff-print-"));
after(async () => {
  await close();
  rmSync(folder, { recursive: true });
});

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

/** Prints a report; gives each page's text and the page of each mark. */
async function printed(page, name, format) {
  const file = join(folder, `${name}-${format}.pdf`);
  await page.pdf({ path: file, format });
  const pages = execFileSync("pdftotext", ["-layout", file, "-"], { maxBuffer: 1 << 26 })
    .toString().split("\f").slice(0, -1);
  const where = new Map();
  pages.forEach((text, number) => {
    for (const [, mark] of text.matchAll(/qq(\d+[az])qq/g)) where.set(mark, number + 1);
  });
  return { pages, where };
}

for (const name of names) {
  for (const format of ["A4", "Letter"]) {
    test(`${name} prints whole pages on ${format}`, { skip }, async () => {
      await on(name, {}, async (page) => {
        await page.emulateMedia({ media: "print" });
        const things = await page.evaluate(mark, WHOLE);
        const { pages, where } = await printed(page, name, format);
        const cut = [];
        const found = things.filter((thing, i) => {
          const [from, to] = [where.get(`${i}a`), where.get(`${i}z`)];
          if (from !== to) cut.push(`${thing}: pages ${from} and ${to}`);
          return from !== undefined;
        });
        assert.deepEqual(cut, []);
        assert.ok(found.length > things.length * 0.95, `${found.length} of ${things.length} found`);
        const bare = pages.map((text) => text.replace(/qq\d+[az]qq/g, "").trim());
        assert.deepEqual(bare.filter((text) => text === ""), [], "no empty page");
        for (const what of ["Skip to", "Step back", "Show all"]) {
          assert.ok(!bare.some((text) => text.includes(what)), `${what} is no use on paper`);
        }
        // A day sheet hangs on the wall alone.
        const sheets = things.flatMap((thing, i) =>
          thing.startsWith("SECTION.sheet") ? [where.get(`${i}a`)] : []);
        assert.equal(new Set(sheets).size, sheets.length, "each sheet has a page of its own");
        assert.equal(await page.locator(".sheet").count(), sheets.length);
        const after = things.findIndex((thing, i) =>
          sheets.includes(where.get(`${i}a`)) && !thing.startsWith("SECTION.sheet")
          && !thing.startsWith("LI.") && !thing.startsWith("LABEL."));
        assert.equal(after, -1, `${things[after]} stands on a day sheet`);
      });
    });
  }
}

test("drawings fit their pages", { skip }, async () => {
  for (const name of names) {
    // The room within the margins of A4 and Letter, upright and across, in CSS pixels.
    await on(name, { viewport: { width: 688, height: 900 } }, async (page) => {
      await page.emulateMedia({ media: "print" });
      const high = await page.evaluate(() =>
        [...document.querySelectorAll("svg.cloth, svg.run")]
          .map((e) => ({ kind: e.classList[0], height: e.getBoundingClientRect().height }))
          .filter(({ kind, height }) => height > (kind === "run" ? 640 : 930)));
      assert.deepEqual(high, [], name);
    });
  }
});
