// Pictures of every screen at three sizes and in every theme into target/screens: `cargo xtask screens`. The
// pictures committed beside this file are put there too, as the ones before, and compared: a screen that
// changed by more than the tolerance is named, and the command fails. With --renew they are written anew.

import { copyFile, mkdir, readFile, rm } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { openPhone, startDesk } from "./stage.mjs";
import { FIRST_START, asker, prepare, show } from "./tour.mjs";

const FOLDER = process.env.STEADY_SCREENS ?? fileURLToPath(new URL("../../target/screens", import.meta.url));
const COMMITTED = fileURLToPath(new URL("pictures", import.meta.url));
const SIZES = [
  [360, 740],
  [412, 915],
  [1280, 800],
];
const THEMES = ["dark", "daylight", "contrast"];
const RENEW = process.argv.includes("--renew");
/** Share of a picture's pixels that may differ: times of day, hashes, another version of the fonts. */
const TOLERANCE = 0.04;
/** What counts as different in a colour, of 255. */
const SAME = 40;

const desk = await startDesk();
/** A desk of a first start: nobody has said who is at work. */
const unnamed = await startDesk();
const changed = [];
try {
  const screens = await prepare(asker(desk));
  await rm(FOLDER, { recursive: true, force: true });
  for (const theme of THEMES) {
    await picture(unnamed, FIRST_START, theme);
    await picture(desk, screens, theme);
  }
  await compare([...FIRST_START, ...screens]);
} finally {
  await Promise.all([desk.stop(), unnamed.stop()]);
}
if (changed.length > 0) {
  console.error(
    `changed beyond ${TOLERANCE * 100} %:\n  ${changed.join("\n  ")}\nlook at ${FOLDER}; \`cargo xtask screens --renew\` takes them as they are`,
  );
  process.exit(1);
}
console.log(`The pictures are in ${FOLDER}`);

/** Pictures of a desk's screens in a theme, at every size. */
async function picture(desk, screens, theme) {
  const phone = await openPhone(desk);
  await phone.page.goto(desk.address);
  await phone.page.evaluate((wanted) => localStorage.setItem("steady.theme", wanted), theme);
  await phone.page.reload();
  for (const [width, height] of SIZES) {
    await phone.page.setViewportSize({ width, height });
    const folder = `${FOLDER}/${theme}/${width}x${height}`;
    await mkdir(folder, { recursive: true });
    for (const screen of screens) {
      await show(phone.page, screen);
      await phone.page.screenshot({ path: `${folder}/${screen.name}.png` });
    }
  }
  await phone.browser.close();
}

/** Puts the committed pictures beside the new ones and names those that differ. */
async function compare(screens) {
  const phone = await openPhone(desk);
  const fresh = `${FOLDER}/dark/360x740`;
  await mkdir(`${FOLDER}/before`, { recursive: true });
  await mkdir(COMMITTED, { recursive: true });
  for (const { name } of screens) {
    if (RENEW) await copyFile(`${fresh}/${name}.png`, `${COMMITTED}/${name}.png`);
    const before = await readFile(`${COMMITTED}/${name}.png`).catch(() => null);
    if (before === null) {
      changed.push(`${name}: there is no committed picture`);
      continue;
    }
    await copyFile(`${COMMITTED}/${name}.png`, `${FOLDER}/before/${name}.png`);
    const share = await difference(phone.page, before, await readFile(`${fresh}/${name}.png`));
    if (share > TOLERANCE) changed.push(`${name}: ${(share * 100).toFixed(1)} %`);
  }
  await phone.browser.close();
}

/** Share of the pixels that differ; 1 where the sizes do. */
function difference(page, one, other) {
  return page.evaluate(
    async ([a, b, same]) => {
      const pixels = async (base64) => {
        const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
        const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
        pen.drawImage(bitmap, 0, 0);
        return pen.getImageData(0, 0, bitmap.width, bitmap.height);
      };
      const [left, right] = [await pixels(a), await pixels(b)];
      if (left.width !== right.width || left.height !== right.height) return 1;
      let differ = 0;
      for (let at = 0; at < left.data.length; at += 4) {
        const far = Math.max(...[0, 1, 2].map((part) => Math.abs(left.data[at + part] - right.data[at + part])));
        if (far > same) differ += 1;
      }
      return differ / (left.data.length / 4);
    },
    [one.toString("base64"), other.toString("base64"), SAME],
  );
}
