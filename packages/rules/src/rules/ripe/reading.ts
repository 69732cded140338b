import { addDays, daysBetween, instantAt, localDay } from "../../core/days.ts";
import { type Autumn, autumnOf, shareBeforeFrost } from "../../growth/autumn.ts";
import { type Growth, growthOf, type StageForecast } from "../../growth/stages.ts";
import { sprayIntervals } from "../../plant/sprayIntervals.ts";
import type { PlantingState } from "../../states/states.ts";
import { FRUIT_CHILLS_C } from "../../tables/fruitStorage.ts";
import { pickAtOf } from "../../tables/pickStages.ts";
import type { StageId } from "../../tables/stageHeat.ts";
import { coverOver } from "../../warmth/coverOver.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import { FROST_C } from "../set-out/line.ts";

/** Days before the first likely pick from which the question arises for plants still inside (cp). */
export const AHEAD_DAYS = 60;
/** Days from one picking to the next (cp). */
const PICK_EVERY = { green: 7, colour: 4 } as const;
/** Below this chance of colour before frost, picking in colour is not what to plan on: more years without than with. */
export const EVEN = 0.5;

export type RipeCode =
  | "frost"
  | "frost-closed"
  | "closed"
  | "pick"
  | "look"
  | "wait"
  | "pick-green"
  | "none-before-frost";

/** A night of the forecast at the plants. */
export interface ColdNight {
  /** The evening before it. */
  evening: string;
  minC: number;
}

/** Everything the answer is made of. */
export interface Reading {
  code: RipeCode;
  today: string;
  at: "green" | "colour";
  atKnown: boolean;
  growth: Growth | null;
  green: StageForecast | null;
  colour: StageForecast | null;
  /** Picked or noted as ready. */
  picking: boolean;
  lastPick: string | null;
  nextPick: string;
  autumn: Autumn | null;
  greenBefore: number | null;
  colourBefore: number | null;
  frostNight: ColdNight | null;
  chillNight: ColdNight | null;
  /** First local day on which the labels of all sprays let fruit be picked; null where none is open. */
  harvestFrom: string | null;
  /** A label keeps people out until after the evening before the frost: nobody can cover either. */
  shutAtFrost: boolean;
}

/** The stage's dates where the weather is known; picking that has begun needs none. */
export function readingOf(state: PlantingState, today: string): Reading {
  const found = growthOf(state, today);
  const growth = found === null || found.course.filledDays < 0 ? null : found;
  const { at, known } = pickAtOf(state.planting);
  const stage = (id: StageId) => growth?.stages.find((s) => s.stage === id) ?? null;
  const green = stage("mature-green");
  const colour = stage("colour");
  const target = at === "green" ? green : colour;
  const lastPick = lastPickOf(state, today);
  const ready = notedReady(state, today, at);
  const autumn = autumnOf(state, today, FROST_C);
  const before = (s: StageForecast | null) =>
    s && growth && autumn ? shareBeforeFrost(growth.course, s.need, autumn) : null;
  const frostNight = firstNight(state, today, FROST_C);
  const part: Omit<Reading, "code"> = {
    today,
    at,
    atKnown: known,
    growth,
    green,
    colour,
    picking: lastPick !== null || ready,
    lastPick,
    nextPick: nextPickOf(lastPick, at, today),
    autumn,
    greenBefore: before(green),
    colourBefore: before(colour),
    frostNight,
    chillNight: firstNight(state, today, FRUIT_CHILLS_C),
    harvestFrom: pickableFrom(state, today),
    shutAtFrost: shutOn(state, frostNight?.evening),
  };
  return { code: codeOf(part, target), ...part };
}

/** The later of the days on which the labels let fruit be picked and people in: picking is entering. */
function pickableFrom(state: PlantingState, today: string): string | null {
  const { timeZone } = state.site;
  const { reEntryUntil, harvestFrom } = sprayIntervals(state.sprays ?? [], timeZone, state.asOf);
  const opens = reEntryUntil === null ? today : localDay(reEntryUntil, timeZone);
  return opens > (harvestFrom ?? today) ? opens : harvestFrom;
}

/** Plants are covered in the afternoon: a bed that opens later is not covered that evening. */
const COVERING_HOUR = 15;

function shutOn(state: PlantingState, evening: string | undefined): boolean {
  const { timeZone } = state.site;
  const { reEntryUntil } = sprayIntervals(state.sprays ?? [], timeZone, state.asOf);
  if (evening === undefined || reEntryUntil === null) return false;
  return Date.parse(reEntryUntil) > Date.parse(instantAt(evening, COVERING_HOUR, timeZone));
}

function codeOf(r: Omit<Reading, "code">, target: StageForecast | null): RipeCode {
  const reckoned = target !== null && target.dates.likely !== null && target.dates.likely <= r.today;
  const greenThere = r.green !== null && r.green.dates.likely !== null && r.green.dates.likely <= r.today;
  if (r.frostNight && (r.picking || reckoned || greenThere)) {
    const closed = r.harvestFrom !== null && r.harvestFrom > r.frostNight.evening;
    return closed || r.shutAtFrost ? "frost-closed" : "frost";
  }
  if (r.picking) return r.harvestFrom !== null && r.harvestFrom > r.nextPick ? "closed" : "pick";
  if (reckoned) return "look";
  if (r.greenBefore !== null && r.greenBefore < EVEN) return "none-before-frost";
  if (r.at === "colour" && r.colourBefore !== null && r.colourBefore < EVEN) return "pick-green";
  return "wait";
}

/** The last day fruit was picked, from the record of picking or a note. */
function lastPickOf(state: PlantingState, today: string): string | null {
  const { sownOn } = state.planting;
  const days = [
    ...(state.picked ?? []).map((p) => p.on),
    ...state.notes.filter((n) => n.kind === "first-pick").map((n) => n.on),
  ].filter((day) => day >= sownOn && day <= today);
  return days.toSorted().at(-1) ?? null;
}

function notedReady(state: PlantingState, today: string, at: "green" | "colour"): boolean {
  const kinds = at === "green" ? ["mature-green", "colouring"] : ["colouring"];
  return state.notes.some((n) => kinds.includes(n.kind) && n.on <= today && n.on >= state.planting.sownOn);
}

function nextPickOf(lastPick: string | null, at: "green" | "colour", today: string): string {
  if (lastPick === null) return today;
  const next = addDays(lastPick, PICK_EVERY[at]);
  return next > today ? next : today;
}

/** The first night of the forecast with a minimum at the plants at or below a mark; a day's minimum falls towards its morning. */
function firstNight(state: PlantingState, today: string, markC: number): ColdNight | null {
  const shiftC = siteShift(state.site, 1).shiftC;
  for (const day of state.forecast?.days ?? []) {
    if (day.tMinC === undefined || daysBetween(today, day.date) < 1) continue;
    const offset = coverOver(state.bed, day.date).offsetC;
    if (offset === null) continue;
    const minC = day.tMinC + shiftC + offset;
    if (minC <= markC) return { evening: addDays(day.date, -1), minC };
  }
  return null;
}
