import type { Working } from "../../core/working.ts";
import { alkalinityLoadQuantity } from "../../quantities/water/alkalinityLoad.ts";
import {
  type ContainerWatering,
  containerWatering,
  containerWateringQuantity,
} from "../../quantities/water/containerWatering.ts";
import type { AvailableWater } from "../../water/availableWater.ts";
import { KC_SOURCE, type PotDemand } from "./demand.ts";
import type { Potted } from "./door.ts";
import { DRAIN_PH, type Drain, drainOf, FLUSH_ABOVE_FEED_DS_PER_M } from "./drain.ts";
import { type Feed, feedOf, type Given } from "./feed.ts";
import { oneContainer } from "./filling.ts";
import { type PotWater, potWaterOf } from "./water.ts";

/** Alkalinity up to which irrigation water is desirable [mg/L as CaCO3]. Source: University of Massachusetts. */
export const ALKALINITY_DESIRABLE = 100;
const ALKALINITY_SOURCE = { key: "umass-water-alkalinity", locator: "0 to 100 ppm desirable" };

type PotCode = "flush" | "correct-ph" | "steady";

/** Everything an answer is made of. */
export interface PotReading {
  code: PotCode;
  potted: Potted;
  demand: PotDemand;
  available: AvailableWater;
  /** In the mean of the days, on the mildest and on the thirstiest. */
  usual: ContainerWatering;
  mildest: ContainerWatering;
  thirstiest: ContainerWatering;
  given: Given;
  drain: Drain;
  water: PotWater;
  feed: Feed;
  /** Lime that the water brings to one container in a week; undefined where alkalinity was not tested. */
  lime: { alkalinity: number; gPerPotWeek: number; aboveMmolcPerL: number } | undefined;
}

/** Puts demand, container, drain and water together. */
export function readPots(
  potted: Potted,
  demand: PotDemand,
  available: AvailableWater,
  w: Working,
): PotReading {
  const { state, today, pots } = potted;
  const drain = drainOf(state.drainReadings ?? [], today);
  const water = potWaterOf(state, today);
  writeDemand(w, demand);
  const inputAt = (etcMmPerDay: number) =>
    oneContainer(state.bed, pots, available, etcMmPerDay, drain.toDrain);
  const answer = containerWateringQuantity.compute(inputAt(demand.meanMm));
  w.include(answer);
  const usual = answer.value;
  const potLPerDay = (usual.grossL * usual.timesADay) / usual.everyDays;
  const given = { potLPerDay, allLPerDay: potLPerDay * pots.count };
  const feed = feedOf(potted, water, given, w);
  return {
    code: codeOf(drain, feed),
    potted,
    demand,
    available,
    usual,
    mildest: containerWatering(inputAt(demand.leastMm)),
    thirstiest: containerWatering(inputAt(demand.mostMm)),
    given,
    drain,
    water,
    feed,
    lime: limeOf(water.alkalinityMgCaCO3PerL, given, w),
  };
}

function writeDemand(w: Working, demand: PotDemand): void {
  const mean = (pick: (d: PotDemand["days"][number]) => number) =>
    demand.days.reduce((sum, d) => sum + pick(d), 0) / demand.days.length;
  const [first, last] = [demand.days[0]?.day, demand.days.at(-1)?.day];
  // No rain is counted into pots, so that none was measured moves nothing.
  const { estimated } = demand.air.estimates;
  w.include({ working: [], estimated: estimated.filter((e) => e.input !== "rainMm") });
  const et0Mm = mean((d) => d.et0Mm);
  w.line("ET0", "mean reference evapotranspiration", `${first} to ${last}, ${demand.how}`, et0Mm, "mm/day");
  w.line(
    "Kc",
    "mean coefficient of these days",
    "by stage",
    mean((d) => d.kc),
    "",
    KC_SOURCE,
  );
  w.line("ETc", "mean demand of the stand", "mean of Kc ET0", demand.meanMm, "mm/day", KC_SOURCE);
}

function limeOf(alkalinity: number | undefined, given: Given, w: Working): PotReading["lime"] {
  if (alkalinity === undefined) return undefined;
  const load = alkalinityLoadQuantity.compute({
    alkalinityMgCaCO3PerL: alkalinity,
    litres: 7 * given.potLPerDay,
    keepMgCaCO3PerL: ALKALINITY_DESIRABLE,
  });
  w.line(
    "Alk_keep",
    "alkalinity that may stay",
    "desirable",
    ALKALINITY_DESIRABLE,
    "mg/L",
    ALKALINITY_SOURCE,
  );
  w.include(load);
  const { caco3G, aboveMmolcPerL } = load.value;
  return { alkalinity, gPerPotWeek: caco3G, aboveMmolcPerL };
}

/** How much saltier the drain is than the feed at its saltiest; undefined where one of them is not known. */
export const drainAboveFeed = ({ ec }: Drain, { ec: feedEc }: Feed): number | undefined =>
  ec === undefined || feedEc.measuredHigh === null ? undefined : ec.value - feedEc.measuredHigh;

function codeOf(drain: Drain, feed: Feed): PotCode {
  if ((drainAboveFeed(drain, feed) ?? 0) > FLUSH_ABOVE_FEED_DS_PER_M) return "flush";
  const ph = drain.ph?.value;
  return ph !== undefined && (ph < DRAIN_PH.low || ph > DRAIN_PH.high) ? "correct-ph" : "steady";
}
