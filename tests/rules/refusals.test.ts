import { type Answer, advise, DomainError, type PlantingState } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { climatology, planting as seedlings } from "./warmthStates.ts";
import { bed, bedState, feedingState, planting, soilTest, valve, weather } from "./waterAndFood.ts";

/**
 * The refusals of the catalogue in one list: at the door (the state is not taken at all) or by a rule (an answer that is
 * stored). Each names the field; the bound or what would be accepted stands beside it.
 */

const door = (state: unknown) => {
  try {
    advise(state);
  } catch (error) {
    if (error instanceof DomainError) return error.problems[0];
    throw error;
  }
  throw new Error("the state was taken");
};
const refusal = (rule: string, state: unknown) => {
  const answer: Answer | undefined = advise(state).find((a) => a.rule.id === rule);
  if (answer?.kind !== "refused") throw new Error(`${rule} answered ${answer?.kind}`);
  return answer.problems[0];
};
const json = (state: unknown) => JSON.parse(JSON.stringify(state));

describe("at the door", () => {
  test.each([
    ["pH 19", bedState({ soilTests: [soilTest({ waterPh: 19 })] }), "soilTests.0.waterPh", "12"],
    [
      "a sampling depth of -5 cm",
      bedState({ soilTests: [soilTest({ depthCm: -5 })] }),
      "soilTests.0.depthCm",
      "1",
    ],
    [
      "root depth of -0.3 m",
      valve({ zones: [{ bed: bed(), planting: planting(), notes: [], rootDepthM: -0.3 }] }),
      "zones.0.rootDepthM",
      "0.05",
    ],
    ["rain of -1 mm", valve({ weather: weather("2025-06-01", 2, { rainMm: -1 }) }), "weather.0.rainMm", "0"],
    [
      "a maximum of 86 C",
      valve({ weather: weather("2025-06-01", 2, { tMaxC: 86 }) }),
      "weather.0.tMaxC",
      "60",
    ],
    [
      "set out before it was sown",
      feedingState({ planting: planting({ setOutOn: "2025-03-01" }) }),
      "planting.setOutOn",
      "",
    ],
    [
      "planned before it was sown",
      feedingState({ planting: planting({ plannedSetOutOn: "2025-03-01" }) }),
      "planting.plannedSetOutOn",
      "",
    ],
    [
      "a maximum below the minimum",
      valve({ weather: weather("2025-06-01", 2, { tMaxC: 10, tMinC: 12 }) }),
      "weather.0.tMaxC",
      "",
    ],
    [
      "a wilting point above field capacity",
      valve({
        zones: [
          { bed: bed({ soil: { fieldCapacity: 0.2, wiltingPoint: 0.3 } }), planting: planting(), notes: [] },
        ],
      }),
      "zones.0.bed.soil.wiltingPoint",
      "",
    ],
  ])("%s", (_, state, field, bound) => {
    const problem = door(json(state));
    expect(problem?.field).toBe(field);
    expect(`${problem?.message} ${problem?.accepted}`).toContain(bound);
  });
});

describe("a station's year", () => {
  const [year] = climatology(1, () => ({ tMinC: 4, tMaxC: 12 })).years;
  const withMinima = (tMinC: unknown) =>
    seedlings({ climatology: { stationId: "s", years: [{ ...year, tMinC }] } as never });
  const ofDay = (i: number, value: unknown) => Array.from({ length: 365 }, (_, d) => (d === i ? value : 4));

  test.each([
    ["61 C on the fourth day", ofDay(3, 61), ".3", "at most 60"],
    ["-71 C on the last", ofDay(364, -71), ".364", "at least -70"],
    ["a word", ofDay(7, "cold"), ".7", "number"],
    ["no number", ofDay(7, Number.NaN), ".7", "number"],
    ["364 days", Array(364).fill(4), "", "at least 365"],
    ["367 days", Array(367).fill(4), "", "at most 366"],
    ["no days at all", undefined, "", "array"],
  ])("%s is named with its bound", (_, tMinC, at, accepted) => {
    expect(door(withMinima(tMinC))).toMatchObject({ field: `climatology.years.0.tMinC${at}`, accepted });
  });
});

describe("by a rule", () => {
  const hot = Array.from({ length: 6 }, (_, i) => ({ date: `2026-05-0${i + 1}`, tMaxC: 58, tMinC: 40 }));
  const cool = climatology(20, () => ({ tMinC: 4, tMaxC: 12 }));
  const young: PlantingState = seedlings({ climatology: cool });

  test.each([
    ["set-out", { ...young, weather: hot }],
    ["setting-depth", { ...young, weather: hot }],
    [
      "cold-record",
      seedlings({ weather: hot, planting: { ...seedlings().planting, setOutOn: "2026-05-01" } }),
    ],
    ["irrigate", valve({ weather: weather("2025-06-01", 40, { tMaxC: 55, tMinC: 45 }) })],
  ])("%s: Fahrenheit that claims Celsius", (rule, state) => {
    const problem = refusal(rule, json(state));
    expect(problem?.field).toBe("weather.0.tMaxC");
    expect(problem?.message).toContain("Fahrenheit");
  });

  test.each([
    ["set-out", { ...young, forecast: { issuedAt: "2026-05-14T11:00:00Z", days: [] } }],
    ["irrigate", valve({ forecast: { issuedAt: "2025-07-10T10:00:00Z", days: [] } })],
  ])("%s: a forecast older than a day", (rule, state) => {
    const problem = refusal(rule, json(state));
    expect(problem?.field).toBe("forecast.issuedAt");
    expect(problem?.accepted).toContain("24 h");
  });

  test("soil-reading: a soil test without an extractant", () => {
    const { waterPh: _, ...unread } = soilTest({ values: [{ nutrient: "P", mgPerKg: 30 }] });
    const problem = refusal("soil-reading", json(bedState({ soilTests: [unread] })));
    expect(problem?.field).toBe("soilTests.0.values.0.extractant");
    expect(problem?.accepted).toContain("mehlich-3");
  });

  test("feeding and soil-reading: a test, or an application, of a day to come", () => {
    const later = [soilTest({ sampledOn: "2026-01-01" })];
    for (const state of [bedState({ soilTests: later }), feedingState({ soilTests: later })]) {
      const rule = state.kind === "bed" ? "soil-reading" : "feeding";
      expect(refusal(rule, json(state))?.field).toBe("soilTests.0.sampledOn");
    }
  });

  test("feeding: raw manure on a standing crop of certified ground, and a material that is not in the shed", () => {
    const manure = { ...feedingState().shed[0], id: "m", kind: "manure", certifiedUse: "allowed" };
    const state = feedingState({
      bed: bed({ certification: "certified" }),
      feeding: { materialId: "m", method: "banded", credits: [] },
    });
    expect(refusal("feeding", json({ ...state, shed: [manure] }))?.message).toContain("205.203");
    expect(refusal("feeding", json({ ...state, shed: [] }))?.field).toBe("feeding.materialId");
  });
});
