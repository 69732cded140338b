import { addDays } from "@pith/rules";
import fc from "fast-check";
import { expect, test } from "vitest";
import { MOST, wholeDays } from "../../packages/services/src/records/pages.ts";

type All = Parameters<typeof wholeDays>[0];
const dayOf = (row: { on?: string; at?: string }) => (row.on ?? row.at ?? "").slice(0, 10);

/** As the database gives a page: the newest of each kind before a day. */
function askedFor(
  all: { waterings: { on: string }[]; sprays: { at: string }[] },
  before: string | undefined,
) {
  const newest = <T extends { on?: string; at?: string }>(rows: T[]) =>
    rows
      .filter((row) => before === undefined || dayOf(row) < before)
      .sort((a, b) => (dayOf(a) < dayOf(b) ? 1 : -1))
      .slice(0, MOST);
  return wholeDays({ waterings: newest(all.waterings), sprays: newest(all.sprays) } as unknown as All);
}

test("page by page, everything comes once and nothing is left out", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 1500 }), (many, few) => {
      const day = (i: number, each: number) => addDays("2026-11-28", -Math.floor(i / each));
      const all = {
        waterings: Array.from({ length: many }, (_, i) => ({ id: `w${i}`, on: day(i, 3) })),
        sprays: Array.from({ length: few }, (_, i) => ({ id: `s${i}`, at: `${day(i, 7)}T10:00:00Z` })),
      };
      const met: string[] = [];
      let before: string | undefined;
      for (let pages = 0; pages < 20; pages++) {
        const page = askedFor(all, before);
        met.push(...[...page.waterings, ...page.sprays].map(({ id }) => id));
        if (page.older === null) break;
        before = page.older;
      }
      expect(new Set(met).size).toBe(met.length);
      expect(met.length).toBe(many + few);
    }),
    { numRuns: 30, seed: 7 },
  );
});

test("more on one day than a page holds: that day as far as it goes, and who reads on comes to what is older", () => {
  const many = Array.from({ length: MOST + 5 }, (_, i) => ({ id: `w${i}`, on: "2026-07-02" }));
  const all = {
    waterings: [...many, { id: "old", on: "2026-07-01" }],
    sprays: [{ id: "s", at: "2026-07-01T10:00:00Z" }],
  };
  const first = askedFor(all, undefined);
  expect([first.waterings.length, first.sprays.length, first.older]).toEqual([MOST, 0, "2026-07-02"]);
  const second = askedFor(all, "2026-07-02");
  expect([second.waterings.map((w) => w.id), second.sprays.length, second.older]).toEqual([["old"], 1, null]);
});

test("fewer than a page of each is all there is", () => {
  const rows = [{ id: "w", on: "2026-07-01" }];
  const page = wholeDays({ waterings: rows } as unknown as All);
  expect(page.older).toBeNull();
  expect(page.waterings).toEqual(rows);
});
