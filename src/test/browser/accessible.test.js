import assert from "node:assert/strict";
import { after, test } from "node:test";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { close, on, shapes, skip } from "./browser.js";

after(close);

const engine = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function violations(page, options = {}) {
  return page.evaluate(async (chosen) => {
    const result = await globalThis.axe.run(document, { resultTypes: ["violations"], ...chosen });
    return result.violations.map((v) => ({
      rule: v.id,
      help: v.help,
      at: v.nodes.slice(0, 3).map((n) => `${n.target.join(" ")}: ${n.failureSummary}`),
    }));
  }, options);
}

async function ready(page) {
  await page.evaluate(() => {
    for (const more of document.querySelectorAll("details")) more.open = true;
  });
  await page.evaluate(engine);
}

for (const name of shapes) {
  // The dark scheme changes nothing but colours.
  test(`${name} has no violation in light and in dark`, { skip }, async () => {
    await on(name, { bypassCSP: true, colorScheme: "light" }, async (page) => {
      await ready(page);
      assert.deepEqual(await violations(page), []);
      await page.emulateMedia({ colorScheme: "dark" });
      const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
      assert.notEqual(paper, "rgb(255, 255, 255)");
      const colours = { runOnly: { type: "tag", values: ["cat.color"] } };
      assert.deepEqual(await violations(page, colours), []);
    });
  });
}

for (const name of ["estuary-curtains.html", "uma.html", "index.html"]) {
  test(`${name} has no violation on a phone`, { skip }, async () => {
    const phone = { bypassCSP: true, viewport: { width: 320, height: 640 } };
    await on(name, phone, async (page) => {
      await ready(page);
      assert.deepEqual(await violations(page), []);
    });
  });
}
