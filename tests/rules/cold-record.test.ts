import { advise, type PlantingState, render } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localHourReader } from "../../packages/rules/src/warmth/localHours.ts";
import { advice, answer, climatology, dayAfter, days, line, planting, stepKeys } from "./warmthStates.ts";

type Notes = PlantingState["notes"];
const seedling = planting().planting;
const flat = (t: number, n: number) => Array(n).fill({ tMinC: t, tMaxC: t });

/** Plants set out on 1 June, in Chicago time, with outdoor days from then on, asked at midnight after the last. */
function outdoors(
  extremes: { tMinC: number; tMaxC: number }[],
  change: Partial<PlantingState> = {},
): PlantingState {
  return planting({
    asOf: `${dayAfter("2026-06-01", extremes.length)}T05:00:00Z`,
    planting: { ...seedling, setOutOn: "2026-06-01" },
    weather: days("2026-06-01", extremes),
    ...change,
  });
}

/** Seedlings indoors with hourly readings from midnight of 1 May, Chicago time. */
function indoors(temperatures: (number | null)[], change: Partial<PlantingState> = {}): PlantingState {
  const start = Date.parse("2026-05-01T05:00:00Z");
  const at = (h: number) => new Date(start + h * 3_600_000).toISOString();
  return planting({
    asOf: at(temperatures.length),
    plantTemperatures: temperatures.flatMap((t, h) => (t === null ? [] : [{ at: at(h), temperatureC: t }])),
    ...change,
  });
}

describe("the record", () => {
  test("3 days at a steady 10 C below a floor of 12 C: 72 h, 72 × 2 = 144 C h, one spell of 72 h", () => {
    const a = advice("cold-record", outdoors(flat(10, 3)));
    expect([line(a, "h"), line(a, "D"), line(a, "spell"), line(a, "Tmin"), line(a, "F")]).toEqual([
      72, 144, 72, 10, 0,
    ]);
    expect(a.estimated.map((e) => e.input)).toEqual(["hourly temperatures", "site.stationOffset"]);
  });
  test("hourly readings of 5 h at 10 C, 1 h missing, 4 h at 9 C: 9 h, 10 + 12 = 22 C h, longest spell 5 h, the gap said", () => {
    const a = advice(
      "cold-record",
      indoors([
        ...Array(24).fill(18),
        ...Array(5).fill(10),
        null,
        ...Array(4).fill(9),
        ...Array(38).fill(18),
      ]),
    );
    expect([line(a, "h"), line(a, "D"), line(a, "spell"), line(a, "Tmin"), line(a, "h_missing")]).toEqual([
      9, 22, 5, 9, 1,
    ]);
    expect(a.limits).toContainEqual({
      key: "cold-record.limit.gaps",
      params: { hours: { value: 1, unit: "hours" } },
    });
    expect(a.charts[0]?.series[0]?.points[29]).toEqual(["2026-05-02T05:00", null]);
  });
  test("under a fleece without a thermometer: 10 + 1.1 = 11.1 C, so 3 × 24 × 0.9 = 64.8 C h, marked estimated", () => {
    const state = outdoors(flat(10, 3));
    const bed = { ...state.bed, covers: [{ cover: "fleece" as const, from: "2026-06-01" }] };
    const a = advice("cold-record", { ...state, bed });
    expect(line(a, "D")).toBeCloseTo(64.8, 9);
    expect(a.estimated.find((e) => e.input === "temperature under the cover")?.source?.key).toBe(
      "psu-row-covers-2020",
    );
  });
  test("readings at the plants override the station: 14 C measured where the station says 5 C", () => {
    const readings = Array.from({ length: 72 }, (_, h) => ({
      at: new Date(Date.parse("2026-06-01T05:00:00Z") + h * 3_600_000).toISOString(),
      temperatureC: 14,
    }));
    const a = advice("cold-record", outdoors(flat(5, 3), { plantTemperatures: readings }));
    expect([line(a, "h"), line(a, "Tmin"), a.grade]).toEqual([0, 14, "moderate"]);
  });
  test("a site 2 C colder than its station: 13 C there is 11 C here, 48 h × 1 = 48 C h", () => {
    const state = outdoors(flat(13, 2));
    const site = { ...state.site, stationOffset: { minC: -2, sdC: 1, nights: 40 } };
    // The maximum is not shifted, so the day's course lies between 11 and 13 C: more than nothing, less than 48.
    const d = line(advice("cold-record", { ...state, site }), "D");
    expect(d).toBeGreaterThan(0);
    expect(d).toBeLessThan(48);
  });
  test("the clock put forward: 07:59Z is 1 o'clock and 08:00Z is 3 o'clock in Chicago on 8 March; half-hour zones too", () => {
    const chicago = localHourReader("America/Chicago");
    const midnight = chicago("2026-03-08T06:00:00Z");
    expect(chicago("2026-03-08T07:59:00Z") - midnight).toBe(1);
    expect(chicago("2026-03-08T08:00:00Z") - midnight).toBe(3);
    const kolkata = localHourReader("Asia/Kolkata");
    expect(kolkata("2026-03-08T06:29:00Z") % 24).toBe(11);
    expect(kolkata("2026-03-08T06:30:00Z") % 24).toBe(12);
  });
});

