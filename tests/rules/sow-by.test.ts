import { type PlantingState, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { binomialAtLeast, fewestSeeds } from "../../packages/rules/src/quantities/statistics/seedsToSow.ts";
import { advice, answer, climatology, line, planting, stepKeys } from "./warmthStates.ts";

type Change = Partial<PlantingState["planting"]>;
const unsown = (change: Change = {}, state: Partial<PlantingState> = {}): PlantingState =>
  planting({
    asOf: "2026-02-01T12:00:00Z",
    ...state,
    planting: {
      ...planting().planting,
      sownOn: "2026-04-01",
      plannedSetOutOn: "2026-06-01",
      propagation: { mediumC: 25, germinationPct: 90, lossPct: 10 },
      ...change,
    },
  });
const medium = (mediumC: number): Change => ({ propagation: { mediumC } });

describe("seeds", () => {
  test("10 of 12 at 0.9: 0.9^12 + 12 × 0.1 × 0.9^11 + 66 × 0.01 × 0.9^10 = 0.88913 (summed by hand)", () => {
    expect(binomialAtLeast(10, 12, 0.9)).toBeCloseTo(0.88913, 5);
  });
  test("the tail agrees with the binomial summed term by term, by another way", () => {
    const logChoose = (n: number, k: number): number => {
      let sum = 0;
      for (let i = 1; i <= k; i++) sum += Math.log((n - k + i) / i);
      return sum;
    };
    const summed = (k: number, n: number, p: number): number => {
      let sum = 0;
      for (let x = k; x <= n; x++)
        sum += Math.exp(logChoose(n, x) + x * Math.log(p) + (n - x) * Math.log(1 - p));
      return sum;
    };
    for (const [k, n, p] of [
      [1, 1, 0.5],
      [20, 30, 0.7],
      [200, 251, 0.828],
      [900, 1000, 0.9],
    ] as const) {
      expect(Math.abs(binomialAtLeast(k, n, p) - summed(k, n, p))).toBeLessThan(1e-9);
    }
  });
  test("10 plants at 0.81 a seed: 14 seeds give 89.07 % by their sum, 15 give 95.10 %: 15", () => {
    const a = advice("sow-by", unsown({ plants: 10 }));
    expect(line(a, "q")).toBeCloseTo(0.81, 12);
    expect(a.amounts.seeds).toBe(15);
  });
  test("more loss never takes fewer seeds, and the count is the fewest that does", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 20, max: 100 }),
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 0, max: 15 }),
        (plants, germinationPct, lossPct, more) => {
          const per = (loss: number) => (germinationPct / 100) * (1 - loss / 100);
          const few = fewestSeeds(plants, per(lossPct), 0.9);
          expect(fewestSeeds(plants, per(lossPct + more), 0.9)).toBeGreaterThanOrEqual(few);
          expect(binomialAtLeast(plants, few, per(lossPct))).toBeGreaterThanOrEqual(0.9);
          expect(binomialAtLeast(plants, few - 1, per(lossPct))).toBeLessThan(0.9);
        },
      ),
    );
  });
  test("seeds that all come up and are all kept: as many as plants", () => {
    const sure = quantities["seeds-to-sow"]?.compute({
      plants: 40,
      germinationPct: 100,
      lossPct: 0,
      chance: 0.9,
    });
    expect(sure?.value).toEqual({ seeds: 40, expectedPlants: 40 });
  });
  test("a packet cannot beat the medium: at 15 C only 70 of 100 come up, whatever it says", () => {
    const a = advice("sow-by", unsown({ propagation: { mediumC: 15, germinationPct: 95, lossPct: 0 } }));
    expect(line(a, "g_used")).toBe(70);
  });
});

