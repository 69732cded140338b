import { COVER_OFFSETS, PROTECTIONS } from "../../packages/rules/src/tables/covers.ts";
import {
  ORGANIC_MULCH,
  PEPPER_WATER,
  PLASTIC_MULCH,
} from "../../packages/rules/src/tables/cropCoefficients.ts";
import { SOIL_WATER } from "../../packages/rules/src/tables/soils.ts";
import { PEPPER_STAGE_LENGTHS } from "../../packages/rules/src/tables/stageLengths.ts";
import { sensorWords } from "../../packages/rules/src/water/soilSensor.ts";
import { wettingOf } from "../../packages/rules/src/water/wetting.ts";
import { inOrder, printed, type ReferenceRow, seenIn } from "./climate-water-row.ts";

/** Sections 2.1, 2.3 and 8 of the reference: pepper's rows of the tables that rules read, as printed. */
const { kc, kcStaked, kcb, kcbStaked, heightM, rootDepthM, depletionFraction } = PEPPER_WATER;
const ends = (range: { low: number; high: number } | undefined) => [range?.low, range?.high];

/** Soil, field capacity, wilting point, FC - WP, REW, TEW. */
const TABLE_19 = `
sand|0.07-0.17|0.02-0.07|0.05-0.11|2-7|6-12
loamy-sand|0.11-0.19|0.03-0.10|0.06-0.12|4-8|9-14
sandy-loam|0.18-0.28|0.06-0.16|0.11-0.15|6-10|15-20
loam|0.20-0.30|0.07-0.17|0.13-0.18|8-10|16-22
silt-loam|0.22-0.36|0.09-0.21|0.13-0.19|8-11|18-25
silt|0.28-0.36|0.12-0.22|0.16-0.20|8-11|22-26
silty-clay-loam|0.30-0.37|0.17-0.24|0.13-0.18|8-11|22-27
silty-clay|0.30-0.42|0.17-0.29|0.13-0.19|8-12|22-28
clay|0.32-0.40|0.20-0.24|0.12-0.20|8-12|22-29`;

const soilRows = TABLE_19.trim()
  .split("\n")
  .map((line): ReferenceRow => {
    const [soil = "", ...cells] = line.split("|");
    return seenIn(
      "2.1 Table 19",
      `FAO-56 Table 19 p.144, ${soil}`,
      "SOIL_WATER",
      () => {
        const row = SOIL_WATER[soil as keyof typeof SOIL_WATER];
        const ranges = [row.fieldCapacity, row.wiltingPoint, row.available, row.rewMm, row.tewMm];
        return inOrder(ranges.flatMap(ends));
      },
      printed(
        cells.flatMap((cell) => cell.split("-").map(Number)),
        0,
      ),
    );
  });

