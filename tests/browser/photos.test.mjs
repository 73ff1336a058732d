// Photos on a phone-sized screen against the real core: a wish that outlives the page, zoom, marks by keyboard
// and mouse, before and after, and the code that hands the short text over.

import assert from "node:assert/strict";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { journey } from "./journey.mjs";
import { hand } from "./stage.mjs";

const photo = (name) => fileURLToPath(new URL(`../../demo-data/photos/${name}.jpg`, import.meta.url));
const STEP = "housing-look";

let phone;
/** Names of the requests that were answered, in order. */
const answered = [];

const { go, accessible, confirmGates, sayWho, startVisit } = journey(async (opened) => {
  ({ phone } = opened);
  phone.page.on("response", (response) => {
    if (response.url().endsWith("/api")) answered.push(JSON.parse(response.request().postData()).ask);
  });
  await sayWho();
  await startVisit("Łódź 7");
  await confirmGates("lift");
  await go(`step/${STEP}`);
});

/** Opens the visit anew: the core knows of no photo still waited for, and none is offered. */
async function nothingWanted() {
  const { page, id } = phone;
  const said = page.waitForResponse((response) => response.request().postData()?.includes('"wanted-photos"'));
  await page.reload();
  assert.deepEqual((await (await said).json()).wishes, []);
  await id("photo").waitFor();
  assert.equal(await id("wanted").count(), 0);
}

const marks = (count) =>
  phone.page.locator(`[data-testid=photo-stage] [data-testid=marks][data-count='${count}']`).waitFor();
const percent = async () => Number(await phone.id("photo-stage").getAttribute("data-percent"));

/** Presses the camera's button and waits for the camera, which here is a file chooser. */
async function camera() {
  const { page } = phone;
  const opened = page.waitForEvent("filechooser");
  await page.locator("label:has([data-testid=photo-input])").tap();
  return opened;
}

/** Draws with the mouse between two spots of the stage. */
async function mouse([fromX, fromY], [toX, toY]) {
  const { page, id } = phone;
  await id("photo-stage").scrollIntoViewIfNeeded();
  const box = await id("photo-stage").boundingBox();
  await page.mouse.move(box.x + box.width * fromX, box.y + box.height * fromY);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * toX, box.y + box.height * toY, { steps: 8 });
  await page.mouse.up();
}

test("the core hears of a photo before the camera opens, and a page that ended in between offers it again", async () => {
  const { page, id } = phone;
  await id("answer-sound").waitFor();
  assert.equal(await id("wanted").count(), 0);
  await camera();
  assert.equal(answered.at(-1), "want-photo", "the camera opened first");
  await page.reload();
  await id("wanted").waitFor();
  await accessible("the offer of a photo");
  await id("wanted-choose").setInputFiles(photo("housing"));
  await id("photo").waitFor();
  await id("wanted").waitFor({ state: "detached" });
  await nothingWanted();
});

test("a photo that is no longer wanted is not offered again", async () => {
  const { page, id } = phone;
  await camera();
  await page.reload();
  await id("wanted-drop").tap();
  await id("wanted").waitFor({ state: "detached" });
  await nothingWanted();
});

test("a photo through the camera's button is kept, and the earlier one stays", async () => {
  const { page, id } = phone;
  const before = await id("photo").getAttribute("src");
  await (await camera()).setFiles(photo("seat"));
  await page.waitForFunction(
    (src) => document.querySelector("[data-testid=photo]")?.getAttribute("src") !== src,
    before,
  );
  await nothingWanted();
});

test("the photo is enlarged to one to one by buttons a glove can press, by pinching, and moved", async () => {
  const { page, id } = phone;
  await id("go-photo").tap();
  await page.locator("[data-testid=photo-stage] img").waitFor();
  for (const name of ["zoom-in", "zoom-out", "zoom-one", "zoom-fit", "mark-look", "mark-arrow", "mark-back"]) {
    const { width, height } = await id(name).boundingBox();
    assert.ok(width >= 64 && height >= 64, `${name} is ${width} by ${height}`);
  }
  await page.waitForFunction(() => Number(document.querySelector("[data-testid=photo-stage]").dataset.percent) < 100);
  const whole = await percent();
  await id("zoom-one").tap();
  assert.equal(await percent(), 100);
  await id("zoom-in").tap();
  assert.equal(await percent(), 150);
  await id("zoom-out").tap();
  assert.equal(await percent(), 100);
  await id("zoom-fit").tap();
  assert.equal(await percent(), whole);
  const box = await id("photo-stage").boundingBox();
  const at = (x, y) => [box.x + box.width * x, box.y + box.height * y];
  const fingers = await hand(page);
  await fingers.along([at(0.45, 0.5), at(0.3, 0.5), at(0.1, 0.5)], [at(0.55, 0.5), at(0.7, 0.5), at(0.9, 0.5)]);
  assert.ok((await percent()) > whole * 4, `pinched to ${await percent()} from ${whole}`);
  const moved = () => page.locator("[data-testid=photo-stage] .picture").evaluate((picture) => picture.style.transform);
  const before = await moved();
  await fingers.drag([at(0.5, 0.5), at(0.6, 0.55), at(0.7, 0.6)]);
  assert.notEqual(await moved(), before);
  await accessible("the photo looked at closely");
});

