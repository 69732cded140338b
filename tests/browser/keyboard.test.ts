import { afterAll, expect, test } from "vitest";
import { closeBrowser, openPage } from "./browser.ts";

afterAll(closeBrowser);

test("the round is walked, opened and set aside without a mouse", async () => {
  const { page, errors, context } = await openPage({ role: "agent" });
  await page.goto("/round", { waitUntil: "networkidle" });
  const entries = page.locator("[data-entry]");
  const hrefs = await entries.evaluateAll((links) => links.map((link) => link.getAttribute("href")));
  expect(hrefs.length).toBeGreaterThan(2);
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute("href"));

  /** Keys are heard once the page's scripts run: j until somebody stands on an entry, then back to the first. */
  const enter = async () => {
    await expect
      .poll(async () => (await page.keyboard.press("j")) ?? (await focused()), { timeout: 20_000 })
      .toBeTypeOf("string");
    await page.keyboard.press("k");
    await page.keyboard.press("k");
  };

  await enter();
  expect(await focused()).toBe(hrefs[0]);
  await page.keyboard.press("j");
  await page.keyboard.press("ArrowDown");
  expect(await focused()).toBe(hrefs[2]);
  await page.keyboard.press("k");
  expect(await focused()).toBe(hrefs[1]);
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  expect(await focused()).toBe(hrefs[0]);

  await page.keyboard.press("Enter");
  await page.waitForURL(`**${hrefs[0]}`);
  await page.goBack({ waitUntil: "networkidle" });

  // Set the second one aside: s opens the day, Enter sends it, and it waits in its own list.
  await page.waitForSelector("[data-entry]");
  await enter();
  await page.keyboard.press("j");
  expect(await focused()).toBe(hrefs[1]);
  await page.keyboard.press("s");
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute("type"))).toBe("date");
  const far = new Date(Date.now() + 20 * 86_400_000);
  await page.keyboard.type(
    [far.getUTCMonth() + 1, far.getUTCDate()].map((n) => String(n).padStart(2, "0")).join("") +
      far.getUTCFullYear(),
  );
  await page.keyboard.press("Enter");
  await page.waitForFunction(
    (href) => document.querySelector(`[data-entry][href="${href}"]`) === null,
    hrefs[1],
  );
  await page.goto("/round?show=aside");
  const aside = page.locator(`.draft:has([href="${hrefs[1]}"])`);
  await aside.getByRole("button", { name: "Bring it back" }).click();
  await page.waitForFunction(
    (href) => document.querySelector(`[data-entry][href="${href}"]`) === null,
    hrefs[1],
  );
  await page.goto("/round");
  await page.locator(`[data-entry][href="${hrefs[1]}"]`).waitFor();
  expect(await page.locator(`[data-entry][href="${hrefs[1]}"]`).count()).toBe(1);
  expect(errors).toEqual([]);
  await context.close();
});

test("the first thing a keyboard reaches is the way past the head", async () => {
  const { page, context } = await openPage({ role: "agent" });
  await page.goto("/farms");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Skip to the text");
  await page.keyboard.press("Enter");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("main");
  await context.close();
});
