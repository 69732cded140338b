import { PEPPER_WATER } from "../../tables/cropCoefficients.ts";
import { SEASON_DAYS } from "../../water/stages.ts";
import type { ZoneReading } from "./reading.ts";
import type { ValveSetting } from "./setting.ts";
import { runAhead, triggerMm } from "./zoneReading.ts";

/** Farther off, forecast rain is not waited for (common practice). */
const RAIN_WAITED_FOR_DAYS = 3;
/** Chance that the awaited rain stays out which is accepted where the office has set none (common practice). */
const ACCEPTED_RAIN_RISK = 0.3;
/** Of the available water; from there plants wilt by day, drop flowers and may not come back (common practice). */
const WILTING_SHARE = 0.9;
/** What such a bed or pot stands to lose (common practice). */
const HARM_OF_WILTING = 0.5;

/** What days without water cost from a depletion on. */
interface DryLoss {
  /** Share of the planting's worth. */
  harm: number;
  /** Share of the water it could use that it does not get. */
  short: number;
  wilts: boolean;
}

/**
 * What so many dry days cost: FAO-56's yield response to the share of the season's water that is then missing (the days
 * count as their part of the season), and much more where the plants would wilt.
 *
 * @param after days from the open day until the dry ones begin
 */
export function lossOf(r: ZoneReading, startMm: number, days: number, after = 0): DryLoss {
  const from = Math.min(r.closed + Math.max(0, after), r.days.length - days);
  const ahead = runAhead({ season: r.season, closed: from }, { ...r.start, depletionMm: startMm }, days, {
    rain: false,
  });
  let wanted = 0;
  let had = 0;
  let wilts = false;
  for (let i = from; i < from + days; i++) {
    wanted += ahead.etcMm[i] as number;
    had += ahead.etcAdjMm[i] as number;
    wilts ||= (ahead.depletionMm[i] as number) >= WILTING_SHARE * (r.season.tawMm[i] as number);
  }
  const short = wanted > 0 ? Math.max(0, 1 - had / wanted) : 0;
  const slow = (PEPPER_WATER.ky.value * short * days) / SEASON_DAYS;
  return { harm: Math.min(1, wilts ? HARM_OF_WILTING + slow : slow), short, wilts };
}

/** Rain worth waiting for, and what waiting risks. */
export interface RainAwaited {
  /** The day by whose evening it should have filled the bed enough. */
  day: string;
  rainMm: number;
  /** Chance that it stays out, 0 to 1; undefined where the forecast gives none. */
  staysOut: number | undefined;
  accepted: number;
  loss: DryLoss;
  holds: boolean;
}

/**
 * Whether forecast rain within three days is waited for, where water is due. Every zone must be carried by it.
 *
 * With a chance of rain: held where the chance that it stays out is at most the accepted one and no plant would wilt
 * meanwhile; the risk is that chance times what the dry days would cost. Several rainy days count as the likeliest one
 * alone, since showers of one weather hang together. Without a chance: held only while no more than RAW is missing and
 * today's own rain would keep it so.
 */
export function rainAwaited(
  setting: ValveSetting,
  zones: ZoneReading[],
  governing: ZoneReading,
): RainAwaited | undefined {
  const { state, openDay } = setting;
  const until = zones.map((z) => carriedOn(setting, z));
  if (until.some((day) => day === undefined)) return undefined;
  const wait = Math.max(...until.map((days) => days ?? 0));
  if (wait === 0) return undefined;
  const last = governing.days[governing.closed + wait - 1]?.day ?? openDay;
  const rainy = (state.forecast?.days ?? []).filter(
    (d) => d.date >= openDay && d.date <= last && (d.rainMm ?? 0) > 0,
  );
  const chances = rainy.flatMap((d) => (d.rainChancePct === undefined ? [] : [d.rainChancePct / 100]));
  const staysOut = chances.length > 0 ? 1 - Math.max(...chances) : undefined;
  const losses = zones.map((z) => lossOf(z, z.depletionMm, wait));
  const loss = losses.reduce((worst, l) => (l.harm > worst.harm ? l : worst));
  const accepted = state.settings.irrigateRainRisk ?? ACCEPTED_RAIN_RISK;
  const withinRaw = zones.every((z) => z.depletionMm < z.today.triggerMm && z.today.rawMm >= z.today.etcMm);
  const wilts = losses.some((l) => l.wilts);
  return {
    day: last,
    rainMm: rainy.reduce((sum, d) => sum + (d.rainMm ?? 0), 0),
    staysOut,
    accepted,
    loss,
    holds: staysOut === undefined ? withinRaw && wait === 1 : staysOut <= accepted && !wilts,
  };
}

/**
 * Days until the evening on which forecast rain has brought a zone back within its trigger: 0 where it is not due in that
 * time anyway, undefined where no rain within reach does.
 */
function carriedOn(setting: ValveSetting, z: ZoneReading): number | undefined {
  const today = z.days[z.closed]?.day ?? "";
  if (z.decidedBy === "tension-kpa" && z.due?.day === today) return undefined;
  if ((z.due?.day ?? "9999") > today && z.depletionMm < z.today.triggerMm) return 0;
  const ahead = runAhead(z, z.start, RAIN_WAITED_FOR_DAYS, { rain: true });
  let fallen = 0;
  for (let k = 0; k < RAIN_WAITED_FOR_DAYS; k++) {
    const i = z.closed + k;
    fallen += z.season.rainMm[i] as number;
    if (fallen > 0 && (ahead.depletionMm[i] as number) <= triggerMm(setting, z, ahead, i)) return k + 1;
  }
  return undefined;
}
