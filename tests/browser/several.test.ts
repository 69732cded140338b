import { afterAll, expect, test } from "vitest";
import { closeBrowser, openPage } from "./browser.ts";

afterAll(closeBrowser);

test("several drafts are marked by key, read together as their farmers will, and issued one by one", async () => {
  const { page, errors, context } = await openPage({ role: "agent" });
  // The last page of the round's order, so that other tests find their drafts where they stood.
  await page.goto("/round?group=farm", { waitUntil: "networkidle" });
  const marks = page.locator("[data-mark]");
  const many = await marks.count();
  expect(many).toBeGreaterThan(4);
  // By the keyboard: to an entry, and x marks it.
  const last = page.locator(".draft:has([data-mark]) [data-entry]").nth(many - 1);
  await last.focus();
  await expect
    .poll(async () => {
      if (!(await marks.nth(many - 1).isChecked())) await page.keyboard.press("x");
      return marks.nth(many - 1).isChecked();
    })
    .toBe(true);
  await marks.nth(many - 2).check();
  const headlines = await page
    .locator(".draft:has([data-mark]:checked) [data-entry]")
    .evaluateAll((links) => links.map((link) => link.textContent?.trim()));
  await page.getByRole("button", { name: "Read the marked ones together" }).click();
  await page.waitForURL("**/round/several?**");
  const slips = await page.locator(".slip h2").allTextContents();
  expect([...slips].sort()).toEqual([...headlines].sort());
  // Cautions ride along.
  expect(await page.locator(".slip .caution, .slip [class*=caution]").count()).toBeGreaterThan(0);

  await page.getByRole("button", { name: "Issue these 2" }).click();
  await expect.poll(() => page.locator(".several-done").count(), { timeout: 30_000 }).toBe(2);
  await page.getByRole("link", { name: "See it" }).first().click();
  await page.waitForURL("**/issued/**");
  // Numbers may have moved by less than a tenth since it was drafted.
  const begin = slips[0]?.split(/\d/)[0] ?? "";
  await expect.poll(() => page.locator("h1").textContent()).toContain(begin);
  // What went out is no draft any more.
  await page.goBack();
  await page.reload();
  expect(await page.locator(".slip").count()).toBe(0);
  expect(errors.filter((error) => !error.includes("404"))).toEqual([]);
  await context.close();
}, 120_000);
