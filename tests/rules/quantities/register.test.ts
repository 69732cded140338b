import { listInputs, type Quantity, quantities, type SourceRef, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { cropRows } from "../../reference/climate-water-crop.data.ts";
import { evapotranspirationRows } from "../../reference/climate-water-et0.data.ts";
import { nightRows } from "../../reference/climate-water-nights.data.ts";
import { seasonRows } from "../../reference/climate-water-season.data.ts";
import { yieldAndWateringRows } from "../../reference/climate-water-yield.data.ts";

/** Inputs that reach every branch which names a source; the published examples and, for each estimate, a bare day. */
const runs: { quantity: string; inputs: Record<string, unknown> }[] = [
  ...[evapotranspirationRows, cropRows, seasonRows, yieldAndWateringRows, nightRows]
    .flat()
    .flatMap((row) => row.by ?? []),
  { quantity: "et0-daily", inputs: { latitudeDeg: 45, elevationM: 0, dayOfYear: 180, tMaxC: 25, tMinC: 12 } },
  {
    quantity: "et0-hourly",
    inputs: {
      latitudeDeg: 45,
      longitudeDeg: 0,
      elevationM: 0,
      date: "2015-06-29",
      utcOffsetH: 0,
      hourStart: 1,
      temperatureC: 12,
      rhPct: 90,
      windAt2mMPerS: 1,
      rsMjPerM2Hour: 0,
    },
  },
  ...["average", "clamped", "single-sine", "double-sine", "single-triangle", "double-triangle"].flatMap(
    (method) =>
      ["horizontal", "intermediate", "vertical"].map((cutoff) => ({
        quantity: "degree-days",
        inputs: { tMaxC: 35, tMinC: 5, baseC: 10, upperC: 30, method, cutoff },
      })),
  ),
  { quantity: "hourly-temperatures", inputs: { latitudeDeg: 45, dayOfYear: 180, tMaxC: 25, tMinC: 12 } },
  { quantity: "calm-night-cooling", inputs: { airC: 8, dewPointC: 1, cloudPct: 20, nightH: 9 } },
  { quantity: "sodium-adsorption-ratio", inputs: { naMmolcPerL: 3, caMmolcPerL: 2, mgMmolcPerL: 1 } },
  {
    quantity: "soil-water-day",
    inputs: { previousDepletionMm: 10, tawMm: 78, rawMm: 23, etcMmPerDay: 4, rainMm: 5, irrigationMm: 0 },
  },
];

const unknownKeys = (refs: (SourceRef | null | undefined)[]): string[] =>
  refs.flatMap((ref) => (ref && !sources.has(ref.key) ? [ref.key] : []));

test("every source named by a working line, an estimate or an answer stands in the evidence register", () => {
  for (const { quantity, inputs } of runs) {
    const answer = (quantities[quantity] as Quantity).compute(inputs);
    const named = [
      ...answer.sources,
      ...answer.working.map((line) => line.source),
      ...answer.estimated.map((e) => e.source),
    ];
    expect(unknownKeys(named), quantity).toEqual([]);
  }
});

describe.each(Object.values(quantities))("$id", (quantity) => {
  test("names only sources of the register", () => {
    expect(unknownKeys(quantity.sources)).toEqual([]);
  });
  test("states a meaning and a unit for each input and output", () => {
    const inputs = listInputs(quantity);
    expect(inputs.length).toBeGreaterThan(0);
    const outputs = Object.entries(quantity.outputs).map(([name, output]) => ({ name, ...output }));
    const wordless = [...inputs, ...outputs].filter((f) => f.meaning === "").map((f) => f.name);
    expect(wordless).toEqual([]);
    // A bare number (a ratio, a coefficient) has the empty unit, and says so by having the field.
    expect(inputs.filter((f) => typeof f.unit !== "string").map((f) => f.name)).toEqual([]);
  });
  test("has a question that ends as one", () => {
    expect(quantity.question).toMatch(/\?$/);
  });
});

test("the ids of the climate and water part of the list, in its order within each room", () => {
  const wanted = [
    "air-pressure",
    "psychrometric-constant",
    "saturation-vapour-pressure",
    "vapour-pressure",
    "wind-at-2m",
    "extraterrestrial-radiation",
    "solar-radiation",
    "net-radiation",
    "et0-daily",
    "et0-hourly",
    "et0-hargreaves",
    "degree-days",
    "hourly-temperatures",
    "frost-date",
    "crop-coefficient",
    "root-zone-water",
    "water-stress",
    "soil-water-day",
    "relative-yield",
    "salinity-yield",
    "sodium-adsorption-ratio",
    "leaching-requirement",
    "run-time",
    "greenhouse-heat",
  ];
  expect(wanted.filter((id) => !Object.hasOwn(quantities, id))).toEqual([]);
});
