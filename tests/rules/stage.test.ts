import type { PlantingState } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leavesOf } from "../../packages/rules/src/growth/leaves.ts";
import { type Growth, growthOf, type StageForecast } from "../../packages/rules/src/growth/stages.ts";
import { temperatureAhead } from "../../packages/rules/src/growth/temperatureAhead.ts";
import {
  STAGE_HEAT,
  STAGE_IDS,
  STAGE_SPREAD,
  TABLE_SPREAD,
} from "../../packages/rules/src/tables/stageHeat.ts";
import { advice, answer, climatology, dayAfter, days, line, planting, stepKeys } from "./warmthStates.ts";

/** Days between so many degrees, the same on each day of each year: heat of a day is then a number known beforehand. */
const even = (tMinC: number, tMaxC: number, years = 10) => climatology(years, () => ({ tMinC, tMaxC }));
const SPRING = "2026-03-10";

/** Indoors at 22 C, base 12, so that a day brings 10 C day; showing on 20 March. */
function seedlings(
  change: Partial<PlantingState> = {},
  plant: Partial<PlantingState["planting"]> = {},
): PlantingState {
  return planting({
    asOf: "2026-04-10T15:00:00Z",
    notes: [{ on: "2026-03-20", kind: "emerged" }],
    climatology: even(17, 27),
    planting: {
      ...planting().planting,
      sownOn: SPRING,
      plannedSetOutOn: "2026-05-20",
      baseTemperatureC: 12,
      propagation: { growingC: 22 },
      ...plant,
    },
    ...change,
  });
}
const growth = (state: PlantingState, today = state.asOf.slice(0, 10)): Growth => {
  const found = growthOf(state, today);
  if (!found) throw new Error("no growth");
  return found;
};
const stageOf = (g: Growth, id: StageForecast["stage"]) =>
  g.stages.find((s) => s.stage === id) as StageForecast;

