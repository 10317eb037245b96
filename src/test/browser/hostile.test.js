// Plans are written by anybody. Whatever stands in their words must show as words.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { promisify } from "node:util";
import { close, jar, on, skip } from "./browser.js";

const folder = mkdtempSync(join(tmpdir(), "strikeoff-hostile-"));
const written = join(folder, "reports");
after(async () => {
  await close();
  rmSync(folder, { recursive: true });
});

// The last shows as it stands; the reader itself refuses the marks that turn the writing direction.
const BITES = [
  `<script>document.title="run"</script>`,
  `"><img src=x onerror=document.title="run">`,
  `' onmouseover='document.title="run"' x='`,
  `</style></svg><svg onload=document.title="run">`,
  `]]><!-- &lt;b&gt; &amp; --!>`,
  `javascript:document.title="run"`,
  "${7*7} {{7*7}} @template",
  `\u05D0\u05D1\u05D2 (\u0627\u0644) 12 [\u05D3]`,
];
const TURN = "\u202Egnitirw\u202C";
const LONG = "W".repeat(10_240);

/** The plan of a small border with the given words at every place that takes a person's words. */
function plan(word) {
  const [screen, other] = [word("screen"), word("other screen")];
  const [paste, ink] = [word("paste"), word("ink")];
  const [design, border, herons] = [word("design"), word("border"), word("herons")];
  const seam = word("seam");
  const frame = { frame: "50 x 44 cm", image: "31 x 24 cm", mesh: "43/cm" };
  const dye = { medium: "dye", group: "dichlorotriazine", colour: "#6f7f45", amount: "20 g" };
  const recipe = { dye: "5 g", urea: "18 g", water: "150 ml" };
  return {
    plan: word("title", 200),
    notes: word("notes", 9_900),
    cloth: { fibre: "linen", length: "2.1 m", width: "90 cm", washed: true },
    seams: { [seam]: { at: "1 m", allowance: "1 cm" } },
    table: { length: "1.4 m", width: "1.2 m" },
    crew: [word("one", 60), word("two", 60)],
    screens: { [screen]: frame, [other]: frame },
    pastes: { [paste]: { ...dye, recipe }, [ink]: { ...dye, colour: "#2b3440" } },
    designs: {
      [design]: {
        size: "30 x 22 cm",
        separations: [
          { screen, paste, covers: "40 %", trap: "1.5 mm" },
          { screen: other, paste: ink, covers: "10 %", key: true },
        ],
      },
    },
    placements: {
      [border]: { design, border: "near", from: "0 cm", to: "2.1 m", repeat: "30 cm", inset: "2 cm" },
      [herons]: { design, series: 3, pitch: "40 cm", start: "3 cm", across: "50 cm" },
    },
    accept: [{ rule: "care/drain", because: word("reason", 500) }],
    run: [
      { mix: "all" },
      { print: border },
      { print: herons },
      { sew: seam },
      { fix: "soak", bath: { "soda ash": "200 g", water: "5 L" }, temperature: "30 °C", for: "60 min" },
    ],
  };
}

/** The word after what it names, as long as a plan may have it there. */
const ending = (word) => (where, most = 80) => `${where} ${word}`.slice(0, most);
const plain = (where) => where;

/** Each plan by its file's name, with words that its page must show. */
const plans = new Map();
BITES.forEach((bite, i) => plans.set(`bite-${i}`, [bite, plan(ending(bite))]));
plans.set("long", ["W".repeat(9_000), plan(ending(LONG))]);
const refused = {
  "refused-key": [BITES[1].slice(0, 30), { ...plan(plain), [BITES[1]]: BITES[2] }],
  "refused-value": [BITES[0], { ...plan(plain), cloth: { length: BITES[0], width: "1 m" } }],
  "refused-turn": ["U+202E", plan(ending(TURN))],
  "refused-long": ["W".repeat(100), { ...plan(plain), [LONG]: LONG, hours: LONG }],
  "refused-name": ["W".repeat(100), plan((where) => `${where} ${"W".repeat(9_000)}`)],
};
Object.entries(refused).forEach(([name, made]) => plans.set(name, made));

if (!skip) {
  before(async () => {
    for (const [name, [, content]] of plans) {
      // JSON is YAML.
      writeFileSync(join(folder, `${name}.yaml`), JSON.stringify(content, null, 1));
    }
    // Some of the plans are meant to be unreadable: that ends with 3.
    const run = promisify(execFile)("java", ["-jar", jar, "check", folder, "--reports", written]);
    const ended = await run.catch((error) => error);
    assert.equal(ended.code, 3, ended.stderr);
    assert.doesNotMatch(ended.stdout + ended.stderr, /\tat |Exception/);
  });
}

async function harmless(name, bite) {
  await on(`${name}.html`, { folder: written }, async (page) => {
    await page.evaluate(() => {
      for (const more of document.querySelectorAll("details")) more.open = true;
      for (const element of document.querySelectorAll("body *")) {
        element.dispatchEvent(new MouseEvent("mouseover", { bubbles: true }));
      }
    });
    for (const button of await page.locator("button:enabled:visible").all()) {
      if (await button.isEnabled()) await button.click();
    }
    assert.deepEqual(page.faults, []);
    assert.notEqual(await page.title(), "run");
    assert.equal(await page.locator("script").count(), 1);
    assert.equal(await page.locator("img, iframe, object, embed, link, base").count(), 0);
    const text = (await page.evaluate(() => document.body.textContent)).replace(/\s+/g, " ");
    assert.ok(text.includes(bite.replace(/\s+/g, " ")), "the words show as they were written");
    const stray = await page.evaluate(() =>
      [...document.querySelectorAll("*")]
        .flatMap((element) => [...element.attributes].map((a) => a.name))
        .filter((attribute) => attribute.startsWith("on") || attribute === "style"),
    );
    assert.deepEqual(stray, []);
  });
}

for (const [name, [bite]] of plans) {
  test(`${name}: hostile words show as text and run nothing`, { skip }, () => harmless(name, bite));

  test(`${name}: hostile words fit a page 320 px wide`, { skip }, async () => {
    const phone = { folder: written, viewport: { width: 320, height: 640 } };
    await on(`${name}.html`, phone, async (page) => {
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(width <= 320, `${width} px`);
    });
  });
}

test("the plans are read or refused as meant", { skip }, () => {
  assert.deepEqual(
    readdirSync(written).sort(),
    [...plans.keys(), "index", "rules"].map((name) => `${name}.html`).sort(),
  );
});

test("the readable ones are judged, the others refused", { skip }, async () => {
  await on("index.html", { folder: written }, async (page) => {
    const verdicts = await page.evaluate(() =>
      Object.fromEntries(
        [...document.querySelectorAll("#plans tbody tr")].map((row) => [
          row.cells[0].querySelector("a").getAttribute("href").replace(".html", ""),
          row.dataset.verdict,
        ]),
      ),
    );
    for (const name of plans.keys()) {
      const refused = name.startsWith("refused");
      assert.equal(verdicts[name] === "unreadable", refused, `${name}: ${verdicts[name]}`);
    }
  });
});

test("the index of hostile plans runs nothing", { skip }, () => harmless("index", BITES[0]));
