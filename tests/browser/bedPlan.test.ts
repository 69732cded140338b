import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { closeBrowser, openPage, overflow } from "./browser.ts";

afterAll(closeBrowser);

/** So far ahead that every bed has had its rest, and nothing is planted yet: one season a test. */
async function openPlan(page: Page, season: number): Promise<string> {
  await page.goto("/farms");
  await page.getByRole("main").getByRole("link", { name: "Low Fell", exact: true }).click();
  await page.getByRole("link", { name: "Bed plans", exact: true }).click();
  const next = page.locator('main a[href*="/bed-plan/"]').first();
  const address = (await next.getAttribute("href"))?.replace(/\d+$/, String(season)) ?? "";
  await page.goto(address, { waitUntil: "networkidle" });
  return address;
}

async function addBlock(page: Page, variety: string, plants: number): Promise<void> {
  await page.getByRole("button", { name: "Add a planting" }).click();
  await page.getByLabel("Variety", { exact: true }).fill(variety);
  await page.getByLabel("Plants", { exact: true }).fill(String(plants));
  await page.getByRole("button", { name: "Add it" }).click();
}

/** Puts every waiting block where the plan proposes to begin: Field 1, one after the other. */
async function placeAll(page: Page): Promise<void> {
  const waiting = page.getByRole("button", { name: /^Put on a bed/ });
  while ((await waiting.count()) > 0) {
    const left = await waiting.count();
    await waiting.first().click();
    await page.keyboard.press("Enter");
    await expect.poll(() => waiting.count()).toBe(left - 1);
  }
}

const total = (page: Page) => page.locator("[data-total]").innerText();
const totalThen = (page: Page) => page.locator("[data-total-then]").innerText();
const rowsOf = (page: Page) => page.locator(".plan-table tbody tr").allInnerTexts();
const keep = async (page: Page) => {
  await page.getByRole("button", { name: "Keep the plan" }).click();
  await page.getByText(/^Kept, version/).waitFor();
};

test("a block is moved by keys with its cost beside, put back, put down, kept, and stands there after a reload", async () => {
  const { page, errors, context } = await openPage({ role: "agent" });
  const address = await openPlan(page, 2041);
  await page.getByText("Nothing is to stand here this season yet").waitFor();
  await addBlock(page, "Alder Long", 60);
  await addBlock(page, "Alder Long", 40);
  await placeAll(page);
  // Field 1 is shaded from the west: each of 100 plants counts half, at 0.05 points.
  expect(await total(page)).toBe("2.5");

  const second = page.locator(".plan-map [data-block]").nth(1);
  await second.focus();
  // Tunnel A lies west of Field 1.
  await page.keyboard.press("ArrowLeft");
  // 60 plants still half shaded make 1.5 points; one variety in two places makes 10.
  expect(await totalThen(page)).toBe("11.5");
  expect(await page.locator("[aria-live=polite]").first().innerText()).toMatch(/Tunnel A.*9 points worse/);
  await page.keyboard.press("Escape");
  expect(await total(page)).toBe("2.5");
  expect(await page.locator("[data-total-then]").count()).toBe(0);
  expect(await second.evaluate((block) => block === document.activeElement)).toBe(true);

  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Enter");
  expect(await total(page)).toBe("11.5");
  await keep(page);
  await page.goto(address, { waitUntil: "networkidle" });
  expect((await rowsOf(page)).map((row) => row.split("\t").slice(0, 2).join(": "))).toEqual([
    "A1 Alder Long: Field 1",
    "A2 Alder Long: Tunnel A",
  ]);
  expect(await total(page)).toBe("11.5");
  expect(errors).toEqual([]);
  await context.close();
});

test("the form places what the pointer would, undo takes it back, and a number out of the bed is refused", async () => {
  const { page, context } = await openPage({ role: "agent" });
  await openPlan(page, 2042);
  await addBlock(page, "Alder Long", 60);
  await page.getByRole("button", { name: "Alder Long, 60 plants" }).first().click();
  await page.getByLabel("Bed", { exact: true }).selectOption("Tunnel A");
  await page.getByLabel("From the bed’s first end").fill("900");
  await page.getByRole("button", { name: "Put it there" }).click();
  // Tunnel A is 30 m long and 30 plants a row at 0.45 m take 13.5 m: 16.5 m, or 54.134 ft, are left.
  await page.getByText("From 0 to 54.134.").waitFor();
  await page.getByLabel("From the bed’s first end").fill("10");
  await page.getByRole("button", { name: "Put it there" }).click();
  await expect.poll(() => rowsOf(page)).toEqual([expect.stringMatching(/Tunnel A\t1–2\t10 ft/)]);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => rowsOf(page)).toEqual([expect.stringContaining("no bed yet")]);
  await page.getByRole("button", { name: "Redo" }).click();
  await expect.poll(() => rowsOf(page)).toEqual([expect.stringContaining("Tunnel A")]);
  await context.close();
});

