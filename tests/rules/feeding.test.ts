import { type Advice, type Answer, addDays, adviseState, type PlantingState, render } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dayShares, feedingDates, ratioOn } from "../../packages/rules/src/food/curve.ts";
import { demandOf } from "../../packages/rules/src/food/demand.ts";
import { N_CEILING_KG_PER_HA } from "../../packages/rules/src/food/plan.ts";
import { dosesAhead } from "../../packages/rules/src/food/pool.ts";
import { givenIfDone, openFeedings } from "../../packages/rules/src/food/unanswered.ts";
import { bed, feedingState, planting, soilTest, urea } from "./waterAndFood.ts";

const answer = (state: PlantingState): Answer => {
  const found = adviseState(state).find((a) => a.rule.id === "feeding");
  if (!found) throw new Error("feeding did not answer");
  return found;
};
const advice = (state: PlantingState): Advice => {
  const a = answer(state);
  if (a.kind !== "advice") throw new Error(`expected advice, got ${JSON.stringify(a)}`);
  return a;
};
const refusal = (state: PlantingState) => {
  const a = answer(state);
  return a.kind === "refused" ? a.problems[0] : undefined;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key);
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value;
/** A measure of a step, as a number; NaN where the step is not there. */
const measured = (a: Advice, key: string, name: string): number => {
  const param = a.steps.find((s) => s.text.key === key)?.text.params[name];
  return typeof param === "object" && "value" in param ? param.value : Number.NaN;
};
const credit = (nKgPerHaLow: number, nKgPerHaHigh = nKgPerHaLow) =>
  ({ kind: "legume", nKgPerHaLow, nKgPerHaHigh }) as const;
const withCredits = (...credits: ReturnType<typeof credit>[]) =>
  feedingState({ feeding: { materialId: "urea", method: "drip", credits } });
const compound: PlantingState["shed"][number] = {
  ...urea,
  id: "npk",
  kind: "compound",
  nPct: 5,
  p2o5Pct: 10,
  k2oPct: 15,
};
const from = (material: PlantingState["shed"][number], over: Partial<PlantingState> = {}) =>
  feedingState({
    shed: [material],
    feeding: { materialId: material.id, method: "watered-in", credits: [] },
    ...over,
  });

/** Digits that the solver of the shed keeps of an amount in kilograms. */
const SOLVER = 5;

const oneKg = {
  on: "2025-06-01",
  materialId: "urea",
  nPct: 46,
  p2o5Pct: 0,
  k2oPct: 0,
  amountKg: 1,
  areaM2: 80,
};

describe("the season's nitrogen, by hand", () => {
  test("30 t/ha × 2.4 to 5.2 kg/t = 72 to 156; middle 114 kg/ha; as urea 247.8 kg/ha, 1.983 kg on 80 m2", () => {
    const a = advice(feedingState());
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(114, 9);
    expect(a.amounts.seasonKg).toBeCloseTo((114 / 0.46) * (80 / 10_000), SOLVER);
  });
  test("a legume's 40 to 60 kg/ha leaves 114 - 50 = 64", () => {
    expect(advice(withCredits(credit(40, 60))).amounts.seasonNKgPerHa).toBeCloseTo(64, 9);
  });
  test("nitrate-N 8 mg/L in 300 mm of water brings 8 × 300 / 100 = 24 kg/ha: 114 - 24 = 90", () => {
    const a = advice(feedingState({ water: { nitrateNMgPerL: 8, irrigationMm: 300 } }));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(90, 9);
  });
  test("nitrate without the depth of water is not guessed: 114 stands, and each 100 mm is said to bring 8 kg/ha", () => {
    const a = advice(feedingState({ water: { nitrateNMgPerL: 8 } }));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(114, 9);
    const change = a.wouldChange.find((m) => m.key === "feeding.change.water-mm");
    expect(change?.params.n).toEqual({ value: 8, unit: "kg/ha" });
  });
  test("soil nitrate 20 mg/kg in 17 cm at 1300 kg/m3 is 44.2 kg/ha; half to all counts, middle 33.15", () => {
    const tests = [
      soilTest({ sampledOn: "2025-05-20", values: [{ nutrient: "NO3-N", extractant: "kcl", mgPerKg: 20 }] }),
    ];
    expect(advice(feedingState({ soilTests: tests })).amounts.seasonNKgPerHa).toBeCloseTo(114 - 33.15, 6);
  });
  test("credits above the need: none is needed, and nothing is put down as expected", () => {
    const a = advice(feedingState({ ...withCredits(credit(150)), soilTests: [] }));
    expect(a.decision.code).toBe("none-needed");
    expect(a.expected).toBeNull();
    expect(a.amounts.seasonKg).toBe(0);
  });
  test("80 t/ha would want 304 kg/ha and is held at 195 lb/A = 218.57 kg/ha (SN-228)", () => {
    const a = advice(feedingState({ planting: planting({ yieldGoalTPerHa: 80 }) }));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(218.566, 3);
    expect(keys(a)).toContain("feeding.step.ceiling");
  });
});

