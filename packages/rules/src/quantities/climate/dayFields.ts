import type { z } from "zod";
import { dayOfYear } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import { day, int } from "../../core/fields.ts";

/** Either field names the day of the year; see {@link dayOfYearFrom}. */
export const dayFields = {
  dayOfYear: int("day of the year, 1 January = 1 (this or date)", "day", 1, 366).optional(),
  date: day("calendar day (this or dayOfYear)").optional(),
} satisfies z.ZodRawShape;

/** The day of the year from either field. Refuses neither, and two that disagree. */
export function dayOfYearFrom(input: { dayOfYear?: number; date?: string }): number {
  if (input.date === undefined) {
    return (
      input.dayOfYear ?? refuse("dayOfYear", "is missing: give dayOfYear or date", "1 to 366, or a date")
    );
  }
  const fromDate = dayOfYear(input.date);
  if (input.dayOfYear !== undefined && input.dayOfYear !== fromDate) {
    refuse("dayOfYear", `does not agree with date ${input.date}`, `${fromDate}`, input.dayOfYear);
  }
  return fromDate;
}

/** Refuses a maximum below the minimum. */
export function refuseCrossedExtremes(tMaxC: number, tMinC: number): void {
  if (tMaxC < tMinC) refuse("tMaxC", `must not be below tMinC (${tMinC})`, `at least ${tMinC}`, tMaxC);
}
