// A car that comes again: it is known by its plate or VIN while it is written down, its last answers stand beside what
// is asked now, and its history has a screen of its own.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { answer, enter } from "./tour.mjs";

let phone, ask, first;
const { sayWho, tap, go, chosen, accessible } = journey(async (of) => {
  ({ phone, ask } = of);
  await sayWho();
  const vehicle = {
    layout: "rigid-engine-speed",
    label: "demo tourer",
    plate: "BF 100",
    vin: "",
    seat: "bare",
    cylinders: 6,
    gearbox: "manual",
    idle_rpm: [700, 800],
    odometer: { value: 81200, unit: "km" },
    maker_play_mm: null,
  };
  const conditions = { speed: { value: 60, unit: "km" }, gear: "4", engine: "warm" };
  const intake = {
    vehicle,
    complaint: "a buzz",
    complaint_sounds: [],
    when: "",
    owner: { name: "Alex Example", contact: "" },
    conditions,
  };
  first = (await ask({ ask: "open", intake })).visit;
  await enter(ask, first, "lift");
  await answer(ask, first, "play-vertical", "felt", "warm");
  await ask({ ask: "leave-part", visit: first });
});

test("a car that was here before is known by its plate, however it is written", async () => {
  const { page, id } = phone;
  await tap("new-visit");
  assert.equal(await id("known-car").count(), 0);
  await id("plate").fill("bf-100");
  await id("plate").blur();
  await id("known-car").waitFor();
  assert.match(await id("known-car").innerText(), /here once before[^]*DANGER[^]*a buzz/);
  assert.equal(await id("last-visits").locator("li").count(), 1);
  await tap("take-car");
  assert.equal(await id("cylinders").inputValue(), "6");
  assert.equal(await id("idle-high").inputValue(), "800");
  assert.equal(await id("odometer").inputValue(), "", "the odometer is read anew");
  assert.equal(await id("owner-name").inputValue(), "", "the owner may be another");
  assert.equal(await id("plate").inputValue(), "bf-100");
  await tap("same-conditions");
  assert.equal(await id("speed").inputValue(), "60");
  assert.equal(await id("gear").inputValue(), "4");
  await chosen("heard-warm");
  await tap("occasion-comeback");
  await accessible("the intake of a car that is known");
  await page.reload();
  await id("known-car").waitFor();
  assert.equal(await id("speed").inputValue(), "60", "what was taken over survives a reload");
  await tap("save-intake");
  await page.waitForFunction(() => location.hash.includes("/visit/"));
});

test("what was answered then stands beside what is asked now, and the history says the rest", async () => {
  const { id } = phone;
  await go("step/play-vertical");
  await id("before-step").waitFor();
  assert.match(await id("before-step").innerText(), /On .*20\d\d: .*\nDANGER/);
  await accessible("a step with what was found before");
  await tap("before-step");
  await id("before-visits").waitFor();
  const said = await id("before-visits").innerText();
  for (const part of ["a buzz", "81200", "60 km/h, gear 4, Engine warm", "DANGER"])
    assert.ok(said.includes(part), `${part}: ${said}`);
  await accessible("the history of a car");
  await go("finding");
  assert.match(
    await phone.page.locator("main").innerText(),
    /60 km\/h, gear 4, Engine warm[^]*The noise came back after a repair/,
  );
});

test("nothing was asked of anyone but the app, and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
