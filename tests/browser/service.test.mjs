// The service ends beneath the page: every screen that asks it for something says that it cannot be reached and
// what to do, shows nothing as given that is not on disk, and goes on from there once the service is back.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { photoOf } from "./technician.mjs";
import { enter, opened } from "./tour.mjs";
import { speaker } from "./words.mjs";

const say = speaker("en");

/** Screens of a visit with the engine running, and what is asked of the service there. */
const IN_VISIT = {
  "step/idle-noise": () => tap("answer-rattle"),
  "step/idle-speed": async () => {
    await tap("engine-warm");
    await hands.write("reading", "760");
    await tap("save-reading");
  },
  "step/road-speed-vibration": async () => {
    await tap("undo");
    await tap("undo-do");
  },
  "step/misfire-evidence": () => hands.choose("photo-input", photoOf("reader")),
  order: () => tap("order-under-car-first"),
  "leave/running": () => tap("leave"),
  intake: async () => {
    await phone.id("plate").fill("SV 2");
    await tap("save-intake");
  },
  finding: () => {},
  note: () => {},
  ledger: () => {},
  bench: () => {},
  outcome: async () => {
    await tap("outcome-loose-seat");
    await tap("outcome-save");
  },
};

/** What would be shown if it were on disk. */
const GIVEN = [
  '[data-testid="answer-rattle"][aria-pressed="true"]',
  '[data-testid="photo"]',
  '[data-testid="outcome"]',
];

const BESIDE = {
  "#/": () => {},
  "#/calibration": () => {},
  "#/workshop": () => {},
  "#/new": async () => {
    await tap("layout-rigid-engine-speed");
    await tap("save-intake");
  },
  "#/settings": () => tap("theme-dark"),
};

let desk;
let phone;
let ask;
let visit;
/** One that this page never opened. */
let other;
let before;

const { tap, chosen, place, sayWho, hands } = journey(async (begun) => {
  ({ desk, phone, ask } = begun);
  await sayWho();
  visit = await opened(ask, "SV 1");
  await enter(ask, visit, "running");
  other = await opened(ask, "SV 3");
});

const to = (hash) =>
  phone.page.evaluate((where) => {
    location.hash = where;
  }, hash);

async function shown(hash) {
  await to(hash);
  await phone.page.locator("h1").first().waitFor();
  await phone.page.waitForFunction(() => document.querySelector('[data-testid="waiting"]') === null);
}

/** What a screen says of a problem once it was asked for something. */
async function said(hash, asking, code = "") {
  // What the screen before said is no answer of this one.
  await phone.page.getByTestId("problem").evaluateAll((all) =>
    all.forEach((one) => {
      one.dataset.earlier = "true";
    }),
  );
  await to(hash);
  await asking();
  const problem = phone.page.locator(`[data-testid="problem"]${code}:not([data-earlier])`).first();
  await problem.waitFor({ timeout: 5000 }).catch(() => assert.fail(`${hash} says nothing`));
  return problem.innerText();
}

async function unanswered(hash, asking) {
  const text = await said(hash, asking, '[data-code="no-core"]');
  assert.ok(text.includes(say("ui-error-no-core")) && text.includes(say("ui-error-no-core-help")), `${hash}: ${text}`);
}

test("with the service gone, every screen says so and shows nothing as given", async () => {
  await to(`#/visit/${visit}/step/idle-noise`);
  await phone.id("answer-whine").tap();
  await chosen("answer-whine");
  // Rare screens are fetched when they are first shown; here they are on the device already.
  for (const rare of Object.keys(BESIDE)) await shown(rare);
  for (const rare of ["finding", "note", "ledger", "bench", "outcome"]) await shown(`#/visit/${visit}/${rare}`);
  before = (await ask({ ask: "look", visit })).ledger;
  await desk.kill();
  for (const [inside, asking] of Object.entries(IN_VISIT)) {
    await unanswered(`#/visit/${visit}/${inside}`, asking);
    if (inside === "step/idle-speed") assert.equal(await phone.id("step-band").count(), 0);
    for (const given of GIVEN) assert.equal(await phone.page.locator(given).count(), 0, `${inside} shows ${given}`);
  }
  for (const [hash, asking] of Object.entries(BESIDE)) await unanswered(hash, asking);
});

test("every screen of a visit that did not come says so, also after Back", async () => {
  await unanswered(`#/visit/${other}/result`, () => {});
  await unanswered(`#/visit/${other}/note`, () => {});
  await unanswered(`#/visit/${other}/note`, () => phone.page.goBack());
  assert.match(await place(), /result$/);
});

test("a screen that was never fetched says that it cannot be shown", async () => {
  const text = await said(`#/visit/${visit}/gauge/play-vertical`, () => {});
  assert.ok(text.includes("Nothing you recorded is lost."), text);
});

test("with the service back, all that was answered is there and nothing that was not", async () => {
  await desk.start();
  await phone.reopen();
  await phone.page.locator("h1").first().waitFor();
  assert.deepEqual((await ask({ ask: "look", visit })).ledger, before);
  await to(`#/visit/${visit}/step/idle-noise`);
  await chosen("answer-whine");
  await tap("answer-rattle");
  await chosen("answer-rattle");
  assert.equal((await ask({ ask: "look", visit })).ledger.entries, before.entries + 1);
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
