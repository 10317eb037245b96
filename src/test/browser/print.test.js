import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { close, jar, names, on } from "./browser.js";
import { clear, printed, skip } from "./paper.js";

after(async () => {
  await close();
  clear();
});

/** The drawings that are higher than a page: the room within the margins of A4 and Letter, in CSS pixels. */
async function tooHigh(page) {
  await page.setViewportSize({ width: 688, height: 900 });
  await page.emulateMedia({ media: "print" });
  return page.evaluate(() =>
    [...document.querySelectorAll("svg.cloth, svg.run")]
      .map((e) => ({ kind: e.classList[0], height: e.getBoundingClientRect().height }))
      .filter(({ kind, height }) => height > (kind === "run" ? 640 : 930)));
}

async function printsWhole(page, name, format) {
  assert.deepEqual(await tooHigh(page), [], "drawings fit their pages");
  const { pages, things } = await printed(page, name, format);
  const cut = things.filter(({ first, last }) => first !== last);
  assert.deepEqual(cut, [], "no thing is cut");
  const found = things.filter(({ first }) => first !== undefined);
  assert.ok(found.length > things.length * 0.95, `${found.length} of ${things.length} found`);
  assert.deepEqual(pages.filter((text) => text === ""), [], "no empty page");
  for (const what of ["Skip to", "Step back", "Show all"]) {
    assert.ok(!pages.some((text) => text.includes(what)), `${what} is no use on paper`);
  }
  // A day sheet hangs on the wall alone.
  const isSheet = ({ thing }) => thing.startsWith("SECTION.sheet");
  const sheets = things.filter(isSheet).map(({ first }) => first);
  assert.equal(await page.locator(".sheet").count(), sheets.length);
  assert.equal(new Set(sheets).size, sheets.length, "each sheet has a page of its own");
  const beside = things.filter((it) =>
    sheets.includes(it.first) && !isSheet(it) && !/^(LI|LABEL)\./.test(it.thing));
  assert.deepEqual(beside, [], "nothing else stands on a sheet's page");
  return sheets.length;
}

// Each page on one of the two papers, in turn; a whole plan and the index on both. A print takes
// seconds, and what cuts a page on one paper cuts its like on the other.
const onBoth = ["index.html", "estuary-curtains.html"];

for (const [i, name] of names.entries()) {
  for (const format of onBoth.includes(name) ? ["A4", "Letter"] : [["A4", "Letter"][i % 2]]) {
    test(`${name} prints whole pages on ${format}`, { skip }, async () => {
      await on(name, {}, (page) => printsWhole(page, name, format));
    });
  }
}

test("an index has the heads of its plans on every page that lists some", { skip }, async () => {
  await on("index.html", {}, async (page) => {
    const words = await page.evaluate(() => ({
      heads: [...document.querySelectorAll("#plans thead th")].map((e) => e.textContent),
      files: [...document.querySelectorAll("#plans tbody th .note")].map((e) => e.textContent),
    }));
    assert.ok(words.heads.includes("Verdict"));
    const { pages } = await printed(page, "heads", "A4");
    const listing = pages.filter((text) => /\b(not )?printable\b/i.test(text) && /day \d+, \d\d:\d\d/.test(text));
    assert.ok(listing.length > 1);
    for (const text of listing) {
      for (const head of words.heads) assert.ok(text.includes(head), `${head} on ${text.slice(0, 200)}`);
    }
  });
});

/** Two thousand shells in three colours on one long table. */
function manyShells() {
  const frame = { frame: "20 x 18 cm", image: "4 x 4 cm", mesh: "43/cm" };
  const dye = { medium: "dye", group: "dichlorotriazine", colour: "#6f7f45" };
  return {
    plan: "Many shells",
    cloth: { fibre: "linen", length: "5.2 m", width: "1.2 m", washed: true },
    table: { length: "6 m", width: "1.4 m" },
    screens: { sand: frame, rust: frame, ink: frame },
    pastes: { sand: dye, rust: { ...dye, colour: "#b5653a" }, ink: { ...dye, colour: "#2b3440" } },
    designs: {
      shell: {
        size: "4 x 4 cm",
        separations: [
          { screen: "sand", paste: "sand", covers: "40 %" },
          { screen: "rust", paste: "rust", covers: "20 %" },
          { screen: "ink", paste: "ink", covers: "10 %", key: true },
        ],
      },
    },
    placements: {
      shells: {
        design: "shell", fill: "grid", pitch: "5 x 5 cm",
        from: "10 cm", to: "5.1 m", near: "8 cm", far: "1.12 m", clear: "0 cm",
      },
    },
    run: [{ mix: "all" }, { print: "shells", "every other": true }],
  };
}

test("two thousand placements make a report of bounded size and whole sheets", { skip }, async () => {
  const folder = mkdtempSync(join(tmpdir(), "strikeoff-many-"));
  try {
    const written = join(folder, "reports");
    mkdirSync(written);
    writeFileSync(join(folder, "many.yaml"), JSON.stringify(manyShells(), null, 1));
    const plan = join(folder, "many.yaml");
    execFileSync("java", ["-jar", jar, "check", plan, "--reports", written, "--fail-on", "none"]);
    const size = statSync(join(written, "many.html")).size;
    assert.ok(size < 1_000_000, `${size} bytes`);
    await on("many.html", { folder: written }, async (page) => {
      assert.deepEqual(page.faults, []);
      const placed = await page.locator(".figures div", { hasText: "Copies" }).textContent();
      assert.ok(Number(placed.replace(/\D/g, "")) >= 2000, placed);
      await page.getByRole("button", { name: "Bare cloth" }).click();
      assert.equal(await page.locator("#cloth .prints > :not(.later)").count(), 0);
      await page.getByRole("button", { name: "All printed" }).click();
      assert.ok((await page.locator("#cloth .prints > :not(.later)").count()) >= 3);
      assert.ok((await printsWhole(page, "many", "Letter")) > 1);
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});
