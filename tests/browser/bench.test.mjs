// The bench on a phone-sized screen against the real core: a gauge under the car, then gates, a bore entered by hand,
// its polar plot, the skim picture, passes with photos, the sleeved bore pasted as coordinates, a fit of both seats of
// the sleeve, the ring, the verdict, the repair record; then the outcome and the page that counts outcomes; an old
// sleeve of another car that comes out for one of the workshop's own.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { journey } from "./journey.mjs";
import { hand, madeBy } from "./stage.mjs";

const DIAL = new URL("../../demo-data/bench/worn-seat-dial.csv", import.meta.url);
const BORE = fileURLToPath(new URL("../../demo-data/photos/bore.jpg", import.meta.url));

let desk;
let phone;
let ask;

const { go, accessible, confirmGates, place, sayWho, startVisit } = journey(
  (opened) => ({ desk, phone, ask } = opened),
);

async function confirmBenchGates(set) {
  const { page } = phone;
  const part = page.getByTestId(`bench-gates-${set}`);
  await unfold(`bench-gates-${set}`);
  const gates = part.locator("[data-testid^=bench-gate-]");
  const count = await gates.count();
  assert.ok(count >= 3, `only ${count} gates in ${set}`);
  for (let index = 0; index < count; index += 1) {
    if (!(await gates.nth(index).isVisible())) await part.locator("summary").click();
    await gates.nth(index).click();
    await phone.quiet();
  }
}

const next = () => phone.id("bench-next").getAttribute("data-part");

async function unfold(id) {
  const part = phone.id(id);
  if (!(await part.evaluate((details) => details.open))) await part.locator("summary").first().click();
}

test("a visit is opened", async () => {
  await sayWho();
  await startVisit("TR 4417");
});

test("a gauge under the car decides what a hand left unsure", async () => {
  const { page, id } = phone;
  await confirmGates("lift");
  await go("step/play-vertical");
  await id("temperature-cold").click();
  await id("answer-unsure-play-vertical").click();
  await phone.quiet();
  await id("go-gauge-play-vertical").click();
  for (const [at, reading] of ["0.13", "0.12", "0.14"].entries()) await id(`gauge-reading-${at}`).fill(reading);
  await id("gauge-bore").fill("35");
  await id("gauge-group").selectOption("C3");
  await accessible("a gauge being read");
  await id("gauge-save").click();
  await id("gauge-plot").waitFor();
  assert.equal(await id("gauge-result").getAttribute("data-decision"), "proven");
  await accessible("a gauge that decided");
  await go("result");
  await page.locator(`[data-testid="band"][data-word="danger"]`).first().waitFor();
  await id("cause-loose-seat").locator("summary").first().click();
  assert.match(await id("cause-loose-seat").innerText(), /by gauge: its readings are .* times as likely with movement/);
  await accessible("a result with a gauge in its account");
});

test("nothing of the bench can be recorded before its gates", async () => {
  const { id } = phone;
  await go("bench");
  await id("verdict").waitFor();
  assert.equal(await id("verdict").getAttribute("data-verdict"), "open");
  assert.equal(await next(), "gates-teardown");
  assert.equal(await id("bench-found").count(), 0, "nothing can be recorded before the gates");
  await accessible("the bench before its gates");
});

