import { DomainError, type FieldProblem } from "../../core/errors.ts";
import { type Classification, classify, type SoilContext } from "../../guides/classify.ts";
import { guides, verifiedGuides } from "../../guides/register.ts";
import type { Guide } from "../../guides/types.ts";
import { EXTRACTANTS, type SoilTest } from "../../states/parts.ts";

export type Value = SoilTest["values"][number];

/** A value that could be read: by the guide taken, and by the others of the same extractant. */
export interface ReadValue {
  value: Value;
  read: Classification;
  beside: Classification[];
}

/** A value that could not, and why. */
export interface RefusedValue {
  value: Value;
  why: "no-extractant" | "no-guide" | "guide-does-not-fit" | "needs-more" | "wrong-medium";
  problem: FieldProblem;
}

/**
 * Reads one value. With a guide set by the office, by that; else by the verified guide of its extractant that stands
 * first in the register (the lowest row of the reference). Never converts between extractants.
 */
export function readValue(
  test: SoilTest,
  value: Value,
  path: string,
  context: SoilContext,
  chosen: string | undefined,
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
  const fitting = verifiedGuides().filter((g) => g.nutrients[nutrient]?.extractant === extractant);
  const own = chosen === undefined ? undefined : guides.get(chosen);
  if (own?.nutrients[nutrient] && own.nutrients[nutrient]?.extractant !== extractant) {
    const accepted = own.nutrients[nutrient]?.extractant;
    const message = `does not fit ${own.title}`;
    return refused(value, "guide-does-not-fit", {
      field: `${path}.extractant`,
      message,
      accepted,
      received: extractant,
    });
  }
  const guide = own?.nutrients[nutrient] ? own : fitting[0];
  if (!guide) {
    const message = `no guide held here reads ${nutrient} by ${extractant}`;
    return refused(value, "no-guide", { field: `${path}.extractant`, message, received: extractant });
  }
  if (guide.medium !== test.medium) {
    const message = `${guide.title} is for ${guide.medium}`;
    return refused(value, "wrong-medium", {
      field: path,
      message,
      accepted: guide.medium,
      received: test.medium,
    });
  }
  try {
    const by = (g: Guide) => classify(g.id, extractant, nutrient, mgPerKg, context);
    const beside = fitting.filter((g) => g.id !== guide.id).flatMap((g) => readOrNone(() => by(g)));
    return { value, read: by(guide), beside };
  } catch (error) {
    const problem = error instanceof DomainError ? error.problems[0] : undefined;
    if (!problem) throw error;
    return refused(value, "needs-more", { ...problem, field: `${path}.${problem.field}` });
  }
}

const refused = (value: Value, why: RefusedValue["why"], problem: FieldProblem): RefusedValue => ({
  value,
  why,
  problem,
});

/** A second guide that needs a number we lack simply has nothing to add. */
function readOrNone(read: () => Classification): Classification[] {
  try {
    return [read()];
  } catch (error) {
    if (error instanceof DomainError) return [];
    throw error;
  }
}

export const isRead = (r: ReadValue | RefusedValue): r is ReadValue => "read" in r;