describe("dates", () => {
  test("25 C: 8 days and six weeks before 1 June is 12 April, and eight weeks is 29 March", () => {
    const a = advice("sow-by", unsown());
    expect(a.decision.code).toBe("sow");
    expect(a.window).toMatchObject({ from: "2026-03-29", to: "2026-04-12" });
    expect(a.stakes.actBy).toBe("2026-04-12T23:00:00Z");
  });
  test.each([
    ["2026-04-13", "sow-earlier"],
    ["2026-04-12", "sow"],
    ["2026-03-29", "sow"],
    ["2026-03-28", "sow-later"],
  ])("sown on %s for 1 June: %s", (sownOn, code) => {
    expect(advice("sow-by", unsown({ sownOn })).decision.code).toBe(code);
  });
  test("on 13 April the day is past: sown today, six weeks and 8 days make it 2 June", () => {
    const a = advice("sow-by", unsown({ sownOn: "2026-04-20" }, { asOf: "2026-04-13T12:00:00Z" }));
    expect(a.decision.code).toBe("too-late");
    expect(a.decision.text.params.soonest).toEqual({ day: "2026-06-02" });
  });
  test("a cooler medium never lets one sow later, between the limits of the table", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (warm, less) => {
          const by = (c: number) => advice("sow-by", unsown(medium(c))).window.to ?? "";
          expect(by(Math.max(15, warm - less)) <= by(warm)).toBe(true);
        },
      ),
      { numRuns: 30 },
    );
  });
  test("20 C takes 13 days and 25 C 8: a warmer medium saves 5, and mats come with their caution", () => {
    const a = advice("sow-by", unsown(medium(20)));
    const step = a.steps.find((s) => s.text.key === "sow-by.step.warmer");
    expect(step?.text.params.days).toEqual({ value: 5, unit: "days" });
    expect(a.cautions.map((c) => c.id)).toContain("heater-fitting");
    expect(stepKeys(advice("sow-by", unsown(medium(25))))).not.toContain("sow-by.step.warmer");
  });
  test.each([10, 14.9, 35.1, 40])("a medium of %f C is refused by name, with its bounds", (mediumC) => {
    const a = answer("sow-by", unsown(medium(mediumC)));
    expect(a.kind === "refused" && a.problems[0]).toMatchObject({
      field: "planting.propagation.mediumC",
      accepted: "15 to 35 C",
      received: mediumC,
    });
  });
  test("a warm place to grow on is not reckoned with, and that is said", () => {
    const a = advice("sow-by", unsown({ propagation: { mediumC: 25, growingC: 24 } }));
    expect(a.window.to).toBe("2026-04-12");
    expect(a.estimated.map((e) => e.input)).toContain("weeks of raising");
    expect(a.limits.map((l) => l.key)).toContain("sow-by.limit.not-adjusted");
  });
});

describe("without a planned day", () => {
  const { plannedSetOutOn: _, ...open } = unsown().planting;
  /** Below 5 C before the 150th day, warm after it, in every year. */
  const spring = climatology(12, (_y, d) =>
    d < 150 || d > 270 ? { tMinC: 2, tMaxC: 8 } : { tMinC: 16, tMaxC: 28 },
  );

  test("it is set-out's earliest day by past years, and the weeks count back from it", () => {
    const a = advice(
      "sow-by",
      planting({ asOf: "2026-02-01T12:00:00Z", planting: open, climatology: spring }),
    );
    const out = line(a, "t_out") as string;
    // Index 150 is 31 May; soil lags the air, so the day is later, but no later than soil from 8 C needs.
    expect(out > "2026-05-30" && out < "2026-06-25").toBe(true);
    expect(a.window.to).toBe(
      new Date(Date.parse(`${out}T00:00:00Z`) - 50 * 86_400_000).toISOString().slice(0, 10),
    );
  });
  test("nobody planned and nothing tells: the planned day is asked for", () => {
    const a = answer("sow-by", planting({ asOf: "2026-02-01T12:00:00Z", planting: open }));
    expect(a.kind === "needs-more" && a.missing[0]?.field).toBe("planting.plannedSetOutOn");
  });
});

test("seeds already sown, plants kept over winter: the question does not arise", () => {
  const kind = (change: Change) => answer("sow-by", unsown(change)).kind;
  expect(kind({ sownOn: "2026-01-10" })).toBe("does-not-apply");
  expect(kind({ overwintered: true })).toBe("does-not-apply");
});
