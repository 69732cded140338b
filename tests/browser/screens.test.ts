import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, keepPicture, openPage, overflow, type Seen } from "./browser.ts";
import { findScreens, type Screen } from "./screens.ts";

/**
 * Every screen, in both themes and at three widths. `npm run screens` looks at each theme at each width and writes the
 * pictures to tests/.output/screens; the daily run takes each theme and each width once.
 */

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
let screens: Screen[];

beforeAll(async () => {
  screens = await findScreens();
});
afterAll(closeBrowser);

/** One window for each person, kept over all their screens: opening one costs more than a page. */
async function visit(
  wanted: { width: number; theme?: "light" | "dark" },
  look: (seen: Seen, screen: Screen) => Promise<void>,
) {
  for (const role of [undefined, "agent", "farmer"] as const) {
    const seen = await openPage({ ...wanted, role });
    for (const screen of screens.filter((one) => one.role === role)) {
      seen.errors.length = 0;
      await seen.page.goto(screen.path, { waitUntil: "networkidle" });
      await look(seen, screen);
    }
    await seen.context.close();
  }
}

const pictures = process.env.PITH_SCREENS !== undefined;
const LOOKS = [
  ["light", 390],
  ["dark", 1440],
  ...(pictures
    ? ([
        ["dark", 390],
        ["light", 1440],
      ] as const)
    : []),
] as const;

test.each(LOOKS)(
  "no WCAG 2.2 AA violation and no console error, %s at %i px",
  async (theme, width) => {
    const found: string[] = [];
    await visit({ width, theme }, async ({ page, errors }, { name }) => {
      if (pictures) await keepPicture(page, `${name}-${width}-${theme}`);
      const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
      for (const { id, nodes } of violations) {
        found.push(`${name}: ${id} at ${nodes.map((node) => node.target.join(" ")).join(", ")}`);
      }
      // The page that is not there answers 404, and the console says so.
      found.push(
        ...errors.filter((e) => name !== "not-found" || !e.includes("404")).map((e) => `${name}: ${e}`),
      );
    });
    expect(found).toEqual([]);
  },
  600_000,
);

test("no screen scrolls sideways at 320 px, nor with letters twice as large", async () => {
  const found: string[] = [];
  await visit({ width: 320 }, async ({ page }, { name }) => {
    const narrow = await overflow(page);
    if (narrow > 0) found.push(`${name} at 320 px: ${narrow} px too wide`);
    await page.setViewportSize({ width: 640, height: 900 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    const large = await overflow(page);
    if (large > 0) found.push(`${name} with text at 200 %: ${large} px too wide`);
    await page.setViewportSize({ width: 320, height: 900 });
  });
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