describe("following uptake", () => {
  const dates = feedingDates("2025-06-01", [], "2025-06-01");
  test("30 d × 1 + 35 d × 4.5 + 60 d × 3 = 367.5 parts: a day early 1, mid 4.5, in fruit 3", () => {
    const shares = dayShares(dates);
    const at = (day: string) => (shares.find((s) => s.day === day)?.n ?? 0) * 367.5;
    expect(at("2025-06-10")).toBeCloseTo(1, 9);
    expect(at("2025-07-15")).toBeCloseTo(4.5, 9);
    expect(at("2025-09-01")).toBeCloseTo(3, 9);
    expect(shares.reduce((s, d) => s + d.n, 0)).toBeCloseTo(1, 12);
    expect(shares.reduce((s, d) => s + d.k2o, 0)).toBeCloseTo(1, 12);
  });
  test("buds seen on 20 June move the rise; K2O:N is 1 until then, 1.5 halfway, 2 at set", () => {
    const seen = feedingDates("2025-06-01", [{ on: "2025-06-20", kind: "buds-visible" }], "2025-06-25");
    expect(seen.buds).toBe("2025-06-20");
    expect(ratioOn(dates, dates.buds)).toBe(1);
    expect(ratioOn(dates, addDays(dates.buds, 17))).toBeCloseTo(1 + 17 / 35, 12);
    expect(ratioOn(dates, dates.set)).toBe(2);
  });
  test("first week 114 × 7/367.5 = 2.171 kg N/ha, in urea 37.76 g on the bed, 0.151 g a plant", () => {
    const a = advice(feedingState());
    expect(a.amounts.nKgPerHa).toBeCloseTo(2.1714, 4);
    expect(a.expected?.amountKg).toBeCloseTo(0.037764, 6);
    expect(measured(a, "feeding.step.dose-bed", "plant")).toBeCloseTo(0.15106, 5);
    expect(measured(a, "feeding.step.dose-bed", "row")).toBeCloseTo(0.37764, 5);
  });
  test("the week's dose once given is not advised again the next day", () => {
    const given = {
      on: "2025-06-01",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 0.037764,
      areaM2: 80,
    };
    const a = advice(feedingState({ asOf: "2025-06-02T12:00:00Z", applications: [given] }));
    // One day of six remains open: 114 × 1/367.5 = 0.310 kg/ha.
    expect(a.amounts.nKgPerHa).toBeCloseTo(0.3102, 3);
  });
  test("50 kg/ha before planting lasts: nothing this week, and a day for the next is named", () => {
    const given = {
      on: "2025-05-28",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 0.8696,
      areaM2: 80,
    };
    const a = advice(feedingState({ applications: [given] }));
    expect(a.decision.code).toBe("none-this-week");
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo(114 - 50, 2);
    expect((a.expected?.date ?? "") > "2025-06-08").toBe(true);
  });
  test("what was missed is not made up for: on day 65 only the fruit's 180 of 367.5 parts are left", () => {
    const a = advice(feedingState({ asOf: "2025-08-05T12:00:00Z" }));
    expect(a.amounts.seasonNKgPerHa).toBeCloseTo((114 * 180) / 367.5, 6);
  });
  test("a dressing spread over more ground than the bed counts by its share: 2 kg on 160 m2 is 1 kg here", () => {
    const given = {
      on: "2025-05-28",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 2,
      areaM2: 160,
    };
    expect(line(advice(feedingState({ applications: [given] })), "A")).toBeCloseTo(
      (1 * 0.46 * 10_000) / 80,
      9,
    );
  });
  test("a banded dressing on half the bed is all this bed's: 1 kg on 40 m2 is 57.5 kg N/ha of cropped land", () => {
    const given = {
      on: "2025-05-28",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 1,
      areaM2: 40,
    };
    expect(line(advice(feedingState({ applications: [given] })), "A")).toBeCloseTo(57.5, 9);
  });
});