describe("whose cold it is", () => {
  const cool = flat(11, 14);
  test("11 C is cold for a seedling (floor 12), not for a grown plant (10), nor one kept over winter (5)", () => {
    const young = outdoors(cool);
    const grown = outdoors(cool, { notes: [{ on: "2026-06-02", kind: "buds-visible" }] });
    const kept = outdoors(cool, { planting: { ...seedling, setOutOn: "2026-06-01", overwintered: true } });
    expect([young, grown, kept].map((s) => line(advice("cold-record", s), "floor"))).toEqual([12, 10, 5]);
    expect([young, grown, kept].map((s) => advice("cold-record", s).decision.code)).toEqual([
      "hold-back-and-look",
      "carry-on",
      "carry-on",
    ]);
  });
  test("the night floor of 16 C is for plants raised indoors only: 14 nights at 15 C, 11 h each, are 154 h", () => {
    const nights = Array.from({ length: 14 * 24 }, (_, h) => (h % 24 >= 20 || h % 24 < 7 ? 15 : 22));
    const a = advice("cold-record", indoors(nights));
    expect(a.decision.code).toBe("warmer-nights");
    expect(line(a, "h_night")).toBe(154);
    expect(line(a, "D_night")).toBe(154);
    const out = advice("cold-record", outdoors(Array(14).fill({ tMinC: 15, tMaxC: 22 })));
    expect([out.decision.code, line(out, "h_night")]).toEqual(["carry-on", undefined]);
  });
  test("the office's own floor of 9 C leaves 10 C uncounted", () => {
    expect(line(advice("cold-record", outdoors(flat(10, 3), { settings: { coldFloorC: 9 } })), "h")).toBe(0);
  });
});

