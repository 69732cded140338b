import { addDays, daysBetween, localDay } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";
import { PROTECTIONS, type Protection } from "../../tables/covers.ts";
import { type Members, membersAhead } from "../../warmth/blend.ts";
import type { ClimatologyYears } from "../../warmth/climatologyYears.ts";
import { type CoverOver, coverOver } from "../../warmth/coverOver.ts";
import { type SiteShift, siteShift } from "../../warmth/siteShift.ts";
import { type SoilReading, soilAhead, soilNow } from "../../warmth/soilTemperature.ts";
import { type DateDose, doseReader, type Parts } from "./doseCurve.ts";
import { earliestLead, isWithin, type Reading, steadyFrom } from "./earliest.ts";
import { ESTABLISHMENT_DAYS, HORIZON_DAYS, type Line, lineOf, SOIL_FLOOR_C } from "./line.ts";
import { DAYS_NEEDED, EXTREME_DAYS } from "./nights.ts";

/** One way of setting out: the bed as it stands, in the open, or with a protection put up. */
export interface Way {
  curve: readonly Readonly<DateDose>[];
  within: boolean[];
  /** First steady date from the wanted day on. */
  earliest: number | null;
}

/** Everything the answer is made of. */
export interface Assessment {
  today: string;
  /** Lead of the wanted day. */
  wanted: number;
  line: Line;
  members: Members;
  site: SiteShift;
  cover: CoverOver;
  /** Whether a cover stands over the bed on the day of that lead. */
  standsOn(lead: number): boolean;
  soil: SoilReading | null;
  /** Soil on each date; NaN where neither measured nor modelled. */
  soilC: number[];
  asItStands: Way;
  /** The same bed without any cover; the same object where none stands. */
  open: Way;
  /** The lightest protection that makes the wanted day steady, where the bed alone does not. */
  protection: { kind: Protection; way: Way } | null;
  /** The heaviest protection's earliest date, where even it is too late for the wanted day. */
  laterProtection: { kind: Protection; way: Way } | null;
  earliestIfWarmer: number | null;
  earliestIfColder: number | null;
  decision: "go" | "protect" | "wait";
}

/** Weighs every date of the next 90 days. Years as climatologyYears gives them. */
export function assess(state: PlantingState, years: ClimatologyYears): Assessment {
  const today = localDay(state.asOf, state.site.timeZone);
  const planned = state.planting.plannedSetOutOn;
  const wanted = planned === undefined ? 0 : Math.max(0, daysBetween(today, planned));
  const line = lineOf(state.settings, state.notes, today);
  const members = membersAhead(years, today, DAYS_NEEDED, state.forecast);
  const site = siteShift(state.site, ESTABLISHMENT_DAYS);
  const soil = soilNow(state, today);
  const soilC = soilAhead(years, state.bed, soil, today, HORIZON_DAYS + 1);
  const coverShift =
    state.bed.covers.length === 0
      ? []
      : Array.from(
          { length: EXTREME_DAYS },
          (_, i) => coverOver(state.bed, addDays(today, i - 1)).offsetC ?? 0,
        );
  const standing = (lead: number) => coverShift[lead + 1] ?? 0;
  const covered = coverShift.some((c) => c !== 0);

  const dosesWith = doseReader(members, today, state.site.latitudeDeg, line);
  const wayWith = (
    nightShiftC: (lead: number) => number,
    reading: Reading = "estimate",
    parts: Parts = "decision",
  ): Way => {
    const curve = dosesWith(nightShiftC, parts);
    const within = curve.map((date) =>
      isWithin(date, line, !((soilC[date.lead] ?? 0) < SOIL_FLOOR_C), reading),
    );
    return { curve, within, earliest: earliestLead(within, wanted) };
  };

  const asItStands = wayWith((lead) => site.shiftC + standing(lead), "estimate", "risk-and-spread");
  const colder = wayWith((lead) => site.shiftC + standing(lead) - site.plusMinusC, "high");
  const warmer = wayWith((lead) => site.shiftC + standing(lead) + site.plusMinusC, "low");
  withInterval(asItStands, warmer, colder);
  const open = covered ? wayWith(() => site.shiftC) : asItStands;

  const go = steadyFrom(asItStands.within, wanted);
  let protection: Assessment["protection"] = null;
  let laterProtection: Assessment["laterProtection"] = null;
  if (!go) {
    for (const kind of PROTECTIONS) {
      const way = wayWith((lead) => site.shiftC + Math.max(standing(lead), kind.offsetC));
      if (steadyFrom(way.within, wanted)) {
        protection = { kind, way };
        break;
      }
      if (way.earliest !== null && way.earliest < (asItStands.earliest ?? Number.POSITIVE_INFINITY)) {
        laterProtection = { kind, way };
      }
    }
  }
  return {
    today,
    wanted,
    line,
    members,
    site,
    cover: coverOver(state.bed, addDays(today, wanted)),
    standsOn: (lead) => coverOver(state.bed, addDays(today, lead)).covers.length > 0,
    soil,
    soilC,
    asItStands,
    open,
    protection,
    laterProtection: protection ? null : laterProtection,
    earliestIfWarmer: warmer.earliest,
    earliestIfColder: colder.earliest,
    decision: go ? "go" : protection ? "protect" : "wait",
  };
}

/** The interval of a date's dose: few years, and a site that may be warmer or colder than its station. */
function withInterval(middle: Way, warmer: Way, colder: Way): void {
  middle.curve = middle.curve.map((date, lead) => ({
    ...date,
    beyond: widen(date.beyond, warmer.curve[lead]?.beyond, colder.curve[lead]?.beyond),
  }));
}

function widen(
  middle: DateDose["beyond"],
  warmer: DateDose["beyond"] | undefined,
  colder: DateDose["beyond"] | undefined,
): DateDose["beyond"] {
  if (!middle) return null;
  const { hits, n, estimate } = middle;
  const low = Math.min(middle.low, warmer?.low ?? middle.low);
  const high = Math.max(middle.high, colder?.high ?? middle.high);
  return { hits, n, estimate, low, high };
}