describe("hand-worked", () => {
  // Base 12: first flower asks 547.5 × (24 - 12) / (24 - 12.78) = 585.5.
  test("at 10 C day a day the first flower comes 59 days after showing: 585.5 / 10, reached at the end of the 59th day, 17 May", () => {
    const flower = stageOf(growth(seedlings()), "first-flower");
    expect(flower.need.mean).toBeCloseTo((547.5 * 12) / (24 - 12.7778), 1);
    expect(flower.dates.likely).toBe(dayAfter("2026-03-20", 58));
  });

  // Showing 20 March, flower noted 28 May: 70 days at 10 C day = 700 of 585.5, share 1.1956.
  // sd of the look: √(0.0898² + (12² + 24²) / 585.5²) with showing ± 1 day and a note ± 2 days at 12 C day = 0.1009.
  // Prior 1 ± 0.2662: m' = (1 / 0.0709 + 1.1956 / 0.01018) / (1 / 0.0709 + 1 / 0.01018) = 1.1711, s' = 0.0943.
  test("a flower on 700 of 585.5 C day makes the pace (14.11 + 117.46) / (14.11 + 98.25) = 1.171 ± 0.094", () => {
    const state = seedlings(
      {
        asOf: "2026-06-01T15:00:00Z",
        notes: [
          { on: "2026-03-20", kind: "emerged" },
          { on: "2026-05-28", kind: "first-flower" },
        ],
        weather: days(
          "2026-05-20",
          Array.from({ length: 12 }, () => ({ tMinC: 17, tMaxC: 27 })),
        ),
      },
      { setOutOn: "2026-05-20" },
    );
    const g = growth(state);
    expect(g.looks).toHaveLength(1);
    expect(g.looks[0]?.took).toBeCloseTo(700, 6);
    expect(g.looks[0]?.sd).toBeCloseTo(0.1009, 3);
    expect(g.pace.mean).toBeCloseTo(1.171, 2);
    expect(g.pace.sd).toBeCloseTo(0.0943, 3);
    expect(line(advice("stage", state), "m")).toBeCloseTo(g.pace.mean, 12);
  });

  // Mature green asks 42.5 days at 24 C more: 42.5 × 12 = 510; from the note of 700: 700 + 1.171 × 510 = 1297.
  test("from that note the first green fruit is at 700 + 1.171 × 510 = 1297 C day, 60 days on", () => {
    const state = seedlings(
      {
        asOf: "2026-06-01T15:00:00Z",
        notes: [
          { on: "2026-03-20", kind: "emerged" },
          { on: "2026-05-28", kind: "first-flower" },
        ],
        weather: days(
          "2026-05-20",
          Array.from({ length: 12 }, () => ({ tMinC: 17, tMaxC: 27 })),
        ),
      },
      { setOutOn: "2026-05-20" },
    );
    const green = stageOf(growth(state), "mature-green");
    expect(green.need.mean).toBeCloseTo(1297, 0);
    expect(green.dates.likely).toBe(dayAfter("2026-05-28", 60));
  });

  test("the seed list's 70 days from setting out to green are 61 days indoors and 70 outside at 10: 1310 of 1095.5 C day", () => {
    const g = growth(seedlings({}, { daysToMaturity: { days: 70, from: "transplanting", to: "green" } }));
    expect(g.prior.from).toBe("list");
    expect(g.prior.list).toMatchObject({ day: "2026-07-29", stage: "mature-green" });
    expect(g.prior.list?.share).toBeCloseTo(1310 / 1095.5, 3);
  });

  test("the farm's own first picks outrank the list, and both are shown", () => {
    const own = {
      sownOn: "2025-03-10",
      setOutOn: "2025-05-20",
      firstPickOn: "2025-08-08",
      at: "green" as const,
    };
    const state = seedlings(
      { firstPicks: [own] },
      { daysToMaturity: { days: 70, from: "transplanting", to: "green" } },
    );
    const g = growth(state);
    expect(g.prior.from).toBe("own");
    // Medium 20 C: 13 days to 23 March; 58 days inside and 80 outside at 10 C day.
    expect(g.prior.own[0]?.share).toBeCloseTo(1380 / 1095.5, 3);
    const table = advice("stage", state).table?.find((t) => t.id === "sources");
    expect(table?.rows.map((row) => (row[2] as { key: string }).key)).toEqual([
      "stage.in-force.yes",
      "stage.in-force.no",
      "stage.in-force.no",
    ]);
  });
});

describe("what it answers", () => {
  const code = (state: PlantingState) => advice("stage", state).decision.code;

  test("noted and the next stage ahead; reckoned and to be looked at; after the last one", () => {
    expect(code(seedlings({ asOf: "2026-03-21T15:00:00Z" }))).toBe("ahead");
    expect(code(seedlings())).toBe("look");
    const notes = [...seedlings().notes, { on: "2026-04-05", kind: "colouring" as const }];
    expect(code(seedlings({ notes }))).toBe("last");
  });
  test("a summer too cool for the next stage says so", () => {
    const cold = seedlings(
      {
        asOf: "2026-06-10T15:00:00Z",
        climatology: even(5, 10),
        notes: [...seedlings().notes, { on: "2026-06-08", kind: "first-flower" }],
        weather: days(
          "2026-05-20",
          Array.from({ length: 21 }, () => ({ tMinC: 17, tMaxC: 27 })),
        ),
      },
      { setOutOn: "2026-05-20" },
    );
    const a = advice("stage", cold);
    expect(a.decision.code).toBe("not-reached");
    expect(a.table?.[0]?.rows.at(-1)?.slice(2)).toEqual([null, null, null]);
  });
  test("its chart has the stages as bands in their order, and the intervals by stage", () => {
    const { charts } = advice("stage", seedlings());
    const bands = charts[0]?.bands ?? [];
    expect(bands.map((b) => b.name.key)).toEqual(STAGE_IDS.map((id) => `stage.name.${id}`));
    expect(bands.every((b, i) => i === 0 || b.from === bands[i - 1]?.to)).toBe(true);
    expect(charts[1]?.x.labels).toHaveLength(STAGE_IDS.length);
  });
  test("which base is in force is said: the variety's, the office's, or the default with the family's range", () => {
    const limits = (state: PlantingState) => advice("stage", state).limits.map((l) => l.key);
    expect(limits(seedlings())).toContain("stage.limit.base-variety");
    const unknown = seedlings();
    delete (unknown.planting as { baseTemperatureC?: number }).baseTemperatureC;
    expect(limits(unknown)).toEqual(
      expect.arrayContaining(["stage.limit.base-default", "stage.limit.family"]),
    );
    const chosen = { ...unknown, settings: { choices: { "stage.base-temperature": "compact-17.8" } } };
    expect(limits(chosen)).toContain("stage.limit.base-office");
    expect(line(advice("stage", chosen), "L")).toBe(17.8);
  });
  // A leaf asks 43.6 × (24 - 12) / (24 - 16.8) = 72.7 C day above 12 C, at 10 a day.
  test("a true leaf takes 7.3 days at 22 C above 12 C", () => {
    const step = advice("stage", seedlings()).steps.find((s) => s.text.key === "stage.step.leaf-days");
    expect(step?.text.params.days).toEqual({ value: expect.closeTo(7.2667, 3), unit: "days" });
  });
  test("before buds it asks for a count of leaves, after them not", () => {
    expect(stepKeys(advice("stage", seedlings()))).toContain("stage.step.leaves");
    const notes = [...seedlings().notes, { on: "2026-04-05", kind: "buds-visible" as const }];
    expect(stepKeys(advice("stage", seedlings({ notes })))).not.toContain("stage.step.leaves");
  });
});

