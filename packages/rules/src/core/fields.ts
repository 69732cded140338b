import { z } from "zod";
import { DomainError, type FieldProblem } from "./errors.ts";

/** A number with its unit and the range in which it is physically possible. */
export const num = (meaning: string, unit: string, min: number, max: number) =>
  z.number().min(min).max(max).meta({ meaning, unit, min, max });

/** A whole number with its unit and range. */
export const int = (meaning: string, unit: string, min: number, max: number) =>
  z.int().min(min).max(max).meta({ meaning, unit, min, max });

/** A calendar day, `YYYY-MM-DD`, that exists. */
export const day = (meaning: string) => z.iso.date().meta({ meaning, unit: "date" });

/** One of the listed words. */
export const word = <const T extends readonly [string, ...string[]]>(meaning: string, words: T) =>
  z.enum(words).meta({ meaning, unit: "word" });

/** Yes or no. */
export const flag = (meaning: string) => z.boolean().meta({ meaning, unit: "yes/no" });

/**
 * A schema that changes nothing, with a plain look before it. On thousands of values the schema costs more than a whole rule, so it
 * only speaks where the look has not found all of it right; what comes is then handed on as it is.
 */
export const lookedOver = <S extends z.ZodType>(schema: S, looksRight: (raw: unknown) => boolean) =>
  z.custom<z.output<S>>().superRefine((raw, context) => {
    if (looksRight(raw)) return;
    for (const issue of schema.safeParse(raw).error?.issues ?? []) context.addIssue({ ...issue });
  });

/** The bounds of those fields that are numbers, by name. */
export const boundsOf = (fields: Record<string, z.ZodType>): Record<string, { min: number; max: number }> =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => {
      const inner = field instanceof z.ZodOptional ? (field.unwrap() as z.ZodType) : field;
      const { min, max } = inner.meta() ?? {};
      return typeof min === "number" && typeof max === "number" ? [[name, { min, max }]] : [];
    }),
  );

/** Parses at the door; on failure throws a {@link DomainError} naming each field, its bound and what came. */
export function parseAtTheDoor<T extends z.ZodType>(schema: T, raw: unknown): z.output<T> {
  const parsed = schema.safeParse(raw);
  if (parsed.success) return parsed.data;
  throw new DomainError(problemsOf(parsed.error, raw));
}

/** The problems of a zod error in our own words. */
export function problemsOf(error: z.ZodError, raw: unknown): FieldProblem[] {
  return error.issues.flatMap((issue) => problemOf(issue, raw));
}

function problemOf(issue: z.core.$ZodIssue, raw: unknown): FieldProblem[] {
  const field = issue.path.map(String).join(".");
  const received = at(raw, issue.path);
  const known: Partial<Record<string, () => FieldProblem[]>> = {
    too_small: () => {
      const i = issue as z.core.$ZodIssueTooSmall;
      const bound = `${i.inclusive ? "at least" : "more than"} ${i.minimum}`;
      return [{ field, message: `must be ${bound}${lengthWord(i.origin)}`, accepted: bound, received }];
    },
    too_big: () => {
      const i = issue as z.core.$ZodIssueTooBig;
      const bound = `${i.inclusive ? "at most" : "less than"} ${i.maximum}`;
      return [{ field, message: `must be ${bound}${lengthWord(i.origin)}`, accepted: bound, received }];
    },
    unrecognized_keys: () =>
      (issue as z.core.$ZodIssueUnrecognizedKeys).keys.map((key) => ({
        field: [...issue.path.map(String), key].join("."),
        message: "is not a field here",
        received: at(raw, [...issue.path, key]),
      })),
    invalid_value: () => {
      const accepted = (issue as z.core.$ZodIssueInvalidValue).values.map(String).join(", ");
      return [{ field, message: `must be one of ${accepted}`, accepted, received }];
    },
    invalid_type: () => {
      const expected = (issue as z.core.$ZodIssueInvalidType).expected;
      const message = received === undefined ? `is missing (${expected})` : `must be a ${expected}`;
      return [{ field, message, accepted: expected, received }];
    },
    custom: () => {
      const { accepted } = (issue as z.core.$ZodIssueCustom).params ?? {};
      return [{ field, message: issue.message, ...(typeof accepted === "string" && { accepted }), received }];
    },
  };
  return known[issue.code ?? ""]?.() ?? [{ field, message: issue.message, received }];
}

const lengthWord = (origin: string) =>
  origin === "string" ? " characters" : origin === "array" ? " entries" : "";

function at(raw: unknown, path: readonly PropertyKey[]): unknown {
  let here: unknown = raw;
  for (const key of path) {
    if (here === null || typeof here !== "object") return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}
