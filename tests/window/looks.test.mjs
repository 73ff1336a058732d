// Every screen in the app's own window, as WebKit draws it: in each theme, chosen in the settings, targets, gaps,
// contrast and nothing cut off or pushed sideways; with text at 200 %; and no barrier that axe-core finds.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { measure } from "../browser/measure.mjs";
import { prepare } from "../browser/tour.mjs";
import { openWindow } from "./window.mjs";

const AXE = createRequire(new URL("../browser/package.json", import.meta.url)).resolve("axe-core/axe.min.js");
const GROUNDS = { dark: "rgb(20, 24, 27)", daylight: "rgb(244, 241, 233)", contrast: "rgb(0, 0, 0)" };

let window;
let screens;

before(async () => {
  window = await openWindow();
  screens = await prepare(window.core);
  // What the settings say on the device: which visit is there to practise on.
  const { practice } = screens.find((screen) => screen.practice);
  await window.run(`localStorage.setItem("steady.practice", "${practice}")`);
  await window.run("location.reload()");
  await window.hands.seen("new-visit");
});

after(() => window?.close());

/** Goes to a screen and waits until it is there. */
async function show(screen) {
  await window.goTo(screen.hash);
  await window.until(screen.name, () =>
    window.run(`
    return document.querySelector("h1") !== null && document.querySelector("[data-testid=waiting]") === null`),
  );
  if (screen.unfold) await window.run(`for (const part of document.querySelectorAll("details")) part.open = true`);
  await window.later("const done = arguments[0]; document.fonts.ready.then(() => done())");
  await window.quiet();
}

/** Faults of every screen, a line each. */
async function tour(look) {
  const lines = [];
  for (const screen of screens) {
    await show(screen);
    lines.push(...(await look()).map((fault) => `${screen.name}: ${fault}`));
  }
  return lines;
}

const measured = () => window.run(`return (${measure})(false)`);

for (const theme of Object.keys(GROUNDS)) {
  test(`every screen of the ${theme} theme fits gloves and eyes`, async () => {
    await show({ name: "settings", hash: "#/settings" });
    await window.hands.tap(`theme-${theme}`);
    await window.hands.chosen(`theme-${theme}`);
    assert.equal(await window.run("return getComputedStyle(document.body).backgroundColor"), GROUNDS[theme]);
    assert.deepEqual(await tour(measured), []);
  });
}

test("no screen has a barrier that axe-core finds", async () => {
  const source = await readFile(AXE, "utf8");
  await window.run(`${source}; window.axe = axe`);
  const look = () =>
    window.later(`
    const done = arguments[0];
    window.axe.run(document, { resultTypes: ["violations"] }).then(
      ({ violations }) => done(violations.map(({ id, nodes }) => id + ": " + nodes.map(({ target }) => target))),
      (problem) => done([String(problem)]),
    )`);
  assert.deepEqual(await tour(look), []);
});

test("every screen fits a turned window", async () => {
  // As low as the window gets.
  await window.resize(860, 560);
  assert.deepEqual(await tour(measured), []);
  await window.resize(420, 860);
});

test("nothing is lost with text at 200 %", async () => {
  // WebKitGTK has no setting of the person's that enlarges text alone. All sizes are in rem, so the root stands in;
  // what the stylesheets ask of the height does not follow it, so the window is as low as it gets.
  await window.run("document.documentElement.style.fontSize = '36px'");
  await window.resize(420, 560);
  assert.deepEqual(await tour(measured), []);
  await show(screens.find(({ name }) => name === "play"));
  await window.hands.tap("temperature-cold");
  await window.hands.tap("answer-unsure-play-vertical");
  await window.hands.chosen("answer-unsure-play-vertical");
});

test("the measurements notice what they are for", async () => {
  await window.run("document.documentElement.style.fontSize = ''");
  await show(screens.find(({ name }) => name === "order"));
  assert.deepEqual(await measured(), []);
  await window.run(`
    const plate = document.querySelector("[data-testid=order-running-first]");
    plate.style.cssText = "width: 500px; min-height: 0; height: 40px"`);
  const found = await measured();
  assert.ok(
    found.some((fault) => /^target of \d+ by 40, not 64/.test(fault)),
    found.join("; "),
  );
  assert.ok(
    found.some((fault) => /^wider than the screen/.test(fault)),
    found.join("; "),
  );
});
