import { addDays } from "@pith/rules";
import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

/** The plant's side of a farm: its season drawn, what a label closes, and what stood in a bed before. */

let seen: Seen;

beforeAll(async () => {
  seen = await openPage({ role: "agent" });
});
afterAll(closeBrowser);

async function openFarm(name: string): Promise<string> {
  const { page } = seen;
  await page.goto("/farms");
  await page.getByRole("link", { name, exact: true }).click();
  await page.getByRole("heading", { level: 1, name }).waitFor();
  return page.url();
}

const text = (day: string, options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", ...options }).format(new Date(`${day}T12:00:00Z`));
const shortDay = (day: string) => text(day, { day: "numeric", month: "short" });
const longDay = (day: string) => text(day, { weekday: "long", day: "numeric", month: "long" });

test("a planting's season says beside each drawn line when it was, as the planting's own days say", async () => {
  const { page } = seen;
  await openFarm("Low Fell");
  await page.locator("#plantings").getByRole("link", { name: "Marrow Bell" }).first().click();
  await page.getByRole("heading", { level: 1, name: "Marrow Bell" }).waitFor();
  const edit = (await page.getByRole("link", { name: "Change the planting" }).getAttribute("href")) ?? "";
  const season = page.locator("#timeline");
  const laneOf = (name: string) => season.locator(".lane").filter({ hasText: name });
  const told = await Promise.all(
    ["Sown", "Set out"].map((name) => laneOf(name).first().locator(".lane-when").innerText()),
  );
  // A forecast stage names three days and a noted one only its own.
  expect(await laneOf("first coloured fruit").locator(".lane-when").innerText()).toMatch(
    /^about .+, .+ to .+$/,
  );
  expect(await laneOf("buds to be seen").locator(".lane-when").innerText()).toMatch(/^\d+ \w+$/);
  await season.getByText("The same as a table").click();
  const row = season.getByRole("row").filter({ hasText: "Set out" });
  expect(await row.innerText()).toContain("came or was noted");
  await page.goto(edit);
  const days = [page.getByLabel("Sown on"), page.getByLabel("Set out on")];
  expect(told).toEqual(
    (await Promise.all(days.map((field) => field.inputValue()))).map((day) => shortDay(day)),
  );
});

test("its stages stay drawn when their advice is put off for the round, and when it is issued", async () => {
  const { page } = seen;
  await openFarm("Low Fell");
  await page.locator("#plantings").getByRole("link", { name: "Marrow Bell" }).first().click();
  await page.getByRole("heading", { level: 1, name: "Marrow Bell" }).waitFor();
  const planting = page.url();
  const coloured = page.locator("#timeline .lane").filter({ hasText: "first coloured fruit" });
  const said = await coloured.locator(".lane-when").innerText();
  const now = page.locator(".season-now a");
  await now.click();
  await page.waitForURL(/\/(drafts|issued)\//);
  // Another file of tests may have issued it before.
  if (page.url().includes("/drafts/")) {
    await page.getByText("Set aside", { exact: true }).first().click();
    await page.getByLabel("Until").fill(addDays(new Date().toISOString().slice(0, 10), 7));
    await page.getByRole("button", { name: "Set aside" }).click();
    await page.getByText(/^Set aside until/).waitFor();
    const draft = page.url();
    await page.goto(planting);
    expect(await coloured.locator(".lane-when").innerText()).toBe(said);
    expect(await page.locator("#drafts").getByText("set aside until").count()).toBe(1);
    await page.goto(draft);
    await page.getByRole("button", { name: "Issue this advice" }).click();
    await page.waitForURL("**/issued/**");
  }
  await page.goto(planting);
  // It was computed again when it was issued, and a day that moves by one is no other advice.
  expect(await coloured.locator(".lane-when").innerText()).toMatch(/^about .+, .+ to .+$/);
  expect(await now.getAttribute("href")).toMatch(/^\/issued\//);
});

test("a cleared planting of a season before keeps its own drawing, with its pickings and without today", async () => {
  const { page } = seen;
  await openFarm("Low Fell");
  await page.locator("#plantings").getByRole("link", { name: "Marrow Bell" }).last().click();
  await page.getByText("Cleared").first().waitFor();
  const season = page.locator("#timeline");
  expect(
    await season.locator(".lane").filter({ hasText: "Picked" }).locator(".lane-when").innerText(),
  ).toContain("3 times");
  expect(await season.locator(".lane-today").count()).toBe(0);
});

test("a spraying closes its bed in words on the farm, the planting, on paper and before a harvest, until it is taken back", async () => {
  const { page } = seen;
  const farm = await openFarm("Quarry Lane");
  await page.goto(`${farm}/record/sprays`);
  await page.getByLabel("Bed", { exact: true }).selectOption({ label: "South 1" });
  const sprayedAt = await page.getByLabel("Sprayed at").inputValue();
  await page.getByLabel("Product").fill("Quarry test soap");
  await page.getByLabel("Re-entry interval").fill("48");
  await page.getByLabel("Pre-harvest interval").fill("7");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("The spraying is written down.").waitFor();

  // By hand: sprayed on a day and closed to picking for 7 days, picking is open on that day plus 7.
  const open = longDay(addDays(sprayedAt.slice(0, 10), 7));
  const notice = page.getByRole("region", { name: "Closed by the label" });
  expect(await notice.innerText()).toContain(`no picking before ${open}.`);
  expect(await notice.innerText()).toMatch(/South 1: closed to work until /);

  await page.locator("#plantings").getByRole("link", { name: "Quarry Bell" }).click();
  await page.getByRole("heading", { level: 1, name: "Quarry Bell" }).waitFor();
  await page.emulateMedia({ media: "print" });
  expect(await notice.isVisible()).toBe(true);
  expect(await page.locator("#timeline .lane").filter({ hasText: "Closed to picking" }).isVisible()).toBe(
    true,
  );
  await page.emulateMedia({ media: null });

  await page.goto(`${farm}/record/harvests`);
  expect(await notice.innerText()).toContain(`no picking before ${open}.`);
  await page.getByLabel("Planting", { exact: true }).selectOption({ label: "Quarry Bell, South 1" });
  await page.getByLabel("Picked in all").fill("10");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("alert").filter({ hasText: "Nothing was saved yet" }).waitFor();
  expect(await page.locator(".problem").innerText()).toContain("pre-harvest interval");

  await page.goto(farm);
  const line = page.locator("#records li").filter({ hasText: "Quarry test soap" });
  await line.getByText("Take back").click();
  await line.getByRole("button", { name: "Yes, take it back" }).click();
  await page.getByText("The spraying is taken back.").waitFor();
  expect(await notice.count()).toBe(0);
});

test("what stood in a bed before stands beside the bed, with the disease that was found", async () => {
  const { page } = seen;
  const farm = await openFarm("Windle Top");
  await page.goto(`${farm}/record/bedHistory`);
  await page.getByLabel("Bed", { exact: true }).selectOption({ label: "Ridge" });
  await page.getByLabel("Season").fill("2021");
  await page.getByLabel("What stood there").selectOption({ label: "potato" });
  await page.getByLabel("Disease found in it").selectOption({ label: "Verticillium wilt" });
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("What stood there is written down.").waitFor();
  expect(await page.locator("#beds tr").filter({ hasText: "Ridge" }).innerText()).toContain(
    "2021: potato, Verticillium wilt",
  );
});

test("a bed's place that is half filled in is refused beside its field", async () => {
  const { page } = seen;
  await openFarm("Windle Top");
  await page.locator("#beds").getByRole("link", { name: "Ridge" }).click();
  await page.getByLabel("First corner, east of the plan’s origin").fill("12");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByRole("alert").filter({ hasText: "Nothing was saved yet" }).waitFor();
  expect(await page.getByLabel("First corner, north of the plan’s origin").getAttribute("aria-invalid")).toBe(
    "true",
  );
});