describe("what the cold and the plants say together", () => {
  const frosty = [...flat(20, 3), { tMinC: -1, tMaxC: 9 }, ...flat(20, 3)];
  const dead: Notes = [{ on: "2026-06-06", kind: "growing-point-dead" }];
  const warmDay = { tMinC: 14, tMaxC: 24 };
  const inDays = (days: number) => ({ days, from: "transplanting", to: "green" }) as const;
  const spare = (value: number): Notes => [{ on: "2026-06-06", kind: "spare-plants", value }];
  const code = (state: PlantingState) => advice("cold-record", state).decision.code;

  test("temperature alone, however low, never says start again", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -30, max: 20 }), { minLength: 2, maxLength: 10 }), (minima) => {
        const state = outdoors(
          minima.map((t) => ({ tMinC: t, tMaxC: t + 8 })),
          { notes: spare(500) },
        );
        const a = answer("cold-record", state);
        if (a.kind === "advice") expect(["carry-on", "hold-back-and-look"]).toContain(a.decision.code);
      }),
      { numRuns: 40 },
    );
  });
  test("frost: hold back and look", () => {
    const a = advice("cold-record", outdoors(frosty));
    expect(a.decision.code).toBe("hold-back-and-look");
    expect(stepKeys(a)).toContain("cold-record.step.frost");
    expect(line(a, "F")).toBe(1);
  });
  test("a dead growing point with 40 spare plants: start again", () => {
    const a = advice("cold-record", outdoors(frosty, { notes: [...dead, ...spare(40)] }));
    expect(a.decision.code).toBe("start-again");
    expect(stepKeys(a)).toContain("cold-record.step.replace");
  });
  test("a dead growing point, nobody said whether there are spares or time: hold back and look, and ask", () => {
    const a = advice("cold-record", outdoors(frosty, { notes: dead }));
    expect(a.decision.code).toBe("hold-back-and-look");
    expect(a.wouldChange.map((m) => m.key)).toContain("cold-record.change.spare");
  });
  test("dead, no spares, and no seed list to reckon time from: hold back, and the seed list is asked for", () => {
    const a = advice("cold-record", outdoors(frosty, { notes: [...dead, ...spare(0)] }));
    expect(a.decision.code).toBe("hold-back-and-look");
    expect(a.decision.text.key).toBe("cold-record.decision.hold-back-and-look-spoiled");
    expect(stepKeys(a)[0]).toBe("cold-record.step.lacks-seed-list");
    expect(stepKeys(a)).not.toContain("cold-record.step.look");
  });
  test("dead, nothing else known: the spare plants and the seed list are asked for; with the list, the climate", () => {
    const bare = advice("cold-record", outdoors(frosty, { notes: dead }));
    expect(stepKeys(bare).slice(0, 2)).toEqual([
      "cold-record.step.count-spares",
      "cold-record.step.lacks-seed-list",
    ]);
    const listed = advice(
      "cold-record",
      outdoors(frosty, {
        notes: [...dead, ...spare(0)],
        planting: { ...seedling, setOutOn: "2026-06-01", daysToMaturity: inDays(60) },
      }),
    );
    expect(stepKeys(listed)[0]).toBe("cold-record.step.lacks-climatology");
  });
  test("time to sow: 60 + 56 days before a first frost on 14 October, 129 days off, leave 13; 90 + 56 leave none", () => {
    // Day 288 by index is 15 October, in the three leap years of ten the 14th: the earliest fifth. From 8 June 129 days.
    const autumn = climatology(10, (_, d) =>
      d >= 288 || d < 100 ? { tMinC: -1, tMaxC: 8 } : { tMinC: 14, tMaxC: 24 },
    );
    const state = (maturity: number) =>
      outdoors(frosty, {
        notes: [...dead, ...spare(0)],
        climatology: autumn,
        planting: {
          ...seedling,
          setOutOn: "2026-06-01",
          daysToMaturity: inDays(maturity),
        },
      });
    const enough = advice("cold-record", state(60));
    expect(enough.decision.code).toBe("start-again");
    expect(line(enough, "spare")).toBe(13);
    expect(code(state(90))).toBe("keep-what-lives");
    const kept = advice("cold-record", state(90)).stakes;
    expect(kept.harm).toBeLessThan(enough.stakes.harm);
  });
  test("no time to sow and nobody counted spares: not called hopeless, the spares are asked for", () => {
    const autumn = climatology(10, (_, d) => (d >= 250 || d < 100 ? { tMinC: -1, tMaxC: 8 } : warmDay));
    const state = outdoors(frosty, {
      notes: dead,
      climatology: autumn,
      planting: { ...seedling, setOutOn: "2026-06-01", daysToMaturity: inDays(90) },
    });
    expect(code(state)).toBe("hold-back-and-look");
    expect(stepKeys(advice("cold-record", state))[0]).toBe("cold-record.step.count-spares");
  });
  test("one year in five freezes 40 days sooner: the early years decide. No frost at all leaves room", () => {
    const at = (frostFrom: (year: number) => number) =>
      outdoors(frosty, {
        notes: [...dead, ...spare(0)],
        climatology: climatology(10, (y, d) =>
          d >= frostFrom(y) || d < 100 ? { tMinC: -1, tMaxC: 8 } : { tMinC: 14, tMaxC: 24 },
        ),
        planting: { ...seedling, setOutOn: "2026-06-01", daysToMaturity: inDays(60) },
      });
    expect(code(at(() => 288))).toBe("start-again");
    expect(code(at((y) => (y < 3 ? 248 : 288)))).toBe("keep-what-lives");
    const frostless = outdoors(frosty, {
      notes: [...dead, ...spare(0)],
      climatology: climatology(10, () => warmDay),
      planting: { ...seedling, setOutOn: "2026-06-01", daysToMaturity: inDays(60) },
    });
    expect(code(frostless)).toBe("start-again");
  });
  test("days to colour that fit leave time; days to colour that do not say nothing of green fruit", () => {
    const at = (days: number) =>
      outdoors(frosty, {
        notes: [...dead, ...spare(0)],
        climatology: climatology(10, (_, d) => (d >= 288 || d < 100 ? { tMinC: -1, tMaxC: 8 } : warmDay)),
        planting: {
          ...seedling,
          setOutOn: "2026-06-01",
          daysToMaturity: { ...inDays(days), to: "colour" },
        },
      });
    expect(code(at(60))).toBe("start-again");
    expect(code(at(90))).toBe("hold-back-and-look");
  });
  test("no new leaf after 14 warm days says start again, after 13 it does not", () => {
    const withoutLeaf = (warmDays: number): PlantingState =>
      outdoors([{ tMinC: 1, tMaxC: 9 }, ...flat(20, warmDays)], {
        notes: [
          { on: dayAfter("2026-06-01", warmDays), kind: "no-new-leaf" },
          { on: "2026-06-01", kind: "spare-plants", value: 10 },
        ],
      });
    expect(code(withoutLeaf(14))).toBe("start-again");
    expect(code(withoutLeaf(13))).not.toBe("start-again");
  });
  test("of two notes the later counts: alive after dead", () => {
    const notes: Notes = [...dead, ...spare(40), { on: "2026-06-07", kind: "growing-point-alive" }];
    expect(code(outdoors(frosty, { notes }))).toBe("hold-back-and-look");
  });
  test("grown plants are not started again", () => {
    const notes: Notes = [...dead, ...spare(40), { on: "2026-06-01", kind: "first-flower" }];
    expect(code(outdoors(frosty, { notes }))).toBe("hold-back-and-look");
  });
  test("a new leaf since a cold fortnight long ago: carry on", () => {
    const extremes = [...flat(6, 5), ...flat(20, 20)];
    expect(code(outdoors(extremes))).toBe("hold-back-and-look");
    expect(code(outdoors(extremes, { notes: [{ on: "2026-06-20", kind: "new-leaf" }] }))).toBe("carry-on");
  });
});

