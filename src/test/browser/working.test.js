import assert from "node:assert/strict";
import { after, test } from "node:test";
import { close, on, planNames, skip } from "./browser.js";

after(close);

const DEMO = "estuary-curtains.html";

/** What the drawing shows: how many prints, and how many placements of each wetness. */
const state = (page) =>
  page.evaluate(() => ({
    prints: document.querySelectorAll("#cloth .prints > :not(.later)").length,
    wet: document.querySelectorAll("#cloth .motif.wet").length,
    words: document.getElementById("step-words").textContent,
  }));

test("paint shows as wet while it is", { skip }, async () => {
  await on("paint-for-dye.html", {}, async (page) => {
    await page.getByRole("button", { name: "Bare cloth" }).click();
    let wet = 0;
    while (wet === 0 && (await page.getByRole("button", { name: "Step on" }).isEnabled())) {
      await page.getByRole("button", { name: "Step on" }).click();
      wet = (await state(page)).wet;
    }
    assert.ok(wet > 0, "some placement is wet at some step");
  });
});

test("buttons step through the run and the drawing follows", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const all = await state(page);
    assert.ok(all.prints > 50);
    const window = page.locator(".windows.wide svg").first();
    const printed = await window.screenshot();
    await page.getByRole("button", { name: "Bare cloth" }).click();
    assert.equal((await state(page)).prints, 0);
    assert.ok(!(await window.screenshot()).equals(printed), "the picture has changed");
    assert.ok(await page.getByRole("button", { name: "Step back" }).isDisabled());
    let before = 0;
    let wet = 0;
    while (await page.getByRole("button", { name: "Step on" }).isEnabled()) {
      await page.getByRole("button", { name: "Step on" }).click();
      const now = await state(page);
      assert.ok(now.prints >= before, `${now.words} takes prints away`);
      before = now.prints;
      wet = Math.max(wet, now.wet);
    }
    // Thickened dye has sunk in before the next step is drawn; paint has not, see below.
    assert.equal(wet, 0);
    assert.equal(before, all.prints);
    await page.getByRole("button", { name: "Step back" }).click();
    assert.notEqual((await state(page)).words, all.words);
    await page.getByRole("button", { name: "All printed" }).click();
    assert.deepEqual(await state(page), all);
    assert.deepEqual(page.faults, []);
  });
});

test("keys move the slider and the drawing follows", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const slider = page.getByRole("slider");
    await slider.focus();
    await page.keyboard.press("Home");
    assert.equal((await state(page)).prints, 0);
    let words = (await state(page)).words;
    for (let i = 0; i < 5; i++) {
      await page.keyboard.press("ArrowRight");
      const next = (await state(page)).words;
      assert.notEqual(next, words);
      words = next;
    }
    assert.ok((await state(page)).prints > 0);
    assert.equal(await slider.getAttribute("aria-valuetext"), words);
    await page.keyboard.press("End");
    assert.ok(await page.getByRole("button", { name: "Step on" }).isDisabled());
  });
});

test("the slider is dragged and the drawing follows", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const slider = page.getByRole("slider");
    await slider.scrollIntoViewIfNeeded();
    const all = await state(page);
    const box = await slider.boundingBox();
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    const half = await state(page);
    assert.ok(half.prints > 0 && half.prints < all.prints, half.words);
  });
});

test("frames and findings are shown and hidden", { skip }, async () => {
  await on("unsewn-seam.html", {}, async (page) => {
    const layer = (name) =>
      page.evaluate((n) => getComputedStyle(document.querySelector(`#cloth .${n}`)).display, name);
    assert.equal(await layer("frames"), "none");
    assert.notEqual(await layer("marks"), "none");
    await page.getByLabel("Frames").check();
    await page.getByLabel("Findings").uncheck();
    assert.notEqual(await layer("frames"), "none");
    assert.equal(await layer("marks"), "none");
  });
});

test("the table moves along the cloth and the seam is sewn in its step", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    await page.getByRole("button", { name: "Bare cloth" }).click();
    const places = new Set();
    const seam = [];
    while (await page.getByRole("button", { name: "Step on" }).isEnabled()) {
      await page.getByRole("button", { name: "Step on" }).click();
      const [tables, sewn, words] = await page.evaluate(() => [
        [...document.querySelectorAll("#cloth .table.now")].map((table) => table.getAttribute("x")),
        document.querySelector("#cloth .seam").classList.contains("sewn"),
        document.getElementById("step-words").textContent,
      ]);
      assert.ok(tables.length <= 1, words);
      tables.forEach((x) => places.add(x));
      if (sewn !== seam.at(-1)?.sewn) seam.push({ sewn, words });
    }
    assert.ok(places.size > 1, [...places].join());
    assert.equal(seam.length, 2);
    assert.match(seam[1].words, /sew centre/i);
  });
});

test("from across the room each printed motif has one colour", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const fill = () =>
      page.evaluate(() => getComputedStyle(document.querySelector("#cloth .motif")).fill);
    assert.equal(await fill(), "none");
    await page.getByLabel("From across the room").check();
    assert.match(await fill(), /^rgb/);
    await page.getByRole("button", { name: "Bare cloth" }).click();
    assert.equal(await fill(), "none", "nothing is printed yet");
  });
});

