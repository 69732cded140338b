import { type SourceRef, Working } from "../../core/working.ts";
import { COLD_NIGHT, DAY_LIMITS, type HeatLimit, NIGHT_LIMITS } from "../../tables/heatLimits.ts";
import type { Heat } from "./heat.ts";
import type { Judged } from "./judge.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const PARTON_LOGAN: SourceRef = { key: "parton-logan-1981", locator: "air at 150 cm" };
const FAO_56: SourceRef = { key: "fao56", locator: "eq. 11, p. 39" };

export function heatWorking(j: Judged): Working {
  const w = new Working();
  heatLines(w, "past", "since a fortnight ago", j.past);
  heatLines(w, "ahead", "by the forecast", j.ahead);
  const cold = `night hours at or below ${COLD_NIGHT.limitC} C: ${COLD_NIGHT.says}`;
  w.line("h_cold", cold, "count of T <= limit", j.past.coldNightHours, "h", COLD_NIGHT.source);
  w.line("N_cold", "nights at least half so cold", "noon to noon", j.past.coldNights, "nights", PRACTICE);
  waterLines(w, j);
  calciumLines(w, j);
  estimates(w, j);
  return w;
}

function heatLines(w: Working, when: "past" | "ahead", words: string, heat: Heat): void {
  w.line(`h_known,${when}`, `hours known ${words}`, "count", heat.hours, "h");
  if (heat.hours === 0) return;
  w.line(`Tmax,${when}`, `hottest hour ${words}`, "max T", heat.maxC, "C");
  const rows = (part: "day" | "night", limits: readonly HeatLimit[]) => {
    for (const [i, { limitC, says, source }] of limits.entries()) {
      const { hours, degreeHours } = heat[part][i] ?? { hours: 0, degreeHours: 0 };
      const meaning = `above ${limitC} C by ${part} (${says}), ${words}`;
      w.line(`h_${part}${limitC},${when}`, `hours ${meaning}`, "count of T > limit", hours, "h", source);
      w.line(
        `D_${part}${limitC},${when}`,
        `degree-hours ${meaning}`,
        "Σ max(0, T - limit)",
        degreeHours,
        "C h",
        source,
      );
    }
  };
  rows("day", DAY_LIMITS);
  rows("night", NIGHT_LIMITS);
  const nights = `nights at least half above ${NIGHT_LIMITS[1].limitC} C, ${words}`;
  w.line(`N,${when}`, nights, "noon to noon", heat.hotNights, "nights", PRACTICE);
  if (heat.maxVpdKpa !== null) {
    w.line(
      `VPD,${when}`,
      `largest vapour pressure deficit ${words}`,
      "e°(T) - ea",
      heat.maxVpdKpa,
      "kPa",
      FAO_56,
    );
  }
}

function waterLines(w: Working, { water }: Judged): void {
  if (!water) return;
  w.line(
    "gap",
    `longest pause between waterings or soaking rains in three weeks; ${water.allowedGapDays} days are even`,
    "days between, the one still running included",
    water.longestGapDays,
    "days",
    PRACTICE,
  );
  w.line(
    "swing",
    "largest watering over the smallest; twice is even",
    "max / min",
    water.swing,
    "",
    PRACTICE,
  );
}

function calciumLines(w: Working, { calcium }: Judged): void {
  if (calcium.soilMgPerKg !== null) {
    const how = calcium.extractant ?? "extractant not said";
    w.line("Ca", `calcium in the soil: ${calcium.soil}`, how, calcium.soilMgPerKg, "mg/kg");
  }
  if (calcium.waterMgPerL !== null) {
    w.line("Ca_w", "calcium in the water", "water test", calcium.waterMgPerL, "mg/L");
  }
}

function estimates(w: Working, { hours, byDays }: Judged): void {
  if (hours.known.some((h) => h.origin === "reconstructed")) {
    w.estimate("hourly temperatures", "course of the day from its extremes", PARTON_LOGAN);
  }
  if (hours.known.some((h) => h.origin !== "measured") && !hours.hasOffset) {
    w.estimate("site.stationOffset", "site taken as its station", PRACTICE);
  }
  if (hours.known.some((h) => h.underCover)) {
    w.estimate(
      "temperature under the cover",
      "the open air stands in as a least: no published figure says how much hotter a cover is by day",
    );
  }
  if (byDays) w.estimate("flowering", "nobody noted buds: taken from six weeks in the bed", PRACTICE);
}
