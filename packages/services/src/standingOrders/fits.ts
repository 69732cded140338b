import type { StandingOrderTerms } from "@pith/contract";
import { GRADES, localDay, localHour } from "@pith/rules";
import type { Advice } from "../advice/freshAnswer.ts";

/**
 * Whether an order's terms cover this answer, at this instant at the site, after so many in the last seven days. The
 * first reason why not is handed back; what does not fit stays a draft. Pure.
 */
export function whyNot(
  terms: StandingOrderTerms,
  answer: Advice,
  { now, timeZone, issuedThisWeek }: { now: string; timeZone: string; issuedThisWeek: number },
): "decision" | "past" | "hours" | "grade" | "estimated" | "amount" | "often" | null {
  const { decisionCodes, mostPerWeek, leastGrade, measuredOnly, hours, mostAmounts, endsOn } = terms;
  if (!decisionCodes.includes(answer.decision.code)) return "decision";
  if (localDay(now, timeZone) > endsOn) return "past";
  if (hours && !isWithin(localHour(now, timeZone), hours)) return "hours";
  // Strongest first.
  if (leastGrade !== null && GRADES.indexOf(answer.grade) > GRADES.indexOf(leastGrade)) return "grade";
  // Any estimated input, whether or not it would turn the decision: the stricter reading.
  if (measuredOnly && answer.estimated.length > 0) return "estimated";
  for (const [name, most] of Object.entries(mostAmounts)) {
    const amount = answer.amounts[name];
    // An amount that the answer does not name is not known to be small enough.
    if (amount === undefined || amount > most) return "amount";
  }
  return issuedThisWeek >= mostPerWeek ? "often" : null;
}

/** From the first hour on, to the end of the one before the last; through midnight where the first is the later. */
export const isWithin = (hour: number, { from, to }: { from: number; to: number }): boolean =>
  from < to ? hour >= from && hour < to : hour >= from || hour < to;
