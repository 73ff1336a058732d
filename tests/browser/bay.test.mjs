// Every screen in every theme, as it is drawn: no barrier that axe-core finds, targets and gaps for gloves, text
// and lines that can be told from their ground, nothing lost with text at 200 %, in each language, with sentences
// 40 % longer or read from right to left; and DANGER unmistakable without colour.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { faults } from "./measure.mjs";
import { openPhone, startDesk, violations } from "./stage.mjs";
import { FIRST_START, TYPED, asker, prepare, show } from "./tour.mjs";
import { LANGUAGES, englishIn, speaker, textsOf, whole } from "./words.mjs";

const THEMES = ["dark", "daylight", "contrast"];
const PHONE = [360, 740];
const OTHERS = { "the larger phone": [412, 915], "a turned phone": [740, 360], "a tablet, 1,000 px wide": [1000, 700] };

let desk;
/** A desk of a first start: nobody has said who is at work. */
let unnamed;
let screens;
/** A phone as it comes, for whoever leaves it so. */
let plain;

before(async () => {
  [desk, unnamed] = await Promise.all([startDesk(), startDesk()]);
  screens = await prepare(asker(desk));
  plain = await openPhone(desk);
  await plain.page.goto(desk.address);
});

after(async () => {
  await plain?.browser.close();
  await Promise.all([desk?.stop(), unnamed?.stop()]);
});

/** Faults of every screen, those of a first start before all. */
async function tour(ready, look, size = PHONE) {
  return [...(await walk(unnamed, FIRST_START, ready, look, size)), ...(await walk(desk, screens, ready, look, size))];
}

/** Faults of a desk's screens on a phone of its own that was made ready first. */
async function walk(desk, screens, ready, look, size) {
  const phone = await openPhone(desk);
  try {
    await phone.page.setViewportSize({ width: size[0], height: size[1] });
    await phone.page.goto(desk.address);
    await ready(phone.page);
    const lines = [];
    for (const screen of screens) {
      await show(phone.page, screen);
      lines.push(...(await look(phone.page)).map((fault) => `${screen.name}: ${fault}`));
    }
    assert.deepEqual(phone.strays, []);
    assert.deepEqual(phone.faults, []);
    return lines;
  } finally {
    await phone.browser.close();
  }
}

/** Turns both desks to a language. */
const speak = (value) =>
  Promise.all([desk, unnamed].map((one) => asker(one)({ ask: "set-preference", name: "locale", value })));

/** Remembers something on the device, as a setting does, and starts anew. */
const remembered = (entries) => async (page) => {
  await page.evaluate(
    (all) => Object.entries(all).forEach(([name, value]) => localStorage.setItem(name, value)),
    entries,
  );
  await page.reload();
  await page.locator("h1").first().waitFor();
};

for (const theme of THEMES) {
  test(`every screen of the ${theme} theme is free of barriers, and fits gloves and eyes`, async () => {
    const look = async (page) => {
      assert.equal(await page.evaluate(() => document.documentElement.dataset.theme), theme);
      return [...(await violations(page)), ...(await faults(page))];
    };
    assert.deepEqual(await tour(remembered({ "steady.theme": theme }), look), []);
  });
}

for (const [name, size] of Object.entries(OTHERS)) {
  test(`every screen fits ${name}`, async () => {
    assert.deepEqual(
      await tour(
        async () => {},
        (page) => faults(page),
        size,
      ),
      [],
    );
  });
}

for (const tag of LANGUAGES.filter(whole)) {
  test(`nothing is lost with text at 200 % (${tag})`, async () => {
    await speak(tag);
    try {
      assert.deepEqual(await tour(doubled(tag), (page) => faults(page, { largeText: true })), []);
    } finally {
      await speak("en");
    }
  });
}

/** Text at 200 %, by the browser's own setting. */
function doubled(tag) {
  return async (page) => {
    await remembered({ "steady.locale": tag })(page);
    const session = await page.context().newCDPSession(page);
    await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
    await page.reload();
    await page.locator("h1").first().waitFor();
    assert.equal(await page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize)), 36);
  };
}

test("sentences 40 % longer fit every screen", async () => {
  const look = async (page) => {
    assert.match(await page.locator("body").innerText(), /lorem/);
    return faults(page);
  };
  const named = screens;
  // Papers carry the core's own sentences, which no pretence reaches.
  screens = screens.filter(({ name }) => !["finding", "note"].includes(name));
  try {
    assert.deepEqual(await tour(remembered({ "steady.pretend": "long" }), look), []);
  } finally {
    screens = named;
  }
});

for (const tag of LANGUAGES.slice(1).filter(whole)) {
  test(`every screen fits its sentences, and says none in English (${tag})`, async () => {
    const english = englishIn(tag, { typed: true });
    const look = async (page) => {
      const { lang, dir } = await page.evaluate(() => ({
        lang: document.documentElement.lang,
        dir: document.documentElement.dir,
      }));
      assert.deepEqual([lang, dir], [tag, speaker(tag)("language-direction")]);
      return [
        ...(await faults(page)),
        ...english((await textsOf(page)).filter((text) => !TYPED.includes(text.trim()))),
      ];
    };
    await speak(tag);
    try {
      assert.deepEqual(await tour(remembered({ "steady.locale": tag }), look), []);
    } finally {
      await speak("en");
    }
  });
}

