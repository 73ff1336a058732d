// The whole walk by its buttons alone: whatever screen Steady shows next is dealt with as a technician
// would, until there is none. The receipt's journey, beside this one, goes to its screens by address.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { openPhone, startDesk, violations } from "./stage.mjs";

const run = promisify(execFile);
const HANDS = fileURLToPath(new URL("../../demo-data/photos/hands.jpg", import.meta.url));
const PLATE = "JN 2500";
const LONGEST_WALK = 60;
const ANSWERS = {
  "road-speed-vibration": "not-tried",
  "idle-speed": 760,
  "idle-noise": "none",
  "misfire-evidence": "none",
  "air-leak-test": "none",
  "neutral-2500-buzz": "felt",
  "running-stop": "none",
  "housing-look": "sound",
  "play-vertical": "felt",
  "play-lateral": "none",
  "play-far-end": "none",
  "turn-by-hand": "smooth",
  "coupling-look": "sound",
  "shaft-look": "sound",
  "shield-and-mounts": "sound",
};

const seen = new Map();
const complaints = [];
let desk;
let phone;

before(async () => {
  desk = await startDesk();
  phone = await openPhone(desk);
  phone.page.setDefaultTimeout(15_000);
  // A refusal of the core (422) is noted by the browser too; it is asked for in this walk.
  phone.page.on("console", (said) => {
    if (said.type() === "error" && !said.text().includes("status of 422")) complaints.push(said.text());
  });
  await phone.page.goto(desk.address);
});

after(async () => {
  await phone?.browser.close();
  await desk?.stop();
});

const tap = (name) => phone.id(name).tap();
const chosen = (name) => phone.page.locator(`[data-testid="${name}"][aria-pressed="true"]`).waitFor();
const rated = (part, word) => phone.page.locator(`[data-testid="${part}"][data-word="${word}"]`).first().waitFor();

/** The screen shown: the address behind `#`, without the visit. */
const screen = () => new URL(phone.page.url()).hash.replace(/^#\/(visit\/[^/]+\/?)?/, "");

/** Notes, once for each screen, what axe finds on it and whether it can be pushed sideways. */
async function look(name) {
  if (seen.has(name)) return;
  await phone.page.locator("h1").first().waitFor();
  const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth > screen.width);
  seen.set(name, [...(await violations(phone.page)), ...(wide ? ["wider than the phone"] : [])]);
}

/** Deals with one screen after another until the named one is shown. */
async function walkTo(end) {
  const passed = [];
  while (screen() !== end) {
    assert.ok(passed.length < LONGEST_WALK, `the walk never came to ${end}: ${passed.join(", ")}`);
    passed.push(screen());
    const before = new URL(phone.page.url()).hash;
    await look(screen());
    await pass(screen());
    await phone.page.waitForFunction((hash) => location.hash !== hash, before).catch(() => {
      throw new Error(`the walk does not go on from ${passed.at(-1)}`);
    });
  }
  await look(end);
}

async function pass(shown) {
  const [kind, about] = shown.split("/");
  if (kind === "order") return tap("order-running-first");
  if (kind === "leave") return tap("leave");
  if (kind === "gates") {
    await confirmAll();
    return tap("next");
  }
  assert.equal(kind, "step", `a screen the walk does not know: ${shown}`);
  await answer(about, ANSWERS[about]);
  if (about === "play-vertical") await takePhoto();
  else await waivePhoto();
  return tap("next");
}

async function confirmAll() {
  const gates = phone.page.locator("[data-testid^=gate-]");
  await gates.first().waitFor();
  const names = await gates.evaluateAll((found) => found.map((gate) => gate.dataset.testid));
  assert.ok(names.length >= 5, `only ${names.length} gates`);
  for (const name of names) {
    await tap(name);
    await chosen(name);
  }
}

async function answer(step, value) {
  assert.ok(value !== undefined, `no answer was thought of for ${step}`);
  if (typeof value === "number") {
    await phone.id("reading").fill(String(value));
    await tap("save-reading");
    return phone.id("step-band").waitFor();
  }
  await phone.id(`answer-${value}`).waitFor();
  if (await phone.id("temperature-cold").isVisible()) await tap("temperature-cold");
  await tap(`answer-${value}`);
  return chosen(`answer-${value}`);
}

async function takePhoto() {
  await phone.id("photo-input").setInputFiles(HANDS);
  await phone.id("photo").waitFor();
}

