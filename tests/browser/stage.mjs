// Starts `steady serve` on a fresh data folder and a phone-sized Chromium beside it, and watches that
// no request leaves but to the app itself. Not a test; the journeys are beside it.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";

const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The desk on a folder of its own; `stop` ends it and removes the folder. */
export async function startDesk() {
  const folder = await mkdtemp(join(tmpdir(), "steady-journey-"));
  let { program, address } = await serve(folder, 0);
  const { origin, port } = new URL(address);
  const kill = async () => {
    program.removeAllListeners("exit");
    const ended = once(program, "exit");
    program.kill("SIGKILL");
    await ended;
  };
  return {
    origin,
    get address() {
      return address;
    },
    /** Ends the program in the middle of whatever it does; until `start` nobody answers. */
    kill,
    /** Starts it anew on the same folder and port; the secret in the address is another one. */
    start: async () => {
      ({ program, address } = await serve(folder, port));
    },
    stop: async () => {
      await kill();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function serve(folder, port) {
  const name = process.env.STEADY_DESK;
  if (!name) throw new Error("STEADY_DESK must name the steady program; `cargo xtask test browser` does");
  const program = spawn(name, ["serve", "--data", folder, "--port", String(port), "--no-open"]);
  const address = await new Promise((resolve, reject) => {
    let said = "";
    program.stdout.on("data", (text) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\/#key=\w+/.exec(said);
      if (found) resolve(found[0]);
    });
    program.on("exit", (code) => reject(new Error(`steady serve ended with ${code}: ${said}`)));
    setTimeout(() => reject(new Error(`no address: ${said}`)), 20_000).unref();
  });
  return { program, address };
}

const onTheWay = new WeakMap();

/** Waits until no request of the page has been on its way for three drawings in a row. */
export async function quiet(page) {
  const requests = onTheWay.get(page.context());
  const drawn = () =>
    page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  for (let still = 0; still < 3; still = requests.size === 0 ? still + 1 : 0) await drawn();
}

/** The first bytes of the paper that an act makes, as they leave the desk: a browser does not show what it took as a blob. */
export async function madeBy(page, act) {
  const first = new Promise((resolve) => {
    void page.route(
      "**/file/*",
      async (route) => {
        const answer = await route.fetch();
        resolve((await answer.body()).subarray(0, 5).toString());
        await route.fulfill({ response: answer });
      },
      { times: 1 },
    );
  });
  await act();
  return first;
}

/** As long as somebody takes to read what unfolded: the second of two quick taps at one place is not taken. */
export const readWhatUnfolded = () => new Promise((done) => setTimeout(done, 600));

/** A phone: 360 by 740, touch. `strays` lists requests that left for elsewhere, `faults` what the page threw. */
export async function openPhone(desk, size = { width: 360, height: 740 }) {
  const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", headless: true, args: QUIET });
  const context = await browser.newContext({
    viewport: size,
    hasTouch: true,
    isMobile: true,
    colorScheme: "dark",
    reducedMotion: "reduce",
    locale: "en-GB",
  });
  context.setDefaultTimeout(15_000);
  const strays = [];
  const faults = [];
  const waiting = new Set();
  onTheWay.set(context, waiting);
  context.on("requestfinished", (request) => waiting.delete(request));
  context.on("requestfailed", (request) => waiting.delete(request));
  context.on("request", (request) => {
    waiting.add(request);
    const url = request.url();
    if (!url.startsWith(desk.origin) && !/^(blob|data):/.test(url)) strays.push(url);
  });
  context.on("weberror", (error) => faults.push(error.error().message));
  let page = await context.newPage();
  return {
    browser,
    strays,
    faults,
    get page() {
      return page;
    },
    id: (name) => page.getByTestId(name),
    quiet: () => quiet(page),
    /** Ends the page without a word to it, and opens the app anew on the same device. */
    async reopen() {
      const ended = page.waitForEvent("crash");
      const door = await context.newCDPSession(page);
      door.send("Page.crash").catch(() => undefined);
      await ended;
      await page.close();
      waiting.clear();
      page = await context.newPage();
      await page.goto(desk.address);
    },
  };
}

/** Fingers on the glass: real touches, of which Playwright itself has the tap alone. */
export async function hand(page) {
  const door = await page.context().newCDPSession(page);
  const touch = (type, spots) =>
    door.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: spots.map(([x, y], id) => ({ x, y, id })),
    });
  /** Moves each finger along its own path, all at once, and rests at the end: a flick would swallow the next tap. */
  const along = async (...paths) => {
    await touch(
      "touchStart",
      paths.map((path) => path[0]),
    );
    for (let at = 1; at < paths[0].length; at += 1) {
      await page.waitForTimeout(30);
      await touch(
        "touchMove",
        paths.map((path) => path[at]),
      );
    }
    await page.waitForTimeout(300);
    await touch("touchEnd", []);
  };
  return { drag: (path) => along(path), along };
}

/** Violations that axe-core finds on the screen as it is, as lines. */
export async function violations(page) {
  const source = await readFile(AXE, "utf8");
  const found = await page.evaluate(async (script) => {
    if (!globalThis.axe) globalThis.eval(script);
    const result = await globalThis.axe.run(document, { resultTypes: ["violations"] });
    return result.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).join(", ")}`);
  }, source);
  return found;
}