describe("what one record must not hide in another", () => {
  const warm = { tMinC: 15, tMaxC: 25 };
  const spare: Notes = [{ on: "2026-06-02", kind: "spare-plants", value: 20 }];
  test("a single frost outside the fortnight with most cold still counts for seedlings", () => {
    // One night of frost, then mild weeks with four cool nights within the allowance that hold more degree-hours.
    const extremes = [
      { tMinC: -0.5, tMaxC: 25 },
      ...Array(20).fill(warm),
      ...Array(4).fill({ tMinC: 9, tMaxC: 20 }),
      ...Array(12).fill(warm),
    ];
    const a = advice("cold-record", outdoors(extremes));
    expect([a.decision.code, line(a, "F_watched"), a.decision.text.key]).toEqual([
      "hold-back-and-look",
      1,
      "cold-record.decision.hold-back-and-look-frost",
    ]);
  });
  test("too many cold nights count in a fortnight that has fewer degree-hours than another", () => {
    // Eight nights little below 12 C against five allowed; later two nights with more degree-hours, within bounds.
    const extremes = [
      ...Array(8).fill({ tMinC: 10.5, tMaxC: 25 }),
      ...Array(14).fill(warm),
      ...Array(2).fill({ tMinC: 7, tMaxC: 25 }),
      ...Array(15).fill(warm),
    ];
    const dose = (list: typeof extremes) => line(advice("cold-record", outdoors(list)), "D") as number;
    expect(dose(extremes.slice(22))).toBeGreaterThan(dose(extremes.slice(0, 22)));
    expect(dose(extremes.slice(22))).toBeLessThan(60);
    const a = advice("cold-record", outdoors(extremes));
    expect([a.decision.code, line(a, "N14max")]).toEqual(["hold-back-and-look", 8]);
  });
  test("the headline names the days its hours fell in, and the record its own: 4 days at 8 C are 96 h, one more at 11 C makes 120 h", () => {
    const temperatures = [...Array(4).fill(8), ...Array(21).fill(20), 11, ...Array(14).fill(20)];
    const start = Date.parse("2026-06-01T05:00:00Z");
    const readings = temperatures.flatMap((temperatureC, d) =>
      Array.from({ length: 24 }, (_, h) => ({
        at: new Date(start + (d * 24 + h) * 3_600_000).toISOString(),
        temperatureC,
      })),
    );
    const a = advice(
      "cold-record",
      outdoors(
        temperatures.map(() => warm),
        { plantTemperatures: readings },
      ),
    );
    expect([line(a, "h"), line(a, "h14max")]).toEqual([120, 96]);
    const said = [a.decision.text, ...a.steps.map((s) => s.text)].map((m) =>
      render(m, { language: "en", units: "metric" }),
    );
    expect(said[0]).toMatch(/: 96 h below 12\.?0? °C from June 1 to June 14 may/);
    expect(said.at(-1)).toMatch(/^The whole record, from June 1 on: 120 h /);
    expect(a.working.find((l) => l.symbol === "h14max")?.expression).toBe("2026-06-01 to 2026-06-14");
  });
  test("a growing point noted dead stays dead when a colder night comes after the note", () => {
    const dead: Notes = [{ on: "2026-06-05", kind: "growing-point-dead" }, ...spare];
    const first = [warm, { tMinC: 2, tMaxC: 10 }, warm, warm, warm, warm];
    const code = (next: typeof first) =>
      advice("cold-record", outdoors([...first, ...next], { notes: dead })).decision.code;
    expect(code([warm])).toBe("start-again");
    expect(code([{ tMinC: 1, tMaxC: 10 }])).toBe("start-again");
  });
  test("a new leaf clears what came before it, and nothing after it", () => {
    const leaf: Notes = [{ on: "2026-06-10", kind: "new-leaf" }];
    const cold = Array(4).fill({ tMinC: 5, tMaxC: 12 });
    const code = (extremes: typeof cold) =>
      advice("cold-record", outdoors(extremes, { notes: leaf })).decision.code;
    expect(code([...cold, ...Array(24).fill(warm)])).toBe("carry-on");
    // A worse cold before the leaf takes nothing away from the cold after it.
    expect(code([...Array(12).fill(warm), ...cold, ...Array(24).fill(warm)])).toBe("hold-back-and-look");
    expect(code([{ tMinC: 1, tMaxC: 9 }, ...Array(11).fill(warm), ...cold, ...Array(24).fill(warm)])).toBe(
      "hold-back-and-look",
    );
  });
  test("cold read at the seedlings indoors goes with them to the bed, as far back as every day was read", () => {
    const start = Date.parse("2026-05-20T05:00:00Z");
    const readings = Array.from({ length: 12 * 24 }, (_, h) => ({
      at: new Date(start + h * 3_600_000).toISOString(),
      // The 20th to the 31st of May; four days of them at 8 C.
      temperatureC: h < 96 ? 8 : 18,
    }));
    const a = advice("cold-record", outdoors(Array(3).fill(warm), { plantTemperatures: readings }));
    expect([line(a, "h"), line(a, "D"), a.decision.code]).toEqual([96, 96 * 4, "hold-back-and-look"]);
    // A day nobody read cuts it off: from the 25th on only.
    const cut = readings.filter((r) => !r.at.startsWith("2026-05-24"));
    const after = advice("cold-record", outdoors(Array(3).fill(warm), { plantTemperatures: cut }));
    expect([line(after, "h"), line(after, "h_missing")]).toEqual([0, 0]);
  });
  test("plants kept over winter: years without records are not called missing hours", () => {
    const kept = { ...seedling, sownOn: "2024-03-10", setOutOn: "2024-06-01", overwintered: true };
    const state = outdoors(Array(14).fill({ tMinC: 1, tMaxC: 6 }), { planting: kept });
    const a = advice("cold-record", state);
    expect([line(a, "h_missing"), line(a, "h_known"), line(a, "floor")]).toEqual([0, 336, 5]);
    expect(stepKeys(a)).toContain("cold-record.step.wood");
  });
  test("plants kept over winter inside are not judged by the weather outside", () => {
    const kept = { ...seedling, sownOn: "2024-03-10", overwintered: true };
    const weather = days("2026-05-01", Array(14).fill(warm));
    const a = answer("cold-record", planting({ planting: kept, weather }));
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("plantTemperatures");
  });
  test("every cover that stood is said with its figure, and the chart keeps measured and reckoned hours apart", () => {
    const state = outdoors(flat(10, 4), {
      plantTemperatures: [{ at: "2026-06-02T05:30:00Z", temperatureC: 11 }],
    });
    const covers = [
      { cover: "fleece" as const, from: "2026-06-01", to: "2026-06-02" },
      { cover: "high-tunnel" as const, from: "2026-06-03" },
    ];
    const a = advice("cold-record", { ...state, bed: { ...state.bed, covers } });
    expect(a.working.filter((l) => l.symbol === "Δcover").map((l) => l.value)).toEqual([1.1, 1.3]);
    const points = (id: string) => a.charts[0]?.series.find((s) => s.id === id)?.points ?? [];
    expect(points("measured").filter(([, t]) => t !== null)).toEqual([["2026-06-02T00:00", 11]]);
    expect(points("reconstructed").filter(([, t]) => t !== null).length).toBe(4 * 24 - 1);
  });
});

