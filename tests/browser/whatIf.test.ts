import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { closeBrowser, openPage } from "./browser.ts";

afterAll(closeBrowser);

/** A planting of the demo office on which a choice can be tried. */
async function openWhatIf(page: Page): Promise<void> {
  await page.goto("/round?rule=set-out");
  await page.locator("[data-entry]").first().click();
  await page.waitForURL("**/drafts/**");
  await page.locator('main a[href*="/plantings/"]').first().click();
  await page.waitForURL("**/plantings/**");
  await page.getByRole("link", { name: "What if…" }).click();
  await page.waitForURL("**/what-if");
}

test.each([390, 1440])(
  "handles move by key, answers follow, and a choice becomes a note, then a draft, at %i px",
  async (width) => {
    const { page, errors, context } = await openPage({ role: "agent", width });
    await openWhatIf(page);
    const answer = page.locator('[data-rule="set-out"]');
    expect(await answer.count()).toBe(0);

    const cover = page.getByRole("slider", { name: "Bed that day" });
    await cover.focus();
    await page.keyboard.press("End");
    await expect.poll(() => cover.getAttribute("aria-valuetext")).toContain("low tunnel");
    await expect.poll(() => answer.locator("li").first().textContent()).toMatch(/Set out on .* low tunnel/);
    const under = await answer.locator("li").first().textContent();
    await page.keyboard.press("Home");
    await expect.poll(() => answer.count()).toBeLessThan(2);
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => answer.locator("li").first().textContent()).not.toBe(under);
    await expect.poll(() => page.url()).toContain("cover=");
    // Cautions ride with a choice that is tried.
    await expect.poll(() => page.locator(".caution").count()).toBeGreaterThan(0);
    await answer.locator("summary", { hasText: "Working" }).first().click();
    await expect.poll(() => answer.locator("table").last().locator("tbody tr").count()).toBeGreaterThan(5);

    // The address brings it back.
    const address = page.url();
    await page.goto("/round");
    await page.goto(address);
    await expect.poll(() => answer.locator("li").first().textContent()).toMatch(/Set out on/);

    await page.getByRole("button", { name: "Keep as a note" }).click();
    await expect.poll(() => page.getByRole("status").textContent()).toContain("Kept among");
    await page.getByRole("button", { name: "Make a draft of it" }).click();
    await page.waitForURL("**/drafts/**");
    await expect
      .poll(() => page.locator("h1.decision, h1").first().textContent())
      .toMatch(/Set these plants out|Have the bed/);
    await page.goto(address);
    await page.getByRole("button", { name: "Let it go" }).click();
    await expect.poll(() => page.getByRole("button", { name: "Let it go" }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  },
);
