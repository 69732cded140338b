import { afterAll, describe, expect, inject, test } from "vitest";
import { closeBrowser, keepPicture, openPage, overflow, type Seen } from "./browser.ts";

afterAll(closeBrowser);

/** A laboratory's file with one row that cannot be read and one column whose unit is not stated. */
const soilCsv = (bed: string) =>
  [
    "Sample ID,Bed,Sampled on,Depth (in),pH,P (Mehlich-3),K (Mehlich-3) ppm,Remark",
    `T-1,${bed},2026-04-12,6,6.4,31,142,top`,
    `T-2,${bed},2026-04-13,6,<5,28,120,limit`,
  ].join("\n");

const weatherCsv = (days: number, last: Date) => {
  const lines = ["Date,Tmax (°F),Tmin (°F),Rain (in)"];
  for (let back = days; back >= 1; back -= 1) {
    const day = new Date(last.getTime() - back * 86_400_000).toISOString().slice(0, 10);
    lines.push(`${day},${68 + (back % 7)},${49 + (back % 5)},${back % 9 === 0 ? "0.4" : "0"}`);
  }
  lines.push("2026-13-40,60,40,0");
  return lines.join("\n");
};

const addDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

describe.each([390, 1440])("from an import to the farmer's answer at %i px", (width) => {
  const name = `Test ${width}`;

  test("the agent adds a place to grow, imports files, plants, and issues; the farmer answers; the agent reads it", async () => {
    const agent = await openPage({ width, role: "agent" });
    const { page } = agent;

    // The farmer's own farm, so that what is issued reaches them.
    const farmer = await openPage({ width: 390, role: "farmer" });
    await farmer.page.goto("/record");
    const farmName = await farmer.page.getByRole("heading", { level: 2 }).first().innerText();

    await page.goto("/farms");
    await page.getByRole("link", { name: farmName, exact: true }).click();
    await page.getByRole("heading", { level: 1, name: farmName }).waitFor();
    const farmUrl = page.url();

    await page.goto(`${farmUrl}/edit/sites/new`);
    await page.getByLabel("Name", { exact: true }).fill(`${name} field`);
    await page.getByLabel("Latitude").fill("46.6");
    await page.getByLabel("Longitude").fill("-91.2");
    await page.getByLabel("Height above the sea").fill("700");
    await page.getByLabel("Time zone").fill("America/Chicago");
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("The site is saved.").waitFor();

    await page.goto(`${farmUrl}/edit/beds/new`);
    await page.getByLabel("Name", { exact: true }).fill(`${name} bed`);
    await page.getByLabel("Site", { exact: true }).selectOption({ label: `${name} field` });
    await page.getByLabel("Length").fill("100");
    await page.getByLabel("Width").fill("2.5");
    await page.getByLabel("Spacing").fill("6");
    await page.getByLabel("Texture").selectOption({ label: "sandy loam" });
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("The bed is saved.").waitFor();

    // Soil: the unit of P is asked, the row with "<5" is refused with its reason, and the rest is saved.
    await page.goto(`${farmUrl}/import`);
    await page.getByLabel("File", { exact: true }).setInputFiles({
      name: "lab.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(soilCsv(`${name} bed`)),
    });
    await page.getByRole("button", { name: "Read the file" }).click();
    await page.getByLabel(/In what unit is "P/).selectOption("ppm");
    await page.getByRole("button", { name: "Read it with these answers" }).click();
    const refused = page.getByRole("table", { name: "Rows refused" });
    await refused.getByText(/is a limit, not a number/).waitFor();
    expect(await refused.getByRole("row").nth(1).innerText()).toMatch(/3[\s\S]*pH[\s\S]*<5/);
    await keepPicture(page, `import-preview-${width}`);
    await page.getByRole("button", { name: "Save the accepted rows" }).click();
    await page.getByText("Saved: 1 rows stored, 1 refused").waitFor();

    await page.goto(`${farmUrl}/import`);
    await page.getByLabel("Weather of a station, day by day").check();
    await page.getByLabel("Site", { exact: true }).selectOption({ label: `${name} field` });
    await page.getByLabel("File", { exact: true }).setInputFiles({
      name: "station.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(weatherCsv(40, new Date())),
    });
    await page.getByRole("button", { name: "Read the file" }).click();
    await page.getByText("2026-13-40").first().waitFor();
    await page.getByRole("button", { name: "Save the accepted rows" }).click();
    await page.getByText("Saved: 40 rows stored, 1 refused").waitFor();

    await page.goto(`${farmUrl}/edit/plantings/new`);
    await page.getByLabel("Variety", { exact: true }).fill(name);
    await page.getByLabel("Bed", { exact: true }).selectOption({ label: `${name} bed` });
    await page.getByLabel("Market type").selectOption({ label: "jalapeño type" });
    await page.getByLabel("Sown on").fill(addDays(-60));
    await page.getByLabel("Planned to go out on").fill(addDays(10));
    await page.getByLabel("Plants", { exact: true }).fill("200");
    await page.getByLabel("Rows in the bed").fill("2");
    await page.getByLabel("Plant to plant in the row").fill("1.25");
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("The planting is saved.").waitFor();

    // A draft about it: the planting's page leads to it, and the agent issues it with a note of their own.
    await page.getByRole("link", { name, exact: true }).click();
    await page.getByRole("heading", { level: 1, name }).waitFor();
    const decision = await firstAdvice(agent);
    await page.getByRole("table", { name: "Working" }).waitFor();
    expect(await page.getByRole("region", { name: "Cautions" }).count()).toBeGreaterThan(0);
    await page.getByLabel("A note of your own").fill(`Mind the wind, ${width}.`);
    const preview = page.locator(".slip");
    expect(await preview.innerText()).toContain(`Mind the wind, ${width}.`);
    await page.getByRole("button", { name: "Issue this advice" }).click();
    await page.getByText("Issued. The farmer sees it now.").waitFor();
    const issuedUrl = page.url().split("?")[0] as string;
    expect(await page.getByText("Not answered yet").count()).toBe(1);

    // The farmer: plain words, the cautions before the steps and above the fold, then the answer.
    const { page: phone } = farmer;
    await phone.goto(`/today/${issuedUrl.split("/").at(-1)}`);
    await phone.getByRole("heading", { level: 1, name: decision }).waitFor();
    await phone.getByText(`Mind the wind, ${width}.`).waitFor();
    const caution = await phone.getByRole("region", { name: "Cautions" }).boundingBox();
    expect(caution?.y).toBeLessThan(844);
    await phone.getByLabel(/^Not done/).check();
    await phone.getByRole("button", { name: "Send the answer" }).click();
    await phone.getByText("Say why in a few words.").waitFor();
    expect(await phone.getByLabel(/^Not done/).isChecked()).toBe(true);
    await phone.getByLabel("Why?").fill("The ground was too wet.");
    await phone.getByRole("button", { name: "Send the answer" }).click();
    await phone.getByText("Thank you, your answer is with the office").waitFor();

    await page.goto(issuedUrl);
    const answer = page.locator("#answer");
    expect(await answer.innerText()).toContain("Not done");
    expect(await answer.innerText()).toContain("“The ground was too wet.”");
    expect(await answer.innerText()).toMatch(/Ledger entry \d+/);
    await keepPicture(page, `answered-${width}`);
    expect(await overflow(page)).toBe(0);
    expect(agent.errors).toEqual([]);
    expect(farmer.errors).toEqual([]);
    await agent.context.close();
    await farmer.context.close();
  });
});

/** Opens the first draft of a planting's page that is advice; its decision. */
async function firstAdvice({ page }: Seen): Promise<string> {
  const drafts = page
    .locator("#drafts li")
    .filter({ hasNotText: /needs a measurement|refused|does not apply/ });
  await drafts.first().getByRole("link").click();
  await page.waitForURL("**/drafts/**");
  return page.getByRole("heading", { level: 1 }).innerText();
}

test("somebody who is not signed in is led to the sign-in and from there back", async () => {
  const { page, context } = await openPage();
  await page.goto("/ledger");
  await page.waitForURL("**/sign-in?next=%2Fledger");
  const { email, password } = inject("agent");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill("not the password");
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByText("That e-mail and password do not belong together.").waitFor();
  expect(await page.getByLabel("E-mail").inputValue()).toBe(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL("**/ledger");
  await context.close();
});
