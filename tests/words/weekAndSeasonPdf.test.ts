import { type Advisory, SEASON_TABLES, type SeasonRecord } from "@pith/contract";
import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { seasonPdf } from "../../apps/dashboard/features/pdf/seasonPdf.ts";
import { type FarmWeek, weekPdf } from "../../apps/dashboard/features/pdf/weekPdf.ts";
import { paperWords } from "../../apps/dashboard/features/pdf/words.ts";
import { textIn, timesIn } from "./pdfText.ts";

/** A farm's week and its season's record as files: all of it there to select, in both languages. */

const HASH = "9c".repeat(32);
const signed = { seq: 40, hash: HASH, at: "2026-06-01T06:00:00Z" };
const caution = { id: "acid", version: 1, severity: "danger", text: "Never put acid and bleach together." };

const advisory = (nth: number, steps: string[]): Advisory => ({
  id: `a${nth}`,
  farmId: "f",
  farmName: "Ladera",
  plantingIds: [],
  subjectId: `b${nth}`,
  subjectName: `Bed ${nth}`,
  ruleId: "feeding",
  ruleVersion: 1,
  issuedAt: "2026-06-01T12:00:00Z",
  issuedBy: "Ana",
  confirmedBy: null,
  standingOrder: null,
  status: "issued",
  expiresAt: null,
  supersededBy: null,
  said: {
    language: "en",
    units: "metric",
    decision: `Decision ${nth}.`,
    steps,
    window: `Window ${nth}.`,
    reason: null,
    cautions: [caution],
    limits: [],
    wouldChange: [],
    cases: [],
    missing: [],
    problems: [],
  },
  note: null,
  windowFrom: "2026-06-02",
  windowTo: nth === 1 ? null : "2026-06-05",
  expected: null,
  answer: null,
  withdrawnReason: null,
  ledgerSeq: 20 + nth,
  ledgerHash: `${20 + nth}`.repeat(32),
});

const week = (advisories: Advisory[]): FarmWeek => ({
  farm: "Ladera",
  units: "metric",
  zone: "UTC",
  from: "2026-06-02",
  to: "2026-06-08",
  advisories,
  closed: ["Bed 3: closed to work."],
});
const beside = { officeName: "Office", signed, now: "2026-06-02T08:00:00Z", zone: "UTC" };

describe.each([
  [
    "en",
    { danger: "DANGER", days: "From 2 Jun 2026 to 8 Jun 2026", entry: "Ledger entry", table: "Waterings" },
  ],
  [
    "es",
    { danger: "PELIGRO", days: "Del 2 jun 2026 al 8 jun 2026", entry: "Asiento del libro", table: "Riegos" },
  ],
] as const)("in %s", (language, says) => {
  test("a week has each advice's cautions before its decision, and its hash", async () => {
    const long = "Turn the valve until the mark stands at the line and wait there. ".repeat(12);
    const all = Array.from({ length: 8 }, (_, i) => advisory(i + 1, [`First of ${i + 1}.`, long]));
    const bytes = await weekPdf([week(all)], beside, paperWords(language));
    const text = textIn(bytes);
    const pages = (await PDFDocument.load(bytes)).getPageCount();
    expect(text).toContain("Ladera");
    expect(text.replaceAll(/\bde (?=2026)|\bde (?=jun)/g, "")).toContain(says.days);
    expect(text).toContain("Bed 3: closed to work.");
    expect(timesIn(text, says.danger)).toBe(8);
    expect(pages).toBeGreaterThan(2);
    expect(timesIn(text, HASH)).toBe(pages);
    for (const { said, ledgerSeq } of all) {
      // Once in the list of all, then below its own caution.
      const at = text.lastIndexOf(said.decision);
      expect(text.slice(0, at).trimEnd().endsWith(caution.text)).toBe(true);
      expect(text.slice(at)).toContain(said.window as string);
      expect(text).toContain(`${says.entry} ${ledgerSeq} · ${`${ledgerSeq}`.repeat(32)}`);
    }
  });

  test("a season's table of 300 rows has its head on every page of it, and the cautions and the hash are there", async () => {
    const bytes = await seasonPdf(record(300), beside, paperWords(language));
    const text = textIn(bytes);
    const pages = (await PDFDocument.load(bytes)).getPageCount();
    expect(pages).toBeGreaterThan(5);
    for (let i = 0; i < 300; i++) expect(timesIn(text, `valve ${i};`)).toBe(1);
    expect(timesIn(text, says.table)).toBeGreaterThan(5);
    expect(text).toContain(says.danger);
    expect(text).toContain(caution.text);
    expect(timesIn(text, HASH)).toBe(pages);
    expect(text).toContain("How it was come by.");
  });
});

