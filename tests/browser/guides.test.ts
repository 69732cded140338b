import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { violations } from "./axe.ts";
import { closeBrowser, keepPicture, openPage, overflow, type Seen } from "./browser.ts";

/** The office's own guide: typed with a gap, mended, used, left and put away; and one from a file. */

afterAll(closeBrowser);

describe.each([390, 1440])("at %i px", (width) => {
  let seen: Seen;
  // Of this run alone: two guides of one name cannot be in use at once.
  const run = `${width} ${Date.now().toString(36)}`;
  const title = `Bench table ${run}`;
  const id = title.toLowerCase().replaceAll(" ", "-");
  beforeAll(async () => {
    seen = await openPage({ width, role: "agent" });
    // Keeping, using and leaving a guide each advise the whole office again.
    seen.context.setDefaultTimeout(120_000);
  });
  afterAll(() => seen.context.close());

  const group = (name: string) => seen.page.getByRole("group", { name, exact: true });
  const typeClass = async (place: number, name: string, low: string, high: string, response: string) => {
    const row = group("Nutrient 1").getByRole("group", { name: `Class ${place}`, exact: true });
    await row.getByRole("combobox", { name: "Class", exact: true }).selectOption({ label: name });
    await row.getByLabel("From", { exact: true }).fill(low);
    await row.getByLabel("Up to", { exact: true }).fill(high);
    await row.getByLabel("What peppers do").selectOption({ label: response });
  };

  test("a gap between two classes is refused at its row, nothing typed is lost, and the mended guide can be used", {
    timeout: 400_000,
  }, async () => {
    const { page } = seen;
    await page.goto("/guides/new/form");
    await page.getByLabel("Title").fill(title);
    await group("The guide").getByLabel("Calibrated in").fill("Aldertarn County");
    await page.getByLabel("Where it comes from").fill("Bench laboratory, tables for peppers, 2025, p. 3");
    await page.getByLabel("Unit of the contents").selectOption("mg/kg");
    await page.getByRole("combobox", { name: "Nutrient", exact: true }).selectOption({ label: "Phosphorus" });
    await page.getByRole("combobox", { name: "Extractant", exact: true }).selectOption("mehlich-3");
    await page.getByLabel("Rates", { exact: true }).selectOption("P2O5");
    await typeClass(1, "low", "0", "30", "respond");
    await group("Class 1").getByLabel("Rate, from").fill("100");
    await page.getByRole("button", { name: "Add a class" }).click();
    expect(await page.evaluate(() => document.activeElement?.closest("fieldset")?.textContent)).toMatch(
      /^Class 3/,
    );
    await typeClass(2, "medium", "33", "60", "may respond");
    await typeClass(3, "high", "61", "", "hardly respond");
    await page.getByLabel("Crop").fill("peppers");
    await page.getByRole("button", { name: "Keep the guide" }).click();

    const low = group("Class 2").getByLabel("From", { exact: true });
    await page.getByText("It leaves a gap above the class below it. Accepted: 31.").waitFor();
    expect(await low.getAttribute("aria-invalid")).toBe("true");
    expect(await low.evaluate((e) => e === document.activeElement)).toBe(true);
    expect(await page.getByLabel("Title").inputValue()).toBe(title);
    expect(await group("Class 3").getByLabel("From", { exact: true }).inputValue()).toBe("61");
    await keepPicture(page, `guide-form-${width}`);
    expect(await violations(seen.page)).toEqual([]);
    expect(await overflow(page)).toBe(0);

    await low.fill("31");
    await page.getByRole("button", { name: "Keep the guide" }).click();
    await page.getByText("The guide is kept.").waitFor();
    expect(new URL(page.url()).pathname).toBe(`/guides/${id}`);
    const rows = page.getByRole("table", { name: /^Classes of Phosphorus/ }).locator("tbody tr");
    expect((await rows.nth(1).innerText()).replace(/\s+/g, " ")).toContain("31 to 60");
    expect((await rows.nth(0).innerText()).replace(/\s+/g, " ")).toContain("100");

    // Chosen here, it stands chosen in the settings, beside everything else that was set.
    await page.goto("/settings");
    const floor = await page.getByLabel("Cold counts below").inputValue();
    await page.goto(`/guides/${id}`);
    await page.getByRole("button", { name: "Use it for our soil tests" }).click();
    await page.getByText("Soil tests are read by this guide now").waitFor();
    await page.goto("/settings");
    expect(await page.getByLabel("Guide for reading soil tests").inputValue()).toBe(id);
    expect(await page.getByLabel("Cold counts below").inputValue()).toBe(floor);
    await page.goto("/guides");
    expect(await page.locator("#own tbody tr").filter({ hasText: title }).innerText()).toContain("in use");
    expect(await violations(seen.page)).toEqual([]);

    // Put away while it is in use: the office goes back to the guides held here, and no draft names what is gone.
    await page.goto(`/guides/${id}`);
    await page.getByText("Put it away", { exact: true }).click();
    await page.getByRole("button", { name: "Yes, put it away" }).click();
    await page.getByText("The guide is put away.").waitFor();
    expect(await page.getByText(title).count()).toBe(0);
    await page.goto("/settings");
    expect(await page.getByLabel("Guide for reading soil tests").inputValue()).toBe("");
  });

  test("the example comes as a file, and what is wrong in a file is listed by its field", {
    timeout: 300_000,
  }, async () => {
    const { page } = seen;
    await page.goto("/guides/new/file");
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Download an example" }).click(),
    ]);
    const example = JSON.parse(readFileSync(await file.path(), "utf8"));
    expect(example.status).toBe("office");
    expect(example.source.key).toBe("office-guide");
    const upload = async (guide: unknown) => {
      await page.getByLabel("File", { exact: true }).setInputFiles({
        name: "own.json",
        mimeType: "application/json",
        buffer: Buffer.from(typeof guide === "string" ? guide : JSON.stringify(guide)),
      });
      await page.getByRole("button", { name: "Keep the guide" }).click();
    };
    await upload("{ not JSON");
    await page.getByText("This is not JSON").waitFor();

    const own = { ...structuredClone(example), id: `file-${id}`, title: `File ${title}` };
    own.nutrients.P.classes[1].low += 3;
    await upload(own);
    const wrong = page.getByRole("table", { name: "What is wrong with it" }).locator("tbody tr");
    await wrong.first().waitFor();
    expect(await wrong.count()).toBe(1);
    const said = (await wrong.first().innerText()).replace(/\s+/g, " ");
    expect(said).toContain("nutrients, Phosphorus, class, row 2, low end");
    expect(said).toContain("It leaves a gap above the class below it. Accepted: 25.");
    expect(said).toContain("nutrients.P.classes.1.low");
    await keepPicture(page, `guide-file-${width}`);
    expect(await violations(seen.page)).toEqual([]);
    expect(await overflow(page)).toBe(0);

    own.nutrients.P.classes[1].low -= 3;
    await upload(own);
    await page.getByText("The guide is kept.").waitFor();
    // Its own file is the file that was given.
    const again = await page.request.get(`/guides/file-${id}/guide.json`);
    expect(await again.json()).toEqual(own);
    await page.getByText("Put it away", { exact: true }).click();
    await page.getByRole("button", { name: "Yes, put it away" }).click();
    await page.getByText("The guide is put away.").waitFor();
  });
});
