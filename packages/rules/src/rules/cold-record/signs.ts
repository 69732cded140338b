import type { FieldNote } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { climatologyYears, sameDayIn } from "../../warmth/climatologyYears.ts";
import { quantileOfSorted } from "../../warmth/shareOfYears.ts";
import type { Hours } from "./hours.ts";
import { type ColdRecord, warmDaysBetween } from "./record.ts";

/** Warm days without a new leaf after which a seedling is taken as stunted (cp). */
export const WARM_DAYS_TO_JUDGE = 14;
/** Weeks from seed to a plant for the bed (guides, from memory: 6 to 8). */
const RAISING_DAYS = 56;
/** A first frost sooner than this after sowing is a spring frost and not the autumn's. */
const SPRING_DAYS = 60;
/** The risk of an early frost that sowing again takes: one year in five (cp). */
const EARLY_FROST_YEARS = 0.2;
/** How far ahead a frost is looked for. */
const LONGEST_SEASON_DAYS = 300;
/** Fewer years on record say nothing of the first frost's date. */
const FEWEST_YEARS = 8;

/** What people saw, and whether starting again is possible. */
export interface Signs {
  growingPointDead: boolean;
  /** Warm days after the coldest day with a note of no new leaf at their end; null where nobody looked. */
  warmDaysWithoutLeaf: number | null;
  /** The day of a new leaf, where the latest note on leaves is one: what was met before it is outgrown. */
  newLeafOn: string | null;
  sparePlants: number | null;
  /** Days left between green fruit on plants sown today and the first autumn frost; null where it cannot be said. */
  daysToSpare: number | null;
  /** What the time to sow cannot be said for want of. */
  timeLacks: "seed-list" | "climatology" | null;
}

/**
 * Reads the notes of leaves, and of growing points since the first cold. Of two notes that contradict each other the later
 * counts. More cold later on never makes a dead growing point one that lives.
 */
export function signsOf(
  state: PlantingState,
  hours: Hours,
  { firstColdDay, coldestDay }: Pick<ColdRecord, "firstColdDay" | "coldestDay">,
  today: string,
): Signs {
  const notes = state.notes.filter((n) => n.on <= today);
  const point = latest(notes, ["growing-point-dead", "growing-point-alive"]);
  const leaf = latest(notes, ["new-leaf", "no-new-leaf"]);
  const spare = latest(notes, ["spare-plants"]);
  return {
    growingPointDead:
      point?.kind === "growing-point-dead" && firstColdDay !== null && point.on >= firstColdDay,
    warmDaysWithoutLeaf:
      leaf?.kind === "no-new-leaf" && coldestDay !== null && leaf.on >= coldestDay
        ? warmDaysBetween(hours, coldestDay, leaf.on)
        : null,
    newLeafOn: leaf?.kind === "new-leaf" ? leaf.on : null,
    sparePlants: spare?.value ?? null,
    ...timeToSow(state, today),
  };
}

function latest(notes: FieldNote[], kinds: FieldNote["kind"][]): FieldNote | undefined {
  return notes
    .filter((n) => kinds.includes(n.kind))
    .reduce<FieldNote | undefined>((a, b) => (a && a.on > b.on ? a : b), undefined);
}

/**
 * Room between a plant sown today reaching green fruit and a first frost that comes sooner in one year of five. Days to
 * colour hold the days to green and more: where they fit there is time, where they do not nothing is said.
 */
function timeToSow(state: PlantingState, today: string): Pick<Signs, "daysToSpare" | "timeLacks"> {
  const list = state.planting.daysToMaturity;
  if (!list) return { daysToSpare: null, timeLacks: "seed-list" };
  const frosts = firstFrosts(state.climatology, today);
  if (frosts.length < FEWEST_YEARS) return { daysToSpare: null, timeLacks: "climatology" };
  const needed = list.from === "sowing" ? list.days : RAISING_DAYS + list.days;
  const daysToSpare = Math.floor(quantileOfSorted(frosts, EARLY_FROST_YEARS)) - needed;
  if (list.to === "colour" && daysToSpare < 0) return { daysToSpare: null, timeLacks: "seed-list" };
  return { daysToSpare, timeLacks: null };
}

/** Days from today to each year's first frost after the spring, sorted; a whole year without one counts as the longest. */
function firstFrosts(climatology: PlantingState["climatology"], today: string): number[] {
  if (!climatology) return [];
  const years = climatologyYears(climatology);
  return years.years
    .flatMap((year) => {
      const start = sameDayIn(year, today);
      for (let d = SPRING_DAYS; d < LONGEST_SEASON_DAYS; d++) {
        const t = years.at(start + d).tMinC;
        if (Number.isNaN(t)) return [];
        if (t <= 0) return [d];
      }
      return [LONGEST_SEASON_DAYS];
    })
    .sort((a, b) => a - b);
}
