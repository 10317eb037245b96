// Sheets for the wall: read at a metre, one page of paper each, ticked with wet gloves.

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
const folder = mkdtempSync(join(tmpdir(), "strikeoff-sheets-"));
const engine = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

if (!skip) {
  const named = ["estuary-curtains.yaml", "class/mina.yaml", "mistakes/hot-bath.yaml"];
  execFileSync("java", [
    "-jar", jar, "check", ...named.map((name) => join(plans, name)), "--sheets", folder, "--fail-on", "none",
  ]);
}
const all = skip ? [] : readdirSync(folder).sort();
const names = all.filter((name) => name !== "index.html");

after(() => {
  rmSync(folder, { recursive: true });
  clear();
  return close();
});

test("each plan has its sheets", { skip }, () => {
  assert.deepEqual(all, ["estuary-curtains.html", "hot-bath.html", "index.html", "mina.html"]);
});

for (const format of ["A4", "Letter"]) {
  test(`each sheet is one page of ${format}`, { skip }, async () => {
    for (const name of names) {
      await on(name, { folder }, async (page) => {
        const sheets = await page.locator(".sheet").count();
        const { pages } = await printed(page, `sheets-${name}`, format);
        assert.equal(pages.length, sheets, name);
      });
    }
  });
}

test("type on paper is read at a metre", { skip }, async () => {
  await on("estuary-curtains.html", { folder }, async (page) => {
    await page.emulateMedia({ media: "print" });
    const points = (selector) =>
      page.locator(selector).first().evaluate((e) => (parseFloat(getComputedStyle(e).fontSize) * 72) / 96);
    assert.ok((await points(".lines .what")) > 15.99);
    assert.ok((await points(".next")) > 13.99);
    assert.ok((await points(".dries")) > 13.99);
    assert.ok((await points(".clock")) > 19.99);
  });
});

test("ticks survive a reload, and the next thing to do is shown", { skip }, async () => {
  await on("estuary-curtains.html", { folder }, async (page) => {
    const boxes = page.locator(".lines input");
    await boxes.nth(0).check();
    await boxes.nth(1).check();
    await page.reload();
    assert.equal(await page.locator(".lines input:checked").count(), 2);
    const next = await page.locator(".next-up").evaluateAll((all) =>
      all.map((e) => [...document.querySelectorAll(".lines li")].indexOf(e)),
    );
    assert.deepEqual(next, [2]);
    await page.getByRole("button", { name: "Clear all ticks" }).click();
    await page.reload();
    assert.equal(await page.locator(".lines input:checked").count(), 0);
    assert.deepEqual(page.faults, []);
  });
});

test("a plan that is not printable says so on each sheet", { skip }, async () => {
  await on("hot-bath.html", { folder }, async (page) => {
    const sheets = await page.locator(".sheet").count();
    assert.equal(await page.locator(".sheet .warning", { hasText: "Not printable" }).count(), sheets);
  });
});

for (const [width, colorScheme] of [[1280, "light"], [1280, "dark"], [360, "light"]]) {
  test(`sheets have no violation at ${width} in ${colorScheme}`, { skip }, async () => {
    const options = { folder, bypassCSP: true, colorScheme, viewport: { width, height: 800 } };
    await on("estuary-curtains.html", options, async (page) => {
      await page.evaluate(engine);
      const found = await page.evaluate(async () => {
        const result = await globalThis.axe.run(document, { resultTypes: ["violations"] });
        return result.violations.map((v) => `${v.id}: ${v.nodes[0].failureSummary}`);
      });
      assert.deepEqual(found, []);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
      assert.equal(wide, false);
    });
  });
}
