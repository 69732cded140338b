import { refuse } from "../core/errors.ts";
import { guides } from "./register.ts";
import {
  type Extractant,
  type Guide,
  type GuideClass,
  type GuideReading,
  type Response,
  type SoilNutrient,
  type SoilTestClass,
  UNIT_PER_MG_PER_KG,
} from "./types.ts";

/** What some guides need besides the content. */
export interface SoilContext {
  waterPh?: number;
  cecCmolPerKg?: number;
}

export interface Classification {
  class: SoilTestClass;
  /** Printed bounds of the class as contents; `highMgPerKg` is null in the topmost class. */
  lowMgPerKg: number;
  highMgPerKg: number | null;
  response: Response;
  optimum: "below" | "at" | "above" | null;
  /** The number that was compared, in the guide's unit (or index) and printed precision. */
  compared: number;
  guide: Guide;
}

/**
 * The class of a content in a guide, compared in the guide's own unit and printed precision.
 *
 * Source: the guide. Never converts between extractants: the same soil reads differently by each.
 *
 * @throws DomainError naming `guide`, `nutrient`, `extractant`, or the further value that the guide needs
 */
export function classify(
  guideId: string,
  extractant: Extractant | undefined,
  nutrient: SoilNutrient,
  mgPerKg: number,
  context: SoilContext = {},
): Classification {
  const guide = guides.get(guideId);
  if (!guide) refuse("guide", "is not a guide held here", [...guides.keys()].join(", "), guideId);
  const reading = guide.nutrients[nutrient];
  if (!reading) {
    refuse("nutrient", `is not read by ${guide.title}`, Object.keys(guide.nutrients).join(", "), nutrient);
  }
  if (extractant === undefined) {
    refuse("extractant", "must be named: a value without its extractant cannot be read", reading.extractant);
  }
  if (extractant !== reading.extractant) {
    refuse("extractant", `does not fit ${guide.title}`, reading.extractant, extractant);
  }
  if (!(mgPerKg >= 0)) refuse("mgPerKg", "must be at least 0", "at least 0", mgPerKg);

  const toGuide = scaleOf(guide, reading, context);
  const compared = roundTo(toGuide.intercept + toGuide.slope * mgPerKg, reading.decimals);
  const classes = classesOf(reading, mgPerKg, context);
  const found = classes.find((c) => c.high === null || compared <= c.high);
  if (!found) throw new Error(`guide ${guide.id} has no topmost class for ${nutrient}`);
  const toMgPerKg = (bound: number) => Math.max(0, (bound - toGuide.intercept) / toGuide.slope);
  return {
    class: found.class,
    lowMgPerKg: found === classes[0] ? 0 : toMgPerKg(found.low),
    highMgPerKg: found.high === null ? null : toMgPerKg(found.high),
    response: found.response,
    optimum: found.optimum ?? null,
    compared,
    guide,
  };
}

function scaleOf(guide: Guide, reading: GuideReading, context: SoilContext) {
  if (!reading.index) return { intercept: 0, slope: UNIT_PER_MG_PER_KG[guide.unit] };
  if (context.waterPh === undefined) {
    refuse("waterPh", `is needed: ${reading.index.name} depends on pH`, "pH in water, 2 to 12");
  }
  return {
    intercept: reading.index.intercept + reading.index.perPh * context.waterPh,
    slope: reading.index.perMgPerKg,
  };
}

/** The classes as printed, or with the bound moved to the soil's exchange capacity. */
function classesOf(reading: GuideReading, mgPerKg: number, context: SoilContext): readonly GuideClass[] {
  const table = reading.boundByCec;
  const [lower, upper] = reading.classes;
  if (!table || !lower || !upper) return reading.classes;
  const bounds = table.map((row) => row.below);
  const settledWithoutCec = mgPerKg < Math.min(...bounds) || mgPerKg >= Math.max(...bounds);
  if (context.cecCmolPerKg === undefined && !settledWithoutCec) {
    refuse(
      "cecCmolPerKg",
      `is needed: between ${Math.min(...bounds)} and ${Math.max(...bounds)} mg/kg the bound depends on it`,
      "cation exchange capacity, 0 to 200 cmol/kg",
    );
  }
  const bound =
    context.cecCmolPerKg !== undefined
      ? straightBetween(table, context.cecCmolPerKg)
      : mgPerKg < Math.min(...bounds)
        ? Math.min(...bounds)
        : Math.max(...bounds);
  const below = roundTo(bound, reading.decimals);
  const step = 1 / 10 ** reading.decimals;
  return [
    { ...lower, high: below - step },
    { ...upper, low: below },
  ];
}

function straightBetween(table: readonly { cecCmolPerKg: number; below: number }[], cec: number): number {
  const last = table.at(-1);
  const first = table[0];
  if (!first || !last) throw new Error("a guide's bound by exchange capacity has no rows");
  if (cec <= first.cecCmolPerKg) return first.below;
  if (cec >= last.cecCmolPerKg) return last.below;
  const share = (cec - first.cecCmolPerKg) / (last.cecCmolPerKg - first.cecCmolPerKg);
  return first.below + share * (last.below - first.below);
}

const roundTo = (value: number, decimals: number) => Math.round(value * 10 ** decimals) / 10 ** decimals;
