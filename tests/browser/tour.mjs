// Every screen of Steady, reached by its address on visits that were brought to where the screen shows what
// it is for. The pictures and the measurements beside this file go through the same list.

import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { quiet, startDesk } from "./stage.mjs";

const HANDS = fileURLToPath(new URL("../../demo-data/photos/hands.jpg", import.meta.url));

const SEAT = fileURLToPath(new URL("../../demo-data/bench/worn-seat-dial.csv", import.meta.url));

const CAR = {
  layout: "rigid-engine-speed",
  label: "demo tourer",
  plate: "DR 2500",
  vin: "",
  seat: "bare",
  cylinders: 6,
  gearbox: "manual",
  idle_rpm: [700, 800],
  odometer: { value: 81200, unit: "km" },
  maker_play_mm: null,
};
const INTAKE = {
  vehicle: CAR,
  complaint: "a buzz through the floor",
  complaint_sounds: ["whine"],
  when: "from 2,300 rpm",
  owner: { name: "Alex Example", contact: "" },
};
/** What somebody typed in English, whatever the screens speak. */
export const TYPED = [INTAKE.complaint, INTAKE.when];

/** A way to ask the core beside the screens, as a shell would. */
export function asker(desk) {
  return async (request) => {
    const key = /key=(\w+)/.exec(desk.address)[1];
    const reply = await fetch(`${desk.origin}/api`, {
      method: "POST",
      body: JSON.stringify(request),
      headers: { "content-type": "application/json", "x-steady-key": key },
    });
    const body = await reply.json();
    if (!reply.ok) throw new Error(`${request.ask}: ${body.code} ${body.message}`);
    return body;
  };
}

/** Opens a visit, with changes to its plate and car. */
export const opened = async (ask, plate, car = {}) =>
  (await ask({ ask: "open", intake: { ...INTAKE, vehicle: { ...CAR, ...car, plate } } })).visit;

/** Confirms every gate of a set. */
export async function enter(ask, visit, set) {
  const { gate_sets: sets } = await ask({ ask: "look", visit });
  for (const gate of sets.find((one) => one.id === set).gates)
    await ask({ ask: "confirm-gate", visit, set, gate: gate.id });
}

/** Answers a step. */
export const answer = (ask, visit, step, value, temperature = null) =>
  ask({ ask: "answer", visit, step, value, temperature, reason: null });

const UPLOAD = "0123456789abcdef0123456789abcdef";

async function uploaded(ask) {
  const bytes = await readFile(HANDS);
  await ask({ ask: "upload", upload: UPLOAD, index: 0, base64: bytes.toString("base64") });
  return UPLOAD;
}

const photo = async (ask, visit, step) => ask({ ask: "keep-photo", visit, step, upload: await uploaded(ask) });

/** A visit at the bench: a gauge that decided, a bore with its plan, a pass, a marked photo. */
async function benched(ask) {
  const visit = await opened(ask, "BN 72");
  await ask({ ask: "choose-order", visit, order: "under-car-first" });
  await enter(ask, visit, "lift");
  await answer(ask, visit, "play-vertical", "unsure", "cold");
  const gauge = {
    unit: "mm",
    readings: ["0.13", "0.12", "0.14", "0.13", "0.12"],
    instrument: { resolution: "0.01", mpe: "0.02" },
    place: { at: "bearing" },
    bearing: { bore_mm: "35", group: "C3" },
  };
  await ask({ ask: "record-gauge", visit, step: "play-vertical", gauge });
  for (const set of ["teardown", "machining"]) {
    const { gate_sets: sets } = (await ask({ ask: "look-at-bench", visit })).bench;
    for (const gate of sets.find((one) => one.id === set).gates)
      await ask({ ask: "bench", visit, act: { gate: gate.id } });
  }
  await ask({
    ask: "bench",
    visit,
    act: { look: { cracked: false, ring_turned: true, wall_least_mm: 3 }, wall: null },
  });
  await ask({ ask: "bench", visit, act: { bore: "found", file: await readFile(SEAT, "utf8") } });
  await ask({ ask: "bench", visit, act: { pass: 1, contact: "partly", diameter: "72.08" } });
  const upload = await uploaded(ask);
  const { photos } = (await ask({ ask: "bench", visit, act: { of: "bench-pass-1", upload } })).bench;
  const [{ sha256 }] = photos["bench-pass-1"];
  const marks = [{ shape: "label", at: [0.4, 0.5], text: "not touched" }];
  await ask({ ask: "bench", visit, act: { of: "bench-pass-1", photo: sha256, marks } });
  return { visit, photo: `work-photo/bench-pass-1/${sha256}` };
}