test("read from right to left every screen fits, and the thumb's side stays", async () => {
  const look = async (page) => {
    assert.equal(await page.evaluate(() => document.documentElement.dir), "rtl");
    return faults(page);
  };
  assert.deepEqual(await tour(remembered({ "steady.pretend": "rtl" }), look), []);
});

for (const [pretend, thumb] of [
  ["no", "right"],
  ["no", "left"],
  ["rtl", "right"],
  ["rtl", "left"],
]) {
  test(`the way on lies under the ${thumb} thumb (${pretend === "rtl" ? "right to left" : "left to right"})`, async () => {
    const phone = await openPhone(desk);
    try {
      await phone.page.goto(desk.address);
      await remembered({ "steady.pretend": pretend, "steady.thumb": thumb })(phone.page);
      await show(
        phone.page,
        screens.find(({ name }) => name === "play"),
      );
      const box = await phone.id("next").boundingBox();
      const undo = await phone.id("undo").boundingBox();
      assert.equal(box.x > undo.x, thumb === "right");
    } finally {
      await phone.browser.close();
    }
  });
}

for (const name of ["reading", "any-of", "raised", "housing", "play", "turn-by-hand", "coupling"]) {
  test(`no answer of ${name} starts below the edge of the smaller phone`, async () => {
    const { page } = plain;
    await show(
      page,
      screens.find((screen) => screen.name === name),
    );
    // The keys come once it is said how warm the engine is.
    if (name === "reading") await page.getByTestId("engine-warm").tap();
    const answers = page.locator("[data-testid^=answer-], [data-testid=save-reading]");
    await answers.first().waitFor();
    const dock = await page.locator(".dock").boundingBox();
    assert.ok((await answers.count()) > 0);
    for (const one of await answers.all()) {
      const { y, height } = await one.boundingBox();
      assert.ok(y >= 0 && y + height <= dock.y + 0.5, `${await one.getAttribute("data-testid")} ends at ${y + height}`);
    }
  });
}

for (const vision of ["none", "achromatopsia", "protanopia", "deuteranopia", "tritanopia", "blurredVision"]) {
  test(`DANGER is told by word and symbol (${vision})`, async () => {
    const { page } = plain;
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setEmulatedVisionDeficiency", { type: vision });
    for (const name of ["result", "play-danger", "home", "note"]) {
      await show(
        page,
        screens.find((screen) => screen.name === name),
      );
      const danger = page.locator('[data-word="danger"]').first();
      assert.match(await danger.innerText(), /DANGER/, name);
      const { width, height } = await danger.locator("svg.symbol .full").first().boundingBox();
      assert.ok(width >= 12 && height >= 10, `${name}: the symbol is ${width} by ${height}`);
      if (process.env.STEADY_LOOK) await page.screenshot({ path: `${process.env.STEADY_LOOK}/${name}-${vision}.png` });
    }
    await session.detach();
  });
}

test("the measurements notice what they are for", async () => {
  const phone = await openPhone(desk);
  try {
    await phone.page.goto(desk.address);
    await show(
      phone.page,
      screens.find(({ name }) => name === "order"),
    );
    assert.deepEqual(await faults(phone.page), []);
    const spoil = (change) =>
      phone.page.evaluate(
        `(() => { const plate = document.querySelector("[data-testid=order-running-first]"); ${change} })()`,
      );
    for (const [change, noticed] of [
      ['plate.style.minHeight = "0"; plate.style.height = "40px"', /^target of \d+ by 40, not 64/],
      ['plate.style.marginBottom = "-12px"', /^-?\d px between/],
      ['plate.querySelector("strong").style.color = "#8d989f"', /^contrast [0-6]\.\d+/],
      ['plate.style.borderColor = "#232a2f"; plate.style.background = "#14181b"', /^edge contrast 1/],
      ['plate.style.fontSize = "14px"', /^text of 14\.0 px/],
      ['plate.style.width = "500px"', /^wider than the screen/],
      ['plate.style.overflow = "hidden"; plate.style.height = "70px"; plate.style.whiteSpace = "nowrap"', /^cut off/],
    ]) {
      await spoil(`plate.dataset.before = plate.getAttribute("style") ?? ""; ${change}`);
      const found = await faults(phone.page);
      assert.ok(
        found.some((fault) => noticed.test(fault)),
        `${change} was not noticed: ${found.join("; ")}`,
      );
      await spoil('plate.removeAttribute("style"); plate.querySelector("strong").removeAttribute("style")');
    }
    assert.deepEqual(await faults(phone.page), []);
  } finally {
    await phone.browser.close();
  }
});