describe("phosphate and potash by soil test", () => {
  test("very high P: no phosphate; 5-10-15 alone is held to the 30 × 0.6 = 18 kg P2O5 the fruit removes, and nitrogen falls short", () => {
    const a = advice(from(compound));
    expect(line(a, "P2O5")).toBe(0);
    expect(keys(a)).toContain("feeding.step.mineral-unlikely");
    expect(keys(a)).toContain("feeding.step.over-p2o5");
    // 18 kg P2O5/ha is 180 kg of 5-10-15, on 80 m2 1.44 kg; it brings 9 of 114 kg N.
    expect(a.amounts.seasonKg).toBeCloseTo(1.44, SOLVER);
    expect(a.decision.text.params).toMatchObject({
      short: "some",
      missing: { value: expect.closeTo(105, 3) },
    });
  });
  test("medium K puts back what the fruit removes: 30 × middle of 2.4 to 3.6 = 90 kg K2O/ha", () => {
    expect(line(advice(feedingState()), "K2O")).toBeCloseTo(90, 9);
  });
  test("low K gives the whole crop's uptake: 30 × middle of 3.4 to 7.23 = 159.45", () => {
    const values = [{ nutrient: "K", extractant: "mehlich-3", mgPerKg: 30 } as const];
    expect(line(advice(feedingState({ soilTests: [soilTest({ values })] })), "K2O")).toBeCloseTo(159.45, 9);
  });
  test("no extractant, or no test: none is advised, and the reason is said", () => {
    const values = [{ nutrient: "K", mgPerKg: 30 } as const];
    const unnamed = advice(feedingState({ soilTests: [soilTest({ values })] }));
    const unknown = unnamed.steps.filter((s) => s.text.key === "feeding.step.mineral-unknown");
    expect(unknown.map((s) => s.text.params.why)).toEqual([
      { word: "feeding.because.no-test" },
      { word: "feeding.because.no-extractant" },
    ]);
    expect(line(unnamed, "K2O")).toBeNull();
  });
  test("a material without nitrogen is led by potash", () => {
    const sop = { ...urea, id: "sop", kind: "potassium-sulfate", nPct: 0, k2oPct: 50 } as const;
    const a = advice(from(sop));
    expect(a.amounts.seasonKg).toBeCloseTo((90 / 0.5) * (80 / 10_000), SOLVER);
    expect(keys(a)).toContain("feeding.step.short");
  });
});

