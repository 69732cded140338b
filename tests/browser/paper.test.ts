import { afterAll, beforeAll, expect, test } from "vitest";
import { textIn } from "../words/pdfText.ts";
import { closeBrowser, openPage, type Seen } from "./browser.ts";

/** What is to be had on paper, through the pages that lead to it: a farm's week, a season's record, and the day from the browser. */

let agent: Seen;
let farmer: Seen;
let farmId: string;

beforeAll(async () => {
  agent = await openPage({ role: "agent" });
  farmer = await openPage({ role: "farmer" });
  await farmer.page.goto("/record");
  const season = await farmer.page.locator('main a[href^="/season-record/"]').first().getAttribute("href");
  farmId = season?.split("/")[2] ?? "";
});
afterAll(async () => {
  await agent.context.close();
  await farmer.context.close();
  await closeBrowser();
});

/** The file that a link of the page leads to, as text. */
async function fileAt({ context, page }: Seen, link: string): Promise<string> {
  const href = await page.getByRole("link", { name: link, exact: true }).getAttribute("href");
  // A request beside the page asks in no language by itself.
  const language = await page.evaluate(() => navigator.language);
  const answer = await context.request.get(href ?? "", { headers: { "accept-language": language } });
  expect(answer.status()).toBe(200);
  expect(answer.headers()["content-type"]).toBe("application/pdf");
  return textIn(await answer.body());
}

test("a farmer's week says each open advice with its cautions and its entry in the ledger", async () => {
  const { page } = farmer;
  await page.goto("/today");
  const decisions = await page.locator(".draft h2").allInnerTexts();
  expect(decisions.length).toBeGreaterThan(0);
  const cautions = await page.locator(".draft [data-caution]").count();
  const text = await fileAt(farmer, "The week as a PDF");
  for (const decision of decisions) expect(flat(text)).toContain(flat(decision));
  expect(text.match(/Ledger entry \d+ · [0-9a-f]{64}/g)?.length).toBeGreaterThanOrEqual(decisions.length);
  expect(text.match(/^(DANGER|WARNING|TAKE CARE)$/gm)?.length ?? 0).toBeGreaterThanOrEqual(cautions);
});

test("the agent has a farm's week from its page, with the hash of each entry", async () => {
  await agent.page.goto(`/farms/${farmId}`);
  const text = await fileAt(agent, "The week as a PDF");
  expect(text).toMatch(/Ledger entry \d+ · [0-9a-f]{64}/);
  expect(text).toMatch(/^From \d+ \w+ \d{4} to /m);
});

test("a season's record is a file beside its print button, and is not given to whom the farm is not", async () => {
  await agent.page.goto(`/season-record/${farmId}`);
  await agent.page.getByRole("button", { name: "Print" }).waitFor();
  const text = await fileAt(agent, "As a PDF");
  expect(text).toContain("Season record");
  expect(text).toContain("How the numbers were come by");
  const nobody = await openPage();
  const answer = await nobody.context.request.get(`/season-record/${farmId}/2026/record.pdf`);
  expect(answer.headers()["content-type"]).not.toBe("application/pdf");
  await nobody.context.close();
});

test("in Spanish the week's days, cautions and ledger are Spanish", async () => {
  const seen = await openPage({ role: "farmer", locale: "es-MX" });
  await seen.page.goto("/today");
  const text = await fileAt(seen, "La semana como PDF");
  expect(text).toMatch(/^Del \d+ /m);
  expect(text).toMatch(/Asiento del libro \d+/);
  await seen.context.close();
});

test.each(["A4", "Letter"])(
  "the day printed on %s has cautions in full and nothing to press",
  async (format) => {
    const { page } = farmer;
    await page.goto("/today");
    await page.emulateMedia({ media: "print" });
    const cautions = page.locator(".draft [data-caution]");
    await cautions.first().waitFor();
    for (let i = 0; i < (await cautions.count()); i++) expect(await cautions.nth(i).isVisible()).toBe(true);
    expect(await page.getByRole("link", { name: "The week as a PDF" }).isVisible()).toBe(false);
    expect((await page.pdf({ format })).length).toBeGreaterThan(1000);
    await page.emulateMedia({ media: "screen" });
  },
);

/** Lines and pages broken elsewhere are the same text; the fonts' own signs stand for those they lack. */
const flat = (text: string) =>
  text
    .replaceAll(/^\d+ \/ \d+\n.* · .*$/gm, "")
    .replaceAll(/\s+/g, " ")
    .replaceAll(/[₂₃₅]/g, (sign) => sign.normalize("NFKD"));
