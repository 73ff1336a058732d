// Whom to trust: what comes from another device says so until its code was compared; a device is named, retired and
// started over with; and a whole import is taken back.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { ways } from "./journey.mjs";
import { openPhone, startDesk } from "./stage.mjs";

let desks = [];
let phones = [];
/** Where the visit is on the first phone. */
let visit;

const [sending, taking] = [0, 1].map((at) => ways(() => ({ desk: desks[at], phone: phones[at] })));

before(async () => {
  desks = [await startDesk(), await startDesk()];
  phones = [await openPhone(desks[0]), await openPhone(desks[1])];
  for (const { sayWho } of [sending, taking]) await sayWho();
  await sending.startVisit("TR 4417");
  visit = /#\/visit\/[^/]+/.exec(await sending.place())[0];
});

after(async () => {
  for (const phone of phones) await phone.browser.close();
  for (const desk of desks) await desk.stop();
});

/** The visit as a file, saved by the screens. */
async function file() {
  const { page, id } = phones[0];
  await open(0, `${visit}/result`);
  await id("make-handover").click();
  await id("save-handover").waitFor();
  const download = page.waitForEvent("download");
  await id("save-handover").click();
  return readFile(await (await download).path());
}

const open = async (at, hash) => {
  await phones[at].page.goto(`${desks[at].origin}/${hash}`);
  await phones[at].quiet();
};
const choose = (buffer) =>
  phones[1].id("import-input").setInputFiles({ name: "a.steady", mimeType: "application/zip", buffer });
const code = async (at) => (await phones[at].id("device-code").first().innerText()).replace(/\D/g, "");
const trust = (is) => phones[1].page.locator(`[data-testid="device"][data-trust="${is}"]`).waitFor();

test("a visit from a device that nobody confirmed says so in the list and beside each entry", async () => {
  const { id } = phones[1];
  await choose(await file());
  await id("compare-code").waitFor();
  await taking.accessible("what a file would change");
  await id("take-import").click();
  await id("card-from").waitFor();
  await id("visit-card").click();
  await phones[1].page.waitForFunction(() => location.hash.includes("/visit/"));
  await taking.go("ledger");
  await id("entry-from").first().waitFor();
  assert.equal(await id("entry-from").first().getAttribute("data-trust"), "not-confirmed");
});

test("a code that differs confirms nothing, and the same on both screens confirms the device", async () => {
  const { id } = phones[1];
  await open(0, "#/devices");
  const shown = await code(0);
  assert.equal(shown.length, 24);
  await open(1, "#/devices");
  await trust("not-confirmed");
  await taking.accessible("the devices");
  await id("compare-code").click();
  assert.equal(
    await id("device")
      .getByTestId("device-code")
      .innerText()
      .then((text) => text.replace(/\D/g, "")),
    shown,
  );
  assert.notEqual(await code(1), shown, "this device has a code of its own");
  await id("code-differs").click();
  await id("code-differed").waitFor();
  await trust("not-confirmed");
  await id("compare-code").click();
  await id("code-same").click();
  await trust("confirmed");
  await id("device-name").fill("Bay 2");
  await id("keep-device-name").click();
  await id("device").getByRole("heading", { name: "Bay 2" }).waitFor();
  await open(1, "#/");
  await id("visit-card").waitFor();
  assert.equal(await id("card-from").count(), 0);
});

test("a retired device brings nothing new until it is started over with", async () => {
  const { id, page } = phones[1];
  await open(0, `${visit}/order`);
  await phones[0].id("order-under-car-first").click();
  await phones[0].page.waitForFunction(() => !location.hash.endsWith("/order"));
  await phones[0].quiet();
  const more = await file();
  await open(1, "#/devices");
  await id("retire-device").click();
  await id("retire-device-not").click();
  await trust("confirmed");
  await id("retire-device").click();
  await id("retire-device-now").click();
  await trust("retired");
  await open(1, "#/");
  await id("visit-card").waitFor();
  assert.equal(await id("card-from").count(), 0, "what it wrote while it was confirmed stays its own");
  await choose(more);
  await page.locator("[data-testid=problem][data-code=handover-retired]").waitFor();
  await open(1, "#/devices");
  await id("reset-device").click();
  await id("reset-device-now").click();
  await trust("not-confirmed");
  assert.equal(await id("decided").locator("li").count(), 4, "confirmed, named, retired, started over: written down");
});

test("a device's QR code is scanned in place of comparing digits", async () => {
  const { id } = phones[1];
  await open(0, "#/devices");
  await phones[0].id("qr").click();
  const picture = await phones[0].id("qr-code").screenshot();
  await sending.accessible("the QR code of a device");
  await open(1, "#/devices");
  await id("compare-code").click();
  const other = await readFile(new URL("../../demo-data/photos/seat.jpg", import.meta.url));
  await id("scan-code").setInputFiles({ name: "a.jpg", mimeType: "image/jpeg", buffer: other });
  await phones[1].page.locator("[data-testid=problem][data-code=no-device-in-photo]").waitFor();
  await id("scan-code").setInputFiles({ name: "a.png", mimeType: "image/png", buffer: picture });
  await trust("confirmed");
});

test("this device takes the place of a lost one", async () => {
  const { id } = phones[1];
  await id("reset-device").click();
  await id("reset-device-now").click();
  await trust("not-confirmed");
  await id("take-over-device").click();
  await taking.accessible("the question before a device takes another's place");
  await id("take-over-device-now").click();
  await trust("retired");
  assert.equal(await id("decided").locator("li").count(), 8, "each step of it is written down");
});

test("a whole import is taken back once that was asked", async () => {
  const { id } = phones[1];
  await id("import-back").click();
  await id("import-back-not").click();
  await id("import-back").click();
  await taking.accessible("the question before an import is taken back");
  await id("import-back-now").click();
  await id("import-back-done").waitFor();
  assert.equal(await id("import-back").count(), 0, "once");
  await open(1, "#/");
  await id("empty").waitFor();
});

test("nothing left for elsewhere and nothing broke", () => {
  for (const phone of phones) {
    assert.deepEqual(phone.strays, []);
    assert.deepEqual(phone.faults, []);
  }
});