describe("after cold", () => {
  // Nine days of 5 to 12 C from setting out: all nights below the floor of 12 C for young plants, five are allowed.
  const cold = Array.from({ length: 9 }, (_, i) => ({
    date: addDays("2025-06-01", i),
    tMinC: 5,
    tMaxC: 12,
  }));
  const chilled = (over: Partial<PlantingState> = {}) =>
    feedingState({ asOf: "2025-06-10T12:00:00Z", weather: cold, ...over });
  const coldRecord = (state: PlantingState) => adviseState(state).find((a) => a.rule.id === "cold-record");
  const holds = (state: PlantingState) => {
    const a = coldRecord(state);
    return a?.kind === "advice" && a.steps.some((s) => s.text.key === "cold-record.step.hold-back");
  };

  test("what the cold record holds back is held back here, said first, and nothing of it is expected", () => {
    const state = chilled();
    expect(holds(state)).toBe(true);
    const a = advice(state);
    expect(a.decision.code).toBe("hold-back");
    expect(keys(a)[0]).toBe("feeding.step.hold-back");
    expect(keys(a).filter((k) => /dose|tank|scoop|step\.next|dry|ratio/.test(k))).toEqual([]);
    expect(a.expected).toBeNull();
    expect(a.amounts).toMatchObject({ doseKg: 0, nKgPerHa: 0 });
    expect(a.stakes).toMatchObject({ harm: 0, actBy: null, reason: { key: "feeding.stakes.cold" } });
    expect(a.evidence).toContain("feeding.hold-back");
    expect(a.limits.map((m) => m.key)).toContain("feeding.limit.hold-back");
    // The first week of the table and of the chart is the next one.
    expect([a.table?.[0]?.rows[0]?.[0], a.charts[0]?.series[0]?.points[0]?.[0]]).toEqual([
      "2025-06-17",
      "2025-06-17",
    ]);
  });
  test("a new leaf noted after the cold ends the hold in both rules; as much cold after it does not", () => {
    const mild = cold.slice(0, 5).map((d) => ({ ...d, tMinC: 15, tMaxC: 25 }));
    const leafOn = (on: string, days: typeof cold) =>
      chilled({
        asOf: "2025-06-14T12:00:00Z",
        weather: days.map((d, i) => ({ ...d, date: addDays("2025-06-01", i) })),
        notes: [{ on, kind: "new-leaf" }],
      });
    // The last fortnight still holds the cold, and the rule still says to look: but the leaf came after it.
    const warmSince = leafOn("2025-06-12", [...cold, ...mild]);
    expect(coldRecord(warmSince)).toMatchObject({ decision: { code: "hold-back-and-look" } });
    expect([holds(warmSince), advice(warmSince).decision.code]).toEqual([false, "feed-this-week"]);
    // Between 5 and 12 C all of four days lies below the floor: far more than the 60 C h allowed.
    const coldSince = leafOn("2025-06-10", [...mild, ...cold]);
    expect([holds(coldSince), advice(coldSince).decision.code]).toEqual([true, "hold-back"]);
  });
  test("where the shed has nothing for it, buying stands and the hold is said before it", () => {
    const a = advice(
      chilled({ ...from({ ...urea, stockKg: 0 }), asOf: "2025-06-10T12:00:00Z", weather: cold }),
    );
    expect(a.decision).toMatchObject({ code: "buy", text: { params: { due: "none" } } });
    expect(keys(a)[0]).toBe("feeding.step.hold-back");
    expect(a.stakes.harm).toBe(0);
  });
  test("warm nights, plants kept over winter and a refused record hold nothing back", () => {
    const kept = planting({ overwintered: true });
    const fahrenheit = cold.map((d) => ({ ...d, tMinC: 52, tMaxC: 78 }));
    const warm = cold.map((d) => ({ ...d, tMinC: 16, tMaxC: 26 }));
    for (const state of [
      chilled({ weather: warm }),
      chilled({ planting: kept }),
      chilled({ weather: fahrenheit }),
      chilled({ weather: [] }),
    ]) {
      expect(holds(state)).toBe(false);
      expect(advice(state).decision.code).toBe("feed-this-week");
    }
    expect(coldRecord(chilled({ weather: fahrenheit }))?.kind).toBe("refused");
  });
});

