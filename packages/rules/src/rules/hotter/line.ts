import { addDays, daysBetween } from "../../core/days.ts";
import type { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { climateAdjustedKc, type KcLevels, kcOnDay } from "../../quantities/water/cropCoefficient.ts";
import { adjustedDepletionFraction, totalAvailableWaterMm } from "../../quantities/water/rootZone.ts";
import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SOIL_WATER_SOURCE } from "../../tables/soils.ts";
import { type AvailableWater, availableWaterOf } from "../../water/availableWater.ts";
import { deficitDepletionMm, dryingCycle } from "../../water/deficitDepletion.ts";
import { type Demand, demandOf } from "../../water/demand.ts";
import { STAGES } from "../../water/stages.ts";
import { heightM, rootZoneDepthM, type StandingZone } from "../../water/zone.ts";
import type { HeldLine } from "../irrigate/heldLine.ts";
import type { Asked } from "./ask.ts";

/** Days of weather behind the expected demand, and days within which they must lie (common practice). */
const MEAN_OVER_DAYS = 7;
const WEATHER_WITHIN_DAYS = 14;

/** The root zone on one day, and how far it may dry for the share asked. */
interface LineDay {
  day: string;
  etcMm: number;
  tawMm: number;
  rawMm: number;
  lineMm: number;
}

/** What the line of one zone rests on. */
export interface ZoneLine {
  zone: StandingZone;
  index: number;
  available: AvailableWater;
  et0Mm: number;
  kcOn: (day: string) => number;
  on: (day: string) => LineDay;
  /** Days from a full root zone to the line without rain. */
  cycleDays: number;
  /** The day the line is said for. */
  start: string;
  /** The valve is watered by this line already. */
  held: boolean;
}

/** The weather of the last two weeks; undefined where no day of it has both extremes. */
export function recentDemand({ state, today }: Asked): Demand | undefined {
  const from = addDays(today, -WEATHER_WITHIN_DAYS);
  const [last] = state.weather
    .flatMap((w) => (w.date >= from && w.date <= today ? [w.date] : []))
    .toSorted()
    .slice(-1);
  return last === undefined ? undefined : demandOf(state.weather, state.site, from, last);
}

/** Mean reference evapotranspiration of the last measured days. */
function meanEt0(demand: Demand): number {
  const measured = demand.days.flatMap((d) => (d.measured ? [d.et0Mm] : [])).slice(-MEAN_OVER_DAYS);
  return measured.reduce((a, b) => a + b, 0) / measured.length;
}

/**
 * The depletion at which to water each zone, so that over each drying cycle it gets the share asked. Undefined for a zone
 * whose soil is not known.
 *
 * Kc by the single coefficient without mulch (FAO-56 Table 12, eq. 62, 65, 66): it only moves p, and by 0.04 for each
 * mm a day. Where **irrigate** holds the dry spell already, use is as it reckons it on the day it waters by, and in
 * proportion on the others: one valve has one line.
 *
 * @param available taken in place of the zone's own soil, for saying how far the line could move
 */
