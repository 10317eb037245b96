import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, names, on, planNames, shapes, skip } from "./browser.js";

after(close);

// Scrolls sideways: an element whose content is wider than itself and that isn't clipped away.
function overflows() {
  const wide = [];
  const room = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth > room) {
    wide.push(`the page: ${document.documentElement.scrollWidth} px of ${room}`);
  }
  for (const element of document.querySelectorAll("body *")) {
    if (element.closest("svg") || element.closest(".pane")) continue;
    const overflow = getComputedStyle(element).overflowX;
    if (overflow === "auto" || overflow === "scroll") {
      wide.push(`a scrolling ${element.tagName} ${element.className}`);
    }
    const box = element.getBoundingClientRect();
    if (box.width > 1 && box.right > room + 1 && !element.closest(".skip")) {
      wide.push(`${element.tagName} ${element.className}: ends at ${box.right} of ${room}`);
    }
  }
  return wide.slice(0, 5);
}

for (const name of names) {
  test(`${name} opens without an error, asks for nothing and fits 320 px`, { skip }, async () => {
    await on(name, {}, async (page) => {
      await page.mouse.wheel(0, 100_000);
      assert.deepEqual(page.faults, []);
      assert.equal(page.requests, 1);
      assert.notEqual(await page.title(), "");
      assert.equal(await page.locator("h1").count(), 1);
      await page.setViewportSize({ width: 320, height: 640 });
      await page.evaluate(() => {
        for (const more of document.querySelectorAll("details")) more.open = true;
      });
      assert.deepEqual(await page.evaluate(overflows), []);
    });
  });
}

for (const name of shapes) {
  test(`${name} is readable without scripts`, { skip }, async () => {
    await on(name, { javaScriptEnabled: false }, async (page) => {
      assert.deepEqual(page.faults, []);
      assert.ok(await page.locator("h1").isVisible());
      for (const section of await page.locator("main > section, main > h2").all()) {
        assert.ok(await section.isVisible());
      }
      // Controls that need a script don't stand there as if they worked.
      for (const id of ["stepper", "filters"]) {
        const control = page.locator(`#${id}`);
        if (await control.count()) assert.ok(!(await control.isVisible()), id);
      }
      if (await page.locator("#cloth").count()) {
        assert.equal(await page.locator("#cloth .later").count(), 0, "the last state shows");
        assert.ok(await page.locator(".windows.wide svg").first().isVisible());
      }
      if (await page.locator("#plans").count()) {
        const rows = page.locator("#plans tbody tr");
        assert.equal(await rows.count(), planNames.length);
        for (const row of await rows.all()) assert.ok(await row.isVisible());
      }
    });
  });
}