describe("whatever the weather", () => {
  const day = fc.record({
    tMinC: fc.double({ min: -8, max: 20, noNaN: true }),
    riseC: fc.double({ min: 0, max: 15, noNaN: true }),
  });
  const extremesOf = (list: { tMinC: number; riseC: number }[]) =>
    list.map(({ tMinC, riseC }) => ({ tMinC, tMaxC: tMinC + riseC }));
  const season = fc.array(day, { minLength: 15, maxLength: 40 });
  const notes = fc.array(
    fc.record({
      on: fc.integer({ min: 0, max: 14 }).map((n) => dayAfter("2026-06-01", n)),
      kind: fc.constantFrom(
        "new-leaf" as const,
        "growing-point-dead" as const,
        "growing-point-alive" as const,
      ),
    }),
    { maxLength: 3 },
  );
  const HARDER = ["carry-on", "hold-back-and-look", "start-again"];

  test("hours add up: measured and reckoned are the known, known and missing are all since the first day", () => {
    const hoursRead = fc.array(fc.integer({ min: 0, max: 14 * 24 - 1 }), { maxLength: 60 });
    fc.assert(
      fc.property(season, hoursRead, fc.nat(5), (list, read, gone) => {
        const state = outdoors(extremesOf(list));
        const at = (h: number) => new Date(Date.parse("2026-06-01T05:00:00Z") + h * 3_600_000).toISOString();
        const a = answer("cold-record", {
          ...state,
          weather: state.weather.filter((_, i) => i !== gone),
          plantTemperatures: read.map((h) => ({ at: at(h), temperatureC: 3 })),
        });
        if (a.kind !== "advice") return;
        const known = line(a, "h_known") as number;
        expect(known + (line(a, "h_missing") as number)).toBe(list.length * 24);
        const drawn = (id: string) =>
          a.charts[0]?.series.find((s) => s.id === id)?.points.filter(([, t]) => t !== null).length ?? 0;
        if (list.length <= 21) expect(drawn("measured") + drawn("reconstructed")).toBe(known);
        expect(line(a, "h") as number).toBeLessThanOrEqual(known);
        expect(line(a, "spell") as number).toBeLessThanOrEqual(line(a, "h") as number);
      }),
      { numRuns: 30 },
    );
  });
  test("a higher floor never counts fewer hours or degree-hours, and a degree more adds at most one an hour", () => {
    fc.assert(
      fc.property(
        season,
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 0, max: 8 }),
        (list, floor, more) => {
          const at = (coldFloorC: number) =>
            advice("cold-record", outdoors(extremesOf(list), { settings: { coldFloorC } }));
          const [low, high] = [at(floor), at(floor + more)];
          expect(line(high, "h") as number).toBeGreaterThanOrEqual(line(low, "h") as number);
          const gain = (line(high, "D") as number) - (line(low, "D") as number);
          expect(gain).toBeGreaterThanOrEqual(0);
          expect(gain).toBeLessThanOrEqual(more * (line(high, "h") as number) + 1e-9);
        },
      ),
      { numRuns: 30 },
    );
  });
  test("colder days never give a milder verdict, whatever was noted of new leaves and growing points", () => {
    const falls = fc.array(fc.double({ min: 0, max: 6, noNaN: true }), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(season, notes, falls, (list, noted, fall) => {
        const all: Notes = [...noted, { on: "2026-06-01", kind: "spare-plants", value: 9 }];
        const code = (extremes: ReturnType<typeof extremesOf>) =>
          advice("cold-record", outdoors(extremes, { notes: all })).decision.code;
        const mild = extremesOf(list);
        const cold = mild.map((d, i) => ({
          tMinC: d.tMinC - (fall[i] ?? 0),
          tMaxC: d.tMaxC - (fall[i] ?? 0),
        }));
        expect(HARDER.indexOf(code(cold))).toBeGreaterThanOrEqual(HARDER.indexOf(code(mild)));
      }),
      { numRuns: 60 },
    );
  });
});