test.each(["en", "es"] as const)(
  "a spraying is told by the clock of its bed's site, in %s",
  async (language) => {
    const sprayed = { ...record(0), tables: { ...record(0).tables, sprays: [spray] } };
    const text = textIn(await seasonPdf(sprayed, beside, paperWords(language)));
    // Half past midnight in Greenwich on the 7th is half past seven in the evening of the 6th in Chicago.
    expect(text).toMatch(/6 jul 2026, 19:30/i);
    expect(text).not.toMatch(/7 jul 2026/i);
  },
);

test("who reads in US customary units has it on Letter, a season's record across", async () => {
  const words = paperWords("en");
  const sizeOf = async (bytes: Uint8Array) => (await PDFDocument.load(bytes)).getPage(0).getSize();
  const letter = await weekPdf([{ ...week([]), units: "us" }], beside, words);
  expect(await sizeOf(letter)).toEqual({ width: 612, height: 792 });
  expect(await sizeOf(await seasonPdf({ ...record(1), units: "us" }, beside, words))).toEqual({
    width: 792,
    height: 612,
  });
});

test("where nothing stands open the week says so", async () => {
  const text = textIn(await weekPdf([week([])], beside, paperWords("en")));
  expect(text).toContain("Nothing that was issued stands open.");
});

test("each farm's week begins on a page of its own, under its own name", async () => {
  const other = { ...week([advisory(2, [])]), farm: "Vega" };
  const bytes = await weekPdf([week([advisory(1, [])]), other], beside, paperWords("en"));
  expect((await PDFDocument.load(bytes)).getPageCount()).toBe(2);
  const text = textIn(bytes);
  expect(text).toContain("Ladera: 2 Jun 2026");
  expect(text).toContain("Vega: 2 Jun 2026");
});

const spray: SeasonRecord["tables"]["sprays"][number] = {
  on: "2026-07-06",
  at: "2026-07-07T00:30:00.000Z",
  timeZone: "America/Chicago",
  bed: "A",
  product: "as the label says",
  registration: null,
  target: "mites",
  reEntryHours: 4,
  enterFrom: "2026-07-07T04:30:00.000Z",
  preHarvestDays: 3,
  pickFrom: "2026-07-09",
  labourMinutes: null,
  writtenBy: null,
  bedId: "b",
  id: "s",
};

/** A season of one bed that was watered so many times. */
function record(waterings: number): SeasonRecord {
  const none = Object.fromEntries(
    SEASON_TABLES.map((table) => [table, []]),
  ) as unknown as SeasonRecord["tables"];
  return {
    farm: "Ladera",
    units: "metric",
    season: 2026,
    seasonName: "2026",
    from: "2026-01-01",
    to: "2026-12-31",
    labourMoneyPerHour: null,
    cautions: [caution],
    notes: ["How it was come by."],
    tables: {
      ...none,
      beds: [{ bed: "A", site: "Hill", certification: "none", certifier: null, croppedM2: 20, bedId: "b" }],
      waterings: Array.from({ length: waterings }, (_, i) => ({
        on: "2026-06-02",
        bed: "A",
        valve: `valve ${i};`,
        valveMinutes: 40,
        valveLitres: 100,
        from: "meter" as const,
        bedLitres: 50,
        bedMm: null,
        nKg: null,
        labourMinutes: null,
        writtenBy:
          "A name that is rather long and has to be broken between its words somewhere along the way of it",
        bedId: "b",
        id: `w${i}`,
      })),
    },
  };
}
