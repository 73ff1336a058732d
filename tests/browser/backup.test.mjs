// Everything is backed up into one file by the screens, and taken in by the screens of another device; a changed
// file is refused. What is remembered of a visit that is erased elsewhere goes.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { ways } from "./journey.mjs";
import { openPhone, startDesk, violations } from "./stage.mjs";

let desks = [];
let phones = [];
let file;

const [giving, taking] = [0, 1].map((at) => ways(() => ({ desk: desks[at], phone: phones[at] })));

const settings = async ({ page, id }) => {
  await page.evaluate(() => (location.hash = "#/settings"));
  await id("make-backup").waitFor();
};

before(async () => {
  desks = [await startDesk(), await startDesk()];
  phones = [await openPhone(desks[0]), await openPhone(desks[1])];
  for (const { sayWho } of [giving, taking]) await sayWho();
});

after(async () => {
  for (const phone of phones) await phone.browser.close();
  for (const desk of desks) await desk.stop();
});

test("everything is saved as one file", async () => {
  const { page, id } = phones[0];
  await giving.startVisit("TR 4417");
  await settings(phones[0]);
  await id("make-backup").click();
  await id("save-backup").waitFor();
  assert.match(await id("backup-made").innerText(), /1 visit/);
  assert.deepEqual(await violations(page), [], "axe on the settings with a backup");
  const download = page.waitForEvent("download");
  await id("save-backup").click();
  const saved = await download;
  assert.match(saved.suggestedFilename(), /^steady-backup-\d{4}-\d{2}-\d{2}\.tar$/);
  file = await readFile(await saved.path());
});

const choose = (bytes) =>
  phones[1].id("restore-input").setInputFiles({ name: "a.tar", mimeType: "application/x-tar", buffer: bytes });

test("a changed copy is refused and the true one is taken in", async () => {
  const { page, id } = phones[1];
  await settings(phones[1]);
  const changed = Buffer.from(file);
  changed[changed.length >> 1] ^= 1;
  await choose(changed);
  await page.locator("[data-testid=problem][data-code=backup-damaged]").waitFor();
  await choose(Buffer.from("no backup"));
  await page.locator("[data-testid=problem][data-code=backup-file]").waitFor();
  await choose(file);
  await id("restored").waitFor();
  assert.match(await id("restored").innerText(), /1 visit taken in/);
  assert.deepEqual(await violations(page), [], "axe on the settings after a backup was taken in");
  await id("go-home").click();
  assert.match(await id("visit-card").innerText(), /TR 4417/);
});

test("what is half written of a visit that the core knows no longer is dropped", async () => {
  const { page } = phones[1];
  const gone = "steady.draft.0191d2f0-0000-7000-8000-000000000001";
  await page.evaluate((name) => localStorage.setItem(name, '{"owner":{"name":"Somebody"}}'), gone);
  await page.reload();
  await page.waitForFunction((name) => localStorage.getItem(name) === null, gone);
});