describe("what presses this week", () => {
  test("only this week's share is at stake: (7 / 367.5)² × (1 - 20.8 / 51.2) = 0.000215, until Saturday evening", () => {
    const a = advice(feedingState());
    expect(a.stakes.harm).toBeCloseTo((1 - 20.8 / 51.2) * (7 / 367.5) ** 2, 9);
    expect(a.stakes.actBy?.slice(0, 10)).toBe("2025-06-08");
    expect(a.stakes.reason.params.share).toEqual({ value: expect.closeTo(700 / 367.5, 9), unit: "pct" });
  });
  test("a slow material's dose brings more than falls due: 1.9 % is at stake, as worded, and the dose is said apart", () => {
    // Composted, so it rots first and is given at the start; 7 of 367.5 parts of the season fall due in the first week.
    const composted = {
      ...urea,
      id: "m",
      kind: "poultry-manure",
      nPct: 3,
      manure: { animal: "poultry", composted: true },
      stockKg: 1000,
    } as const;
    const a = advice(from(composted));
    expect(a.decision.code).toBe("feed-this-week");
    const { share, more, dosed } = a.stakes.reason.params;
    expect([share, more]).toEqual([{ value: expect.closeTo(700 / 367.5, 9), unit: "pct" }, "some"]);
    const n = a.expected?.kind === "application" ? (a.expected.nKgPerHa ?? 0) : 0;
    expect(dosed).toEqual({ value: expect.closeTo((100 * n) / 114, 6), unit: "pct" });
    const said = render(a.stakes.reason, { language: "en", units: "metric" });
    expect(said).toMatch(/^What falls due this week is 1\.9 % .*; the dose serves later weeks too and is \d/);
    expect(advice(feedingState()).stakes.reason.params.more).toBe("none");
  });
  test("weeks missed before raise what this one is worth: on day 37 30 + 7 × 4.5 parts are gone, 7 × 4.5 are due", () => {
    const a = advice(feedingState({ asOf: "2025-07-08T12:00:00Z" }));
    const [missed, due] = [61.5 / 367.5, 31.5 / 367.5];
    expect(a.stakes.harm).toBeCloseTo((1 - 20.8 / 51.2) * ((missed + due) ** 2 - missed ** 2), 6);
  });
  test("nothing due this week is nothing at stake, whatever the season still needs", () => {
    const given = { ...oneKg, on: "2025-05-28", amountKg: 0.8696 };
    const a = advice(feedingState({ applications: [given] }));
    expect(a.amounts.seasonNKgPerHa).toBeGreaterThan(50);
    expect(a.stakes).toMatchObject({ harm: 0, actBy: null });
  });
  test("a dose that cannot be given for want of material presses as much", () => {
    const chosen = advice(feedingState()).stakes;
    const noneChosen = advice(feedingState({ shed: [], feeding: { method: "drip", credits: [] } })).stakes;
    const noneLeft = advice(from({ ...urea, stockKg: 0 })).stakes;
    expect([noneChosen, noneLeft]).toEqual([chosen, chosen]);
  });
  test("potash alone presses a little", () => {
    const sop = { ...urea, id: "sop", kind: "potassium-sulfate", nPct: 0, k2oPct: 50 } as const;
    const { stakes } = advice(
      from(sop, { feeding: { materialId: "sop", method: "watered-in", credits: [credit(150)] } }),
    );
    expect(stakes.reason.key).toBe("feeding.stakes.mineral");
    expect(stakes.harm).toBe(0.001);
  });
});

describe("an amount that can be weighed", () => {
  const quarter = bed({ lengthM: bed().lengthM / 4 });
  const byHand = (method: PlantingState["feeding"]["method"]) =>
    advice(feedingState({ bed: quarter, feeding: { materialId: "urea", method, credits: [] } }));
  test("9.44 g a week by hand is given as three weeks at once, 28.3 g: two would be 18.9 g, under 20 g", () => {
    const a = byHand("watered-in");
    expect(a.expected?.amountKg).toBeCloseTo((0.037764 / 4) * 3, 6);
    expect(a.decision.text.params).toMatchObject({ weeks: 3, kg: { unit: "g" } });
    expect(a.expected?.nKgPerHa).toBeCloseTo(3 * 2.1714, 3);
    expect(a.amounts.seasonKg).toBeCloseTo(((114 / 0.46) * 20) / 10_000, SOLVER);
  });
  test("once given it serves: nothing is due in the two weeks after", () => {
    const given = { ...oneKg, on: "2025-06-01", amountKg: (0.037764 / 4) * 3, areaM2: 20 };
    const at = (asOf: string) => advice(feedingState({ bed: quarter, asOf, applications: [given] }));
    expect(at("2025-06-08T12:00:00Z").decision.code).toBe("none-this-week");
    expect(at("2025-06-20T12:00:00Z").decision.code).toBe("feed-this-week");
  });
  test("drip stays weekly, however little it is", () => {
    expect(byHand("drip").expected?.amountKg).toBeCloseTo(0.037764 / 4, 6);
  });
  test("37.8 g a week can be weighed and stays weekly, with three weeks at once as the other way", () => {
    const a = advice(feedingState({ feeding: { materialId: "urea", method: "banded", credits: [] } }));
    expect(a.decision.text.params.weeks).toBe(1);
    expect(measured(a, "feeding.step.dry", "bed")).toBeCloseTo(3 * 37.764, 2);
  });
});

