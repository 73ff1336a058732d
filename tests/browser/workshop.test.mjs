// A workshop says who it is, and its papers carry it; the finding shows the scope of work without a quote, and
// a rating with nothing to repair asks for no repair.

import assert from "node:assert/strict";
import { test } from "node:test";
import { journey } from "./journey.mjs";

let desk;
let phone;

const { go, accessible, confirmGates, sayWho, startVisit } = journey((opened) => ({ desk, phone } = opened));

test("the workshop enters its particulars, and a number that could be two is refused", async () => {
  const { page, id } = phone;
  await sayWho();
  await id("go-settings").click();
  await id("workshop").click();
  await id("workshop-name").fill("Example Works");
  await id("workshop-address").fill("1 Example Yard\nExampleford");
  await id("workshop-phone").fill("01632 960417");
  await id("length-thou").click();
  await id("from-bearings-only").fill("3");
  await id("to-bearings-only").fill("4,5");
  await id("workshop-rate").fill("1,000");
  await id("workshop-currency").fill("GBP");
  await id("stock-more").click();
  await id("stock-outside-0").fill("76,05");
  await id("stock-bore-0").fill("70");
  await id("instrument-more").click();
  await id("instrument-name-0").fill("Bore gauge 4");
  await id("instrument-resolution-0").fill("0.001");
  await id("instrument-mpe-0").fill("0.002");
  await id("instrument-calibrated-0").fill("2020-01-05");
  await id("instrument-due-0").fill("2021-01-04");
  await accessible("the workshop");
  await id("save-workshop").click();
  await page.getByRole("alert").first().waitFor();
  assert.equal(await id("workshop-saved").count(), 0);
  await id("workshop-rate").fill("86.50");
  await id("save-workshop").click();
  await id("workshop-saved").waitFor();
  await page.reload();
  await id("workshop-name").waitFor();
  assert.equal(await id("workshop-name").inputValue(), "Example Works");
  assert.equal(await id("to-bearings-only").inputValue(), "4.5");
  assert.equal(await id("stock-outside-0").inputValue(), "76.05");
  assert.match(await id("overdue").innerText(), /DOES NOT HOLD TODAY \(noted until 2021-01-04\)/);
  assert.equal(await id("length-thou").getAttribute("aria-pressed"), "true");
});

test("what others made and its licences can be read in the app", async () => {
  const { page, id } = phone;
  await page.goto(`${desk.origin}/#/settings`);
  await id("notices").locator("summary").click();
  await id("notices-text").waitFor();
  const text = await id("notices-text").innerText();
  for (const word of ["rusqlite ", "svelte ", "Permission is hereby granted", "SIL OPEN FONT LICENSE"])
    assert.ok(text.includes(word), word);
  await accessible("the notices");
});

test("a note without a rating names the workshop and speaks of no repair", async () => {
  const { page, id } = phone;
  await page.goto(`${desk.origin}/#/`);
  await startVisit("TR 4417");
  await go("note");
  await id("letterhead").waitFor();
  const said = await page.locator("main").innerText();
  assert.match(said, /Example Works/);
  assert.match(said, /01632 960417/);
  assert.doesNotMatch(await id("decision-repair").innerText(), /repair/i);
  await accessible("the note");
});

test("movement felt brings the scope of work with the workshop's hours, never as a quote", async () => {
  const { id } = phone;
  await confirmGates("lift");
  await go("step/play-vertical");
  await id("temperature-cold").click();
  await id("answer-felt-play-vertical").click();
  await phone.quiet();
  await go("finding");
  await id("scope").waitFor();
  const scope = await id("scope").innerText();
  assert.match(scope, /bench decides after teardown/);
  assert.match(scope, /3 to 4\.5 h/);
  assert.match(scope, /86\.50 GBP/);
  assert.match(scope, /never a quote/);
  await accessible("the finding");
  await go("note");
  assert.match(await id("decision-repair").innerText(), /repaired/);
});

test("nothing left for elsewhere and nothing broke", () => {
  assert.deepEqual(phone.strays, []);
  assert.deepEqual(phone.faults, []);
});
