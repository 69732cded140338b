import { DomainError, type FieldProblem, refuse } from "../core/errors.ts";
import { guides } from "./register.ts";
import type { Guide, GuideClass, GuideReading, Response, SoilTestClass } from "./schema.ts";
import { type Extractant, type SoilNutrient, UNIT_PER_MG_PER_KG } from "./types.ts";

/** What some guides need besides the content. */
export interface SoilContext {
  waterPh?: number;
  cecCmolPerKg?: number;
}

/** A class with its printed bounds as contents; `highMgPerKg` is null in the topmost. */
export interface ClassBounds {
  class: SoilTestClass;
  lowMgPerKg: number;
  highMgPerKg: number | null;
}

export interface Classification extends ClassBounds {
  response: Response;
  optimum: "below" | "at" | "above" | null;
  /** The number that was compared, in the guide's unit (or index) and printed precision. */
  compared: number;
  /** The class's own bounds as printed, in the unit of `compared`. */
  printed: { low: number; high: number | null; unit: string };
  /** It lies on a bound that the sheet prints in the next class too. */
  onSharedBound: boolean;
  guide: Guide;
  /** Content up to which the guide sees crops respond; null where it says that of no class, or of the topmost. */
  respondsToMgPerKg: number | null;
  /** All classes of the nutrient, lowest first, and the place of this one. */
  classes: readonly ClassBounds[];
  at: number;
}

/**
 * The class of a content in a shipped guide, compared in the guide's own unit and printed precision.
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
  if (!(mgPerKg >= 0)) refuse("mgPerKg", "must be at least 0", "at least 0", mgPerKg);
  const found = classifyBy(guide, extractant, nutrient, mgPerKg, context);
  if ("problem" in found) throw new DomainError([found.problem]);
  return found;
}

/** The same by any guide, saying what stands in the way where it cannot be read. */
export function classifyBy(
  guide: Guide,
  extractant: Extractant | undefined,
  nutrient: SoilNutrient,
  mgPerKg: number,
  context: SoilContext = {},
): Classification | { problem: FieldProblem } {
  const reading = guide.nutrients[nutrient];
  if (!reading) {
    const accepted = Object.keys(guide.nutrients).join(", ");
    return {
      problem: { field: "nutrient", message: `is not read by ${guide.title}`, accepted, received: nutrient },
    };
  }
  if (extractant !== reading.extractant) {
    const message =
      extractant === undefined
        ? "must be named: a value without its extractant cannot be read"
        : `does not fit ${guide.title}`;
    return { problem: { field: "extractant", message, accepted: reading.extractant, received: extractant } };
  }
  const scale = scaleOf(guide, reading, context);
  if ("problem" in scale) return scale;
  const printed = classesOf(reading, mgPerKg, context);
  if ("problem" in printed) return printed;
  const compared = roundTo(scale.intercept + scale.slope * mgPerKg, reading.decimals);
  const at = printed.findIndex((c) => c.high === null || compared <= c.high);
  const entry = printed[at];
  const classes = boundsOf(reading, printed, scale);
  const bounds = classes[at];
  if (!entry || !bounds) throw new Error(`guide ${guide.id} has no topmost class for ${nutrient}`);
  // Named one by one: on this path, taken for every value of every test, spreading them costs ten times the rest.
  return {
    class: bounds.class,
    lowMgPerKg: bounds.lowMgPerKg,
    highMgPerKg: bounds.highMgPerKg,
    response: entry.response,
    optimum: entry.optimum ?? null,
    compared,
    printed: { low: entry.low, high: entry.high, unit: reading.index?.name ?? guide.unit },
    onSharedBound: entry.topIsShared === true && compared === entry.high,
    guide,
    respondsToMgPerKg: classes[printed.findLastIndex((c) => c.response === "responds")]?.highMgPerKg ?? null,
    classes,
    at,
  };
}

interface Scale {
  intercept: number;
  slope: number;
}

function scaleOf(
  guide: Guide,
  reading: GuideReading,
  context: SoilContext,
): Scale | { problem: FieldProblem } {
  if (!reading.index) return { intercept: 0, slope: UNIT_PER_MG_PER_KG[guide.unit] };
  if (context.waterPh === undefined) {
    const message = `is needed: ${reading.index.name} depends on pH`;
    return { problem: { field: "waterPh", message, accepted: "pH in water, 2 to 12" } };
  }
  return {
    intercept: reading.index.intercept + reading.index.perPh * context.waterPh,
    slope: reading.index.perMgPerKg,
  };
}

/** Bounds that hang on nothing but the sheet are worked out once. */
const steadyBounds = new WeakMap<GuideReading, ClassBounds[]>();

function boundsOf(reading: GuideReading, printed: readonly GuideClass[], scale: Scale): ClassBounds[] {
  const steady = !reading.index && !reading.boundByCec;
  const known = steady ? steadyBounds.get(reading) : undefined;
  if (known) return known;
  const toMgPerKg = (bound: number) => Math.max(0, (bound - scale.intercept) / scale.slope);
  const bounds = printed.map((c, i) => ({
    class: c.class,
    lowMgPerKg: i === 0 ? 0 : toMgPerKg(c.low),
    highMgPerKg: c.high === null ? null : toMgPerKg(c.high),
  }));
  if (steady) steadyBounds.set(reading, bounds);
  return bounds;
}

/** The classes as printed, or with the bound moved to the soil's exchange capacity. */
function classesOf(
  reading: GuideReading,
  mgPerKg: number,
  context: SoilContext,
): readonly GuideClass[] | { problem: FieldProblem } {
  const table = reading.boundByCec;
  const [lower, upper] = reading.classes;
  if (!table || !lower || !upper) return reading.classes;
  const bounds = table.map((row) => row.below);
  const [least, most] = [Math.min(...bounds), Math.max(...bounds)];
  const settledWithoutCec = mgPerKg < least || mgPerKg >= most;
  if (context.cecCmolPerKg === undefined && !settledWithoutCec) {
    const message = `is needed: between ${least} and ${most} mg/kg the bound depends on it`;
    const accepted = "cation exchange capacity, 0 to 200 cmol/kg";
    return { problem: { field: "cecCmolPerKg", message, accepted } };
  }
  const bound =
    context.cecCmolPerKg !== undefined
      ? straightBetween(table, context.cecCmolPerKg)
      : mgPerKg < least
        ? least
        : most;
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
