// Every step of every layout in every language, alone or with the other of its pair, and the looks together, at the sizes of a phone, a turned phone, a tablet and a desk, and with
// large text: what to watch for, what to do and every answer are there whole, and nothing covers anything.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openPhone, startDesk } from "./stage.mjs";
import { asker, cleared, enter, opened, show } from "./tour.mjs";
import { LANGUAGES } from "./words.mjs";

const LAYOUTS = [
  "rigid-engine-speed",
  "rigid-output-speed",
  "rubber-centre",
  "two-centres",
  "torque-tube",
  "one-piece",
  "half-shaft",
  "front-shaft",
];
const SIZES = [
  [360, 740],
  [740, 360],
  [820, 1180],
  [1440, 900],
];
/** Here everything is in view at once; a turned phone may be scrolled. */
const WHOLE = ([, height]) => height > 400;

let desk;
let phone;
let ask;
/** Visits with one part entered each, and the screens there on which something can be answered. */
const places = [];
/** Steps whose screen differs in nothing between two layouts are measured once; here is what of a step is shown. */
const drawn = new Set();

function add(layout, { visit, support, pairs }, steps) {
  for (const step of steps) {
    const { id, form, asks_free, both_ends, at_support } = step;
    const shown = JSON.stringify([id, form, asks_free, both_ends, at_support, support]);
    const second = pairs.some((pair) => pair.steps[1] === id);
    if (!drawn.has(shown) && !second)
      places.push({ visit, layout, name: id, inside: `step/${id}`, many: form.form === "any-of" });
    drawn.add(shown);
  }
}

function addLooks(layout, { visit, looks }) {
  const shown = JSON.stringify(looks);
  if (!drawn.has(shown) && looks.open.length > 1) places.push({ visit, layout, name: "looks", inside: "looks" });
  drawn.add(shown);
}

before(async () => {
  desk = await startDesk();
  ask = asker(desk);
  await ask({ ask: "set-technician", name: "Kim Demo" });
  for (const layout of LAYOUTS)
    for (const set of ["running", "creep", "lift"]) {
      const seat = layout.startsWith("rigid") ? "bare" : null;
      const visit = await opened(ask, "MS 2500", { layout, seat, gearbox: "automated-clutch" });
      await enter(ask, visit, set);
      const standing = await ask({ ask: "look", visit });
      add(
        layout,
        standing,
        standing.steps.filter((step) => step.set === set || (set === "lift" && step.set === null)),
      );
      if (set === "lift") addLooks(layout, standing);
    }
  const pedalled = await opened(ask, "MS 3", { layout: "rigid-engine-speed", seat: "bare", gearbox: "manual" });
  await enter(ask, pedalled, "running");
  const pressed = await ask({ ask: "look", visit: pedalled });
  add(
    "with a clutch pedal",
    pressed,
    pressed.steps.filter(({ set }) => set === "running"),
  );
  const figured = await opened(ask, "MS 15", { layout: "two-centres", seat: null, maker_play_mm: 1.5 });
  await enter(ask, figured, "lift");
  const known = await ask({ ask: "look", visit: figured });
  add(
    "by the maker's figure",
    known,
    known.steps.filter((step) => step.asks_temperature),
  );
  const driven = await cleared(ask, "MS 1");
  await enter(ask, driven, "road");
  const standing = await ask({ ask: "look", visit: driven });
  add(
    "on the road",
    standing,
    standing.steps.filter(({ set }) => set === "road"),
  );
  phone = await openPhone(desk);
  await phone.page.goto(desk.address);
});

after(async () => {
  await phone?.browser.close();
  await desk?.stop();
});

async function speak(tag) {
  await ask({ ask: "set-preference", name: "locale", value: tag });
  await phone.page.evaluate((wanted) => localStorage.setItem("steady.locale", wanted), tag);
  await phone.page.reload();
  await phone.page.waitForFunction((wanted) => document.documentElement.lang === wanted, tag);
}

/** What a turned phone, which may be scrolled, does not show at once: where the answers begin, and STOP whole. */
function later() {
  scrollTo(0, 0);
  const [answer, stop] = [document.querySelector(".answer"), document.querySelector(".dock .stop")];
  const box = (one) => one.getBoundingClientRect();
  return [
    ...(answer && box(answer).top + 24 > innerHeight
      ? [`the answers begin at ${Math.round(box(answer).top)} of ${innerHeight}`]
      : []),
    ...(stop?.checkVisibility() && (box(stop).top < 0 || box(stop).bottom > innerHeight)
      ? ["STOP is out of view"]
      : []),
  ];
}