describe("a picking is a note too", () => {
  test("picked in colour says coloured fruit; picked and nothing said says mature green at the least", () => {
    const stagesOf = (plant: Partial<PlantingState["planting"]>) =>
      growth(seedlings({ picked: [{ on: "2026-04-08", kg: 2 }] }, plant)).notes.stages.map((s) => s.stage);
    expect(stagesOf({ pickAt: "colour" })).toEqual(["emerged", "colour"]);
    expect(stagesOf({})).toEqual(["emerged", "mature-green"]);
  });
});

describe("notes that contradict each other", () => {
  test("a flower before the buds: as many as fit are counted, the later stage of two, and it is said", () => {
    const notes = [
      ...seedlings().notes,
      { on: "2026-04-08", kind: "buds-visible" as const },
      { on: "2026-04-02", kind: "first-flower" as const },
    ];
    const state = seedlings({ notes });
    expect(growth(state).notes.stages.map((s) => s.stage)).toEqual(["emerged", "first-flower"]);
    const odd = advice("stage", state).limits.find((l) => l.key === "stage.limit.order");
    expect(odd?.params.day).toEqual({ day: "2026-04-08" });
  });
  test("one note out of order does not undo three that fit", () => {
    const notes = [
      { on: "2026-03-20", kind: "emerged" as const },
      { on: "2026-03-25", kind: "seed-leaves-open" as const },
      { on: "2026-04-08", kind: "buds-visible" as const },
      { on: "2026-03-15", kind: "fruit-set" as const },
    ];
    expect(growth(seedlings({ notes })).notes.odd).toEqual([{ stage: "set", on: "2026-03-15" }]);
  });
  test("fewer leaves than before are not counted, and it is said", () => {
    const leaf = (on: string, value: number) => ({ on, kind: "true-leaves" as const, value });
    const state = seedlings({ notes: [...seedlings().notes, leaf("2026-04-01", 4), leaf("2026-04-08", 2)] });
    expect(growth(state).notes.leaves).toEqual([{ count: 4, on: "2026-04-01" }]);
    expect(advice("stage", state).limits.map((l) => l.key)).toContain("stage.limit.fewer-leaves");
  });
});

