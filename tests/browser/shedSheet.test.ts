import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

/** The sheet for the shed's wall: the doses of the advice it comes from, each caution once, one page of paper. */

let agent: Seen;
let farm: string;

beforeAll(async () => {
  agent = await openPage({ role: "agent" });
  const farmer = await openPage({ role: "farmer", width: 390 });
  await farmer.page.goto("/record");
  const record = await farmer.page.locator('main a[href^="/record/"]').first().getAttribute("href");
  farm = `/farms/${record?.split("/")[2]}`;
  await farmer.context.close();
});
afterAll(async () => {
  await agent.context.close();
  await closeBrowser();
});

const openSheet = async () => {
  const { page } = agent;
  await page.goto(farm);
  await page.getByRole("link", { name: "Shed sheet to print" }).click();
  await page.getByRole("heading", { name: "What to give" }).waitFor();
  return page;
};

test("what it says of this week is what the planting's own advice says", async () => {
  const page = await openSheet();
  const row = page
    .locator(".doses tbody tr:not(.continued)")
    .filter({ has: page.locator("td.now:not(:empty)") });
  const where = await row.first().getByRole("rowheader").innerText();
  const amount = (await row.first().locator("td.now").innerText()).split("\n")[0] ?? "";
  expect(amount).toMatch(/^\d/);
  await page.locator(".sheet-rests").getByRole("link", { name: where, exact: true }).click();
  await page.locator("h1.decision").waitFor();
  const weekly = page.getByRole("table", { name: /week by week/ });
  const heads = await weekly.getByRole("columnheader").allInnerTexts();
  const place = heads.findIndex((head) => /(tank [AB]|on this bed), (lb|kg)$/.test(head));
  const first = weekly.locator("tbody tr").first();
  const shown = Number(await first.locator("th, td").nth(place).innerText());
  const unit = heads[place]?.split(", ").at(-1);
  // The sheet says little in grams or ounces; the table keeps the column's unit. Both round to what a scale shows.
  const [, digits, said] = amount.match(/^([\d.]+) (.+)$/) ?? [];
  const inColumn: Record<string, number> = { kg: 1, g: 0.001, lb: 1, "oz (weight)": 1 / 16 };
  expect(["kg", "lb"]).toContain(unit);
  expect(Math.abs(Number(digits) * (inColumn[said ?? ""] ?? Number.NaN) - shown)).toBeLessThan(0.06);
});

test("every caution stands on it once", async () => {
  const page = await openSheet();
  const cautions = await page
    .locator("[data-caution]")
    .evaluateAll((all) => all.map((one) => one.getAttribute("data-caution")));
  expect(cautions.length).toBeGreaterThan(0);
  expect(new Set(cautions).size).toBe(cautions.length);
});

test.each(["A4", "Letter"])("on %s it is one page with its cautions and nothing to press", async (format) => {
  const page = await openSheet();
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("button", { name: "Print it" }).isVisible()).toBe(false);
  expect(await page.getByRole("navigation").isVisible()).toBe(false);
  expect(await page.getByRole("region", { name: "Cautions" }).isVisible()).toBe(true);
  const pdf = (await page.pdf({ format })).toString("latin1");
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  await page.emulateMedia({ media: "screen" });
});

test("a content's pin stands within the field of its class", async () => {
  const { page } = agent;
  await page.goto(`/round?farm=${farm.split("/")[2]}&shown=500`);
  await page.locator('.draft:has-text("Soil reading") [data-entry]').first().click();
  await page.locator(".range").first().waitFor();
  const rods = await page.locator(".range").evaluateAll((all) =>
    all.map((one) => {
      const box = (selector: string) => one.querySelector(selector)?.getBoundingClientRect();
      const [pin, own] = [box(".range-pin"), box(".range-own")];
      const at = (pin?.left ?? Number.NaN) + (pin?.width ?? 0) / 2;
      return {
        said: one.querySelector("figcaption strong")?.textContent ?? "",
        marked: one.querySelector(".range-classes .own")?.textContent ?? "",
        inside: own !== undefined && at >= own.left - 1 && at <= own.right + 1,
      };
    }),
  );
  expect(rods.length).toBeGreaterThan(1);
  for (const { said, marked, inside } of rods) {
    expect(inside).toBe(true);
    expect(marked.startsWith(said)).toBe(true);
  }
});