describe("what is missing", () => {
  test("seedlings indoors without a thermometer: 336 h could hide 336 × 12 = 4032 C h", () => {
    const a = answer("cold-record", planting());
    expect(a.kind === "needs-more" && [a.missing[0]?.field, a.working[0]?.value]).toEqual([
      "plantTemperatures",
      4032,
    ]);
  });
  test("half the fortnight without weather is not called unharmed", () => {
    const state = outdoors(Array(14).fill({ tMinC: 15, tMaxC: 24 }));
    const a = answer("cold-record", { ...state, weather: state.weather.slice(7) });
    expect(a.kind === "needs-more" && [a.missing[0]?.field, a.working[0]?.value]).toEqual([
      "weather",
      168 * 12,
    ]);
  });
  test("a heated house needs readings inside", () => {
    const state = outdoors(flat(10, 3));
    const bed = { ...state.bed, covers: [{ cover: "heated-house" as const, from: "2026-05-01" }] };
    const a = answer("cold-record", { ...state, bed });
    expect(a.kind === "needs-more" && a.missing[0]?.measure.key).toBe("cold-record.missing.house");
  });
  test("refuses Fahrenheit called Celsius, and latitude 70", () => {
    const refused = (state: PlantingState) => {
      const a = answer("cold-record", state);
      return a.kind === "refused" ? a.problems.map((p) => p.field) : a.kind;
    };
    expect(refused(indoors(Array(48).fill(64)))).toEqual(["plantTemperatures.0.temperatureC"]);
    expect(refused(outdoors(Array(6).fill({ tMinC: 40, tMaxC: 58 })))).toEqual(["weather.0.tMaxC"]);
    const state = outdoors(flat(10, 3));
    expect(refused({ ...state, site: { ...state.site, latitudeDeg: 70 } })).toEqual(["site.latitudeDeg"]);
  });
  test("not sown, ended", () => {
    const reason = (change: Partial<PlantingState["planting"]>) => {
      const a = answer("cold-record", planting({ planting: { ...seedling, ...change } }));
      return a.kind === "does-not-apply" ? a.reason.key : a.kind;
    };
    expect([reason({ sownOn: "2026-06-01" }), reason({ endedOn: "2026-05-01" })]).toEqual([
      "cold-record.not.unsown",
      "cold-record.not.ended",
    ]);
  });
});

