// From the car coming in to the owner's receipt, on a phone-sized screen against the real core:
// a buzz at 2,500 in neutral and movement felt up and down at a rigid support.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { hand, madeBy } from "./stage.mjs";
import { keyOf } from "./technician.mjs";

let desk;
let phone;

const { go, accessible, confirmGates } = journey((opened) => ({ desk, phone } = opened));

const place = () => phone.page.evaluate(() => location.hash);

async function answer(step, value) {
  await go(`step/${step}`);
  // What is asked before a hand's answer means anything.
  if (await phone.id("temperature-cold").isVisible()) await phone.id("temperature-cold").click();
  await phone.id(keyOf(`answer-${value}`, step)).click();
  await phone.quiet();
}

/** Whether all of an element is in view. */
const inView = (name) =>
  phone.id(name).evaluate((one) => {
    const { top, bottom } = one.getBoundingClientRect();
    return top >= 0 && bottom <= innerHeight;
  });

test("a technician says who they are and starts a visit", async () => {
  const { page, id } = phone;
  await page.goto(desk.address);
  await id("technician").fill("Kim Demo");
  await accessible("first start");
  await id("save-technician").click();
  await id("new-visit").waitFor();
  await accessible("an empty list");
  await id("new-visit").click();
  await id("layout-rigid-engine-speed").click();
  await id("plate").fill("TR 4417");
  await id("complaint").fill("a buzz through the floor");
  await accessible("intake");
  await id("save-intake").click();
  await page.waitForFunction(() => location.hash.includes("/visit/"));
  await phone.quiet();
  assert.match(await place(), /step\/road-speed-vibration/);
});

test("a step under the car is locked until its gates are confirmed", async () => {
  const { id } = phone;
  await go("step/play-vertical");
  assert.equal(await id("answer-felt-play-vertical").count(), 0);
  await accessible("a locked step");
});

test("the buzz is felt from the seat, and the answer carries its own rating", async () => {
  const { page, id } = phone;
  await confirmGates("running");
  await accessible("gates");
  await answer("neutral-2500-buzz", "felt");
  await page.locator("[data-testid=step-band][data-word=caution]").first().waitFor();
  await accessible("an answered step");
  await go("leave/running");
  await id("leave").click();
  await phone.quiet();
});

test("movement felt is DANGER, survives a reload, and keeps its photo", async () => {
  const { page, id } = phone;
  await confirmGates("lift");
  await answer("play-vertical", "none");
  await id("undo").click();
  await id("undo-do").click();
  await phone.quiet();
  await answer("play-vertical", "felt");
  await page.locator("[data-testid=step-band-play-vertical][data-word=danger]").first().waitFor();
  await id("photo-input-play-vertical").setInputFiles({
    name: "a.png",
    mimeType: "image/png",
    buffer: await page.screenshot(),
  });
  await id("photo-play-vertical").waitFor();
  const here = await place();
  await page.reload();
  await page.locator("[data-testid=step-band-play-vertical][data-word=danger]").first().waitFor();
  assert.equal(await place(), here);
  await id("photo-play-vertical").waitFor();
});

test("the photo is marked up with a finger and the note shows it marked", async () => {
  const { page, id } = phone;
  await id("go-photo-play-vertical").tap();
  await id("mark-ring").tap();
  const stage = id("photo-stage");
  await stage.scrollIntoViewIfNeeded();
  let box = await stage.boundingBox();
  const at = (x, y) => [box.x + box.width * x, box.y + box.height * y];
  const finger = await hand(page);
  await finger.drag([at(0.45, 0.3), at(0.5, 0.4), at(0.56, 0.6)]);
  await id("mark-label").tap();
  await id("mark-words").fill("moves <here>");
  await stage.scrollIntoViewIfNeeded();
  box = await stage.boundingBox();
  const [x, y] = at(0.5, 0.8);
  await page.touchscreen.tap(x, y);
  await page.locator("[data-testid=photo-stage] [data-testid=marks][data-count='2']").waitFor();
  await accessible("a photo being marked");
  await id("next").tap();
  await id("mark-drop").waitFor({ state: "detached" });
  await page.reload();
  await page.locator("[data-testid=photo-stage] [data-testid=marks][data-count='2']").waitFor();
  await go("note");
  await page.locator("[data-testid=marks][data-count='2']").waitFor();
  assert.match(await id("paper-photo").getAttribute("alt"), /Marked on it: moves <here>\./);
  await go("step/play-vertical");
  await page.locator("[data-testid=marks][data-count='2']").waitFor();
});

