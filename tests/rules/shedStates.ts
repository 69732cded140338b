import type { Demand, Material, MaterialKind } from "@pith/rules";

export const material = (
  id: string,
  kind: MaterialKind,
  [nPct, p2o5Pct, k2oPct]: readonly [number, number, number],
  over: Partial<Material> = {},
): Material => ({ id, kind, nPct, p2o5Pct, k2oPct, soluble: true, certifiedUse: "unknown", ...over });

/** Sixteen kinds with their usual grades and a price about that of the trade. */
export const SHELF: readonly (readonly [MaterialKind, readonly [number, number, number], number])[] = [
  ["urea", [46, 0, 0], 0.7],
  ["ammonium-sulfate", [21, 0, 0], 0.5],
  ["ammonium-nitrate", [34, 0, 0], 0.8],
  ["calcium-nitrate", [15.5, 0, 0], 0.7],
  ["potassium-nitrate", [13, 0, 45], 1.6],
  ["potassium-sulfate", [0, 0, 50], 1.3],
  ["potassium-chloride", [0, 0, 60], 0.7],
  ["langbeinite", [0, 0, 22], 1.1],
  ["triple-superphosphate", [0, 45, 0], 0.9],
  ["monoammonium-phosphate", [11, 52, 0], 1.1],
  ["magnesium-sulfate", [0, 0, 0], 0.6],
  ["soluble-borate", [0, 0, 0], 3],
  ["compound", [10, 10, 10], 0.8],
  ["compound", [5, 10, 15], 0.9],
  ["feather-meal", [13, 0, 0], 2],
  ["soybean-meal", [7, 0.5, 2.3], 1],
];

export const demand = (
  plantingId: string,
  areaM2: number,
  needs: Demand["needs"],
  allowed: readonly string[],
  bounds: Demand["bounds"] = {},
): Demand => ({ plantingId, areaM2, needs, bounds, allowed: [...allowed], leftOut: [] });

/** Numbers in [0, 1) that are the same on every machine (Numerical Recipes' linear congruential generator). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A shed and its demands, drawn: some stocks, some bags, some bounds; some of them cannot be met. */
export function drawnShed(
  seed: number,
  plantings: number,
  bags: boolean,
): { shed: Material[]; demands: Demand[] } {
  const draw = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * draw();
  const shed = SHELF.filter(() => draw() < 0.6).map(([kind, grade, price], i) =>
    material(`m${i}`, kind, grade, {
      ...(draw() < 0.93 && { pricePerKg: price * between(0.7, 1.4) }),
      stockKg: draw() < 0.5 ? 0 : between(0, 20),
      ...(bags && draw() < 0.7 && { bagKg: [5, 10, 20, 25][Math.floor(draw() * 4)] ?? 25 }),
      ...(draw() < 0.15 && { labelMostKgPerHa: between(50, 400) }),
    }),
  );
  const asked = [
    ["N", 150],
    ["P2O5", 80],
    ["K2O", 180],
    ["Mg", 20],
    ["S", 30],
    ["B", 1],
  ] as const;
  const demands = Array.from({ length: plantings }, (_, p) => {
    const needs = asked.flatMap(([nutrient, most]) => {
      if (draw() > 0.5) return [];
      const leastKgPerHa = between(0.2, 1) * most;
      return [
        { nutrient, leastKgPerHa, ...(draw() < 0.5 && { mostKgPerHa: leastKgPerHa * between(1.02, 1.6) }) },
      ];
    });
    const bounds = {
      ...(draw() < 0.4 && { chlorideMostKgPerHa: between(10, 120) }),
      ...(draw() < 0.4 && { ammoniumMostPct: between(20, 95) }),
      ...(draw() < 0.3 && { caToKLeast: between(0, 0.3) }),
    };
    return demand(
      `p${p}`,
      between(40, 2500),
      needs,
      shed.filter(() => draw() < 0.9).map((m) => m.id),
      bounds,
    );
  });
  return { shed, demands };
}

/** A farm that can be met: every kind of the shelf by the bag, and what plantings ask for drawn for each. */
export function drawnFarm(seed: number, plantings: number): { shed: Material[]; demands: Demand[] } {
  const draw = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * draw();
  const shed = SHELF.map(([kind, grade, price], i) =>
    material(`m${i}`, kind, grade, {
      pricePerKg: price * between(0.7, 1.4),
      bagKg: [5, 10, 20, 25][Math.floor(draw() * 4)] ?? 25,
      ...(draw() < 0.3 && { stockKg: between(0, 20) }),
    }),
  );
  const ids = shed.map((m) => m.id);
  const demands = Array.from({ length: plantings }, (_, p) => {
    const needs = [
      { nutrient: "N" as const, leastKgPerHa: between(60, 150) },
      { nutrient: "P2O5" as const, leastKgPerHa: between(10, 80) },
      { nutrient: "K2O" as const, leastKgPerHa: between(40, 180) },
      { nutrient: "Mg" as const, leastKgPerHa: between(2, 20) },
    ];
    const bounds = { chlorideMostKgPerHa: between(60, 120), ammoniumMostPct: between(60, 95) };
    return demand(`p${p}`, between(40, 1500), needs, ids, bounds);
  });
  return { shed, demands };
}
