// How many taps a visit takes, how many screens, and how far they reach below the phone's, from New visit to where the walk
// ends, as a technician makes them: the hands-on check of a clean car, the whole walk of it, a DANGER, a rubber support. A
// photo is one tap. Each has bounds that it stays under.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { FULL, technician } from "./technician.mjs";

let phone;
let taps = 0;
/** The screens in the order they were shown, each with how many of the phone's heights it reaches below the first. */
let screens = [];

const { tap, seen, hands, place } = journey(async (opened) => {
  ({ phone } = opened);
  await phone.page.goto(opened.desk.address);
  await phone.id("technician").fill("Kim Demo");
  await phone.id("save-technician").tap();
  await seen("new-visit");
});

const CLEAN = {
  ...FULL,
  "road-speed-vibration": "none",
  "idle-noise": "none",
  "engagement-setting": "standard",
  "neutral-2500-buzz": "none",
  "creep-noise": "none",
  "play-vertical": "none",
};
const RUBBER = { ...CLEAN, "play-vertical": "springy", "play-lateral": "springy", "support-look": "sound" };

/** Looks at the screen that is shown, before it is pressed. */
async function looked() {
  const [place, below] = await phone.page.evaluate(() => [
    location.hash,
    Math.max(0, document.documentElement.scrollHeight / innerHeight - 1),
  ]);
  const last = screens.at(-1);
  if (last?.place === place) last.below = Math.max(last.below, below);
  else screens.push({ place, below });
}

/** Hands that count what they press; a reading is pressed digit by digit. */
function counted(order) {
  const press = async (name) => {
    taps += 1;
    await looked();
    await tap(name);
  };
  return {
    ...hands,
    tap: (name) => press(name === "order-running-first" ? order : name),
    choose: async (name, file) => {
      taps += 1;
      await hands.choose(name, file);
    },
    write: async (_, text) => {
      for (const digit of text) {
        taps += 1;
        await phone.page.locator(".pad .keys").getByRole("button", { name: digit, exact: true }).tap();
      }
    },
  };
}

/** From New visit to the result. */
async function visit(plate, layout, order, answers, gearbox) {
  await phone.page.goto((await phone.page.url()).replace(/#.*/, "#/"));
  [taps, screens] = [0, []];
  const finger = counted(order);
  await finger.tap("new-visit");
  await phone.id("plate").fill(plate);
  await finger.tap(`layout-${layout}`);
  if (order !== "order-hands-on") await finger.tap(`gearbox-${gearbox}`);
  await finger.tap("save-intake");
  await phone.page.waitForFunction(() => location.hash.startsWith("#/visit/"));
  await phone.quiet();
  const found = technician(finger, answers);
  await found.walkTo("result");
  return { taps, screens: screens.length, below: screens.reduce((sum, { below }) => sum + below, 0) };
}

for (const [what, plate, layout, order, answers, word, [most, views, below], gearbox = "manual"] of [
  ["the hands-on check of a clean car", "TP 1", "rigid-engine-speed", "order-hands-on", CLEAN, "notice", [23, 9, 8]],
  [
    "the hands-on check of a clean rubber support",
    "TP 6",
    "rubber-centre",
    "order-hands-on",
    RUBBER,
    "notice",
    [23, 9, 8],
  ],
  ["a clean car, whole", "TP 2", "rigid-engine-speed", "order-running-first", CLEAN, "notice", [54, 20, 10]],
  [
    "a clean car with an automated clutch, whole",
    "TP 5",
    "rigid-engine-speed",
    "order-running-first",
    CLEAN,
    "notice",
    [67, 23, 12],
    "automated-clutch",
  ],
  [
    "a DANGER",
    "TP 3",
    "rigid-engine-speed",
    "order-running-first",
    { ...FULL, "clutch-pedal-effect": "same" },
    "danger",
    [59, 22, 12],
  ],
  ["a rubber support, whole", "TP 4", "rubber-centre", "order-running-first", RUBBER, "notice", [52, 19, 10]],
]) {
  test(`${what} takes at most ${most} taps and ${views} screens`, async (t) => {
    const taken = await visit(plate, layout, order, answers, gearbox);
    t.diagnostic(`${what}: ${taken.taps} taps, ${taken.screens} screens, ${taken.below.toFixed(1)} heights below`);
    const rating = phone.id("go-result").locator("[data-word]");
    assert.equal(await rating.getAttribute("data-word"), word);
    assert.ok(taken.taps <= most && taken.screens <= views && taken.below <= below, JSON.stringify(taken));
    if (order !== "order-hands-on") return;
    await tap("find-out-why");
    await tap("order-running-first");
    await phone.page.waitForFunction(() => /step|gates/.test(location.hash));
    assert.match(await place(), /road-speed-vibration|gates/);
  });
}
