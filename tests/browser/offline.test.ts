import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

/** The farmer's phone where there is no signal, and what becomes of it when there is. */

let agent: Seen;
let farmer: Seen;
let farmId: string;

beforeAll(async () => {
  agent = await openPage({ role: "agent" });
  farmer = await openPage({ role: "farmer", width: 390 });
  await farmer.page.goto("/record");
  const link = farmer.page.locator('main a[href^="/record/"]').first();
  farmId = (await link.getAttribute("href"))?.split("/")[2] ?? "";
});
afterAll(closeBrowser);

/** Issues an advice that the farmer has not opened. */
async function issueOne(): Promise<{ id: string; decision: string }> {
  const { page } = agent;
  await page.goto(`/round?farm=${farmId}&rule=rotation`);
  if ((await page.locator("[data-entry]").count()) === 0) await page.goto(`/round?farm=${farmId}`);
  await page.locator("[data-entry]").last().click();
  await page.waitForURL("**/drafts/**");
  await page.getByRole("button", { name: "Issue this advice" }).click();
  await page.waitForURL("**/issued/**");
  const id = new URL(page.url()).pathname.split("/").at(-1) ?? "";
  return { id, decision: (await page.locator("h1.decision").textContent()) ?? "" };
}

const kept = (path: string) =>
  farmer.page.evaluate(async (at) => (await (await caches.open("pith-day")).match(at)) !== undefined, path);

/** Opens the day and the record, and waits until the phone has a page that they list. */
async function fetchAhead(...paths: string[]) {
  await farmer.page.goto("/record", { waitUntil: "networkidle" });
  await farmer.page.goto("/today", { waitUntil: "networkidle" });
  for (const path of paths) await expect.poll(() => kept(path), { timeout: 30_000 }).toBe(true);
}

const answerCannot = async (page: Page, reason: string) => {
  await page.getByRole("radio", { name: /Cannot be done/ }).check();
  await page.getByLabel("Why?").fill(reason);
  await page.getByRole("button", { name: "Send the answer" }).click();
};
const writeHarvest = async (page: Page, kg: string) => {
  await page.goto(`/record/${farmId}/harvests`);
  await page.getByLabel("Picked in all").fill(kg);
  await page.getByRole("button", { name: "Write it down" }).click();
};
const saysKept = (page: Page) =>
  expect
    .poll(() => page.locator("[role=status]").allTextContents(), { timeout: 30_000 })
    .toContainEqual(expect.stringContaining("Kept on this phone"));
const waiting = (page: Page) => page.locator(".waiting li");
const allSent = (page: Page) => expect.poll(() => waiting(page).count(), { timeout: 60_000 }).toBe(0);