test("the first step is what to do, the season's sums come last", () => {
  const given = keys(advice(withCredits(credit(40, 60))));
  expect(given[0]?.startsWith("feeding.step.dose-bed")).toBe(true);
  expect(given.at(-1)).toBe("feeding.step.need-credited");
  expect(keys(advice(feedingState({ shed: [], feeding: { method: "drip", credits: [] } })))[0]).toBe(
    "feeding.step.choose",
  );
});

describe("material, shed and containers", () => {
  test("nothing in the shed that may be used: the nutrients stand, and a material is asked for", () => {
    const a = advice(feedingState({ shed: [], feeding: { method: "drip", credits: [] } }));
    expect(a.decision.code).toBe("choose-material");
    expect(a.amounts.nKgPerHa).toBeCloseTo(2.1714, 4);
  });
  test("1 kg in the shed against 1.983 kg: takes 1 kg and says 983 g short", () => {
    const a = advice(from({ ...urea, stockKg: 1 }));
    expect(a.amounts.seasonKg).toBeCloseTo(1, SOLVER);
    expect(a.amounts.shortfallKg).toBeCloseTo(0.98261, 5);
    expect(keys(a)).toContain("feeding.step.shortfall");
  });
  test("an empty shed says buy; an unknown stock is said to be unknown", () => {
    expect(advice(from({ ...urea, stockKg: 0 })).decision.code).toBe("buy");
    const { stockKg: _, ...unweighed } = urea;
    expect(keys(advice(from(unweighed)))).toContain("feeding.step.stock-unknown");
  });
  test("containers are fed by their own rule: no dose here, and no share of the shed", () => {
    const pots = bed({ kind: "containers", containers: { count: 40, volumeL: 20 } });
    expect(answer(feedingState({ bed: pots }))).toMatchObject({
      kind: "does-not-apply",
      reason: { key: "feeding.containers" },
    });
    expect(demandOf(feedingState({ bed: pots }))).toBeUndefined();
    expect(demandOf(feedingState())?.needs.some((n) => n.leastKgPerHa > 0)).toBe(true);
  });
  test("cautions travel: handling, leaching, law; urea with ash and on the surface; backflow on drip", () => {
    const ids = advice(feedingState()).cautions.map((c) => c.id);
    for (const id of [
      "fertiliser-handling",
      "nitrate-leaching",
      "nutrient-law",
      "ash-not-with-ammonium",
      "urea-work-in",
      "backflow",
      "local-rules-first",
    ]) {
      expect(ids).toContain(id);
    }
  });
});