const cropTableRows: ReferenceRow[] = [
  seenIn(
    "2.1 Table 11",
    "FAO-56 Table 11 p.104: 25-30/35/40/20 days; 30/40/110/30 days",
    "PEPPER_STAGE_LENGTHS",
    () => inOrder(PEPPER_STAGE_LENGTHS.flatMap((r) => [...ends(r.initial), r.development, r.mid, r.late])),
    printed([25, 30, 35, 40, 20, 30, 30, 40, 110, 30], 0),
  ),
  seenIn(
    "2.1 Table 12",
    "FAO-56 Table 12 p.110: Kc 0.6/1.05/0.90, 0.7 m; staked 1.15 at 1.5-2 m",
    "PEPPER_WATER",
    () => inOrder([kc.ini, kc.mid, kc.end, heightM.value, kcStaked.mid, ...ends(kcStaked.heightM)]),
    printed([0.6, 1.05, 0.9, 0.7, 1.15, 1.5, 2], 0),
  ),
  seenIn(
    "2.1 Table 17",
    "FAO-56 Table 17 p.137: Kcb 0.15/1.00/0.80; staked 1.10",
    "PEPPER_WATER",
    () => inOrder([kcb.ini, kcb.mid, kcb.end, kcbStaked.mid]),
    printed([0.15, 1, 0.8, 1.1], 0),
  ),
  seenIn(
    "2.1 Table 22",
    "FAO-56 Table 22 p.163: roots 0.5-1.0 m, p 0.30",
    "PEPPER_WATER",
    () => inOrder([...ends(rootDepthM), depletionFraction.value]),
    printed([0.5, 1, 0.3], 0),
  ),
  // Drip: the wetter end of trickle's 0.3-0.4. Furrow: 0.6, which narrow and wide beds share.
  seenIn(
    "2.1 Table 20",
    "FAO-56 Table 20 p.149: sprinkler 1.0, trickle 0.3-0.4, furrows 0.4-0.6 and 0.6-1.0",
    "wettingOf",
    () => inOrder((["sprinkler", "drip", "furrow"] as const).map((method) => wettedBy(method))),
    printed([1, 0.4, 0.6], 0),
  ),
  seenIn(
    "2.3 mulch",
    "FAO-56 ch. 10 p.195-197: Kc 10-30 %, evaporation 50-80 %, transpiration 10-30 %, Kcb 5-15 %; Kc ini 0.10; organic 5 %",
    "PLASTIC_MULCH, ORGANIC_MULCH",
    () => {
      const m = PLASTIC_MULCH;
      const falls = [
        m.kcReductionPct,
        m.evaporationReductionPct,
        m.transpirationIncreasePct,
        m.kcbReductionPct,
      ];
      const organic = ORGANIC_MULCH.evaporationReductionPctPer10PctCover.value;
      return inOrder([...falls.flatMap(ends), m.kcIni.value, organic]);
    },
    printed([10, 30, 50, 80, 10, 30, 5, 15, 0.1, 5], 0),
  ),
];

function wettedBy(method: "sprinkler" | "drip" | "furrow"): number {
  return wettingOf({ method, flowLPerH: 100, efficiency: 0.9 }).wettedFraction;
}

/** Where a tensiometer among the roots says to start [kPa]. */
function startTensionKpa(texture: Parameters<typeof sensorWords>[1]["texture"]) {
  const [word] = sensorWords([{ at: "2026-07-01T11:00:00Z", depthCm: 15, kind: "tension-kpa", value: 20 }], {
    asOf: "2026-07-01T12:00:00Z",
    rootDepthM: 0.4,
    inContainers: false,
    tawMm: 50,
    fieldCapacity: undefined,
    texture,
    deficit: false,
    driedSinceMm: () => 0,
  });
  return ends(word?.kind === "tension-kpa" && word.used ? word.start : undefined);
}

/** The sheet names sand, loamy sand; sandy loam; loam, silt loam; clay. */
const tensionRows = (
  [
    ["sand", 17, 22],
    ["loamy-sand", 17, 22],
    ["sandy-loam", 22, 27],
    ["loam", 25, 30],
    ["silt-loam", 25, 30],
    ["clay", 35, 45],
  ] as const
).map(([texture, low, high]) =>
  seenIn(
    "IR-3",
    `Utah State vegetable guide, start of drip irrigation on ${texture}, kPa`,
    "sensorWords",
    () => inOrder(startTensionKpa(texture)),
    printed([low, high], 0),
  ),
);

const offset = (...covers: string[]) => COVER_OFFSETS.find((row) => row.covers.join() === covers.join());
/** Published in whole Fahrenheit degrees and kept to 0.1 C. */
const degrees = (...fahrenheit: number[]) =>
  printed(
    fahrenheit.map((f) => f / 1.8),
    0.05,
  );

const coverRows: ReferenceRow[] = [
  seenIn(
    "GH-14",
    "Penn State Extension 2020: light 2-3 F, heavier about 5 F, plastic over it at least 9 F",
    "COVER_OFFSETS, PROTECTIONS",
    () => {
      const light = offset("fleece");
      const [heavier, withPlastic] = PROTECTIONS;
      const standing = offset("low-tunnel", "fleece");
      return inOrder([light?.lowC, light?.highC, heavier?.offsetC, withPlastic?.offsetC, standing?.lowC]);
    },
    degrees(2, 3, 5, 9, 9),
  ),
];

export const tableRows: ReferenceRow[] = [...soilRows, ...cropTableRows, ...tensionRows, ...coverRows];