/** What of the screen is out of view, cut off or covered, a line each; `whole` asks for all of it without scrolling. */
function hidden(whole) {
  const found = [];
  const parts = [
    ...document.querySelectorAll(
      'header > button, h1, .title .soft, .words > *, .step .frame, [data-testid^="answer-"], .direction h2, .looks .plate, .sound, .asked p, .asked .plate, .pad .plate, .pad .press, .dock .plate, .dock .press, .dock .stop',
    ),
  ].filter((one) => one.checkVisibility());
  const name = (one) =>
    one.dataset.testid ?? one.closest("[data-testid]")?.dataset.testid ?? one.classList[0] ?? one.tagName;
  if (whole) scrollTo(0, 0);
  const order = [...document.querySelectorAll(".watch, .words .do, .answer")].map((one) =>
    Math.round(one.getBoundingClientRect().top),
  );
  const beside =
    document.querySelector(".main") && getComputedStyle(document.querySelector(".main")).display === "grid";
  if (!beside && order.some((top, at) => at > 0 && top < order[at - 1]))
    found.push(`not in their order: ${order.join(", ")}`);
  for (const one of parts) {
    if (!whole) one.scrollIntoView({ block: "center" });
    const range = document.createRange();
    range.selectNodeContents(one);
    const box = one.getBoundingClientRect();
    // A line of letters is lower than the box that the font gives it, at any size of text.
    const room = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 4;
    const letters = ({ left, top, right, bottom }) => ({ left, right, top: top + room, bottom: bottom - room });
    const lined = one.matches("p, h1");
    const lines = () => (lined ? [...range.getClientRects()].map(letters) : [box]);
    for (let at = 0; at < lines().length; at += 1) {
      // Of a text higher than the screen, a line at a time is looked at.
      const high = lines()[at];
      const floor = document.querySelector(".stop")?.getBoundingClientRect().top ?? innerHeight;
      if (!whole && lined && (high.top < 0 || high.bottom > Math.min(innerHeight, floor)))
        scrollBy(0, high.top - innerHeight / 2);
      const { left, top, right, bottom } = lines()[at];
      if (right - left < 2) continue;
      if (whole && (top < -0.5 || bottom > innerHeight + 0.5)) {
        found.push(`${name(one)} ends at ${Math.round(bottom)} of ${innerHeight}`);
        break;
      }
      if (left < -0.5 || right > innerWidth + 0.5) {
        found.push(`${name(one)} reaches from ${Math.round(left)} to ${Math.round(right)}`);
        break;
      }
      const spots = [
        [left + 3, top + 3],
        [right - 3, bottom - 3],
        [(left + right) / 2, (top + bottom) / 2],
      ];
      const over = spots
        .map(([x, y]) => document.elementFromPoint(x, y))
        .find((there) => !there || !(one.contains(there) || there.contains(one)));
      if (over !== undefined) {
        found.push(`${name(one)} is covered by ${over ? name(over) : "the edge"}`);
        break;
      }
    }
    if (one.scrollWidth > one.clientWidth + 1 && one.matches("button")) found.push(`${name(one)} is cut off`);
    if (one.matches(".stop") && range.getClientRects().length > 1) found.push("STOP is broken in two");
  }
  if (document.querySelectorAll(".words .do").length === 0) found.push("no instruction");
  return found;
}

/** Words of titles and keys that are broken in two without a hyphen, a line each. */
function broken() {
  const found = [];
  for (const one of document.querySelectorAll("h1, h2, button")) {
    if (!one.checkVisibility() || getComputedStyle(one).hyphens === "auto") continue;
    const letters = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
    while (letters.nextNode())
      for (const { 0: word, index } of letters.currentNode.data.matchAll(/[^\s\u00ad/-]+/gu)) {
        const range = document.createRange();
        range.setStart(letters.currentNode, index);
        range.setEnd(letters.currentNode, index + word.length);
        const tops = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (tops.size > 1) found.push(`"${word}" is broken`);
      }
  }
  return found;
}

/** The screen lays itself out within two frames of a turn, and once more where the foot took another height. */
function settled() {
  return new Promise((done) => {
    let left = 4;
    const next = () => (left-- > 0 ? requestAnimationFrame(next) : done());
    next();
  });
}

let measured = 0;

