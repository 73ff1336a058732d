// Somebody who never saw Steady: three screens at the first start, a visit to practise on that is thrown away,
// the screen for the driver's seat; and what comes between: a turned phone, Back, a clock set back, a full disk, a
// keyboard and nothing else.

import assert from "node:assert/strict";
import { test } from "node:test";
import { gzipSync } from "node:zlib";
import { journey } from "./journey.mjs";
import { openPhone } from "./stage.mjs";
import { keyOf, stepsWith } from "./technician.mjs";
import { answer, enter, opened } from "./tour.mjs";
import { LANGUAGES } from "./words.mjs";

let desk;
let phone;
let ask;

const {
  tap,
  chosen,
  seen,
  killed,
  drawSignature,
  hands,
  place: hash,
} = journey(async (begun) => {
  ({ desk, phone, ask } = begun);
  await phone.page.goto(desk.address);
});

const goTo = async (where) => {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, where);
  await phone.quiet();
};
const inView = (name) =>
  phone.id(name).evaluate((one) => {
    const { top, bottom } = one.getBoundingClientRect();
    return top >= 0 && bottom <= innerHeight;
  });

test("the first start is three screens, each with its way on in reach", async () => {
  await phone.id("technician").waitFor();
  assert.ok(await inView("welcome-rule"));
  await tap("welcome-rule");
  await phone.quiet();
  assert.ok(await inView("welcome-you"));
  await tap("welcome-you");
  await phone.quiet();
  assert.ok(await inView("technician"));
  const screens = await phone.page.evaluate(() => document.documentElement.scrollHeight / innerHeight);
  assert.ok(screens <= 3.05, `${screens.toFixed(2)} screens`);
});

test("a first start fetches no more than 60 KB, packed", async (t) => {
  const other = await openPhone(desk);
  const sizes = [];
  other.page.on("response", (response) =>
    sizes.push(response.body().then((body) => gzipSync(body, { level: 9 }).length)),
  );
  await other.page.goto(desk.address);
  await other.id("technician").waitFor();
  const fetched = (await Promise.all(sizes)).reduce((all, one) => all + one, 0) / 1000;
  await other.browser.close();
  t.diagnostic(`${fetched.toFixed(1)} KB in ${sizes.length} answers`);
  assert.ok(fetched > 30 && fetched <= 60, `${fetched.toFixed(1)} KB`);
});

