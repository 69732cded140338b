import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { inject } from "vitest";

/** What the browser tests share: one Chromium, people signed in once, and a page that keeps count of its console's errors. */

export type Role = "agent" | "farmer";
const SCREENS = join(import.meta.dirname, "..", ".output", "screens");

let browser: Promise<Browser> | undefined;

function openBrowser(): Promise<Browser> {
  browser ??= chromium.launch({
    executablePath: inject("chromiumPath"),
    headless: true,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
  return browser;
}

export async function closeBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = undefined;
}

interface Wanted {
  /** Of the browser, as it asks for pages; American English unless said. */
  locale?: string;
  width?: number;
  theme?: "light" | "dark";
  /** Signed in as; nobody where left out. */
  role?: Role;
}

export interface Seen {
  context: BrowserContext;
  page: Page;
  /** Errors of the console and of the page's own scripts, in order. */
  errors: string[];
}

const sessions = new Map<Role, Awaited<ReturnType<BrowserContext["cookies"]>>>();

/** A fresh window. Hashing a password is slow on purpose, so each person signs in once for all tests. */
export async function openPage({
  width = 1440,
  theme = "light",
  role,
  locale = "en-US",
}: Wanted = {}): Promise<Seen> {
  const context = await (await openBrowser()).newContext({
    baseURL: inject("dashboardUrl"),
    viewport: { width, height: width < 500 ? 844 : 900 },
    colorScheme: theme,
    timezoneId: "America/Chicago",
    locale,
  });
  context.setDefaultTimeout(30_000);
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(`${message.text()} ${message.location().url}`);
  });
  page.on("pageerror", (error) => errors.push(error.message));
  if (role) {
    const kept = sessions.get(role);
    if (kept) await context.addCookies(kept);
    else {
      await signIn(page, role);
      sessions.set(role, await context.cookies());
    }
  }
  return { context, page, errors };
}

async function signIn(page: Page, role: Role): Promise<void> {
  const { email, password } = inject(role);
  await page.goto("/sign-in");
  await page.locator("input[name=email]").fill(email);
  await page.locator("input[name=password]").fill(password);
  await page.locator("button.press").click();
  await page.waitForURL(role === "agent" ? "**/round" : "**/today");
}

/** Writes what the page looks like, from its head to its foot. */
export async function keepPicture(page: Page, name: string): Promise<void> {
  mkdirSync(SCREENS, { recursive: true });
  await page.screenshot({ path: join(SCREENS, `${name}.png`), fullPage: true, caret: "initial" });
}

/** By how many pixels the page is wider than its window. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