test("a line of a day sheet is ticked", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const box = page.locator(".sheet input[type=checkbox]").first();
    await box.focus();
    await page.keyboard.press("Space");
    assert.ok(await box.isChecked());
    const line = page.locator(".sheet label").first();
    await line.click();
    assert.ok(!(await box.isChecked()), "the whole line is the target");
  });
});

test("every link within a report leads somewhere", { skip }, async () => {
  for (const name of planNames) {
    await on(name, {}, async (page) => {
      const dead = await page.evaluate(() =>
        [...document.querySelectorAll("a[href^='#'], use")]
          .map((a) => a.getAttribute("href"))
          .filter((href) => !document.getElementById(href.slice(1))),
      );
      assert.deepEqual(dead, [], name);
    });
  }
});

const rows = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("#plans tbody tr")]
      .filter((row) => !row.hidden)
      .map((row) => ({
        name: row.cells[0].textContent.trim(),
        stops: Number(row.cells[2].textContent),
        verdict: row.dataset.verdict,
        rules: row.dataset.rules.split(" "),
      })),
  );

test("the index sorts by a column, up and down", { skip }, async () => {
  await on("index.html", {}, async (page) => {
    const head = page.getByRole("columnheader", { name: "Stops" });
    await head.getByRole("button").click();
    assert.equal(await head.getAttribute("aria-sort"), "descending");
    const down = (await rows(page)).map((row) => row.stops);
    assert.deepEqual(down, [...down].sort((a, b) => b - a));
    assert.ok(down[0] > down.at(-1));
    await page.keyboard.press("Enter");
    assert.equal(await head.getAttribute("aria-sort"), "ascending");
    const up = (await rows(page)).map((row) => row.stops);
    assert.deepEqual(up, [...up].sort((a, b) => a - b));
    assert.deepEqual(page.faults, []);
  });
});

test("the index filters by name, verdict, severity and rule", { skip }, async () => {
  await on("index.html", {}, async (page) => {
    const all = await rows(page);
    assert.equal(all.length, planNames.length);
    await page.getByLabel("Name").fill("soda");
    const soda = await rows(page);
    assert.ok(soda.length > 0 && soda.length < all.length);
    soda.forEach((row) => assert.match(row.name, /soda/i));
    await page.getByRole("button", { name: "Show all" }).click();
    await page.waitForFunction(
      (count) => document.querySelectorAll("#plans tbody tr:not([hidden])").length === count,
      all.length,
    );
    await page.getByLabel("Verdict").selectOption("unreadable");
    (await rows(page)).forEach((row) => assert.equal(row.verdict, "unreadable"));
    await page.getByLabel("Verdict").selectOption("");
    const rule = "seams/never-sewn";
    await page.locator("#f-rule").selectOption(rule);
    const tripped = await rows(page);
    assert.deepEqual(tripped, all.filter((row) => row.rules.includes(rule)));
    assert.match(await page.locator("#shown").textContent(), new RegExp(`^${tripped.length} of`));
    await page.locator("#f-rule").selectOption("");
    await page.getByLabel("Folder").selectOption("plans/class");
    const students = await rows(page);
    assert.ok(students.length > 1 && students.length < all.length);
    students.forEach((row) => assert.match(row.name, /plans\/class\//));
    await page.getByLabel("Folder").selectOption("");
    await page.getByLabel("Severity").selectOption("stop");
    assert.deepEqual(await rows(page), all.filter((row) => row.stops > 0));
  });
});

test("each plan of the index leads to its report", { skip }, async () => {
  await on("index.html", {}, async (page) => {
    const links = await page.evaluate(() =>
      [...document.querySelectorAll("#plans a")].map((a) => a.getAttribute("href")));
    // Beside the plans stand the rules that were broken, each on the page of rules.
    const plans = links.filter((link) => !link.startsWith("rules.html#"));
    assert.deepEqual([...plans].sort(), planNames);
  });
});

test("films are drawn, and what lies over another is cut out of it", { skip }, async () => {
  await on(DEMO, {}, async (page) => {
    const films = page.locator("#films svg.film");
    assert.ok((await films.count()) >= 10, "each film, each design together, and what is seen near");
    for (const film of await films.all()) {
      const drawn = await film.evaluate((svg) => [...svg.querySelectorAll("use, path")].map((e) => e.getBBox().width));
      assert.ok(drawn.length > 0 && drawn.every((width) => width > 0), "every reference leads to a shape");
    }
    const clipped = await page.evaluate(() =>
      [...document.querySelectorAll("[clip-path]")].map((e) => e.getAttribute("clip-path").slice(5, -1)),
    );
    assert.ok(clipped.length > 0);
    const there = await page.evaluate((ids) => ids.every((id) => document.getElementById(id)?.localName === "clipPath"), clipped);
    assert.ok(there, "every shape to cut by is there");
    assert.deepEqual(page.faults, []);
  });
});