describe("properties", () => {
  const night = fc.record({
    tMinC: fc.double({ min: -8, max: 16, noNaN: true }),
    range: fc.double({ min: 1, max: 16, noNaN: true }),
  });
  test("a colder night never improves the record, nor the judgement", () => {
    const order = ["carry-on", "hold-back-and-look"];
    fc.assert(
      fc.property(
        fc.array(night, { minLength: 2, maxLength: 20 }),
        fc.nat(),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (nights, at, colder) => {
          const i = at % nights.length;
          const extremes = nights.map((n) => ({ tMinC: n.tMinC, tMaxC: n.tMinC + n.range }));
          const worse = extremes.map((e, d) => (d === i ? { ...e, tMinC: e.tMinC - colder } : e));
          const a = advice("cold-record", outdoors(extremes));
          const b = advice("cold-record", outdoors(worse));
          for (const symbol of ["h", "D", "spell", "F", "D14", "N14", "D14max"]) {
            expect(line(b, symbol)).toBeGreaterThanOrEqual((line(a, symbol) as number) - 1e-9);
          }
          expect(line(b, "Tmin")).toBeLessThanOrEqual(line(a, "Tmin") as number);
          expect(order.indexOf(b.decision.code)).toBeGreaterThanOrEqual(order.indexOf(a.decision.code));
        },
      ),
      { numRuns: 60 },
    );
  });
  test("the same state gives the same bytes", () => {
    const state = outdoors([...flat(8, 3), ...flat(19, 9)]);
    expect(JSON.stringify(advise(state))).toBe(JSON.stringify(advise(structuredClone(state))));
  });
});
