import { afterAll, expect, test } from "vitest";
import { violations } from "./axe.ts";
import { closeBrowser, keepPicture, openPage, overflow } from "./browser.ts";

afterAll(closeBrowser);

const SERVICE = "Pull its forecast from";
const ALARMS = "What does not come in";

test("a site that is switched on and gets no forecast stands at the top of the round, until it is switched off", async () => {
  const { page, errors, context } = await openPage({ role: "agent", width: 390 });
  await page.goto("/farms");
  await page.locator("main table a, main ul a").first().click();
  await page.waitForURL("**/farms/*");
  const site = page.locator("#sites th a").first();
  const name = await site.innerText();
  const edit = await site.getAttribute("href");
  const switchTo = async (label: string) => {
    await page.goto(edit ?? "", { waitUntil: "networkidle" });
    await page.getByLabel(SERVICE).selectOption({ label });
    await page.getByRole("button", { name: "Save" }).click();
    await page.waitForURL("**/farms/*?saved=*");
  };

  await switchTo("Norwegian Meteorological Institute");
  await page.goto("/round", { waitUntil: "networkidle" });
  const alarms = page.locator(".alarms");
  expect(await alarms.getByRole("heading").innerText()).toBe(ALARMS);
  const said = await alarms.getByRole("listitem").innerText();
  expect(said).toContain("No forecast has come yet.");
  expect(said).toContain(name);
  expect(said).toContain("It is switched on, and has not been asked yet.");
  const above = await page.evaluate(() => {
    const [alarm, draft] = [document.querySelector(".alarm"), document.querySelector(".draft")];
    return alarm && draft && alarm.getBoundingClientRect().bottom <= draft.getBoundingClientRect().top;
  });
  expect(above).toBe(true);
  expect(await overflow(page)).toBe(0);
  expect(await violations(page)).toEqual([]);
  await keepPicture(page, "round-alarm");

  await switchTo(
    await page.goto(edit ?? "").then(() => page.getByLabel(SERVICE).locator("option").first().innerText()),
  );
  await page.goto("/round");
  expect(await page.locator(".alarms").count()).toBe(0);
  expect(errors).toEqual([]);
  await context.close();
});
