import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, keepPicture, openPage, overflow } from "./browser.ts";
import { findScreens, type Screen } from "./screens.ts";

/** Every screen, in both themes and at three widths; the pictures are written to tests/.output/screens. */

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
let screens: Screen[];

beforeAll(async () => {
  screens = await findScreens();
});
afterAll(closeBrowser);

test.each(["light", "dark"] as const)(
  "no WCAG 2.2 AA violation and no console error, %s",
  async (theme) => {
    const found: string[] = [];
    for (const { name, role, path } of screens) {
      for (const width of [390, 1440]) {
        const { page, errors, context } = await openPage({ role, width, theme });
        await page.goto(path, { waitUntil: "networkidle" });
        await keepPicture(page, `${name}-${width}-${theme}`);
        const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
        for (const { id, nodes } of violations) {
          found.push(`${name} ${width}: ${id} at ${nodes.map((node) => node.target.join(" ")).join(", ")}`);
        }
        const real = errors.filter((error) => name !== "not-found" || !error.includes("404"));
        found.push(...real.map((error) => `${name} ${width}: ${error}`));
        await context.close();
      }
    }
    expect(found).toEqual([]);
  },
  600_000,
);

test("no screen scrolls sideways at 320 px, nor with letters twice as large", async () => {
  const found: string[] = [];
  for (const { name, role, path } of screens) {
    const { page, context } = await openPage({ role, width: 320 });
    await page.goto(path, { waitUntil: "networkidle" });
    const narrow = await overflow(page);
    if (narrow > 0) found.push(`${name} at 320 px: ${narrow} px too wide`);
    await page.setViewportSize({ width: 640, height: 900 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    const large = await overflow(page);
    if (large > 0) found.push(`${name} with text at 200 %: ${large} px too wide`);
    await context.close();
  }
  expect(found).toEqual([]);
}, 600_000);

test("on paper an advice keeps its cautions and its ledger hash, and loses what can be pressed", async () => {
  const issued = screens.find(({ name }) => name === "issued");
  const { page, context } = await openPage({ role: "agent" });
  await page.goto(issued?.path ?? "");
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("region", { name: "Cautions" }).isVisible()).toBe(true);
  expect(await page.locator(".ledger-mark .hash").innerText()).toMatch(/^[0-9a-f]{64}$/);
  expect(await page.getByRole("button", { name: "Withdraw this advice" }).isVisible()).toBe(false);
  expect(await page.getByRole("navigation").isVisible()).toBe(false);
  await context.close();
});