describe("what it refuses or cannot say", () => {
  test.each(["prohibited", "unknown"] as const)("a material %s on a certified bed", (certifiedUse) => {
    const state = from({ ...urea, certifiedUse }, { bed: bed({ certification: "certified" }) });
    expect(refusal(state)).toMatchObject({ field: "feeding.materialId", received: "urea" });
  });
  test("a restricted one passes with its caution", () => {
    const restricted = { ...urea, certifiedUse: "restricted", certifiedProofUntil: "2025-12-31" } as const;
    const on = { bed: bed({ certification: "certified" }) };
    expect(advice(from(restricted, on)).cautions.map((c) => c.id)).toContain("certifier-first");
    const { certifiedProofUntil: _, ...undated } = restricted;
    expect(refusal(from(undated, on))?.message).toContain("no last day of its proof");
  });
  test("what does not dissolve, by drip", () => {
    const meal = { ...urea, id: "b", kind: "blood-meal", nPct: 12, soluble: false } as const;
    const state = from(meal, { feeding: { materialId: "b", method: "drip", credits: [] } });
    expect(refusal(state)?.field).toBe("feeding.method");
  });
  test("raw manure, on any ground and before plants as well: the manure rule says when it may be spread", () => {
    const manure = { ...urea, id: "m", kind: "manure", nPct: 0.6, certifiedUse: "allowed" } as const;
    const planned = planting({ setOutOn: undefined, plannedSetOutOn: "2025-06-10" });
    const certified = bed({ certification: "certified" });
    for (const over of [{}, { planting: planned }, { bed: certified }]) {
      const said = refusal(from(manure, over));
      expect(said?.field).toBe("feeding.materialId");
      expect(said?.message).toMatch(/205\.203.*manure-timing/);
    }
  });
  test.each([
    ["manure", "cattle"],
    ["poultry-manure", "poultry"],
  ] as const)(
    "composted %s is given on a standing crop without the words against raw manure",
    (kind, animal) => {
      const composted = { ...urea, id: "m", kind, nPct: 3, manure: { animal, composted: true } } as const;
      const said = advice(from(composted));
      expect(said.decision.code).toBe("feed-this-week");
      const ids = said.cautions.map((c) => c.id);
      expect(ids).not.toContain("manure-raw");
      expect(ids).toEqual(expect.arrayContaining(["grade-varies", "organic-dust"]));
    },
  );
  test("wood ash, a material not in the shed, and an application of a day to come", () => {
    expect(refusal(from({ ...urea, kind: "wood-ash" }))?.field).toBe("feeding.materialId");
    expect(refusal(feedingState({ shed: [] }))?.field).toBe("feeding.materialId");
    const later = {
      on: "2025-06-02",
      materialId: "urea",
      nPct: 46,
      p2o5Pct: 0,
      k2oPct: 0,
      amountKg: 1,
      areaM2: 80,
    };
    expect(refusal(feedingState({ applications: [later] }))?.field).toBe("applications.0.on");
  });
  test("no yield goal: 13.4 t/ha × 2.4 = 32 to 56 t/ha × 5.2 = 291 kg/ha says how far it moves", () => {
    const a = answer(feedingState({ planting: planting({ yieldGoalTPerHa: undefined }) }));
    if (a.kind !== "needs-more") throw new Error(a.kind);
    expect(a.missing[0]?.field).toBe("planting.yieldGoalTPerHa");
    const moved = (name: string) => a.missing[0]?.couldMove.params[name];
    expect(moved("low")).toMatchObject({ unit: "kg/ha", value: expect.closeTo(32.16, 6) });
    expect(moved("high")).toMatchObject({ unit: "kg/ha", value: expect.closeTo(291.2, 6) });
  });
  test("no setting-out day is asked for; cleared or past its season does not arise", () => {
    const noDay = answer(feedingState({ planting: planting({ setOutOn: undefined }) }));
    expect(noDay.kind === "needs-more" && noDay.missing[0]?.field).toBe("planting.setOutOn");
    expect(answer(feedingState({ planting: planting({ endedOn: "2025-06-01" }) })).kind).toBe(
      "does-not-apply",
    );
    expect(answer(feedingState({ asOf: "2025-10-05T12:00:00Z" })).kind).toBe("does-not-apply");
  });
  test("planned for later: not yet, from the planned day", () => {
    const p = planting({ setOutOn: undefined, plannedSetOutOn: "2025-06-10" });
    const a = advice(feedingState({ planting: p }));
    expect(a.decision.code).toBe("not-yet");
    expect(a.expected?.date).toBe("2025-06-10");
  });
});

