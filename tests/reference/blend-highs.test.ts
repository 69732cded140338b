import highsLoader from "highs";
import { beforeAll, expect, test } from "vitest";
import { cheapest } from "../../packages/rules/src/food/blend/cheapest.ts";
import { explainUnmet } from "../../packages/rules/src/food/blend/conflicts.ts";
import { groupsOf } from "../../packages/rules/src/food/blend/groups.ts";
import { type Model, modelOf, sourcesOf } from "../../packages/rules/src/food/blend/model.ts";
import { solveShed } from "../../packages/rules/src/food/blend/solveShed.ts";
import { drawnFarm, drawnShed } from "../rules/shedStates.ts";

/**
 * The same programmes by HiGHS (Huangfu, Q., Hall, J.A.J. 2018, Mathematical Programming Computation 10:119-142), an independent
 * solver. Both keep rows to about 1e-7, so costs agree to 1e-6 of the cost, or of one unit of money where the cost is less.
 */
const SLOW_MS = 120_000;
let highs: Awaited<ReturnType<typeof highsLoader>>;
beforeAll(async () => {
  highs = await highsLoader();
});

/** A condition that no column is in, and that cannot hold as it stands. */
const plainlyUnmet = (model: Model) =>
  model.rows.some((r) => r.terms.length === 0 && (r.sense === "least" ? r.limit > 0 : r.limit < 0));

function byHighs(model: Model, gap = 0): { status: string; cost: number } {
  if (plainlyUnmet(model)) return { status: "Infeasible", cost: Number.NaN };
  const term = (a: number, j: number) => `${a < 0 ? "-" : "+"} ${Math.abs(a)} x${j}`;
  const rows = model.rows.filter((r) => r.terms.length > 0);
  const whole = model.columns.flatMap((c, j) => (c.whole ? [`x${j}`] : []));
  const text = [
    "Minimize",
    ` obj: ${model.columns.map((c, j) => term(c.cost, j)).join("\n ")}`,
    "Subject To",
    ...rows.map((r, i) => {
      const left = r.terms.map(([j, a]) => term(a, j)).join("\n ");
      return ` r${i}: ${left} ${r.sense === "least" ? ">=" : "<="} ${r.limit}`;
    }),
    ...(whole.length > 0 ? ["General", ` ${whole.join("\n ")}`] : []),
    "End",
  ].join("\n");
  const solved = highs.solve(text, { mip_rel_gap: gap, mip_abs_gap: 1e-9 });
  return { status: solved.Status, cost: solved.ObjectiveValue };
}

/** HiGHS may stop so near to its own bound on a farm [relative]. */
const NEAR = 1e-3;

const CASES = Array.from({ length: 240 }, (_, i) => ({
  seed: 1000 + i,
  plantings: 1 + (i % 3),
  bags: i % 2 === 0,
}));

test(
  "240 drawn sheds, loose and by the bag: HiGHS gives the same verdict and the same least cost",
  () => {
    const seen = { met: 0, unmet: 0, bags: 0 };
    const differ: unknown[] = [];
    for (const { seed, plantings, bags } of CASES) {
      const { shed, demands } = drawnShed(seed, plantings, bags);
      const model = modelOf(groupsOf(demands), sourcesOf(shed));
      if (model.columns.length === 0) continue;
      const ours = cheapest(model);
      const theirs = byHighs(model);
      if (theirs.status === "Infeasible") seen.unmet++;
      else seen.met++;
      if (model.columns.some((c) => c.whole)) seen.bags++;
      const same =
        theirs.status === "Infeasible"
          ? ours === undefined
          : ours !== undefined && Math.abs(ours.cost - theirs.cost) <= 1e-6 * Math.max(1, theirs.cost);
      if (!same) differ.push({ seed, plantings, bags, ours: ours?.cost, theirs });
    }
    expect(differ).toEqual([]);
    expect(seen.met).toBeGreaterThan(60);
    expect(seen.unmet).toBeGreaterThan(60);
    expect(seen.bags).toBeGreaterThan(60);
  },
  SLOW_MS,
);

test(
  "each set of conflicting conditions cannot hold by HiGHS either, and can without any one of it",
  () => {
    let sets = 0;
    for (const { seed, plantings, bags } of CASES.slice(0, 60)) {
      const { shed, demands } = drawnShed(seed, plantings, bags);
      const model = modelOf(groupsOf(demands), sourcesOf(shed));
      if (model.columns.length === 0 || cheapest(model)) continue;
      const columns = model.columns.map((c) => ({ ...c, whole: false, cost: 0 }));
      for (const set of explainUnmet(model).conflictRows) {
        sets++;
        expect([seed, byHighs({ ...model, columns, rows: set }).status]).toEqual([seed, "Infeasible"]);
        for (const row of set) {
          const without = set.filter((r) => r !== row);
          if (without.length === 0) continue;
          expect([seed, byHighs({ ...model, columns, rows: without }).status]).toEqual([seed, "Optimal"]);
        }
      }
    }
    expect(sets).toBeGreaterThan(15);
  },
  SLOW_MS,
);

test(
  "with what is said to be short taken off the floors, HiGHS can meet every one of the sheds",
  () => {
    for (const { seed, plantings, bags } of CASES.slice(0, 60)) {
      const { shed, demands } = drawnShed(seed, plantings, bags);
      const plan = solveShed({ shed, demands });
      const eased = demands.map((d, i) => ({
        ...d,
        needs: d.needs.map((n) => {
          const short =
            plan.plantings[i]?.allotment.short.find((s) => s.nutrient === n.nutrient)?.kgPerHa ?? 0;
          return { ...n, leastKgPerHa: Math.max(0, (n.leastKgPerHa - short) * (1 - 1e-6) - 1e-6) };
        }),
      }));
      const model = modelOf(groupsOf(eased), sourcesOf(shed));
      if (model.columns.length > 0) expect([seed, byHighs(model).status]).toEqual([seed, "Optimal"]);
    }
  },
  SLOW_MS,
);

test(
  "farms too large to search whole: the stated least is never above HiGHS's, nor the plan below its bound",
  () => {
    let solved = 0;
    for (const seed of [1, 2, 4]) {
      const { shed, demands } = drawnFarm(seed, 12);
      const model = modelOf(groupsOf(demands), sourcesOf(shed));
      const ours = cheapest(model);
      const theirs = byHighs(model, NEAR);
      expect([seed, ours !== undefined]).toEqual([seed, theirs.status !== "Infeasible"]);
      if (!ours) continue;
      solved++;
      expect(ours.atLeast).toBeLessThanOrEqual(theirs.cost * (1 + 1e-6) + 1e-6);
      expect(ours.cost).toBeGreaterThanOrEqual(theirs.cost * (1 - NEAR) - 1e-6);
    }
    expect(solved).toBe(3);
  },
  SLOW_MS,
);
