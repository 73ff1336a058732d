// The whole walk by its buttons alone: whatever screen Steady shows next is dealt with as a technician
// would, until there is none. The receipt's journey, beside this one, goes to its screens by address.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { test } from "node:test";
import { promisify } from "node:util";
import { journey } from "./journey.mjs";
import { violations } from "./stage.mjs";
import { SHORT, technician } from "./technician.mjs";

const run = promisify(execFile);
const PLATE = "JN 2500";

const seen = new Map();
const complaints = [];
let phone;

const { tap, chosen, killed, drawSignature, hands } = journey(async (opened) => {
  ({ phone } = opened);
  // A refusal of the core (422) is noted by the browser too; it is asked for in this walk.
  phone.page.context().on("console", (said) => {
    if (said.type() === "error" && !said.text().includes("status of 422")) complaints.push(said.text());
  });
  await phone.page.goto(opened.desk.address);
});

const { screen, walkTo: walk, answer } = technician(hands, SHORT, (step) => step === "play-vertical");
const walkTo = (end) => walk(end, { arrived: look });
const rated = (part, word) => phone.page.locator(`[data-testid="${part}"][data-word="${word}"]`).first().waitFor();

/** Notes, once for each screen, what axe finds on it and whether it can be pushed sideways. */
async function look(name) {
  if (seen.has(name)) return;
  await phone.page.locator("h1").first().waitFor();
  const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth > globalThis.screen.width);
  seen.set(name, [...(await violations(phone.page)), ...(wide ? ["wider than the phone"] : [])]);
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
  const seen = [await screen()];
  for (let turn = 0; turn < 3; turn += 1) {
    await tap("next");
    await phone.quiet();
    seen.push(await screen());
  }
  assert.equal(new Set(seen).size, seen.length, `came back to a step: ${seen.join(", ")}`);
});

test("the part before the hands-on check rates nothing", async () => {
  await walkTo("step/neutral-2500-buzz");
  await answer("neutral-2500-buzz");
  await tap("go-result");
  await rated("band", "unrated");
  await look("an unrated result");
  await phone.page.goBack();
});

test("the app closed and opened anew shows the same step with its answer", async () => {
  assert.equal(await screen(), "step/neutral-2500-buzz");
  await chosen("answer-felt");
  await killed();
  await chosen("answer-felt");
  assert.equal(await screen(), "step/neutral-2500-buzz");
});

test("undo names what it takes back, takes it back where it was, and offers it again", async () => {
  await tap("undo");
  assert.match(await phone.id("undo-ask").innerText(), /Answered, Buzz near 2,500 rpm[^]*Rowan Testcase/);
  await tap("undo-keep");
  await chosen("answer-felt");
  await tap("go-result");
  await phone.page.goBack();
  await tap("undo");
  await tap("undo-do");
  assert.match(await phone.id("undone").innerText(), /^Taken back: Answered, Buzz near 2,500 rpm/);
  await tap("redo");
  await chosen("answer-felt");
  await tap("undo");
  await tap("undo-do");
  await phone.page.locator('[data-testid="answer-felt"][aria-pressed="false"]').waitFor();
  assert.equal(await phone.id("step-band").count(), 0);
});

test("a DANGER answer is not made milder without a reason", async () => {
  await walkTo("step/play-vertical");
  await answer("play-vertical");
  await rated("step-band-play-vertical", "danger");
  await tap("answer-none-play-vertical");
  await phone.id("reason-text").waitFor();
  await tap("reason-cancel");
  await chosen("answer-felt-play-vertical");
});

test("the walk ends in DANGER, do not drive, with the loose seat first", async () => {
  await walkTo("result");
  await rated("band", "danger");
  assert.match(await phone.id("band").first().innerText(), /do not drive/i);
  const first = phone.page.locator("[data-testid^=cause-]").first();
  assert.equal(await first.getAttribute("data-testid"), "cause-loose-seat");
});

test("the result says what to do next, in the finding's own order, before why", async () => {
  const steps = phone.id("next-steps");
  await steps.waitFor();
  const said = await steps.getByRole("listitem").allInnerTexts();
  assert.ok(said.length > 1, said.join(" "));
  assert.match(said[0], /engine|drive/i);
  const [next, why] = await Promise.all(
    [steps, phone.id("reasons")].map((part) => part.evaluate((one) => one.getBoundingClientRect().top)),
  );
  assert.ok(next < why, `${next} is not above ${why}`);
  await phone.page.evaluate(() => {
    location.hash = location.hash.replace("/result", "/finding");
  });
  await phone.page.locator("ol.next li").first().waitFor();
  assert.deepEqual(said, await phone.page.locator("ol.next li").allInnerTexts());
  await phone.page.goBack();
  await steps.waitFor();
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
  await drawSignature();
  await tap("sign");
  await phone.id("signed").waitFor();
  await look("the signed note");
});

test("each screen of the walk is free of barriers and fits the phone", () => {
  assert.deepEqual(
    [...seen].filter(([, found]) => found.length > 0),
    [],
  );
  assert.ok(seen.size > 20, `only ${seen.size} screens were seen`);
});

test("the walk asked nothing of anyone else, and the page complained of nothing", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
  assert.deepEqual(complaints, []);
});
