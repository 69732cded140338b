import { addDays, dayOfYear } from "../core/days.ts";
import type { Bed, FieldNote, Site, WeatherDay } from "../states/parts.ts";
import { coverOver } from "./coverOver.ts";
import { degreeHoursBelow, doseShape } from "./dose.ts";
import { siteShift } from "./siteShift.ts";
import { weatherByDay } from "./weatherByDay.ts";

/** What the cold of the last fortnight left on grown plants. */
export interface ColdCheck {
  /** A dead growing point, or no new leaf, and nothing better seen since. */
  noted: boolean;
  degreeHours: number;
  /** Lowest minimum at the plants; null where no day is known. */
  lowestC: number | null;
  knownDays: number;
}

/** Cold is looked for in the last fortnight, signs of it in the last four weeks (common practice). */
const COLD_DAYS = 14;
const SIGN_DAYS = 28;

/**
 * Signs that people noted, and degree-hours below a floor over the last fortnight of daily extremes, moved to the site and
 * its covers. Days without extremes count nowhere, so the sum is "at least".
 */
export function coldCheckOf(input: {
  notes: FieldNote[];
  weather: WeatherDay[];
  site: Site;
  bed: Bed;
  today: string;
  floorC: number;
}): ColdCheck {
  const { weather, site, bed, today, floorC } = input;
  const byDay = weatherByDay(weather);
  const shiftC = siteShift(site, 1).shiftC;
  const minimumOn = (day: string): number => {
    const tMinC = byDay.get(day)?.tMinC;
    return tMinC === undefined ? Number.NaN : tMinC + shiftC + (coverOver(bed, day).offsetC ?? 0);
  };
  const maximumOn = (day: string): number => byDay.get(day)?.tMaxC ?? Number.NaN;
  let degreeHours = 0;
  let lowestC: number | null = null;
  let knownDays = 0;
  for (let i = COLD_DAYS; i >= 0; i--) {
    const day = addDays(today, -i);
    const tMinC = minimumOn(day);
    const shape = doseShape(site.latitudeDeg, dayOfYear(day));
    const dose = degreeHoursBelow(
      floorC,
      shape,
      tMinC,
      maximumOn(day),
      maximumOn(addDays(day, -1)),
      minimumOn(addDays(day, 1)),
    );
    if (Number.isNaN(dose)) continue;
    knownDays += 1;
    degreeHours += dose;
    lowestC = lowestC === null ? tMinC : Math.min(lowestC, tMinC);
  }
  return { noted: notedCold(input.notes, today), degreeHours, lowestC, knownDays };
}

/** Of two notes that contradict each other the later counts; on the same day the worse one. */
function notedCold(notes: FieldNote[], today: string): boolean {
  const recent = notes.filter((n) => n.on <= today && n.on >= addDays(today, -SIGN_DAYS));
  const last = (...kinds: FieldNote["kind"][]) =>
    recent
      .flatMap((n) => (kinds.includes(n.kind) ? [n.on] : []))
      .toSorted()
      .at(-1) ?? "";
  const bad = last("growing-point-dead", "no-new-leaf");
  return bad !== "" && bad >= last("growing-point-alive", "new-leaf");
}
