// What the journeys share: a desk and a phone for the tests of one file, and ways through the screens.

import assert from "node:assert/strict";
import { after, before } from "node:test";
import { openPhone, startDesk, violations } from "./stage.mjs";

/** Starts a desk and a phone before the file's tests, hands them to `ready`, and ends both after them. */
export function journey(ready) {
  let desk;
  let phone;

  before(async () => {
    desk = await startDesk();
    phone = await openPhone(desk);
    phone.page.setDefaultTimeout(15_000);
    await ready({ desk, phone });
  });

  after(async () => {
    await phone?.browser.close();
    await desk?.stop();
  });

  /** Opens a screen of the visit at hand by its address. */
  async function go(where) {
    const visit = /#\/visit\/[^/]+/.exec(await phone.page.evaluate(() => location.hash))[0];
    await phone.page.goto(`${desk.origin}/${visit}/${where}`);
    await phone.page.waitForTimeout(300);
  }

  /** The screen as it is has no barrier that axe-core finds, and cannot be pushed sideways. */
  async function accessible(screen) {
    // The screen's width: a phone widens its window to what is too wide, so the window's would always do.
    const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth > globalThis.screen.width);
    assert.deepEqual([...(await violations(phone.page)), ...(wide ? ["wider than the phone"] : [])], [], screen);
  }

  /** Opens a gate set and confirms its gates one by one. */
  async function confirmGates(set) {
    await go(`gates/${set}`);
    const gates = phone.page.locator("[data-testid^=gate-]");
    await gates.first().waitFor();
    const count = await gates.count();
    assert.ok(count >= 5, `only ${count} gates in ${set}`);
    for (let index = 0; index < count; index += 1) {
      await gates.nth(index).click();
      await phone.page.locator("[data-testid^=gate-][aria-pressed='true']").nth(index).waitFor();
    }
  }

  /** Says who is at work, as the first start asks. */
  async function sayWho() {
    await phone.page.goto(desk.address);
    await phone.id("technician").fill("Kim Marsh");
    await phone.id("save-technician").click();
    await phone.id("new-visit").waitFor();
  }

  /** Starts a visit of a car with a rigid support. */
  async function startVisit(plate) {
    await phone.id("new-visit").click();
    await phone.id("layout-rigid-engine-speed").click();
    await phone.id("plate").fill(plate);
    await phone.id("save-intake").click();
    await phone.page.waitForFunction(() => location.hash.includes("/visit/"));
    await phone.page.waitForTimeout(300);
  }

  return { go, accessible, confirmGates, sayWho, startVisit };
}
