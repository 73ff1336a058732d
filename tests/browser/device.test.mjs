// The app's window on a phone, played in Chromium: the page finds Tauri there and an Android name, requests go
// through it to the real core, and the phone writes down what it was asked. Which photo the camera left while the
// app was ended, what is felt, how Back walks, how wide the bars are, and a VIN from a barcode.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { journey } from "./journey.mjs";
import { violations } from "./stage.mjs";

const file = (name) => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const STEP = "housing-look";

let desk;
let phone;

const { go, confirmGates, sayWho } = journey(async (opened) => {
  ({ desk, phone } = opened);
  const shot = (await readFile(file("demo-data/photos/housing.jpg"))).toString("base64");
  await phone.page.addInitScript(playPhone, { shot });
  // The window's own protocol asks for no key.
  await phone.page.route("**/photo/**", (route) => {
    const key = new URL(desk.address).hash.slice("#key=".length);
    return route.continue({ headers: { ...route.request().headers(), "x-steady-key": key } });
  });
  await sayWho();
});

/** Runs in the page, before its own script: the phone's side of the bridge. */
function playPhone({ shot }) {
  const key = /key=([^&]+)/.exec(location.hash)?.[1];
  if (key) sessionStorage.setItem("steady.key", key);
  const kept = JSON.parse(localStorage.getItem("phone") ?? "null") ?? { asked: [], shots: [] };
  const keep = () => localStorage.setItem("phone", JSON.stringify(kept));
  const callbacks = [];
  const toCore = async (request) => {
    const headers = { "Content-Type": "application/json", "X-Steady-Key": sessionStorage.getItem("steady.key") };
    const answer = await fetch("/api", { method: "POST", headers, body: JSON.stringify(request) });
    const body = await answer.json();
    if (!answer.ok) throw body;
    return body;
  };
  const commands = {
    ask: ({ request }) => toCore(request),
    shots: () => kept.shots,
    adopt_shot: async ({ name, upload }) => {
      if (!kept.shots.some((found) => found.name === name)) return false;
      const piece = ((256 * 1024) / 3) * 4;
      const size = Math.floor(piece / 4) * 4;
      for (let index = 0; index * size < shot.length; index += 1) {
        await toCore({ ask: "upload", upload, index, base64: shot.slice(index * size, (index + 1) * size) });
      }
      return true;
    },
    forget_shot: ({ name }) => {
      kept.shots = kept.shots.filter((found) => found.name !== name);
    },
    "plugin:device|insets": () => ({ top: 24, right: 0, bottom: 48, left: 0 }),
  };
  Object.defineProperty(navigator, "userAgent", { value: "Mozilla/5.0 (Linux; Android 10) AppleWebKit/537.36" });
  globalThis.__TAURI_INTERNALS__ = {
    convertFileSrc: (path) => `/photo/${path}`,
    transformCallback: (heard) => callbacks.push(heard) - 1,
    invoke: async (command, args) => {
      kept.asked.push({ command, args: command === "ask" ? args.request.ask : args });
      keep();
      const answer = (await commands[command]?.(args)) ?? null;
      keep();
      return answer;
    },
  };
  globalThis.phone = {
    asked: (command) => kept.asked.filter((each) => each.command === command).map((each) => each.args),
    back: () => callbacks.forEach((heard) => heard({ index: 0, message: { canGoBack: true } })),
    shoot: (name) => {
      kept.shots.unshift({ name, bytes: 9, at: Date.now() });
      keep();
    },
    shots: () => kept.shots.map((found) => found.name),
  };
}

const asked = (command) => phone.page.evaluate((name) => globalThis.phone.asked(name), command);

test("a VIN is read from its barcode and shown with its check digit", async () => {
  const { page, id } = phone;
  await id("new-visit").tap();
  await id("layout-rigid-engine-speed").tap();
  await id("vin-photo").setInputFiles(file("tests/published/barcodes/ean13.png"));
  await id("problem").waitFor();
  assert.equal(await id("vin").inputValue(), "");
  await id("vin-photo").setInputFiles(file("tests/published/barcodes/code39.png"));
  await id("vin-was-read").waitFor();
  assert.equal(await id("vin").inputValue(), "1M8GDM9AXKP042788");
  assert.match(await id("vin-was-read").textContent(), /check digit fits/);
  assert.deepEqual(await violations(page), []);
  await id("vin").fill("0DEMA07X2X0000007");
  assert.equal(await id("vin-was-read").count(), 0, "the hint stays beside another VIN");
  await id("save-intake").tap();
  await page.waitForFunction(() => location.hash.includes("/visit/"));
});

test("the page keeps clear of the phone's bars", async () => {
  const { page } = phone;
  assert.deepEqual((await asked("plugin:app|register_listener"))[0].event, "back-button");
  const covered = await page.evaluate(() => {
    const probe = document.createElement("div");
    probe.style.cssText = "padding: var(--safe-top) var(--safe-right) var(--safe-bottom) var(--safe-left)";
    document.body.append(probe);
    const { paddingTop, paddingBottom } = getComputedStyle(probe);
    probe.remove();
    return [paddingTop, paddingBottom];
  });
  assert.deepEqual(covered, ["24px", "48px"]);
});

test("a photo that the camera took while the app was away is offered, kept, and its file goes", async () => {
  const { page, id } = phone;
  await confirmGates("lift");
  await go(`step/${STEP}`);
  const opened = page.waitForEvent("filechooser");
  await page.locator("label:has([data-testid=photo-input])").tap();
  await opened;
  await page.evaluate(() => globalThis.phone.shoot("JPEG_20261125_1.jpg"));
  await page.reload();
  await id("wanted-found").waitFor();
  assert.deepEqual(await violations(page), []);
  await id("wanted-found").tap();
  await id("photo").waitFor();
  await id("wanted").waitFor({ state: "detached" });
  await page.waitForFunction(() => globalThis.phone.shots().length === 0);
});

test("an answer is felt, DANGER longer", async () => {
  const { page, id } = phone;
  await go(`step/${STEP}`);
  await id("answer-sound").tap();
  await page.waitForFunction(() => globalThis.phone.asked("plugin:device|feel").length === 1);
  await id("answer-cracked").tap();
  await page.waitForFunction(() => globalThis.phone.asked("plugin:device|feel").length === 2);
  assert.deepEqual(
    (await asked("plugin:device|feel")).map((each) => each.feel),
    ["tick", "danger"],
  );
});

test("Back goes one step back, and behind the other apps from the first screen alone", async () => {
  const { page } = phone;
  await page.goto(`${desk.origin}/#/`);
  await page.locator("[data-testid=new-visit]").waitFor();
  await page.locator("[data-testid=new-visit]").tap();
  await page.waitForFunction(() => location.hash === "#/new");
  await page.evaluate(() => globalThis.phone.back());
  await page.waitForFunction(() => location.hash === "" || location.hash === "#/");
  assert.deepEqual(await asked("plugin:device|leave"), []);
  await page.evaluate(() => globalThis.phone.back());
  await page.waitForFunction(() => globalThis.phone.asked("plugin:device|leave").length === 1);
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
