import type { Page } from "playwright-core";
import { openPage, type Role } from "./browser.ts";

export interface Screen {
  name: string;
  role?: Role;
  path: string;
  /** Parts of a long page of which each is like the next: of these the checks that look at every letter take a few. */
  alike?: string;
}

const hrefOf = async (page: Page, selector: string): Promise<string> => {
  const href = await page.locator(selector).first().getAttribute("href");
  if (!href) throw new Error(`the demo office has nothing at ${selector} on ${page.url()}`);
  return href;
};

/** A standing order of the demo office; one is signed where there is none. */
async function anOrder(page: Page, farmId: string): Promise<string> {
  const first = 'a.listing-head[href^="/standing-orders/"]';
  await page.goto("/standing-orders");
  if ((await page.locator(first).count()) > 0) return hrefOf(page, first);
  await page.goto(`/standing-orders/new?farm=${farmId}&rule=cold-tonight`);
  await page.getByLabel("frost tonight").check();
  const inAMonth = new Date(Date.now() + 30 * 86_400_000).toISOString().slice(0, 10);
  await page.getByLabel("Last day").fill(inAMonth);
  await page.getByRole("button", { name: "Sign it" }).click();
  await page.waitForURL(/\/standing-orders\/[0-9a-f-]{36}/);
  return new URL(page.url()).pathname;
}

