// The real Tauri window: WebKit through Debian's WebKitWebDriver, spoken to in plain W3C WebDriver over HTTP.
// Not a test; the journeys are beside it.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { ended, family, watchSockets } from "./family.mjs";

const PORT = 4723 + (process.pid % 1000);
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
const PATIENCE = 20_000;
/** A driver that says nothing for so long has lost its window, in milliseconds. */
const SILENCE = 60_000;

/** Opens the app's window on a data folder of its own. */
export async function openWindow() {
  const folder = await mkdtemp(join(tmpdir(), "steady-window-"));
  const downloads = join(folder, "downloads");
  await mkdir(downloads);
  await writeFile(join(folder, "user-dirs.dirs"), `XDG_DOWNLOAD_DIR="${downloads}"\n`);
  // The webview keeps its own storage in the person's folders: a start from earlier must not be remembered.
  const own = { STEADY_DATA: folder, XDG_DATA_HOME: folder, XDG_CACHE_HOME: folder, XDG_CONFIG_HOME: folder };
  const env = { ...process.env, ...own, TAURI_AUTOMATION: "true", TAURI_WEBVIEW_AUTOMATION: "true" };
  let driver;
  let session;
  const ask = (method, path, body) => send(method, `/session/${session}${path}`, body);

  async function start() {
    driver = spawn("WebKitWebDriver", [`--port=${PORT}`, "--host=127.0.0.1"], { env, stdio: "ignore" });
    await until("the driver", async () => (await send("GET", "/status")).ready);
    const options = { "webkitgtk:browserOptions": { binary: process.env.STEADY_APP, args: [] } };
    session = (await send("POST", "/session", { capabilities: { alwaysMatch: options } })).sessionId;
  }

  /** Ends everything that was started, and waits until none of it can write any more. */
  async function kill() {
    const driverEnded = driver.exitCode === null && driver.signalCode === null ? once(driver, "exit") : null;
    const all = await family(driver.pid);
    for (const { pid } of all) end(pid);
    driver.kill("SIGKILL");
    await driverEnded;
    await until("the engine to end", async () => (await Promise.all(all.map(({ pid }) => ended(pid)))).every(Boolean));
  }

  await start().catch(async (problem) => {
    const left = await family(driver.pid);
    await kill();
    throw new Error(`no window (${left.map(({ name }) => name).join(", ") || "no process"}): ${problem.message}`);
  });
  const sockets = watchSockets(() => driver.pid);
  const { run, ...others } = page(ask);
  let marks = 0;
  return {
    ask,
    downloads,
    /** Waits until what the page remembers is on disk, by a mark written after it: WebKit writes some time later. */
    async remembered() {
      marks += 1;
      const mark = `journey-mark-${marks}-${process.pid}`;
      await run("localStorage.setItem('journey.mark', arguments[0])", mark);
      await until("the page's memory on disk", () => holds(folder, mark));
    },
    /** What the app and its engine asked of the network beside the driver, as lines. */
    strays: () => sockets.found(),
    /** The app and its engine's processes end at once, as with an empty battery, and the app is started again. */
    async killed() {
      await kill();
      await start();
    },
    async close() {
      sockets.stop();
      await ask("DELETE", "").catch(() => undefined);
      await kill();
      await rm(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    },
    run,
    ...others,
  };
}

/** Whether WebKit's files of what pages remember, texts in UTF-16, hold a text. */
async function holds(folder, text) {
  const files = await readdir(folder, { recursive: true });
  for (const file of files.filter((name) => /localstorage.*\.(localstorage|sqlite3)(-wal)?$/i.test(name))) {
    const bytes = await readFile(join(folder, file)).catch(() => Buffer.alloc(0));
    if (bytes.includes(Buffer.from(text, "utf16le"))) return true;
  }
  return false;
}

/** Ways to press and read what the window shows. */
function page(ask) {
  const run = (script, ...args) => ask("POST", "/execute/sync", { script, args });
  const later = (script, ...args) => ask("POST", "/execute/async", { script, args });
  const element = async (css) => (await ask("POST", "/element", { using: "css selector", value: css }))[ELEMENT];
  const find = (css) => until(css, () => element(css));
  const called = (name) => `[data-testid="${name}"]`;
  const place = () => run("return location.hash");

  /** Scrolls until nothing rests on it, and presses. */
  async function tap(name) {
    let block = "start";
    await until(`${name} to be pressed`, async () => {
      const found = await element(called(name));
      block = block === "start" ? "center" : "start";
      await run("arguments[0].scrollIntoView({ block: arguments[1] })", { [ELEMENT]: found }, block);
      return (await ask("POST", `/element/${found}/click`, {})) === null;
    });
  }

  async function write(name, text) {
    const found = await find(called(name));
    await ask("POST", `/element/${found}/clear`, {});
    await ask("POST", `/element/${found}/value`, { text });
  }

  /** Draws with one finger's width along spots given as shares of an element's size. */
  async function draw(name, spots) {
    const found = await find(called(name));
    await run("arguments[0].scrollIntoView({ block: 'center' })", { [ELEMENT]: found });
    const { left, top, width, height } = await run("return arguments[0].getBoundingClientRect()", { [ELEMENT]: found });
    const moves = spots.map(([x, y]) => ({
      type: "pointerMove",
      duration: 40,
      origin: "viewport",
      x: Math.round(left + width * x),
      y: Math.round(top + height * y),
    }));
    const [first, ...rest] = moves;
    const actions = [first, { type: "pointerDown", button: 0 }, ...rest, { type: "pointerUp", button: 0 }];
    const hand = { type: "pointer", id: "hand", parameters: { pointerType: "mouse" }, actions };
    await ask("POST", "/actions", { actions: [hand] });
    await ask("DELETE", "/actions");
  }

  return {
    run,
    later,
    place,
    draw,
    /** Asks the core beside the screens, through the window's own bridge. */
    core: async (request) => {
      const { said, refused } = await later(
        `
        const [request, done] = arguments;
        const answer = window.__TAURI_INTERNALS__.invoke("ask", { request });
        answer.then((said) => done({ said }), (refused) => done({ refused }))`,
        request,
      );
      if (refused) throw new Error(`${request.ask}: ${refused.code} ${refused.message}`);
      return said;
    },
    goTo: (hash) => run("location.hash = arguments[0]", hash),
    find,
    resize: async (width, height) => {
      await ask("POST", "/window/rect", { width, height });
      const there = "return innerWidth === arguments[0] && innerHeight === arguments[1]";
      return until(`${width} by ${height}`, () => run(there, width, height));
    },
    until,
    /** Waits until the screen is at rest: every picture drawn, and what it shows and where the same three times. */
    async quiet() {
      let same = 0;
      await until("a screen at rest", async () => {
        same = (await run(`return (${unchanged})()`)) ? same + 1 : 0;
        return same >= 2;
      });
    },
    /** Hands for `technician.mjs`. */
    hands: {
      tap,
      write,
      place,
      seen: (name) => find(called(name)),
      chosen: (name) => find(`${called(name)}[aria-pressed="true"]`),
      shown: (name) => run("return document.querySelector(arguments[0])?.checkVisibility() === true", called(name)),
      choose: async (name, file) => ask("POST", `/element/${await find(called(name))}/value`, { text: file }),
      movedOn: (before) => until("another screen", async () => (await place()) !== before),
      all: async (beginning) => {
        await find(`[data-testid^="${beginning}"]`);
        return run(
          `
          const found = [...document.querySelectorAll(arguments[0])];
          return found.map((one) => one.dataset.testid)`,
          `[data-testid^="${beginning}"]`,
        );
      },
    },
  };
}

/** Runs in the page: whether nothing changed or moved since it was last asked. */
function unchanged() {
  const all = [...document.querySelectorAll("body *")];
  const places = all.map((one) => Object.values(one.getBoundingClientRect().toJSON()).join());
  const now = location.hash + document.body.outerHTML + places.join(";");
  const same = now === window.seenBefore;
  window.seenBefore = now;
  return same && [...document.images].every((one) => one.complete);
}

function end(pid) {
  try {
    process.kill(pid, "SIGKILL");
  } catch (problem) {
    // It may have ended by itself since it was listed.
    if (problem.code !== "ESRCH") throw problem;
  }
}

async function send(method, path, body) {
  const said = body === undefined ? undefined : JSON.stringify(body);
  const headers = { "content-type": "application/json" };
  const signal = AbortSignal.timeout(SILENCE);
  const response = await fetch(`http://127.0.0.1:${PORT}${path}`, { method, headers, body: said, signal });
  const { value } = await response.json();
  if (value?.error) throw new Error(`${value.error}: ${value.message}`);
  return value;
}

async function until(what, look) {
  const end = Date.now() + PATIENCE;
  let problem;
  while (Date.now() < end) {
    const found = await look().catch((caught) => {
      problem = caught;
    });
    if (found) return found;
    await pause(50);
  }
  throw new Error(`waited in vain for ${what}${problem ? ` (${problem.message})` : ""}`);
}
