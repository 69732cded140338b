import type { PlantingState } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shareBeforeFrost } from "../../packages/rules/src/growth/autumn.ts";
import { growthOf } from "../../packages/rules/src/growth/stages.ts";
import { isPungent, PICKED_AT } from "../../packages/rules/src/tables/pickStages.ts";
import { advice, answer, climatology, dayAfter, days, line, planting, stepKeys } from "./warmthStates.ts";

const TODAY = "2026-08-20";
/** Index of a day in a year of 366, as warmthStates counts them. */
const SEPTEMBER_20 = 262;

/** 17 to 27 C until the frost's day, then a night of -2 C. */
const untilFrost = (frostDay: (year: number) => number, years = 10) =>
  climatology(years, (y, d) => (d >= frostDay(y) ? { tMinC: -2, tMaxC: 12 } : { tMinC: 17, tMaxC: 27 }));

/** Bell peppers in the bed since 20 May, 10 C day a day above 12 C, the first flower on 10 June. */
function bed(
  change: Partial<PlantingState> = {},
  plant: Partial<PlantingState["planting"]> = {},
): PlantingState {
  const length = Math.round(
    (Date.parse((change.asOf ?? TODAY).slice(0, 10)) - Date.parse("2026-05-20")) / 86_400_000,
  );
  return planting({
    asOf: `${TODAY}T15:00:00Z`,
    climatology: untilFrost(() => SEPTEMBER_20),
    notes: [
      { on: "2026-03-20", kind: "emerged" },
      { on: "2026-06-10", kind: "first-flower" },
    ],
    weather: days(
      "2026-05-20",
      Array.from({ length }, () => ({ tMinC: 17, tMaxC: 27 })),
    ),
    planting: {
      ...planting().planting,
      setOutOn: "2026-05-20",
      baseTemperatureC: 12,
      propagation: { growingC: 22 },
      ...plant,
    },
    ...change,
  });
}
const nights = (issued: string, minima: number[]): PlantingState["forecast"] => ({
  issuedAt: `${issued}T06:00:00Z`,
  days: minima.map((tMinC, i) => ({ date: dayAfter(issued, i), tMinC, tMaxC: Math.max(15, tMinC + 5) })),
});
const code = (state: PlantingState) => advice("ripe", state).decision.code;
const picked = [{ on: "2026-08-18", kg: 12 }];

describe("the first fruit", () => {
  // Flower 10 June; 42.5 days at 24 C = 510 C day above 12 at pace about 1.25: three months after the flower.
  test("before it is likely: wait, with the window and the chance before frost", () => {
    const a = advice("ripe", bed({ asOf: "2026-07-01T15:00:00Z" }));
    expect(a.decision.code).toBe("wait");
    const green = growthOf(bed({ asOf: "2026-07-01T15:00:00Z" }), "2026-07-01")?.stages.find(
      (s) => s.stage === "mature-green",
    );
    expect(a.window.from).toBe(green?.dates.low);
    expect(a.expected).toEqual({ kind: "look", date: green?.dates.low });
  });
  test("reckoned and not noted: look; noted or picked: pick", () => {
    expect(code(bed({ asOf: "2026-08-30T15:00:00Z" }))).toBe("look");
    expect(code(bed({ notes: [...bed().notes, { on: "2026-08-19", kind: "mature-green" }] }))).toBe("pick");
    expect(code(bed({ picked }))).toBe("pick");
  });
  test("picked on 18 August: green again after a week, on the 25th; in colour after four days, on the 22nd", () => {
    expect(advice("ripe", bed({ picked })).window.from).toBe("2026-08-25");
    expect(advice("ripe", bed({ picked }, { pickAt: "colour" })).window.from).toBe("2026-08-22");
  });
  test("colour that comes before frost in less than half of what may come: plan to pick green", () => {
    const a = advice("ripe", bed({ asOf: "2026-07-20T15:00:00Z" }, { pickAt: "colour" }));
    expect(a.decision.code).toBe("pick-green");
    expect(line(a, "P_colour")).toBeLessThan(0.5);
  });
  test("a frost before any full-size fruit says so", () => {
    const a = advice("ripe", bed({ asOf: "2026-07-16T15:00:00Z", climatology: untilFrost(() => 200) }));
    expect(a.decision.code).toBe("none-before-frost");
  });
  test("each market type has a stage; what the planting says comes first", () => {
    expect(Object.values(PICKED_AT).every((at) => at === "green" || at === "colour")).toBe(true);
    const a = advice("ripe", bed({ picked }, { marketType: "habanero-type" }));
    expect(a.estimated[0]?.how).toContain("colour");
    expect(advice("ripe", bed({ picked }, { pickAt: "green" })).estimated).toEqual([]);
  });
});