test("the language changes without a restart, and no id is ever shown", async () => {
  await phone.page.evaluate(() => {
    globalThis.ids = [];
    new MutationObserver(() => {
      const found = /\bui-[a-z-]+\b/.exec(document.body.innerText);
      if (found) globalThis.ids.push(found[0]);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  for (const tag of [...LANGUAGES].reverse()) {
    await tap(`language-${tag}`);
    await phone.page.waitForFunction((wanted) => document.documentElement.lang === wanted, tag);
  }
  assert.deepEqual(await phone.page.evaluate(() => globalThis.ids), []);
  await phone.id("technician").fill("Kim Demo");
  await tap("save-technician");
  await phone.id("new-visit").waitFor();
});

test("a practice visit is walked, says on every screen that it is one, and is in no list", async () => {
  await tap("go-settings");
  await tap("start-practice");
  await phone.id("answer-not-tried").waitFor();
  for (const inside of ["gates/running", "result", "finding", "note", "ledger", "bench"]) {
    await goTo((await hash()).replace(/(#\/visit\/[^/]+).*/, `$1/${inside}`));
    await phone.id("practice").waitFor();
  }
  await goTo((await hash()).replace(/(#\/visit\/[^/]+).*/, "$1/step/road-speed-vibration"));
  await tap("answer-not-tried");
  await chosen("answer-not-tried");
  await killed();
  await chosen("answer-not-tried");
  await phone.id("practice").waitFor();
  assert.equal((await ask({ ask: "visits", search: "", after: null })).total, 0);
});

test("no paper, file or outcome can be made of a practice visit", async () => {
  for (const [inside, shown, button] of [
    ["finding", "band", "make-pdf"],
    ["note", "band", "make-pdf"],
    ["result", "causes", "make-handover"],
  ]) {
    await goTo((await hash()).replace(/(#\/visit\/[^/]+).*/, `$1/${inside}`));
    await phone.id(shown).first().waitFor();
    await phone.quiet();
    assert.equal(await phone.id(button).count(), 0, `${inside} offers ${button}`);
    assert.equal(await phone.id("problem").count(), 0, inside);
  }
  await goTo((await hash()).replace(/(#\/visit\/[^/]+).*/, "$1/outcome"));
  await tap("outcome-loose-seat");
  await tap("outcome-save");
  await phone.page.locator('[data-testid="problem"][data-code="not-in-practice"]').waitFor();
});

test("a practice visit is thrown away with one tap", async () => {
  await tap("end-practice");
  await phone.id("empty").waitFor();
  assert.equal((await ask({ ask: "home" })).visits, 0);
});

test("the screen for the driver opens only while running or creeping gates stand entered", async () => {
  const visit = await opened(ask, "DV 1", { gearbox: "automated-clutch" });
  const driver = (step) => goTo(`#/visit/${visit}/driver/${step}`);
  const shut = async (step, why) => {
    await driver(step);
    await phone.quiet();
    assert.equal(await phone.id("driver").count(), 0, why);
  };
  await shut("idle-noise", "before the gates");
  for (const [set, step, words] of [
    ["running", "idle-noise", /idle[^]*pedal/i],
    ["creep", "creep-noise", /off the brake/],
    ["lift", "play-vertical", null],
  ]) {
    await enter(ask, visit, set);
    await phone.page.reload();
    if (set === "lift") {
      for (const each of ["idle-noise", step]) await shut(each, "nobody drives while somebody may be under the car");
      break;
    }
    await driver(step);
    await phone.id("driver").waitFor();
    assert.equal(await phone.id("driver").getAttribute("data-set"), set);
    assert.match(await phone.id("driver").innerText(), words);
    assert.ok(await inView("driver-stopped"), "all of it without scrolling");
    await tap("driver-stopped");
    await phone.page.waitForFunction(() => location.hash.endsWith("step/running-stop"));
    await ask({ ask: "leave-part", visit });
  }
});

test("the driver reads of the step that the phone was handed over for, wherever the walk waits", async () => {
  const visit = await opened(ask, "DV 3", { gearbox: "automated-clutch" });
  await enter(ask, visit, "running");
  const { position } = await ask({ ask: "look", visit });
  assert.notEqual(position.step, "neutral-2500-buzz");
  for (const [step, words] of [
    ["neutral-2500-buzz", /2,500 rpm/],
    ["idle-noise", /Let the engine idle/],
  ]) {
    await goTo(`#/visit/${visit}/step/${step}`);
    await tap("go-driver");
    await phone.id("driver").waitFor();
    assert.match(await phone.id("driver").innerText(), words);
    await tap("driver-done");
    await phone.page.waitForFunction((end) => location.hash.endsWith(end), `step/${step}`);
  }
  await answer(ask, visit, "idle-noise", ["rattle"]);
  await phone.page.reload();
  await goTo(`#/visit/${visit}/step/selector-effect`);
  await phone.id("answer-gone").waitFor();
  assert.equal(await phone.id("go-driver").count(), 0, "a foot is hard on the brake there, not off the pedal");
  await goTo(`#/visit/${visit}/driver/selector-effect`);
  await phone.page.waitForFunction(() => !location.hash.includes("/driver/"));
});

test("the driver's screen closes when the part is left behind its back", async () => {
  const visit = await opened(ask, "DV 2");
  await enter(ask, visit, "running");
  await goTo(`#/visit/${visit}/gates/running`);
  await tap("go-driver");
  await phone.id("driver").waitFor();
  await ask({ ask: "leave-part", visit });
  await phone.page.reload();
  await phone.page.waitForFunction(() => !location.hash.includes("/driver/"));
});

test("what holds the car up stands above its safety checks and can be said anew", async () => {
  const visit = await opened(ask, "LF 1");
  await ask({ ask: "choose-order", visit, order: "under-car-first" });
  await goTo(`#/visit/${visit}/gates/lift`);
  await tap("lift-platform");
  assert.match(await phone.id("lift-said").innerText(), /Platform lift/);
  assert.equal(await phone.id("gate-shaken-low").count(), 0, "nobody shakes a car on a platform");
  await tap("lift-said");
  await tap("lift-two-post");
  assert.match(await phone.id("lift-said").innerText(), /Two-post lift/);
  await tap("gate-empty-and-still");
  await chosen("gate-empty-and-still");
  await phone.page.reload();
  assert.match(await phone.id("lift-said").innerText(), /Two-post lift/, "it stands in the visit");
  await tap("gate-shaken-low");
  await chosen("gate-shaken-low");
  await tap("lift-said");
  await tap("lift-platform");
  await phone.page.waitForFunction(() => !document.querySelector('[data-testid="gate-shaken-low"]'));
  assert.match(await phone.id("lift-said").innerText(), /Platform lift/);
  await chosen("gate-empty-and-still");
  assert.equal(
    await phone.id("gate-wheels-chocked").getAttribute("aria-pressed"),
    "false",
    "what differs is asked for",
  );
});

test("what to look for stays while several things are marked, and no answer moves out of reach", async () => {
  const visit = await opened(ask, "RD 1");
  await enter(ask, visit, "running");
  await goTo(`#/visit/${visit}/step/idle-noise`);
  for (const noise of ["rattle", "whine"]) {
    await tap(`answer-${noise}`);
    await chosen(`answer-${noise}`);
    await phone.quiet();
    for (const words of [".words .watch", ".words .do"]) assert.ok(await phone.page.locator(words).isVisible(), words);
    for (const each of ["none", "rattle", "whine"]) assert.ok(await inView(`answer-${each}`), `${each} after ${noise}`);
  }
  await tap("go-result");
  await goTo(`#/visit/${visit}/step/idle-noise`);
  assert.equal(await phone.page.locator(".words").count(), 0, "whoever comes back asks for it");
  await tap("how");
  await phone.page.locator(".words .do").waitFor();
});

test("Back goes one screen back", async () => {
  const visit = await opened(ask, "BK 1");
  await goTo("#/");
  await goTo(`#/visit/${visit}/step/road-speed-vibration`);
  await tap("go-result");
  await phone.id("band").waitFor();
  await phone.page.goBack();
  assert.match(await hash(), /step\/road-speed-vibration$/);
  await phone.page.goBack();
  assert.equal(await hash(), "#/");
});

test("a turned phone keeps the step and all its answers in reach", async () => {
  const visit = await opened(ask, "RT 1");
  await goTo(`#/visit/${visit}/step/road-speed-vibration`);
  await phone.page.setViewportSize({ width: 740, height: 360 });
  await tap("answer-grows-with-speed");
  await chosen("answer-grows-with-speed");
  assert.ok(await phone.page.evaluate(() => document.documentElement.scrollWidth <= screen.width));
  await phone.page.setViewportSize({ width: 360, height: 740 });
  await chosen("answer-grows-with-speed");
});

test("a turned phone keeps what is half written, and it can be finished there", async () => {
  const visit = await opened(ask, "RT 2");
  await enter(ask, visit, "running");
  const [upright, turned] = [
    { width: 360, height: 740 },
    { width: 740, height: 360 },
  ];
  const turn = async (size) => {
    await phone.page.setViewportSize(size);
    assert.ok(await phone.page.evaluate(() => document.documentElement.scrollWidth <= screen.width));
  };
  await goTo(`#/visit/${visit}/step/idle-speed`);
  await tap("engine-warm");
  await hands.write("reading", "760");
  await turn(turned);
  assert.equal(await phone.id("reading").inputValue(), "760");
  await tap("save-reading");
  await seen("step-band");
  await turn(upright);
  assert.equal(await phone.id("reading").inputValue(), "760");
  await goTo(`#/visit/${visit}/note`);
  await tap("decision-decline");
  await drawSignature();
  const drawn = await phone.page.locator("[data-testid=sign-pad] path").last().getAttribute("d");
  await turn(turned);
  await chosen("decision-decline");
  assert.equal(await phone.page.locator("[data-testid=sign-pad] path").last().getAttribute("d"), drawn);
  await tap("sign");
  await seen("signed");
  await turn(upright);
  await seen("signed");
});

test("a clock that was set back is said plainly", async () => {
  const visit = await opened(ask, "CL 1");
  const other = await openPhone(desk);
  try {
    await other.page.goto(desk.address);
    await other.id("new-visit").waitFor();
    await other.page.evaluate((to) => {
      location.hash = to;
    }, `#/visit/${visit}/step/road-speed-vibration`);
    await other.id("answer-not-tried").waitFor();
    assert.equal(await other.id("clock-behind").count(), 0);
    await other.page.clock.setFixedTime(Date.now() - 3_600_000);
    await other.page.reload();
    await other.id("clock-behind").waitFor();
    await other.id("answer-not-tried").waitFor();
  } finally {
    await other.browser.close();
  }
});

test("a full disk and a core out of reach are said, and the answer can be given again", async () => {
  const visit = await opened(ask, "FD 1");
  await goTo(`#/visit/${visit}/step/road-speed-vibration`);
  const { page } = phone;
  const full = {
    status: 422,
    contentType: "application/json",
    body: JSON.stringify({ code: "disk-full", message: "", help: "" }),
  };
  for (const [code, answered] of [
    ["disk-full", (route) => route.fulfill(full)],
    ["no-core", (route) => route.abort()],
  ]) {
    await page.route("**/api", answered);
    await tap("answer-grows-with-speed");
    const said = page.locator(`[data-testid="problem"][data-code="${code}"]`);
    await said.waitFor();
    assert.ok((await said.innerText()).length > 40, "what to do is said too");
    assert.equal(
      await page.locator('[data-testid="answer-grows-with-speed"][aria-pressed="true"]').count(),
      0,
      "nothing is shown that is not on disk",
    );
    await page.unroute("**/api");
  }
  await tap("answer-grows-with-speed");
  await chosen("answer-grows-with-speed");
});

test("a whole visit by keyboard alone", async () => {
  const { page } = phone;
  await page.goto(`${desk.origin}/#/new`);
  await page.reload();
  await press("layout-rigid-engine-speed");
  await press("save-intake");
  await press("answer-not-tried");
  await press("next");
  const visit = /#\/visit\/([^/]+)/.exec(await hash())[1];
  for (let screens = 0; !(await hash()).endsWith("result"); screens += 1) {
    assert.ok(screens < 70, `still at ${await hash()}`);
    const before = await hash();
    const [kind, about] = before.replace(/^#\/visit\/[^/]+\//, "").split("/");
    if (kind === "order") await press("order-running-first");
    else if (kind === "leave") await press("leave");
    else if (kind === "looks") {
      await press("all-sound");
      await seen("look-said-housing-look");
      await press("next");
    } else if (kind === "gates") {
      if (await phone.id("lift-pit").isVisible()) await press("lift-pit");
      for (const gate of await hands.all("gate-")) {
        await press(gate);
        await chosen(gate);
      }
      await press("next");
    } else await byKeyboard(visit, about);
    await page.waitForFunction((was) => location.hash !== was, before);
  }
  await phone.id("band").waitFor();
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});

async function byKeyboard(visit, about) {
  const { steps } = await ask({ ask: "look", visit });
  // What is asked before an answer means anything.
  for (const first of ["free-yes", "engine-warm", "temperature-cold"])
    if (await phone.id(first).isVisible()) await press(first);
  for (const { id, form } of steps.filter((one) => stepsWith(about).includes(one.id) && !one.answered)) {
    if (form.form === "reading") {
      await reach("reading");
      await phone.page.keyboard.type("760");
      await phone.page.keyboard.press("Enter");
      await phone.id("step-band").waitFor();
    } else {
      const key = keyOf(`answer-${form.choices[0].id}`, id);
      await press(key);
      await chosen(key);
    }
  }
  for (const id of stepsWith(about)) {
    if (!(await phone.id(keyOf("waive", id)).isVisible())) continue;
    await press(keyOf("waive", id));
    await press("waiver-too-dark");
    await phone.id(keyOf("waived", id)).waitFor();
  }
  await press("next");
}

/** Tabs on until something has the focus; the focus is never lost on the way nor hidden. */
async function reach(name) {
  await phone.id(name).waitFor({ state: "attached" });
  for (let tabs = 0; tabs < 90; tabs += 1) {
    const there = await phone.page.evaluate(
      (wanted) => document.activeElement?.closest("[data-testid]")?.dataset.testid === wanted,
      name,
    );
    if (there) return;
    await phone.page.keyboard.press("Tab");
  }
  throw new Error(`${name} is not reached by Tab at ${await hash()}`);
}

async function press(name) {
  await reach(name);
  await phone.page.keyboard.press("Enter");
}

test("nothing was asked of anyone but the app", async () => {
  assert.deepEqual(phone.strays, []);
  await answer(ask, await opened(ask, "OK 1"), "road-speed-vibration", "not-tried");
});
