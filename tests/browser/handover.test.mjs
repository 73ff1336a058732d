// A visit leaves one desk as a file, arrives on another by the screens, is erased there after its plate was
// typed, and does not come back.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { openPhone, startDesk, violations } from "./stage.mjs";

let desks = [];
let phones = [];
let file;

before(async () => {
  desks = [await startDesk(), await startDesk()];
  phones = [await openPhone(desks[0]), await openPhone(desks[1])];
  for (const [index, phone] of phones.entries()) {
    await phone.page.goto(desks[index].address);
    await phone.id("technician").fill("Kim Marsh");
    await phone.id("save-technician").click();
    await phone.id("new-visit").waitFor();
  }
});

after(async () => {
  for (const phone of phones) await phone.browser.close();
  for (const desk of desks) await desk.stop();
});

const inside = async (phone, desk, where) => {
  const visit = /#\/visit\/[^/]+/.exec(await phone.page.evaluate(() => location.hash))[0];
  await phone.page.goto(`${desk.origin}/${visit}/${where}`);
};

test("a visit is saved as a file", async () => {
  const { page, id } = phones[0];
  await id("new-visit").click();
  await id("layout-rigid-engine-speed").click();
  await id("plate").fill("TR 4417");
  await id("save-intake").click();
  await page.waitForFunction(() => location.hash.includes("/visit/"));
  await inside(phones[0], desks[0], "result");
  await id("make-handover").click();
  await id("save-handover").waitFor();
  assert.deepEqual(await violations(page), [], "axe on the result with a file");
  const download = page.waitForEvent("download");
  await id("save-handover").click();
  const saved = await download;
  assert.match(saved.suggestedFilename(), /^visit-[0-9a-f]{12}\.steady$/);
  file = await readFile(await saved.path());
  assert.equal(file.subarray(0, 2).toString(), "PK");
});

const choose = (bytes) =>
  phones[1].id("import-input").setInputFiles({ name: "a.steady", mimeType: "application/zip", buffer: bytes });

test("a changed copy is refused and the true one is taken in", async () => {
  const { page, id } = phones[1];
  const changed = Buffer.from(file);
  changed[changed.length >> 1] ^= 1;
  await choose(changed);
  await page.locator("[data-testid=problem][data-code^=handover-]").waitFor();
  assert.equal(await id("visit-card").count(), 0);
  await choose(file);
  await id("imported").waitFor();
  await id("visit-card").waitFor();
  assert.match(await id("visit-card").innerText(), /TR 4417/);
  assert.deepEqual(await violations(page), [], "axe on the list after an import");
});

test("a visit is erased once its plate is typed, and stays erased", async () => {
  const { page, id } = phones[1];
  await id("visit-card").click();
  await page.waitForFunction(() => location.hash.includes("/visit/"));
  await inside(phones[1], desks[1], "ledger");
  await id("erase-visit").click();
  await id("erase-word").fill("TR 4418");
  assert.deepEqual(await violations(page), [], "axe on the question");
  await id("erase-now").click();
  await page.locator("[data-testid=problem][data-code=erase-word-differs]").waitFor();
  await id("erase-word").fill("tr4417");
  await id("erase-now").click();
  await id("empty").waitFor();
  await choose(file);
  await page.locator("[data-testid=problem][data-code=visit-erased]").waitFor();
  assert.equal(await id("visit-card").count(), 0);
});

test("nothing left for elsewhere and nothing broke", () => {
  for (const phone of phones) {
    assert.deepEqual(phone.strays, []);
    assert.deepEqual(phone.faults, []);
  }
});