/** Another device: a visit that reads DANGER on its first file and milder on its second. */
async function another() {
  const desk = await startDesk();
  const ask = asker(desk);
  const handed = async () => {
    const { file } = await ask({ ask: "export", visits: [], papers: false, locale: null, sheet: null });
    const key = /key=(\w+)/.exec(desk.address)[1];
    const reply = await fetch(`${desk.origin}/file/${file}`, { headers: { "x-steady-key": key } });
    return Buffer.from(await reply.arrayBuffer());
  };
  try {
    await ask({ ask: "set-technician", name: "Jo Reed" });
    const visit = await opened(ask, "QX 31");
    await ask({ ask: "choose-order", visit, order: "under-car-first" });
    await enter(ask, visit, "lift");
    await answer(ask, visit, "play-vertical", "felt", "cold");
    const before = await handed();
    const { undo } = await ask({ ask: "look", visit });
    await ask({ ask: "undo", visit, entry: undo.entry, reason: "the wrong car" });
    return { before, after: await handed() };
  } finally {
    await desk.stop();
  }
}

/** Takes a handover file in. */
export async function takenIn(ask, file) {
  await ask({ ask: "import-piece", upload: UPLOAD, index: 0, base64: file.toString("base64") });
  return ask({ ask: "import", upload: UPLOAD });
}

/** A visit in which everything under the car is in order. */
export async function cleared(ask, plate) {
  const visit = await opened(ask, plate);
  await ask({ ask: "choose-order", visit, order: "under-car-first" });
  await enter(ask, visit, "lift");
  await answer(ask, visit, "housing-look", ["sound"]);
  for (const step of ["play-vertical", "play-lateral"]) await answer(ask, visit, step, "none", "warm");
  await answer(ask, visit, "play-far-end", "slides");
  await answer(ask, visit, "coupling-look", ["sound"]);
  for (const step of ["shaft-look", "shield-and-mounts"]) await answer(ask, visit, step, "sound");
  await answer(ask, visit, "turn-by-hand", "not-done");
  await ask({ ask: "leave-part", visit });
  return visit;
}

/** The three screens of a first start, on a desk where nobody has said who is at work. */
export const FIRST_START = ["welcome-what", "welcome-rule", "welcome-you"].map((at) => ({ name: at, hash: "#/", at }));

/** Brings the visits to where the screens want them, and returns the list of screens. */
export async function prepare(ask) {
  await ask({ ask: "set-technician", name: "Kim Demo" });
  const fresh = await opened(ask, "NW 1");
  const running = await opened(ask, "RN 2500");
  await enter(ask, running, "running");
  const under = await opened(ask, "UN 64");
  await ask({ ask: "choose-order", visit: under, order: "under-car-first" });
  await enter(ask, under, "lift");
  const danger = await opened(ask, "DR 2500");
  await answer(ask, danger, "road-speed-vibration", "not-tried");
  await enter(ask, danger, "running");
  await answer(ask, danger, "idle-noise", ["whine"]);
  await answer(ask, danger, "neutral-2500-buzz", "felt");
  await ask({ ask: "leave-part", visit: danger });
  await enter(ask, danger, "lift");
  await answer(ask, danger, "housing-look", ["sound"]);
  await answer(ask, danger, "play-vertical", "felt", "cold");
  await photo(ask, danger, "play-vertical");
  await ask({ ask: "confirm-outcome", visit: danger, causes: ["loose-seat"], by: null });
  const creeping = await opened(ask, "CR 3", { gearbox: "automated-clutch" });
  await enter(ask, creeping, "creep");
  const { before, after } = await another();
  await takenIn(ask, before);
  const again = await opened(ask, "DR 2500");
  const two = await opened(ask, "TW 2", { layout: "two-centres", seat: null });
  await ask({ ask: "choose-order", visit: two, order: "under-car-first" });
  await enter(ask, two, "lift");
  const looked = await opened(ask, "LK 4");
  await ask({ ask: "choose-order", visit: looked, order: "under-car-first" });
  await enter(ask, looked, "lift");
  await answer(ask, looked, "coupling-look", ["worn", "bolt-loose"]);
  const felt = await opened(ask, "FL 2");
  await ask({ ask: "choose-order", visit: felt, order: "under-car-first" });
  await enter(ask, felt, "lift");
  await answer(ask, felt, "play-vertical", "felt", "cold");
  await answer(ask, felt, "play-lateral", "none", "cold");
  const figured = await opened(ask, "FG 1", { layout: "rubber-centre", seat: null, maker_play_mm: 1.5 });
  await ask({ ask: "choose-order", visit: figured, order: "under-car-first" });
  await enter(ask, figured, "lift");
  await answer(ask, figured, "play-vertical", "within-figure", "warm");
  const sound = await cleared(ask, "CL 1");
  const driven = await cleared(ask, "CL 2");
  await enter(ask, driven, "road");
  const practice = (await ask({ ask: "start-practice", intake: INTAKE })).visit;
  const visits = {
    fresh,
    running,
    under,
    danger,
    creeping,
    again,
    two,
    looked,
    felt,
    figured,
    sound,
    driven,
    practice,
  };
  return screens({ ...visits, file: after, bench: await benched(ask) });
}

