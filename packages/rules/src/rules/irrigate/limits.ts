import { coversOn, mulchOn } from "../../states/standing.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { isPlastic } from "../../water/rainReaches.ts";
import { windExposure } from "../../water/windExposure.ts";
import { seenCovers } from "../../water/zone.ts";
import type { ValveReading } from "./decide.ts";
import type { ValveSetting } from "./setting.ts";

/** Where the evidence and the method do not reach here. */
export function limitsOf(setting: ValveSetting, r: ValveReading): Message[] {
  const { zones, today, state } = setting;
  const limits = [say("irrigate.limit.hot-peppers"), say("irrigate.limit.no-runoff")];
  if (zones.some(({ zone }) => zone.capillaryRiseMmPerDay === undefined))
    limits.push(say("irrigate.limit.no-rise"));
  if (r.zones.some((z) => z.top)) limits.push(say("irrigate.limit.top"));
  const ground = zones.find(({ zone }) => zone.bed.kind === "ground")?.zone.bed;
  if (ground) {
    const width = measure(ground.widthM, "m");
    limits.push(say("irrigate.limit.bed-only", { width, spacing: measure(ground.spacingM, "m") }));
  }
  if (zones.some(({ zone }) => mulchOn(zone.bed, today) !== "none")) limits.push(say("irrigate.limit.mulch"));
  if (zones.some(({ zone }) => coversOn(zone.bed, today).length > 0))
    limits.push(say("irrigate.limit.cover"));
  if (zones.some(({ zone }) => zone.bed.kind === "containers"))
    limits.push(say("irrigate.limit.single"), say("irrigate.limit.container"));
  const thirsty = zones.some(({ zone }) => isPlastic(mulchOn(zone.bed, today)));
  if (thirsty && state.valve.method === "sprinkler") limits.push(say("irrigate.limit.sprinkler-plastic"));
  if (r.zones.some((z) => z.decidedBy !== "book")) limits.push(say("irrigate.limit.sensor"));
  if (r.rain?.staysOut !== undefined) limits.push(say("irrigate.limit.rain-chance"));
  return [...limits, ...saltLimits(setting, r)];
}

function saltLimits({ ecwDsPerM }: ValveSetting, { governing, leaching }: ValveReading): Message[] {
  const { salinity, top } = governing;
  const limits: Message[] = [];
  if (salinity && !top) limits.push(say("irrigate.limit.salt-containers"));
  if (salinity && top && salinity.how === "water-test") limits.push(say("irrigate.limit.salt-from-water"));
  if (salinity && top && salinity.eceDsPerM > salinity.holdsToDsPerM) {
    limits.push(
      say("irrigate.limit.salt-beyond", {
        ece: measure(salinity.eceDsPerM, "dS/m"),
        bound: measure(salinity.holdsToDsPerM, "dS/m"),
      }),
    );
  }
  if (leaching && leaching.required === undefined) {
    limits.push(say("irrigate.limit.no-leaching", { ec: measure(ecwDsPerM ?? 0, "dS/m") }));
  }
  return limits;
}

/** Which look or measurement would change the answer, and by how much where that is known. */
export function wouldChangeOf(setting: ValveSetting, r: ValveReading): Message[] {
  const { state, today } = setting;
  const { governing } = r;
  const changes = [say("irrigate.change.dig"), say("irrigate.change.rain")];
  const { low, high, how, m3PerM3 } = governing.available;
  if (how !== "measured") {
    changes.push(
      say("irrigate.change.soil", {
        low: measure((governing.today.rawMm * low) / m3PerM3, "mm"),
        high: measure((governing.today.rawMm * high) / m3PerM3, "mm"),
      }),
    );
  }
  if (state.valve.method !== "hand") changes.push(say("irrigate.change.flow"));
  if (governing.top && seenCovers(governing.zone, today).length === 0)
    changes.push(say("irrigate.change.cover"));
  const wind = windExposure(governing.ground, state.weather, state.site);
  if (wind) {
    changes.push(
      say("irrigate.change.wind", {
        still: measure(wind.still.etcMm, "mm"),
        windy: measure(wind.windy.etcMm, "mm"),
      }),
    );
  }
  if (!state.climatology) changes.push(say("irrigate.change.climatology"));
  return changes;
}