export function lineOfZone(
  asked: Asked,
  entry: { zone: StandingZone; index: number },
  demand: Demand,
  available = availableWaterOf(entry.zone.bed, `zones.${entry.index}.bed`),
  held?: HeldLine,
): ZoneLine | undefined {
  if (!available) return undefined;
  const { zone } = entry;
  const { today, etShare } = asked;
  const et0Mm = meanEt0(demand);
  const levels = kcLevels(zone, today, demand);
  const kcOn = (day: string) => kcOnDay(STAGES, levels, daysBetween(zone.setOutOn, day));
  const heldEtcMm = held?.zones.get(entry.index)?.etcMm;
  const by = held && heldEtcMm ? { day: held.day, etcMm: heldEtcMm } : undefined;
  const ownEtcMm = (day: string) => kcOn(day) * et0Mm;
  const share = by ? by.etcMm / ownEtcMm(by.day) : 1;
  const on = (day: string): LineDay => {
    const etcMm = ownEtcMm(day) * share;
    const tawMm = totalAvailableWaterMm({
      fieldCapacity: available.m3PerM3,
      wiltingPoint: 0,
      rootDepthM: rootZoneDepthM(zone, day, today),
    });
    const depletionFractionTable = PEPPER_WATER.depletionFraction.value;
    const rawMm = adjustedDepletionFraction(depletionFractionTable, etcMm) * tawMm;
    const lineMm = deficitDepletionMm({ tawMm, depletionFractionTable, etcMmPerDay: etcMm, etShare });
    return { day, etcMm, tawMm, rawMm, lineMm };
  };
  const start = on(by?.day ?? startOf(asked));
  const cycle = dryingCycle({
    tawMm: start.tawMm,
    rawMm: start.rawMm,
    etcMmPerDay: start.etcMm,
    depletionMm: start.lineMm,
  });
  return {
    ...entry,
    available,
    et0Mm,
    kcOn,
    on,
    cycleDays: cycle.days,
    start: start.day,
    held: by !== undefined,
  };
}

/** The first day on which the line holds: today, or the deficit's first day where that is ahead. */
export const startOf = ({ today, from }: Pick<Asked, "today" | "from">): string =>
  from > today ? from : today;

function kcLevels(zone: StandingZone, today: string, demand: Demand): KcLevels {
  const { kc, kcStaked } = PEPPER_WATER;
  const adjust = (kcTable: number) =>
    climateAdjustedKc({ ...demand, kcTable, heightM: heightM(zone, today) });
  return { ini: kc.ini, mid: adjust(zone.planting.staked ? kcStaked.mid : kc.mid), end: adjust(kc.end) };
}

/** The line of the governing zone, as a reader would check it with a pencil. */
export function writeLine(w: Working, asked: Asked, z: ZoneLine, demand: Demand): void {
  const d = z.on(z.start);
  w.include(demand.estimates);
  if (z.available.how === "texture") {
    w.estimate(
      "fieldCapacity, wiltingPoint",
      `from the texture: ${z.available.m3PerM3.toFixed(3)} m3/m3, the middle of ${z.available.low} to ${z.available.high}`,
      SOIL_WATER_SOURCE,
    );
  }
  w.line("ET0", "mean of the last 7 measured days", "", z.et0Mm, "mm/day", fao56("eq. 6"));
  w.line(
    "ETc",
    "crop evapotranspiration without stress",
    z.held ? "as the watering of this valve reckons it for that day" : "Kc ET0",
    d.etcMm,
    "mm/day",
    fao56(z.held ? "eq. 58, 69" : "eq. 58"),
  );
  w.line(
    "Zr",
    "depth of the root zone",
    "grows from setting out to mid season, or as somebody dug",
    rootZoneDepthM(z.zone, d.day, asked.today),
    "m",
    fao56("Table 22, p. 163"),
  );
  w.line(
    "TAW",
    "total available water",
    `1000 θ Zr, θ = ${z.available.m3PerM3} (${z.available.how})`,
    d.tawMm,
    "mm",
    fao56("eq. 82"),
  );
  w.line(
    "RAW",
    "may be missing before plants are held back",
    "p TAW, p = 0.30 + 0.04 (5 - ETc)",
    d.rawMm,
    "mm",
    fao56("eq. 83"),
  );
  w.line(
    "share",
    "water allowed over each drying cycle",
    asked.chosen ? "as chosen" : "the mildest tabulated; nobody chose one",
    asked.etShare,
    "fraction",
    { key: "common-practice" },
  );
  w.line(
    "D",
    "missing when the stressed half is watered",
    "root of D / {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]} = share",
    d.lineMm,
    "mm",
    fao56("eq. 84"),
  );
  w.line(
    "t",
    "days from a full root zone to that, without rain",
    "D / (share ETc)",
    z.cycleDays,
    "days",
    fao56("eq. 84"),
  );
}