test("an oval bore is entered and shows its polar plot and the skim picture", async () => {
  const { page, id } = phone;
  await confirmBenchGates("teardown");
  await unfold("bench-found");
  const found = id("bench-found");
  await found.getByTestId("bore-angles").fill("6");
  await found.getByTestId("bore-depths").fill("2");
  await found.getByTestId("bore-wall").fill("6.0");
  const size = (depth, angle) => (72.02 + 0.03 * Math.cos((2 * Math.PI * angle) / 6) + 0.004 * depth).toFixed(3);
  const pad = found.getByTestId("bore-pad");
  const at = async () => `${await pad.getAttribute("data-depth")}-${await pad.getAttribute("data-angle")}`;
  const key = (name) => pad.getByTestId(`pad-${name}`).click();
  const type = async (text) => {
    for (const sign of text) await key(sign === "." ? "point" : sign);
  };
  await type("71.000");
  assert.equal(await at(), "0-1", "a reading with all its decimals goes on by itself");
  await key("next");
  assert.equal(await at(), "0-1", "the step was made already: no angle is left out by the same press");
  await key("next");
  assert.equal(await at(), "0-2", "a second press leaves one out");
  await key("undo");
  assert.equal(await at(), "0-0");
  assert.equal(await found.getByTestId("bore-0-0").inputValue(), "", "what was undone is gone");
  await type(size(0, 0));
  for (let angle = 1; angle < 6; angle += 1) {
    assert.equal(await at(), `0-${angle}`);
    const alike = size(0, angle).slice(0, 3) === size(0, angle - 1).slice(0, 3);
    if (alike) await key("begins");
    await type(size(0, angle).slice(alike ? 3 : 0));
    assert.equal(await found.getByTestId(`bore-0-${angle}`).inputValue(), size(0, angle));
  }
  assert.equal(
    await found.getByTestId("bore-sketch").getAttribute("data-points"),
    "0",
    "the next depth is still empty",
  );
  await key("repeat");
  assert.equal(await found.getByTestId("bore-1-0").inputValue(), size(0, 5), "as the one before");
  await key("undo");
  await accessible("a bore on the pad");
  await found.locator("[id^='paste.'] > summary").click();
  const column = Array.from({ length: 6 }, (_, angle) => `${angle + 1};${size(1, angle).replace(".", ",")};mm`);
  await found.getByTestId("bore-paste-text").fill(["no;value;unit", ...column].join("\n"));
  assert.match(await found.getByTestId("bore-paste-said").innerText(), /more than one way/);
  await found.getByTestId("bore-paste-1").click();
  assert.equal(await found.getByTestId("bore-1-5").inputValue(), size(1, 5).replace(".", ","));
  assert.equal(await found.getByTestId("bore-sketch").getAttribute("data-points"), "12", "the oval and its other half");
  await page.reload();
  await id("verdict").waitFor();
  await unfold("bench-found");
  assert.equal(await found.getByTestId("bore-0-0").inputValue(), "72.050", "what was typed survives a reload");
  await accessible("a bore being entered");
  await found.getByTestId("bore-save").click();
  await found.getByTestId("polar-plot").waitFor();
  const dashes = (line) =>
    found
      .getByTestId("polar-plot")
      .locator(line)
      .evaluate((one) => getComputedStyle(one).strokeDasharray);
  assert.equal(await dashes(".wall"), "none", "the wall is a whole line");
  assert.notEqual(await dashes(".ideal"), "none", "the circle it is held against is not");
  await unfold("bench-skim");
  await id("skim-rings").waitFor();
  await accessible("a bore with its plot");
  await id("skim-after").click();
  assert.equal(await next(), "look", "the look at the housing is still open");
  await unfold("bench-look");
  await id("look-cracked-false").click();
  await phone.quiet();
  await id("look-dyed-true").click();
  await phone.quiet();
  await id("look-sleeved-true").click();
  await phone.quiet();
  await id("look-ring_turned-true").click();
  await phone.quiet();
  assert.equal(await next(), "old-sleeve", "an old sleeve hides the bore that would be cut");
  await unfold("bench-old-sleeve");
  await id("sleeve-way-press").click();
  assert.equal(await id("sleeve-out-save").isDisabled(), true, "the press has its own checks");
  await accessible("an old sleeve to come out");
  const press = id("bench-old-sleeve").locator("[data-testid^=bench-gate-]");
  for (let at = 0; at < (await press.count()); at += 1) {
    await press.nth(at).click();
    await phone.quiet();
  }
  assert.equal(await id("recorded").count(), 0, "nothing is said to be recorded before it is out");
  await id("sleeve-out-save").click();
  await id("sleeve-out").waitFor();
  const low = (name) =>
    id("bench-old-sleeve")
      .getByTestId(name)
      .evaluate((one) => one.getBoundingClientRect().top);
  assert.ok((await low("recorded")) < (await low("bore-save")), "said at the sleeve, not under the form of its bore");
  assert.equal(await next(), "look", "what the sleeve hid is looked at anew");
  await unfold("bench-look");
  await id("look-anew").waitFor();
  await accessible("a housing to be looked at anew");
  const visit = (await place()).split("/")[2];
  const file = await readFile(DIAL, "utf8");
  await ask({ ask: "bench", visit, act: { bore: "behind", file, instrument: null } });
  await page.reload();
  await id("verdict").waitFor();
  await unfold("bench-fit");
  assert.equal(await id("fit-measured").count(), 0, "what was behind a sleeve is no bearing's seat");
  await id("fit-sleeved").click();
  await id("fit-measured").click();
  assert.equal(await id("fit-housing-bore").count(), 0, "it is the bore that the new sleeve goes into");
  assert.equal(await id("fit-bore").count(), 1);
  await id("fit-measured").click();
  for (const what of [/behind/i, /sleeve/i]) {
    assert.match(await id("bench-undo").innerText(), what);
    await id("bench-undo").click();
    await id("undo-do").click();
    await phone.quiet();
  }
  await unfold("bench-look");
  await id("look-sleeved-false").click();
  await phone.quiet();
  assert.equal(await next(), "gates-machining", "a ring that turned asks for a skim");
});

