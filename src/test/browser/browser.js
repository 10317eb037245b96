// A headless browser for the tests, and pages in it that write down whatever a report must not do.

import { chromium } from "playwright-core";
import { existsSync, readdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, "../../..");

export const jar = process.env.STRIKEOFF_JAR ?? join(root, "target/strikeoff.jar");
export const reports = process.env.STRIKEOFF_REPORTS ?? join(root, "reports");

const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];
const executable = PLACES.find((place) => place && existsSync(place));

/** Names of all written reports, the index among them. */
export const names = existsSync(reports)
  ? readdirSync(reports).filter((name) => name.endsWith(".html")).sort()
  : [];

/** Reports of single plans that could be judged or refused. */
export const planNames = names.filter((name) => !["index.html", "rules.html"].includes(name));

/** Reports with a shape of their own: of the class's hand-ins, which are alike, a few stand for all. */
const HAND_INS = /^(agnes|bram|cleo|dario|edda|falk|gerda|ivo|mina|otis|sunniva|tobias|uma|vigo)(-2)?\.html$/;
const STAND_FOR_ALL = ["agnes.html", "mina.html", "uma-2.html"];
export const shapes = names.filter((name) => !HAND_INS.test(name) || STAND_FOR_ALL.includes(name));

const missing = executable === undefined
  ? "no browser here: install chromium or set CHROMIUM"
  : !existsSync(jar)
    ? "no program here: mvn -DskipTests package"
    : planNames.length === 0
      ? "no reports here: java -jar target/strikeoff.jar check plans --reports reports --fail-on none"
      : "";
if (missing !== "" && process.env.CI) {
  throw new Error(missing);
}

/** Why tests are skipped on this machine; false where they run. */
export const skip = missing === "" ? false : missing;

let launched;

function browser() {
  launched ??= chromium.launch({ executablePath: executable, args: ["--no-sandbox"] });
  return launched;
}

export async function close() {
  if (launched) await (await launched).close();
}

/** A window of its own. */
export async function context(options = {}) {
  return (await browser()).newContext({ viewport: { width: 1280, height: 900 }, ...options });
}

/**
 * Opens a report and gives its page, with what went wrong in `page.faults`: errors of scripts and
 * of the console, broken policies, dialogs, and each request but the one for the file itself.
 */
export async function open(name, { folder = reports, ...options } = {}) {
  const held = await context(options);
  const page = await held.newPage();
  page.setDefaultTimeout(20_000);
  const faults = [];
  const url = pathToFileURL(join(folder, name)).href;
  page.requests = 0;
  await held.route("**/*", (route) => {
    page.requests++;
    const asked = route.request().url();
    if (asked === url && route.request().isNavigationRequest()) return route.continue();
    faults.push(`request for ${asked.slice(0, 200)}`);
    return route.abort();
  });
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`script: ${error.message}`));
  page.on("dialog", (dialog) => {
    faults.push(`dialog: ${dialog.message()}`);
    return dialog.dismiss();
  });
  page.on("popup", () => faults.push("a window opened"));
  page.faults = faults;
  await page.goto(url, { waitUntil: "load" });
  return page;
}

/** Runs the work on an opened report and closes it. */
export async function on(name, options, work) {
  const page = await open(name, options);
  try {
    return await work(page);
  } finally {
    await page.context().close();
  }
}
