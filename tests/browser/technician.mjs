// What a technician does, on whatever screen is shown: confirms gates, answers, takes a photo, goes on. It knows
// no browser. `hands` press and read for it: fingers on Chromium's glass, a reader of German, the app's own window.

import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { readWhatUnfolded } from "./stage.mjs";

/** A photo of the demo by its name. */
export const photoOf = (name) => fileURLToPath(new URL(`../../demo-data/photos/${name}.jpg`, import.meta.url));

/** A rigid support with movement up and down, on a car whose gearbox creeps: every step of the layout applies. */
export const FULL = {
  "road-speed-vibration": "grows-with-speed",
  "idle-speed": 760,
  "idle-noise": "rattle",
  "idle-raise-effect": "less",
  "selector-effect": "same",
  "misfire-evidence": "none",
  "air-leak-test": "none",
  "engagement-setting": "raised",
  "neutral-2500-buzz": "felt",
  "running-stop": "none",
  "creep-noise": "rattle",
  "engagement-reset-effect": "same",
  "housing-look": "sound",
  "play-vertical": "felt",
  "play-lateral": "none",
  "play-far-end": "none",
  "turn-by-hand": "smooth",
  "coupling-look": "sound",
  "shaft-look": "sound",
  "shield-and-mounts": "sound",
};

/** The same car as it runs with a manual gearbox, and quietly. */
export const SHORT = {
  ...FULL,
  "clutch-pedal-effect": "same",
  "road-speed-vibration": "not-tried",
  "idle-noise": "none",
};

const LONGEST_WALK = 60;

/** Two steps that share a screen. */
export const PAIR = ["play-vertical", "play-lateral"];
const inPair = (step) => PAIR.includes(step.split(":")[0]);
/** A key's name for tests, which says at a pair of steps whose key it is. */
export const keyOf = (name, step) => (inPair(step) ? `${name}-${step}` : name);
/** The steps on the screen of one step. */
export const stepsWith = (step) => (inPair(step) ? PAIR.map((each) => each + step.replace(/^[a-z-]+/, "")) : [step]);

/**
 * Somebody with these answers in mind; `pictured` names the steps a photo is taken at, else it is waived. Looks that are
 * sound are said to be so at once, unless `oneByOne`.
 */
export function technician(hands, answers, pictured = () => true, { oneByOne = false } = {}) {
  /** The looks that were said to be sound at once. */
  const saidSound = new Set();

  /** The screen shown: its address without the visit. */
  const screen = async () => (await hands.place()).replace(/^#\/(visit\/[^/]+\/?)?/, "");

  /**
   * Deals with one screen after another until the named one is shown. `arrived` is called on each before anything
   * is done there, `dealt` before it is left.
   */
  async function walkTo(end, { arrived = async () => {}, dealt = async () => {} } = {}) {
    const passed = [];
    for (let shown = await screen(); shown !== end; shown = await screen()) {
      assert.ok(passed.length < LONGEST_WALK, `the walk never came to ${end}: ${passed.join(", ")}`);
      passed.push(shown);
      await arrived(shown);
      const way = await deal(shown);
      await dealt(shown);
      const before = await hands.place();
      await hands.tap(way);
      await hands.movedOn(before).catch(() => {
        throw new Error(`the walk does not go on from ${shown}`);
      });
    }
    await arrived(end);
  }

  /** Does what a screen asks for; gives the button that leads on. */
  async function deal(shown) {
    const [kind, about] = shown.split("/");
    if (kind === "order") return "order-running-first";
    if (kind === "leave") return "leave";
    if (kind === "looks") return looks();
    if (kind === "gates") await confirmAll();
    else {
      assert.equal(kind, "step", `a screen the walk does not know: ${shown}`);
      for (const step of stepsWith(about)) if (!saidSound.has(step)) await answer(step);
      for (const step of stepsWith(about)) {
        if (await hands.shown(keyOf("waive", step))) await (pictured(step) ? photograph(step) : waive(step));
      }
    }
    return "next";
  }

  /** Opens a look that is not sound, or says of all that are left that they are. */
  async function looks() {
    const names = (await hands.all("look-")).filter((name) => !name.startsWith("look-said-"));
    const left = [];
    for (const step of names.map((name) => name.slice(5)))
      if (!(await hands.shown(`look-said-${step}`))) left.push(step);
    const other = left.find((step) => oneByOne || answers[step] !== "sound");
    if (other !== undefined) return `look-${other}`;
    await hands.tap("all-sound");
    for (const step of left) {
      await hands.seen(`look-said-${step}`);
      saidSound.add(step);
    }
    return "next";
  }

  /** Confirms the gates that are shown, or the first of them. */
  async function confirmAll(most = Infinity) {
    if (await hands.shown("lift-two-post")) await hands.tap("lift-two-post");
    const names = await hands.all("gate-");
    assert.ok(names.length >= 5 && names.length <= 7, `${names.length} gates`);
    for (const name of names.slice(0, most)) {
      await hands.tap(name);
      await hands.chosen(name);
    }
  }

  async function answer(step, value = answers[step]) {
    assert.ok(value !== undefined, `no answer was thought of for ${step}`);
    // What is asked before an answer means anything.
    for (const first of ["free-yes", "engine-warm", "temperature-warm"])
      if (await hands.shown(first)) {
        await hands.tap(first);
        await readWhatUnfolded();
      }
    if (typeof value === "number") {
      await hands.write("reading", String(value));
      await hands.tap("save-reading");
      return hands.seen("step-band");
    }
    const key = keyOf(`answer-${value}`, step);
    await hands.seen(key);
    await hands.tap(key);
    return hands.chosen(key);
  }

  async function photograph(step) {
    await hands.choose(keyOf("photo-input", step), photoOf(inPair(step) ? "hands" : "shaft"));
    await hands.seen(keyOf("photo", step));
  }

  async function waive(step) {
    await hands.tap(keyOf("waive", step));
    await hands.tap("waiver-too-dark");
    await hands.seen(keyOf("waived", step));
  }

  return { screen, walkTo, confirmAll, answer, photograph };
}