describe("what it asks for and where it does not apply", () => {
  const missingOf = (state: PlantingState) => {
    const a = answer("stage", state);
    return a.kind === "needs-more" ? a.missing[0]?.field : a.kind;
  };
  const without = (state: PlantingState, key: "climatology"): PlantingState => {
    const { [key]: _, ...rest } = state;
    return rest;
  };

  test("without past years: dates indoors stand, and beyond the forecast it asks for the years", () => {
    const early = without(seedlings({ asOf: "2026-03-21T15:00:00Z" }), "climatology");
    const a = advice("stage", early);
    expect(a.decision.code).toBe("ahead");
    expect(a.limits.map((l) => l.key)).toContain("stage.limit.no-years");
    const out = without(
      seedlings(
        {
          asOf: "2026-05-24T15:00:00Z",
          notes: [...seedlings().notes, { on: "2026-05-22", kind: "first-flower" }],
          weather: days(
            "2026-05-20",
            Array.from({ length: 4 }, () => ({ tMinC: 17, tMaxC: 27 })),
          ),
        },
        { setOutOn: "2026-05-20" },
      ),
      "climatology",
    );
    expect(missingOf(out)).toBe("climatology");
  });
  test("days outside without weather and without past years to fill them", () => {
    expect(
      missingOf(
        without(seedlings({ asOf: "2026-05-24T15:00:00Z" }, { setOutOn: "2026-05-20" }), "climatology"),
      ),
    ).toBe("weather");
  });
  test("with past years they are filled with a usual year's and said", () => {
    const a = advice("stage", seedlings({ asOf: "2026-05-24T15:00:00Z" }, { setOutOn: "2026-05-20" }));
    expect(a.estimated.find((e) => e.input === "weather")?.how).toContain("4 days");
  });
  test("a medium too cold for the table of emergence asks for the day they showed", () => {
    expect(missingOf(seedlings({ notes: [] }, { propagation: { mediumC: 12 } }))).toBe("notes");
  });
  test.each([
    ["ended", { endedOn: "2026-04-01" }],
    ["unsown", { sownOn: "2026-05-01" }],
    ["overwintered", { overwintered: true }],
  ])("it does not apply: %s", (why, plant) => {
    const a = answer("stage", seedlings({}, plant));
    expect(a.kind === "does-not-apply" && a.reason.key).toBe(`stage.not.${why}`);
  });
  test("a forecast older than a day is refused by its name", () => {
    const a = answer("stage", seedlings({ forecast: { issuedAt: "2026-04-08T06:00:00Z", days: [] } }));
    expect(a.kind === "refused" && a.problems[0]?.field).toBe("forecast.issuedAt");
  });
});

