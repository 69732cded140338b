import { daysBetween, instantAt } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { type Assessment, assess } from "./assess.ts";
import { HORIZON_DAYS } from "./line.ts";

/** The day plants are to go out, and who says so. */
export interface SetOutDay {
  day: string;
  how: "planned" | "set-out";
}

/** Several rules ask for one state's assessment, and a state is never changed once it is through the door. */
const assessed = new WeakMap<PlantingState, Assessment>();

/** Set-out's own assessment of a state with climatology. */
export function assessmentOf(state: PlantingState, climatology: NonNullable<PlantingState["climatology"]>) {
  const known = assessed.get(state);
  if (known) return known;
  const found = assess(state, climatologyYears(climatology));
  assessed.set(state, found);
  return found;
}

/**
 * The day that set-out comes to: the planned one where it may stand, else the earliest after it. The planned one alone
 * where nothing tells of its nights; null where no date opens, undefined where nobody planned and nothing tells.
 */
export function setOutDayOf(state: PlantingState, today: string): SetOutDay | null | undefined {
  const planned = state.planting.plannedSetOutOn;
  const alone: SetOutDay | undefined = planned === undefined ? undefined : { day: planned, how: "planned" };
  if (!state.climatology || (planned !== undefined && daysBetween(today, planned) > HORIZON_DAYS))
    return alone;
  const a = assessmentOf(state, state.climatology);
  if (!a.asItStands.curve[a.wanted]?.beyond || a.cover.covers.includes("heated-house")) return alone;
  if (alone && a.decision !== "wait") return alone;
  const lead = a.decision === "wait" ? a.asItStands.earliest : a.wanted;
  const day = lead === null ? undefined : a.asItStands.curve[lead]?.day;
  return day === undefined ? null : { day, how: "set-out" };
}

/**
 * The earliest day from `from` on that set-out would let hardened plants with their leaves go out, by past years alone:
 * sowing is decided months ahead of any forecast. Null where none opens, undefined where the years do not tell.
 */
export function earliestFrom(state: PlantingState, from: string): string | null | undefined {
  const { forecast: _, climatology, ...rest } = state;
  if (!climatology) return undefined;
  const { plannedSetOutOn: __, ...planting } = state.planting;
  const then: PlantingState = {
    ...rest,
    asOf: instantAt(from, 12, state.site.timeZone),
    planting,
    notes: [{ on: from, kind: "hardened" }],
    weather: [],
  };
  const { asItStands } = assess(then, climatologyYears(climatology));
  if (!asItStands.curve[0]?.beyond) return undefined;
  return asItStands.earliest === null ? null : (asItStands.curve[asItStands.earliest]?.day ?? null);
}
