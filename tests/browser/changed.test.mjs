// What changes in the middle of a visit: the layout that was entered, who is at work, and what a DANGER closes. Each is
// named where it is met, and has its way on.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { answer, enter, opened } from "./tour.mjs";

let phone;
let ask;

const { go, sayWho, tap, seen } = journey(async (begun) => {
  ({ phone, ask } = begun);
  await sayWho("Kim Demo");
});

const at = async (visit, inside) => {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, `#/visit/${visit}/${inside}`);
  await phone.quiet();
};
const look = (visit) => ask({ ask: "look", visit });

/** A visit in which somebody is under the car. */
async function underTheCar(plate) {
  const visit = await opened(ask, plate);
  await ask({ ask: "choose-order", visit, order: "under-car-first" });
  await enter(ask, visit, "lift");
  return visit;
}

test("another layout names the answers that it takes back, and takes them back only when it is told to", async () => {
  const visit = await underTheCar("RL 1");
  await answer(ask, visit, "play-vertical", "none", "warm");
  await ask({ ask: "leave-part", visit });
  await at(visit, "intake");
  for (const [key, layout] of [
    ["relayout-keep", "rigid-engine-speed"],
    ["relayout-do", "rubber-centre"],
  ]) {
    await go("intake");
    await tap("layout-others");
    await tap("layout-rubber-centre");
    await tap("save-intake");
    await seen("relayout");
    assert.match(await phone.id("relayout").innerText(), /up and down/i);
    await tap(key);
    if (key === "relayout-do") await phone.page.waitForFunction(() => !location.hash.endsWith("/intake"));
    const { intake, steps } = await look(visit);
    assert.equal(intake.vehicle.layout, layout, key);
    const felt = steps.find(({ id }) => id === "play-vertical");
    assert.equal(felt.answered === null, key === "relayout-do", key);
  }
});

test("safety checks of somebody else are left and confirmed anew from the step that they close", async () => {
  const visit = await underTheCar("SO 2");
  await ask({ ask: "set-technician", name: "Jo Reed" });
  await at(visit, "step/play-vertical");
  await phone.page.reload();
  await phone.page.locator('[data-testid="locked"][data-why="gates-of-another"]').waitFor();
  assert.equal(await phone.page.locator("[data-testid^=answer-]").count(), 0, "nothing is answered");
  await at(visit, "leave/lift");
  await tap("leave");
  await phone.page.waitForFunction(() => !location.hash.includes("/leave/"));
  assert.equal((await look(visit)).entered, null);
  await enter(ask, visit, "lift");
  await at(visit, "step/play-vertical");
  await phone.page.reload();
  await seen("temperature-warm");
  await ask({ ask: "set-technician", name: "Kim Demo" });
});

test("what the hands-on check left out is offered before everybody comes out from under the car", async () => {
  const visit = await opened(ask, "LO 7");
  await ask({ ask: "choose-order", visit, order: "hands-on" });
  await enter(ask, visit, "lift");
  await answer(ask, visit, "housing-look", ["sound"]);
  for (const step of ["play-vertical", "play-lateral"]) await answer(ask, visit, step, "none", "warm");
  const { steps, sorting } = await look(visit);
  const next = steps.find(({ id }) => id === sorting.next_check.step);
  assert.deepEqual([next.set, next.lock, next.answered], ["lift", null, null], next.id);
  await at(visit, "leave/lift");
  await tap("leave-still");
  await phone.page.waitForFunction((end) => location.hash.endsWith(end), `step/${next.id}`);
});

test("a question that was put off first leads to the choice of how to check, and that to the safety checks", async () => {
  const visit = await opened(ask, "PO 8");
  await at(visit, "step/road-speed-vibration");
  await tap("next");
  await phone.page.waitForFunction(() => location.hash.endsWith("/order"));
  assert.equal(await phone.page.locator(".chosen").count(), 0, "nobody chose yet");
  await tap("order-under-car-first");
  await phone.page.waitForFunction(() => location.hash.endsWith("/gates/lift"));
});

test("after a DANGER the result says which steps stay closed", async () => {
  const visit = await underTheCar("CL 3");
  await answer(ask, visit, "housing-look", ["sound"]);
  for (const step of ["play-vertical", "play-lateral"]) await answer(ask, visit, step, "felt", "cold");
  await answer(ask, visit, "play-far-end", "slides");
  await answer(ask, visit, "coupling-look", ["sound"]);
  for (const step of ["shaft-look", "shield-and-mounts"]) await answer(ask, visit, step, "sound");
  await answer(ask, visit, "turn-by-hand", "smooth");
  await at(visit, "result");
  await phone.page.reload();
  const shut = (await look(visit)).steps.filter(({ lock, answered }) => lock?.why === "danger-found" && !answered);
  assert.ok(shut.length > 3, `${shut.length} steps are closed`);
  const said = phone.id("closed").locator("li");
  await said.first().waitFor();
  assert.equal(await said.count(), shut.length);
});

test("the second tap of two answers nothing that has unfolded under the finger", async () => {
  const visit = await underTheCar("DT 4");
  await at(visit, "step/play-vertical");
  const cold = await phone.id("temperature-cold").boundingBox();
  const [x, y] = [cold.x + cold.width / 2, cold.y + cold.height / 2];
  await phone.page.touchscreen.tap(x, y);
  await seen("answer-none-play-vertical");
  await phone.page.touchscreen.tap(x, y);
  await phone.quiet();
  const { steps } = await look(visit);
  assert.deepEqual(
    steps.filter(({ answered }) => answered).map(({ id }) => id),
    [],
  );
  await tap("answer-none-play-vertical");
  await phone.page.locator('[data-testid="answer-none-play-vertical"][aria-pressed="true"]').waitFor();
});

test("a step that is chosen from the scrolled list has its answers and STOP at the foot", async () => {
  const visit = await underTheCar("SC 5");
  await at(visit, "step/housing-look");
  await phone.quiet();
  const foot = () => phone.page.locator(".dock").evaluate((one) => Math.round(one.getBoundingClientRect().bottom));
  const before = await foot();
  await tap("places");
  await phone.page.evaluate(() => scrollTo(0, 10_000));
  await phone.page.getByRole("navigation").getByRole("button", { name: "Look at the shaft" }).click();
  await phone.page.waitForFunction(() => location.hash.endsWith("step/shaft-look"));
  await phone.quiet();
  assert.ok(Math.abs((await foot()) - before) <= 2, `the foot ends at ${await foot()}, and before at ${before}`);
  const low = await phone.page
    .locator(".answer")
    .evaluate((one) => Math.round(innerHeight - one.getBoundingClientRect().bottom));
  assert.ok(low < 140, `the answers end ${low} above the screen's foot`);
});

test("the note of two supports opens, and says once what is open at both", async () => {
  const visit = await opened(ask, "TW 6", { layout: "two-centres", seat: null });
  await answer(ask, visit, "road-speed-vibration", "none");
  await at(visit, "note");
  await seen("sign-pad");
  const said = await phone.page.locator("main section p").allInnerTexts();
  assert.deepEqual([...new Set(said)], said);
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual([phone.strays, phone.faults], [[], []]);
});