test("a milder answer after DANGER asks why", async () => {
  const { page, id } = phone;
  await id("answer-none-play-vertical").click();
  await id("reason-text").waitFor();
  await accessible("the question why");
  await page.reload();
  await page.locator("[data-testid=step-band-play-vertical][data-word=danger]").first().waitFor();
});

test("the result says DO NOT DRIVE and names the loose seat", async () => {
  const { page } = phone;
  await go("result");
  await page.locator("[data-testid=band][data-word=danger]").first().waitFor();
  const text = (await page.locator("body").innerText()).toLowerCase();
  assert.match(text, /do not drive/);
  assert.match(text, /loose in its housing/);
  await accessible("the result");
});

test("the service writer makes the finding's PDF", async () => {
  const { page, id } = phone;
  await go("finding");
  await id("make-pdf").waitFor();
  await accessible("the finding");
  assert.equal(await madeBy(page, () => id("make-pdf").click()), "%PDF-");
});

test("the owner reads the note and signs that it was received", async () => {
  const { page, id } = phone;
  await go("note");
  await id("decision-decide-later").click();
  const pad = id("sign-pad");
  await pad.scrollIntoViewIfNeeded();
  const box = await pad.boundingBox();
  await page.mouse.move(box.x + 30, box.y + box.height / 2);
  await page.mouse.down();
  for (let step = 1; step <= 12; step += 1) {
    await page.mouse.move(box.x + 30 + step * 15, box.y + box.height / 2 + (step % 2 ? 18 : -18));
  }
  await page.mouse.up();
  await accessible("the note");
  await id("sign").click();
  await id("sign-recorded").waitFor();
  await phone.quiet();
  assert.ok(await inView("sign-recorded"), "what came of it is in view");
  await go("ledger");
  assert.match((await page.locator("main").innerText()).toLowerCase(), /sign|receiv/);
  await accessible("the ledger");
});

test("a repair that is recorded after the signature outdates it at once", async () => {
  const { page, id } = phone;
  await go("note");
  await id("sign-again").waitFor();
  assert.equal(await id("receipt-outdated").count(), 0);
  await go("bench");
  await id("bench-gates-teardown").waitFor();
  const gates = id("bench-gates-teardown").locator("[data-testid^=bench-gate-]");
  for (let at = 0; at < (await gates.count()); at += 1) {
    await gates.nth(at).click();
    await gates.and(page.locator("[aria-pressed='true']")).nth(at).waitFor();
  }
  await id("bench-ring").locator("summary").click();
  await id("ring-free").click();
  await page.locator("[data-testid=ring-free][aria-pressed='true']").waitFor();
  await go("note");
  await id("receipt-outdated").waitFor();
  await go("ledger");
  const shown = await page.locator("[data-testid=entries] > li").count();
  assert.match(await id("ledger-count").innerText(), new RegExp(`\\b${shown}\\b`));
});

test("the list finds the visit by its plate", async () => {
  const { page, id } = phone;
  await page.goto(`${desk.origin}/#/`);
  for (const [words, count] of [
    ["tr4417", 1],
    ["nobody", 0],
  ]) {
    const found = page.waitForResponse((reply) => reply.request().postData()?.includes(`"search":"${words}"`));
    await id("search").fill(words);
    await found;
    await phone.quiet();
    assert.equal(await id("visit-card").count(), count, words);
  }
  await accessible("a list with nothing found");
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