test("marks are drawn by keyboard and mouse, taken back, and undone as one set", async () => {
  const { page, id } = phone;
  await id("zoom-fit").tap();
  const stage = id("photo-stage");
  await id("mark-arrow").tap();
  await stage.focus();
  await page.keyboard.press("Enter");
  for (let step = 0; step < 4; step += 1) await page.keyboard.press("Shift+ArrowLeft");
  await page.keyboard.press("Enter");
  await marks(1);
  await id("mark-label").tap();
  await id("mark-words").fill("Åström: ring & <b>");
  await stage.focus();
  for (let step = 0; step < 6; step += 1) await page.keyboard.press("Shift+ArrowUp");
  await page.keyboard.press("Enter");
  await marks(2);
  await id("mark-freehand").tap();
  await mouse([0.4, 0.6], [0.6, 0.7]);
  await marks(3);
  // The foot takes back what was drawn here, one change after the other, and never another screen's entry.
  await id("undo").tap();
  await marks(2);
  assert.match(await id("mark-state").innerText(), /taken back/);
  await id("mark-back").tap();
  await marks(1);
  await id("undo").tap();
  await marks(2);
  await id("next").tap();
  await id("mark-drop").waitFor({ state: "detached" });
  await id("mark-ring").tap();
  await mouse([0.4, 0.4], [0.6, 0.6]);
  await marks(3);
  await id("next").tap();
  await id("mark-drop").waitFor({ state: "detached" });
  assert.equal(await id("undo").count(), 0, "nothing is drawn that could be taken back");
  // The set that was kept is an entry, taken back at the step that it was about.
  await id("next").tap();
  await id("photo").waitFor();
  await id("undo").tap();
  await id("undo-do").tap();
  await id("undone").waitFor();
  await id("redo").tap();
  await id("undone").waitFor({ state: "detached" });
  await id("go-photo").tap();
  await marks(3);
  await id("next").tap();
  await id("photo").waitFor();
  await id("undo").tap();
  await id("undo-do").tap();
  await id("undone").waitFor();
  await id("go-photo").tap();
  await marks(2);
});

test("two photos of the step stand side by side here and in the finding, once that is chosen", async () => {
  const { page, id } = phone;
  assert.equal(await id("pair").count(), 0);
  await id("pair-with").first().tap();
  await id("pair").waitFor();
  await accessible("before and after");
  await go("finding");
  await page.waitForFunction(() => document.querySelectorAll("[data-testid=paper-photo]").length === 2);
  const words = await id("paper-photo").evaluateAll((found) => found.map((one) => one.alt));
  assert.match(words[0], /^Before, kept /);
  assert.match(words[1], /^After, kept .*Marked on it: Åström: ring & <b>\.$/);
  await page.locator("figure [data-testid=marks][data-count='2']").waitFor();
});

test("the note shows the short text as a code, black on white with room round it", async () => {
  const { id } = phone;
  await go("note");
  await id("qr").tap();
  await id("qr-code").waitFor();
  const [dark, light] = await id("qr-code").evaluate((code) =>
    [code.querySelector("path"), code.querySelector("rect")].map((part) => getComputedStyle(part).fill),
  );
  assert.deepEqual([dark, light], ["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
  const { width } = await id("qr-code").boundingBox();
  const modules = await id("qr-code").evaluate((code) => code.viewBox.baseVal.width);
  assert.ok(width / modules >= 3, `a module is ${width / modules} dots wide`);
  await accessible("the code on the note");
});

test("a photo that cannot be read is refused with what to do, and none is waived in own words", async () => {
  const { page, id } = phone;
  await go("step/shaft-look");
  const heic = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from("ftypheic"), Buffer.alloc(64)]);
  await id("photo-input").setInputFiles({ name: "a.heic", mimeType: "image/heic", buffer: heic });
  await page.getByText("Set the camera to JPEG").waitFor();
  // A photo is wanted of what was found.
  await id("answer-dented").tap();
  await id("waive").tap();
  await id("waiver-own").fill("oil over <everything>");
  await page.locator("[data-testid=waivers] form button").tap();
  await id("waived").waitFor();
  await go("finding");
  await page.getByText("No photo: oil over <everything>").waitFor();
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
