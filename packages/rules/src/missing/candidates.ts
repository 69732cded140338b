import type { Answer, NeedsMoreBody } from "../core/rule.ts";
import { measure, type Param, say, wordOf } from "../text/message.ts";
import type { Effect, Run } from "./indices.ts";
import { type AmountOf, shown } from "./readings.ts";
import { valueAt } from "./spread.ts";
import type { Candidate, CostClass, KeyAmount, Spread, UncertainInput } from "./types.ts";

/** Below this an effect is of no use to anybody, and within the noise of the draws (common practice). */
const LEAST = { narrows: 0.01, decisionChanges: 0.02 } as const;

/** An input as something to measure, with what that is worth; none where nobody can, or where it has no value. */
export function candidateOf<S>(input: UncertainInput<S>, amounts: AmountOf[], effect: Effect): Candidate[] {
  const { id, about, spread, cost } = input;
  if (!cost) return [];
  const most = Math.max(0, ...effect.varianceShare);
  const place = effect.varianceShare.indexOf(most);
  // The width of an interval goes with the standard deviation.
  const narrows = 1 - Math.sqrt(1 - most);
  const { decisionChanges } = effect;
  if (narrows < LEAST.narrows && decisionChanges < LEAST.decisionChanges) return [];
  const assumed = { low: valueAt(spread, 0.1), high: valueAt(spread, 0.9) };
  return [
    {
      input: id,
      measure: say(`missing.measure.${id}`, about?.params),
      how: say(`missing.how.${id}`),
      cost,
      assumed: { ...assumed, spread, text: say(`missing.known.${id}`, knownParams(spread, assumed)) },
      settles: false,
      varianceShare: Object.fromEntries(amounts.map((a, k) => [a.id, effect.varianceShare[k] ?? 0])),
      narrows,
      decisionChanges,
      text: say(narrows < LEAST.narrows ? "missing.worth-decides" : "missing.worth", {
        narrows: measure(100 * narrows, "pct"),
        amount: wordOf(`missing.amount.${amounts[place]?.id ?? ""}`),
        changes: measure(100 * decisionChanges, "pct"),
        decides: decisionChanges >= LEAST.decisionChanges ? "yes" : "no",
      }),
    },
  ];
}

function knownParams({ unit }: Spread, { low, high }: { low: number; high: number }): Record<string, Param> {
  const param = (value: number): Param => {
    switch (unit) {
      case "pH":
        return value.toFixed(1);
      case "count":
      case "kg/m3":
        return Math.round(value);
      case "share":
      case "m3/m3":
        return measure(100 * value, "pct");
      default:
        return measure(value, unit);
    }
  };
  return { low: param(low), high: param(high) };
}

/** What the rule cannot speak without, in its own words and order. */
export const settlingCandidates = ({ missing }: NeedsMoreBody): Candidate[] =>
  missing.map(({ field, measure: what, couldMove }) => ({
    input: field,
    measure: what,
    how: couldMove,
    cost: costOf(field),
    settles: true,
    varianceShare: {},
    narrows: 1,
    decisionChanges: 1,
    text: say("missing.settles"),
  }));

/** Soil and buffer pH come from a laboratory; the rest is asked of a person or read off what is there. */
const costOf = (field: string): CostClass =>
  /soilTests|fieldCapacity|wiltingPoint/.test(field) ? "laboratory" : "free";

/** The answer's key amounts now, and what eight draws in ten lie between. */
export const worthOf = (amounts: AmountOf[], now: Answer, all: Run[], today: string): KeyAmount[] =>
  amounts.map((amount, k) => {
    const values = all
      .flatMap(({ outputs }) => (Number.isNaN(outputs[k]) ? [] : [outputs[k] as number]))
      .toSorted((a, b) => a - b);
    const at = (p: number) => shown(amount, values[Math.round(p * (values.length - 1))] ?? Number.NaN, today);
    return {
      id: amount.id,
      name: say(`missing.amount.${amount.id}`),
      unit: amount.unit,
      now: shown(amount, amount.value(now), today),
      low: at(0.1),
      high: at(0.9),
    };
  });
