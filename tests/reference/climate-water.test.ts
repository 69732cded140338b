import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { claims, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { PUNGENCY_STUDIES } from "../../packages/rules/src/tables/pungencyStudies.ts";
import { cropRows } from "./climate-water-crop.data.ts";
import { degreeDayRows } from "./climate-water-degree-days.data.ts";
import { evapotranspirationRows } from "./climate-water-et0.data.ts";
import { COMPUTED_IDS, HELD_BY_CLAIMS, SEEN_IDS, USED_NOWHERE } from "./climate-water-held.data.ts";
import { nightRows } from "./climate-water-nights.data.ts";
import type { Printed, ReferenceRow } from "./climate-water-row.ts";
import { seasonRows } from "./climate-water-season.data.ts";
import { tableRows } from "./climate-water-tables.data.ts";
import { yieldAndWateringRows } from "./climate-water-yield.data.ts";

/**
 * Every row of the climate and water reference: published values with their tolerance, one test a row. What is asserted is
 * the published number; a row that is knowledge and no number is held by the evidence register.
 */
const groups: Record<string, ReferenceRow[]> = {
  "evapotranspiration and its parts": evapotranspirationRows,
  "crop coefficient and root zone": cropRows,
  "day upon day": seasonRows,
  "tables as printed": tableRows,
  "yield, salt and watering": yieldAndWateringRows,
  "degree days": degreeDayRows,
  "germination, frost, heat and pungency": nightRows,
};
const rows = Object.values(groups).flat();

function within(row: ReferenceRow, name: string, got: unknown, [value, tolerance]: Printed): void {
  const what = `${row.id}: ${name} is ${got}, published ${value}`;
  // 1e-9: what adding and scaling in floating point may leave.
  if (typeof value === "number") {
    expect(Math.abs(Number(got) - value), what).toBeLessThanOrEqual(tolerance + 1e-9);
  } else expect(got, what).toBe(value);
}

function titleOf({ id, status, source, what, expect: numbers }: ReferenceRow): string {
  const tolerances = [...new Set(Object.values(numbers).map(([, tolerance]) => tolerance))];
  const [first, ...more] = Object.entries(numbers).map(([name, [value]]) => `${name} ${value}`);
  const values = more.length > 5 ? `${1 + more.length} values` : [first, ...more].join(", ");
  return `${id} (${status}; ${source}): ${what}: ${values} ± ${tolerances.join(", ")}`;
}

for (const [name, group] of Object.entries(groups)) {
  describe(name, () => {
    for (const row of group) {
      test(titleOf(row), () => {
        const answer = row.answer();
        for (const [output, printed] of Object.entries(row.expect)) {
          expect(answer, row.id).toHaveProperty([output]);
          within(row, output, answer[output], printed);
        }
      });
    }
  });
}

describe("rows that are knowledge and no number: the register holds them", () => {
  test.each(HELD_BY_CLAIMS)("$id (SEEN): $claim by $source says $says", ({ claim, source, says }) => {
    const found = claims.get(claim);
    const cited = found?.sources.find((s) => s.key === source);
    expect(cited?.key).toBe(source);
    expect(["seen", "secondary"]).toContain(sources.get(source)?.status);
    const text = [found?.finding, found?.effect, found?.size, found?.limits, cited?.locator].join(" | ");
    for (const words of says) expect(text).toContain(words);
  });

  // Direction by study as the abstracts have it; the two sources at the end are one seen and one from memory.
  test.each([
    ["phimchan-2012", "open 9"],
    ["jeeatid-2018", "up 1, down 1, down 2"],
    ["ruiz-lau-2011", "up 1"],
    ["kopta-2020", "up 1, open 3"],
    ["thaksin-247571", "same 1, same 1"],
    ["ljubljana-110017", "up 1, down 1"],
    ["mahmood-2021", "open 2"],
  ])("9.2 studies (SEEN): %s, direction and cultivars %s", (key, directions) => {
    const study = PUNGENCY_STUDIES.filter((row) => row.source.key === key);
    expect(study.map((row) => `${row.direction} ${row.cultivars}`).join(", ")).toBe(directions);
    expect(study.some((row) => row.fromMemory)).toBe(false);
    expect(sources.get(key)?.status).toBe("seen");
  });
});

describe("no row is left out", () => {
  const checked = (status: ReferenceRow["status"]) =>
    new Set(rows.filter((row) => row.status === status).map((row) => row.id));
  const heldIds = new Set([...HELD_BY_CLAIMS.map((row) => row.id), "9.2 studies"]);
  const unused = new Set(Object.keys(USED_NOWHERE));

  test("each SEEN id is checked, held by the register, or listed as used nowhere with a reason", () => {
    const seen = checked("SEEN");
    expect(SEEN_IDS.filter((id) => !seen.has(id) && !heldIds.has(id) && !unused.has(id))).toEqual([]);
    expect([...unused].filter((id) => seen.has(id) || heldIds.has(id))).toEqual([]);
    expect([...seen, ...heldIds, ...unused].filter((id) => !SEEN_IDS.includes(id))).toEqual([]);
    expect(new Set(SEEN_IDS).size).toBe(SEEN_IDS.length);
  });
  test("each COMPUTED id is checked", () => {
    const computed = checked("COMPUTED");
    expect(COMPUTED_IDS.filter((id) => !computed.has(id))).toEqual([]);
  });

  const reference = join(import.meta.dirname, "../../../shared/reference/climate-water.md");
  if (existsSync(reference)) {
    test("the lists hold every numbered row of the reference that is not from memory", () => {
      const table = readFileSync(reference, "utf8").split("\n");
      const idsWith = (status: RegExp) =>
        table.flatMap((line) => {
          const id = /^\| ([A-Z]{2}-[0-9A-Z]+[a-z]?)\b/.exec(line)?.[1];
          return id !== undefined && status.test(line) ? [id] : [];
        });
      const numbered = (ids: readonly string[]) => ids.filter((id) => /^[A-Z]{2}-/.test(id)).sort();
      expect(numbered(SEEN_IDS)).toEqual(idsWith(/\| SEEN/).sort());
      expect(numbered(COMPUTED_IDS)).toEqual(idsWith(/\| COMPUTED/).sort());
    });
  } else {
    test("not run: no reference beside the project", () => {
      expect(SEEN_IDS.length).toBeGreaterThan(0);
      console.info("not run: no reference beside the project");
    });
  }
});
