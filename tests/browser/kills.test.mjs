// The app ends on every screen of a whole visit, page and core at once, and is opened again: the same screen, the
// answer and the photo that were given, what was half written, and not an entry more or fewer.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isDeepStrictEqual } from "node:util";
import { journey } from "./journey.mjs";
import { shown, whole } from "./shown.mjs";
import { FULL, keyOf, stepsWith, technician } from "./technician.mjs";

let phone;
let ask;
let visit;
/** Screens on which the app was ended. */
const ended = new Set();

const { go, sayWho, tap, seen, place, killed, drawSignature, hands } = journey(async (opened) => {
  ({ phone, ask } = opened);
  await sayWho("Rowan Testcase");
});
const { screen, walkTo, confirmAll } = technician(hands, FULL, () => true, { oneByOne: true });

/** How many entries the visit has, and the hash that holds them together. */
async function entries() {
  if (!visit) return null;
  const { ledger } = await ask({ ask: "look", visit });
  assert.equal(ledger.broken_at, null);
  return ledger;
}

/** Ends everything here and sees that it is all there again. `given` must be on the screen to start with. */
async function endHere(given = () => {}) {
  const [before, ledger] = [await drawn(), await entries()];
  given(before);
  ended.add(await screen());
  await killed();
  const after = await drawn((found) => isDeepStrictEqual(found, before));
  assert.deepEqual(after, before);
  assert.deepEqual(await entries(), ledger);
}

/** The screen once everything is drawn, or as it is when waiting is in vain. */
async function drawn(enough = whole) {
  await phone.quiet();
  let found = await phone.page.evaluate(shown);
  for (let wait = 0; wait < 100 && !enough(found); wait += 1) {
    await phone.quiet();
    found = await phone.page.evaluate(shown);
  }
  return found;
}

const has = (pairs, wanted) =>
  assert.ok(
    pairs.some((pair) => isDeepStrictEqual(pair, wanted)),
    `${wanted} is not in ${pairs}`,
  );

/** Goes to a screen that the walk does not lead to, ends everything there, and goes back. */
async function beside(from, to, ready, given) {
  await go(to);
  await ready();
  await endHere(given);
  await go(from);
}

test("an intake half written is there again", async () => {
  await tap("new-visit");
  await tap("layout-rigid-engine-speed");
  await tap("seat-bare");
  await tap("gearbox-automated-clutch");
  await tap("sound-whine");
  await phone.id("plate").fill("KL 2500");
  await endHere(({ pressed, written }) => {
    assert.deepEqual(pressed, [
      "layout-rigid-engine-speed",
      "seat-bare",
      "sound-whine",
      "occasion-complaint",
      "gearbox-automated-clutch",
    ]);
    has(written, ["plate", "KL 2500"]);
  });
  await tap("save-intake");
  await phone.page.waitForFunction(() => location.hash.startsWith("#/visit/"));
  visit = /visit\/([^/]+)/.exec(await place())[1];
});

