import { z } from "zod";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { fao56 } from "../cite.ts";

/** The bounds within which FAO-56 p. 123 states the climate adjustment; beyond them the bound is used. */
const WIND_M_PER_S = { min: 1, max: 6 } as const;
const RH_MIN_PCT = { min: 20, max: 80 } as const;
const HEIGHT_M = { min: 0.1, max: 10 } as const;

/** A tabulated coefficient below this stands as it is (FAO-56 p. 127: eq. 65 only where Kc end >= 0.45). */
const SMALLEST_ADJUSTED_KC = 0.45;

const within = (value: number, { min, max }: { min: number; max: number }) =>
  Math.min(max, Math.max(min, value));

/**
 * A tabulated mid or end coefficient (single Kc or basal Kcb) moved to the local climate.
 *
 *   Kc = Kc(table) + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3
 *
 * Valid for 1 <= u2 <= 6 m/s, 20 <= RHmin <= 80 %, 0.1 <= h <= 10 m; outside, the nearer bound is used.
 *
 * Source: FAO-56, eq. 62 (mid), 65 (end), 70 (basal).
 */
export function climateAdjustedKc(input: {
  kcTable: number;
  heightM: number;
  rhMinPct: number;
  windAt2mMPerS: number;
}): number {
  if (input.kcTable < SMALLEST_ADJUSTED_KC) return input.kcTable;
  const u2 = within(input.windAt2mMPerS, WIND_M_PER_S);
  const rhMin = within(input.rhMinPct, RH_MIN_PCT);
  const h = within(input.heightM, HEIGHT_M);
  return input.kcTable + (0.04 * (u2 - 2) - 0.004 * (rhMin - 45)) * (h / 3) ** 0.3;
}

/** Lengths of the four growth stages [days]. */
export interface StageLengths {
  initial: number;
  development: number;
  mid: number;
  late: number;
}

/** Coefficients at the three levels of the crop coefficient curve. */
export interface KcLevels {
  ini: number;
  mid: number;
  end: number;
}

/**
 * The coefficient on a day of the crop, day 0 = planting: level in the initial and mid stages, a straight line in
 * development and late. After the last day it stays at `end`.
 *
 *   Kc,i = Kc,prev + [(i - ΣL,prev) / L,stage] (Kc,next - Kc,prev)
 *
 * Source: FAO-56, eq. 66.
 */
export function kcOnDay(lengths: StageLengths, kc: KcLevels, day: number): number {
  const developmentFrom = lengths.initial;
  const midFrom = developmentFrom + lengths.development;
  const lateFrom = midFrom + lengths.mid;
  if (day <= developmentFrom) return kc.ini;
  if (day < midFrom) return kc.ini + ((day - developmentFrom) / lengths.development) * (kc.mid - kc.ini);
  if (day <= lateFrom) return kc.mid;
  if (day >= lateFrom + lengths.late) return kc.end;
  return kc.mid + ((day - lateFrom) / lengths.late) * (kc.end - kc.mid);
}

/** `crop-coefficient`: {@link climateAdjustedKc} with its working. */
export const cropCoefficient = defineQuantity({
  id: "crop-coefficient",
  question: "What becomes of a tabulated mid or end crop coefficient in this wind and air?",
  schema: z.strictObject({
    kcTable: num("tabulated coefficient of the mid or end stage", "", 0, 2),
    heightM: num("height of the crop", "m", 0.01, 20),
    rhMinPct: num("mean daily minimum relative humidity of the stage", "%", 0, 100),
    windAt2mMPerS: num("mean wind speed at 2 m in the stage", "m/s", 0, 30),
  }),
  outputs: { kc: { meaning: "crop coefficient for the climate", unit: "" } },
  sources: [fao56("eq. 62, 65, 70")],
  compute(input, w) {
    if (input.kcTable < SMALLEST_ADJUSTED_KC) {
      const kc = w.line(
        "Kc",
        "coefficient, not adjusted below 0.45",
        "Kc(table)",
        input.kcTable,
        "",
        fao56("eq. 65, p. 127"),
      );
      return { kc };
    }
    const u2 = within(input.windAt2mMPerS, WIND_M_PER_S);
    const rhMin = within(input.rhMinPct, RH_MIN_PCT);
    const h = within(input.heightM, HEIGHT_M);
    w.line("u2", "wind, limited to 1 to 6 m/s", `given ${input.windAt2mMPerS}`, u2, "m/s", fao56("p. 123"));
    w.line(
      "RHmin",
      "humidity, limited to 20 to 80 %",
      `given ${input.rhMinPct}`,
      rhMin,
      "%",
      fao56("p. 123"),
    );
    w.line("h", "height, limited to 0.1 to 10 m", `given ${input.heightM}`, h, "m", fao56("p. 123"));
    return {
      kc: w.line(
        "Kc",
        "coefficient for the climate",
        `Kc(table) + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Kc(table) = ${input.kcTable}`,
        climateAdjustedKc(input),
        "",
        fao56("eq. 62, 65"),
      ),
    };
  },
});
