import { advise, type PlantingState } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { advice, answer, days, line, planting, stepKeys } from "./warmthStates.ts";

type Notes = PlantingState["notes"];
const soil = (value: number): Notes =>
  [13, 14, 15].map((d) => ({ on: `2026-05-${d}`, kind: "soil-temperature-10cm-c", value }));
const leggy: Notes = [{ on: "2026-05-14", kind: "leggy" }];
const green: Notes = [{ on: "2026-05-14", kind: "stem-green" }];
const woody: Notes = [{ on: "2026-05-14", kind: "stem-woody" }];
const at = (notes: Notes, change: Partial<PlantingState> = {}) =>
  advice("setting-depth", planting({ notes, ...change }));
const because = (a: ReturnType<typeof at>) =>
  stepKeys(a).find((key) => key.startsWith("setting-depth.because."));

describe("setting depth", () => {
  test("leggy, green, soil at 19 C (18 wanted): to the seed leaves, at most 5 cm, and says it went with the trials", () => {
    const a = at([...leggy, ...green, ...soil(19)]);
    expect(a.decision.code).toBe("seed-leaves");
    expect(a.amounts).toEqual({ buriedStemCm: 5 });
    expect(a.limits[0]).toEqual({
      key: "setting-depth.limit.differ",
      params: { way: { word: "setting-depth.way.seed-leaves" } },
    });
    expect(a.evidence).toContain("setting-depth.lodging");
    expect(a.evidence).toContain("setting-depth.trade-rule");
    expect(a.grade).toBe("moderate");
    expect(stepKeys(a)).not.toContain("setting-depth.step.stake");
  });
  test("the same plants in soil at 17.9 C: the root ball, a stake, and says it went with the trade's rule", () => {
    const a = at([...leggy, ...green, ...soil(17.9)]);
    expect([a.decision.code, because(a)]).toEqual(["root-ball", "setting-depth.because.soil-cold"]);
    expect(a.limits[0]?.params.way).toEqual({ word: "setting-depth.way.root-ball" });
    expect(stepKeys(a)).toContain("setting-depth.step.stake");
    expect(a.cautions.map((c) => c.id)).toContain("stake-ends");
  });
  test("never a woody stem, in however warm a soil", () => {
    const a = at([...leggy, ...woody, ...soil(24)]);
    expect([a.decision.code, because(a), a.amounts.buriedStemCm]).toEqual([
      "root-ball",
      "setting-depth.because.woody",
      0,
    ]);
  });
  test("never a graft union, in however warm a soil and green a stem; the caution goes with it", () => {
    const a = at([...leggy, ...green, ...soil(24)], { planting: { ...planting().planting, grafted: true } });
    expect([a.decision.code, because(a)]).toEqual(["root-ball", "setting-depth.because.grafted"]);
    expect(a.cautions[0]?.id).toBe("graft-union-above-soil");
  });
  test("stocky plants, unknown stems and unknown soil all stay at the root ball", () => {
    expect(because(at([...green, ...soil(24)]))).toBe("setting-depth.because.not-leggy");
    expect(because(at([...leggy, ...soil(24)]))).toBe("setting-depth.because.stem-unknown");
    expect(because(at([...leggy, ...green]))).toBe("setting-depth.because.soil-unknown");
  });
  test("green on the 10th and woody on the 14th: woody counts, and it is said; the other way round green counts", () => {
    const early: Notes = [{ on: "2026-05-10", kind: "stem-green" }];
    const a = at([...leggy, ...early, ...woody, ...soil(24)]);
    expect([a.decision.code, line(a, "stem")]).toEqual(["root-ball", "woody"]);
    expect(a.limits.map((m) => m.key)).toContain("setting-depth.limit.contradicted-woody");
    const b = at([...leggy, { on: "2026-05-10", kind: "stem-woody" }, ...green, ...soil(24)]);
    expect([b.decision.code, line(b, "stem")]).toEqual(["seed-leaves", "green"]);
    expect(b.limits.map((m) => m.key)).toContain("setting-depth.limit.contradicted-green");
  });
  test("both on one day: woody counts, the worse mistake", () => {
    expect(line(at([...leggy, ...green, ...woody, ...soil(24)]), "stem")).toBe("woody");
  });
  test("soil modelled from 20 days at a steady 20 C: 20 × (0.95 + 0.05 e^1.2) = 22.32 C, marked estimated", () => {
    const weather = days("2026-04-25", Array(20).fill({ tMinC: 20, tMaxC: 20 }));
    const a = at([...leggy, ...green], { weather });
    expect(line(a, "Ts")).toBeCloseTo(22.3201, 4);
    expect(a.decision.code).toBe("seed-leaves");
    expect(a.estimated.map((e) => e.input)).toEqual(["soil temperature at 10 cm"]);
  });
  test("a day missing among the twenty leaves the soil unknown, not guessed", () => {
    const weather = days("2026-04-25", Array(20).fill({ tMinC: 20, tMaxC: 20 })).filter(
      (d) => d.date !== "2026-05-05",
    );
    expect(because(at([...leggy, ...green], { weather }))).toBe("setting-depth.because.soil-unknown");
  });
  test("a soil reading of a week ago is no reading of today", () => {
    const old: Notes = [{ on: "2026-05-08", kind: "soil-temperature-10cm-c", value: 24 }];
    expect(because(at([...leggy, ...green, ...old]))).toBe("setting-depth.because.soil-unknown");
  });
  test("already out, ended, not sown", () => {
    const reason = (change: Partial<PlantingState["planting"]>) => {
      const a = answer("setting-depth", planting({ planting: { ...planting().planting, ...change } }));
      return a.kind === "does-not-apply" ? a.reason.key : a.kind;
    };
    expect([
      reason({ setOutOn: "2026-05-01" }),
      reason({ endedOn: "2026-05-01" }),
      reason({ sownOn: "2026-06-01" }),
    ]).toEqual(["setting-depth.not.already-out", "setting-depth.not.ended", "setting-depth.not.unsown"]);
  });
  test("refuses weather in Fahrenheit called Celsius", () => {
    const a = answer(
      "setting-depth",
      planting({ weather: days("2026-05-05", Array(6).fill({ tMinC: 40, tMaxC: 58 })) }),
    );
    expect(a.kind === "refused" && a.problems[0]?.field).toBe("weather.0.tMaxC");
  });
  test("a sampling depth below zero is refused at the door, naming the field", () => {
    const soilTests = [{ id: "t", sampledOn: "2026-04-01", depthCm: -5, medium: "mineral-soil", values: [] }];
    expect(() => advise({ ...planting(), soilTests })).toThrow(/soilTests\.0\.depthCm: must be at least 1/);
  });
});