test("a proposal is laid beside the plan and taken; what is pinned stays", async () => {
  const { page, errors, context } = await openPage({ role: "agent" });
  await openPlan(page, 2043);
  await addBlock(page, "Alder Long", 60);
  await addBlock(page, "Rowan Hot", 40);
  await placeAll(page);
  await page.locator(".plan-map [data-block]").nth(1).click();
  await page.getByRole("button", { name: "Pin: proposals leave it" }).click();
  expect(await total(page)).toBe("2.5");
  await page.getByRole("button", { name: "Propose a plan" }).click();
  await page.getByRole("button", { name: "Take the proposal" }).waitFor();
  // The pinned 40 stay in the half shade for 1 point; the others go where nothing shades them.
  const compared = await page.locator(".plan-compared tbody tr").allInnerTexts();
  expect(compared.slice(0, 3)).toEqual(["Rules broken\t0\t0", "Without a bed\t0\t0", "Points\t2.5\t1"]);
  const bound = Number(compared[3]?.split("\t").at(-1));
  expect(bound).toBeGreaterThanOrEqual(0);
  expect(bound).toBeLessThanOrEqual(1);
  await page.getByRole("button", { name: "Take the proposal" }).click();
  expect(await total(page)).toBe("1");
  expect((await rowsOf(page)).map((row) => row.split("\t").slice(0, 2).join(": "))).toEqual([
    "B Rowan Hot: Field 1",
    "A Alder Long: Tunnel A",
  ]);
  expect(errors).toEqual([]);
  await context.close();
});

test("a mouse drags a block to another bed, and a second window that kept first is not written over", async () => {
  const { page, context } = await openPage({ role: "agent" });
  const address = await openPlan(page, 2044);
  await addBlock(page, "Alder Long", 60);
  await placeAll(page);
  const boxOf = async (selector: string, nth: number) => {
    const box = await page.locator(selector).nth(nth).boundingBox();
    if (!box) throw new Error(`nothing drawn at ${selector}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const from = await boxOf(".plan-map [data-block]", 0);
  const to = await boxOf(".plan-map .plan-ground", 1);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  expect(await totalThen(page)).toBe("0");
  await page.mouse.up();
  expect(await total(page)).toBe("0");

  const other = await openPage({ role: "agent" });
  await other.page.goto(address, { waitUntil: "networkidle" });
  await addBlock(other.page, "Rowan Hot", 10);
  await keep(other.page);
  await page.getByRole("button", { name: "Keep the plan" }).click();
  await page.getByText("Somebody else changed this plan").waitFor();
  await page.getByRole("button", { name: "Read theirs" }).click();
  expect((await rowsOf(page)).join()).toContain("Rowan Hot");
  await page.getByRole("button", { name: "Undo" }).click();
  expect((await rowsOf(page)).join()).toContain("Alder Long");
  await other.context.close();
  await context.close();
});

test("the farmer reads the plan bed by bed on a phone, and has nothing to change it with", async () => {
  const { page, context } = await openPage({ role: "farmer", width: 390 });
  await page.goto("/today");
  await page.getByRole("link", { name: "Bed plans of Low Fell" }).click();
  await page.locator('main a[href*="/bed-plan/"]').nth(1).click();
  await page.getByText("Your agent keeps this plan.").waitFor();
  expect(await page.locator(".plan-strip").count()).toBe(2);
  expect(await page.locator(".plan-strip").first().isVisible()).toBe(true);
  expect(await page.locator(".plan-map").isVisible()).toBe(false);
  expect(await page.locator("[data-block]").count()).toBe(0);
  expect(await page.getByRole("button", { name: "Keep the plan" }).count()).toBe(0);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  await context.close();
});