test("passes, fit, ring and note lead to a repair record", async () => {
  const { page, id } = phone;
  await confirmBenchGates("machining");
  assert.equal(await next(), "skim");
  await id("bench-next").click();
  await id("pass-diameter").fill("72.08");
  await page.reload();
  await id("verdict").waitFor();
  await unfold("bench-skim");
  assert.equal(await id("pass-diameter").inputValue(), "72.08", "what was typed survives a reload");
  await id("contact-partly").click();
  await phone.quiet();
  for (const count of [1, 2]) {
    await id("photo-input-bench-pass-1").setInputFiles(BORE);
    await page.waitForFunction(
      (wanted) => document.querySelectorAll("[data-testid=photos-bench-pass-1] img").length === wanted,
      count,
    );
  }
  await id("contact-all-round").click();
  await id("bench-clean").waitFor();
  assert.equal(await id("contact-partly").isVisible(), false, "no further pass is asked for");
  await id("open-bench-pass-1-0").click();
  await id("mark-ring").click();
  const stage = await id("photo-stage").boundingBox();
  await (
    await hand(page)
  ).drag([
    [stage.x + 60, stage.y + 60],
    [stage.x + 120, stage.y + 110],
  ]);
  await accessible("a photo of the bench being marked");
  await id("next").click();
  await page.getByText("The marks are kept").waitFor();
  await id("next").click();
  await id("verdict").waitFor();
  await unfold("bench-skim");
  await unfold("bench-finished");
  const finished = id("bench-finished");
  await finished.getByTestId("bore-kind-coordinates").click();
  const angles = Array.from({ length: 12 }, (_, at) => (Math.PI * at) / 6);
  const points = angles.map(
    (angle) => `9;${(35.982 * Math.cos(angle)).toFixed(4)};${(35.982 * Math.sin(angle)).toFixed(4)}`,
  );
  await finished.getByTestId("bore-points").fill(points.join("\n"));
  await accessible("coordinates being pasted");
  await finished.getByTestId("bore-save").click();
  await finished.getByTestId("polar-plot").waitFor();
  await unfold("bench-fit");
  await id("fit-bearing-od").fill("72");
  await id("fit-measured").click();
  await id("fit-housing").selectOption("A356");
  await id("fit-sleeved").click();
  await id("fit-sleeve").selectOption("ductile-iron");
  await id("fit-sleeve-od").fill("75.060");
  await id("fit-housing-bore").fill("75.000");
  await id("fit-temp-low").fill("20");
  await id("fit-temp-high").fill("60");
  await accessible("a fit being entered");
  await id("fit-save").click();
  await id("bench-fit").getByText("Sleeve in housing").waitFor();
  await phone.quiet();
  const { top, bottom } = await id("bench-fit")
    .getByTestId("recorded")
    .evaluate((one) => one.getBoundingClientRect().toJSON());
  assert.ok(top >= 0 && bottom <= 740, `what came of it lies from ${top} to ${bottom}`);
  const verdict = await id("verdict").innerText();
  assert.equal(await id("verdict-of-fit").innerText(), verdict, "what the fit comes to stands where it was recorded");
  assert.match(await id("bench-fit").innerText(), /Hole 71\.9\d+ mm to 71\.9\d+ mm \(measured\)/);
  await unfold("bench-ring");
  await id("ring-place-front").click();
  await id("ring-clearance").fill("0.012");
  await id("ring-free").click();
  await phone.quiet();
  assert.match(await id("bench-ring").innerText(), /clearance left: 0\.012[^]*rear bearing was not turned/);
  await id("ring-place-rear").click();
  await id("ring-free").click();
  await phone.quiet();
  await id("run-out").fill("0.08");
  await id("run-out-save").click();
  await id("run-out-read").waitFor();
  assert.match(await id("run-out-read").innerText(), /0\.08/);
  await unfold("bench-notes");
  await id("bench-note").fill("New bolts, 25 Nm, maker's sheet");
  await id("bench-note-save").click();
  await phone.quiet();
  await id("bench-undo").click();
  assert.match(await id("undo-ask").innerText(), /Note of the bench[^]*By Kim Demo/);
  await id("undo-keep").click();
  await id("undo-ask").waitFor({ state: "detached" });
  await id("bench-undo").click();
  await id("undo-do").click();
  await id("bench-undone").waitFor();
  assert.match(
    await id("bench-undo").innerText(),
    /Run-out of the shaft read/,
    "what would go next is named on the key",
  );
  await id("bench-note").fill("New bolts, 25 Nm, maker's sheet");
  await id("bench-note-save").click();
  for (const set of ["heat", "press", "refit"]) {
    await confirmBenchGates(set);
    if (set !== "heat") assert.equal(await id(`verdict-of-gates-${set}`).count(), 1, "and before what rests on it");
  }
  await id("bench-complete").waitFor();
  await phone.page.locator("#bench-gates-heat:not([open])").waitFor();
  assert.ok(await id("bench-gates-refit").evaluate((part) => part.open), "what was done last is still being read");
  await accessible("the bench with all its parts");
  assert.equal(await madeBy(page, () => id("make-pdf").click()), "%PDF-");
  for (const paper of ["machinist", "before-after"]) {
    await id(`paper-${paper}`).click();
    assert.equal(await madeBy(page, () => id("make-pdf").click()), "%PDF-");
  }
});

