import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { claims, quantities, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import type { Printed } from "./climate-water-row.ts";
import { publishedRows } from "./soil-nutrition.data.ts";
import { ashAndLimeRows } from "./soil-nutrition-ash-lime.data.ts";
import { printedClasses } from "./soil-nutrition-classes.data.ts";
import { feedRows } from "./soil-nutrition-feed.data.ts";
import {
  DERIVED_IDS,
  HELD_BY_CLAIMS,
  NOT_COMPUTED,
  QUOTED_IDS,
  SEEN_IDS,
  USED_NOWHERE,
} from "./soil-nutrition-held.data.ts";
import type { HeldValue } from "./soil-nutrition-row.ts";
import { soilRows } from "./soil-nutrition-soil.data.ts";

/**
 * Every row of the soil and nutrition reference by its id: checked by a quantity, a guide, a table or a function; or held
 * by the evidence register; or listed as used nowhere, with the reason. What is asserted is the published number.
 */
const groups: Record<string, HeldValue[]> = {
  "soil tests: units, guides, what they recommend": soilRows,
  "wood ash and lime": ashAndLimeRows,
  "uptake, materials, feed and manure": feedRows,
};

const statusOf = (id: string) =>
  SEEN_IDS.includes(id)
    ? "SEEN"
    : QUOTED_IDS.includes(id)
      ? "SEEN-2"
      : DERIVED_IDS.includes(id)
        ? "DERIVED"
        : "from memory, its arithmetic";

function valuesOf(id: string, inputs: Record<string, unknown>): Record<string, unknown> {
  const quantity = quantities[id];
  if (!quantity) throw new Error(`no quantity ${id}`);
  return quantity.compute(inputs).value as Record<string, unknown>;
}

describe("published worked values", () => {
  for (const row of publishedRows) {
    const { id, source, quantity, inputs, output, expected, tolerance } = row;
    const given = JSON.stringify(inputs);
    test(`${id} (${statusOf(id)}; ${source}): ${quantity} ${given} ${output} ${expected} ± ${tolerance}`, () => {
      const computed = Number(valuesOf(quantity, inputs)[output]) / (row.unit ?? 1);
      // 1e-9: what adding and scaling in floating point may leave.
      expect(Math.abs(computed - Number(expected))).toBeLessThanOrEqual(tolerance + 1e-9);
    });
  }
});

describe("printed classes: both ends of each, in the sheet's unit, exact", () => {
  for (const cell of printedClasses) {
    const { id, guide, extractant, nutrient, from, to, perMgPerKg, also } = cell;
    test(`${id} (${statusOf(id)}; ${guide}): ${nutrient} ${from} to ${to ?? "up"} is ${cell.class} ± 0`, () => {
      for (const printed of to === null ? [from, from * 3] : [from, to]) {
        const value = valuesOf("soil-test-class", {
          guide,
          extractant,
          nutrient,
          mgPerKg: printed / perMgPerKg,
          ...also,
        });
        expect(value.class).toBe(cell.class);
        expect(value.lowMgPerKg).toBeCloseTo(from / perMgPerKg, 9);
        if (to === null) expect(value.highMgPerKg).toBeNull();
        else expect(value.highMgPerKg).toBeCloseTo(to / perMgPerKg, 9);
      }
    });
  }
});

function within(row: HeldValue, name: string, got: unknown, [value, tolerance]: Printed): void {
  const what = `${row.id}: ${name} is ${got}, published ${value}`;
  if (typeof value === "number") {
    expect(typeof got, what).toBe("number");
    expect(Math.abs(Number(got) - value), what).toBeLessThanOrEqual(tolerance + 1e-9);
  } else expect(got, what).toBe(value);
}

function titleOf({ id, source, what, expect: numbers }: HeldValue): string {
  const tolerances = [...new Set(Object.values(numbers).map(([, tolerance]) => tolerance))];
  const values = Object.values(numbers).map(([value]) => value);
  return `${id} (${statusOf(id)}; ${source}): ${what}: ${values.join(", ")} ± ${tolerances.join(", ")}`;
}

for (const [name, group] of Object.entries(groups)) {
  describe(name, () => {
    for (const row of group) {
      test(titleOf(row), () => {
        const answer = row.answer();
        expect(Object.keys(answer).sort(), row.id).toEqual(Object.keys(row.expect).sort());
        for (const [output, printed] of Object.entries(row.expect))
          within(row, output, answer[output], printed);
      });
    }
  });
}

describe("rows that are knowledge and no number: the register holds them", () => {
  test.each(HELD_BY_CLAIMS)("$id: $claim by $source says $says", ({ id, claim, source, says }) => {
    const found = claims.get(claim);
    const cited = found?.sources.find((s) => s.key === source);
    expect(cited?.key).toBe(source);
    expect(SEEN_IDS.includes(id) ? ["seen"] : ["seen", "secondary"]).toContain(sources.get(source)?.status);
    const text = [found?.finding, found?.effect, found?.size, found?.limits, cited?.locator].join(" | ");
    for (const words of says) expect(text).toContain(words);
  });
});

describe("no row is left out", () => {
  const checked = new Set(
    [...publishedRows, ...printedClasses, ...Object.values(groups).flat()].map((row) => row.id),
  );
  const held = new Set(HELD_BY_CLAIMS.map((row) => row.id));
  const unused = new Set([...Object.keys(USED_NOWHERE), ...Object.keys(NOT_COMPUTED)]);
  const known = [...SEEN_IDS, ...QUOTED_IDS, ...DERIVED_IDS];
  const missing = (ids: readonly string[]) =>
    ids.filter((id) => !checked.has(id) && !held.has(id) && !unused.has(id));

  test("each SEEN id is checked, held by the register, or listed as used nowhere with a reason", () => {
    expect(missing(SEEN_IDS)).toEqual([]);
  });
  test("and so is each that was read in a copy, and each derived one", () => {
    expect(missing(QUOTED_IDS)).toEqual([]);
    expect(missing(DERIVED_IDS)).toEqual([]);
  });
  test("nothing is listed as unused that is checked or held, and no id is made up", () => {
    expect([...unused].filter((id) => checked.has(id) || held.has(id))).toEqual([]);
    expect([...held, ...unused].filter((id) => !known.includes(id))).toEqual([]);
    expect(new Set(known).size).toBe(known.length);
    for (const reason of Object.values({ ...USED_NOWHERE, ...NOT_COMPUTED })) {
      expect(reason.length).toBeGreaterThan(15);
    }
  });

  const reference = join(import.meta.dirname, "../../../shared/reference/soil-nutrition.md");
  if (existsSync(reference)) {
    test("the lists hold every row of the reference that is not from memory", () => {
      const lines = readFileSync(reference, "utf8").split("\n");
      const rows = lines.flatMap((line): [string, string][] => {
        const id = /^\| (SN-\d+) \|/.exec(line)?.[1];
        const last = line.trim().replace(/\|$/, "").split("|").at(-1)?.trim() ?? "";
        if (id !== undefined) return [[id, last]];
        // The do-not-use list of wood ash has no table; its heading says SEEN.
        return line.startsWith("SN-")
          ? [...line.matchAll(/SN-\d+/g)].map(([listed]) => [listed, "SEEN"])
          : [];
      });
      const withStatus = (is: (status: string) => boolean) =>
        rows
          .filter(([, status]) => is(status))
          .map(([id]) => id)
          .sort();
      const numbered = (ids: readonly string[]) => ids.filter((id) => id.startsWith("SN-")).toSorted();
      expect(withStatus((s) => /^SEEN(?!-)/.test(s))).toEqual(numbered(SEEN_IDS));
      expect(withStatus((s) => s.startsWith("SEEN-2"))).toEqual(numbered(QUOTED_IDS));
      expect(withStatus((s) => s.startsWith("DERIVED"))).toEqual(numbered(DERIVED_IDS));
    });
  } else {
    test("not run: no reference beside the project", () => {
      expect(SEEN_IDS.length).toBeGreaterThan(0);
      console.info("not run: no reference beside the project");
    });
  }
});
