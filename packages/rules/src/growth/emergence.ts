import { addDays } from "../core/days.ts";
import { germinationDays } from "../quantities/climate/germinationDays.ts";
import type { PlantingState } from "../states/states.ts";

/** Where nobody measured the medium: the cool end of a nursery's 20-24 C (FAO's card). */
export const USUAL_MEDIUM_C = 20;

/** The day the seedlings show, noted or reckoned. */
export interface Emergence {
  day: string;
  noted: boolean;
  /** Days it may be off, one standard deviation (cp: a look every day or two; a reckoned one by a third of a fortnight). */
  sdDays: number;
  mediumC: number;
  mediumKnown: boolean;
}

const NOTED_SD_DAYS = 1;
const RECKONED_SD_DAYS = 4;

/** Null where the medium is too cold or too hot for the table to say, and nobody noted the day. */
export function emergenceOf(state: PlantingState, today: string): Emergence | null {
  const { planting, notes } = state;
  const mediumC = planting.propagation?.mediumC ?? USUAL_MEDIUM_C;
  const mediumKnown = planting.propagation?.mediumC !== undefined;
  const noted = notes
    .flatMap((n) => (n.kind === "emerged" && n.on >= planting.sownOn && n.on <= today ? [n.on] : []))
    .sort()[0];
  if (noted !== undefined) return { day: noted, noted: true, sdDays: NOTED_SD_DAYS, mediumC, mediumKnown };
  const day = emergenceBy(planting.sownOn, mediumC);
  return day === null ? null : { day, noted: false, sdDays: RECKONED_SD_DAYS, mediumC, mediumKnown };
}

/** By the table of days alone; null beside a column in which none came up. */
export function emergenceBy(sownOn: string, mediumC: number): string | null {
  if (mediumC > 40) return null;
  const { days } = germinationDays.compute({ soilC: mediumC }).value;
  return days === null ? null : addDays(sownOn, Math.ceil(days));
}