describe("feeding nobody answered", () => {
  const unanswered = [{ rule: "feeding", issuedOn: "2025-05-30", due: "2025-06-01", nKgPerHa: 10 }];
  test("is taken as given, so nothing is given twice; both cases are carried", () => {
    const a = advice(feedingState({ unanswered }));
    expect(a.decision.code).toBe("none-this-week");
    expect(a.cases.map((c) => c.decision.key)).toEqual([
      "feeding.decision.none-this-week",
      "feeding.decision.feed-this-week",
    ]);
  });
  test("phosphate and potash of all its materials count: on 80 m2 0.4 kg at 46 % P2O5 is 23 kg/ha, 0.8 kg at 50 % K2O 50", () => {
    const tsp = {
      ...urea,
      id: "tsp",
      kind: "triple-superphosphate",
      nPct: 0,
      p2o5Pct: 46,
      k2oPct: 0,
    } as const;
    const sop = { ...urea, id: "sop", kind: "potassium-sulfate", nPct: 0, k2oPct: 50 } as const;
    const dose = {
      ...{ rule: "feeding", issuedOn: "2025-05-30", due: "2025-06-01" },
      ...{ materialId: "urea", amountKg: 0.08, nKgPerHa: 4.6 },
    };
    const alongside = [
      { materialId: "tsp", amountKg: 0.4 },
      { materialId: "sop", amountKg: 0.8 },
    ];
    const shed = [urea, tsp, sop];
    const state = feedingState({ shed, unanswered: [{ ...dose, alongside }] });
    const [given] = givenIfDone(openFeedings(state, "2025-06-01"), state);
    expect(given?.nKgPerHa).toBe(4.6);
    expect(given?.p2o5KgPerHa).toBeCloseTo(23, 9);
    expect(given?.k2oKgPerHa).toBeCloseTo(50, 9);
    // Nobody said the nitrogen: 0.08 kg of urea on 80 m2 is 4.6 kg/ha.
    const { nKgPerHa: _, ...unsaid } = dose;
    expect(givenIfDone([{ ...unsaid, alongside }], state)[0]?.nKgPerHa).toBeCloseTo(4.6, 9);
    // The season's 90 of K2O for 30 t (the fruit's removal) is 40 then.
    expect(demandOf(state)?.needs.find((n) => n.nutrient === "K2O")?.leastKgPerHa).toBeCloseTo(40, 6);
  });
});

describe("properties", () => {
  test("weekly doses sum to what the rest of the season takes less the pool, or to none", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 220, noNaN: true }),
        fc.double({ min: 0, max: 150, noNaN: true }),
        fc.integer({ min: 0, max: 124 }),
        (season, early, day) => {
          const shares = dayShares(feedingDates("2025-06-01", [], "2025-06-01")).map((d) => ({
            day: d.day,
            share: d.n,
          }));
          const when = addDays("2025-06-01", day);
          const plan = dosesAhead({
            shares,
            seasonKgPerHa: season,
            given: [{ on: "2025-05-20", kgPerHa: early }],
            from: when,
          });
          const ahead = shares.filter((s) => s.day >= when).reduce((sum, s) => sum + s.share * season, 0);
          const doses = plan.weeks.reduce((sum, w) => sum + w.kgPerHa, 0);
          expect(Math.abs(doses - Math.max(0, ahead - plan.poolKgPerHa))).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 200, seed: 56 },
    );
  });
  test("higher credits never raise nitrogen, this week's or the season's; none passes the ceiling", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.integer({ min: 0, max: 120 }),
        (low, more, day) => {
          const asOf = `${addDays("2025-06-01", day)}T12:00:00Z`;
          const given = {
            on: "2025-05-28",
            materialId: "urea",
            nPct: 46,
            p2o5Pct: 0,
            k2oPct: 0,
            amountKg: 0.2,
            areaM2: 80,
          };
          const at = (n: number) =>
            advice({ ...withCredits(credit(n)), asOf, applications: [given] }).amounts;
          const [fewer, higher] = [at(low), at(low + more)];
          expect(higher.nKgPerHa).toBeLessThanOrEqual((fewer.nKgPerHa ?? 0) + 1e-9);
          expect(higher.seasonNKgPerHa).toBeLessThanOrEqual((fewer.seasonNKgPerHa ?? 0) + 1e-9);
          expect(fewer.seasonNKgPerHa).toBeLessThanOrEqual(N_CEILING_KG_PER_HA);
        },
      ),
      { numRuns: 60, seed: 56 },
    );
  });
  test("the same state gives the same bytes, and every message can be said", () => {
    const state = from(compound, {
      unanswered: [{ rule: "feeding", issuedOn: "2025-05-30", due: "2025-06-01", nKgPerHa: 3 }],
    });
    expect(JSON.stringify(adviseState(state))).toBe(
      JSON.stringify(adviseState(JSON.parse(JSON.stringify(state)))),
    );
    const a = advice(state);
    for (const m of [a.decision.text, ...a.steps.map((s) => s.text), ...a.limits, ...a.wouldChange]) {
      for (const units of ["metric", "us"] as const)
        expect(render(m, { language: "en", units })).not.toContain("{");
    }
  });
});
