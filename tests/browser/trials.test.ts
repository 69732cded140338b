import { afterAll, describe, expect, test } from "vitest";
import { closeBrowser, openPage, overflow } from "./browser.ts";

/** A trial from its design to the sentence a grower can repeat, and into the office's own evidence. */

afterAll(closeBrowser);

describe("a trial", () => {
  test("designed, typed and judged: pairs 10 and 12, 11 and 13, 10 and 13, 11 and 12 kg, which is 2 kg more on the mean", {
    timeout: 300_000,
  }, async () => {
    const { page, context, errors } = await openPage({ width: 1440, role: "agent" });
    context.setDefaultTimeout(120_000);
    await page.goto("/farms");
    await page.locator('main a[href^="/farms/"]:not([href$="/new"])').first().click();
    await page.getByRole("link", { name: "Trials", exact: true }).click();
    await page.getByRole("link", { name: "Design a trial" }).click();
    const name = `Mulch or none ${Date.now().toString(36)}`;
    await page.getByLabel("Name", { exact: true }).fill(name);
    await page.getByLabel("Design", { exact: true }).selectOption("paired-strips");
    await page.getByLabel("What is changed").fill("Mulch");
    await page.getByLabel("Treatments, one a line; first what is done now").fill("bare\nmulched");
    await page.getByLabel("Measured", { exact: true }).fill("Fit to sell");

    // Plots too long for any bed: refused, and nothing typed is lost.
    await page.getByRole("checkbox").first().check();
    await page.getByLabel("Length of a plot, metres").fill("900");
    await page.getByRole("button", { name: "Lay it out" }).click();
    await page.getByRole("alert").waitFor();
    expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe(name);
    await page.getByLabel("Length of a plot, metres").fill("2");
    await page.getByRole("button", { name: "Lay it out" }).click();
    await page.getByRole("heading", { level: 1, name }).waitFor();

    // Which plot is mulched is the lot's; the drawing says it by letter, A for what is done now.
    await page.getByRole("button", { name: "It begins today" }).click();
    await page.getByRole("button", { name: "It ends today" }).waitFor();
    const said = (await page.locator("#layout svg[role=img]").first().getAttribute("aria-label")) ?? "";
    const letters = [...said.matchAll(/plot (\d+) ([AB])/g)].map(
      ([, n, letter]) => [Number(n), letter] as const,
    );
    expect(letters).toHaveLength(8);
    const kg = { A: [10, 11, 10, 11], B: [12, 13, 13, 12] };
    const fields = page.locator("#numbers input");
    for (const [plot, letter] of letters) {
      const pair = Math.ceil(plot / 2) - 1;
      await fields.nth(plot - 1).fill(String(kg[letter as "A" | "B"][pair]));
    }
    await page.getByRole("button", { name: "Keep the numbers" }).click();
    await page.getByText("8 numbers are kept.").waitFor();
    await page.getByRole("button", { name: "It ends today" }).click();
    await page.locator(".decision", { hasText: "mulched" }).waitFor();
    const sentence = await page.locator(".decision").innerText();
    expect(sentence).toMatch(/2(\.0)? kg|4\.4 lb/);
    expect(sentence).not.toMatch(/prove/i);
    expect(await overflow(page)).toBeLessThanOrEqual(0);

    await page.getByRole("link", { name: "Labels to print" }).click();
    await page.locator(".plot-label").first().waitFor();
    expect(await page.locator(".plot-label").count()).toBe(8);
    await page.goBack();
    await page.getByLabel("Which rule does it speak about?").selectOption("hotter");
    await page.getByRole("button", { name: "Put this among the office’s evidence" }).click();
    await page.locator("#own", { hasText: "mulched" }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  test("in the field: a number and a reason at once is refused, a plot without a number says why, and both stay", {
    timeout: 200_000,
  }, async () => {
    const { page, context } = await openPage({ width: 390, role: "farmer" });
    await page.goto("/record");
    await page
      .getByRole("link", { name: /^Type numbers/ })
      .first()
      .click();
    const first = page.locator(".trial-number-row").first();
    await first.locator("select").selectOption("plants-lost");
    await first.locator("input").fill("3.5");
    await page.getByRole("button", { name: "Keep the numbers" }).click();
    await page.getByText("Not kept: where a field is marked").waitFor();
    expect(await first.locator("input").getAttribute("aria-invalid")).toBe("true");
    await first.locator("input").fill("");
    await page.getByRole("button", { name: "Keep the numbers" }).click();
    await page.getByText("One number is kept.").waitFor();
    await page.reload();
    expect(await page.locator(".trial-number-row select").first().inputValue()).toBe("plants-lost");
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    await context.close();
  });
});
