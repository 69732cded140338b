import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readCsv } from "../../packages/services/src/imports/csv.ts";
import { violations } from "./axe.ts";
import { closeBrowser, keepPicture, openPage, overflow, type Seen } from "./browser.ts";

/** A laboratory's file on the screen: asked once, remembered, its progress, its stop, and the list of what was refused. */

afterAll(closeBrowser);

describe.each([390, 1440])("at %i px", (width) => {
  let seen: Seen;
  let farmUrl: string;
  let bed: string;
  // Of this run alone: what an earlier one stored would be stored already.
  const run = `${width}-${Date.now().toString(36)}`;
  const lab = `Bench ${run}`;
  beforeAll(async () => {
    seen = await openPage({ width, role: "agent" });
    const { page } = seen;
    await page.goto("/farms");
    await page.getByRole("table").getByRole("rowheader").first().getByRole("link").click();
    await page.locator("#beds").waitFor();
    farmUrl = page.url().split(/[?#]/)[0] ?? "";
    bed = await page.locator("#beds").getByRole("rowheader").first().innerText();
  });
  afterAll(() => seen.context.close());

  const choose = async (csv: string) => {
    const { page } = seen;
    await page.goto(`${farmUrl}/import`);
    await page.getByLabel("File", { exact: true }).setInputFiles({
      name: "laboratory.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(csv),
    });
    await page.getByRole("combobox", { name: "Laboratory" }).fill(lab);
    await page.getByRole("button", { name: "Read the file" }).click();
  };
  const head = "Sampled,Bed,Depth (in),Sample,pH,P,K,Ca,Mg lb/A";

  test("what the file does not say is asked in groups, answered in one go, and not asked at the next file", async () => {
    const { page } = seen;
    await choose(`${head}\n2025-04-14,${bed},8,Q${run},6.4,30,120,1500,260\n`);
    await page.getByRole("heading", { name: "What the file does not say" }).waitFor();
    await keepPicture(page, `import-questions-${width}`);
    expect(await violations(seen.page)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    const group = (name: string) => page.getByRole("group", { name, exact: true });
    await group("Units").getByLabel("For all that are open here").selectOption("ppm");
    await group("Methods").getByLabel('By which extractant is "P"?').selectOption({ label: "Bray-1" });
    await group("Methods").getByLabel("For all that are open here").selectOption({ label: "Mehlich-3" });
    await page.getByRole("button", { name: "Read it with these answers" }).click();
    // 8 in deep: pounds an acre are asked next, and refused without an answer, with the cursor there.
    const basis = page.getByLabel(/What mass of soil does the laboratory reckon lb\/acre by/);
    await basis.waitFor();
    await page.getByRole("button", { name: "Read it with these answers" }).click();
    expect(await basis.getAttribute("aria-invalid")).toBe("true");
    expect(await basis.evaluate((e) => e === document.activeElement)).toBe(true);
    await basis.selectOption({ label: "the depth of the sample and a density of soil" });
    await page.getByRole("button", { name: "Read it with these answers" }).click();
    await page.getByLabel(/What density of soil/).fill("1300");
    await page.getByRole("button", { name: "Read it with these answers" }).click();
    await page.getByRole("button", { name: "Save the accepted rows" }).click();
    await page.getByText("Saved: 1 rows stored, 0 refused").waitFor();

    await choose(`${head}\n2025-05-14,${bed},8,R${run},6.4,30,120,1500,260\n`);
    await page.getByText(`9 of 9 columns are read as the last time for ${lab}.`).waitFor();
    await keepPicture(page, `import-remembered-${width}`);
    expect(await violations(seen.page)).toEqual([]);

    // Changed, it is asked again, and of that column alone.
    await page.getByText("Change how the columns are read").click();
    await page
      .getByRole("group", { name: "Ca", exact: true })
      .getByLabel("ask its unit and method again")
      .check();
    await page.getByRole("button", { name: "Read it like this" }).click();
    await page.getByLabel('In what unit is "Ca"?').waitFor();
    // Its unit, its form and its method.
    expect(await page.locator(".preview select[id^=q]").count()).toBe(3);

    await page.goto(`${farmUrl}/import#laboratories`);
    await page.getByRole("button", { name: `Forget the columns of ${lab.toLowerCase()}` }).click();
    await page.getByText("The laboratory’s columns are forgotten.").waitFor();
    await choose(`${head}\n2025-05-14,${bed},8,S${run},6.4,30,120,1500,260\n`);
    await page.getByRole("heading", { name: "What the file does not say" }).waitFor();
  });

  test("five thousand rows: how far it is, a stop that stores nothing, and every refusal to take along", async () => {
    const { page } = seen;
    const rows = Array.from({ length: 5000 }, (_, n) => {
      const day = `2024-05-${String(1 + (n % 28)).padStart(2, "0")}`;
      return `${day},${bed},15,${n % 20 === 3 ? "19" : "6.4"},W${run}-${n},${100 + (n % 90)}`;
    });
    // The page's own answer, held back in the middle: a fast machine would be through before anybody looks.
    await page.addInitScript(() => {
      const plain = window.fetch;
      window.fetch = async (...asked) => {
        const answer = await plain(...asked);
        const held = answer.headers.get("content-type")?.includes("ndjson") && !sessionStorage.held;
        if (!held || !answer.body) return answer;
        sessionStorage.held = "once";
        const reader = answer.body.getReader();
        const signal = asked[1]?.signal;
        const slow = new ReadableStream({
          async start(out) {
            for (let text = ""; !text.includes('"done":2500'); ) {
              const { value } = await reader.read();
              const lines = new TextDecoder().decode(value).split(/(?<=\n)/);
              const upTo = lines.findIndex((line) => line.includes('"done":2500'));
              text = (upTo < 0 ? lines : lines.slice(0, upTo + 1)).join("");
              out.enqueue(new TextEncoder().encode(text));
            }
            signal?.addEventListener("abort", () => out.error(signal.reason));
          },
        });
        return new Response(slow, { status: answer.status, headers: answer.headers });
      };
    });
    await choose(`sampled on,bed,depth cm,pH,sample,M3 K ppm\n${rows.join("\n")}\n`);
    const bar = page.getByRole("progressbar");
    await page.getByText("2,500 of 5,000 rows").waitFor();
    expect(await bar.getAttribute("max")).toBe("5000");
    expect(await bar.getAttribute("aria-valuetext")).toMatch(/ of 5,000 rows$/);
    await keepPicture(page, `import-progress-${width}`);
    expect(await violations(seen.page)).toEqual([]);

    // Stopped before its end: nothing of it is there, and the file can be read again.
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText("Stopped. Nothing was stored.").waitFor();
    expect(await page.getByRole("button", { name: "Save the accepted rows" }).count()).toBe(0);
    await page.getByRole("button", { name: "Read the file" }).click();
    await page.getByText("Download the refused rows, 250, as a CSV file").waitFor();

    const refused = page.getByRole("table", { name: "Rows refused" });
    expect(await refused.getByRole("row").count()).toBe(101);
    await page.getByRole("button", { name: "Show all 250" }).click();
    expect(await refused.getByRole("row").count()).toBe(251);
    expect(await overflow(page)).toBe(0);
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: /Download the refused rows/ }).click(),
    ]);
    const { rows: list } = readCsv(readFileSync(await file.path(), "utf8"));
    expect(list.map(({ cells }) => Number(cells[0]))).toEqual(
      Array.from({ length: 250 }, (_, i) => 20 * i + 5),
    );
    expect(new Set(list.map(({ cells }) => cells[2]))).toEqual(new Set(["19"]));

    await page.getByRole("button", { name: "Save the accepted rows" }).click();
    await page.getByText("Saved: 4750 rows stored, 250 refused").waitFor();
  });
});