for (const tag of LANGUAGES) {
  test(`every step is whole on every screen (${tag})`, async () => {
    await phone.page.setViewportSize({ width: 360, height: 740 });
    await speak(tag);
    const faults = [];
    for (const { visit, layout, name, inside } of places) {
      await phone.page.setViewportSize({ width: 360, height: 740 });
      await show(phone.page, { hash: `#/visit/${visit}/${inside}` });
      const asked = phone.page
        .locator('[data-testid="free-yes"], [data-testid="engine-warm"], [data-testid="temperature-warm"]')
        .first();
      for (const said of (await asked.count()) > 0 ? [false, true] : [true]) {
        if (said && (await asked.count()) > 0) await asked.evaluate((one) => one.click());
        for (const size of SIZES) {
          await phone.page.setViewportSize({ width: size[0], height: size[1] });
          await phone.page.evaluate(settled);
          const first = WHOLE(size) ? [] : await phone.page.evaluate(later);
          const words = await phone.page.evaluate(broken);
          const lines = [...first, ...words, ...(await phone.page.evaluate(hidden, WHOLE(size)))];
          measured += 1;
          faults.push(
            ...lines.map((line) => `${layout}, ${name}${said ? "" : ", asked first"}, ${size.join(" by ")}: ${line}`),
          );
        }
      }
    }
    assert.equal(faults.length, 0, faults.join("\n"));
  });
}

/** What of a step is out of reach once the first of several things is marked, a line each. */
function lost() {
  const foot = document.querySelector(".dock").getBoundingClientRect().top;
  const keys = [...document.querySelectorAll('.answer [data-testid^="answer-"]')].filter((one) => {
    const { top, bottom } = one.getBoundingClientRect();
    return top < -0.5 || bottom > foot + 0.5;
  });
  const found = keys.map((one) => `${one.dataset.testid} is out of reach`);
  const [look, watch] = [".look", ".words .watch"].map((name) => document.querySelector(name)?.getBoundingClientRect());
  if (!watch || watch.top < look.top - 0.5 || watch.top > look.bottom - 16) found.push("the caution is gone");
  if (!document.querySelector(".words .do")) found.push("the instruction is gone");
  return found;
}

for (const tag of LANGUAGES) {
  test(`the caution stays and every answer is in reach while several things are marked (${tag})`, async () => {
    await phone.page.setViewportSize({ width: 360, height: 740 });
    await speak(tag);
    const faults = [];
    for (const { visit, layout, name, inside } of places.filter(({ many }) => many)) {
      await show(phone.page, { hash: `#/visit/${visit}/${inside}` });
      await phone.page
        .locator('.answer [data-testid^="answer-"]')
        .nth(1)
        .evaluate((one) => one.click());
      await phone.page.locator('[data-testid^="answer-"][aria-pressed="true"]').first().waitFor();
      await phone.quiet();
      measured += 1;
      faults.push(...(await phone.page.evaluate(lost)).map((line) => `${layout}, ${name}: ${line}`));
      // The next language finds the step as it was.
      const { undo } = await ask({ ask: "look", visit });
      await ask({ ask: "undo", visit, entry: undo.entry, reason: "marked to be measured" });
    }
    assert.equal(faults.length, 0, faults.join("\n"));
  });
}

/** Where STOP is not whole in view, however far the screen is scrolled, a line each. */
function stopAway() {
  const stop = document.querySelector(".stop");
  if (!stop?.checkVisibility()) return [];
  const end = document.documentElement.scrollHeight - innerHeight;
  return [0, end / 2, end].flatMap((at) => {
    scrollTo(0, at);
    const { top, bottom } = stop.getBoundingClientRect();
    return top < -0.5 || bottom > innerHeight + 0.5
      ? [`STOP lies from ${Math.round(top)} to ${Math.round(bottom)}`]
      : [];
  });
}

/** Every language, and English with sentences 40 % longer. */
const LARGE = [...LANGUAGES.map((tag) => [tag, null]), ["en", "long"]];

for (const [tag, pretend] of LARGE) {
  const words = pretend === null ? tag : `${tag}, longer sentences`;
  test(`with text at 200 % every step can be scrolled to whole, the caution first, and STOP stays (${words})`, async () => {
    await phone.page.setViewportSize({ width: 360, height: 740 });
    const session = await phone.page.context().newCDPSession(phone.page);
    await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
    await phone.page.evaluate((how) => {
      if (how === null) localStorage.removeItem("steady.pretend");
      else localStorage.setItem("steady.pretend", how);
    }, pretend);
    await speak(tag);
    const faults = [];
    for (const { visit, layout, name, inside } of places) {
      await show(phone.page, { hash: `#/visit/${visit}/${inside}` });
      measured += 1;
      const lines = [...(await phone.page.evaluate(hidden, false)), ...(await phone.page.evaluate(stopAway))];
      faults.push(...lines.map((line) => `${layout}, ${name}: ${line}`));
    }
    await phone.page.evaluate(() => localStorage.removeItem("steady.pretend"));
    assert.equal(faults.length, 0, faults.join("\n"));
  });
}

test("all of it was measured, and nothing broke", (t) => {
  t.diagnostic(`${measured} screens of ${places.length} places were measured`);
  assert.ok(measured > 1_000, `only ${measured}`);
  assert.deepEqual([phone.strays, phone.faults], [[], []]);
});
