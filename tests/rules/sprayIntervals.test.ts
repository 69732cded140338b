import { type Spray, sprayIntervals } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

/** 40 CFR 170.112(a): no entry before the label's interval has expired; of several, the longest. Sums by hand in the titles. */

const CHICAGO = "America/Chicago";
const spray = (at: string, reEntryHours: number, preHarvestDays: number): Spray => ({
  at,
  target: "insects",
  reEntryHours,
  preHarvestDays,
});

describe("one spraying", () => {
  const sprayed = [spray("2026-07-10T18:00:00-05:00", 12, 3)];
  test("18:00 CDT is 23:00 UTC; + 12 h = 11:00 UTC on the 11th; 10 July + 3 days = 13 July", () => {
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-10T19:00:00-05:00")).toEqual({
      reEntryUntil: "2026-07-11T11:00:00Z",
      harvestFrom: "2026-07-13",
    });
  });
  test("entry opens at the very instant, the harvest with the local day", () => {
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-11T10:59:59Z").reEntryUntil).toBe(
      "2026-07-11T11:00:00Z",
    );
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-11T11:00:00Z").reEntryUntil).toBeNull();
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-12T23:59:00-05:00").harvestFrom).toBe("2026-07-13");
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-13T00:00:00-05:00").harvestFrom).toBeNull();
  });
  test("0 hours and 0 days forbid nothing; neither does a spraying still to come, nor none", () => {
    const none = { reEntryUntil: null, harvestFrom: null };
    expect(sprayIntervals([spray("2026-07-10T12:00:00Z", 0, 0)], CHICAGO, "2026-07-10T12:00:00Z")).toEqual(
      none,
    );
    expect(sprayIntervals(sprayed, CHICAGO, "2026-07-10T22:59:59Z")).toEqual(none);
    expect(sprayIntervals([], CHICAGO, "2026-07-10T22:59:59Z")).toEqual(none);
  });
  test("half an hour past midnight UTC is still the evening before in Chicago: 10 July + 1 = 11 July", () => {
    const late = [spray("2026-07-11T00:30:00Z", 4, 1)];
    expect(sprayIntervals(late, CHICAGO, "2026-07-11T01:00:00Z").harvestFrom).toBe("2026-07-11");
    expect(sprayIntervals(late, "UTC", "2026-07-11T01:00:00Z").harvestFrom).toBe("2026-07-12");
  });
});

describe("where the clock is changed", () => {
  test("24 h from noon on 7 March 2026 (18:00 UTC) end at 13:00 CDT on the 8th (18:00 UTC): an hour was skipped", () => {
    const { reEntryUntil } = sprayIntervals(
      [spray("2026-03-07T12:00:00-06:00", 24, 0)],
      CHICAGO,
      "2026-03-08T12:30:00-05:00",
    );
    expect(reEntryUntil).toBe("2026-03-08T18:00:00Z");
  });
  test("1 day from 31 October 23:30 is 1 November, though that day has 25 hours; its 24 h end at 22:30 CST", () => {
    const sprayed = [spray("2026-10-31T23:30:00-05:00", 24, 1)];
    expect(sprayIntervals(sprayed, CHICAGO, "2026-10-31T23:45:00-05:00")).toEqual({
      reEntryUntil: "2026-11-02T04:30:00Z",
      harvestFrom: "2026-11-01",
    });
  });
});

test("of several the strictest, each interval on its own: 48 h of the first, 14 days of the second", () => {
  const sprays = [spray("2026-07-10T12:00:00Z", 48, 1), spray("2026-07-11T12:00:00Z", 4, 14)];
  expect(sprayIntervals(sprays, CHICAGO, "2026-07-11T13:00:00Z")).toEqual({
    reEntryUntil: "2026-07-12T12:00:00Z",
    harvestFrom: "2026-07-25",
  });
});

describe("whatever was sprayed", () => {
  const anySpray = fc
    .record({
      hour: fc.integer({ min: 0, max: 24 * 400 }),
      h: fc.integer({ min: 0, max: 1440 }),
      d: fc.integer({ min: 0, max: 365 }),
    })
    .map(({ hour, h, d }) => spray(new Date(Date.UTC(2026, 0, 1, hour)).toISOString(), h, d));
  const log = fc.array(anySpray, { maxLength: 8 });
  const instant = fc
    .integer({ min: 0, max: 24 * 500 })
    .map((hour) => new Date(Date.UTC(2026, 0, 1, hour)).toISOString());

  test("one more spraying never opens a bed sooner, and their order does not matter", () => {
    fc.assert(
      fc.property(log, anySpray, instant, (sprays, more, asOf) => {
        const before = sprayIntervals(sprays, CHICAGO, asOf);
        const after = sprayIntervals([more, ...sprays], CHICAGO, asOf);
        expect(Date.parse(after.reEntryUntil ?? asOf)).toBeGreaterThanOrEqual(
          Date.parse(before.reEntryUntil ?? asOf),
        );
        expect((after.harvestFrom ?? "") >= (before.harvestFrom ?? "")).toBe(true);
        expect(sprayIntervals([...sprays, more].reverse(), CHICAGO, asOf)).toEqual(after);
      }),
    );
  });
  test("what is said to be open lies ahead, and at that instant or day nothing of these is open", () => {
    fc.assert(
      fc.property(log, instant, (sprays, asOf) => {
        const done = sprays.filter((s) => Date.parse(s.at) <= Date.parse(asOf));
        const { reEntryUntil, harvestFrom } = sprayIntervals(sprays, CHICAGO, asOf);
        if (reEntryUntil !== null) {
          expect(Date.parse(reEntryUntil)).toBeGreaterThan(Date.parse(asOf));
          expect(sprayIntervals(done, CHICAGO, reEntryUntil).reEntryUntil).toBeNull();
        }
        if (harvestFrom !== null)
          expect(sprayIntervals(done, CHICAGO, `${harvestFrom}T12:00:00Z`).harvestFrom).toBeNull();
      }),
    );
  });
});
