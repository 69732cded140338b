import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { violations } from "./axe.ts";
import { closeBrowser, keepPicture, openPage, overflow, type Seen } from "./browser.ts";
import { findScreens, type Screen } from "./screens.ts";

/**
 * Every screen, loaded once and then looked at in both themes and at several widths. `npm run screens` looks at each
 * theme at each width and writes the pictures to tests/.output/screens; the daily run takes each theme and width once.
 */

const pictures = process.env.PITH_SCREENS !== undefined;
const LOOKS = [
  { theme: "light", width: 390 },
  { theme: "dark", width: 1440 },
  ...(pictures
    ? ([
        { theme: "light", width: 1440 },
        { theme: "dark", width: 390 },
      ] as const)
    : []),
] as const;
/** While one page is looked at, the next is loaded. */
const WINDOWS = 3;
/** Far more than any screen takes; a window that hangs that long is left, and its screen looked at in another, once. */
const PATIENCE_MS = 90_000;

let screens: Screen[];
const found = { looks: [] as string[], wide: [] as string[] };

beforeAll(async () => {
  screens = await findScreens();
  const waiting = [...screens];
  await Promise.all(Array.from({ length: WINDOWS }, () => walk(waiting)));
}, 900_000);
afterAll(closeBrowser);

/** Takes the next screen until none waits, each in its person's window: opening one costs more than a page. */
async function walk(waiting: Screen[]): Promise<void> {
  const windows = new Map<Screen["role"], Seen>();
  const lookIn = async (screen: Screen) => {
    const seen = windows.get(screen.role) ?? (await openPage({ role: screen.role }));
    windows.set(screen.role, seen);
    await inTime(look(seen, screen), screen.name);
  };
  for (let screen = waiting.shift(); screen; screen = waiting.shift()) {
    const here = screen;
    await lookIn(here).catch((error) => {
      if (!(error instanceof Hung)) throw error;
      windows.delete(here.role);
      return lookIn(here);
    });
  }
  for (const { context } of windows.values()) await context.close();
}

class Hung extends Error {}

async function inTime(work: Promise<void>, name: string): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, give) => {
    timer = setTimeout(() => give(new Hung(`the window hung at ${name}`)), PATIENCE_MS);
  });
  await Promise.race([work, late]).finally(() => clearTimeout(timer));
}

async function look({ page, errors }: Seen, { name, path, alike }: Screen): Promise<void> {
  errors.length = 0;
  await resize(page, 320);
  await page.emulateMedia({ colorScheme: "light" });
  await page.goto(path, { waitUntil: "load" });
  await atRest(page);
  await lookSideways(page, name);
  if (alike && !pictures) await thinOut(page, alike);
  for (const { theme, width } of LOOKS) {
    await page.emulateMedia({ colorScheme: theme });
    await resize(page, width);
    if (pictures) await keepPicture(page, `${name}-${width}-${theme}`);
    found.looks.push(...(await violations(page)).map((what) => `${name}, ${theme} at ${width} px: ${what}`));
  }
  // The page that is not there answers 404, and the console says so.
  found.looks.push(
    ...errors.filter((e) => name !== "not-found" || !e.includes("404")).map((e) => `${name}: ${e}`),
  );
}

async function lookSideways(page: Page, name: string): Promise<void> {
  const narrow = await overflow(page);
  if (narrow > 0) found.wide.push(`${name} at 320 px: ${narrow} px too wide`);
  await resize(page, 640);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
  const large = await overflow(page);
  if (large > 0) found.wide.push(`${name} with text at 200 %: ${large} px too wide`);
  await page.evaluate(() => document.documentElement.style.removeProperty("font-size"));
}

/** Leaves a few of each list of parts that are alike. */
const thinOut = (page: Page, alike: string): Promise<void> =>
  page.evaluate(
    ([parts, few]) => {
      for (const part of document.querySelectorAll(parts)) {
        let before = 0;
        for (let one = part.previousElementSibling; one; one = one.previousElementSibling) before++;
        if (before > few) part.remove();
      }
    },
    [alike, 8] as const,
  );

/** What measures itself in the page has had a frame to do so. */
async function resize(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: width < 500 ? 844 : 900 });
  await page.evaluate(
    () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );
}

/** The page's own scripts have run and nothing is left for them to do. */
const atRest = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise<void>((done) => requestIdleCallback(() => done(), { timeout: 5_000 })));

test("no WCAG 2.2 AA violation and no console error, light at 390 px and dark at 1440 px", () => {
  expect(found.looks).toEqual([]);
});

test("no screen scrolls sideways at 320 px, nor with letters twice as large", () => {
  expect(found.wide).toEqual([]);
});

test("on paper an advice keeps its cautions and its ledger hash, and loses what can be pressed", async () => {
  const issued = screens.find(({ name }) => name === "issued");
  const { page, context } = await openPage({ role: "agent" });
  await page.goto(issued?.path ?? "");
  await page.emulateMedia({ media: "print" });
  await page.getByRole("region", { name: "Cautions" }).waitFor();
  expect(await page.locator(".ledger-mark .hash").innerText()).toMatch(/^[0-9a-f]{64}$/);
  expect(await page.getByRole("button", { name: "Withdraw this advice" }).isVisible()).toBe(false);
  expect(await page.getByRole("navigation").isVisible()).toBe(false);
  await context.close();
});
