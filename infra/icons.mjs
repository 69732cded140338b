// @ts-check
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";

/** Draws the icons that phones ask for from `icon.svg`: `node infra/icons.mjs`, once the drawing has changed. */

const PUBLIC = join(import.meta.dirname, "..", "apps", "dashboard", "public");
const drawing = readFileSync(join(PUBLIC, "icon.svg"), "utf8");
/** A phone that cuts its icons into its own shape wants the ground up to the edge. */
const toTheEdge = drawing.replace(' rx="3"', "");

/** @type {[string, number, string][]} */
const ICONS = [
  ["icon-192.png", 192, drawing],
  ["icon-512.png", 512, drawing],
  ["icon-maskable-512.png", 512, toTheEdge],
  ["apple-touch-icon.png", 180, toTheEdge],
];

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
for (const [name, px, svg] of ICONS) {
  await page.setViewportSize({ width: px, height: px });
  await page.setContent(`<style>body { margin: 0 } svg { display: block; width: ${px}px }</style>${svg}`);
  writeFileSync(join(PUBLIC, name), await page.screenshot({ omitBackground: true }));
}
await browser.close();