test("every step comes back with its answer and its photo, every gate with its tick", async () => {
  let pictures = 0;
  await walkTo("result", {
    async arrived(at) {
      const [kind, set] = at.split("/");
      if (kind === "gates") {
        await confirmAll(2);
        // What holds of a car that runs is ticked already before it creeps.
        await endHere(({ pressed }) => assert.equal(pressed.length, set === "creep" ? 3 : 2));
      } else if (kind === "order" || kind === "leave") await endHere();
    },
    async dealt(at) {
      const [kind, step] = at.split("/");
      const driven = { running: "driver/idle-noise", creep: "driver/creep-noise" }[step];
      if (kind === "gates" && driven) await beside(at, driven, () => seen("driver"));
      if (kind !== "step") return;
      // A photo was taken where one is asked for.
      const { steps } = await ask({ ask: "look", visit });
      const kept = steps.filter(({ id, photo }) => stepsWith(step).includes(id) && photo).length;
      pictures += kept;
      await endHere(({ pressed, written, photos }) => {
        for (const each of stepsWith(step)) {
          const value = FULL[each];
          if (typeof value === "number") assert.deepEqual(written, [["reading", String(value)]]);
          else assert.ok(pressed.includes(keyOf(`answer-${value}`, each)), `${each}: ${pressed}`);
        }
        assert.equal(photos.length, kept, `photos of ${step}`);
      });
      if (step !== "play-vertical") return;
      const looked = ({ photos }) => assert.ok(photos.length > 0);
      await beside(at, `photo/${step}`, () => seen("photo-stage"), looked);
      const reading = ["gauge-reading-0", "0.13"];
      const read = ({ written }) => has(written, reading);
      await beside(at, `gauge/${step}`, () => hands.write(...reading), read);
    },
  });
  await endHere();
  assert.ok(pictures >= 3, `${pictures} photos`);
  const { steps } = await ask({ ask: "look", visit });
  assert.deepEqual(steps.map(({ id }) => id).sort(), Object.keys(FULL).sort());
  const screens = steps.map(({ id }) => `step/${stepsWith(id)[0]}`);
  const missing = screens.filter((step) => !ended.has(step));
  assert.deepEqual(missing, []);
  for (const part of ["running", "creep", "lift"]) assert.ok(ended.has(`gates/${part}`), part);
  // From running on to creep nothing is left.
  for (const part of ["creep", "lift"]) assert.ok(ended.has(`leave/${part}`), part);
  for (const other of ["driver/idle-noise", "photo/play-vertical", "gauge/play-vertical"])
    assert.ok(ended.has(other), other);
});

test("papers, the signed receipt and the ledger are there again", async () => {
  await go("finding");
  await seen("make-pdf");
  await endHere(({ words }) => has(words, ["band", "danger"]));
  await go("note");
  await tap("decision-decline");
  await drawSignature();
  await tap("sign");
  await seen("signed");
  await endHere();
  await seen("signed");
  await go("ledger");
  await seen("entries");
  await endHere();
});

test("the bench's gates, a bore half written and a ring that was turned are there again", async () => {
  await go("bench");
  const gates = phone.page.locator("[data-testid=bench-gates-teardown] [data-testid^=bench-gate-]");
  await gates.first().waitFor();
  for (const gate of await gates.all()) {
    if (!(await gate.isVisible())) await phone.page.locator("[data-testid=bench-gates-teardown] summary").click();
    await gate.click();
    await phone.quiet();
  }
  // One at a time, as fingers do: what is answered to the first may move the second.
  for (const look of ["look-cracked-false", "look-ring_turned-false"]) {
    await phone.id(look).click();
    await phone.page.locator(`[data-testid="${look}"][aria-pressed="true"]`).waitFor();
  }
  await phone.page.locator("[data-testid=bench-next][data-part=found]").waitFor();
  await phone.page.locator("[data-testid=bench-ring] summary").click();
  await phone.id("ring-free").click();
  await phone.page.locator('[data-testid="ring-free"][aria-pressed="true"]').waitFor();
  await phone.id("bench-found").getByTestId("bore-0-0").fill("72.01");
  await endHere(({ written, pressed }) => {
    has(written, ["bore-0-0", "72.01"]);
    assert.ok(["look-cracked-false", "look-ring_turned-false", "ring-free"].every((one) => pressed.includes(one)));
  });
});

test("the outcome and the settings are there again", async () => {
  await go("outcome");
  await tap("outcome-loose-seat");
  await tap("outcome-save");
  await seen("outcome");
  await phone.page.reload();
  await seen("outcome");
  await endHere();
  await seen("outcome");
  for (const other of ["calibration", "settings", "workshop"]) {
    await phone.page.evaluate((to) => {
      location.hash = `#/${to}`;
    }, other);
    await endHere(({ place: at }) => assert.equal(at, `#/${other}`));
  }
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