describe("frost", () => {
  test("each year against its own frost: years 0 to 4 freeze before the fruit, 5 to 9 after it, share 0.5", () => {
    const state = bed({ asOf: "2026-07-01T15:00:00Z" });
    const g = growthOf(state, "2026-07-01");
    const need = g?.stages.find((s) => s.stage === "mature-green")?.need;
    if (!g || !need) throw new Error("no growth");
    const far = g.course.first + 400;
    const frosts = g.course.years.map((_, i) => (i < 5 ? g.course.first : far));
    const autumn = { frostC: 0, frosts, dates: { low: null, likely: null, high: null } };
    expect(shareBeforeFrost(g.course, { mean: need.mean, sd: 0 }, autumn)).toBe(0.5);
  });
  test("the frost of the years is on 20 September in all of them", () => {
    expect(line(advice("ripe", bed({ picked })), "t_frost")).toBe("2026-09-20");
  });
  test("a night of -1 C on 23 August: pick by the evening of the 22nd, by 17 o'clock (22:00 UTC)", () => {
    const a = advice("ripe", bed({ picked, forecast: nights(TODAY, [12, 10, 8, -1]) }));
    expect(a.decision.code).toBe("frost");
    expect(a.window).toMatchObject({ from: TODAY, to: "2026-08-22" });
    expect(a.stakes).toMatchObject({ harm: 0.3, actBy: "2026-08-22T22:00:00Z" });
    expect(a.cautions.map((c) => c.id)).toContain("frosted-fruit");
    expect(stepKeys(a)).toEqual(
      expect.arrayContaining(["ripe.step.before-frost", "ripe.step.breakers", "ripe.step.keep"]),
    );
  });
  test("a bed 2 C colder than its station freezes where the station has 1.5 C", () => {
    const site = { ...planting().site, stationOffset: { minC: -2, sdC: 0.5, nights: 30 } };
    const forecast = nights(TODAY, [12, 10, 1.5]);
    expect(code(bed({ picked, forecast }))).toBe("pick");
    expect(code(bed({ picked, forecast, site }))).toBe("frost");
  });
  test("a night of 5 C chills: fruit that begins to colour comes in", () => {
    const a = advice("ripe", bed({ picked, forecast: nights(TODAY, [12, 5]) }));
    expect(a.decision.code).toBe("pick");
    expect(stepKeys(a)).toContain("ripe.step.chill");
  });
});

