import type { SeasonRecord } from "@pith/contract";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, test } from "vitest";
import { seasonCsv } from "../../packages/services/src/seasonRecord/csv.ts";
import { totalRows } from "../../packages/services/src/seasonRecord/totals.ts";
import { soak } from "../support/soak.ts";

/** For any records: sums are the sums of their rows, nothing is made or lost, and a file is read back as it was. */

const RUNS = { numRuns: soak(100, 2000) };
const BEDS = ["a", "b", "c"];
const kg = fc.integer({ min: 0, max: 100_000 }).map((g) => g / 1000);
const unknown = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const where = { bedId: fc.constantFrom(...BEDS), bed: fc.constant("bed") };
const rows = fc.record({
  applications: fc.array(
    fc.record({
      ...where,
      nKg: kg,
      p2o5Kg: kg,
      k2oKg: kg,
      labourMinutes: unknown(kg),
      costMoney: unknown(kg),
    }),
  ),
  waterings: fc.array(
    fc.record({ ...where, bedLitres: unknown(kg), nKg: unknown(kg), labourMinutes: unknown(kg) }),
  ),
  sprays: fc.array(fc.record({ ...where, labourMinutes: unknown(kg) })),
  harvests: fc.array(
    fc.record({
      ...where,
      pickedKg: kg,
      marketableKg: unknown(kg),
      culls: fc.array(fc.record({ cause: fc.constant("other"), kg }), { maxLength: 3 }),
      labourHours: unknown(kg),
      worthMoney: unknown(kg),
    }),
  ),
  works: fc.array(fc.record({ ...where, labourMinutes: kg })),
});
const beds = BEDS.map((id, i) => ({ bedId: id, bed: id, croppedM2: 10 * (i + 1) }));
const totalsOf = (made: object) =>
  totalRows({ beds, ...made } as unknown as Parameters<typeof totalRows>[0], "farm", 10);

const SUMMED = [
  "croppedM2",
  "pickedKg",
  "marketableKg",
  "cullKg",
  "unsortedKg",
  "nKg",
  "p2o5Kg",
  "k2oKg",
  "waterNKg",
  "removedNLowKg",
  "removedK2oHighKg",
  "waterLitres",
  "applyingHours",
  "wateringHours",
  "sprayingHours",
  "pickingHours",
  "otherWorkHours",
  "labourHours",
  "labourUnknown",
  "materialsMoney",
  "materialsUnpriced",
  "labourMoney",
  "worthMoney",
] as const;

test("the farm's sums are the sums of its beds', and unknown only where every bed's is", () => {
  fc.assert(
    fc.property(rows, (made) => {
      const totals = totalsOf(made);
      const [farm, ofBeds] = [totals.at(-1), totals.slice(0, -1)];
      for (const column of SUMMED) {
        const known = ofBeds.map((bed) => bed[column]).filter((value) => value !== null);
        const sum = known.length === 0 ? null : known.reduce((a, b) => a + b, 0);
        if (sum === null) expect([column, farm?.[column]]).toEqual([column, null]);
        else expect([column, farm?.[column]]).toEqual([column, expect.closeTo(sum, 6)]);
      }
    }),
    RUNS,
  );
});

test("what was picked is marketable, culls and the rest; what came in is what left and what stayed", () => {
  fc.assert(
    fc.property(rows, (made) => {
      for (const t of totalsOf(made)) {
        if (t.pickedKg !== null) {
          const parts = (t.marketableKg ?? 0) + (t.cullKg ?? 0) + (t.unsortedKg ?? 0);
          expect(parts).toBeCloseTo(t.pickedKg, 6);
        }
        if (t.balanceNLowKg !== null && t.balanceNHighKg !== null) {
          const given = (t.nKg ?? 0) + (t.waterNKg ?? 0);
          expect(t.balanceNLowKg + (t.removedNHighKg ?? Number.NaN)).toBeCloseTo(given, 6);
          expect(t.balanceNLowKg).toBeLessThanOrEqual(t.balanceNHighKg);
        }
      }
    }),
    RUNS,
  );
});

test("any text and any number written to the file are read back, a formula's text behind its apostrophe", () => {
  const work = fc.record({
    on: fc.constant("2026-06-01"),
    bed: fc.string(),
    task: fc.string({ unit: "binary" }),
    labourMinutes: fc.double({ noNaN: true, noDefaultInfinity: true }),
    writtenBy: fc.option(fc.string({ minLength: 1 }), { nil: null }),
    bedId: fc.constant("x"),
    id: fc.constant("y"),
  });
  fc.assert(
    fc.property(fc.array(work, { minLength: 1, maxLength: 5 }), (works) => {
      const record = { units: "metric", tables: { works } } as unknown as SeasonRecord;
      const back = parse<Record<string, string>>(seasonCsv(record, "works"), {
        columns: true,
        bom: true,
        record_delimiter: "\r\n",
      });
      const bare = (text: string | undefined) =>
        /^'+[=+\-@\t\r＝＋－＠]/.test(text ?? "") ? text?.slice(1) : text;
      expect(
        back.map((row) => [
          bare(row.bed),
          bare(row.task),
          Number(row["labourMinutes [min]"]),
          bare(row.writtenBy),
        ]),
      ).toEqual(works.map((w) => [w.bed, w.task, w.labourMinutes + 0, w.writtenBy ?? ""]));
      for (const row of back)
        expect([row.bed, row.task].some((t) => /^[=+\-@\t\r＝＋－＠]/.test(t ?? ""))).toBe(false);
    }),
    RUNS,
  );
});
