// What a technician does, on whatever screen is shown: confirms gates, answers, takes a photo, goes on. It knows
// no browser. `hands` press and read for it: fingers on Chromium's glass, a reader of German, the app's own window.

import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";

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
export const SHORT = { ...FULL, "clutch-pedal-effect": "same", "road-speed-vibration": "not-tried", "idle-noise": "none" };

const LONGEST_WALK = 60;

/** Somebody with these answers in mind; `pictured` names the steps a photo is taken at, else it is waived. */
export function technician(hands, answers, pictured = () => true) {
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
    if (kind === "gates") await confirmAll();
    else {
      assert.equal(kind, "step", `a screen the walk does not know: ${shown}`);
      await answer(about);
      if (await hands.shown("waive")) await (pictured(about) ? photograph(about) : waive());
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
    for (const first of ["free-yes", "engine-warm", "temperature-cold"]) if (await hands.shown(first)) await hands.tap(first);
    if (typeof value === "number") {
      await hands.write("reading", String(value));
      await hands.tap("save-reading");
      return hands.seen("step-band");
    }
    await hands.seen(`answer-${value}`);
    await hands.tap(`answer-${value}`);
    return hands.chosen(`answer-${value}`);
  }

  async function photograph(step) {
    await hands.choose("photo-input", photoOf(step === "play-vertical" ? "hands" : "shaft"));
    await hands.seen("photo");
  }

  async function waive() {
    await hands.tap("waive");
    await hands.tap("waiver-too-dark");
    await hands.seen("waived");
  }

  return { screen, walkTo, confirmAll, answer, photograph };
}