describe("without signal", () => {
  test("what was never opened is read, answered and a harvest written; with signal each arrives once", async () => {
    const { page, context } = farmer;
    const { id, decision } = await issueOne();
    await fetchAhead(`/today/${id}`, `/record/${farmId}/harvests`);
    await context.setOffline(true);
    await page.goto(`/today/${id}`);
    expect(await page.locator("h1").textContent()).toBe(decision);
    // Of when it is: the day's name and the clock.
    await expect.poll(() => page.locator(".signal").innerText()).toMatch(/as it was on \w+day,? \d\d:\d\d/);
    await answerCannot(page, "The gate is flooded.");
    await saysKept(page);
    await writeHarvest(page, "3.25");
    await saysKept(page);
    await page.goto("/today");
    await expect.poll(() => waiting(page).count()).toBe(2);
    expect(await page.locator(".signal").innerText()).toContain("No signal");

    await context.setOffline(false);
    await allSent(page);
    await expect.poll(() => page.locator(".signal").count()).toBe(0);
    await page.goto("/record", { waitUntil: "networkidle" });
    expect(await page.locator(".records > li", { hasText: "3.25" }).count()).toBe(1);
    await agent.page.goto(`/issued/${id}`);
    expect(await agent.page.locator("#answer").innerText()).toContain("The gate is flooded.");
  }, 180_000);

  test("a form that was kept days ago starts from today, and from the hour that it is", async () => {
    const { page, context } = farmer;
    const paths = [`/record/${farmId}/waterings`, `/record/${farmId}/sprays`];
    await fetchAhead(paths[0] ?? "");
    await page.goto(paths[1] ?? "", { waitUntil: "networkidle" });
    await page.goto(paths[0] ?? "", { waitUntil: "networkidle" });
    const today = await page.getByLabel("On", { exact: true }).inputValue();
    await page.goto("/today", { waitUntil: "networkidle" });
    // As if it had been put away on a day long gone by.
    await page.evaluate(
      async ([day, ...names]) => {
        const store = await caches.open("pith-day");
        for (const name of names) {
          const there = await store.match(name);
          const old = (await there?.text())?.replaceAll(day ?? "", "2024-05-06");
          await store.put(name, new Response(old, { headers: there?.headers }));
        }
      },
      [today, ...paths],
    );
    await context.setOffline(true);
    await page.goto(paths[0] ?? "");
    await expect.poll(() => page.getByLabel("On", { exact: true }).inputValue()).toBe(today);
    await page.goto(paths[1] ?? "");
    await expect
      .poll(() => page.getByLabel("Sprayed at").inputValue())
      .toMatch(new RegExp(`^${today}T\\d\\d:\\d\\d$`));
    await context.setOffline(false);
  }, 180_000);

  test("a sign with a photograph waits on the phone and arrives once with it", async () => {
    const { page, context } = farmer;
    await fetchAhead(`/record/${farmId}/signs`);
    await context.setOffline(true);
    await page.goto(`/record/${farmId}/signs`);
    await page.getByLabel("What you saw").selectOption({ label: "Leaf spots with rings" });
    await page.getByLabel("Where in the bed").selectOption({ label: "a patch" });
    await page.getByLabel("How fast it came").selectOption({ label: "within days" });
    const png = await page.evaluate(() => document.createElement("canvas").toDataURL().split(",")[1] ?? "");
    const buffer = Buffer.from(png, "base64");
    await page
      .getByLabel("Take a photograph")
      .setInputFiles({ name: "p.png", mimeType: "image/png", buffer });
    await page.getByRole("img", { name: "Photograph 1" }).waitFor();
    await page.locator("textarea").fill("On the lowest leaves by the gate.");
    await page.getByRole("button", { name: "Write it down" }).click();
    await saysKept(page);
    await page.goto("/today");
    await expect
      .poll(() => waiting(page).allInnerTexts())
      .toEqual([expect.stringContaining("Photographs: 1")]);

    await context.setOffline(false);
    await allSent(page);
    await page.goto("/record", { waitUntil: "networkidle" });
    const sign = page.locator(".records > li", { hasText: "On the lowest leaves by the gate." });
    expect([await sign.count(), await sign.locator("img").count()]).toEqual([1, 1]);
  }, 180_000);

  test("what the office refuses is opened again as it was written, changed and sent", async () => {
    const { page, context } = farmer;
    await fetchAhead(`/record/${farmId}/harvests`);
    await context.setOffline(true);
    await writeHarvest(page, "seven");
    await saysKept(page);
    await page.goto("/today");
    await context.setOffline(false);
    await page.getByText("The office did not take it:").waitFor({ timeout: 40_000 });
    await page.getByRole("link", { name: "Open it and change it" }).click();
    const field = page.getByLabel("Picked in all");
    await expect.poll(() => field.inputValue()).toBe("seven");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    await field.fill("7.75");
    await page.getByRole("button", { name: "Write it down" }).click();
    await page.waitForURL("**/record?saved=harvests");
    await allSent(page);
    expect(await page.locator(".records > li", { hasText: "7.75" }).count()).toBe(1);
  }, 180_000);

  test("an answer given meanwhile by another is shown beside one's own, and stays until its writer chooses", async () => {
    const { page, context } = farmer;
    const { id } = await issueOne();
    await fetchAhead(`/today/${id}`);
    await context.setOffline(true);
    await page.goto(`/today/${id}`);
    await answerCannot(page, "The pump is away.");
    await saysKept(page);
    const other = await openPage({ role: "farmer" });
    await other.page.goto(`/today/${id}`);
    await answerCannot(other.page, "No hands this week.");
    await other.page.waitForURL("**/today?saved=answer");

    await page.goto("/today");
    await context.setOffline(false);
    const one = waiting(page).filter({ hasText: "The pump is away." });
    await one.getByText("There now").waitFor({ timeout: 40_000 });
    const both = await one.innerText();
    expect(both).toContain("No hands this week.");
    expect(both).toContain("The pump is away.");
    const standing = async () => {
      await agent.page.goto(`/issued/${id}`);
      return agent.page.locator("#answer").innerText();
    };
    expect(await standing()).toContain("No hands this week.");
    await one.getByRole("button", { name: "Send mine" }).click();
    await allSent(page);
    expect(await standing()).toContain("The pump is away.");
    await other.context.close();
  }, 180_000);
});

