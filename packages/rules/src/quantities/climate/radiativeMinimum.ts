import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import type { SourceRef } from "../../core/working.ts";

const source: SourceRef = { key: "snyder-melo-abreu-2005", locator: "vol. 1, chapter 5" };

/** Nights below which a regression of a site is not worth making (cp); the chapter's own example has ten. */
const FEWEST_NIGHTS = 8;

interface Fit {
  slope: number;
  intercept: number;
}

/** A straight line through the points by least squares; a level one where all x are the same. */
function straightLine(x: readonly number[], y: readonly number[]): Fit {
  const n = x.length;
  const meanX = x.reduce((sum, v) => sum + v, 0) / n;
  const meanY = y.reduce((sum, v) => sum + v, 0) / n;
  let sxx = 0;
  let sxy = 0;
  x.forEach((v, i) => {
    sxx += (v - meanX) ** 2;
    sxy += (v - meanX) * ((y[i] as number) - meanY);
  });
  const slope = sxx === 0 ? 0 : sxy / sxx;
  return { slope, intercept: meanY - slope * meanX };
}

/**
 * What a site's clear, calm nights say of the minimum to come, by two regressions one after the other.
 *
 *   1. Tn = b1 T0 + a1        2. Tn - (b1 T0 + a1) = b2 Td + a2        Tp = b1 T0 + b2 Td + (a1 + a2)
 *
 * T0 and Td air temperature and dew point two hours after sunset. This is not a multiple regression on both at once,
 * whose coefficients differ: here the air takes all it can explain before the dew point gets what is left.
 *
 * Source: Snyder and de Melo-Abreu 2005, chapter 5.
 */
function twoStepFit(nights: { airC: number[]; dewPointC: number[] | undefined; minimumC: number[] }) {
  const first = straightLine(nights.airC, nights.minimumC);
  const left = nights.minimumC.map((t, i) => t - first.slope * (nights.airC[i] as number) - first.intercept);
  const second = nights.dewPointC ? straightLine(nights.dewPointC, left) : { slope: 0, intercept: 0 };
  const b0 = first.intercept + second.intercept;
  const errors = left.map((e, i) => e - second.slope * (nights.dewPointC?.[i] ?? 0) - second.intercept);
  const mean = nights.minimumC.reduce((sum, t) => sum + t, 0) / nights.minimumC.length;
  const total = nights.minimumC.reduce((sum, t) => sum + (t - mean) ** 2, 0);
  const unexplained = errors.reduce((sum, e) => sum + e ** 2, 0);
  return { b1: first.slope, b2: second.slope, b0, r2: total === 0 ? null : 1 - unexplained / total };
}

const series = (meaning: string) =>
  z
    .array(num(meaning, "C", -60, 50))
    .min(FEWEST_NIGHTS)
    .max(5000)
    .meta({ meaning, unit: "C" });

/**
 * `radiative-minimum`: the minimum of a clear, calm night (wind below 2 m/s, no cloud, fog or rain) from its evening, by
 * {@link twoStepFit} on the site's own nights. Refuses lists of different length and an evening's dew point without the
 * nights' or the other way round.
 */
export const radiativeMinimum = defineQuantity({
  id: "radiative-minimum",
  question: "How cold will this clear, calm night get, going by others at this place?",
  schema: z.strictObject({
    nightsAirC: series("air two hours after sunset, one for each past clear, calm night"),
    nightsDewPointC: series("dew point two hours after sunset of the same nights").optional(),
    nightsMinimumC: series("minimum of the same nights"),
    airC: num("air two hours after sunset tonight", "C", -60, 50),
    dewPointC: num("dew point two hours after sunset tonight", "C", -60, 50).optional(),
  }),
  outputs: {
    minimumC: { meaning: "minimum of the night", unit: "C" },
    b1: { meaning: "share of the air temperature", unit: "" },
    b2: { meaning: "share of the dew point; 0 without it", unit: "" },
    b0: { meaning: "sum of both intercepts", unit: "C" },
    r2: {
      meaning: "share of the nights' variance explained; null where they were all the same",
      unit: "fraction",
    },
    nights: { meaning: "nights it rests on", unit: "nights" },
  },
  sources: [source],
  compute(input, w) {
    const { nightsAirC, nightsDewPointC, nightsMinimumC, airC, dewPointC } = input;
    const n = nightsAirC.length;
    for (const [field, list] of Object.entries({ nightsDewPointC, nightsMinimumC })) {
      if (list && list.length !== n) {
        refuse(field, `must have one entry for each of nightsAirC (${n})`, `${n} entries`, list.length);
      }
    }
    if ((nightsDewPointC === undefined) !== (dewPointC === undefined)) {
      const field = dewPointC === undefined ? "dewPointC" : "nightsDewPointC";
      refuse(
        field,
        "is missing: the dew point is used for the nights and tonight, or for neither",
        "both or neither",
      );
    }
    if (dewPointC === undefined)
      w.estimate("dewPointC", "left out: the air temperature alone decides", source);
    const { b1, b2, b0, r2 } = twoStepFit({
      airC: nightsAirC,
      dewPointC: nightsDewPointC,
      minimumC: nightsMinimumC,
    });
    w.line("n", "clear, calm nights", "count", n, "nights");
    w.line("b1", "share of the air temperature", "least squares of Tn on T0", b1, "", source);
    w.line("b2", "share of the dew point", "least squares of what is left on Td", b2, "", source);
    w.line("b0", "sum of both intercepts", "a1 + a2", b0, "C", source);
    w.line("r²", "share of the variance explained", "1 - Σ (Tn - Tp)² / Σ (Tn - mean)²", r2, "fraction");
    const minimumC = w.line(
      "Tp",
      "minimum of the night",
      `b1 T0 + b2 Td + b0, T0 = ${airC}, Td = ${dewPointC ?? "left out"}`,
      b1 * airC + b2 * (dewPointC ?? 0) + b0,
      "C",
      source,
    );
    return { minimumC, b1, b2, b0, r2, nights: n };
  },
});
