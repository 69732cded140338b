import { afterAll, beforeAll, expect, test } from "vitest";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

let seen: Seen;
let farmUrl: string;

beforeAll(async () => {
  seen = await openPage({ role: "agent" });
  await seen.page.goto("/farms");
  farmUrl = new URL(
    (await seen.page
      .getByRole("table")
      .getByRole("rowheader")
      .first()
      .getByRole("link")
      .getAttribute("href")) ?? "",
    seen.page.url(),
  ).href;
});
afterAll(closeBrowser);

/** The message that a field names as its own description. */
async function problemOf(label: string): Promise<string> {
  const field = seen.page.getByLabel(label, { exact: true });
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  const ids = ((await field.getAttribute("aria-describedby")) ?? "").split(" ");
  return seen.page.locator(`[id="${ids.at(-1)}"]`).innerText();
}

test("a latitude beyond the pole is refused beside its field, and nothing has to be typed twice", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/edit/sites/new`);
  await page.getByLabel("Name").fill("Nowhere");
  await page.getByLabel("Latitude").fill("146");
  await page.getByLabel("Longitude").fill("-91");
  await page.getByLabel("Height above the sea").fill("200");
  await page.getByLabel("Time zone").fill("Mars/Olympus");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByRole("alert").filter({ hasText: "Nothing was saved yet" }).waitFor();
  expect(await problemOf("Latitude")).toContain("Must be between -90° and 90°.");
  expect(await page.getByLabel("Name").inputValue()).toBe("Nowhere");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("name"))).toBe("latitudeDeg");
});

test("a word where a number belongs is named as what it is", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/edit/valves/new`);
  await page.getByLabel("Name").fill("Odd valve");
  await page.getByLabel("Flow of the whole valve").fill("1,5");
  await page.getByRole("button", { name: "Save" }).click();
  await page.getByText("“1,5” is not a number.").waitFor();
  expect(await problemOf("Flow of the whole valve")).toContain("Write it with a point, like 1.5.");
});

test("an office floor above its bound is refused in the unit it was asked in", async () => {
  const { page } = seen;
  await page.goto("/settings");
  const before = await page.getByLabel("Cold counts below").inputValue();
  await page.getByLabel("Cold counts below").fill("99");
  await page.getByRole("button", { name: "Save the settings" }).click();
  await page.getByText("Must be between 0 °C and 20 °C.").waitFor();
  await page.reload();
  expect(await page.getByLabel("Cold counts below").inputValue()).toBe(before);
});

test("a file that is not chosen, and one without rows, are refused beside the file", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/import`);
  await page.getByRole("button", { name: "Read the file" }).click();
  expect(await problemOf("File")).toContain("Choose a file that is not empty.");
  await page.getByLabel("File", { exact: true }).setInputFiles({
    name: "empty.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("Date,Tmax (C)\n"),
  });
  await page.getByRole("button", { name: "Read the file" }).click();
  await page.getByText("at least one row below it").waitFor();
  expect(await problemOf("File")).toContain("at least one row below it");
});

test("what was stored keeps its full precision when a form is saved untouched in US units", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}#beds`);
  await page.locator("#beds").getByRole("rowheader").first().getByRole("link").click();
  await page.getByRole("heading", { level: 1, name: "Change the bed" }).waitFor();
  const url = page.url();
  const read = () =>
    Promise.all(["Length", "Width", "Spacing"].map((label) => page.getByLabel(label).inputValue()));
  const before = await read();
  for (let round = 0; round < 2; round += 1) {
    await page.goto(url);
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("The bed is saved.").waitFor();
  }
  await page.goto(url);
  expect(await read()).toEqual(before);
});

test("a water test with nothing measured is refused, and one with a value stands in the record", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/record/waterTests`);
  await page.getByLabel("Laboratory").fill("Test bench");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("alert").filter({ hasText: "Nothing was saved yet" }).waitFor();
  expect(await page.getByLabel("Electrical conductivity").getAttribute("aria-invalid")).toBe("true");
  await page.getByLabel("Electrical conductivity").fill("0.7");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("The water test is written down.").waitFor();
  expect(await page.locator("#records").getByText("Water test, Test bench").first().innerText()).toContain(
    "0.7 dS/m",
  );
});

test("a tensiometer read by the farm's clock stands in the record under its day", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/record/soilWater`);
  await page.getByLabel("Read at").fill("2026-05-04T06:15");
  await page.getByLabel("What it reads").selectOption("tension-kpa");
  await page.getByLabel("Depth").fill("8");
  await page.getByLabel("Reading", { exact: true }).fill("31");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("The reading is written down.").waitFor();
  const line = page.locator("#records li").filter({ hasText: "Soil tension 31 kPa" });
  expect(await line.locator("time").getAttribute("datetime")).toBe("2026-05-04");
});

test("what is seen names the unit it is measured in, and a number from another unit is refused in that one", async () => {
  const { page } = seen;
  await page.goto(`${farmUrl}/record/notes`);
  await page.getByLabel("What was seen").selectOption({ label: "Soil temperature at 10 cm, °C" });
  await page.getByLabel("Count or measure").fill("62");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("Must be between -20 °C and 50 °C.").waitFor();
  expect(await page.getByLabel("Count or measure").getAttribute("aria-invalid")).toBe("true");
  expect(await page.getByLabel("Count or measure").inputValue()).toBe("62");
});