describe("sprays", () => {
  const spray = (at: string, preHarvestDays: number) => ({
    at,
    target: "insects" as const,
    reEntryHours: 4,
    preHarvestDays,
  });

  test("sprayed on 19 August with 7 days: no fruit before the 26th, whatever the week's picking", () => {
    const a = advice("ripe", bed({ picked, sprays: [spray("2026-08-19T14:00:00Z", 7)] }));
    expect(a.decision.code).toBe("closed");
    expect(a.window.from).toBe("2026-08-26");
    expect(a.expected?.date).toBe("2026-08-26");
    expect(a.cautions.map((c) => c.id)).toContain("harvest-interval");
    expect(stepKeys(a)).toContain("ripe.step.closed");
  });
  test("the longest of several counts", () => {
    const sprays = [spray("2026-08-19T14:00:00Z", 7), spray("2026-08-12T14:00:00Z", 21)];
    expect(advice("ripe", bed({ picked, sprays })).window.from).toBe("2026-09-02");
  });
  test("frost before the label's day: nothing is picked, the plants are covered", () => {
    const a = advice(
      "ripe",
      bed({ picked, sprays: [spray("2026-08-19T14:00:00Z", 7)], forecast: nights(TODAY, [12, 10, 8, -1]) }),
    );
    expect(a.decision.code).toBe("frost-closed");
    expect(stepKeys(a)).toContain("ripe.step.cover");
    expect(stepKeys(a)).not.toContain("ripe.step.before-frost");
  });
  test("frost while the label keeps people out: nobody is sent in to cover, and nothing presses", () => {
    const sprays = [{ ...spray("2026-08-20T14:00:00Z", 7), reEntryHours: 168 }];
    const a = advice("ripe", bed({ picked, sprays, forecast: nights(TODAY, [12, 10, 8, -1]) }));
    expect(a.decision.text.key).toBe("ripe.decision.frost-shut");
    expect(stepKeys(a)).toContain("ripe.step.stay-out");
    expect(stepKeys(a)).not.toContain("ripe.step.cover");
    expect([a.stakes.harm, a.stakes.actBy]).toEqual([0, null]);
  });
  test("sprayed today at 14:00 UTC, 0 days to harvest but 168 hours to re-entry: nobody is told to pick before the 27th", () => {
    const sprays = [{ ...spray("2026-08-20T14:00:00Z", 0), reEntryHours: 168 }];
    const a = advice("ripe", bed({ picked, sprays }));
    expect(a.decision.code).toBe("closed");
    expect(a.window.from).toBe("2026-08-27");
    expect(a.expected?.date).toBe("2026-08-27");
  });
  test("an interval that has passed closes nothing", () => {
    const a = advice("ripe", bed({ picked, sprays: [spray("2026-08-01T14:00:00Z", 7)] }));
    expect(a.decision.code).toBe("pick");
    expect(a.cautions.map((c) => c.id)).not.toContain("harvest-interval");
  });

  test("no window ever opens before the last day of any label (any sprays, any forecast)", () => {
    const someSpray = fc.record({
      back: fc.integer({ min: 0, max: 20 }),
      preHarvestDays: fc.integer({ min: 0, max: 30 }),
    });
    fc.assert(
      fc.property(
        fc.array(someSpray, { maxLength: 4 }),
        fc.boolean(),
        fc.constantFrom("green" as const, "colour" as const),
        (list, frost, pickAt) => {
          const sprays = list.map((s) => spray(`${dayAfter(TODAY, -s.back)}T14:00:00Z`, s.preHarvestDays));
          const a = advice(
            "ripe",
            bed({ picked, sprays, ...(frost && { forecast: nights(TODAY, [12, -1]) }) }, { pickAt }),
          );
          const opens =
            list
              .map((s) => dayAfter(TODAY, s.preHarvestDays - s.back))
              .toSorted()
              .at(-1) ?? TODAY;
          if (a.decision.code === "frost-closed") expect(stepKeys(a)).not.toContain("ripe.step.how");
          else expect((a.window.from ?? "") >= opens).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("handling, and what it asks for", () => {
  test("pungent fruit carries the caution about hands and eyes, sweet fruit does not", () => {
    const ids = (plant: Partial<PlantingState["planting"]>) =>
      advice("ripe", bed({ picked }, plant)).cautions.map((c) => c.id);
    expect(ids({ marketType: "jalapeno-type" })).toContain("hot-fruit");
    expect(ids({ marketType: "bell" })).not.toContain("hot-fruit");
    expect(ids({ marketType: "bell", pungent: true })).toContain("hot-fruit");
    expect(isPungent({ ...planting().planting, marketType: "habanero-type", pungent: false })).toBe(false);
  });
  test("without weather since setting out it asks, but not once fruit is picked", () => {
    const { climatology: _, ...dry } = bed({ weather: [] });
    const a = answer("ripe", dry);
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("weather");
    const b = advice("ripe", { ...dry, picked });
    expect(b.limits.map((l) => l.key)).toEqual(
      expect.arrayContaining(["ripe.limit.no-dates", "ripe.limit.no-frost"]),
    );
  });
  test.each([
    ["ended", bed({}, { endedOn: "2026-08-01" })],
    ["unsown", bed({}, { sownOn: "2026-09-01", setOutOn: undefined as never })],
    ["overwintered", bed({}, { overwintered: true })],
    ["too-early", planting({ asOf: "2026-04-01T15:00:00Z", climatology: untilFrost(() => SEPTEMBER_20) })],
  ])("it does not apply: %s", (why, state) => {
    const a = answer("ripe", JSON.parse(JSON.stringify(state)));
    expect(a.kind === "does-not-apply" && a.reason.key).toBe(`ripe.not.${why}`);
  });
  test("its chart rises from 0 to 100 and never falls; its tables keep fruit and frost apart", () => {
    const a = advice("ripe", bed({ asOf: "2026-07-01T15:00:00Z" }));
    for (const { points } of a.charts[0]?.series ?? []) {
      const shares = points.map(([, share]) => Number(share));
      expect(shares.every((s, i) => i === 0 || s >= (shares[i - 1] ?? 0))).toBe(true);
    }
    expect(a.table?.map((t) => t.id)).toEqual(["windows", "keeping"]);
  });
});