function screens({
  fresh,
  running,
  under,
  danger,
  creeping,
  again,
  two,
  looked,
  felt,
  figured,
  sound,
  driven,
  practice,
  file,
  bench,
}) {
  const at = (name, visit, inside) => ({ name, hash: `#/visit/${visit}/${inside}` });
  return [
    { name: "home", hash: "#/" },
    { name: "preview", hash: "#/", file },
    { name: "settings", hash: "#/settings" },
    { name: "devices", hash: "#/devices" },
    { name: "workshop", hash: "#/workshop" },
    { name: "intake", hash: "#/new" },
    at("amend", danger, "intake"),
    at("account", fresh, "step/road-speed-vibration"),
    at("order", fresh, "order"),
    at("gates-running", fresh, "gates/running"),
    at("locked", fresh, "step/play-vertical"),
    at("reading", running, "step/idle-speed"),
    at("any-of", running, "step/idle-noise"),
    at("raised", running, "step/neutral-2500-buzz"),
    at("driver", running, "driver/idle-noise"),
    at("driver-creep", creeping, "driver/creep-noise"),
    at("leave", running, "leave/running"),
    at("result-unrated", running, "result"),
    at("gates-lift", under, "gates/lift"),
    at("housing", under, "step/housing-look"),
    at("play", under, "step/play-vertical"),
    at("looks", under, "looks"),
    at("looks-in-part", looked, "looks"),
    at("play-answered", felt, "step/play-lateral"),
    at("play-by-figure", figured, "step/play-vertical"),
    at("turn-by-hand", under, "step/turn-by-hand"),
    at("coupling", under, "step/coupling-look"),
    at("play-danger", danger, "step/play-vertical"),
    at("not-tried", danger, "step/road-speed-vibration"),
    at("locked-answered", danger, "step/idle-noise"),
    at("photo", danger, "photo/play-vertical"),
    at("gauge", danger, "gauge/play-vertical"),
    at("result", danger, "result"),
    at("finding", danger, "finding"),
    at("note", danger, "note"),
    at("ledger", danger, "ledger"),
    at("bench", danger, "bench"),
    { ...at("bench-at-work", bench.visit, "bench"), unfold: true },
    at("bench-photo", bench.visit, bench.photo),
    at("gauge-decided", bench.visit, "gauge/play-vertical"),
    at("outcome", danger, "outcome"),
    at("before", again, "before"),
    at("step-before", again, "step/play-vertical"),
    at("support-look", two, "step/support-look"),
    at("second-support", two, "step/play-vertical:2"),
    at("result-cleared", sound, "result"),
    at("gates-road", sound, "gates/road"),
    at("road-drive", driven, "step/road-drive"),
    { name: "calibration", hash: "#/calibration" },
    { ...at("practice", practice, "step/road-speed-vibration"), practice },
    { ...at("practice-result", practice, "result"), practice },
  ];
}

/** Goes to a screen and waits until it is there. */
export async function show(page, screen) {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, screen.hash);
  if (screen.practice) await practise(page, screen.practice);
  await page.locator("h1").first().waitFor();
  await page.waitForFunction(() => document.querySelector('[data-testid="waiting"]') === null);
  if (screen.unfold)
    await page.evaluate(() => {
      for (const part of document.querySelectorAll("details")) part.open = true;
    });
  await page.evaluate(() => document.fonts.ready);
  if (screen.file) await look(page, screen.file);
  if (screen.at) await page.evaluate((at) => document.getElementById(at).scrollIntoView(), screen.at);
  await quiet(page);
}

/** Chooses a handover file and waits until it is asked whether it is wanted. */
async function look(page, buffer) {
  await page.getByTestId("import-input").setInputFiles({ name: "a.steady", mimeType: "application/zip", buffer });
  await page.getByTestId("preview").waitFor();
  await page.getByTestId("preview").evaluate((one) => one.scrollIntoView());
}

/** Says on the device, as its settings do, which visit is there to practise on. */
async function practise(page, visit) {
  const known = await page.evaluate((id) => {
    const before = localStorage.getItem("steady.practice");
    localStorage.setItem("steady.practice", id);
    return before === id;
  }, visit);
  if (!known) await page.reload();
}
