// What a pupil gets back: each plan on a sheet or two, with room to write on.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { createRequire } from "node:module";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { clear, printed, skip } from "./paper.js";
import { close, jar, on } from "./browser.js";

const plans = resolve(dirname(fileURLToPath(import.meta.url)), "../../../plans");
const folder = mkdtempSync(join(tmpdir(), "strikeoff-handed-"));
const engine = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

if (!skip) {
  const classes = ["class", "class-second"].map((name) => join(plans, name));
  const told = ["--reports", folder, "--hand-back", "--fail-on", "none", "-q"];
  execFileSync("java", ["-jar", jar, "check", ...classes, ...told], { stdio: "ignore" });
  const compared = ["--reports", join(folder, "compared"), "--fail-on", "none"];
  execFileSync("java", ["-jar", jar, "compare", ...classes, ...compared], { stdio: "ignore" });
}
const names = skip ? [] : readdirSync(folder).filter((name) => name.startsWith("pupil-")).sort();

after(() => {
  rmSync(folder, { recursive: true });
  clear();
  return close();
});

test("each pupil has a page", { skip }, () => {
  assert.equal(names.length, 7);
});

for (const format of ["A4", "Letter"]) {
  test(`each plan is handed back on two sheets of ${format} at most, nothing cut`, { skip }, async () => {
    for (const name of names) {
      await on(name, { folder }, async (page) => {
        assert.deepEqual(page.faults, []);
        const handed = await page.locator(".handed").count();
        const { pages, things } = await printed(page, name, format);
        assert.ok(pages.length <= 2 * handed, `${name}: ${pages.length} pages for ${handed} plans`);
        assert.deepEqual(things.filter(({ first, last }) => first !== last), [], name);
        assert.ok(pages.every((text) => !text.includes("nothing is kept")), name);
        assert.equal(pages.filter((text) => text.includes("Handed back to")).length, handed, name);
      });
    }
  });
}

const looks = [[1280, "light"], [1280, "dark"], [360, "light"], [360, "dark"]];
for (const name of ["pupil-otis.html", "pupil-uma.html", "compared/index.html"]) {
  for (const [width, colorScheme] of looks) {
    test(`${name} has no violation at ${width} in ${colorScheme}`, { skip }, async () => {
      const options = { folder, bypassCSP: true, colorScheme, viewport: { width, height: 800 } };
      await on(name, options, async (page) => {
        await page.evaluate(engine);
        const found = await page.evaluate(async () => {
          const result = await globalThis.axe.run(document, { resultTypes: ["violations"] });
          return result.violations.map((v) => `${v.id}: ${v.nodes[0].failureSummary}`);
        });
        assert.deepEqual(found, []);
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
      });
    });
  }
}
