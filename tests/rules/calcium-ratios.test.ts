import { type Material, type PlantingState, SettingsSchema } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { allotFor } from "../../packages/rules/src/food/blend/solveShed.ts";
import { demandOf } from "../../packages/rules/src/food/demand.ts";
import { feedingState, urea } from "./waterAndFood.ts";

/** The office's least Ca to Mg and Ca to K, by equivalents: atomic weights 40.078, 24.305, 39.0983, O 15.999. */

const nitre: Material = {
  id: "nitre",
  kind: "potassium-nitrate",
  nPct: 13,
  p2o5Pct: 0,
  k2oPct: 46,
  soluble: true,
  certifiedUse: "allowed",
  stockKg: 50,
};
const calcium: Material = {
  ...nitre,
  id: "calcium",
  kind: "calcium-nitrate",
  nPct: 15.5,
  k2oPct: 0,
  caPct: 19,
};
const langbeinite: Material = {
  ...nitre,
  id: "langbeinite",
  kind: "compound",
  nPct: 0,
  k2oPct: 22,
  mgPct: 11,
};

const kgOf = (shed: Material[], settings: PlantingState["settings"]) => {
  const demand = demandOf(feedingState({ shed, settings, feeding: { method: "watered-in", credits: [] } }));
  if (!demand) throw new Error("no demand");
  const { materials, short } = allotFor(demand, shed);
  expect(short).toEqual([]);
  return (id: string) => materials.find((m) => m.materialId === id)?.kg ?? 0;
};
const K = 39.0983;
const keqCa = (kg: number) => (kg * 0.19 * 2) / 40.078;
const keqK = (kg: number, k2oPct: number) => (kg * (k2oPct / 100) * ((2 * K) / (2 * K + 15.999))) / K;
const keqMg = (kg: number) => (kg * 0.11 * 2) / 24.305;
const plenty = { ...urea, stockKg: 50 };

describe("least calcium in what is given", () => {
  const shed = [{ ...plenty, pricePerKg: 1 }, nitre, { ...calcium, stockKg: 0, pricePerKg: 2 }];
  test("unset, no calcium nitrate is bought; Ca to K of 0.5 buys just as much as keeps it", () => {
    expect(kgOf(shed, {})("calcium")).toBe(0);
    const kg = kgOf(shed, { feedingCaToKLeast: 0.5 });
    expect(keqCa(kg("calcium")) / keqK(kg("nitre"), 46)).toBeCloseTo(0.5, 4);
  });
  test("Ca to Mg of 0.5 beside a magnesium source", () => {
    const withMg = [plenty, langbeinite, { ...calcium, stockKg: 0, pricePerKg: 2 }];
    expect(kgOf(withMg, {})("calcium")).toBe(0);
    const kg = kgOf(withMg, { feedingCaToMgLeast: 0.5 });
    expect(keqCa(kg("calcium")) / keqMg(kg("langbeinite"))).toBeCloseTo(0.5, 4);
  });
  test("a ratio below none is refused", () => {
    expect(SettingsSchema.safeParse({ feedingCaToKLeast: -0.1 }).success).toBe(false);
  });
});
