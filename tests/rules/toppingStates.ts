import { type Advice, type AnswerBody, type FieldNote, type PlantingState, rules } from "@pith/rules";
import { advice, climatology, dayAfter, planting } from "./warmthStates.ts";

/** Plants at an even 24 C inside and out, so that heat and days are the same thing. Invented. */

export const noted = (kind: FieldNote["kind"], on: string, value?: number): FieldNote => ({
  on,
  kind,
  ...(value !== undefined && { value }),
});

/** Hardened plants with so many true leaves counted on the day of the question. */
export const sturdy = (leaves: number, today = "2026-05-15"): FieldNote[] => [
  noted("emerged", "2026-04-01"),
  noted("hardened", today),
  noted("true-leaves", today, leaves),
];

/** Years at 24 C from March until a first frost on that day of the year. */
export const autumn = (frostOn: number | ((year: number) => number), years = 10) =>
  climatology(years, (year, day) => {
    const frost = typeof frostOn === "number" ? frostOn : frostOn(year);
    return day >= 59 && day < frost ? { tMinC: 24, tMaxC: 24 } : { tMinC: -1, tMaxC: 4 };
  });

const base = planting();

/** Fit plants with seven leaves on 15 May, out a fortnight later, with a long autumn, unless changed. */
export const at = (change: Partial<PlantingState> = {}): PlantingState =>
  planting({
    planting: {
      ...base.planting,
      sownOn: "2026-03-20",
      plannedSetOutOn: "2026-05-29",
      propagation: { mediumC: 25, growingC: 24 },
    },
    notes: sturdy(7),
    climatology: autumn(330),
    ...change,
  });

export const advised = (change: Partial<PlantingState>): Advice => advice("topping", at(change));

/** The same plants, everything so many days later: sown, up, counted, set out and asked. */
export function shifted(state: PlantingState, days: number): PlantingState {
  const { planting: plants, notes, asOf } = state;
  return {
    ...state,
    asOf: `${dayAfter(asOf.slice(0, 10), days)}T12:00:00Z`,
    planting: {
      ...plants,
      sownOn: dayAfter(plants.sownOn, days),
      plannedSetOutOn: dayAfter(plants.plannedSetOutOn as string, days),
    },
    notes: notes.map((n) => ({ ...n, on: dayAfter(n.on, days) })),
  };
}

/** The rule by itself: a property asks hundreds of times, and the other rules are not asked about. */
export const ran = (state: PlantingState): AnswerBody =>
  rules.find((r) => r.id === "topping")?.run(state) as AnswerBody;
