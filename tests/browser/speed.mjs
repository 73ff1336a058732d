// What a slow phone feels, measured in Chromium with its processor slowed six times: `cargo xtask bench`. Prints;
// asserts nothing.

import { gzipSync } from "node:zlib";
import { readdir, readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { openPhone, startDesk } from "./stage.mjs";
import { answer, asker, enter, opened } from "./tour.mjs";
import { LANGUAGES } from "./words.mjs";

const HANDS = fileURLToPath(new URL("../../demo-data/photos/hands.jpg", import.meta.url));
const DIST = fileURLToPath(new URL("../../ui/dist", import.meta.url));
const SLOWER = 6;
const ENTRIES = 500;
/** Rounds of two answers and two screens: a thousand of each, of which the slowest hundredth is told. */
const ROUNDS = 500;
/** Between two taps, in ms: a quick hand, and none at all. */
const PAUSES = [300, 0];
const STARTS = 7;
const PHOTOS = 50;

const say = (what, value) => console.log(`${what.padEnd(64)} ${value}`);
const at = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
const ms = (value) => `${value.toFixed(0)} ms`;

const desk = await startDesk();
const phone = await openPhone(desk);
const ask = asker(desk);
await bundle();
await ask({ ask: "set-technician", name: "Kim Demo" });
await starts();
await taps();
await memory();
await phone.browser.close();
await desk.stop();

/** Sizes that a first start fetches, and all of them. */
async function bundle() {
  const names = (await readdir(`${DIST}/assets`)).map((name) => `assets/${name}`);
  const packed = async (name) => gzipSync(await readFile(`${DIST}/${name}`), { level: 9 }).length;
  const page = await readFile(`${DIST}/index.html`, "utf8");
  const first = names.filter((name) => page.includes(name));
  const languages = names.filter((name) => LANGUAGES.slice(1).some((tag) => name.startsWith(`assets/${tag}-`)));
  const sum = async (list) =>
    `${((await Promise.all(list.map(packed))).reduce((all, one) => all + one, 0) / 1000).toFixed(1)} KB`;
  say("UI, gzip: first start, English", await sum(first));
  say("UI, gzip: every screen, English", await sum(names.filter((name) => !languages.includes(name))));
  for (const tag of LANGUAGES.slice(1)) {
    const own = languages.filter((name) => name.startsWith(`assets/${tag}-`));
    say(`UI, gzip: language ${tag}, first screens and the rest`, await sum(own));
  }
}

async function slowed(rate) {
  const session = await phone.page.context().newCDPSession(phone.page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
  return session;
}

async function starts() {
  const times = [];
  for (let start = 0; start < STARTS; start += 1) {
    await phone.page.goto("about:blank");
    const session = await slowed(SLOWER);
    const begun = performance.now();
    await phone.page.goto(desk.address, { waitUntil: "commit" });
    await phone.id("new-visit").waitFor();
    times.push(performance.now() - begun);
    await session.detach();
  }
  times.sort((a, b) => a - b);
  say(`Cold start to the list, processor ${SLOWER} times slower, median of ${STARTS}`, ms(at(times, 0.5)));
}

async function taps() {
  for (const pause of PAUSES) {
    const visit = await opened(ask, `SP ${500 + pause}`);
    await enter(ask, visit, "running");
    for (let entry = 0; entry < ENTRIES; entry += 1) {
      await answer(ask, visit, "idle-noise", [["whine"], ["hiss"]][entry % 2]);
    }
    const entries = async () => (await ask({ ask: "look", visit })).ledger.entries;
    const before = await entries();
    await phone.page.evaluate((to) => {
      location.hash = to;
    }, `#/visit/${visit}/step/neutral-2500-buzz`);
    await phone.id("answer-felt").waitFor();
    await phone.quiet();
    const session = await slowed(SLOWER);
    await tapped(pause);
    await session.detach();
    say(
      "  entries in the visit, and how much slower the processor",
      `${before} to ${await entries()}, ${SLOWER} times`,
    );
  }
}

async function tapped(pause) {
  const [answers, turns] = [[], []];
  const rest = () => phone.page.waitForTimeout(pause);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const choice of ["none", "felt"]) {
      await rest();
      answers.push(await painted(choice));
    }
    await rest();
    turns.push(await turned("misfire-evidence"));
    await rest();
    turns.push(await turned("neutral-2500-buzz"));
  }
  for (const [what, times] of [
    ["Answer tapped to answer and rating painted", answers],
    ["Next screen asked for to painted", turns],
  ]) {
    times.sort((a, b) => a - b);
    for (const share of [0.5, 0.99]) say(`${what}, ${pause} ms between, p${100 * share}`, ms(at(times, share)));
  }
}

