import type { FieldProblem } from "../../core/errors.ts";
import { type Classification, classifyBy, type SoilContext } from "../../guides/classify.ts";
import { guides, guidesFor, verifiedFor } from "../../guides/register.ts";
import type { Guide } from "../../guides/schema.ts";
import { EXTRACTANTS, type SoilTest } from "../../states/parts.ts";

export type Value = SoilTest["values"][number];

/** Which guides may read: the one the office chose, and those of its own. */
export interface OfficeGuides {
  chosen?: Guide;
  own?: readonly Guide[];
}

/** A value that could be read: by the guide taken, and by the others of the same extractant. */
export interface ReadValue {
  value: Value;
  read: Classification;
  beside: Classification[];
}

/** A value that could not, and why. */
export interface RefusedValue {
  value: Value;
  why:
    | "no-extractant"
    | "no-guide"
    | "only-unverified"
    | "guide-does-not-fit"
    | "needs-more"
    | "wrong-medium";
  problem: FieldProblem;
  /** Guides that would read it: for this extractant, chosen by nobody. */
  fitting: readonly Guide[];
}

/**
 * Reads one value. With a guide chosen by the office, by that; else by the verified guide of its extractant that stands
 * first in the register (the lowest row of the reference), else by a fitting one of the office's own. What other verified
 * guides and the office's own say stands beside it. Never converts between extractants.
 */
export function readValue(
  test: SoilTest,
  value: Value,
  path: string,
  context: SoilContext,
  { chosen, own = [] }: OfficeGuides = {},
): ReadValue | RefusedValue {
  const { nutrient, extractant, mgPerKg } = value;
  if (extractant === undefined) {
    const message = "must be named: a value without its extractant cannot be read";
    return refused(value, "no-extractant", {
      field: `${path}.extractant`,
      message,
      accepted: EXTRACTANTS.join(", "),
    });
  }
  const ofMedium = (guide: Guide) => guide.medium === test.medium;
  const fitting = [...verifiedFor(nutrient, extractant), ...guidesFor(own, nutrient, extractant)];
  const chosenReads = chosen?.nutrients[nutrient];
  if (chosen && chosenReads && chosenReads.extractant !== extractant) {
    const others = fitting.filter((g) => g !== chosen && ofMedium(g)).map((g) => g.id);
    const accepted =
      others.length > 0 ? `${extractant} is read by ${others.join(", ")}` : chosenReads.extractant;
    const message = `does not fit ${chosen.title}, which is for ${chosenReads.extractant}`;
    const problem = { field: `${path}.extractant`, message, accepted, received: extractant };
    return refused(value, "guide-does-not-fit", problem, fitting.filter(ofMedium));
  }
  const guide = chosenReads ? chosen : (fitting.find(ofMedium) ?? fitting[0]);
  if (!guide) return noGuide(value, path, extractant, nutrient);
  if (!ofMedium(guide)) {
    const message = `${guide.title} is for ${guide.medium}`;
    const problem = { field: path, message, accepted: guide.medium, received: test.medium };
    return refused(value, "wrong-medium", problem);
  }
  const read = classifyBy(guide, extractant, nutrient, mgPerKg, context);
  if ("problem" in read) {
    const problem = { ...read.problem, field: `${path}.${read.problem.field}` };
    return refused(value, "needs-more", problem, [guide]);
  }
  const beside = fitting.flatMap((g) => {
    if (g === guide || !ofMedium(g)) return [];
    const other = classifyBy(g, extractant, nutrient, mgPerKg, context);
    // A second guide that needs a number we lack simply has nothing to add.
    return "problem" in other ? [] : [other];
  });
  return { value, read, beside };
}

function noGuide(
  value: Value,
  path: string,
  extractant: NonNullable<Value["extractant"]>,
  nutrient: Value["nutrient"],
): RefusedValue {
  const unverified = guidesFor([...guides.values()], nutrient, extractant);
  const message = `no verified guide held here reads ${nutrient} by ${extractant}`;
  const problem = { field: `${path}.extractant`, message, received: extractant };
  if (unverified.length === 0) return refused(value, "no-guide", problem);
  const accepted = `unverified, if the office chooses it: ${unverified.map((g) => g.id).join(", ")}`;
  return refused(value, "only-unverified", { ...problem, accepted }, unverified);
}

const refused = (
  value: Value,
  why: RefusedValue["why"],
  problem: FieldProblem,
  fitting: readonly Guide[] = [],
): RefusedValue => ({ value, why, problem, fitting });

export const isRead = (r: ReadValue | RefusedValue): r is ReadValue => "read" in r;
