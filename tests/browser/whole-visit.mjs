// A whole visit in one language, from the first start to the signed receipt, the bench and the outcome, found as
// somebody finds it who reads the screen: by its words and roles. No sentence of it is left in English.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";
import { FULL, PAIR, technician } from "./technician.mjs";
import { englishIn, speaker, textsOf } from "./words.mjs";

/** A car's plate, whatever the language. */
export const PLATE = "DE 2500";
const GATES = [
  "lift-gates-hold",
  "stands-and-straps",
  "engine-and-gearbox-held",
  "shaft-marked",
  "maker-procedure",
  "high-voltage",
];
/** Screens of the visit that the walk does not lead to. */
const BESIDE = [
  "step/play-lateral",
  "looks",
  "gauge/play-vertical",
  "photo/play-vertical",
  "intake",
  "order",
  "gates/running",
];

/**
 * Walks it. `point` is the decimal sign that is typed wherever a number is, `unread` a word that is no number, `note` what is written at the
 * bench; `further` looks at each screen beside its words.
 */
export function wholeVisit(tag, { point, unread, note, further = async () => {} }) {
  const say = speaker(tag);
  const english = englishIn(tag);
  /** What a message starts with, up to a variable. */
  const startOf = (key, variable) => new RegExp(`^${say(key, { [variable]: "{", min: 0, max: 0 }).split("{")[0]}`);

  let phone;
  /** The screens that were read, each with what is English on it. */
  const read = new Map();

  const { place, drawSignature, hands } = journey(async (opened) => {
    ({ phone } = opened);
    await phone.page.goto(opened.desk.address);
  });

  const button = (name, more = {}) => phone.page.getByRole("button", { name, exact: true, ...more });
  const tap = (key, values) => button(say(key, values)).tap();
  /** A button whose words go on behind these: an explanation, or who confirmed it. */
  const beginning = (text, more) =>
    phone.page.getByRole("button", { name: new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`), ...more });
  const heading = (text) => phone.page.getByRole("heading", { name: text, exact: true }).waitFor();

  /** Reads the screen that is shown. */
  async function readScreen(name) {
    await phone.page.locator("h1").first().waitFor();
    await phone.quiet();
    await phone.page.locator("details").evaluateAll((all) =>
      all.forEach((one) => {
        one.open = true;
      }),
    );
    const { lang, dir } = await phone.page.evaluate(() => ({
      lang: document.documentElement.lang,
      dir: document.documentElement.dir,
    }));
    assert.deepEqual([lang, dir], [tag, say("language-direction")]);
    read.set(name, [...(read.get(name) ?? []), ...english(await textsOf(phone.page))]);
    await further(name, phone);
  }

  /** What a name that the walk uses is called on the screen that is shown. */
  function words(name, step) {
    const [, kind, id] = /^([a-z]+)-?(.*)$/.exec(name);
    const direction = PAIR.includes(id) ? say(`pair-short-${id}`) : null;
    switch (kind) {
      case "answer":
        return say.first([`answer-${step}-${id}`, `answer-${id}`]);
      case "gate":
      case "lift":
      case "order":
      case "waiver":
        return say(name);
      case "temperature":
      case "free":
      case "engine":
        return say(`ui-${name}`);
      case "leave":
        return say(`ui-leave-${step}-done`);
      case "waive":
        return direction ? say("pair-of", { what: say("ui-photo-none"), direction }) : say("ui-photo-none");
      case "look":
        return say(`looked-${id}`);
      case "save":
        return say("ui-save");
      case "next":
        return say("ui-next");
      default:
        throw new Error(`no words for ${name}`);
    }
  }

  /** The walk's hands, which find everything by what it is called. */
  const reader = {
    ...hands,
    tap: async (name) => (await named(name)).tap(),
    chosen: async (name) => (await named(name, { pressed: true })).waitFor(),
    shown: async (name) => {
      if (name.startsWith("look-said-")) return hands.shown(name);
      const found = await named(name);
      // What was said already stands there as a key of the same words, to be said anew; it is no choice to be made.
      const choice = /^(temperature|free|engine)-/.test(name);
      return (choice ? found.and(phone.page.locator("[aria-pressed]")) : found).isVisible();
    },
    write: async (name, text) => {
      assert.equal(name, "reading");
      await phone.page.getByRole("textbox", { name: startOf("ui-reading", "unit") }).fill(text);
    },
    choose: (name, file) => {
      const [step, what] = [PAIR.find((each) => name.endsWith(each)), say("ui-photo-take")];
      const label = step ? say("pair-of", { what, direction: say(`pair-short-${step}`) }) : what;
      return phone.page.getByLabel(label, { exact: true }).setInputFiles(file);
    },
    all: async (beginning) => {
      const found = await hands.all(beginning);
      // A row says its name first, then what to look for or what was answered.
      for (const name of found) if (beginning === "look-") await (await named(name.replace("-said", ""))).waitFor();
      return found;
    },
    seen: async (name) => {
      const step = PAIR.find((each) => name.endsWith(each)) ?? (await about());
      if (name === "step-band") return phone.page.getByText(say("ui-this-step"), { exact: true }).waitFor();
      if (!/^photo(-|$)/.test(name)) return (await named(name)).waitFor();
      const title = say("ui-photo-of", { title: say(`step-${step}`) });
      return phone.page.getByRole("img", { name: title, exact: true }).waitFor();
    },
  };
  const about = async () => (await place()).split("/").at(-1);
  /** Of two directions on a screen, each stands under its own heading. */
  const named = async (name, more) => {
    const step = PAIR.find((each) => name.startsWith("answer-") && name.endsWith(each));
    if (!step) return beginning(words(name, await about()), more);
    const text = words(name.slice(0, -step.length - 1), step);
    const region = phone.page.getByRole("region", { name: say(`pair-${step}`), exact: true });
    return region.getByRole("button", { name: new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`), ...more });
  };

  const { walkTo } = technician(reader, FULL, () => true, { oneByOne: true });

  test(`the first start turns to ${tag} before anything is written`, async () => {
    await button(say("language-name")).tap();
    await heading(say("ui-welcome-what-title"));
    await readScreen("first start");
    await phone.page.getByLabel(say("ui-technician")).fill("Kim Demo");
    await tap("ui-save");
    await button(say("ui-new-visit")).waitFor();
    await readScreen("an empty list");
  });

  test("the intake is written down", async () => {
    await tap("ui-new-visit");
    await tap("ui-start-visit");
    await phone.page.getByText(say("ui-layout-needed"), { exact: true }).waitFor();
    await beginning(say("layout-rigid-engine-speed")).tap();
    await tap("seat-bare");
    await tap("gearbox-automated-clutch");
    await tap("sound-whine");
    await phone.page.getByLabel(say("ui-plate"), { exact: true }).fill(PLATE);
    await phone.page.getByLabel(say("ui-owner-name"), { exact: true }).fill("Alex Example");
    await phone.page.getByLabel(say("ui-odometer"), { exact: true }).fill(unread);
    await readScreen("intake");
    await phone.id("odometer").fill("81200");
    await tap("ui-start-visit");
    await heading(say("step-road-speed-vibration"));
  });

  /** A gauge at the play check that is shown, its numbers as this language's pad types them. */
  async function gauge() {
    await phone.page.evaluate(() => {
      location.hash = location.hash.replace("/step/", "/gauge/");
    });
    await heading(say("ui-gauge"));
    await phone.id("gauge-mpe").fill(`0${point}02`);
    for (const at of [0, 1, 2]) await phone.id(`gauge-reading-${at}`).fill(`0${point}1${at}`);
    await phone.id("gauge-save").tap();
    await phone.id("gauge-recorded").waitFor();
    await readScreen("gauge");
    await phone.page.goBack();
    await heading(say("pair-play"));
  }

  test("the walk leads through every step to the result", async () => {
    const dealt = async (shown) => {
      await readScreen(shown);
      if (shown === `step/${PAIR[0]}`) await gauge();
    };
    await walkTo("result", { arrived: readScreen, dealt });
    await heading(say("ui-outcome"));
    const rating = phone.page.getByRole("region", { name: say("ui-rating") });
    await rating.getByText(say("word-danger"), { exact: true }).waitFor();
    await phone.page.getByText(say("cause-loose-seat"), { exact: true }).first().waitFor();
    const steps = [...read.keys()].filter((name) => name.startsWith("step/"));
    const [, shared] = PAIR;
    assert.deepEqual(
      steps.map((name) => name.slice(5)).sort(),
      Object.keys(FULL)
        .filter((step) => step !== shared)
        .sort(),
    );
  });

  test("the finding, and the note that the owner signs", async () => {
    await tap("ui-finding");
    await heading(say("finding-title"));
    await readScreen("finding");
    await phone.page.goBack();
    await tap("ui-note");
    await heading(say("note-title"));
    await tap("decision-decline");
    await drawSignature();
    await phone.page.getByRole("img", { name: say("ui-pad-signed"), exact: true }).waitFor();
    await readScreen("note");
    await tap("ui-sign");
    await button(say("ui-sign-again")).waitFor();
    await readScreen("signed note");
    await phone.page.goBack();
    await tap("ui-ledger");
    await phone.page.getByText(say("decision-short-decline")).first().waitFor();
    await readScreen("ledger");
    await phone.page.goBack();
  });

  test("the bench: gates, a bore, the ring and a note", async () => {
    await tap("ui-bench");
    await heading(say("ui-bench"));
    for (const gate of GATES.map((name) => say(`gate-teardown-${name}`))) {
      await beginning(gate).tap();
      await beginning(gate, { pressed: true, includeHidden: true }).waitFor({ state: "attached" });
    }
    for (const seen of ["ui-look-cracked", "ui-look-ring-turned"]) {
      await phone.page
        .getByRole("group", { name: say(seen), exact: true })
        .getByRole("button", { name: say("ui-look-no"), exact: true })
        .tap();
      await phone.page
        .getByRole("group", { name: say(seen), exact: true })
        .getByRole("button", { name: say("ui-look-no"), pressed: true })
        .waitFor();
    }
    await tap("ui-bench-next", { part: say("ui-bench-found") });
    const found = phone.page.getByTestId("bench-found");
    assert.equal(await found.getByTestId("pad-point").innerText(), point);
    for (const [field, usual] of [
      ["ui-bore-resolution", "001"],
      ["ui-bore-mpe", "004"],
    ])
      assert.equal(await found.getByLabel(say(field), { exact: true }).inputValue(), `0${point}${usual}`);
    for (const depth of [0, 1]) {
      for (const angle of [0, 1, 2, 3, 4, 5])
        await found.getByTestId(`bore-${depth}-${angle}`).fill(`72${point}0${angle}1`);
    }
    await readScreen("bench");
    await phone.page.getByRole("button", { name: say("ui-ring-free"), exact: true }).tap();
    await button(say("ui-ring-free"), { pressed: true }).waitFor();
    await phone.page.getByLabel(say("ui-bench-note"), { exact: true }).fill(note);
    await readScreen("bench with a ring");
  });

  test("numbers are typed at the bench as this language writes them", async () => {
    const { id } = phone;
    const [found, skim, fit] = ["bench-found", "bench-skim", "bench-fit"].map((part) => id(part));
    const unfold = async (part) => {
      if (!(await id(part).evaluate((details) => details.open))) await id(part).locator("summary").first().tap();
    };
    await unfold("bench-ring");
    await id("run-out").fill(`0${point}42`);
    await id("run-out-save").tap();
    await id("run-out-read").waitFor();
    await found.getByTestId("bore-save").tap();
    await found.getByTestId("polar-plot").waitFor();
    const gates = id("bench-gates-machining").locator("[data-testid^='bench-gate-']");
    for (let at = 0; at < (await gates.count()); at += 1) {
      await unfold("bench-gates-machining");
      await gates.nth(at).tap();
      await phone.quiet();
    }
    await unfold("bench-skim");
    await id("pass-diameter").fill(`72${point}113`);
    await id("contact-partly").tap();
    await skim.getByRole("listitem").first().waitFor();
    await unfold("bench-fit");
    await id("fit-bearing-od").fill(`72${point}0`);
    await id("fit-bore").fill(`72${point}013`);
    await id("fit-bore-u").fill(`4${point}5`);
    await id("fit-housing").selectOption("A356");
    await id("fit-save").tap();
    await fit.getByTestId("recorded").waitFor();
    await readScreen("bench with its numbers");
  });

  test(`the outcome is confirmed, and every other screen reads ${tag} too`, async () => {
    await phone.page.goBack();
    await tap("ui-turned-out");
    await tap("cause-loose-seat");
    await tap("ui-turned-out-save");
    await phone.page.getByText(say("ui-turned-out-kept"), { exact: true }).waitFor();
    await readScreen("outcome");
    const visit = /#\/visit\/[^/]+/.exec(await place())[0];
    for (const inside of BESIDE) {
      await phone.page.evaluate((to) => {
        location.hash = to;
      }, `${visit}/${inside}`);
      await readScreen(`${inside} afterwards`);
    }
    for (const other of ["settings", "workshop", "calibration", ""]) {
      await phone.page.evaluate((to) => {
        location.hash = to;
      }, `#/${other}`);
      await readScreen(`#/${other}`);
    }
  });

  test("not a sentence was English", () => {
    assert.ok(read.size > 35, `only ${read.size} screens were read`);
    assert.deepEqual(
      [...read].filter(([, found]) => found.length > 0),
      [],
    );
  });

  test("English would be noticed, as a sentence, as a label and as nobody's text", () => {
    const speak = speaker("en");
    const said = [speak("ui-technician-why"), speak("ui-next"), speak("ui-found", { total: 3 }), "Check the bearing"];
    for (const text of said) assert.equal(english([text]).length, 1, `${text} was not noticed`);
    assert.deepEqual(english([say("ui-technician-why"), say("ui-next"), say("ui-found", { total: 3 })]), []);
  });

  test("nothing left for elsewhere and nothing broke", () => {
    assert.deepEqual(phone.strays, []);
    assert.deepEqual(phone.faults, []);
  });
}