/** Every screen there is, with addresses found in the demo office the way a person would find them. */
export async function findScreens(): Promise<Screen[]> {
  const agent = await openPage({ role: "agent" });
  const { page } = agent;
  await page.goto("/round");
  const draft = await hrefOf(page, "[data-entry]");
  await page.goto("/round?show=all", { waitUntil: "networkidle" });
  // What lacks a measurement presses least: it stands pages further down.
  while ((await page.locator(".draft:has(.unknown)").count()) === 0) {
    await page.goto(await hrefOf(page, 'a[href*="after="]'), { waitUntil: "networkidle" });
  }
  const unsure = await hrefOf(page, ".draft:has(.unknown) [data-entry]");

  // The farmer's first open advice; where the demo office has issued none, the agent issues one of that farm.
  const farmer = await openPage({ role: "farmer", width: 390 });
  await farmer.page.goto("/record");
  const record = await hrefOf(farmer.page, 'main a[href^="/record/"]');
  const farmId = record.split("/")[2];
  const farm = `/farms/${farmId}`;
  await page.goto(`/round?farm=${farmId}`);
  await page.goto(await hrefOf(page, "[data-entry]"));
  await page.getByRole("button", { name: "Issue this advice" }).click();
  await page.waitForURL("**/issued/**");
  const issued = new URL(page.url()).pathname;
  await page.goto(farm);
  const planting = await hrefOf(page, "#plantings tbody th a");
  const bed = await hrefOf(page, "#beds tbody th a");
  // One advice with a soil's ranges, one with a season's table, one with the shed's blend.
  const draftOf = async (rule: string) => {
    await page.goto(`/round?farm=${farmId}&rule=${rule}`);
    return hrefOf(page, "[data-entry]");
  };
  const [soil, feeding, shed] = [
    await draftOf("soil-reading"),
    await draftOf("feeding"),
    await draftOf("shed"),
  ];
  await page.goto(farm);
  // The planting with most to draw: a season before it, a sign with a photograph, a spraying.
  const season = await hrefOf(page, '#plantings tbody th a:has-text("Marrow Bell")');
  const sign = await hrefOf(page, '#records a[href*="/signs/"]');
  const imported = await hrefOf(page, '#imports a[href*="/imports/"]');
  await page.goto(`${farm}/bed-plan`);
  const bedPlan = await hrefOf(page, 'main li:nth-child(2) a[href*="/bed-plan/"]');
  await page.goto(`${farm}/trials`);
  const trial = await hrefOf(page, "ul.listing a");
  const order = await anOrder(page, farmId ?? "");
  await agent.context.close();
  await farmer.context.close();

  const idIn = (href: string) => href.split("/").at(-1) ?? "";
  const as = (role: Role) => (name: string, path: string) => ({ name, role, path });
  const [mine, theirs] = [as("agent"), as("farmer")];
  return [
    { name: "sign-in", path: "/sign-in" },
    { name: "sign-in-code", path: "/sign-in/code" },
    { name: "sign-in-by-link", path: "/sign-in/by-link" },
    { name: "sign-in-forgotten", path: "/sign-in/forgotten" },
    { name: "sign-in-link", path: "/sign-in/link" },
    { name: "sign-in-confirm", path: "/sign-in/confirm" },
    { name: "sign-in-new-password", path: "/sign-in/new-password" },
    { name: "join", path: "/join" },
    // One farm's part: the checks look at every letter, and one entry is like another.
    mine("round", `/round?farm=${farmId}`),
    mine("round-all", `/round?show=all&farm=${farmId}`),
    mine("round-grouped", `/round?farm=${farmId}&group=rule`),
    mine("round-several", `/round/several?id=${idIn(draft)}&id=${idIn(unsure)}&id=${idIn(soil)}`),
    mine("issued-list", `/issued?farm=${farmId}`),
    mine("office", "/office"),
    mine("people", "/office/people"),
    mine("audit", "/office/audit"),
    mine("account", "/account"),
    mine("second-step", "/account/second-step"),
    mine("work", "/office/work"),
    mine("keeping", "/office/keeping"),
    mine("delivery-settings", "/account/delivery"),
    mine("webhooks", "/office/webhooks"),
    mine("farms", "/farms"),
    mine("farm-new", "/farms/new"),
    mine("farm", farm),
    mine("site-new", `${farm}/edit/sites/new`),
    mine("valve-new", `${farm}/edit/valves/new`),
    mine("bed", bed),
    mine("bed-plans", `${farm}/bed-plan`),
    mine("bed-plan", bedPlan),
    mine("planting-new", `${farm}/edit/plantings/new`),
    mine("structure-new", `${farm}/edit/structures/new`),
    mine("material-new", `${farm}/edit/materials/new`),
    mine("harvest-new", `${farm}/record/harvests`),
    mine("water-test-new", `${farm}/record/waterTests`),
    mine("soil-water-new", `${farm}/record/soilWater`),
    mine("delivery-new", `${farm}/record/deliveries`),
    mine("plant-test-new", `${farm}/record/plantTests`),
    mine("drain-new", `${farm}/record/drainReadings`),
    mine("sign-new", `${farm}/record/signs`),
    mine("work-new", `${farm}/record/works`),
    mine("spray-new", `${farm}/record/sprays`),
    mine("sensors", `/sensors/${farmId}`),
    mine("series-new", `/sensors/${farmId}/series/new`),
    theirs("sensors-farmer", `/sensors/${farmId}`),
    mine("bed-history-new", `${farm}/record/bedHistory`),
    mine("sign", sign),
    mine("season", season),
    mine("evidence-new", "/evidence/new"),
    mine("evidence-source", "/evidence/sources/depth-guides"),
    mine("trials", `${farm}/trials`),
    mine("trial-new", `${farm}/trials/new`),
    mine("trial", trial),
    mine("trial-labels", `${trial}/labels`),
    theirs("farmer-trial", `/record/${farmId}/trials/${trial.split("/").at(-1)}`),
    mine("guides", "/guides"),
    mine("guide", "/guides/ga-piedmont"),
    mine("guide-form", "/guides/new/form"),
    mine("guide-file", "/guides/new/file"),
    mine("planting", planting),
    mine("what-if", `${planting}/what-if?cover=low-tunnel&k2oKgPerHa=60`),
    mine("import", `${farm}/import`),
    mine("imported", imported),
    mine("draft", draft),
    mine("draft-unsure", unsure),
    mine("draft-soil", soil),
    mine("draft-feeding", feeding),
    mine("draft-shed", shed),
    mine("shed-sheet", `${farm}/shed-sheet`),
    mine("season-record", `/season-record/${farmId}`),
    mine("issued", issued),
    { ...mine("evidence", "/evidence"), alike: '[id^="rule-"], #sources li' },
    mine("standing-orders", "/standing-orders"),
    mine("standing-order-new", `/standing-orders/new?farm=${farmId}&rule=irrigate`),
    mine("standing-order", order),
    mine("ledger", "/ledger"),
    mine("settings", "/settings"),
    mine("not-found", "/farms/nothing"),
    theirs("today", "/today"),
    theirs("advice", issued.replace("/issued/", "/today/")),
    theirs("shed-sheet-farmer", `/today/shed-sheet/${farmId}`),
    theirs("season-record-farmer", `/season-record/${farmId}`),
    theirs("delivery-settings-farmer", "/account/delivery"),
    theirs("record", "/record"),
    theirs("note", record),
    theirs("bed-plan-farmer", bedPlan),
    theirs("sign-farmer", sign.replace("/farms/", "/record/")),
  ];
}
