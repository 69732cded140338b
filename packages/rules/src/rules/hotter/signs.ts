import { addDays, daysBetween } from "../../core/days.ts";
import type { Working } from "../../core/working.ts";
import type { FieldNote } from "../../states/parts.ts";
import { HOT_DAY_C } from "../../tables/stressHeat.ts";
import { type ColdCheck, coldCheckOf } from "../../warmth/coldCheck.ts";
import type { Asked } from "./ask.ts";

/** Why drought must not begin. */
export type HoldReason = "not-set" | "cold" | "heat" | "signs";
/** Why it must end. */
export type StopSign = "wilting-at-dawn" | "end-rot" | "sunscald" | "mites" | "heat" | "too-dry";

/** A sign seen this long ago still counts (common practice); after that the plants have answered. */
const SIGN_DAYS = 14;
const STOP_NOTES = ["wilting-at-dawn", "end-rot", "sunscald", "mites"] as const;
/** Hot days are looked for from the day before yesterday to the third day ahead (common practice). */
const HOT_DAYS_BACK = 2;
const HOT_DAYS_AHEAD = 3;
/** Injury to grown plants by long exposure begins below this (textbook value, from memory). */
const COLD_FLOOR_C = 10;
/** Degree-hours in a fortnight that grown plants shrug off (common practice). */
const ALLOWED_COLD = 60;

/** What the plants and the weather say against drought. */
export interface Signs {
  stop: StopSign[];
  hold: HoldReason[];
  hottest: { day: string; tMaxC: number } | undefined;
  cold: ColdCheck;
}

/** Reads notes, cold and heat. A sign seen since the deficit began stops it; one from before holds it off. */
export function signsOf(asked: Asked, tooDry: boolean, w: Working): Signs {
  const { state, today, zones, from } = asked;
  const begun = from <= today;
  const notes = zones.flatMap(({ zone }) => zone.notes.filter((n) => n.on <= today));
  const noted = STOP_NOTES.filter((kind) =>
    notes.some((n) => n.kind === kind && daysBetween(n.on, today) <= SIGN_DAYS),
  );
  const hottest = hottestDay(asked);
  const hot = hottest !== undefined && hottest.tMaxC >= HOT_DAY_C.default;
  w.line(
    "Tmax",
    `hottest day from ${HOT_DAYS_BACK} days ago to ${HOT_DAYS_AHEAD} days ahead; ${HOT_DAY_C.default} C is too hot (another source: ${HOT_DAY_C.other} C)`,
    hottest?.day ?? "no day known",
    hottest?.tMaxC ?? null,
    "C",
    HOT_DAY_C.source,
  );
  const allowed = state.settings.setOutAllowedDegreeHours ?? ALLOWED_COLD;
  const colds = zones.map(({ zone }) =>
    coldCheckOf({
      notes: zone.notes,
      weather: state.weather,
      site: state.site,
      bed: zone.bed,
      today,
      floorC: COLD_FLOOR_C,
    }),
  );
  const cold = colds.reduce((a, b) => (b.noted || b.degreeHours > a.degreeHours ? b : a));
  const checked = cold.noted || cold.degreeHours > allowed || (cold.lowestC ?? 1) <= 0;
  w.line(
    "Σcold",
    `cold below ${COLD_FLOOR_C} C in the last fortnight, at the plants; up to ${allowed} C h is allowed`,
    "Σ max(0, 10 - T(h))",
    cold.knownDays === 0 ? null : cold.degreeHours,
    "C h",
    { key: "chilling-textbooks", locator: "below 10 C" },
  );
  w.line(
    "set",
    "fruit set noted in every zone",
    "note",
    zones.every(({ zone }) => hasFruit(zone.notes, today)),
    "",
  );
  const hold: HoldReason[] = [];
  if (!zones.every(({ zone }) => hasFruit(zone.notes, today))) hold.push("not-set");
  if (checked) hold.push("cold");
  if (hot) hold.push("heat");
  if (noted.length > 0) hold.push("signs");
  const stop: StopSign[] = begun
    ? [...noted, ...(hot ? ["heat" as const] : []), ...(tooDry ? ["too-dry" as const] : [])]
    : [];
  return { stop, hold, hottest, cold };
}

const hasFruit = (notes: FieldNote[], today: string): boolean =>
  notes.some((n) => (n.kind === "fruit-set" || n.kind === "first-pick") && n.on <= today);

/** The hottest day of those just gone, by measurement, and of those to come, by the forecast. */
function hottestDay({ state, today }: Asked): Signs["hottest"] {
  const days = [
    ...state.weather.filter((d) => d.date >= addDays(today, -HOT_DAYS_BACK) && d.date <= today),
    ...(state.forecast?.days ?? []).filter(
      (d) => d.date >= today && d.date <= addDays(today, HOT_DAYS_AHEAD),
    ),
  ];
  return days
    .flatMap((d) => (d.tMaxC === undefined ? [] : [{ day: d.date, tMaxC: d.tMaxC }]))
    .reduce<Signs["hottest"]>((a, b) => (a && a.tMaxC >= b.tMaxC ? a : b), undefined);
}
