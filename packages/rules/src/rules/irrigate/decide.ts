import { addDays } from "../../core/days.ts";
import { runTime } from "../../quantities/water/runTime.ts";
import { type Leaching, leachingOf } from "../../water/salt.ts";
import { type RainAwaited, rainAwaited } from "./rainHold.ts";
import type { ZoneReading } from "./reading.ts";
import type { ValveSetting } from "./setting.ts";

/** The decision for the whole valve. */
export interface ValveReading {
  code: "water-now" | "wait" | "hold";
  governing: ZoneReading;
  zones: ZoneReading[];
  netMm: number;
  grossMm: number;
  litres: number;
  minutes: number;
  rounds: number;
  /** Day of the next watering where none is due now; undefined beyond the horizon. */
  nextDay: string | undefined;
  leaching: Leaching | undefined;
  /** Forecast rain that could stand in for a watering due now. */
  rain: RainAwaited | undefined;
}

const LATE = "9999-12-31";
const dueDay = (r: ZoneReading) => r.due?.day ?? LATE;
const share = (r: ZoneReading) => r.depletionMm / r.today.triggerMm;
const sum = (values: Float64Array, to: number) => values.subarray(0, to).reduce((a, b) => a + b, 0);

/** Net depth to give on the open day: what is missing, and where the root zone cannot bridge a day, that day's use too. */
function netNeededMm(r: ZoneReading): { netMm: number; rounds: number } {
  const small = r.today.rawMm < r.today.etcMm;
  const missing =
    r.decidedBy === "tension-kpa" ? Math.max(r.depletionMm, r.due?.depletionMm ?? 0) : r.depletionMm;
  const netMm = missing + (small ? r.today.etcMm : 0);
  return { netMm, rounds: small ? Math.max(1, Math.ceil(netMm / r.today.rawMm)) : 1 };
}

/** Whether a zone is due on the open day: by tension where that decides, else by what is missing. */
const isDue = (r: ZoneReading, today: string): boolean =>
  dueDay(r) <= today || (r.decidedBy !== "tension-kpa" && r.depletionMm >= r.today.triggerMm);

/** The zone that is short first decides; among equals the one with most of its ready water gone. */
export function readValve(setting: ValveSetting, zones: ZoneReading[]): ValveReading {
  const { state, today, areaM2 } = setting;
  const [governing] = zones.toSorted((a, b) =>
    dueDay(a) === dueDay(b) ? share(b) - share(a) : dueDay(a) < dueDay(b) ? -1 : 1,
  );
  if (!governing) throw new Error("a valve's reading has at least one zone");
  const { closed, season, book } = governing;
  const leaching = leachingOf({
    ecwDsPerM: setting.ecwDsPerM,
    salinity: governing.top ? governing.salinity : undefined,
    drainedMm: sum(book.percolationMm, closed),
    givenMm: sum(season.rainMm, closed) + sum(season.irrigationMm, closed),
  });
  const common = { governing, zones, leaching };
  const dry = { netMm: 0, grossMm: 0, litres: 0, minutes: 0, rounds: 1 };
  if (!isDue(governing, today)) {
    return { code: "wait", ...common, ...dry, nextDay: governing.due?.day, rain: undefined };
  }
  const rain = rainAwaited(setting, zones, governing);
  if (rain?.holds) return { code: "hold", ...common, ...dry, nextDay: addDays(rain.day, 1), rain };
  const { netMm, rounds } = netNeededMm(governing);
  const run = runTime({
    netMm,
    efficiency: state.valve.efficiency * (1 - (leaching?.share ?? 0)),
    areaM2,
    flowLPerH: state.valve.flowLPerH,
  });
  return { code: "water-now", ...common, netMm, ...run, rounds, nextDay: today, rain };
}
