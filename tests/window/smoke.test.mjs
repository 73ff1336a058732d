// A smoke journey in the real Tauri window: WebKit through Debian's WebKitWebDriver, spoken to in plain
// W3C WebDriver over HTTP. It proves that the window opens, its one command reaches the core, and the
// first screens work there too. The long journeys are in ../browser.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";

const PORT = 4723 + (process.pid % 1000);
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

let driver;
let folder;
let session;

async function ask(method, path, body) {
  const response = await fetch(`http://127.0.0.1:${PORT}${path}`, {
    method, body: body === undefined ? undefined : JSON.stringify(body), headers: { "content-type": "application/json" },
  });
  const { value } = await response.json();
  if (value?.error) throw new Error(`${value.error}: ${value.message}`);
  return value;
}

async function until(what, look) {
  for (let wait = 0; wait < 100; wait += 1) {
    const found = await look().catch(() => undefined);
    if (found) return found;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error(`waited in vain for ${what}`);
}

const find = (name) => until(name, async () => {
  const found = await ask("POST", `/session/${session}/element`, { using: "css selector", value: `[data-testid="${name}"]` });
  return found[ELEMENT];
});
const click = async (name) => ask("POST", `/session/${session}/element/${await find(name)}/click`, {});
const type = async (name, text) => ask("POST", `/session/${session}/element/${await find(name)}/value`, { text });
const run = (script) => ask("POST", `/session/${session}/execute/sync`, { script, args: [] });

before(async () => {
  folder = await mkdtemp(join(tmpdir(), "steady-window-"));
  driver = spawn("WebKitWebDriver", [`--port=${PORT}`, "--host=127.0.0.1"], {
    // The webview keeps its own storage in the person's folders: a start from earlier must not be remembered.
    env: {
      ...process.env, STEADY_DATA: folder, XDG_DATA_HOME: folder, XDG_CACHE_HOME: folder, XDG_CONFIG_HOME: folder,
      TAURI_AUTOMATION: "true", TAURI_WEBVIEW_AUTOMATION: "true",
    },
    stdio: "ignore",
  });
  await until("the driver", async () => (await ask("GET", "/status")).ready);
  const options = { "webkitgtk:browserOptions": { binary: process.env.STEADY_APP, args: [] } };
  session = (await ask("POST", "/session", { capabilities: { alwaysMatch: options } })).sessionId;
});

after(async () => {
  if (session) await ask("DELETE", `/session/${session}`).catch(() => undefined);
  driver?.kill();
  // The window may still be writing on its way out.
  await new Promise((resolve) => setTimeout(resolve, 1000));
  if (folder) await rm(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
});

test("the window opens and takes the technician's name", async () => {
  await type("technician", "Kim Marsh");
  await click("save-technician");
  await find("new-visit");
});

test("a visit is started and stands at its first step", async () => {
  await click("new-visit");
  await click("layout-rigid-engine-speed");
  await click("save-intake");
  const hash = await until("the visit", async () => {
    const hash = await run("return location.hash");
    return hash.includes("/visit/") && hash;
  });
  await run(`location.hash = "${/#\/visit\/[^/]+/.exec(hash)[0]}/gates/lift"`);
  await click("gate-engine-off");
  const confirmed = await until("the confirmation", () => run("return document.body.innerText.includes('Kim Marsh')"));
  assert.equal(confirmed, true);
});