describe("always", () => {
  const season = fc.record({
    warmth: fc.double({ min: 14, max: 26, noNaN: true }),
    swing: fc.double({ min: 2, max: 8, noNaN: true }),
    asOf: fc.integer({ min: 1, max: 100 }),
    growingC: fc.double({ min: 16, max: 28, noNaN: true }),
    baseTemperatureC: fc.double({ min: 8, max: 15, noNaN: true }),
  });
  const stateOf = (s: {
    warmth: number;
    swing: number;
    asOf: number;
    growingC: number;
    baseTemperatureC: number;
  }) =>
    seedlings(
      {
        asOf: `${dayAfter("2026-03-20", s.asOf)}T15:00:00Z`,
        climatology: climatology(4, (y) => ({
          tMinC: s.warmth + y - s.swing,
          tMaxC: s.warmth + y + s.swing,
        })),
      },
      {
        setOutOn: "2026-05-15",
        propagation: { growingC: s.growingC },
        baseTemperatureC: s.baseTemperatureC,
      },
    );
  const runs = { numRuns: 40 };
  const INFINITY_DAY = "9999-12-31";
  const orNever = (day: string | null) => day ?? INFINITY_DAY;

  test("earliest, likely and latest are in order, and so are the stages", () => {
    fc.assert(
      fc.property(season, (s) => {
        const g = growth(stateOf(s));
        for (const [i, { dates }] of g.stages.entries()) {
          expect(orNever(dates.low) <= orNever(dates.likely)).toBe(true);
          expect(orNever(dates.likely) <= orNever(dates.high)).toBe(true);
          const next = g.stages[i + 1];
          if (next)
            for (const end of ["low", "likely", "high"] as const)
              expect(orNever(dates[end]) <= orNever(next.dates[end])).toBe(true);
        }
      }),
      runs,
    );
  });

  test("warmer days to come, or a warmer house, never make a stage later", () => {
    fc.assert(
      fc.property(season, fc.double({ min: 0.1, max: 4, noNaN: true }), (s, more) => {
        const cool = growth(stateOf(s));
        for (const warm of [
          growth(stateOf({ ...s, warmth: s.warmth + more })),
          growth(stateOf({ ...s, growingC: s.growingC + more })),
        ]) {
          for (const [i, { dates }] of cool.stages.entries()) {
            for (const end of ["low", "likely", "high"] as const) {
              expect(orNever(warm.stages[i]?.dates[end] ?? null) <= orNever(dates[end])).toBe(true);
            }
          }
        }
      }),
      runs,
    );
  });

  test("a note on the day forecast narrows the heat that every later stage may take, and its days", () => {
    const width = (s: StageForecast) => Date.parse(orNever(s.dates.high)) - Date.parse(orNever(s.dates.low));
    fc.assert(
      fc.property(
        season,
        fc.constantFrom("buds-visible" as const, "first-flower" as const, "fruit-set" as const),
        (s, kind) => {
          const before = stateOf({ ...s, asOf: 100 });
          const g = growth(before);
          const stage = (
            { "buds-visible": "buds", "first-flower": "first-flower", "fruit-set": "set" } as const
          )[kind];
          const forecast = stageOf(g, stage).dates.likely;
          // A note of a day to come is not in the state.
          fc.pre(forecast !== null && forecast <= g.today);
          const after = growth({ ...before, notes: [...before.notes, { on: forecast as string, kind }] });
          for (const later of g.stages.slice(STAGE_IDS.indexOf(stage) + 1)) {
            const now = stageOf(after, later.stage);
            expect(now.need.sd).toBeLessThan(later.need.sd);
            // A day of rounding at either end.
            if (later.dates.high !== null)
              expect(width(now)).toBeLessThanOrEqual(width(later) + 2 * 86_400_000);
          }
          expect(after.pace.sd).toBeLessThan(g.pace.sd);
        },
      ),
      runs,
    );
  });

  test("more leaves never come sooner, and what is counted is not forecast again", () => {
    fc.assert(
      fc.property(season, fc.integer({ min: 1, max: 8 }), (s, counted) => {
        const state = stateOf(s);
        const today = state.asOf.slice(0, 10);
        const leaves = leavesOf(
          { ...state, notes: [...state.notes, { on: today, kind: "true-leaves", value: counted }] },
          today,
        );
        if (!leaves) throw new Error("no leaves");
        expect(leaves.now.likely).toBeGreaterThanOrEqual(counted);
        expect(leaves.on(counted).likely).toBe(today);
        for (let n = counted; n < 12; n++) {
          for (const end of ["low", "likely", "high"] as const)
            expect(orNever(leaves.on(n)[end]) <= orNever(leaves.on(n + 1)[end])).toBe(true);
        }
      }),
      runs,
    );
  });

  test("the same state gives the same bytes", () => {
    expect(JSON.stringify(advice("stage", seedlings()))).toBe(JSON.stringify(advice("stage", seedlings())));
  });
});

test("the mean of a coming day is the mean of its extremes, and a forecast draws it with the skill of its lead", () => {
  const plain = temperatureAhead(seedlings(), "2026-04-10", 3);
  expect(plain?.map((d) => d.likely)).toEqual([22, 22, 22]);
  // Of the day of issue 0.95 of the way from 22 to 32: 31.5.
  const forecast = { issuedAt: "2026-04-10T06:00:00Z", days: [{ date: "2026-04-10", tMinC: 27, tMaxC: 37 }] };
  expect(temperatureAhead(seedlings({ forecast }), "2026-04-10", 1)?.[0]?.likely).toBeCloseTo(31.5, 9);
  const { climatology: _, ...none } = seedlings();
  expect(temperatureAhead(none, "2026-04-10", 3)).toBeNull();
});

test("the spreads are the published ones: 254 / 954 and 215 / 2393", () => {
  expect(TABLE_SPREAD).toBeCloseTo(0.2662, 4);
  expect(STAGE_SPREAD).toBeCloseTo(0.0898, 4);
  expect(STAGE_HEAT.emerged.cDays).toBe(0);
});