test("the outcome is confirmed and counted", async () => {
  const { page, id } = phone;
  await go("outcome");
  await id("outcome-loose-seat").click();
  await accessible("the outcome");
  await id("outcome-save").click();
  await id("outcome").waitFor();
  await page.goto(`${desk.origin}/#/calibration`);
  await id("outcomes-count").waitFor();
  assert.match(await id("outcomes-count").innerText(), /one/i);
  await id("judgement-alone").waitFor();
  await id("scores").waitFor();
  await accessible("the page that counts outcomes");
});

test("the technician can think otherwise", async () => {
  const { page, id } = phone;
  await page.goBack();
  await phone.quiet();
  await go("result");
  await id("opinion-open").click();
  await id("opinion-cause").selectOption("misfire");
  await id("opinion-reason").fill("It pops when warm.");
  await accessible("an opinion being given");
  await id("opinion-save").click();
  await id("opinion").waitFor();
  await accessible("a result with an opinion");
});

test("an old sleeve comes out, and one of the workshop's own is taken into the fit", async () => {
  const { page, id } = phone;
  const own = { material: "ductile-iron", outside: "76.06", bore: "70" };
  await ask({ ask: "set-workshop", workshop: { sleeves: [own] } });
  await page.goto(`${desk.origin}/#/`);
  await startVisit("TR 4418");
  await go("bench");
  await id("verdict").waitFor();
  await confirmBenchGates("teardown");
  await unfold("bench-look");
  await id("look-sleeved-true").click();
  await phone.quiet();
  await unfold("bench-old-sleeve");
  await id("sleeve-way-heat").click();
  const gates = id("bench-old-sleeve").locator("[data-testid^=bench-gate-][aria-pressed=false]");
  for (let left = await gates.count(); left > 0; left -= 1) {
    await gates.first().click();
    await phone.quiet();
  }
  await id("sleeve-outside").fill("75.06");
  await id("sleeve-out-save").click();
  await id("sleeve-out").waitFor();
  assert.match(await id("bench-old-sleeve").innerText(), /75\.06/);
  await unfold("bench-fit");
  await id("fit-sleeved").click();
  assert.equal(await id("stock-0").getAttribute("data-says"), "open", "nothing of the fit is known yet");
  await id("stock-take-0").click();
  assert.equal(await id("fit-sleeve").inputValue(), "ductile-iron");
  assert.match(await id("fit-sleeve-od").inputValue(), /^76\.06/);
  await accessible("a sleeve of the workshop in the fit");
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
