// A whole visit in the app's own window, from the first start to the signed receipt: photos chosen from files, the
// signature on the glass, the app killed and opened again on its way, Back, a turned window, nothing asked of the
// network. The screens one by one are in the file beside it, Chromium's journeys in ../browser.

import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";
import { createServer } from "node:http";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { isDeepStrictEqual } from "node:util";
import { shown, whole } from "../browser/shown.mjs";
import { SHORT, keyOf, technician } from "../browser/technician.mjs";
import { openWindow } from "./window.mjs";

/** Where the app is killed. */
const KILLS = [
  "order",
  "gates/running",
  "step/idle-speed",
  "step/neutral-2500-buzz",
  "leave/running",
  "gates/lift",
  "step/play-vertical",
  "step/shaft-look",
];

let window;
let visit;
let hands;
let walker;

before(async () => {
  window = await openWindow();
  ({ hands } = window);
  walker = technician(hands, SHORT, (step) => step === "play-vertical", { oneByOne: true });
});

after(() => window?.close());

const seen = () => window.run(`return (${shown})()`);
const drawn = () =>
  window.until("the screen", async () => {
    const found = await seen();
    return whole(found) && found;
  });

/** Kills the app here and sees that it comes back to the same screen with everything on it. */
async function endHere(given) {
  await drawn();
  await window.remembered();
  const before = await seen();
  given?.(before);
  const { ledger } = await window.core({ ask: "look", visit });
  await window.killed();
  const back = await window
    .until("the same screen", async () => {
      const found = await seen();
      return isDeepStrictEqual(found, before) && found;
    })
    .catch(seen);
  assert.deepEqual(back, before);
  assert.deepEqual((await window.core({ ask: "look", visit })).ledger, ledger);
}

test("a technician says who they are and a car comes in", async () => {
  await hands.tap("welcome-rule");
  await hands.tap("welcome-you");
  await hands.write("technician", "Kim Demo");
  await hands.tap("save-technician");
  await hands.tap("new-visit");
  await hands.tap("layout-rigid-engine-speed");
  await hands.tap("gearbox-manual");
  await hands.tap("sound-whine");
  await hands.write("plate", "WK 2500");
  await hands.tap("save-intake");
  await window.until("the visit", async () => (await window.place()).includes("/visit/"));
  visit = /visit\/([^/]+)/.exec(await window.place())[1];
});

test("the walk leads to DANGER, and a killed app comes back with its answer and its photo", async () => {
  const ended = [];
  const end = async (at, given) => {
    if (!KILLS.includes(at)) return;
    ended.push(at);
    await endHere(given);
  };
  await walker.walkTo("result", {
    arrived: (at) => (/^(order|leave)/.test(at) ? end(at) : undefined),
    dealt: async (at) => {
      const [kind, step] = at.split("/");
      if (kind === "gates") await end(at, ({ pressed }) => assert.ok(pressed.length >= 5));
      if (kind !== "step") return;
      await end(at, ({ pressed, written, photos }) => {
        if (typeof SHORT[step] === "number") assert.deepEqual(written, [["reading", String(SHORT[step])]]);
        else assert.ok(pressed.includes(keyOf(`answer-${SHORT[step]}`, step)));
        // Of a look that is sound nobody asks for a photo.
        assert.equal(photos.length, step === "play-vertical" ? 1 : 0);
      });
    },
  });
  assert.deepEqual(ended, KILLS);
  await window.find('[data-testid="band"][data-word="danger"]');
  assert.match(await window.run("return document.querySelector('[data-testid=band]').innerText"), /do not drive/i);
  await window.find('[data-testid="causes"] li:first-child [data-testid="cause-loose-seat"]');
});

test("Back goes one screen back", async () => {
  await hands.tap("go-finding");
  await window.find('[data-testid="make-pdf"]');
  await window.ask("POST", "/back", {});
  await window.find('[data-testid="causes"]');
  assert.match(await window.place(), /result$/);
});

test("a turned window keeps the step, its answers and its photo in reach", async () => {
  await window.goTo(`#/visit/${visit}/step/road-speed-vibration`);
  await hands.chosen("answer-not-tried");
  const { width, height } = await window.ask("GET", "/window/rect");
  const before = await drawn();
  // The window is never lower than 560.
  await window.resize(860, 560);
  assert.deepEqual(await drawn(), before);
  assert.equal(await window.run("return document.documentElement.scrollWidth > innerWidth"), false);
  await hands.tap("answer-none");
  await hands.chosen("answer-none");
  await window.resize(width, height);
  await hands.chosen("answer-none");
  await hands.tap("answer-not-tried");
  await hands.chosen("answer-not-tried");
});

test("the finding is saved as a PDF", async () => {
  await window.goTo(`#/visit/${visit}/finding`);
  await hands.tap("make-pdf");
  await hands.tap("save-pdf");
  const [name] = await window.until("the file", async () => {
    const names = await readdir(window.downloads);
    return names.some((one) => one.endsWith(".pdf")) && names;
  });
  assert.equal((await readFile(join(window.downloads, name))).subarray(0, 5).toString(), "%PDF-");
});

test("the owner signs the note on the glass", async () => {
  await window.goTo(`#/visit/${visit}/note`);
  await hands.seen("sign-pad");
  await hands.tap("decision-decline");
  assert.equal(await window.run("return document.querySelector('[data-testid=sign]').disabled"), true);
  await window.draw("sign-pad", [
    [0.2, 0.4],
    [0.35, 0.6],
    [0.5, 0.7],
    [0.65, 0.5],
    [0.8, 0.3],
  ]);
  await hands.tap("sign");
  await hands.seen("signed");
  await endHere();
  await hands.seen("signed");
  const { entries } = await window.core({ ask: "history", visit });
  assert.equal(entries.filter(({ what }) => what === "received").length, 1);
});

test("the window's page cannot reach anything but the app", async () => {
  let asked = 0;
  const server = createServer((_, answer) => {
    asked += 1;
    answer.end();
  }).listen(0, "127.0.0.1");
  try {
    const port = await window.until("a server", async () => server.address()?.port);
    const address = `http://127.0.0.1:${port}/`;
    const said = await window.later(
      `
      const [to, done] = arguments;
      fetch(to).then(() => done("answered"), () => done("refused"))`,
      address,
    );
    assert.equal(said, "refused");
    const drawn = await window.later(
      `
      const [from, done] = arguments;
      const picture = new Image();
      picture.onload = () => done("drawn");
      picture.onerror = () => done("refused");
      picture.src = from`,
      address,
    );
    assert.equal(drawn, "refused");
    assert.equal(asked, 0);
  } finally {
    server.close();
  }
});

test("nothing was asked of the network, and the watch would have noticed", async () => {
  assert.deepEqual(window.strays(), []);
  const server = createServer(() => {}).listen(0, "127.0.0.1");
  try {
    const port = await window.until("a server", async () => server.address()?.port);
    window.ask("POST", "/url", { url: `http://127.0.0.1:${port}/` }).catch(() => undefined);
    await window.until("the socket", async () => window.strays().length > 0);
  } finally {
    server.closeAllConnections();
    server.close();
  }
});
