// Forms on a phone against the real core: Enter goes on and only the last field sends, what came of a button is said
// beside it and gone once it is mended, and what somebody else writes meanwhile is shown.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { answer, enter, opened } from "./tour.mjs";

let phone;
let ask;
let visit;

const { accessible, sayWho, seen, tap, place } = journey((all) => ({ phone, ask } = all));

const focused = () => phone.page.evaluate(() => document.activeElement?.dataset.testid ?? "");
const enterKey = () => phone.page.keyboard.press("Enter");

async function goTo(inside) {
  await phone.page.evaluate((hash) => {
    location.hash = hash;
  }, `#/visit/${visit}/${inside}`);
  await phone.quiet();
}

/** What is named lies on the screen, and nothing covers its middle. */
async function inView(name) {
  await seen(name);
  const covered = await phone
    .id(name)
    .first()
    .evaluate((one) => {
      const { left, top, width, height } = one.getBoundingClientRect();
      const there = document.elementFromPoint(left + width / 2, top + height / 2);
      return !(there && (one.contains(there) || there.contains(one)));
    });
  assert.ok(!covered, `${name} is not in view`);
}

test("the first list offers a visit to practise on, until a car has come in", async () => {
  await sayWho();
  await seen("start-practice");
  await accessible("an empty list with its offer");
});

test("Enter in the plate goes on, and what is needed is said until it is given", async () => {
  await tap("new-visit");
  await phone.id("plate").fill("W".repeat(60));
  await phone.id("plate").focus();
  await enterKey();
  assert.equal(await focused(), "vin");
  assert.equal(await place(), "#/new");
  await phone.id("save-intake").tap();
  const needed = phone.page.locator("#layouts [role=alert]");
  await needed.waitFor();
  await tap("layout-rigid-engine-speed");
  await needed.waitFor({ state: "detached" });
  await accessible("intake with its layouts drawn");
  // The last field sends.
  await phone.id("owner-contact").focus();
  await enterKey();
  await phone.page.waitForFunction(() => location.hash.includes("/visit/"));
});

test("a long plate wraps in the list", async () => {
  await tap("go-home");
  await seen("visit-card");
  await accessible("a list with a long plate");
  assert.equal(await phone.id("start-practice").count(), 0);
});

test("what is recorded elsewhere is shown without a touch", async () => {
  visit = await opened(ask, "TW 5");
  await goTo("step/road-speed-vibration");
  await seen("answer-not-tried");
  await answer(ask, visit, "road-speed-vibration", "not-tried");
  await phone.page.locator('[data-testid="answer-not-tried"][aria-pressed="true"]').waitFor();
});

test("what somebody else wrote is named as theirs before it is taken back", async () => {
  await ask({ ask: "set-technician", name: "Robin Demo" });
  await phone.page.reload();
  await seen("undo");
  await phone.id("undo").tap();
  assert.match(await phone.id("undo-others").innerText(), /This is Kim Demo's entry/);
  await phone.id("undo-keep").tap();
  await ask({ ask: "set-technician", name: "Kim Demo" });
  await phone.page.reload();
  await seen("undo");
  await phone.id("undo").tap();
  await seen("undo-ask");
  assert.equal(await phone.id("undo-others").count(), 0);
});

test("a reading's refusal goes once the value is edited", async () => {
  await enter(ask, visit, "running");
  await goTo("step/idle-speed");
  await tap("engine-warm");
  await phone.id("reading").fill("99999");
  await phone.id("save-reading").tap();
  await inView("problem");
  await phone.id("reading").fill("760");
  await phone.id("problem").waitFor({ state: "detached" });
  await phone.id("save-reading").tap();
  await seen("step-band");
  await ask({ ask: "leave-part", visit });
});

test("Enter in a gauge's reading goes to the next, and what it proved is said at the button", async () => {
  await enter(ask, visit, "lift");
  await answer(ask, visit, "play-vertical", "unsure", "cold");
  await goTo("gauge/play-vertical");
  await phone.id("gauge-reading-0").fill("0.13");
  await enterKey();
  assert.equal(await focused(), "gauge-reading-1");
  assert.equal(await phone.id("gauge-result").count(), 0);
  await phone.id("gauge-reading-1").fill("thirteen");
  await phone.id("gauge-reading-2").fill("0.14");
  await tap("gauge-save");
  await inView("problem");
  assert.match(await phone.id("problem").innerText(), /^Reading 2: /);
  assert.equal(await phone.id("gauge-reading-1").getAttribute("aria-invalid"), "true");
  assert.equal(await phone.id("gauge-reading-0").getAttribute("aria-invalid"), null);
  await phone.id("gauge-reading-1").fill("0,12");
  await phone.id("problem").waitFor({ state: "detached" });
  await tap("gauge-save");
  await inView("gauge-recorded");
});

test("Enter in a bore's figures goes to the next and records nothing", async () => {
  const { gate_sets: sets } = (await ask({ ask: "look-at-bench", visit })).bench;
  const { gates } = sets.find((one) => one.id === "teardown");
  for (const gate of gates) await ask({ ask: "bench", visit, act: { gate: gate.id } });
  await goTo("bench");
  const found = phone.page.getByTestId("bench-found");
  await seen("bench-found");
  if (!(await found.evaluate((part) => part.open))) await found.locator("summary").first().click();
  await found.getByTestId("bore-0-0").fill("72.031");
  await enterKey();
  assert.equal(await focused(), "bore-0-1");
  assert.equal((await ask({ ask: "look-at-bench", visit })).bench.found, null);
  // Half a grid is refused, and said where it was sent.
  await found.getByTestId("bore-save").tap();
  await phone.quiet();
  await inView((await ask({ ask: "look-at-bench", visit })).bench.found === null ? "problem" : "recorded");
});

test("the outcome lists what is likeliest first, and says at the button that it is kept", async () => {
  await goTo("outcome");
  const { sorting } = await ask({ ask: "look", visit });
  const likeliest = sorting.causes.map((cause) => cause.id).filter((id) => id !== "normal-character");
  await seen(`outcome-${likeliest[0]}`);
  const listed = await phone.page
    .locator("[data-testid^=outcome-][aria-pressed]")
    .evaluateAll((rows) => rows.map((row) => row.dataset.testid.slice("outcome-".length)));
  assert.deepEqual(listed, [...likeliest, "something-else", "normal-character"]);
  await tap(`outcome-${likeliest[0]}`);
  await tap("outcome-save");
  await inView("outcome-kept");
  await tap(`outcome-${likeliest[1]}`);
  await phone.id("outcome-kept").waitFor({ state: "detached" });
});

test("no request left but to the app, and nothing was thrown", () => {
  assert.deepEqual([phone.strays, phone.faults], [[], []]);
});
