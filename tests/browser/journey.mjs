// What the journeys share: a desk and a phone for the tests of one file, and ways through the screens.

import assert from "node:assert/strict";
import { after, before } from "node:test";
import { openPhone, startDesk, violations } from "./stage.mjs";
import { asker } from "./tour.mjs";

/** Starts a desk and a phone before the file's tests, hands them to `ready`, and ends both after them. */
export function journey(ready = () => {}) {
  let desk;
  let phone;

  before(async () => {
    desk = await startDesk();
    phone = await openPhone(desk);
    await ready({ desk, phone, ask: asker(desk) });
  });

  after(async () => {
    await phone?.browser.close();
    await desk?.stop();
  });

  return {
    ...ways(() => ({ desk, phone })),
    /** The page and the core end at once, as with an empty battery, and the app is opened anew. */
    async killed() {
      await desk.kill();
      await desk.start();
      await phone.reopen();
    },
  };
}

/** Ways through the screens of a phone that `now` gives, with its desk. */
export function ways(now) {
  const page = () => now().phone.page;
  const id = (name) => now().phone.id(name);
  /** Brought to the middle first, as a finger would: half a pixel over the foot's edge is the foot's. */
  const tap = async (name) => {
    await id(name).evaluate((one) => one.scrollIntoView({ block: "center" }));
    await id(name).tap();
  };
  const seen = (name) => id(name).first().waitFor();
  const chosen = (name) => page().locator(`[data-testid="${name}"][aria-pressed="true"]`).waitFor();
  const place = () => page().evaluate(() => location.hash);

  /** Opens a screen of the visit at hand by its address. */
  async function go(where) {
    const visit = /#\/visit\/[^/]+/.exec(await place())[0];
    await page().goto(`${now().desk.origin}/${visit}/${where}`);
    await now().phone.quiet();
  }

  /** The screen as it is has no barrier that axe-core finds, and cannot be pushed sideways. */
  async function accessible(screen) {
    // The screen's width: a phone widens its window to what is too wide, so the window's would always do.
    const wide = await page().evaluate(() => document.documentElement.scrollWidth > globalThis.screen.width);
    assert.deepEqual([...(await violations(page())), ...(wide ? ["wider than the phone"] : [])], [], screen);
  }

  /** Opens a gate set and confirms its gates one by one. */
  async function confirmGates(set) {
    await go(`gates/${set}`);
    if (set === "lift") await id("lift-two-post").click();
    const gates = page().locator("[data-testid^=gate-]");
    await gates.first().waitFor();
    const count = await gates.count();
    assert.ok(count >= 5, `only ${count} gates in ${set}`);
    for (let index = 0; index < count; index += 1) {
      await gates.nth(index).click();
      await page().locator("[data-testid^=gate-][aria-pressed='true']").nth(index).waitFor();
    }
  }

  /** Says who is at work, as the first start asks. */
  async function sayWho(name = "Kim Demo") {
    await page().goto(now().desk.address);
    await id("technician").fill(name);
    await id("save-technician").click();
    await id("new-visit").waitFor();
  }

  /** Starts a visit of a car with a rigid support. */
  async function startVisit(plate) {
    await id("new-visit").click();
    await id("layout-rigid-engine-speed").click();
    await id("plate").fill(plate);
    await id("save-intake").click();
    await page().waitForFunction(() => location.hash.includes("/visit/"));
    await now().phone.quiet();
  }

  /** Draws a signature on the glass. */
  async function drawSignature() {
    const pad = id("sign-pad");
    await pad.scrollIntoViewIfNeeded();
    const box = await pad.boundingBox();
    const { mouse } = page();
    const at = (x, y) => [box.x + box.width * x, box.y + box.height * y];
    await mouse.move(...at(0.2, 0.4));
    await mouse.down();
    await mouse.move(...at(0.5, 0.7), { steps: 6 });
    await mouse.move(...at(0.8, 0.3), { steps: 6 });
    await mouse.up();
  }

  /** Hands for `technician.mjs`: a finger that finds what it presses by the name the screens give it for tests. */
  const hands = {
    tap,
    seen,
    chosen,
    place,
    write: (name, text) => id(name).fill(text),
    shown: (name) => id(name).isVisible(),
    choose: (name, file) => id(name).setInputFiles(file),
    movedOn: (before) => page().waitForFunction((hash) => location.hash !== hash, before),
    async all(beginning) {
      const found = page().locator(`[data-testid^="${beginning}"]`);
      await found.first().waitFor();
      return found.evaluateAll((each) => each.map((one) => one.dataset.testid));
    },
  };

  return { go, accessible, confirmGates, sayWho, startVisit, drawSignature, tap, seen, chosen, place, hands };
}
