// Starts `steady serve` on a fresh data folder and a phone-sized Chromium beside it, and watches that
// no request leaves but to the app itself. Not a test; the journeys are beside it.

import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";

const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const QUIET = [
  "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync",
];

/** The desk on a folder of its own; `stop` ends it and removes the folder. */
export async function startDesk() {
  const folder = await mkdtemp(join(tmpdir(), "steady-journey-"));
  const program = process.env.STEADY_DESK;
  if (!program) throw new Error("STEADY_DESK must name the steady program; `cargo xtask test browser` does");
  const desk = spawn(program, ["serve", "--data", folder, "--port", "0", "--no-open"]);
  const address = await new Promise((resolve, reject) => {
    let said = "";
    desk.stdout.on("data", (text) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\/#key=\w+/.exec(said);
      if (found) resolve(found[0]);
    });
    desk.on("exit", (code) => reject(new Error(`steady serve ended with ${code}: ${said}`)));
    setTimeout(() => reject(new Error(`no address: ${said}`)), 20_000).unref();
  });
  const stop = async () => {
    desk.removeAllListeners("exit");
    desk.kill();
    await rm(folder, { recursive: true, force: true });
  };
  return { address, origin: new URL(address).origin, stop };
}

/** A phone: 360 by 740, touch. `strays` lists requests that left for elsewhere. */
export async function openPhone(desk, colorScheme = "dark") {
  const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", headless: true, args: QUIET });
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, colorScheme, reducedMotion: "reduce",
  });
  const page = await context.newPage();
  const strays = [];
  const faults = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(desk.origin) && !/^(blob|data):/.test(url)) strays.push(url);
  });
  page.on("pageerror", (error) => faults.push(error.message));
  const id = (name) => page.getByTestId(name);
  return { browser, page, id, strays, faults };
}

/** Fingers on the glass: real touches, of which Playwright itself has the tap alone. */
export async function hand(page) {
  const door = await page.context().newCDPSession(page);
  const touch = (type, spots) => door.send("Input.dispatchTouchEvent", {
    type, touchPoints: spots.map(([x, y], id) => ({ x, y, id })),
  });
  /** Moves each finger along its own path, all at once, and rests at the end: a flick would swallow the next tap. */
  const along = async (...paths) => {
    await touch("touchStart", paths.map((path) => path[0]));
    for (let at = 1; at < paths[0].length; at += 1) {
      await page.waitForTimeout(30);
      await touch("touchMove", paths.map((path) => path[at]));
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
