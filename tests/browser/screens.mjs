// Pictures of every screen at three sizes into target/screens: `cargo xtask screens`. Not a test.

import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { openPhone, startDesk } from "./stage.mjs";
import { prepare, show } from "./tour.mjs";

const FOLDER = process.env.STEADY_SCREENS ?? fileURLToPath(new URL("../../target/screens", import.meta.url));
const SIZES = [[360, 740], [412, 915], [1280, 800]];
const THEMES = (process.env.STEADY_THEMES ?? "dark,daylight").split(",");
const ONLY = process.env.STEADY_ONLY?.split(",");

const desk = await startDesk();
try {
  const screens = await prepare(desk);
  for (const theme of THEMES) {
    const phone = await openPhone(desk, theme === "daylight" ? "light" : "dark");
    await phone.page.goto(desk.address);
    for (const [width, height] of process.env.STEADY_SIZES === "phone" ? SIZES.slice(0, 1) : SIZES) {
      await phone.page.setViewportSize({ width, height });
      await mkdir(`${FOLDER}/${theme}/${width}x${height}`, { recursive: true });
      for (const screen of screens) {
        if (ONLY && !ONLY.includes(screen.name)) continue;
        await show(phone.page, screen);
        await phone.page.screenshot({ path: `${FOLDER}/${theme}/${width}x${height}/${screen.name}.png` });
      }
    }
    await phone.browser.close();
  }
} finally {
  await desk.stop();
}