async function waivePhoto() {
  if (!(await phone.id("waive").isVisible())) return;
  await tap("waive");
  await tap("waiver-too-dark");
  await phone.id("waived").waitFor();
}

test("a car comes in and its walk begins", async () => {
  await phone.id("technician").fill("Rowan Testcase");
  await tap("save-technician");
  await tap("new-visit");
  await tap("layout-rigid-engine-speed");
  await tap("seat-bare");
  await tap("gearbox-manual");
  await tap("sound-whine");
  await phone.id("plate").fill(PLATE);
  await phone.id("owner-name").fill("Alex Example");
  await look("intake");
  await tap("save-intake");
  await phone.page.waitForFunction(() => location.hash.startsWith("#/visit/"));
});

test("putting steps off leads on along the walk, not round and round", async () => {
  await walkTo("step/idle-speed");
  const seen = [screen()];
  for (let turn = 0; turn < 3; turn += 1) {
    await tap("next");
    await phone.page.waitForTimeout(300);
    seen.push(screen());
  }
  assert.equal(new Set(seen).size, seen.length, `came back to a step: ${seen.join(", ")}`);
});

test("the part before the hands-on check rates nothing", async () => {
  await walkTo("step/neutral-2500-buzz");
  await answer("neutral-2500-buzz", "felt");
  await tap("go-result");
  await rated("band", "unrated");
  await look("an unrated result");
  await phone.page.goBack();
});

test("the app closed and opened anew shows the same step with its answer", async () => {
  assert.equal(screen(), "step/neutral-2500-buzz");
  await chosen("answer-felt");
  const { page } = phone;
  await page.goto("about:blank");
  await page.goto(desk.address);
  await chosen("answer-felt");
  assert.equal(screen(), "step/neutral-2500-buzz");
});

test("undo takes an answer back at once", async () => {
  await tap("undo");
  await phone.page.locator('[data-testid="answer-felt"][aria-pressed="false"]').waitFor();
  assert.equal(await phone.id("step-band").count(), 0);
});

test("a DANGER answer is not made milder without a reason", async () => {
  await walkTo("step/play-vertical");
  await answer("play-vertical", "felt");
  await rated("step-band", "danger");
  await tap("answer-none");
  await phone.id("reason-text").waitFor();
  await tap("reason-cancel");
  await chosen("answer-felt");
});

test("the walk ends in DANGER, do not drive, with the loose seat first", async () => {
  await walkTo("result");
  await rated("band", "danger");
  assert.match(await phone.id("band").first().innerText(), /do not drive/i);
  const first = phone.page.locator("[data-testid^=cause-]").first();
  assert.equal(await first.getAttribute("data-testid"), "cause-loose-seat");
});

test("the finding is kept as a PDF that says so", async () => {
  await tap("go-finding");
  await tap("make-pdf");
  const kept = phone.page.waitForEvent("download");
  await tap("save-pdf");
  const { stdout } = await run("pdftotext", ["-layout", await (await kept).path(), "-"]);
  assert.match(stdout, /DANGER/);
  assert.ok(stdout.includes(PLATE), "the plate is on the paper");
});

test("the owner cannot sign before deciding and drawing, and then can", async () => {
  await tap("go-note");
  await phone.id("sign-pad").waitFor();
  assert.ok(await phone.id("sign").isDisabled());
  await tap("decision-decline");
  assert.ok(await phone.id("sign").isDisabled());
  await phone.id("sign-name").fill("Alex Example");
  await draw();
  await tap("sign");
  await phone.id("signed").waitFor();
  await look("the signed note");
});

test("each screen of the walk is free of barriers and fits the phone", () => {
  assert.deepEqual([...seen].filter(([, found]) => found.length > 0), []);
  assert.ok(seen.size > 20, `only ${seen.size} screens were seen`);
});

test("the walk asked nothing of anyone else, and the page complained of nothing", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
  assert.deepEqual(complaints, []);
});

async function draw() {
  const pad = phone.id("sign-pad");
  await pad.scrollIntoViewIfNeeded();
  const box = await pad.boundingBox();
  const at = (x, y) => [box.x + box.width * x, box.y + box.height * y];
  await phone.page.mouse.move(...at(0.2, 0.4));
  await phone.page.mouse.down();
  await phone.page.mouse.move(...at(0.5, 0.7), { steps: 6 });
  await phone.page.mouse.move(...at(0.8, 0.3), { steps: 6 });
  await phone.page.mouse.up();
}