test("a form and a sending that nobody answers are given up, kept, and sent once when somebody does", async () => {
  const { page } = farmer;
  // A fifth of its patience: how long it waits is not what is tried.
  await page.addInitScript(() => {
    const real = AbortSignal.timeout.bind(AbortSignal);
    AbortSignal.timeout = (ms) => real(ms / 5);
  });
  await page.route(
    ({ pathname }) => pathname.startsWith(`/record/${farmId}/harvests`),
    (route) => (route.request().method() === "POST" ? undefined : route.continue()),
  );
  await writeHarvest(page, "9.5");
  // Nothing happens for a while, so it is tapped again: it is one harvest all the same.
  await page.locator("button.press").click({ force: true });
  await saysKept(page);
  await page.goto("/today");
  await expect.poll(() => waiting(page).count()).toBe(1);
  await page.getByText("No signal.").waitFor({ timeout: 30_000 });
  expect(await waiting(page).count()).toBe(1);
  await page.unrouteAll({ behavior: "ignoreErrors" });
  await allSent(page);
  await page.goto("/record", { waitUntil: "networkidle" });
  expect(await page.locator(".records > li", { hasText: "9.5" }).count()).toBe(1);
}, 180_000);

test("another language or paper lets go of the pages that were kept in the one before, and fetches them again", async () => {
  const { page } = farmer;
  await fetchAhead("/record");
  const langOf = () =>
    page.evaluate(async () => {
      const there = await (await caches.open("pith-day")).match("/record");
      return /<html[^>]* lang="(\w+)"/.exec((await there?.text()) ?? "")?.[1];
    });
  expect(await langOf()).toBe("en");
  await page.getByRole("button", { name: "Español" }).click();
  await expect.poll(langOf, { timeout: 30_000 }).toBe("es");
  await page.getByRole("button", { name: "English" }).click();
  await expect.poll(langOf, { timeout: 30_000 }).toBe("en");
}, 120_000);

test("what comes from no page of ours is refused", async () => {
  // Sent by no browser: it says neither where it comes from nor its origin.
  const answer = await farmer.page.request.post(`/record/${farmId}/harvests/send`, { form: { kg: "1" } });
  expect(answer.status()).toBe(403);
});

test("whoever signs out takes the pages along", async () => {
  const { page } = farmer;
  await fetchAhead("/today");
  await page.getByRole("button", { name: "Sign out" }).click();
  await page.waitForURL("**/sign-in**");
  await expect.poll(() => kept("/today")).toBe(false);
  await agent.context.close();
  await farmer.context.close();
});