/** From a tap on an answer until it is painted as chosen: the core has it on disk by then. */
function painted(choice) {
  return phone.page.evaluate(
    (name) =>
      new Promise((done) => {
        const button = document.querySelector(`[data-testid="answer-${name}"]`);
        const begun = performance.now();
        const watch = new MutationObserver(() => {
          if (button.getAttribute("aria-pressed") !== "true") return;
          watch.disconnect();
          requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun)));
        });
        watch.observe(button, { attributes: true });
        button.click();
      }),
    choice,
  );
}

/** From one step to another until its heading is painted. */
function turned(step) {
  return phone.page.evaluate(
    (to) =>
      new Promise((done) => {
        const heading = document.querySelector("h1").textContent;
        const begun = performance.now();
        const watch = new MutationObserver(() => {
          const now = document.querySelector("h1")?.textContent;
          if (!now || now === heading) return;
          watch.disconnect();
          requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun)));
        });
        watch.observe(document.body, { subtree: true, childList: true, characterData: true });
        location.hash = location.hash.replace(/[^/]+$/, to);
      }),
    step,
  );
}

/** Chooses a photo as a camera hands it over. The journeys' own way keeps each screen it was used on in memory. */
function chosen(base64) {
  return phone.page.evaluate((picture) => {
    const input = document.querySelector('[data-testid="photo-input-play-vertical"]');
    const given = new DataTransfer();
    given.items.add(
      new File([Uint8Array.from(atob(picture), (letter) => letter.charCodeAt(0))], "hands.jpg", { type: "image/jpeg" }),
    );
    input.files = given.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
  }, base64);
}

async function memory() {
  const picture = (await readFile(HANDS)).toString("base64");
  const visit = await opened(ask, "MM 50");
  await enter(ask, visit, "lift");
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, `#/visit/${visit}/step/play-vertical`);
  await phone.id("photo-input-play-vertical").waitFor({ state: "attached" });
  const session = await phone.page.context().newCDPSession(phone.page);
  await session.send("Performance.enable");
  const used = async () => {
    await session.send("HeapProfiler.collectGarbage");
    const { metrics } = await session.send("Performance.getMetrics");
    const of = (name) => metrics.find((metric) => metric.name === name).value;
    return `${(of("JSHeapUsedSize") / 1e6).toFixed(1)} MB, ${of("Nodes")} nodes`;
  };
  say("Page memory before", await used());
  const { steps } = await ask({ ask: "look", visit });
  for (let photo = 1; photo <= PHOTOS; photo += 1) {
    await phone.page.evaluate(
      (to) => {
        location.hash = to;
      },
      `#/visit/${visit}/step/${steps[photo % steps.length].id}`,
    );
    await phone.quiet();
    await phone.page.evaluate((to) => {
      location.hash = to;
    }, `#/visit/${visit}/step/play-vertical`);
    await phone.id("photo-input-play-vertical").waitFor({ state: "attached" });
    const kept = phone.page.waitForResponse((reply) => (reply.request().postData() ?? "").includes('"keep-photo"'));
    await chosen(picture);
    await kept;
    if (photo === PHOTOS / 2) say(`Page memory after ${photo} steps and ${photo} photos`, await used());
  }
  await phone.quiet();
  say(`Page memory after ${PHOTOS} steps and ${PHOTOS} photos`, await used());
}
